//! What a store is made of, table by table and index by index, held against the words it must be made with.
//!
//! A file from elsewhere can carry a trigger that deletes, a view in the place of a table, or a type that is no word.
//! So nothing is asked of a file's tables before its own words for them are those of a store.

use crate::fault::Wrong;
use crate::migrations::{self, KNOWN};
use sqlx::Connection;
use sqlx::sqlite::SqliteConnection;
use std::collections::BTreeMap;
use std::sync::{Mutex, PoisonError};

/// Says how far a store has come.
const STEPS: &str = "snowhum_steps";

/// A table, index, trigger or view by its kind and name, with the table it is on and its words.
type Objects = BTreeMap<(String, String), (String, Option<String>)>;

/// The same as it stands in the file.
type Bytes = (Vec<u8>, Vec<u8>, Vec<u8>, Option<Vec<u8>>);

/// Form of a store: 0 for an empty file. One that is none, holds something no store has, or lacks something is refused.
pub(crate) async fn form(connection: &mut SqliteConnection) -> Result<i64, Wrong> {
    // Of one moment, since another program may be making the tables.
    let mut looking = connection.begin().await?;
    let found = objects(&mut looking).await?;
    if found.is_empty() {
        return Ok(0);
    }
    let steps = ("table".to_owned(), STEPS.to_owned());
    let is_same = expected(1).await?.objects.get(&steps) == found.get(&steps);
    if !is_same {
        let is_there = found.contains_key(&steps);
        return Err(if is_there { Wrong::damaged("its table of steps is not a store's") } else { Wrong::OtherProgram });
    }
    let newest: i64 = sqlx::query_scalar(migrations::NEWEST).fetch_one(&mut *looking).await?;
    looking.rollback().await?;
    if (1..=KNOWN).contains(&newest) {
        compare(&found, &expected(newest).await?.objects)?;
    }
    Ok(newest)
}

/// Everything a file says it is made of. Read as bytes, since nobody promised that they are text.
async fn objects(connection: &mut SqliteConnection) -> Result<Objects, Wrong> {
    // Bytes where SQLite writes text are a flipped bit too.
    let odd = "SELECT COUNT(*) FROM sqlite_master WHERE typeof(type) <> 'text' OR typeof(name) <> 'text' \
               OR typeof(tbl_name) <> 'text' OR typeof(rootpage) <> 'integer' OR typeof(sql) NOT IN ('text', 'null')";
    let odd: i64 = sqlx::query_scalar(odd).fetch_one(&mut *connection).await?;
    let rows = "SELECT CAST(type AS BLOB), CAST(name AS BLOB), CAST(tbl_name AS BLOB), CAST(sql AS BLOB) \
                FROM sqlite_master";
    let rows: Vec<Bytes> = sqlx::query_as(rows).fetch_all(connection).await?;
    let text = |bytes: &[u8]| String::from_utf8_lossy(bytes).into_owned();
    let object =
        |(kind, name, table, words): &Bytes| ((text(kind), text(name)), (text(table), words.as_deref().map(text)));
    let found: Objects = rows.iter().map(object).collect();
    match rows.len() - found.len() {
        0 if odd == 0 => Ok(found),
        0 => Err(Wrong::damaged("the words for its tables are not kept as text")),
        _ => Err(Wrong::damaged("it names one of its tables twice")),
    }
}

/// How often the form of a store was changed until it was of a form, as SQLite counts.
pub(crate) async fn changes(form: i64) -> Result<i64, Wrong> {
    Ok(expected(form).await?.changes)
}

/// What a store of a form is made of.
#[derive(Debug, Clone)]
struct Made {
    objects: Objects,
    changes: i64,
}

/// As of a store made now and brought so far.
async fn expected(form: i64) -> Result<Made, Wrong> {
    static MADE: Mutex<BTreeMap<i64, Made>> = Mutex::new(BTreeMap::new());
    let known = MADE.lock().unwrap_or_else(PoisonError::into_inner).get(&form).cloned();
    if let Some(known) = known {
        return Ok(known);
    }
    let mut fresh = SqliteConnection::connect("sqlite::memory:").await?;
    migrations::make(&mut fresh, form).await?;
    let objects = objects(&mut fresh).await?;
    let changes = sqlx::query_scalar("PRAGMA schema_version").fetch_one(&mut fresh).await?;
    fresh.close().await?;
    let made = Made { objects, changes };
    MADE.lock().unwrap_or_else(PoisonError::into_inner).insert(form, made.clone());
    Ok(made)
}

fn compare(found: &Objects, expected: &Objects) -> Result<(), Wrong> {
    if let Some((kind, name)) = found.keys().find(|one| !expected.contains_key(*one)) {
        return Err(Wrong::Foreign { what: format!("the {} {name:?}", kind.escape_debug()) });
    }
    for (object, words) in expected {
        let (kind, name) = object;
        match found.get(object) {
            Some(same) if same == words => {}
            Some(_) => return Err(Wrong::damaged(format!("its {kind} {name:?} is not made as a store's"))),
            None => return Err(Wrong::damaged(format!("its {kind} {name:?} is missing"))),
        }
    }
    Ok(())
}
