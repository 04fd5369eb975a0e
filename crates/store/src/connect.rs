//! How a SQLite file is opened.

use crate::fault::Wrong;
use crate::files;
use sqlx::sqlite::{SqliteConnectOptions, SqliteConnection, SqlitePool, SqlitePoolOptions};
use sqlx::{AssertSqlSafe, Connection};
use std::io;
use std::path::Path;
use std::time::{Duration, Instant};

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
/// For a file that is being made and has no name yet: it is one file, and waited for at its end. What points nowhere is
/// found by the doctor, who names it.
const FRESH: &str = "PRAGMA journal_mode = DELETE; PRAGMA synchronous = OFF; PRAGMA foreign_keys = OFF;";
/// How long looking at a file may take: so long, and so much more for each megabyte: 2 MB/s
/// is less than a slow memory card gives.
const PATIENCE: (Duration, Duration) = (Duration::from_secs(30), Duration::from_millis(500));
/// Steps of SQLite's between two looks at the clock.
const BETWEEN_LOOKS: i32 = 1_000;

/// How far a file may grow.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Room {
    /// As the disk allows.
    Unlimited,
    /// As many pages of 4096 bytes; how tests fill a disk.
    #[cfg_attr(not(test), expect(dead_code, reason = "only tests fill a disk"))]
    Pages(u32),
}

/// How long looking at a file may take, by its size.
pub(crate) fn patience(path: &Path) -> Duration {
    let megabytes = std::fs::metadata(path).map_or(0, |file| file.len() >> 20);
    PATIENCE.0 + PATIENCE.1 * u32::try_from(megabytes).unwrap_or(u32::MAX / 2)
}

/// From now on a connection's work ends with a fault once its time is up.
pub(crate) async fn limit(connection: &mut SqliteConnection, time: Duration) -> Result<(), Wrong> {
    let begun = Instant::now();
    connection.lock_handle().await?.set_progress_handler(BETWEEN_LOOKS, move || begun.elapsed() < time);
    Ok(())
}

/// Takes the limit away.
pub(crate) async fn unlimit(connection: &mut SqliteConnection) -> Result<(), Wrong> {
    connection.lock_handle().await?.remove_progress_handler();
    Ok(())
}

/// An empty file that is being made, its owner's alone; one of that name is thrown away.
pub(crate) async fn fresh(path: &Path) -> Result<SqliteConnection, Wrong> {
    ["", "-journal", "-wal", "-shm"].iter().try_for_each(|ending| files::remove(&files::beside(path, ending)))?;
    files::create_private(path).map_err(unmade)?;
    let options = SqliteConnectOptions::new().filename(path).create_if_missing(false);
    let mut connection = SqliteConnection::connect_with(&options).await?;
    sqlx::raw_sql(FRESH).execute(&mut connection).await?;
    Ok(connection)
}

/// A file that cannot be made for want of its folder is not itself missing.
fn unmade(error: io::Error) -> Wrong {
    match error.kind() {
        io::ErrorKind::NotFound => Wrong::Disk { what: snowhum_say::store::no_folder() },
        _ => error.into(),
    }
}

/// A store in a file, made if it is not there. The path must be absolute, so that no name reads as an address.
pub(crate) async fn file(path: &Path, room: Room) -> Result<SqlitePool, Wrong> {
    let is_new = !path.try_exists()?;
    if is_new {
        files::create_private_or_leave(path).map_err(unmade)?;
    }
    let options = SqliteConnectOptions::new().filename(path).create_if_missing(false);
    // A pool tries again until its time is up and then cannot say why; this one connection says it at once.
    let mut first = SqliteConnection::connect_with(&options).await?;
    match sqlx::raw_sql(PRAGMAS).execute(&mut first).await.map_err(Wrong::from) {
        // Another program is making the same store; trying again is right.
        Ok(_) | Err(Wrong::Locked) => {}
        Err(wrong) => return Err(wrong),
    }
    let pool = pool(room).max_connections(CONNECTIONS).connect_with(options).await?;
    first.close().await?;
    if is_new {
        // The name too, before anything is answered as stored.
        files::settle_folder_of(path)?;
    }
    Ok(pool)
}

/// A store that is gone when it is closed.
pub(crate) async fn memory() -> Result<SqlitePool, Wrong> {
    let options = SqliteConnectOptions::new().in_memory(true);
    let pool = pool(Room::Unlimited).max_connections(1).min_connections(1).idle_timeout(None).max_lifetime(None);
    Ok(pool.connect_with(options).await?)
}

/// A file that is only looked at, for so long and no longer, and never changed or made.
pub(crate) async fn looking(path: &Path) -> Result<SqliteConnection, Wrong> {
    looking_as(path, true).await
}

/// The same, where SQLite must first take back what a power cut broke off in the middle.
pub(crate) async fn recovering(path: &Path) -> Result<SqliteConnection, Wrong> {
    looking_as(path, false).await
}

async fn looking_as(path: &Path, is_read_only: bool) -> Result<SqliteConnection, Wrong> {
    if !path.try_exists()? {
        return Err(Wrong::Missing);
    }
    let options = SqliteConnectOptions::new().filename(path).create_if_missing(false).read_only(is_read_only);
    let mut connection = SqliteConnection::connect_with(&options).await?;
    limit(&mut connection, patience(path)).await?;
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
