//! Workbooks as spreadsheets save them, and as nobody should.

use std::io::{Cursor, Write};
use zip::ZipWriter;
use zip::write::SimpleFileOptions;

const HEAD: &str = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>";
const MAIN: &str = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const OFFICE: &str = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE: &str = "http://schemas.openxmlformats.org/package/2006";

/// A workbook of sheets, each with its name and the rows of its XML.
#[must_use]
pub fn workbook(sheets: &[(&str, &str)]) -> Vec<u8> {
    packed(parts(sheets))
}

/// The same with one part more, or another in the place of one.
#[must_use]
pub fn with_part(sheets: &[(&str, &str)], name: &str, text: &str) -> Vec<u8> {
    let mut parts = parts(sheets);
    parts.retain(|(own, _)| own != name);
    parts.push((name.to_owned(), text.to_owned()));
    packed(parts)
}

fn parts(sheets: &[(&str, &str)]) -> Vec<(String, String)> {
    let mut parts = frame(sheets);
    for (number, (_, rows)) in (1..).zip(sheets) {
        let sheet = format!("{HEAD}<worksheet xmlns=\"{MAIN}\"><sheetData>{rows}</sheetData></worksheet>");
        parts.push((format!("xl/worksheets/sheet{number}.xml"), sheet));
    }
    parts
}

#[expect(clippy::expect_used, reason = "a fixture that cannot be made fails its test")]
fn packed(parts: Vec<(String, String)>) -> Vec<u8> {
    let mut archive = ZipWriter::new(Cursor::new(Vec::new()));
    for (name, text) in parts {
        archive.start_file(name, SimpleFileOptions::default()).expect("a part begins");
        archive.write_all(text.as_bytes()).expect("a part is written");
    }
    archive.finish().expect("the workbook ends").into_inner()
}

/// Rows of texts, of numbers, of days (`@46047`) and hours (`@0.4375`), as a spreadsheet writes them.
#[must_use]
pub fn rows(lines: &[&str]) -> String {
    let cell = |row: usize, at: usize, written: &str| {
        let place = format!("{}{row}", char::from(b'A' + u8::try_from(at % 26).unwrap_or_default()));
        match written.strip_prefix('@') {
            Some(hour) if hour.starts_with("0.") => format!("<c r=\"{place}\" s=\"2\"><v>{hour}</v></c>"),
            Some(day) => format!("<c r=\"{place}\" s=\"1\"><v>{day}</v></c>"),
            None if written.is_empty() => String::new(),
            None if written.parse::<f64>().is_ok() => format!("<c r=\"{place}\"><v>{written}</v></c>"),
            None => format!("<c r=\"{place}\" t=\"inlineStr\"><is><t>{written}</t></is></c>"),
        }
    };
    let row = |(number, line): (usize, &&str)| {
        let cells = line.split('|').enumerate().map(|(at, written)| cell(number, at, written.trim()));
        format!("<row r=\"{number}\">{}</row>", cells.collect::<String>())
    };
    (1..).zip(lines).map(row).collect()
}

/// The parts round the sheets: what is in it, and how days and hours are shown.
fn frame(sheets: &[(&str, &str)]) -> Vec<(String, String)> {
    let each = |one: &dyn Fn(usize, &str) -> String| -> String {
        (1..).zip(sheets).map(|(number, (name, _))| one(number, name)).collect()
    };
    let listed = each(&|number, name| format!("<sheet name=\"{name}\" sheetId=\"{number}\" r:id=\"rId{number}\"/>"));
    let related = each(&|number, _| {
        format!(
            "<Relationship Id=\"rId{number}\" Type=\"{OFFICE}/worksheet\" Target=\"worksheets/sheet{number}.xml\"/>"
        )
    });
    // A day, an hour, pounds, per cent.
    let styles = "<numFmts count=\"1\"><numFmt numFmtId=\"164\" formatCode=\"0.0&quot; lb&quot;\"/></numFmts>\
                  <cellXfs count=\"5\"><xf numFmtId=\"0\"/><xf numFmtId=\"14\" applyNumberFormat=\"1\"/>\
                  <xf numFmtId=\"20\" applyNumberFormat=\"1\"/><xf numFmtId=\"164\" applyNumberFormat=\"1\"/>\
                  <xf numFmtId=\"9\" applyNumberFormat=\"1\"/></cellXfs>";
    let relations = format!("{PACKAGE}/relationships");
    [
        (
            "[Content_Types].xml",
            format!("{HEAD}<Types xmlns=\"{PACKAGE}/content-types\"><Default Extension=\"xml\" ContentType=\"application/xml\"/></Types>"),
        ),
        (
            "_rels/.rels",
            format!("{HEAD}<Relationships xmlns=\"{relations}\"><Relationship Id=\"rId1\" Type=\"{OFFICE}/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>"),
        ),
        (
            "xl/workbook.xml",
            format!("{HEAD}<workbook xmlns=\"{MAIN}\" xmlns:r=\"{OFFICE}\"><sheets>{listed}</sheets></workbook>"),
        ),
        (
            "xl/_rels/workbook.xml.rels",
            format!("{HEAD}<Relationships xmlns=\"{relations}\">{related}<Relationship Id=\"rIdS\" Type=\"{OFFICE}/styles\" Target=\"styles.xml\"/></Relationships>"),
        ),
        ("xl/styles.xml", format!("{HEAD}<styleSheet xmlns=\"{MAIN}\">{styles}</styleSheet>")),
    ]
    .map(|(name, text)| (name.to_owned(), text))
    .to_vec()
}
