//! Whether a store is in order.

use crate::fault::{Fault, Wrong};
use crate::files;
use crate::migrations;
use crate::rows::TABLES;
use crate::store::Store;
use sqlx::sqlite::SqliteConnection;
use std::fs::File;
use std::path::Path;

/// The two checks without which nothing else counts.
const FILE: &str = "file";
const FORM: &str = "form";
/// Faults named at most, each kind.
const NAMED: usize = 3;

/// What the doctor found.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Report {
    /// Each thing looked at.
    pub checks: Vec<Check>,
}

/// One thing looked at.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Check {
    /// What.
    pub what: &'static str,
    /// How it was found.
    pub found: Found,
}

/// How a thing was found.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Found {
    /// In order.
    Well,
    /// Worth knowing; nothing is lost or wrong.
    Odd(String),
    /// Not in order.
    Ill(String),
}

impl Report {
    /// Whether nothing is out of order.
    #[must_use]
    pub fn is_well(&self) -> bool {
        !self.checks.iter().any(|check| matches!(check.found, Found::Ill(_)))
    }
}

impl Store {
    /// Looks at everything: the file, its form, what points where, every body, the folder.
    ///
    /// # Errors
    /// When the store cannot be opened at all; what can be looked at ends in the report.
    pub async fn doctor(&self) -> Result<Report, Fault> {
        let doctor = async {
            let mut connection = self.pool().acquire().await?;
            let mut checks = examine(&mut connection).await;
            if let Some(path) = self.path() {
                checks.push(Check { what: "folder", found: folder(path) });
            }
            Ok(Report { checks })
        };
        self.named(doctor).await
    }
}

/// Looks at a database.
pub(crate) async fn examine(connection: &mut SqliteConnection) -> Vec<Check> {
    let mut checks = Vec::new();
    let mut add = |what, found: Result<Found, Wrong>| {
        checks.push(Check { what, found: found.unwrap_or_else(|wrong| Found::Ill(wrong.to_string())) });
    };
    add(FILE, whole(connection).await);
    add(FORM, form(connection).await);
    add("links", links(connection).await);
    add("bodies", bodies(connection).await);
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
pub(crate) async fn broken_links(connection: &mut SqliteConnection) -> Result<Option<String>, Wrong> {
    let loose = sqlx::query("PRAGMA foreign_key_check").fetch_all(&mut *connection).await?.len();
    if loose > 0 {
        return Ok(Some(format!("{loose} rows point at rows that are not there")));
    }
    let count = "SELECT COUNT(*) FROM colonies c JOIN hives h ON h.id = c.hive \
                 WHERE c.left_at IS NULL AND (h.left_at IS NOT NULL OR h.yard <> c.yard)";
    let homeless: i64 = sqlx::query_scalar(count).fetch_one(connection).await?;
    Ok((homeless > 0).then(|| format!("{homeless} colonies are in hives that do not stand in their yard")))
}

async fn whole(connection: &mut SqliteConnection) -> Result<Found, Wrong> {
    let told: Vec<String> = sqlx::query_scalar("PRAGMA integrity_check").fetch_all(connection).await?;
    Ok(if told == ["ok"] { Found::Well } else { Found::Ill(first(&told)) })
}

async fn form(connection: &mut SqliteConnection) -> Result<Found, Wrong> {
    let (found, known) = (migrations::form(connection).await?, migrations::KNOWN);
    migrations::refuse_newer(found, known)?;
    Ok(if found == known {
        Found::Well
    } else {
        Found::Odd(format!("of form {found}; opening it brings it to {known}"))
    })
}

async fn links(connection: &mut SqliteConnection) -> Result<Found, Wrong> {
    Ok(broken_links(connection).await?.map_or(Found::Well, Found::Ill))
}

async fn bodies(connection: &mut SqliteConnection) -> Result<Found, Wrong> {
    let mut wrongs = Vec::new();
    for table in TABLES {
        let rows = table.read(connection).await?;
        wrongs.extend(rows.iter().filter_map(|row| table.check(row).err()).map(|wrong| match wrong {
            Wrong::Damaged { what } | Wrong::Unfit { what, .. } => what,
            other => other.to_string(),
        }));
    }
    Ok(if wrongs.is_empty() { Found::Well } else { Found::Ill(first(&wrongs)) })
}

async fn orphans(connection: &mut SqliteConnection) -> Result<Found, Wrong> {
    let count = "SELECT COUNT(DISTINCT v.note) FROM note_versions v \
                 WHERE NOT EXISTS (SELECT 1 FROM colonies c WHERE c.id = v.colony)";
    let orphans: i64 = sqlx::query_scalar(count).fetch_one(connection).await?;
    let odd = || Found::Odd(format!("{orphans} are about colonies no yard has yet; they are kept and not shown"));
    Ok(if orphans == 0 { Found::Well } else { odd() })
}

fn folder(store: &Path) -> Found {
    let probe = files::beside(store, &format!(".probe-{}", std::process::id()));
    match File::create_new(&probe).and_then(|_| files::remove(&probe)) {
        Ok(()) => Found::Well,
        Err(error) => Found::Ill(format!("the folder of the store cannot be written ({error})")),
    }
}

fn first(wrongs: &[String]) -> String {
    let named = wrongs.iter().take(NAMED).map(String::as_str).collect::<Vec<_>>().join("; ");
    if wrongs.len() > NAMED { format!("{named}; and {} more", wrongs.len() - NAMED) } else { named }
}
