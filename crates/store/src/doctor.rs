//! Whether a store is in order.

use crate::connect;
use crate::fault::{Fault, Wrong};
use crate::files;
use crate::hashes;
use crate::header;
use crate::migrations;
use crate::rows::{Cells, TABLES};
use crate::schema;
use crate::store::Store;
use snowhum_say::{Message, store_found as say};
use sqlx::sqlite::SqliteConnection;
use std::fs::{self, File};
use std::path::Path;
use std::time::Duration;

/// The two checks without which nothing else counts.
const FILE: &str = "file";
const FORM: &str = "form";
/// Faults named at most, each kind.
const NAMED: usize = 3;

/// What the doctor found.
#[derive(Debug, Clone, PartialEq)]
pub struct Report {
    /// Each thing looked at.
    pub checks: Vec<Check>,
}

/// One thing looked at.
#[derive(Debug, Clone, PartialEq)]
pub struct Check {
    /// What.
    pub what: &'static str,
    /// How it was found.
    pub found: Found,
}

/// How a thing was found.
#[derive(Debug, Clone, PartialEq)]
pub enum Found {
    /// In order.
    Well,
    /// Worth knowing; nothing is lost or wrong.
    Odd(Message),
    /// Not in order.
    Ill(Message),
}

impl Report {
    /// Whether nothing is out of order.
    #[must_use]
    pub fn is_well(&self) -> bool {
        self.ill().is_none()
    }

    /// The first thing out of order: what, and how.
    pub(crate) fn ill(&self) -> Option<Message> {
        self.checks.iter().find_map(|check| match &check.found {
            Found::Ill(what) => Some(say::of(say::check(check.what), what)),
            Found::Well | Found::Odd(_) => None,
        })
    }
}

impl Store {
    /// Looks at everything: the file, its form, what points where, every row, the folder. It ends in time, whatever the
    /// file is.
    ///
    /// # Errors
    /// When the store cannot be opened at all; what can be looked at ends in the report.
    pub async fn doctor(&self) -> Result<Report, Fault> {
        self.doctor_within(self.path().map_or(Duration::MAX, connect::patience)).await
    }

    /// The same in a time of one's own choosing; what takes longer is found ill.
    ///
    /// # Errors
    /// See [`Store::doctor`].
    pub async fn doctor_within(&self, time: Duration) -> Result<Report, Fault> {
        let doctor = async {
            let mut connection = self.pool().acquire().await?;
            connect::limit(&mut connection, time).await?;
            let mut checks = examine(&mut connection).await;
            connect::unlimit(&mut connection).await?;
            if let Some(path) = self.path() {
                checks.push(Check { what: "folder", found: folder(path) });
            }
            Ok(Report { checks })
        };
        self.named(doctor).await
    }

    /// The same for a store that this process has not open, with a look at the first bytes of its file.
    ///
    /// # Errors
    /// When the store cannot be opened: it is missing, no store, or so damaged that nothing of it can be trusted.
    pub async fn doctor_of(path: &Path) -> Result<Report, Fault> {
        let is_alone = !fs::metadata(files::beside(path, "-wal")).is_ok_and(|log| log.len() > 0);
        let head = header::fault(path, is_alone).map_err(|error| Fault::about(path, error))?;
        let store = Self::open(path).await?;
        let report = store.doctor().await;
        store.close().await;
        let mut report = report?;
        report
            .checks
            .insert(0, Check { what: "header", found: head.map_or(Found::Well, |what| Found::Ill(what.into())) });
        Ok(report)
    }
}

/// Looks at a database of the newest form. Nothing is asked of one whose form is not as it must be.
pub(crate) async fn examine(connection: &mut SqliteConnection) -> Vec<Check> {
    let mut checks = Vec::new();
    let mut add = |what, found: Result<Found, Wrong>| {
        let found = found.unwrap_or_else(|wrong| Found::Ill(wrong.message()));
        let is_ill = matches!(found, Found::Ill(_));
        checks.push(Check { what, found });
        is_ill
    };
    if add(FORM, form(connection).await) {
        return checks;
    }
    add(FILE, whole(connection).await);
    add("links", links(connection).await);
    add("bodies", bodies(connection).await);
    add("hashes", hashes(connection).await);
    add("notes", orphans(connection).await);
    checks
}

