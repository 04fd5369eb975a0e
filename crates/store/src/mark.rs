//! Whether anything an answer stands on was written, by whichever program.

use crate::fault::Fault;
use crate::store::Store;

/// How far the records have come. Equal marks mean that no yard and no note was written between.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Mark {
    versions: i64,
    yards: i64,
}

impl Store {
    /// How far the records have come; two look-ups in the file.
    ///
    /// # Errors
    /// When the store cannot be read.
    pub async fn mark(&self) -> Result<Mark, Fault> {
        let marks = "SELECT (SELECT COALESCE(MAX(serial), 0) FROM note_versions), \
                     (SELECT COALESCE(MAX(changed_at), 0) FROM yards)";
        let read = async {
            let (versions, yards) = sqlx::query_as(marks).fetch_one(self.pool()).await?;
            Ok(Mark { versions, yards })
        };
        self.named(read).await
    }
}
