//! A copy of the store while it is in use.

use crate::connect;
use crate::doctor::{self, Report};
use crate::fault::{Fault, Wrong};
use crate::files;
use crate::store::Store;
use sqlx::Connection;
use sqlx::sqlite::SqliteConnection;
use std::fs;
use std::path::{self, Path};

impl Store {
    /// Writes a copy of the store as of one moment; others may go on writing. The copy is checked before it gets its
    /// name, so that a backup is whole or not there; the report is on the copy.
    ///
    /// # Errors
    /// When a file of that name is there, or the copy cannot be written or is damaged as a file.
    pub async fn backup(&self, to: &Path) -> Result<Report, Fault> {
        let to = path::absolute(to).map_err(|error| Fault::about(to, error))?;
        let part = files::beside(&to, ".part");
        let backup = async {
            if to.try_exists()? {
                return Err(Wrong::AlreadyThere);
            }
            copy(&mut *self.pool().acquire().await?, &part).await?;
            let report = check(&part).await?;
            fs::rename(&part, &to)?;
            files::settle_folder_of(&to)?;
            Ok(report)
        };
        backup.await.map_err(|wrong| {
            // The part is of no use; if it cannot be removed either, that is the same fault.
            let _ = files::remove(&part);
            Fault::about(&to, wrong)
        })
    }
}

/// Copies a database as of one moment into a new file, compact, and waits until it is on the disk. A copy of that name
/// left over by an end halfway is thrown away.
pub(crate) async fn copy(from: &mut SqliteConnection, to: &Path) -> Result<(), Wrong> {
    let name = to.to_str().ok_or_else(|| Wrong::Disk { what: "its name is no text".to_owned() })?;
    files::remove(to)?;
    sqlx::query("VACUUM INTO $1").bind(name).execute(from).await?;
    Ok(files::settle(to)?)
}

async fn check(copy: &Path) -> Result<Report, Wrong> {
    let mut looking = connect::looking(copy).await?;
    let checks = doctor::examine(&mut looking).await;
    looking.close().await?;
    doctor::refuse_broken(&checks)?;
    Ok(Report { checks })
}
