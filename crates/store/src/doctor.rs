//! Whether a store is in order.

use crate::fault::{Fault, Wrong};
use crate::files;
use crate::migrations;
use crate::rows::TABLES;
use crate::store::Store;
use sqlx::sqlite::SqliteConnection;
use std::fs::File;
use std::path::Path;

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
    add("file", whole(connection).await);
    add("form", form(connection).await);
    add("links", links(connection).await);
    add("bodies", bodies(connection).await);
    add("notes", orphans(connection).await);
    checks
}

/// Refuses what the doctor finds ill.
pub(crate) fn refuse_ill(checks: &[Check]) -> Result<(), Wrong> {
    let ill = checks.iter().find_map(|check| match &check.found {
        Found::Ill(what) => Some(format!("{}: {what}", check.what)),
        Found::Well | Found::Odd(_) => None,
    });
    ill.map_or(Ok(()), |what| Err(Wrong::damaged(what)))
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
    let broken = sqlx::query("PRAGMA foreign_key_check").fetch_all(connection).await?.len();
    Ok(if broken == 0 { Found::Well } else { Found::Ill(format!("{broken} rows point at rows that are not there")) })
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
