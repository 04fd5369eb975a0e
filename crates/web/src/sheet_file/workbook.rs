//! A workbook (.xlsx) as a table of texts. What it unpacks to is measured before any of it is read.

use calamine::{DataRef, ExcelDateTime, Reader, SheetType, SheetVisible, Xlsx};
use snowhum_apiary::{Table, TableRow, Wrong};
use snowhum_say::{Message, fault, sheet_file as say};
use std::collections::BTreeMap;
use std::io::{Cursor, Read};
use zip::ZipArchive;

use super::SheetFile;

/// Most that is unpacked, bytes: some hundred times a keeper's diary.
const MOST_UNPACKED: u64 = 16 << 20;
/// Most parts of a workbook: some hundred times those of one with a sheet a year.
const MOST_PARTS: usize = 2_000;
/// Most letters of all cells: one string may be shown in any number of them.
const MOST_TEXT: usize = 4 << 20;
/// Most of its styles, bytes: some hundred times what a program writes by itself.
const MOST_STYLES: usize = 1 << 20;
/// What says how many strings there are.
const COUNT: &[u8] = b"uniqueCount";
/// Sheets that are named where one is not found.
const NAMED: usize = 10;
/// What the files of older and of protected workbooks begin with.
const OLD: &[u8] = b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1";

type Workbook<'a> = Xlsx<Cursor<&'a [u8]>>;

/// Whether bytes are those of a workbook, or of what may be taken for one.
pub(super) fn is_one(bytes: &[u8]) -> bool {
    bytes.starts_with(b"PK") || bytes.starts_with(OLD)
}

/// A sheet's table, and which sheets were not read.
pub(super) fn table(file: &SheetFile<'_>) -> Result<(Table, Option<Message>), Wrong> {
    if file.bytes.starts_with(OLD) {
        return Err(Wrong::new(say::protected(), say::protected_right()));
    }
    measured(file.bytes)?;
    let mut workbook: Workbook<'_> = Xlsx::new(Cursor::new(file.bytes)).map_err(|error| damaged(&error))?;
    let is_shown =
        |sheet: &&calamine::Sheet| sheet.visible == SheetVisible::Visible && sheet.typ == SheetType::WorkSheet;
    let names: Vec<String> =
        workbook.sheets_metadata().iter().filter(is_shown).map(|sheet| sheet.name.clone()).collect();
    let (name, rows) = match file.sheet {
        Some(asked) => asked_for(&mut workbook, &names, asked)?,
        None => first(&mut workbook, &names)?,
    };
    let others: Vec<Message> = names.iter().filter(|other| **other != name).map(fault::quoted).collect();
    let shown = if others.is_empty() { file.file.to_owned() } else { format!("{}, sheet \"{name}\"", file.file) };
    let said = (!others.is_empty()).then(|| say::read_alone(others, name));
    Ok((Table { file: shown, rows }, said))
}

fn asked_for(workbook: &mut Workbook<'_>, names: &[String], asked: &str) -> Result<(String, Vec<TableRow>), Wrong> {
    let found = names.iter().find(|name| name.trim().to_lowercase() == asked.trim().to_lowercase());
    let Some(name) = found else {
        let there = names.iter().take(NAMED).map(fault::quoted).collect();
        return Err(Wrong::new(say::no_sheet(asked), say::sheets(there)));
    };
    Ok((name.clone(), rows(workbook, name)?))
}

/// The first sheet in which something stands.
fn first(workbook: &mut Workbook<'_>, names: &[String]) -> Result<(String, Vec<TableRow>), Wrong> {
    for name in names {
        let rows = rows(workbook, name)?;
        if !rows.is_empty() {
            return Ok((name.clone(), rows));
        }
    }
    Err(Wrong::new(say::holds_nothing(), say::holds_nothing_right()))
}

/// Unpacks every part by itself, so that one that swells without end is known before it is read.
fn measured(bytes: &[u8]) -> Result<(), Wrong> {
    let mut archive = ZipArchive::new(Cursor::new(bytes)).map_err(|error| damaged(&error))?;
    if archive.index_for_name("content.xml").is_some() {
        return Err(Wrong::new(say::open_document(), say::open_document_right()));
    }
    let too_large = || Wrong::new(say::vast(), say::vast_right());
    if archive.len() > MOST_PARTS {
        return Err(too_large());
    }
    let mut left = MOST_UNPACKED;
    for at in 0..archive.len() {
        let part = archive.by_index(at).map_err(|error| damaged(&error))?;
        let name = part.name().map_err(|error| damaged(&error))?.to_ascii_lowercase();
        let mut unpacked = Vec::new();
        part.take(left + 1).read_to_end(&mut unpacked).map_err(|error| damaged(&error))?;
        left = left.checked_sub(unpacked.len() as u64).ok_or_else(too_large)?;
        if is_dear(&name, &unpacked) {
            return Err(Wrong::new(say::dear(), say::again_right()));
        }
    }
    Ok(())
}

