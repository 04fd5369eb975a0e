//! A backup put in the place of the store.

use crate::connect;
use crate::copy::{self, Access};
use crate::doctor::{self, Found, Report};
use crate::dump;
use crate::fault::{Fault, Wrong};
use crate::files;
use crate::header;
use crate::migrations;
use crate::schema;
use crate::store::Store;
use jiff::Timestamp;
use sqlx::Connection;
use sqlx::sqlite::{SqliteConnectOptions, SqliteConnection};
use std::fs::{self, File};
use std::path::{self, Path, PathBuf};

/// What a restore did.
#[derive(Debug, Clone, PartialEq)]
pub struct Restored {
    /// Where the store that was there is now; none if there was none.
    pub kept_aside: Option<PathBuf>,
    /// Settings that open the pages' gate and stayed behind: a pass phrase, sessions, links.
    pub access_left: usize,
    /// On what was restored.
    pub report: Report,
}

impl Store {
    /// Puts the records of a backup or an export in the place of a store, which must be closed. Rows alone are taken
    /// from the file, each checked, into a fresh store; the store that was there is kept beside under a name with the
    /// time `at`. At each moment one of the two is in place, whole.
    ///
    /// # Errors
    /// When the file is missing, no store, not in order, or of a newer form, or holds what no store holds; when the
    /// store is in use; when the folder cannot be written. The store is as it was then.
    pub async fn restore(from: &Path, into: &Path, access: Access, at: Timestamp) -> Result<Restored, Fault> {
        let (from, into) = at_rest(from, into)?;
        let new = files::beside(&into, ".restoring");
        let restored = async {
            let fetched = fetch(&from, &new, access).await.map_err(|wrong| Fault::about(&from, wrong))?;
            let kept_aside = place(&new, &into, at).await.map_err(|wrong| Fault::about(&into, wrong))?;
            Ok(Restored { kept_aside, access_left: fetched.access_left, report: fetched.report })
        };
        restored.await.inspect_err(|_| {
            // The copy is of no use; if it cannot be removed either, that is the same fault.
            let _ = files::remove(&new);
        })
    }
}

/// What was taken in.
pub(crate) struct Fetched {
    access_left: usize,
    report: Report,
}

/// Where a file lies that is taken in, and where records lie.
pub(crate) fn at_rest(from: &Path, into: &Path) -> Result<(PathBuf, PathBuf), Fault> {
    let absolute = |path: &Path| path::absolute(path).map_err(|error| Fault::about(path, error));
    Ok((absolute(from)?, real(&absolute(into)?)))
}

/// The file behind a link, so that the link goes on pointing at the store.
fn real(path: &Path) -> PathBuf {
    path.canonicalize().unwrap_or_else(|_| path.to_owned())
}

/// Takes the rows of a file into a fresh store beside the one there is, and looks whether that is in order.
pub(crate) async fn fetch(from: &Path, new: &Path, access: Access) -> Result<Fetched, Wrong> {
    if let Some(folder) = new.parent() {
        files::create_private_folder(folder)?;
    }
    let access_left =
        if header::is_database(from)? { of_backup(from, new, access).await? } else { of_export(from, new).await? };
    Ok(Fetched { access_left, report: refuse_ill(new).await? })
}

/// Looks whether a fresh store is in order.
pub(crate) async fn refuse_ill(new: &Path) -> Result<Report, Wrong> {
    let mut looking = connect::looking(new).await?;
    let report = Report { checks: doctor::examine(&mut looking).await };
    looking.close().await?;
    match report.ill() {
        Some(what) => Err(Wrong::NotInOrder { what }),
        None => Ok(report),
    }
}

/// Gives how many rows were left behind.
async fn of_backup(from: &Path, new: &Path, access: Access) -> Result<usize, Wrong> {
    let mut looking = connect::looking(from).await?;
    let copied = async {
        let mut reading = looking.begin().await?;
        let form = schema::form(&mut reading).await?;
        if form == 0 {
            return Err(Wrong::NotADatabase);
        }
        migrations::refuse_newer(form, migrations::KNOWN)?;
        if let Found::Ill(what) = doctor::whole(&mut reading).await? {
            return Err(Wrong::damaged(what));
        }
        copy::into_fresh(&mut reading, form, new, access).await
    };
    let copied = copied.await;
    looking.close().await?;
    copied
}

/// An export holds nothing of the gate.
async fn of_export(from: &Path, new: &Path) -> Result<usize, Wrong> {
    if !dump::is_export(File::open(from)?)? {
        return Err(Wrong::NotADatabase);
    }
    let mut fresh = connect::fresh(new).await?;
    let taken = async {
        let mut writing = fresh.begin_with(migrations::BEGIN_WRITING).await?;
        migrations::make(&mut writing, migrations::KNOWN).await?;
        dump::take_in(File::open(from)?, &mut writing).await?;
        Ok(writing.commit().await?)
    };
    let taken: Result<(), Wrong> = taken.await;
    fresh.close().await?;
    taken?;
    files::settle(new)?;
    Ok(0)
}

/// Puts the copy in the place of the store; gives where that one is now.
pub(crate) async fn place(new: &Path, into: &Path, at: Timestamp) -> Result<Option<PathBuf>, Wrong> {
    if !into.try_exists()? {
        fs::rename(new, into)?;
        files::settle_folder_of(into)?;
        return Ok(None);
    }
    refuse_in_use(into).await?;
    let aside = free_name(into, at)?;
    files::also_as(into, &aside)?;
    // What a damaged store left unfinished belongs to it; read into the new one it would damage that too.
    if files::beside(into, "-wal").try_exists()? {
        fs::rename(files::beside(into, "-wal"), files::beside(&aside, "-wal"))?;
    }
    files::remove(&files::beside(into, "-shm"))?;
    fs::rename(new, into)?;
    files::settle_folder_of(into)?;
    Ok(Some(aside))
}

/// Takes the store for itself alone, which also brings all that was written into the one file.
async fn refuse_in_use(store: &Path) -> Result<(), Wrong> {
    let options = SqliteConnectOptions::new().filename(store).create_if_missing(false);
    let alone = async {
        let mut connection = SqliteConnection::connect_with(&options).await?;
        let mode: String = sqlx::query_scalar("PRAGMA journal_mode = DELETE").fetch_one(&mut connection).await?;
        connection.close().await?;
        Ok(mode)
    };
    match alone.await {
        Ok(mode) if mode == "delete" => Ok(()),
        Ok(_) | Err(Wrong::Locked) => Err(Wrong::Locked),
        // Too damaged to be opened: it is put aside as it is.
        Err(Wrong::NotADatabase | Wrong::Damaged { .. }) => Ok(()),
        Err(wrong) => Err(wrong),
    }
}

/// A name beside the store that nobody has.
fn free_name(store: &Path, at: Timestamp) -> Result<PathBuf, Wrong> {
    let stamp = at.strftime("%Y%m%dT%H%M%SZ").to_string();
    let names = (1..100).map(|number| match number {
        1 => files::beside(store, &format!(".{stamp}")),
        number => files::beside(store, &format!(".{stamp}-{number}")),
    });
    for name in names {
        if !name.try_exists()? && !files::beside(&name, "-wal").try_exists()? {
            return Ok(name);
        }
    }
    Err(Wrong::AlreadyThere)
}
