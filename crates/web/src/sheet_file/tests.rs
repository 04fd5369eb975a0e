use super::*;
use snowhum_apiary::{demo_text, read};
use snowhum_testkit::workbooks::{rows, with_part, workbook};
use std::time::{Duration, Instant};

/// What a hostile file may take: a keeper would wait so long.
const PATIENCE: Duration = Duration::from_secs(5);

fn yard() -> Apiary {
    read(demo_text(), "demo").unwrap().0
}

fn given(bytes: &[u8]) -> SheetFile<'_> {
    SheetFile { bytes, file: "diary", ..SheetFile::default() }
}

fn says(file: &SheetFile<'_>) -> Vec<String> {
    let yard = yard();
    let incoming = file.read(&yard, System::Metric, yard.notes.last().unwrap().at).unwrap_or_else(|no| panic!("{no}"));
    incoming.rows.iter().map(|row| format!("{} {} {}: {}", row.row, row.colony, row.at, row.says)).collect()
}

fn refused(bytes: &[u8]) -> String {
    let (yard, begun) = (yard(), Instant::now());
    let refused = given(bytes).read(&yard, System::Metric, yard.notes.last().unwrap().at).unwrap_err().to_string();
    assert!(begun.elapsed() < PATIENCE, "{:?}: {refused}", begun.elapsed());
    assert!(refused.starts_with("diary"), "{refused}");
    refused
}

const LINES: [&str; 4] = [
    "Date | Hive | Weight (kg) | Remarks",
    "@46047 | Alder | 42.300000000000004 | quiet",
    "",
    "@46048.4375 | Birch | 38 | Überwintert gut",
];
const READ: [&str; 2] = [
    "2 Alder 2026-01-25T12:00:00: scale=42.3 kg; words=quiet",
    "4 Birch 2026-01-26T10:30:00: scale=38 kg; words=Überwintert gut",
];

#[test]
fn a_workbooks_days_and_numbers_are_what_the_keeper_saw() {
    let bytes = workbook(&[("2026", &rows(&LINES))]);
    assert_eq!(says(&given(&bytes)), READ);
    let apart = rows(&["Day | Time | Hive | Pollen", "@46047 | @0.4375 | Alder | no"]);
    assert_eq!(says(&given(&workbook(&[("x", &apart)]))), ["2 Alder 2026-01-25T10:30:00: pollen=no"]);
}

#[test]
fn a_unit_that_only_the_cells_format_shows_is_read() {
    let lines = rows(&["Date | Hive | Weight | Inside humidity", "@46047 | Alder | 42.5 | 0.75"]);
    let shown = lines.replace("<c r=\"C2\">", "<c r=\"C2\" s=\"3\">").replace("<c r=\"D2\">", "<c r=\"D2\" s=\"4\">");
    assert_eq!(
        says(&given(&workbook(&[("x", &shown)]))),
        ["2 Alder 2026-01-25T12:00:00: scale=19.278 kg; humidity=75 %"]
    );
}

#[test]
fn text_is_read_in_the_letters_and_with_the_marks_its_spreadsheet_saved_it_with() {
    let text =
        "Date;Hive;Weight (kg);Remarks\n25.1.2026;Alder;42,3;quiet\n\n26.1.2026 10:30;Birch;38;Überwintert gut\n";
    let wide = |text: &str, bytes: fn(u16) -> [u8; 2]| text.encode_utf16().flat_map(bytes).collect::<Vec<u8>>();
    for (name, bytes) in [
        ("UTF-8", text.as_bytes().to_vec()),
        ("with a mark", [b"\xef\xbb\xbf", text.as_bytes()].concat()),
        ("Windows", text.chars().map(|letter| u8::try_from(u32::from(letter)).unwrap()).collect()),
        ("UTF-16", [vec![0xff, 0xfe], wide(&text.replace(';', "\t"), u16::to_le_bytes)].concat()),
        ("UTF-16 the other way", [vec![0xfe, 0xff], wide(text, u16::to_be_bytes)].concat()),
        ("ends of lines", text.replace('\n', "\r\n").into_bytes()),
        ("said", format!("sep=;\n{text}").into_bytes()),
        ("commas", text.replace("42,3", "42.3").replace(';', ",").into_bytes()),
        ("quotes", text.replace("quiet", "\"quiet\"").into_bytes()),
    ] {
        assert_eq!(says(&given(&bytes)), READ, "{name}");
    }
}

