//! Tables out as CSV files (RFC 4180), and their notes read again.

use crate::body;
use crate::fault::{Fault, Wrong};
use crate::files;
use crate::hashes;
use crate::migrations::KNOWN;
use crate::rows::{Cell, Cells, TABLES, Table, VersionKind, opens_the_gate};
use crate::store::{Store, Transaction};
use snowhum_apiary::{Colony, ColonyId, Note, NoteId};
use snowhum_say::{Message, store_found as say};
use std::collections::{BTreeMap, HashMap};
use std::io::Read;
use std::path::{Path, PathBuf};

impl Store {
    /// Writes one file a table into a folder: `yards.csv`, `hives.csv`, `colonies.csv`, `note_versions.csv`,
    /// `settings.csv`, `alerts.csv`. The file of notes has their entries in words as its last column. Gives the files.
    ///
    /// # Errors
    /// When the store cannot be read, the folder cannot be written, or a file of that name is there.
    pub async fn export_csv(&self, folder: &Path) -> Result<Vec<PathBuf>, Fault> {
        let read = async {
            let mut reading = self.reading().await?;
            let mut tables = Vec::new();
            for table in TABLES {
                let mut rows = table.read(KNOWN, &mut reading).await?;
                rows.retain(|row| !opens_the_gate(table, row));
                tables.push((table, rows));
            }
            let names = names(&mut reading).await?;
            Ok((tables, names))
        };
        let (tables, names) = self.named(read).await?;
        files::create_private_folder(folder).map_err(|error| Fault::about(folder, error))?;
        let mut files = Vec::new();
        for (table, rows) in tables {
            let file = folder.join(format!("{}.csv", table.name));
            write(&file, table, &rows, &names).map_err(|wrong| Fault::about(&file, wrong))?;
            files.push(file);
        }
        Ok(files)
    }
}

/// Names of all colonies, for the words of notes.
async fn names(reading: &mut Transaction) -> Result<HashMap<ColonyId, String>, Wrong> {
    let bodies: Vec<String> = sqlx::query_scalar("SELECT body FROM colonies").fetch_all(&mut **reading).await?;
    let named = |text: &String| -> Result<(ColonyId, String), Wrong> {
        let colony: Colony = body::read(text, "a colony", "")?;
        Ok((colony.id, colony.name))
    };
    bodies.iter().map(named).collect()
}

fn write(file: &Path, table: Table, rows: &[Cells], names: &HashMap<ColonyId, String>) -> Result<(), Wrong> {
    let with_words = table.name == "note_versions";
    let mut sheet =
        csv::WriterBuilder::new().terminator(csv::Terminator::CRLF).from_writer(files::create_private(file)?);
    let head = table.columns(KNOWN).iter().map(|(name, _)| *name).chain(with_words.then_some("words"));
    sheet.write_record(head).map_err(of_csv)?;
    for row in rows {
        let mut cells: Vec<String> = row.iter().map(shown).collect();
        if with_words {
            cells.push(hashes::kept(row).0.last().map_or(Ok(String::new()), |body| words(&shown(body), names))?);
        }
        sheet.write_record(cells).map_err(of_csv)?;
    }
    Ok(sheet.flush()?)
}

fn shown(cell: &Cell) -> String {
    match cell {
        Cell::None => String::new(),
        Cell::Whole(number) => number.to_string(),
        Cell::Text(text) => text.clone(),
    }
}

fn words(body: &str, names: &HashMap<ColonyId, String>) -> Result<String, Wrong> {
    let note: Note = body::read(body, "a note", "")?;
    let name = |colony: ColonyId| names.get(&colony).cloned().unwrap_or_else(|| colony.0.to_string());
    Ok(note.entries.iter().map(|entry| entry.written(&name)).collect::<Vec<_>>().join("; "))
}

/// The notes of a sheet that [`Store::export_csv`] wrote, each with its line and in the order of their first: the columns
/// `body` and, if there, `kind` are read by name. Where a note has several rows the last one counts, and one that was
/// withdrawn is left out. None of a sheet that was made elsewhere.
///
/// # Errors
/// When a line is not in order, named by its number.
pub fn notes_in_csv(from: impl Read) -> Result<Option<Vec<(usize, Note)>>, Wrong> {
    let mut sheet = csv::Reader::from_reader(from);
    // Headings of another hand are not read here at all.
    let Ok(head) = sheet.headers().cloned() else { return Ok(None) };
    let column = |name: &str| head.iter().position(|one| one == name);
    let Some(body) = column("body") else { return Ok(None) };
    let kind = column("kind");
    let mut order: BTreeMap<NoteId, usize> = BTreeMap::new();
    let mut notes: Vec<Option<(usize, Note)>> = Vec::new();
    for record in sheet.records() {
        let record = record.map_err(of_csv)?;
        let line = record.position().map_or(0, csv::Position::line);
        let wrong = |what: Message| unreadable(say::line(line), what);
        let note: Note = serde_json::from_str(record.get(body).unwrap_or_default())
            .map_err(|error| wrong(say::body_alone(error.to_string())))?;
        let word = kind.and_then(|kind| record.get(kind)).unwrap_or(VersionKind::Made.word());
        let kind = VersionKind::from_word(word).ok_or_else(|| wrong(say::no_kind(format!("{word:?}"))))?;
        let place = *order.entry(note.id).or_insert(notes.len());
        notes.resize(notes.len().max(place + 1), None);
        let line = usize::try_from(line).unwrap_or(usize::MAX);
        notes[place] = (kind != VersionKind::Withdrawn).then_some((line, note));
    }
    Ok(Some(notes.into_iter().flatten().collect()))
}

fn of_csv(error: csv::Error) -> Wrong {
    let line = error.position().map_or(0, csv::Position::line);
    let what = error.to_string();
    match error.into_kind() {
        csv::ErrorKind::Io(error) => error.into(),
        _ => unreadable(say::line(line), what.into()),
    }
}

fn unreadable(at: Message, what: Message) -> Wrong {
    Wrong::Unreadable { at: Box::new(at), what, form: "sheet" }
}
