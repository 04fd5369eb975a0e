//! How far the nights have come, and who works on them.

use crate::database::{Club, speak_for};
use crate::fault::Fault;
use serde::Serialize;
use snowhum_say::{Message, club_page as say};
use uuid::Uuid;

/// Of how many seconds the speed is told.
const RECENT_S: f64 = 300.0;
/// Nights that are told of.
const NIGHTS: i64 = 7;

/// How a club stands.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Status {
    /// The nights, the latest first.
    pub nights: Vec<Progress>,
    /// What waits and who works.
    pub queue: Queue,
    /// Answers a second, over the last five minutes.
    pub speed: f64,
}

impl Status {
    /// How long the rest of a night takes, in words; none where nothing of it is left.
    #[must_use]
    pub fn ahead(&self, night: &Progress) -> Option<Message> {
        let left = night.left();
        let minutes = (left as f64 / self.speed / 60.0).ceil();
        (left > 0).then(|| if self.speed > 0.0 { say::left(left, minutes) } else { say::stalled(left) })
    }
}

/// How far a night has come.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Progress {
    /// Its number.
    pub night: i64,
    /// The day it is of, as `2026-01-10`.
    pub day: String,
    /// Yards it asks about.
    pub asked: i64,
    /// Of them such as are answered.
    pub done: i64,
    /// Such as failed.
    pub failed: i64,
    /// What its answers cost, milliseconds of one core.
    pub core_ms: i64,
    /// What failed, by name, with why; the first few.
    pub failures: Vec<(String, String)>,
}

/// The queue.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
pub struct Queue {
    /// Yards that no worker has taken.
    pub waiting: i64,
    /// Yards that a worker has taken.
    pub taken: i64,
    /// Workers that said of late that they live.
    pub workers: i64,
}

impl Progress {
    /// Whether each of its yards is answered or failed.
    #[must_use]
    pub fn is_complete(&self) -> bool {
        self.asked > 0 && self.done + self.failed == self.asked
    }

    /// Yards that are neither.
    #[must_use]
    pub fn left(&self) -> i64 {
        self.asked - self.done - self.failed
    }

    /// How far it has come, in words.
    #[must_use]
    pub fn message(&self) -> Message {
        match self.failed {
            0 => say::progress(self.asked, self.done),
            failed => say::progress_failed(self.asked, self.done, failed),
        }
    }
}

impl Club {
    /// How it stands.
    ///
    /// # Errors
    /// When the database cannot be read.
    pub async fn status(&self) -> Result<Status, Fault> {
        let rows = "SELECT night, day::TEXT, asked, done, failed, core_ms \
                    FROM (SELECT id FROM club.night ORDER BY day DESC, id DESC LIMIT $1) AS latest \
                    CROSS JOIN LATERAL (SELECT * FROM club.progress WHERE night = latest.id OFFSET 0) AS progress \
                    ORDER BY progress.day DESC, night DESC";
        let rows: Vec<(i64, String, i64, i64, i64, i64)> =
            sqlx::query_as(rows).bind(NIGHTS).fetch_all(self.pool()).await?;
        let mut nights = Vec::new();
        for (night, day, asked, done, failed, core_ms) in rows {
            let failures = if failed == 0 { Vec::new() } else { self.failures(night, None).await? };
            nights.push(Progress { night, day, asked, done, failed, core_ms, failures });
        }
        let recent = "SELECT COUNT(*) FROM club.outlook WHERE made_at > now() - $1 * INTERVAL '1 second'";
        let recent: i64 = sqlx::query_scalar(recent).bind(RECENT_S).fetch_one(self.pool()).await?;
        Ok(Status { nights, queue: self.queue().await?, speed: recent as f64 / RECENT_S })
    }

    /// What failed in a night, by name, with why; the first few. A member is told of yards alone that they may see.
    ///
    /// # Errors
    /// When the database cannot be read.
    pub async fn failures(&self, night: i64, whose: Option<Uuid>) -> Result<Vec<(String, String)>, Fault> {
        let mut reading = self.pool().begin().await?;
        if let Some(member) = whose {
            speak_for(&mut reading, member).await?;
        }
        let rows = "SELECT yard.name, failure.words FROM club.failure JOIN club.yard ON yard.id = failure.yard \
                    WHERE failure.night = $1 ORDER BY yard.name, yard.id LIMIT 20";
        Ok(sqlx::query_as(rows).bind(night).fetch_all(&mut *reading).await?)
    }

    async fn queue(&self) -> Result<Queue, Fault> {
        let row = "SELECT COUNT(*) FILTER (WHERE locked_at IS NULL AND attempts < max_attempts), \
                   COUNT(*) FILTER (WHERE locked_at IS NOT NULL), \
                   (SELECT COUNT(*) FROM graphile_worker._private_workers WHERE last_heartbeat_at > now() - INTERVAL '1 minute') \
                   FROM graphile_worker.jobs";
        let (waiting, taken, workers) = sqlx::query_as(row).fetch_one(self.pool()).await?;
        Ok(Queue { waiting, taken, workers })
    }
}

#[cfg(test)]
mod tests {
    use super::Progress;

    #[test]
    fn a_night_is_complete_when_each_yard_is_answered_or_failed() {
        let night = |done, failed| Progress {
            night: 1,
            day: String::new(),
            asked: 10_000,
            done,
            failed,
            core_ms: 0,
            failures: Vec::new(),
        };
        assert!(!night(9_812, 3).is_complete() && night(9_997, 3).is_complete());
    }
}
