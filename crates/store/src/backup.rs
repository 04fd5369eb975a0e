//! A copy of the store while it is in use.

use crate::connect;
use crate::copy::{self, Access};
use crate::doctor::{self, Report};
use crate::fault::{Fault, Wrong};
use crate::files;
use crate::migrations::KNOWN;
use crate::store::Store;
use sqlx::Connection;
use std::fs;
use std::path::{self, Path};

impl Store {
    /// Writes a copy of the store as of one moment, its owner's alone; others may go on writing. The copy is checked
    /// before it gets its name, so that a backup is whole or not there; the report is on the copy.
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
            copy::into_fresh(&mut *self.reading().await?, KNOWN, &part, Access::Taken).await?;
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

async fn check(copy: &Path) -> Result<Report, Wrong> {
    let mut looking = connect::looking(copy).await?;
    let checks = doctor::examine(&mut looking).await;
    looking.close().await?;
    doctor::refuse_broken(&checks)?;
    Ok(Report { checks })
}
