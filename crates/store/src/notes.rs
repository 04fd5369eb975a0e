//! Notes: every version is kept, the last one says how a note stands.

use crate::body;
use crate::fault::{Fault, Wrong};
use crate::hashes;
use crate::recorded::Recorded;
use crate::rows::{Cell, VersionKind};
use crate::store::Store;
use jiff::tz::TimeZone;
use jiff::{SignedDuration, Timestamp};
use snowhum_apiary::{ApiaryId, Note, NoteId, YEARS};
use snowhum_say::store as say;
use sqlx::sqlite::{SqliteConnection, SqliteRow};
use sqlx::{FromRow, Row};
use uuid::Uuid;

/// How far ahead of the clock a note may be: some write down what they mean to do.
const AHEAD: SignedDuration = SignedDuration::from_hours(366 * 24);
/// A clock that says an earlier year is wrong: a small board without a battery wakes in 1970.
const RIGHT_CLOCK: i16 = 2026;

/// What became of a note that was put.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Put {
    /// It is new.
    Stored,
    /// It stands, or stood when it was withdrawn, just so: nothing was done.
    AlreadyThere,
    /// It is a new version; the old one is kept.
    Edited,
}

/// What became of notes that were taken in from outside, each once by its id.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Taken {
    /// New ones.
    pub stored: usize,
    /// There already, just so.
    pub known: usize,
    /// Standing differently in the store, which is kept: they may have been edited since.
    pub differing: usize,
}

/// One version of a note.
#[derive(Debug, Clone, PartialEq)]
pub struct Version {
    /// Its own id.
    pub id: Uuid,
    /// What happened.
    pub kind: VersionKind,
    /// When and by whom.
    pub recorded: Recorded,
    /// The version this one takes back, for an undo.
    pub undoes: Option<Uuid>,
    /// The note as of then; of a withdrawn one, as it last stood.
    pub note: Note,
}

/// A row of `note_versions` as kept.
#[derive(Debug, Clone)]
pub(crate) struct VersionRow {
    pub(crate) version: String,
    pub(crate) serial: i64,
    pub(crate) recorded_at: i64,
    pub(crate) kind: VersionKind,
    pub(crate) undoes: Option<String>,
    pub(crate) author: String,
    pub(crate) body: String,
}

/// What a new version says beside the note itself.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Happened<'a> {
    pub(crate) kind: VersionKind,
    pub(crate) undoes: Option<&'a str>,
    pub(crate) recorded: &'a Recorded,
}

impl Store {
    /// Keeps a note. Putting the same note again does nothing, so that a sender may repeat itself; putting another
    /// body under the same id is an edit, and brings a withdrawn note back.
    ///
    /// # Errors
    /// When the store cannot be written; then nothing of it is kept.
    pub async fn put_note(&self, note: &Note, recorded: impl Into<Recorded>) -> Result<Put, Fault> {
        let recorded = recorded.into();
        let put = async {
            let mut writing = self.writing().await?;
            let put = put(&mut writing, note, &recorded).await?;
            writing.commit().await?;
            Ok(put)
        };
        self.named(put).await
    }

    /// Takes a note out of the answers; its versions stay. `false` if it was withdrawn already.
    ///
    /// # Errors
    /// When there is no such note, or the store cannot be written.
    pub async fn withdraw_note(&self, note: NoteId, recorded: impl Into<Recorded>) -> Result<bool, Fault> {
        let recorded = recorded.into();
        let withdraw = async {
            let mut writing = self.writing().await?;
            let last = last(&mut writing, note).await?.ok_or(Wrong::NoSuchNote { id: note.0.to_string() })?;
            if last.kind == VersionKind::Withdrawn {
                return Ok(false);
            }
            let happened = Happened { kind: VersionKind::Withdrawn, undoes: None, recorded: &recorded };
            add(&mut writing, &last.note()?, happened).await?;
            writing.commit().await?;
            Ok(true)
        };
        self.named(withdraw).await
    }

