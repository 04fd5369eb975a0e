//! Yards as they are now.

use crate::body::{self, Parts};
use crate::fault::{Fault, Wrong};
use crate::notes::{self, Taken, Who};
use crate::recorded::Recorded;
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
        let parts = Parts {
            hives: bodies(&mut reading, hives, &key, "hive").await?,
            colonies: bodies(&mut reading, colonies, &key, "colony").await?,
            notes: notes::of_yard(&mut reading, id, Timestamp::MAX, who).await?,
        };
        body::yard(&body, &key, parts).map(Some)
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

async fn import(writing: &mut Transaction, yard: &Apiary, recorded: &Recorded) -> Result<Imported, Wrong> {
    refuse_elsewhere(writing, yard).await?;
    let row = "INSERT INTO yards (id, changed_at, body) VALUES ($1, $2, $3) \
               ON CONFLICT (id) DO UPDATE SET changed_at = excluded.changed_at, body = excluded.body";
    let key = yard.id.0.to_string();
    let at = recorded.at.as_millisecond();
    sqlx::query(row).bind(&key).bind(at).bind(body::of_yard(yard)?).execute(&mut **writing).await?;
    let before = standing(writing, &key).await?;
    for leave in [
        "UPDATE hives SET left_at = $1 WHERE yard = $2 AND left_at IS NULL",
        "UPDATE colonies SET left_at = $1 WHERE yard = $2 AND left_at IS NULL",
    ] {
        sqlx::query(leave).bind(at).bind(&key).execute(&mut **writing).await?;
    }
    for (place, hive) in (0_i64..).zip(&yard.hives) {
        put_hive(writing, &key, place, hive).await?;
    }
    for (place, colony) in (0_i64..).zip(&yard.colonies) {
        put_colony(writing, &key, place, colony).await?;
    }
    let stays = |id: &&String| yard.colonies.iter().any(|colony| colony.id.0.to_string() == **id);
    let colonies_left = before.iter().filter(|id| !stays(id)).count();
    let mut imported = Imported { colonies_left, ..Imported::default() };
    for note in &yard.notes {
        imported.notes.count(notes::take_once(writing, note, recorded).await?);
    }
    Ok(imported)
}

/// Colonies that stand in a yard.
async fn standing(connection: &mut SqliteConnection, yard: &str) -> Result<Vec<String>, Wrong> {
    let rows = "SELECT id FROM colonies WHERE yard = $1 AND left_at IS NULL";
    Ok(sqlx::query_scalar(rows).bind(yard).fetch_all(connection).await?)
}

async fn put_hive(writing: &mut SqliteConnection, yard: &str, place: i64, hive: &Hive) -> Result<(), Wrong> {
    let row = "INSERT INTO hives (id, yard, place, left_at, body) VALUES ($1, $2, $3, NULL, $4) \
               ON CONFLICT (id) DO UPDATE SET yard = excluded.yard, place = excluded.place, left_at = NULL, \
               body = excluded.body";
    let body = body::written(hive, "the hive")?;
    sqlx::query(row).bind(hive.id.0.to_string()).bind(yard).bind(place).bind(body).execute(writing).await?;
    Ok(())
}

async fn put_colony(writing: &mut SqliteConnection, yard: &str, place: i64, colony: &Colony) -> Result<(), Wrong> {
    let row = "INSERT INTO colonies (id, yard, hive, place, left_at, body) VALUES ($1, $2, $3, $4, NULL, $5) \
               ON CONFLICT (id) DO UPDATE SET yard = excluded.yard, hive = excluded.hive, place = excluded.place, \
               left_at = NULL, body = excluded.body";
    sqlx::query(row)
        .bind(colony.id.0.to_string())
        .bind(yard)
        .bind(colony.hive.0.to_string())
        .bind(place)
        .bind(body::written(colony, "the colony")?)
        .execute(writing)
        .await?;
    Ok(())
}

/// A hive or colony may not stand in two yards.
async fn refuse_elsewhere(connection: &mut SqliteConnection, yard: &Apiary) -> Result<(), Wrong> {
    let hive = "SELECT COUNT(*) FROM hives WHERE id = $1 AND yard <> $2 AND left_at IS NULL";
    let colony = "SELECT COUNT(*) FROM colonies WHERE id = $1 AND yard <> $2 AND left_at IS NULL";
    let hives = yard.hives.iter().map(|one| ("the hive", hive, one.id.0, &one.name));
    let colonies = yard.colonies.iter().map(|one| ("the colony", colony, one.id.0, &one.name));
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