#[test]
fn what_a_page_sends_back_reads_as_the_file_did() {
    let book = workbook(&[("2026", &rows(&LINES))]);
    for bytes in [&book[..], "Date;Hive;Weight (kg)\n25.1.2026;Alder;42,3\n".as_bytes()] {
        let text = given(bytes).as_text().unwrap();
        assert_eq!(says(&given(text.as_bytes())), says(&given(bytes)));
    }
}

#[test]
fn a_sheet_may_be_named_and_those_not_read_are_said() {
    let other = rows(&["Date | Hive | Note", "@46047 | Larch | loud"]);
    let bytes = workbook(&[("empty", ""), ("Notes", &rows(&LINES)), ("Queens", &other)]);
    assert_eq!(says(&given(&bytes)), READ);
    let incoming = given(&bytes).read(&yard(), System::Metric, Timestamp::MAX).unwrap();
    assert!(
        incoming
            .said
            .iter()
            .any(|said| Tongue::BRITISH.say(said).contains("\"Notes\" was read, and not \"empty\", \"Queens\""))
    );
    let named = SheetFile { sheet: Some("queens"), ..given(&bytes) };
    assert_eq!(says(&named), ["2 Larch 2026-01-25T12:00:00: words=loud"]);
    let none = SheetFile { sheet: Some("2025"), ..given(&bytes) };
    let wrong = none.read(&yard(), System::Metric, Timestamp::MAX).unwrap_err().to_string();
    assert!(wrong.contains("\"Queens\""), "{wrong}");
}

#[test]
fn columns_said_last_time_hold_where_their_headings_are_there() {
    let bytes = b"Datum;Volk;Gewicht\n25.1.2026;Alder;42,3\n";
    let last = SheetFile { last_columns: Some("date=Datum, hive=Volk, scale=Gewicht:kg"), ..given(bytes) };
    assert_eq!(says(&last), ["2 Alder 2026-01-25T12:00:00: scale=42.3 kg"]);
    let other = SheetFile { bytes: b"Date;Hive;Note\n25.1.2026;Alder;quiet\n", ..last };
    assert_eq!(says(&other), ["2 Alder 2026-01-25T12:00:00: words=quiet"]);
    let wrong = SheetFile { columns: Some("date"), ..last }.read(&yard(), System::Metric, Timestamp::MAX);
    assert!(matches!(wrong, Err(SheetRefused::Columns(_))), "what is said now outdoes it");
}

#[test]
fn a_file_that_swells_without_end_is_refused_before_it_is_read() {
    let swollen = workbook(&[("x", &" ".repeat(64 << 20))]);
    assert!(swollen.len() < 1 << 20, "{}", swollen.len());
    assert!(refused(&swollen).contains("16 MB"));
    // One long string that every cell shows.
    let cell = "<c t=\"inlineStr\"><is><t>".to_owned() + &"a".repeat(700) + "</t></is></c>";
    let many: String = (0..9_000).map(|_| format!("<row>{cell}</row>")).collect();
    assert!(refused(&workbook(&[("x", &many)])).contains("4 MB of words"));
}

