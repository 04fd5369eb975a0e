//! The store and how it is opened and closed.

use crate::connect::{self, Room};
use crate::fault::{Fault, Wrong};
use crate::files;
use crate::migrations::{self, BEGIN_WRITING};
use crate::schema;
use sqlx::Connection;
use sqlx::sqlite::{Sqlite, SqliteConnection, SqlitePool};
use std::future::Future;
use std::path::{self, Path, PathBuf};

/// A transaction on the store.
pub(crate) type Transaction = sqlx::Transaction<'static, Sqlite>;

/// The keeper's records. Cheap to clone; clones share the file.
///
/// Its methods run on a Tokio runtime with time enabled; work on the file itself happens on threads of its own.
#[derive(Debug, Clone)]
pub struct Store {
    pool: SqlitePool,
    path: Option<PathBuf>,
}

impl Store {
    /// Opens a store, making the file and its folder if they are not there, and brings it to the newest form.
    ///
    /// # Errors
    /// When the file cannot be made, read or written, is no store, is damaged, or was written by a newer program. In
    /// each case the file is as it was.
    pub async fn open(path: &Path) -> Result<Self, Fault> {
        Self::open_with(path, Room::Unlimited).await
    }

    /// A store that is gone when it is closed.
    ///
    /// # Errors
    /// When there is no memory for it.
    pub async fn in_memory() -> Result<Self, Fault> {
        let named = |wrong| Fault::new("the store in memory", wrong);
        let store = Self { pool: connect::memory().await.map_err(named)?, path: None };
        migrations::apply(&store.pool).await.map_err(named)?;
        Ok(store)
    }

    /// Where the file is; none for a store in memory.
    #[must_use]
    pub fn path(&self) -> Option<&Path> {
        self.path.as_deref()
    }

    /// Waits for what is being written and lets go of the file. Clones are closed too.
    pub async fn close(self) {
        self.pool.close().await;
    }

    pub(crate) async fn open_with(path: &Path, room: Room) -> Result<Self, Fault> {
        let path = path::absolute(path).map_err(|error| Fault::about(path, error))?;
        let open = async {
            if let Some(folder) = path.parent() {
                files::create_private_folder(folder)?;
            }
            refuse_foreign(&path).await?;
            let pool = connect::file(&path, room).await?;
            match migrations::apply(&pool).await {
                Ok(()) => Ok(pool),
                Err(wrong) => {
                    pool.close().await;
                    Err(wrong)
                }
            }
        };
        let pool = open.await.map_err(|wrong: Wrong| Fault::about(&path, wrong))?;
        Ok(Self { pool, path: Some(path) })
    }

    pub(crate) fn pool(&self) -> &SqlitePool {
        &self.pool
    }

    /// A transaction that only reads: all it sees is of one moment.
    pub(crate) async fn reading(&self) -> Result<Transaction, Wrong> {
        Ok(self.pool.begin().await?)
    }

    /// A transaction that writes, alone.
    pub(crate) async fn writing(&self) -> Result<Transaction, Wrong> {
        Ok(self.pool.begin_with(BEGIN_WRITING).await?)
    }

    /// Puts the name of the file before a fault.
    pub(crate) async fn named<T>(&self, work: impl Future<Output = Result<T, Wrong>>) -> Result<T, Fault> {
        work.await.map_err(|wrong| self.fault(wrong))
    }

    pub(crate) fn fault(&self, wrong: Wrong) -> Fault {
        match &self.path {
            Some(path) => Fault::about(path, wrong),
            None => Fault::new("the store in memory", wrong),
        }
    }
}

/// Looks at a file before anything is set on it, so that a file that is refused stays as it was.
async fn refuse_foreign(path: &Path) -> Result<(), Wrong> {
    if !std::fs::metadata(path).is_ok_and(|file| file.len() > 0) {
        return Ok(());
    }
    let form = match form(connect::looking(path).await).await {
        // What a power cut broke off in the middle of making a store can only be taken back by one who may write.
        Err(Wrong::ReadOnly) if files::beside(path, "-journal").try_exists()? => {
            form(connect::recovering(path).await).await
        }
        form => form,
    };
    migrations::refuse_newer(form?, migrations::KNOWN)
}

async fn form(looking: Result<SqliteConnection, Wrong>) -> Result<i64, Wrong> {
    let mut looking = looking?;
    let form = schema::form(&mut looking).await;
    looking.close().await?;
    form
}

#[cfg(test)]
mod full_disk;
