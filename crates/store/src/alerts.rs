//! Alerts sent, so that none is sent twice.

use crate::body;
use crate::fault::{Fault, Wrong};
use crate::hashes;
use crate::rows::{ALERTS, Cell};
use crate::store::Store;
use jiff::Timestamp;
use snowhum_apiary::{ApiaryId, ColonyId};

/// An alert that was sent.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Alert {
    /// The yard.
    pub yard: ApiaryId,
    /// The colony; none for the yard as a whole.
    pub colony: Option<ColonyId>,
    /// What was said, in one word.
    pub word: String,
    /// When; kept to the millisecond.
    pub at: Timestamp,
}

impl Store {
    /// Keeps an alert.
    ///
    /// # Errors
    /// When the store cannot be written, or the word holds the character NUL.
    pub async fn put_alert(&self, alert: &Alert) -> Result<(), Fault> {
        let put = async {
            let mut writing = self.writing().await?;
            let next = "SELECT COALESCE(MAX(serial), 0) + 1 FROM alerts";
            let serial: i64 = sqlx::query_scalar(next).fetch_one(&mut *writing).await?;
            let row = vec![
                Cell::Whole(serial),
                Cell::Text(alert.yard.0.to_string()),
                Cell::Text(alert.colony.map(|colony| colony.0.to_string()).unwrap_or_default()),
                Cell::Text(body::text(&alert.word, "alert")?.to_owned()),
                Cell::Whole(alert.at.as_millisecond()),
            ];
            hashes::keep(ALERTS, &mut writing, row).await?;
            Ok(writing.commit().await?)
        };
        self.named(put).await
    }

    /// The last alert about a yard and about each of its colonies, oldest first.
    ///
    /// # Errors
    /// When the store cannot be read.
    pub async fn alert_last(&self, yard: ApiaryId) -> Result<Vec<Alert>, Fault> {
        let last = async {
            let rows = "SELECT a.colony, a.word, a.at FROM alerts a WHERE a.yard = $1 AND a.serial = \
                        (SELECT MAX(l.serial) FROM alerts l WHERE l.yard = a.yard AND l.colony = a.colony) \
                        ORDER BY a.serial";
            let rows: Vec<(String, String, i64)> =
                sqlx::query_as(rows).bind(yard.0.to_string()).fetch_all(self.pool()).await?;
            rows.into_iter().map(|(colony, word, at)| alert(yard, &colony, word, at)).collect()
        };
        self.named(last).await
    }
}

fn alert(yard: ApiaryId, colony: &str, word: String, at: i64) -> Result<Alert, Wrong> {
    let colony = if colony.is_empty() { None } else { Some(ColonyId(body::id(colony)?)) };
    Ok(Alert { yard, colony, word, at: body::time(at)? })
}