#[test]
fn the_size_a_sheet_says_it_has_is_not_believed() {
    let far = "<row r=\"1\"><c r=\"A1\"><v>1</v></c></row><row r=\"1048576\"><c r=\"XFD1048576\"><v>1</v></c></row>";
    assert!(refused(&workbook(&[("x", far)])).contains("columns"));
    let deep = "<row r=\"1\"><c r=\"A1\"><v>1</v></c></row><row r=\"1048576\"><c r=\"A1048576\"><v>1</v></c></row>";
    assert!(refused(&workbook(&[("x", deep)])).contains("no heading tells"));
    let tall: String = (1..=10_001).map(|row| format!("<row r=\"{row}\"><c r=\"A{row}\"><v>1</v></c></row>")).collect();
    assert!(refused(&workbook(&[("x", &tall)])).contains("10000 rows"));
    let wide = "a;".repeat(300) + "\n";
    assert!(refused(wide.as_bytes()).contains("200 columns"));
    assert!(refused("a;b\n".repeat(10_001).as_bytes()).contains("10000 rows"));
}

#[test]
fn what_is_no_sheet_of_notes_says_what_would_be() {
    let whole = workbook(&[("2026", &rows(&LINES))]);
    for cut in [10, whole.len() / 2, whole.len() - 10] {
        assert!(refused(&whole[..cut]).contains("save it again as .xlsx"), "{cut}");
    }
    let protected = [OLD_FORM, &[0; 600]].concat();
    assert!(refused(&protected).contains("password"));
    assert!(refused(&[0, 159, 146, 150, 0, 1]).contains("workbook (.xlsx)"));
    assert!(refused(b"").contains("is empty"));
    assert!(refused(b"PK\x03\x04 and no more").contains("damaged"));
    assert!(refused(&workbook(&[("x", "")])).contains("holds nothing"));
    assert!(refused(&workbook(&[("x", "<row><c><v>1</v>")])).contains("damaged"));
}

#[test]
fn a_number_of_strings_is_not_believed() {
    let book = |strings: &str| {
        let strings = format!("<sst uniqueCount=\"{strings}\"><si><t>Date</t></si><si><t>Hive</t></si></sst>");
        with_part(&[("2026", &rows(&LINES))], "xl/sharedStrings.xml", &strings)
    };
    assert_eq!(says(&given(&book("2"))), READ);
    for lie in ["1000000000000", "18446744073709551615", "99999999999999999999999"] {
        assert!(refused(&book(lie)).contains("memory"), "{lie}");
    }
    let styles = "<styleSheet><cellXfs>".to_owned() + &"<xf/>".repeat(300_000) + "</cellXfs></styleSheet>";
    assert!(refused(&with_part(&[("x", &rows(&LINES))], "xl/styles.xml", &styles)).contains("memory"));
}

const OLD_FORM: &[u8] = b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1";

#[test]
fn a_sum_counts_by_what_it_shows_and_one_that_went_wrong_is_named() {
    let head = "<row r=\"1\"><c r=\"A1\" t=\"str\"><v>Date</v></c><c r=\"B1\" t=\"str\"><v>Hive</v></c>\
                <c r=\"C1\" t=\"str\"><v>Weight kg</v></c></row>";
    let row = |value: &str| {
        let sum = format!("<c r=\"C2\"{value}</c>");
        let cells = format!("<c r=\"A2\" s=\"1\"><v>46047</v></c><c r=\"B2\" t=\"str\"><v>Alder</v></c>{sum}");
        workbook(&[("x", &format!("{head}<row r=\"2\">{cells}</row>"))])
    };
    assert_eq!(says(&given(&row("><f>D2+E2</f><v>42.5</v>"))), ["2 Alder 2026-01-25T12:00:00: scale=42.5 kg"]);
    let wrong = refused(&row(" t=\"e\"><f>D2/0</f><v>#DIV/0!</v>"));
    assert!(wrong.contains("row 2: Weight kg: \"#DIV/0!\""), "{wrong}");
    let uncounted = refused(&row("><f>D2+E2</f>"));
    assert!(uncounted.contains("row 2, column 3") && uncounted.contains("save it"), "{uncounted}");
}