/// Refuses a database that cannot be trusted as a file. One record that cannot be read does not make the others
/// worthless: that is reported and not refused.
pub(crate) fn refuse_broken(checks: &[Check]) -> Result<(), Wrong> {
    let ill = checks.iter().find_map(|check| match &check.found {
        Found::Ill(what) if [FILE, FORM].contains(&check.what) => Some(what.clone()),
        _ => None,
    });
    ill.map_or(Ok(()), |what| Err(Wrong::damaged(what)))
}

/// What points at rows that are not there, or at such as stand in another yard; none if all is well.
pub(crate) async fn broken_links(connection: &mut SqliteConnection) -> Result<Option<Message>, Wrong> {
    let loose = sqlx::query("PRAGMA foreign_key_check").fetch_all(&mut *connection).await?.len();
    if loose > 0 {
        return Ok(Some(say::loose(loose)));
    }
    let count = "SELECT COUNT(*) FROM colonies c JOIN hives h ON h.id = c.hive \
                 WHERE c.left_at IS NULL AND (h.left_at IS NOT NULL OR h.yard <> c.yard)";
    let homeless: i64 = sqlx::query_scalar(count).fetch_one(connection).await?;
    Ok((homeless > 0).then(|| say::homeless(homeless)))
}

/// SQLite's own look at its pages and indices.
pub(crate) async fn whole(connection: &mut SqliteConnection) -> Result<Found, Wrong> {
    let told: Vec<String> = sqlx::query_scalar("PRAGMA integrity_check").fetch_all(connection).await?;
    Ok(if told == ["ok"] { Found::Well } else { Found::Ill(first(told.into_iter().map(Message::own).collect())) })
}

async fn form(connection: &mut SqliteConnection) -> Result<Found, Wrong> {
    let (found, known) = (schema::form(connection).await?, migrations::KNOWN);
    migrations::refuse_newer(found, known)?;
    if found < known {
        return Ok(Found::Ill(say::form(found, known)));
    }
    let changes: i64 = sqlx::query_scalar("PRAGMA schema_version").fetch_one(connection).await?;
    let expected = schema::changes(known).await?;
    Ok(if changes == expected { Found::Well } else { Found::Odd(say::rewritten(changes, expected)) })
}

async fn links(connection: &mut SqliteConnection) -> Result<Found, Wrong> {
    Ok(broken_links(connection).await?.map_or(Found::Well, Found::Ill))
}

async fn bodies(connection: &mut SqliteConnection) -> Result<Found, Wrong> {
    let mut wrongs = Vec::new();
    for table in TABLES {
        let rows = table.read_each(migrations::KNOWN, connection).await?;
        wrongs.extend(rows.into_iter().filter_map(|row| row.and_then(|row| table.check(&row)).err()).map(told));
    }
    Ok(if wrongs.is_empty() { Found::Well } else { Found::Ill(first(wrongs)) })
}

fn told(wrong: Wrong) -> Message {
    match wrong {
        Wrong::Damaged { what } | Wrong::Unfit { what, .. } => what,
        other => other.message(),
    }
}

async fn hashes(connection: &mut SqliteConnection) -> Result<Found, Wrong> {
    let mut wrongs = Vec::new();
    for table in TABLES {
        // A row that cannot be read is named among the bodies.
        let rows = table.read_each(migrations::KNOWN, connection).await?;
        let rows: Vec<Cells> = rows.into_iter().flatten().collect();
        wrongs.extend(hashes::faults(table, &rows, connection).await?);
    }
    Ok(if wrongs.is_empty() { Found::Well } else { Found::Ill(first(wrongs)) })
}

async fn orphans(connection: &mut SqliteConnection) -> Result<Found, Wrong> {
    let count = "SELECT COUNT(DISTINCT v.note) FROM note_versions v \
                 WHERE NOT EXISTS (SELECT 1 FROM colonies c WHERE c.id = v.colony)";
    let orphans: i64 = sqlx::query_scalar(count).fetch_one(connection).await?;
    Ok(if orphans == 0 { Found::Well } else { Found::Odd(say::orphans(orphans)) })
}

fn folder(store: &Path) -> Found {
    let probe = files::beside(store, &format!(".probe-{}", std::process::id()));
    match File::create_new(&probe).and_then(|_| files::remove(&probe)) {
        Ok(()) => Found::Well,
        Err(error) => Found::Ill(say::folder(error.to_string())),
    }
}

fn first(mut wrongs: Vec<Message>) -> Message {
    let more = wrongs.len().saturating_sub(NAMED);
    wrongs.truncate(NAMED);
    wrongs.extend((more > 0).then(|| say::more(more)));
    say::several(wrongs)
}
