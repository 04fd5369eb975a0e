//! A table as text: in the letters and with the delimiter that its spreadsheet saved it with.

use encoding_rs::{Encoding, WINDOWS_1252};
use snowhum_apiary::{Table, TableRow, Wrong};

use snowhum_say::sheet_file as say;

const DELIMITERS: [u8; 3] = [b';', b'\t', b','];
/// Rows by which the delimiter is told.
const LOOKED_AT: usize = 20;
/// Empty rows that are written as such, so that numbers of rows stay as they were.
const MOST_EMPTY: usize = 1_000;

/// Bytes as text with plain ends of lines: UTF-16 and UTF-8 by their marks, UTF-8 without one, else the letters of
/// Western Windows. None where it is no text.
pub(super) fn decoded(bytes: &[u8]) -> Option<String> {
    let text = match (Encoding::for_bom(bytes), std::str::from_utf8(bytes)) {
        (Some((encoding, mark)), _) => encoding.decode_without_bom_handling(&bytes[mark..]).0,
        (None, Ok(text)) => text.into(),
        (None, Err(_)) => WINDOWS_1252.decode_without_bom_handling(bytes).0,
    };
    let is_text = !text.chars().take(4_096).any(|letter| letter == '\0');
    is_text.then(|| text.replace("\r\n", "\n").replace('\r', "\n"))
}

pub(super) fn table(text: &str, file: &str) -> Result<Table, Wrong> {
    let (said, text) = said_delimiter(text);
    let delimiter = said.unwrap_or_else(|| delimiter(text));
    let mut reader = reader(text, delimiter);
    let mut rows: Vec<TableRow> = Vec::new();
    let (mut line, mut counted) = (1, 0);
    for record in reader.records() {
        let record = record.map_err(|error| Wrong::new(say::no_table_why(error.to_string()), say::right()))?;
        // A row begins behind the empty lines before it.
        let at = record.position().map_or(counted, |at| usize::try_from(at.byte()).unwrap_or(counted));
        let empty = text[at..].bytes().take_while(|byte| *byte == b'\n').count();
        line += text[counted..at + empty].matches('\n').count();
        counted = at + empty;
        let cells: Vec<String> = record.iter().map(|cell| cell.trim().to_owned()).collect();
        if cells.iter().any(|cell| !cell.is_empty()) {
            rows.push(TableRow { number: line, cells });
        }
        bounded(&rows)?;
    }
    Ok(Table { file: file.to_owned(), rows })
}

/// Refuses a table that no keeper wrote.
pub(super) fn bounded(rows: &[TableRow]) -> Result<(), Wrong> {
    let wide = rows.last().is_some_and(|row| row.cells.len() > Table::MOST_COLUMNS);
    if rows.len() <= Table::MOST_ROWS && !wide {
        return Ok(());
    }
    let (rows, columns) = (Table::MOST_ROWS, Table::MOST_COLUMNS);
    Err(Wrong::new(say::large(columns, rows), say::large_right()))
}

/// A table as text, each row at its number.
pub(super) fn written(table: &Table) -> Result<String, Wrong> {
    let fault = |error: &dyn std::fmt::Display| Wrong::new(say::no_writing(error.to_string()), say::right());
    let (mut text, mut next) = (Vec::new(), 1);
    for row in &table.rows {
        text.extend(std::iter::repeat_n(b'\n', row.number.saturating_sub(next).min(MOST_EMPTY)));
        let mut sheet = csv::WriterBuilder::new().delimiter(b'\t').flexible(true).from_writer(&mut text);
        sheet.write_record(&row.cells).map_err(|error| fault(&error))?;
        sheet.flush().map_err(|error| fault(&error))?;
        next = row.number + 1;
    }
    String::from_utf8(text).map_err(|error| fault(&error))
}

fn reader(text: &str, delimiter: u8) -> csv::Reader<&[u8]> {
    csv::ReaderBuilder::new().has_headers(false).flexible(true).delimiter(delimiter).from_reader(text.as_bytes())
}

/// The delimiter that a first line `sep=;` says, and what stands below that line, which spreadsheets count as no row.
fn said_delimiter(text: &str) -> (Option<u8>, &str) {
    let said = text.split_once('\n').and_then(|(first, rest)| match first.trim().strip_prefix("sep=")?.as_bytes() {
        [delimiter] => Some((*delimiter, rest)),
        _ => None,
    });
    said.map_or((None, text), |(delimiter, rest)| (Some(delimiter), rest))
}

/// The delimiter under which most rows have as many cells as each other, more than one.
fn delimiter(text: &str) -> u8 {
    let even = |delimiter: u8| {
        let rows = reader(text, delimiter).into_records().take(LOOKED_AT).filter_map(Result::ok);
        let widths: Vec<usize> = rows.map(|row| row.len()).collect();
        let score = |width: &usize| widths.iter().filter(|other| *other == width).count() * (width - 1);
        widths.iter().map(score).max().unwrap_or_default()
    };
    let scores = DELIMITERS.map(|delimiter| (even(delimiter), delimiter));
    scores.into_iter().rev().max_by_key(|(score, _)| *score).map_or(b',', |(_, delimiter)| delimiter)
}
