//! Notes brought in together: all of them or none, and taken back in one step.

use crate::fault::{Fault, Wrong};
use crate::hashes;
use crate::notes::{self, Happened, Taken, VersionRow};
use crate::recorded::Recorded;
use crate::rows::{Cell, SETTINGS, VersionKind};
use crate::store::Store;
use crate::undo;
use snowhum_apiary::Note;
use sqlx::sqlite::SqliteConnection;

/// Where it is kept which versions came in last: the time they were recorded at, the first serial and the last.
const LAST: &str = "notes.last_import";

/// What was taken back of notes that had come in together.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct TakenBack {
    /// Notes that are withdrawn now.
    pub withdrawn: usize,
    /// Notes that were changed since, which stay.
    pub changed: usize,
}

impl Store {
    /// Brings in notes from outside, each once by its id. One that was withdrawn is put back; one that stands
    /// differently stays as it is. All of it or nothing.
    ///
    /// # Errors
    /// When the store cannot be written; then nothing of it is kept.
    pub async fn import_notes(&self, notes: &[Note], recorded: impl Into<Recorded>) -> Result<Taken, Fault> {
        let recorded = recorded.into();
        let import = async {
            let mut writing = self.writing().await?;
            let (mut taken, before) = (Taken::default(), last_serial(&mut writing).await?);
            for note in notes {
                let put_back = put_back(&mut writing, note, &recorded).await?;
                let put = match put_back {
                    true => notes::Put::Stored,
                    false => notes::take_once(&mut writing, note, &recorded).await?,
                };
                taken.count(put);
            }
            let after = last_serial(&mut writing).await?;
            if after > before {
                let value = format!("{} {} {after}", recorded.at.as_millisecond(), before + 1);
                let row = vec![Cell::Text(LAST.to_owned()), Cell::Text(value)];
                hashes::keep(SETTINGS, &mut writing, row).await?;
            }
            writing.commit().await?;
            Ok(taken)
        };
        self.named(import).await
    }

    /// Takes back what came in together last, but for notes that were changed since. None where there is nothing.
    ///
    /// # Errors
    /// When the store cannot be written; then nothing of it is taken back.
    pub async fn undo_import(&self, recorded: impl Into<Recorded>) -> Result<Option<TakenBack>, Fault> {
        let recorded = recorded.into();
        let undo = async {
            let mut writing = self.writing().await?;
            let kept: Option<String> = sqlx::query_scalar("SELECT value FROM settings WHERE name = $1")
                .bind(LAST)
                .fetch_optional(&mut *writing)
                .await?;
            let Some([at, first, last]) = kept.as_deref().and_then(numbers) else { return Ok(None) };
            let rows = "SELECT version, serial, recorded_at, kind, undoes, author, body FROM note_versions \
                        WHERE serial BETWEEN $1 AND $2 AND recorded_at = $3 ORDER BY serial";
            let rows: Vec<VersionRow> =
                sqlx::query_as(rows).bind(first).bind(last).bind(at).fetch_all(&mut *writing).await?;
            let mut done = TakenBack { withdrawn: 0, changed: 0 };
            for row in rows {
                let stands = notes::last(&mut writing, row.note()?.id).await?;
                if stands.is_some_and(|stands| stands.serial == row.serial) {
                    undo::take_back(&mut writing, &row, &recorded).await?;
                    done.withdrawn += 1;
                } else {
                    done.changed += 1;
                }
            }
            hashes::forget(SETTINGS, &mut writing, &Cell::Text(LAST.to_owned())).await?;
            writing.commit().await?;
            Ok(Some(done))
        };
        self.named(undo).await
    }
}

/// Puts a note back that stands withdrawn just so.
async fn put_back(writing: &mut SqliteConnection, note: &Note, recorded: &Recorded) -> Result<bool, Wrong> {
    let last = notes::last(writing, note.id).await?.filter(|last| last.kind == VersionKind::Withdrawn);
    if !last.is_some_and(|last| last.note().is_ok_and(|kept| kept == *note)) {
        return Ok(false);
    }
    notes::add(writing, note, Happened { kind: VersionKind::Restored, undoes: None, recorded }).await?;
    Ok(true)
}

async fn last_serial(connection: &mut SqliteConnection) -> Result<i64, Wrong> {
    let last: Option<i64> = sqlx::query_scalar("SELECT MAX(serial) FROM note_versions").fetch_one(connection).await?;
    Ok(last.unwrap_or_default())
}

fn numbers(value: &str) -> Option<[i64; 3]> {
    let numbers: Option<Vec<i64>> = value.split(' ').map(|number| number.parse().ok()).collect();
    numbers?.try_into().ok()
}
