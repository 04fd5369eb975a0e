//! Yards as they are now.

use crate::body::{self, Parts};
use crate::fault::{Fault, Wrong};
use crate::hashes;
use crate::notes::{self, Taken, Who};
use crate::recorded::Recorded;
use crate::rows::{COLONIES, Cell, Cells, HIVES, Table, YARDS};
use crate::store::{Store, Transaction};
use jiff::Timestamp;
use serde::Deserialize;
use serde::de::DeserializeOwned;
use snowhum_apiary::{Apiary, ApiaryId, Colony, Hive};
use sqlx::sqlite::SqliteConnection;

/// A yard by its name.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct YardName {
    /// Its id.
    pub id: ApiaryId,
    /// The keeper's name for it.
    pub name: String,
    /// Whether it is made up.
    pub invented: bool,
}

/// What an import did.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Imported {
    /// What became of its notes.
    pub notes: Taken,
    /// Colonies of this yard that were not in what was imported. They are in the yard no more; their notes stay.
    pub colonies_left: usize,
}

#[derive(Deserialize)]
struct Named {
    name: String,
    #[serde(default)]
    invented: bool,
}

impl Store {
    /// Takes in a yard with its hives, colonies and notes, by id: what is known is brought up to date, what is not
    /// there any more has left the yard. Notes are taken in once; one that is known is never changed.
    ///
    /// # Errors
    /// When a hive or colony stands in another yard, or the store cannot be written; then nothing of it is kept.
    pub async fn import_yard(&self, yard: &Apiary, recorded: impl Into<Recorded>) -> Result<Imported, Fault> {
        let recorded = recorded.into();
        let import = async {
            // What cannot be read brings no history with it, and is written anew.
            let kept = self.yard_of(yard.id, Who::Standing).await.unwrap_or_default();
            let yard = match kept {
                Some(kept) => &yard.clone().following(&kept).map_err(earlier)?,
                None => yard,
            };
            let mut writing = self.writing().await?;
            let imported = import(&mut writing, yard, &recorded).await?;
            writing.commit().await?;
            Ok(imported)
        };
        self.named(import).await
    }

    /// A yard with its hives, colonies and notes as they stand; none if there is no such yard.
    ///
    /// # Errors
    /// When the store cannot be read or is damaged.
    pub async fn yard(&self, id: ApiaryId) -> Result<Option<Apiary>, Fault> {
        self.named(self.yard_of(id, Who::Standing)).await
    }

    /// A yard with every hive and colony that ever stood in it, and their notes: for records that must outlast a
    /// colony. None if there is no such yard.
    ///
    /// # Errors
    /// When the store cannot be read or is damaged.
    pub async fn yard_ever(&self, id: ApiaryId) -> Result<Option<Apiary>, Fault> {
        self.named(self.yard_of(id, Who::Ever)).await
    }

    async fn yard_of(&self, id: ApiaryId, who: Who) -> Result<Option<Apiary>, Wrong> {
        let mut reading = self.reading().await?;
        let row = "SELECT body FROM yards WHERE id = $1";
        let key = id.0.to_string();
        let Some(body) = sqlx::query_scalar::<_, String>(row).bind(&key).fetch_optional(&mut *reading).await? else {
            return Ok(None);
        };
        let (hives, colonies) = match who {
            Who::Standing => (
                "SELECT id, body FROM hives WHERE yard = $1 AND left_at IS NULL ORDER BY place, id",
                "SELECT id, body FROM colonies WHERE yard = $1 AND left_at IS NULL ORDER BY place, id",
            ),
            Who::Ever => (
                "SELECT id, body FROM hives WHERE yard = $1 ORDER BY place, id",
                "SELECT id, body FROM colonies WHERE yard = $1 ORDER BY place, id",
            ),
        };
        let has_past = !body::yard(&body, &key, Parts::default())?.past.is_empty();
        let parts = Parts {
            hives: bodies(&mut reading, hives, &key, "hive").await?,
            colonies: bodies(&mut reading, colonies, &key, "colony").await?,
            // Those of colonies that left belong to winters that are over.
            notes: notes::of_yard(&mut reading, id, Timestamp::MAX, if has_past { Who::Ever } else { who }).await?,
        };
        let yard = body::yard(&body, &key, parts)?;
        Ok(Some(match who {
            Who::Standing => of_standing(yard.with_notes_by_winter()),
            Who::Ever => yard,
        }))
    }

    /// The yards by name, a keeper's own before invented ones.
    ///
    /// # Errors
    /// When the store cannot be read or is damaged.
    pub async fn yards(&self) -> Result<Vec<YardName>, Fault> {
        let yards = async {
            let rows = "SELECT id, body FROM yards ORDER BY id";
            let rows: Vec<(String, String)> = sqlx::query_as(rows).fetch_all(self.pool()).await?;
            let named = |(id, text): (String, String)| -> Result<YardName, Wrong> {
                let Named { name, invented } = body::read(&text, "yard", &id)?;
                Ok(YardName { id: ApiaryId(body::id(&id)?), name, invented })
            };
            let mut yards = rows.into_iter().map(named).collect::<Result<Vec<_>, Wrong>>()?;
            yards.sort_by_key(|yard| (yard.invented, yard.name.to_lowercase()));
            Ok(yards)
        };
        self.named(yards).await
    }
}

fn earlier(wrong: snowhum_apiary::Wrong) -> Wrong {
    Wrong::Unfit { field: "count", what: wrong.problem, right: "yard" }
}

/// The yard without notes of colonies that left it.
fn of_standing(mut yard: Apiary) -> Apiary {
    let colonies = &yard.colonies;
    yard.notes.retain(|note| colonies.iter().any(|colony| colony.id == note.colony));
    yard
}