    /// Every version of a note, oldest first; empty if there is no such note.
    ///
    /// # Errors
    /// When the store cannot be read.
    pub async fn versions(&self, note: NoteId) -> Result<Vec<Version>, Fault> {
        let versions = async {
            let rows = "SELECT version, serial, recorded_at, kind, undoes, author, body FROM note_versions \
                        WHERE note = $1 ORDER BY serial";
            let mut reading = self.reading().await?;
            let rows: Vec<VersionRow> = sqlx::query_as(rows).bind(note.0.to_string()).fetch_all(&mut *reading).await?;
            rows.into_iter().map(VersionRow::version).collect()
        };
        self.named(versions).await
    }

    /// The notes of the colonies in a yard as they stand now, made up to a time, by time and id.
    ///
    /// # Errors
    /// When the store cannot be read.
    pub async fn notes(&self, yard: ApiaryId, up_to: Timestamp) -> Result<Vec<Note>, Fault> {
        self.named(async { of_yard(&mut *self.reading().await?, yard, up_to, Who::Standing).await }).await
    }
}

impl Taken {
    /// Counts what became of one more.
    pub(crate) fn count(&mut self, one: Put) {
        match one {
            Put::Stored => self.stored += 1,
            Put::AlreadyThere => self.known += 1,
            Put::Edited => self.differing += 1,
        }
    }
}

impl VersionRow {
    pub(crate) fn note(&self) -> Result<Note, Wrong> {
        body::read(&self.body, "note version", &self.version)
    }

    fn version(self) -> Result<Version, Wrong> {
        Ok(Version {
            id: body::id(&self.version)?,
            kind: self.kind,
            undoes: self.undoes.as_deref().map(body::id).transpose()?,
            note: self.note()?,
            recorded: Recorded { at: body::time(self.recorded_at)?, author: self.author },
        })
    }
}

impl FromRow<'_, SqliteRow> for VersionRow {
    fn from_row(row: &SqliteRow) -> sqlx::Result<Self> {
        let kind: String = row.try_get("kind")?;
        let unknown = || sqlx::Error::Decode(format!("{kind:?} is no kind of version").into());
        Ok(Self {
            kind: VersionKind::from_word(&kind).ok_or_else(unknown)?,
            version: row.try_get("version")?,
            serial: row.try_get("serial")?,
            recorded_at: row.try_get("recorded_at")?,
            undoes: row.try_get("undoes")?,
            author: row.try_get("author")?,
            body: row.try_get("body")?,
        })
    }
}

async fn put(writing: &mut SqliteConnection, note: &Note, recorded: &Recorded) -> Result<Put, Wrong> {
    let put = meant(writing, note).await?;
    let kind = match put {
        Put::AlreadyThere => return Ok(put),
        Put::Edited => VersionKind::Edited,
        Put::Stored => VersionKind::Made,
    };
    timely(note, recorded)?;
    add(writing, note, Happened { kind, undoes: None, recorded }).await?;
    Ok(put)
}

/// Keeps a note if its id is new; `Edited` means that it stands differently and nothing was done.
pub(crate) async fn take_once(writing: &mut SqliteConnection, note: &Note, recorded: &Recorded) -> Result<Put, Wrong> {
    let put = meant(writing, note).await?;
    if put == Put::Stored {
        timely(note, recorded)?;
        add(writing, note, Happened { kind: VersionKind::Made, undoes: None, recorded }).await?;
    }
    Ok(put)
}

/// Refuses a day that nobody can mean: out of the years records are of, or more than a year ahead of the clock. A clock
/// that itself stands before this program is not asked.
fn timely(note: &Note, recorded: &Recorded) -> Result<(), Wrong> {
    let year = |time: Timestamp| time.to_zoned_datetime(TimeZone::UTC).year();
    let is_ahead = year(recorded.at) >= RIGHT_CLOCK && note.at.duration_since(recorded.at) > AHEAD;
    if YEARS.contains(&year(note.at)) && !is_ahead {
        return Ok(());
    }
    let what = say::note_of(note.id.0.to_string(), note.at.to_string());
    Err(Wrong::Unfit { field: "time", what, right: "years" })
}

