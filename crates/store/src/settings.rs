//! Settings: names and values, as texts.

use crate::body;
use crate::fault::Fault;
use crate::hashes;
use crate::rows::{Cell, SETTINGS};
use crate::store::Store;
use std::collections::BTreeMap;

impl Store {
    /// All settings.
    ///
    /// # Errors
    /// When the store cannot be read.
    pub async fn settings(&self) -> Result<BTreeMap<String, String>, Fault> {
        let settings = async {
            let rows = "SELECT name, value FROM settings";
            let rows: Vec<(String, String)> = sqlx::query_as(rows).fetch_all(self.pool()).await?;
            Ok(rows.into_iter().collect())
        };
        self.named(settings).await
    }

    /// One setting.
    ///
    /// # Errors
    /// When the store cannot be read.
    pub async fn setting(&self, name: &str) -> Result<Option<String>, Fault> {
        let row = sqlx::query_scalar("SELECT value FROM settings WHERE name = $1").bind(name);
        self.named(async { Ok(row.fetch_optional(self.pool()).await?) }).await
    }

    /// Sets one; the value it had is gone.
    ///
    /// # Errors
    /// When the store cannot be written, or a text holds the character NUL.
    pub async fn set(&self, name: &str, value: &str) -> Result<(), Fault> {
        let set = async {
            let name = body::text(name, "setting-name")?;
            let value = body::text(value, "setting")?;
            let row = vec![Cell::Text(name.to_owned()), Cell::Text(value.to_owned())];
            let mut writing = self.writing().await?;
            hashes::keep(SETTINGS, &mut writing, row).await?;
            Ok(writing.commit().await?)
        };
        self.named(set).await
    }

    /// Removes one; nothing happens if it was not set.
    ///
    /// # Errors
    /// When the store cannot be written.
    pub async fn unset(&self, name: &str) -> Result<(), Fault> {
        let unset = async {
            let mut writing = self.writing().await?;
            hashes::forget(SETTINGS, &mut writing, &Cell::Text(name.to_owned())).await?;
            Ok(writing.commit().await?)
        };
        self.named(unset).await
    }
}
