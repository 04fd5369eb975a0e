//! A night is planned in one transaction, and may be planned again.

use crate::database::{Club, Transaction};
use crate::fault::Fault;
use crate::job::TASK;
use crate::packed::hash;
use jiff::civil::Date;

/// One question that is asked of every yard by one build.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Night {
    /// The day it is of.
    pub day: Date,
    /// The build that answers: no worker of another touches it.
    pub build: String,
    /// What is asked, in the model's words.
    pub question: String,
}

/// What was planned.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Planned {
    /// The night's number.
    pub night: i64,
    /// Yards it asks about.
    pub asked: i64,
    /// Of them such as are to be computed: all but those answered before, and those that already wait.
    pub queued: i64,
}

impl Club {
    /// Plans a night. Each yard is asked about as it is now; one whose answer is known from the same inputs is not computed
    /// again. What still waits of other nights is taken out of the queue.
    ///
    /// Planned again, a night asks about the same yards as they were, takes up those that came since, and tries again what
    /// failed.
    ///
    /// # Errors
    /// When the database cannot be written; then nothing of it is planned.
    pub async fn plan_night(&self, night: &Night) -> Result<Planned, Fault> {
        let mut writing = self.pool().begin().await?;
        // Whoever plans the same night waits here.
        let row = "INSERT INTO club.night (day, build, question, planned_at) VALUES ($1::DATE, $2, $3, now()) \
                   ON CONFLICT (day, build, question) DO UPDATE SET planned_at = now() RETURNING id";
        let row = sqlx::query_scalar(row).bind(night.day.to_string()).bind(&night.build).bind(&night.question);
        let id: i64 = row.fetch_one(&mut *writing).await?;
        drop_others(&mut writing, id).await?;
        let asked = ask(&mut writing, id, night).await?;
        let queued = queue(&mut writing, id, &night.build).await?;
        writing.commit().await?;
        Ok(Planned { night: id, asked, queued })
    }
}

async fn drop_others(writing: &mut Transaction, night: i64) -> Result<(), Fault> {
    let drop =
        "SELECT graphile_worker.complete_jobs(ARRAY(SELECT job FROM club.asked WHERE night <> $1 AND job IS NOT NULL))";
    sqlx::query(drop).bind(night).execute(&mut **writing).await?;
    let forget = "UPDATE club.asked SET job = NULL WHERE night <> $1 AND job IS NOT NULL";
    sqlx::query(forget).bind(night).execute(&mut **writing).await?;
    Ok(())
}

/// Gives how many yards the night asks about.
async fn ask(writing: &mut Transaction, night: i64, asked: &Night) -> Result<i64, Fault> {
    let ask = "INSERT INTO club.asked (night, yard, version, input_hash) \
               SELECT $1, yard.id, latest.version, sha256(latest.hash || $2) FROM club.yard \
               CROSS JOIN LATERAL (SELECT version, hash FROM club.yard_version WHERE yard = yard.id ORDER BY version DESC LIMIT 1) \
               AS latest WHERE yard.left_at IS NULL ON CONFLICT DO NOTHING";
    let of_night = hash(&format!("{}\n{}", asked.build, asked.question));
    sqlx::query(ask).bind(night).bind(of_night).execute(&mut **writing).await?;
    let again = "WITH failed AS (DELETE FROM club.failure WHERE night = $1 RETURNING yard) \
                 UPDATE club.asked SET begun = 0 FROM failed WHERE night = $1 AND asked.yard = failed.yard";
    sqlx::query(again).bind(night).execute(&mut **writing).await?;
    let count = sqlx::query_scalar("SELECT COUNT(*) FROM club.asked WHERE night = $1").bind(night);
    Ok(count.fetch_one(&mut **writing).await?)
}

/// A job for each yard that has neither answer nor job; gives how many.
///
/// The queue's own keys are not used: each would hold a lock of its own to the end of the transaction, and for twenty thousand
/// PostgreSQL as it comes has no room. The row in `asked` does what a key would.
async fn queue(writing: &mut Transaction, night: i64, build: &str) -> Result<i64, Fault> {
    let queue = "WITH added AS (SELECT * FROM graphile_worker.add_jobs(ARRAY( \
                     SELECT ROW($3, json_build_object('night', night, 'yard', yard), NULL, NULL, NULL, NULL, NULL, ARRAY[$2]) \
                            ::graphile_worker.job_spec \
                     FROM club.asked WHERE night = $1 \
                     AND NOT EXISTS (SELECT FROM club.outlook WHERE outlook.yard = asked.yard AND outlook.input_hash = asked.input_hash) \
                     AND NOT EXISTS (SELECT FROM graphile_worker.jobs WHERE jobs.id = asked.job \
                                     AND (jobs.locked_at IS NOT NULL OR jobs.attempts < jobs.max_attempts))))), \
                 noted AS (UPDATE club.asked SET job = added.id FROM added \
                           WHERE night = $1 AND yard = (added.payload ->> 'yard')::UUID RETURNING 1) \
                 SELECT COUNT(*) FROM noted";
    let queue = sqlx::query_scalar(queue).bind(night).bind(build).bind(TASK);
    Ok(queue.fetch_one(&mut **writing).await?)
}
