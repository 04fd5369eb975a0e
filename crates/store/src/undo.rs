//! Taking back the last thing done to a note, step by step.

use crate::fault::{Fault, Wrong};
use crate::notes::{self, Happened, VersionRow};
use crate::recorded::Recorded;
use crate::rows::VersionKind;
use crate::store::Store;
use snowhum_apiary::{ColonyId, Note, NoteId};
use sqlx::sqlite::SqliteConnection;

/// Where the last thing done is looked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LastOf {
    /// One note.
    Note(NoteId),
    /// All notes of a colony.
    Colony(ColonyId),
}

/// What was taken back.
#[derive(Debug, Clone, PartialEq)]
pub enum Undone {
    /// There is nothing left to take back.
    Nothing,
    /// The making of this note: it is withdrawn now.
    Withdrawn(Note),
    /// An edit or a withdrawal: the note stands like this again.
    Restored(Note),
}

impl Store {
    /// Takes back the last thing done that was not taken back yet; again and again until nothing is left. It adds a
    /// version and removes none.
    ///
    /// # Errors
    /// When the store cannot be written.
    pub async fn undo_last(&self, of: LastOf, recorded: impl Into<Recorded>) -> Result<Undone, Fault> {
        let recorded = recorded.into();
        let undo = async {
            let mut writing = self.writing().await?;
            let Some(done) = last_done(&mut writing, of).await? else {
                return Ok(Undone::Nothing);
            };
            let undone = take_back(&mut writing, &done, &recorded).await?;
            writing.commit().await?;
            Ok(undone)
        };
        self.named(undo).await
    }
}

/// Takes one version back.
pub(crate) async fn take_back(
    writing: &mut SqliteConnection,
    done: &VersionRow,
    recorded: &Recorded,
) -> Result<Undone, Wrong> {
    let undoes = Some(done.version.as_str());
    let note = done.note()?;
    match before(writing, note.id, done.serial).await? {
        Some(earlier) if earlier.kind != VersionKind::Withdrawn => {
            let note = earlier.note()?;
            notes::add(writing, &note, Happened { kind: VersionKind::Restored, undoes, recorded }).await?;
            Ok(Undone::Restored(note))
        }
        _ => {
            notes::add(writing, &note, Happened { kind: VersionKind::Withdrawn, undoes, recorded }).await?;
            Ok(Undone::Withdrawn(note))
        }
    }
}

/// The newest version that is no undo and was not undone.
async fn last_done(connection: &mut SqliteConnection, of: LastOf) -> Result<Option<VersionRow>, Wrong> {
    let (row, id) = match of {
        LastOf::Note(note) => (
            "SELECT v.version, v.serial, v.recorded_at, v.kind, v.undoes, v.author, v.body FROM note_versions v \
             WHERE v.note = $1 AND v.undoes IS NULL \
             AND NOT EXISTS (SELECT 1 FROM note_versions u WHERE u.undoes = v.version) \
             ORDER BY v.serial DESC LIMIT 1",
            note.0,
        ),
        LastOf::Colony(colony) => (
            "SELECT v.version, v.serial, v.recorded_at, v.kind, v.undoes, v.author, v.body FROM note_versions v \
             WHERE v.colony = $1 AND v.undoes IS NULL \
             AND NOT EXISTS (SELECT 1 FROM note_versions u WHERE u.undoes = v.version) \
             ORDER BY v.serial DESC LIMIT 1",
            colony.0,
        ),
    };
    Ok(sqlx::query_as(row).bind(id.to_string()).fetch_optional(connection).await?)
}

/// How a note stood before a version.
async fn before(connection: &mut SqliteConnection, note: NoteId, serial: i64) -> Result<Option<VersionRow>, Wrong> {
    let row = "SELECT version, serial, recorded_at, kind, undoes, author, body FROM note_versions \
               WHERE note = $1 AND serial < $2 ORDER BY serial DESC LIMIT 1";
    Ok(sqlx::query_as(row).bind(note.0.to_string()).bind(serial).fetch_optional(connection).await?)
}
