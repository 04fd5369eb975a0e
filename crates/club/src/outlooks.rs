//! What pages and files read: the last night that is complete, and nothing of any other.

use crate::database::{Club, speak_for};
use crate::fault::Fault;
use crate::packed::unpack;
use uuid::Uuid;

/// A night of which each yard is answered or failed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CompleteNight {
    /// Its number.
    pub night: i64,
    /// The day it is of, as `2026-01-10`.
    pub day: String,
    /// Its yards, by id.
    pub yards: Vec<Outlook>,
}

/// One yard of it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Outlook {
    /// Which.
    pub yard: Uuid,
    /// Its name.
    pub name: String,
    /// Whose it is, by name.
    pub keeper: String,
    /// The answer; or why there is none.
    pub answer: Result<String, String>,
}

/// A row of a night: the yard, its name, its keeper's, the answer, why there is none.
type Row = (Uuid, String, String, Option<Vec<u8>>, Option<String>);

impl Club {
    /// The last complete night, as a member may see it: yards of others are not in it. For nobody, all of it.
    ///
    /// # Errors
    /// When the database cannot be read or is damaged.
    pub async fn last_night(&self, whose: Option<Uuid>) -> Result<Option<CompleteNight>, Fault> {
        self.read_night(whose, None).await
    }

    /// The same, of one yard alone; with none where a member may not see it.
    ///
    /// # Errors
    /// When the database cannot be read or is damaged.
    pub async fn last_night_of(&self, whose: Uuid, yard: Uuid) -> Result<Option<CompleteNight>, Fault> {
        self.read_night(Some(whose), Some(yard)).await
    }

    async fn read_night(&self, whose: Option<Uuid>, yard: Option<Uuid>) -> Result<Option<CompleteNight>, Fault> {
        // Of one moment: a night that is planned meanwhile is not mixed in.
        let mut reading = self.pool().begin_with("BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY").await?;
        let last = "SELECT night, day::TEXT FROM (SELECT id FROM club.night ORDER BY day DESC, id DESC) AS latest \
                    CROSS JOIN LATERAL (SELECT * FROM club.progress WHERE night = latest.id OFFSET 0) AS progress \
                    WHERE asked > 0 AND done + failed = asked ORDER BY day DESC, night DESC LIMIT 1";
        let last: Option<(i64, String)> = sqlx::query_as(last).fetch_optional(&mut *reading).await?;
        let Some((night, day)) = last else { return Ok(None) };
        if let Some(member) = whose {
            speak_for(&mut reading, member).await?;
        }
        let rows = "SELECT asked.yard, yard.name, owner.name, outlook.body, failure.words FROM club.asked \
                    JOIN club.yard ON yard.id = asked.yard JOIN club.member AS owner ON owner.id = yard.owner LEFT JOIN club.outlook USING (yard, input_hash) \
                    LEFT JOIN club.failure ON failure.night = asked.night AND failure.yard = asked.yard \
                    WHERE asked.night = $1 AND ($2 IS NULL OR asked.yard = $2) ORDER BY asked.yard";
        let rows: Vec<Row> = sqlx::query_as(rows).bind(night).bind(yard).fetch_all(&mut *reading).await?;
        let yards = rows.into_iter().map(read).collect::<Result<_, Fault>>()?;
        Ok(Some(CompleteNight { night, day, yards }))
    }
}

fn read((yard, name, keeper, body, words): Row) -> Result<Outlook, Fault> {
    let answer = match body {
        Some(body) => Ok(unpack(&body)?),
        None => Err(words.unwrap_or_default()),
    };
    Ok(Outlook { yard, name, keeper, answer })
}
