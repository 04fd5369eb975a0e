//! A folder of its own for each test, and something to write into it.

use jiff::Timestamp;
use snowhum_apiary::{Apiary, ColonyId, Conditions, Entry, Note, NoteId, VisitId, demo_text, read};
use sqlx::sqlite::{SqliteConnectOptions, SqliteConnection};
use sqlx::{AssertSqlSafe, Connection};
use std::fs;
use std::future::Future;
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicU32, Ordering};
use uuid::Uuid;

/// A folder that is gone after the test.
pub(crate) struct Folder(PathBuf);

impl Folder {
    pub(crate) fn new(name: &str) -> Self {
        static COUNT: AtomicU32 = AtomicU32::new(0);
        let number = COUNT.fetch_add(1, Ordering::Relaxed);
        let path = std::env::temp_dir().join(format!("snowhum-store-{}-{number}-{name}", std::process::id()));
        fs::create_dir_all(&path).unwrap();
        Self(path)
    }

    pub(crate) fn path(&self) -> &Path {
        &self.0
    }

    pub(crate) fn store(&self) -> PathBuf {
        self.0.join("snowhum.db")
    }

    /// Names of the files in it, sorted.
    pub(crate) fn names(&self) -> Vec<String> {
        let name = |file: fs::DirEntry| file.file_name().into_string().unwrap();
        let mut names: Vec<String> = fs::read_dir(&self.0).unwrap().map(|file| name(file.unwrap())).collect();
        names.sort();
        names
    }
}

impl Drop for Folder {
    fn drop(&mut self) {
        let _ = fs::remove_dir_all(&self.0);
    }
}

pub(crate) fn run<T>(work: impl Future<Output = T>) -> T {
    tokio::runtime::Builder::new_current_thread().enable_time().build().unwrap().block_on(work)
}

pub(crate) fn now() -> Timestamp {
    "2026-01-10T12:00:00.123456Z".parse().unwrap()
}

pub(crate) fn demo() -> Apiary {
    read(demo_text(), "rowan-bank.toml").unwrap().0
}

/// Note number `n` about a colony, with words in it.
pub(crate) fn note_of(colony: ColonyId, n: u128, words: &str) -> Note {
    Note {
        id: NoteId(Uuid::from_u128(0xA000 + n)),
        visit: VisitId(Uuid::from_u128(0xB000)),
        colony,
        at: "2026-01-09T10:00:00Z".parse().unwrap(),
        conditions: Conditions::default(),
        entries: vec![Entry::Words(words.to_owned())],
    }
}

/// Note number `n` about nobody's colony.
pub(crate) fn note(n: u128) -> Note {
    note_of(ColonyId(Uuid::from_u128(7)), n, &format!("note {n}"))
}

/// Does something to a file as another program would.
pub(crate) async fn meddle(path: &Path, sql: &'static str) {
    let options = SqliteConnectOptions::new().filename(path).create_if_missing(true).foreign_keys(false);
    let mut connection = SqliteConnection::connect_with(&options).await.unwrap();
    sqlx::raw_sql(sql).execute(&mut connection).await.unwrap();
    connection.close().await.unwrap();
}

/// The same records in a file as a program made it before rows had hashes.
pub(crate) async fn first_form(store: &Path, old: &Path) {
    let options = SqliteConnectOptions::new().filename(old).create_if_missing(true).foreign_keys(false);
    let mut connection = SqliteConnection::connect_with(&options).await.unwrap();
    let steps =
        "CREATE TABLE snowhum_steps (number BIGINT NOT NULL PRIMARY KEY); INSERT INTO snowhum_steps VALUES (1);";
    let tables = [
        ("yards", "id, changed_at, body"),
        ("hives", "id, yard, place, left_at, body"),
        ("colonies", "id, yard, hive, place, left_at, body"),
        ("note_versions", "version, serial, note, visit, colony, at, recorded_at, kind, undoes, author, body"),
        ("settings", "name, value"),
        ("alerts", "serial, yard, colony, word, at"),
    ];
    let copies: String = tables
        .iter()
        .map(|(name, columns)| format!("INSERT INTO main.{name} ({columns}) SELECT {columns} FROM newer.{name};"))
        .collect();
    let made = include_str!("../../migrations/0001_records.sql");
    let attach = format!("ATTACH '{}' AS newer;", store.display());
    let sql = format!("{steps}{made}{attach}{copies} DETACH newer;");
    sqlx::raw_sql(AssertSqlSafe(sql)).execute(&mut connection).await.unwrap();
    connection.close().await.unwrap();
}