async fn import(writing: &mut Transaction, yard: &Apiary, recorded: &Recorded) -> Result<Imported, Wrong> {
    refuse_elsewhere(writing, yard).await?;
    let key = yard.id.0.to_string();
    let at = recorded.at.as_millisecond();
    let row = vec![Cell::Text(key.clone()), Cell::Whole(at), Cell::Text(body::of_yard(yard)?)];
    hashes::keep(YARDS, writing, row).await?;
    let hives: Vec<Cells> =
        (0_i64..).zip(&yard.hives).map(|(place, hive)| row_of_hive(&key, place, hive)).collect::<Result<_, Wrong>>()?;
    let colonies: Vec<Cells> = (0_i64..)
        .zip(&yard.colonies)
        .map(|(place, colony)| row_of_colony(&key, place, colony))
        .collect::<Result<_, Wrong>>()?;
    bury(writing, yard, at).await?;
    let standing = "SELECT id FROM hives WHERE yard = $1 AND left_at IS NULL";
    renew(HIVES, writing, Standing { rows: standing, yard: &key }, hives, at).await?;
    let standing = "SELECT id FROM colonies WHERE yard = $1 AND left_at IS NULL";
    let colonies_left = renew(COLONIES, writing, Standing { rows: standing, yard: &key }, colonies, at).await?;
    let mut imported = Imported { colonies_left, ..Imported::default() };
    for note in yard.every_note() {
        imported.notes.count(notes::take_once(writing, note, recorded).await?);
    }
    Ok(imported)
}

/// Hives and colonies of winters that are over, which the records do not know: they are kept as gone, for their notes.
async fn bury(writing: &mut SqliteConnection, yard: &Apiary, at: i64) -> Result<(), Wrong> {
    let key = yard.id.0.to_string();
    for past in &yard.past {
        let hives = (0_i64..).zip(&past.hives).map(|(place, hive)| (HIVES, row_of_hive(&key, place, hive)));
        let colonies = (0_i64..).zip(&past.colonies).map(|(place, one)| (COLONIES, row_of_colony(&key, place, one)));
        for (table, row) in hives.chain(colonies) {
            let row = row?;
            let is_known = match row.first() {
                Some(id) => table.row(writing, id).await?.is_some(),
                None => true,
            };
            if !is_known {
                hashes::keep(table, writing, table.with(&row, "left_at", Cell::Whole(at))).await?;
            }
        }
    }
    Ok(())
}

/// What stands in a yard before it is renewed.
struct Standing<'a> {
    rows: &'static str,
    yard: &'a str,
}

/// Keeps the rows of what stands in a yard now, and marks what stood there before as gone; gives how many are gone.
async fn renew(
    table: Table,
    writing: &mut SqliteConnection,
    before: Standing<'_>,
    now: Vec<Cells>,
    at: i64,
) -> Result<usize, Wrong> {
    let before: Vec<String> = sqlx::query_scalar(before.rows).bind(before.yard).fetch_all(&mut *writing).await?;
    let stays = |key: &Cell| now.iter().any(|row| row.first() == Some(key));
    let gone: Vec<Cell> = before.into_iter().map(Cell::Text).filter(|key| !stays(key)).collect();
    for key in &gone {
        if let Some(row) = table.row(writing, key).await? {
            hashes::keep(table, writing, table.with(hashes::kept(&row).0, "left_at", Cell::Whole(at))).await?;
        }
    }
    for row in now {
        hashes::keep(table, writing, row).await?;
    }
    Ok(gone.len())
}

fn row_of_hive(yard: &str, place: i64, hive: &Hive) -> Result<Cells, Wrong> {
    Ok(vec![
        Cell::Text(hive.id.0.to_string()),
        Cell::Text(yard.to_owned()),
        Cell::Whole(place),
        Cell::None,
        Cell::Text(body::written(hive, "hive")?),
    ])
}

fn row_of_colony(yard: &str, place: i64, colony: &Colony) -> Result<Cells, Wrong> {
    Ok(vec![
        Cell::Text(colony.id.0.to_string()),
        Cell::Text(yard.to_owned()),
        Cell::Text(colony.hive.0.to_string()),
        Cell::Whole(place),
        Cell::None,
        Cell::Text(body::written(colony, "colony")?),
    ])
}

/// A hive or colony may not stand in two yards.
async fn refuse_elsewhere(connection: &mut SqliteConnection, yard: &Apiary) -> Result<(), Wrong> {
    let hive = "SELECT COUNT(*) FROM hives WHERE id = $1 AND yard <> $2 AND left_at IS NULL";
    let colony = "SELECT COUNT(*) FROM colonies WHERE id = $1 AND yard <> $2 AND left_at IS NULL";
    let hives = yard.hives.iter().map(|one| ("hive", hive, one.id.0, &one.name));
    let colonies = yard.colonies.iter().map(|one| ("colony", colony, one.id.0, &one.name));
    for (what, count, id, name) in hives.chain(colonies) {
        let count = sqlx::query_scalar::<_, i64>(count).bind(id.to_string()).bind(yard.id.0.to_string());
        if count.fetch_one(&mut *connection).await? > 0 {
            return Err(Wrong::InAnotherYard { what, name: name.clone() });
        }
    }
    Ok(())
}

async fn bodies<T: DeserializeOwned>(
    reading: &mut SqliteConnection,
    rows: &'static str,
    yard: &str,
    what: &str,
) -> Result<Vec<T>, Wrong> {
    let rows: Vec<(String, String)> = sqlx::query_as(rows).bind(yard).fetch_all(reading).await?;
    rows.iter().map(|(id, text)| body::read(text, what, id)).collect()
}
