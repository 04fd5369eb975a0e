//! Old nights are forgotten, and with them the answers that no night asks for any more.

use crate::database::Club;
use crate::fault::Fault;
use jiff::civil::Date;

/// What was forgotten.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Forgotten {
    /// Nights.
    pub nights: u64,
    /// Answers.
    pub answers: u64,
}

/// Nights before a day and before the last complete one, which is what is read. Where none is complete, none.
const OLD: &str = "SELECT night.id FROM club.night, ( \
                       SELECT day, night FROM club.progress WHERE asked > 0 AND done + failed = asked \
                       ORDER BY day DESC, night DESC LIMIT 1) AS last \
                   WHERE night.day < $1::DATE AND (night.day, night.id) < (last.day, last.night)";
/// Each after what points at it.
const STEPS: [&str; 4] = [
    "SELECT graphile_worker.complete_jobs(ARRAY(SELECT job FROM club.asked WHERE night = ANY($1) AND job IS NOT NULL))",
    "DELETE FROM club.failure WHERE night = ANY($1)",
    "DELETE FROM club.asked WHERE night = ANY($1)",
    "DELETE FROM club.night WHERE id = ANY($1)",
];
const UNASKED: &str = "DELETE FROM club.outlook WHERE NOT EXISTS \
                       (SELECT FROM club.asked WHERE asked.yard = outlook.yard AND asked.input_hash = outlook.input_hash)";

impl Club {
    /// Forgets the nights before a day, but for the last complete one and all since, and every answer that no night left
    /// asks for. Yards and their versions stay.
    ///
    /// # Errors
    /// When the database cannot be written; then nothing is forgotten.
    pub async fn forget(&self, before: Date) -> Result<Forgotten, Fault> {
        let mut writing = self.pool().begin().await?;
        // A night that is planned meanwhile may ask for an answer that is there still: one waits for the other.
        sqlx::query("LOCK TABLE club.night IN SHARE ROW EXCLUSIVE MODE").execute(&mut *writing).await?;
        let old: Vec<i64> = sqlx::query_scalar(OLD).bind(before.to_string()).fetch_all(&mut *writing).await?;
        for step in STEPS {
            sqlx::query(step).bind(&old).execute(&mut *writing).await?;
        }
        let answers = sqlx::query(UNASKED).execute(&mut *writing).await?.rows_affected();
        writing.commit().await?;
        Ok(Forgotten { nights: old.len() as u64, answers })
    }
}