/// Whether a part takes far more to read than to unpack: a number of strings is believed before they are seen, and a style
/// is laid out in full.
fn is_dear(name: &str, part: &[u8]) -> bool {
    let counts = || part.windows(COUNT.len()).enumerate().filter(|(_, word)| *word == COUNT).map(|(at, _)| at);
    let is_lie = |at: usize| {
        let behind = part[at + COUNT.len()..].iter().skip_while(|letter| !letter.is_ascii_digit());
        let digits: String =
            behind.take_while(|letter| letter.is_ascii_digit()).map(|digit| char::from(*digit)).collect();
        digits.parse::<usize>().map_or(true, |count| count > part.len())
    };
    // Of other letters than plain ones nothing can be told here.
    let is_plain = || !part.contains(&0);
    name.ends_with("styles.xml") && part.len() > MOST_STYLES
        || name.ends_with("sharedstrings.xml") && (!is_plain() || counts().any(is_lie))
}

/// Refuses a sum without what it comes to, as programs write it that count nothing: it would pass for an empty cell.
fn counted(workbook: &mut Workbook<'_>, name: &str) -> Result<(), Wrong> {
    let mut reader = workbook.worksheet_cells_reader(name).map_err(|error| damaged(&error))?;
    while let Some(cell) = reader.next_cell_with_formula_metadata().map_err(|error| damaged(&error))? {
        if cell.formula.is_some() && cell.value == DataRef::Empty {
            let (row, column) = cell.pos;
            let problem = say::uncounted(u64::from(column) + 1, u64::from(row) + 1, name);
            return Err(Wrong::new(problem, say::again_right()));
        }
    }
    Ok(())
}

/// The cells one by one: the size a sheet says it has is not believed.
fn rows(workbook: &mut Workbook<'_>, name: &str) -> Result<Vec<TableRow>, Wrong> {
    counted(workbook, name)?;
    let mut reader = workbook.worksheet_cells_reader(name).map_err(|error| damaged(&error))?;
    let mut rows: BTreeMap<u32, Vec<String>> = BTreeMap::new();
    let mut letters = 0;
    while let Some((cell, style)) = reader.next_cell_with_style_id().map_err(|error| damaged(&error))? {
        let (row, column) = cell.get_position();
        let format = reader.styles().get(style).and_then(|style| style.number_format.as_ref());
        let text = seen(cell.get_value(), format.map_or("", |format| &format.format_code));
        if text.is_empty() {
            continue;
        }
        letters += text.len();
        let at = usize::try_from(column).unwrap_or(usize::MAX);
        let cells = rows.entry(row).or_default();
        if letters > MOST_TEXT || at >= Table::MOST_COLUMNS {
            return Err(Wrong::new(say::wide(Table::MOST_COLUMNS, name), say::wide_right()));
        }
        cells.resize(cells.len().max(at + 1), String::new());
        cells[at] = text;
        if rows.len() > Table::MOST_ROWS {
            return Err(Wrong::new(say::many_rows(Table::MOST_ROWS, name), say::many_rows_right()));
        }
    }
    let number = |row: u32| usize::try_from(row).map_or(usize::MAX, |row| row.saturating_add(1));
    Ok(rows.into_iter().map(|(row, cells)| TableRow { number: number(row), cells }).collect())
}

/// A cell as its keeper saw it; of one that is too long so much that it is seen to be.
fn seen(value: &DataRef<'_>, format: &str) -> String {
    let cut = |text: &str| text.trim().chars().take(Table::MOST_LETTERS + 1).collect();
    match value {
        DataRef::Empty => String::new(),
        DataRef::String(text) => cut(text),
        DataRef::SharedString(text) => cut(text),
        DataRef::DateTimeIso(text) | DataRef::DurationIso(text) => cut(text),
        DataRef::Int(number) => number.to_string(),
        DataRef::Float(number) => formatted(*number, format),
        DataRef::Bool(yes) => if *yes { "yes" } else { "no" }.to_owned(),
        DataRef::DateTime(moment) => day(moment),
        DataRef::Error(error) => error.to_string(),
    }
}

/// A number with the unit or the sign of per cent that its format shows behind it.
fn formatted(number: f64, format: &str) -> String {
    let positive = format.split(';').next().unwrap_or_default();
    // What stands behind the last digit, its quotes and the strokes before single letters taken away.
    let behind = positive.rfind(['0', '#', '?']).map_or("", |last| &positive[last + 1..]);
    let unit: String =
        behind.chars().filter(|letter| !matches!(letter, '"' | '\\' | '_' | '*' | ')' | '.' | ',')).collect();
    match unit.trim() {
        "" => plain(number),
        "%" => format!("{} %", plain(100.0 * number)),
        unit => format!("{} {unit}", plain(number)),
    }
}

/// A number without what only sums leave behind.
fn plain(number: f64) -> String {
    let text = format!("{number:.9}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" { "0".to_owned() } else { text.to_owned() }
}

/// A day, with its hour if it has one; an hour alone of what is less than a day.
fn day(moment: &ExcelDateTime) -> String {
    /// The last day a spreadsheet knows, 31 December 9999.
    const LAST: f64 = 2_958_466.0;
    let value = moment.as_f64();
    if !(0.0..LAST).contains(&value) {
        return plain(value);
    }
    let (year, month, day, hour, minute, ..) = moment.to_ymd_hms_milli();
    match (moment.is_duration() || value < 1.0, hour, minute) {
        (true, ..) => format!("{hour:02}:{minute:02}"),
        (false, 0, 0) => format!("{year}-{month:02}-{day:02}"),
        (false, ..) => format!("{year}-{month:02}-{day:02} {hour:02}:{minute:02}"),
    }
}

fn damaged(error: &dyn std::fmt::Display) -> Wrong {
    Wrong::new(say::damaged(error.to_string()), say::again_right())
}
