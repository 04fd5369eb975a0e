//! How a SQLite file is opened.

use crate::fault::Wrong;
use sqlx::sqlite::{SqliteConnectOptions, SqliteConnection, SqlitePool, SqlitePoolOptions};
use sqlx::{AssertSqlSafe, Connection};
use std::path::Path;
use std::time::Duration;

/// Connections at once: one writer and a few readers.
const CONNECTIONS: u32 = 4;
/// How long a call waits for a connection.
const WAIT: Duration = Duration::from_secs(10);
/// Each connection: wait 5 s for another writer; readers never wait for writers; a commit is on the disk before it is
/// answered; and a file from elsewhere runs nothing of its own.
const PRAGMAS: &str = "PRAGMA busy_timeout = 5000;
    PRAGMA journal_mode = WAL;
    PRAGMA synchronous = FULL;
    PRAGMA foreign_keys = ON;
    PRAGMA trusted_schema = OFF;
    PRAGMA cell_size_check = ON;";
/// For a file that is only looked at.
const LOOKING: &str = "PRAGMA busy_timeout = 5000; PRAGMA trusted_schema = OFF; PRAGMA cell_size_check = ON;";

/// How far a file may grow.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Room {
    /// As the disk allows.
    Unlimited,
    /// As many pages of 4096 bytes; how tests fill a disk.
    #[cfg_attr(not(test), expect(dead_code, reason = "only tests fill a disk"))]
    Pages(u32),
}

/// A store in a file, made if it is not there. The path must be absolute, so that no name reads as an address.
pub(crate) async fn file(path: &Path, room: Room) -> Result<SqlitePool, Wrong> {
    let options = SqliteConnectOptions::new().filename(path).create_if_missing(true);
    // A pool tries again until its time is up and then cannot say why; this one connection says it at once.
    let mut first = SqliteConnection::connect_with(&options).await?;
    match sqlx::raw_sql(PRAGMAS).execute(&mut first).await.map_err(Wrong::from) {
        // Another program is making the same store; trying again is right.
        Ok(_) | Err(Wrong::Locked) => {}
        Err(wrong) => return Err(wrong),
    }
    let pool = pool(room).max_connections(CONNECTIONS).connect_with(options).await?;
    first.close().await?;
    Ok(pool)
}

/// A store that is gone when it is closed.
pub(crate) async fn memory() -> Result<SqlitePool, Wrong> {
    let options = SqliteConnectOptions::new().in_memory(true);
    let pool = pool(Room::Unlimited).max_connections(1).min_connections(1).idle_timeout(None).max_lifetime(None);
    Ok(pool.connect_with(options).await?)
}

/// A file that is only looked at, never changed or made.
pub(crate) async fn looking(path: &Path) -> Result<SqliteConnection, Wrong> {
    if !path.try_exists()? {
        return Err(Wrong::Missing);
    }
    let options = SqliteConnectOptions::new().filename(path).create_if_missing(false).read_only(true);
    let mut connection = SqliteConnection::connect_with(&options).await?;
    sqlx::raw_sql(LOOKING).execute(&mut connection).await?;
    Ok(connection)
}

fn pool(room: Room) -> SqlitePoolOptions {
    SqlitePoolOptions::new().acquire_timeout(WAIT).after_connect(move |connection, _| {
        Box::pin(async move {
            sqlx::raw_sql(PRAGMAS).execute(&mut *connection).await?;
            if let Room::Pages(most) = room {
                let limit = AssertSqlSafe(format!("PRAGMA max_page_count = {most}"));
                sqlx::raw_sql(limit).execute(&mut *connection).await?;
            }
            Ok(())
        })
    })
}

#[cfg(test)]
mod tests {
    use super::{Room, file};

    #[test]
    fn every_connection_waits_for_the_disk_and_keeps_to_the_links() {
        let path = std::env::temp_dir().join(format!("snowhum-connect-{}.db", std::process::id()));
        tokio::runtime::Builder::new_current_thread().enable_time().build().unwrap().block_on(async {
            let pool = file(&path, Room::Unlimited).await.unwrap();
            let mut held = Vec::new();
            for _ in 0..super::CONNECTIONS {
                let mut connection = pool.acquire().await.unwrap();
                let mode: String = sqlx::query_scalar("PRAGMA journal_mode").fetch_one(&mut *connection).await.unwrap();
                let full: i64 = sqlx::query_scalar("PRAGMA synchronous").fetch_one(&mut *connection).await.unwrap();
                let links: i64 = sqlx::query_scalar("PRAGMA foreign_keys").fetch_one(&mut *connection).await.unwrap();
                let wait: i64 = sqlx::query_scalar("PRAGMA busy_timeout").fetch_one(&mut *connection).await.unwrap();
                assert_eq!((mode.as_str(), full, links, wait), ("wal", 2, 1, 5000));
                held.push(connection);
            }
            drop(held);
            pool.close().await;
        });
        std::fs::remove_file(&path).unwrap();
    }
}
