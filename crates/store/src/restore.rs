//! A backup put in the place of the store.

use crate::backup;
use crate::connect::{self, Room};
use crate::doctor::{self, Report};
use crate::fault::{Fault, Wrong};
use crate::files;
use crate::migrations;
use crate::store::Store;
use jiff::Timestamp;
use sqlx::Connection;
use sqlx::sqlite::{SqliteConnectOptions, SqliteConnection};
use std::fs;
use std::path::{self, Path, PathBuf};

/// What a restore did.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Restored {
    /// Where the store that was there is now; none if there was none.
    pub kept_aside: Option<PathBuf>,
    /// On what was restored.
    pub report: Report,
}

impl Store {
    /// Puts a backup in the place of a store, which must be closed. The backup is checked first; the store that was
    /// there is kept beside under a name with the time `at`. At each moment one of the two is in place, whole.
    ///
    /// # Errors
    /// When the backup is missing, no store, damaged, or of a newer form; when the store is in use; when the folder
    /// cannot be written. The store is as it was then.
    pub async fn restore(from: &Path, into: &Path, at: Timestamp) -> Result<Restored, Fault> {
        let absolute = |path: &Path| path::absolute(path).map_err(|error| Fault::about(path, error));
        let (from, into) = (absolute(from)?, real(&absolute(into)?));
        let new = files::beside(&into, ".restoring");
        let restored = async {
            let report = fetch(&from, &new).await.map_err(|wrong| Fault::about(&from, wrong))?;
            let kept_aside = place(&new, &into, at).await.map_err(|wrong| Fault::about(&into, wrong))?;
            Ok(Restored { kept_aside, report })
        };
        restored.await.inspect_err(|_| {
            // The copy is of no use; if it cannot be removed either, that is the same fault.
            let _ = files::remove(&new);
        })
    }
}

/// The file behind a link, so that the link goes on pointing at the store.
fn real(path: &Path) -> PathBuf {
    path.canonicalize().unwrap_or_else(|_| path.to_owned())
}

/// Copies the backup beside the store, brings it to the newest form and checks it.
async fn fetch(from: &Path, new: &Path) -> Result<Report, Wrong> {
    let mut looking = connect::looking(from).await?;
    let copied = async {
        let form = migrations::form(&mut looking).await?;
        if form == 0 {
            return Err(Wrong::NotADatabase);
        }
        migrations::refuse_newer(form, migrations::KNOWN)?;
        if let Some(folder) = new.parent() {
            fs::create_dir_all(folder)?;
        }
        backup::copy(&mut looking, new).await
    };
    let copied = copied.await;
    looking.close().await?;
    copied?;
    let pool = connect::file(new, Room::Unlimited).await?;
    let checked = async {
        migrations::apply(&pool).await?;
        let checks = doctor::examine(&mut *pool.acquire().await?).await;
        doctor::refuse_broken(&checks)?;
        Ok(Report { checks })
    };
    let checked = checked.await;
    pool.close().await;
    files::settle(new)?;
    checked
}

/// Puts the copy in the place of the store; gives where that one is now.
async fn place(new: &Path, into: &Path, at: Timestamp) -> Result<Option<PathBuf>, Wrong> {
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