/// What putting a note would be.
async fn meant(connection: &mut SqliteConnection, note: &Note) -> Result<Put, Wrong> {
    Ok(match last(connection, note.id).await? {
        // One that cannot be read differs, and is kept beside the new one.
        Some(last) if last.note().is_ok_and(|kept| kept == *note) => Put::AlreadyThere,
        Some(_) => Put::Edited,
        None => Put::Stored,
    })
}

/// The version that says how a note stands.
pub(crate) async fn last(connection: &mut SqliteConnection, note: NoteId) -> Result<Option<VersionRow>, Wrong> {
    let row = "SELECT version, serial, recorded_at, kind, undoes, author, body FROM note_versions \
               WHERE note = $1 ORDER BY serial DESC LIMIT 1";
    Ok(sqlx::query_as(row).bind(note.0.to_string()).fetch_optional(connection).await?)
}

/// Adds a version after all others.
pub(crate) async fn add(writing: &mut SqliteConnection, note: &Note, happened: Happened<'_>) -> Result<(), Wrong> {
    let text = |text: &dyn ToString| Cell::Text(text.to_string());
    let author = body::text(&happened.recorded.author, "author")?;
    let body = body::written(note, "note")?;
    let row = |serial: i64| {
        vec![
            text(&version_id(happened.recorded.at)),
            Cell::Whole(serial),
            text(&note.id.0),
            text(&note.visit.0),
            text(&note.colony.0),
            Cell::Whole(note.at.as_millisecond()),
            Cell::Whole(happened.recorded.at.as_millisecond()),
            text(&happened.kind.word()),
            happened.undoes.map_or(Cell::None, |version| text(&version)),
            text(&author),
            Cell::Text(body),
        ]
    };
    hashes::append(writing, row).await
}

/// Which colonies of a yard are meant.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Who {
    /// Those that stand in it.
    Standing,
    /// Those that have left it too.
    Ever,
}

/// The notes of a yard as they stand, by time and id.
pub(crate) async fn of_yard(
    reading: &mut SqliteConnection,
    yard: ApiaryId,
    up_to: Timestamp,
    who: Who,
) -> Result<Vec<Note>, Wrong> {
    let rows = match who {
        Who::Standing => {
            "SELECT v.note, v.body FROM note_versions v JOIN colonies c ON c.id = v.colony \
             WHERE c.yard = $1 AND c.left_at IS NULL AND v.at <= $2 AND v.kind <> 'withdrawn' \
             AND v.serial = (SELECT MAX(l.serial) FROM note_versions l WHERE l.note = v.note)"
        }
        Who::Ever => {
            "SELECT v.note, v.body FROM note_versions v JOIN colonies c ON c.id = v.colony \
             WHERE c.yard = $1 AND v.at <= $2 AND v.kind <> 'withdrawn' \
             AND v.serial = (SELECT MAX(l.serial) FROM note_versions l WHERE l.note = v.note)"
        }
    };
    let rows: Vec<(String, String)> =
        sqlx::query_as(rows).bind(yard.0.to_string()).bind(up_to.as_millisecond()).fetch_all(reading).await?;
    let notes: Result<Vec<Note>, Wrong> = rows.iter().map(|(id, text)| body::read(text, "note", id)).collect();
    let mut notes = notes?;
    // The column is cut to the millisecond.
    notes.retain(|note| note.at <= up_to);
    notes.sort_by_key(|note| (note.at, note.id));
    Ok(notes)
}

/// An id that sorts by time. Times before 1970 count as 1970; the order of versions is that of their serials.
fn version_id(at: Timestamp) -> Uuid {
    let seconds = u64::try_from(at.as_second()).unwrap_or(0);
    let nanoseconds = u32::try_from(at.subsec_nanosecond()).unwrap_or(0);
    Uuid::new_v7(uuid::Timestamp::from_unix(uuid::NoContext, seconds, nanoseconds))
}
