//! A note from a command that runs once: where it is kept, and what is asked first.

use std::path::{Path, PathBuf};

use clap::Args;
use jiff::Timestamp;
use snowhum_apiary::{Apiary, Conditions, Entry, Note, NoteId};
use snowhum_say::{note_terminal as say, shared_terminal as shared};
use snowhum_store::{Put, Store};
use uuid::Uuid;

use super::note;
use crate::args::Common;
use crate::text::voice::{in_words, tongue};
use crate::{exit, keep, new_file, progress, sources};

/// Which yard a sum is about, and when what it says is noted.
#[derive(Debug, Clone, Args)]
pub(crate) struct OfYard {
    #[arg(long, value_name = "FILE")]
    pub(crate) apiary: Option<PathBuf>,
    #[arg(long, value_name = "TIME")]
    pub(crate) at: Option<String>,
    #[arg(long)]
    pub(crate) sure: bool,
}

/// Where the notes of a yard are kept.
pub(super) enum Book {
    /// In the records.
    Records(PathBuf),
    /// At the end of the yard file.
    File(PathBuf),
}

/// A yard whose notes can be kept.
///
/// # Errors
/// When there is none: the demo keeps nothing.
pub(super) fn yard(apiary: Option<&Path>, common: &Common) -> anyhow::Result<(Book, Apiary)> {
    match apiary {
        Some(file) => Ok((Book::File(file.to_owned()), sources::yard_file(file)?)),
        None => keep::yard(common.store.as_deref()).map(|(path, apiary)| (Book::Records(path), apiary)),
    }
}

/// Notes something at a colony, as the sums of the trade do.
pub(super) fn note_of(name: &str, entries: Vec<Entry>, of: &OfYard, common: &Common) -> anyhow::Result<()> {
    let (book, apiary) = yard(of.apiary.as_deref(), common)?;
    let colony = apiary.colonies[sources::place_of(&apiary, name)?].id;
    let at = of.at.as_deref().map_or_else(|| Ok(Timestamp::now()), |written| note::moment(written, &apiary))?;
    let note = Note {
        id: NoteId(Uuid::now_v7()),
        visit: note::visit(&apiary, at),
        colony,
        at,
        conditions: Conditions::default(),
        entries,
    };
    asked(&apiary, &note, of.sure)?;
    book.keep(&apiary, &note)?;
    progress::note(say::noted_at(apiary.colony_name(colony), apiary.note_text(&note)));
    Ok(())
}

/// Asks about a note that may be a slip.
///
/// # Errors
/// When there is a doubt, and the keeper has not said that it is right.
pub(super) fn asked(apiary: &Apiary, note: &Note, sure: bool) -> anyhow::Result<()> {
    let doubts = apiary.doubts(note, Timestamp::now());
    let Some(doubt) = doubts.iter().find(|doubt| !(sure && doubt.may_be_right())) else { return Ok(()) };
    let (colony, noted, doubts) = (apiary.colony_name(note.colony), apiary.note_text(note), doubt.message());
    Err(exit::refused(match doubt.may_be_right() {
        true => say::doubt_sure(colony, doubts, noted),
        false => say::doubt(colony, doubts, noted),
    }))
}

impl Book {
    /// Keeps a note.
    ///
    /// # Errors
    /// When it cannot be written.
    pub(super) fn keep(&self, apiary: &Apiary, note: &Note) -> anyhow::Result<Put> {
        match self {
            Self::Records(path) => keep::with_store(path, async |store: &Store| {
                store.put_note(note, Timestamp::now()).await.map_err(keep::failure)
            }),
            Self::File(path) => append(path, apiary, note).map(|()| Put::Stored),
        }
    }
}

/// Writes a note at the end of a yard file, which must still read with it.
fn append(path: &Path, apiary: &Apiary, note: &Note) -> anyhow::Result<()> {
    let bytes = sources::read(path)?;
    let unread = |_| exit::refused(shared::not_text(path.display().to_string()));
    let mut text = String::from_utf8(bytes).map_err(unread)?;
    text += &apiary.visit_text(note);
    if let Err(faults) = snowhum_apiary::read(&text, &path.display().to_string()) {
        return Err(exit::input(format!("{}\n{}", in_words(&say::would_not_read()), faults.said(tongue()))));
    }
    new_file::replace(path, text.as_bytes())
}
