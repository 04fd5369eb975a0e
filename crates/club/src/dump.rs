//! Everything out of a club as lines of JSON, and into an empty one.

use crate::database::{Club, Transaction};
use crate::fault::Fault;
use crate::migrations::KNOWN;
use serde::{Deserialize, Serialize};
use serde_json::value::RawValue;
use sqlx::AssertSqlSafe;
use std::io::{BufRead, Write};

/// What the export calls itself.
const SCHEMA: &str = "snowhum.club";
/// The oldest form that is read: what it lacks is there once its members hand their yards in again.
const OLDEST: i64 = 2;
/// The tables, each after those it points at, with their keys. What waits in the queue is planned anew; keys and sessions of
/// members are no records.
const TABLES: [(&str, &str); 12] = [
    ("club", "id"),
    ("member", "id"),
    ("export", "owner, serial"),
    ("yard", "id"),
    ("yard_version", "yard, version"),
    ("winter", "yard, year"),
    ("share", "yard, mentor"),
    ("counted", "yard"),
    ("night", "id"),
    ("asked", "night, yard"),
    ("outlook", "yard, input_hash"),
    ("failure", "night, yard"),
];
/// Rows written in one statement.
const BATCH: usize = 200;

#[derive(Serialize, Deserialize)]
struct Head {
    schema: String,
    form: i64,
}

#[derive(Serialize, Deserialize)]
struct Line {
    table: String,
    row: Box<RawValue>,
}

/// The last line: without it the file is cut short.
#[derive(Serialize, Deserialize)]
struct Foot {
    rows: usize,
}

impl Club {
    /// Writes everything, one row a line, in an order that is always the same: what is read in elsewhere is written out
    /// there to the same bytes.
    ///
    /// # Errors
    /// When the database cannot be read, or the writer refuses.
    pub async fn export(&self, mut to: impl Write) -> Result<(), Fault> {
        let mut reading = self.pool().begin_with("BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY").await?;
        sqlx::query("SET LOCAL TimeZone = 'UTC'").execute(&mut *reading).await?;
        writeln!(to, "{}", json(&Head { schema: SCHEMA.to_owned(), form: KNOWN })?)?;
        let mut count = 0;
        for (table, key) in TABLES {
            let rows = format!(
                "DECLARE rows CURSOR FOR SELECT (to_jsonb(one) - 'job')::TEXT FROM club.{table} AS one ORDER BY {key}"
            );
            sqlx::query(AssertSqlSafe(rows)).execute(&mut *reading).await?;
            loop {
                let rows: Vec<String> = sqlx::query_scalar(AssertSqlSafe(format!("FETCH {BATCH} FROM rows")))
                    .fetch_all(&mut *reading)
                    .await?;
                for row in &rows {
                    writeln!(to, "{{\"table\":\"{table}\",\"row\":{row}}}")?;
                }
                count += rows.len();
                if rows.len() < BATCH {
                    break;
                }
            }
            sqlx::query("CLOSE rows").execute(&mut *reading).await?;
        }
        writeln!(to, "{}", json(&Foot { rows: count })?)?;
        Ok(to.flush()?)
    }

    /// Reads an export into this club, which must be empty. All of it or nothing.
    ///
    /// # Errors
    /// When the club holds records, the export is not in order or of another form, or the database cannot be written.
    pub async fn import(&self, from: impl BufRead) -> Result<(), Fault> {
        let mut writing = self.pool().begin().await?;
        sqlx::query("LOCK TABLE club.club IN EXCLUSIVE MODE").execute(&mut *writing).await?;
        let is_used: bool =
            sqlx::query_scalar("SELECT EXISTS (SELECT FROM club.club)").fetch_one(&mut *writing).await?;
        if is_used {
            return Err(Fault::NotEmpty);
        }
        take_in(&mut writing, from).await?;
        let next = "SELECT setval(pg_get_serial_sequence('club.night', 'id'), COALESCE(MAX(id), 0) + 1, false) FROM club.night";
        sqlx::query(next).execute(&mut *writing).await?;
        Ok(writing.commit().await?)
    }
}

async fn take_in(writing: &mut Transaction, from: impl BufRead) -> Result<(), Fault> {
    let mut batch = Batch::default();
    let (mut rows, mut foot) = (0, None);
    for (number, line) in (1..).zip(from.lines()) {
        let line = line?;
        let unreadable = |what: String| Fault::Unreadable { line: number, what };
        if number == 1 {
            is_known(&line).map_err(unreadable)?;
            continue;
        }
        if foot.is_some() {
            return Err(unreadable("something stands after its end".to_owned()));
        }
        match serde_json::from_str::<Line>(&line) {
            Ok(row) => {
                rows += 1;
                let known = TABLES.iter().find(|(table, _)| *table == row.table);
                let (table, _) = known.ok_or_else(|| unreadable(format!("no club has a table \"{}\"", row.table)))?;
                batch.add(writing, number, table, row.row).await?;
            }
            Err(error) => foot = Some(serde_json::from_str::<Foot>(&line).map_err(|_| unreadable(error.to_string()))?),
        }
    }
    batch.write(writing).await?;
    match foot {
        Some(foot) if foot.rows == rows => Ok(()),
        _ => Err(Fault::Unreadable { line: rows + 2, what: "it ends too early, or rows of it are missing".to_owned() }),
    }
}

fn is_known(line: &str) -> Result<(), String> {
    let head: Head =
        serde_json::from_str(line).map_err(|error| format!("it does not begin as an export does ({error})"))?;
    match (head.schema == SCHEMA, (OLDEST..=KNOWN).contains(&head.form)) {
        (true, true) => Ok(()),
        (true, false) => Err(format!("it is of form {}, and this program reads forms {OLDEST} to {KNOWN}", head.form)),
        (false, _) => Err(format!("it is of {:?}, not of {SCHEMA}", head.schema)),
    }
}

/// Rows of one table that are written together.
#[derive(Default)]
struct Batch {
    table: &'static str,
    first_line: usize,
    rows: Vec<Box<RawValue>>,
}

impl Batch {
    async fn add(
        &mut self,
        writing: &mut Transaction,
        line: usize,
        table: &'static str,
        row: Box<RawValue>,
    ) -> Result<(), Fault> {
        if self.table != table || self.rows.len() == BATCH {
            self.write(writing).await?;
            (self.table, self.first_line) = (table, line);
        }
        self.rows.push(row);
        Ok(())
    }

    async fn write(&mut self, writing: &mut Transaction) -> Result<(), Fault> {
        if self.rows.is_empty() {
            return Ok(());
        }
        let table = self.table;
        let rows =
            format!("INSERT INTO club.{table} SELECT * FROM jsonb_populate_recordset(NULL::club.{table}, $1::JSONB)");
        let written = sqlx::query(AssertSqlSafe(rows)).bind(json(&self.rows)?).execute(&mut **writing).await;
        let line = self.first_line;
        written.map_err(|error| match error {
            sqlx::Error::Database(told) => Fault::Unreadable { line, what: format!("rows from here on: {told}") },
            error => error.into(),
        })?;
        self.rows.clear();
        Ok(())
    }
}

fn json(what: &impl Serialize) -> Result<String, Fault> {
    serde_json::to_string(what).map_err(|error| Fault::File(error.into()))
}
