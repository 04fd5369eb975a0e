//! What is served, and what is sent to it.

use axum::Form;
use snowhum_club::{Club, Handed};
use snowhum_web::Reach;
use std::fmt;
use std::pin::Pin;
use std::sync::Arc;

/// Reads an export as a member hands it in; or why it cannot be, in words for the keeper.
pub type Read = Arc<dyn Fn(String) -> Reading + Send + Sync>;

/// An export being read.
pub type Reading = Pin<Box<dyn Future<Output = Result<Handed, String>> + Send>>;

/// What is served: a club's records, under these names.
#[derive(Clone)]
pub struct Clubhouse {
    /// The records.
    pub club: Club,
    /// Under which names.
    pub reach: Reach,
    /// How an export is read: the model's matter.
    pub read: Read,
}

impl fmt::Debug for Clubhouse {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Clubhouse").field("reach", &self.reach).finish_non_exhaustive()
    }
}

/// Pairs of a form as sent.
pub(crate) type Pairs = Form<Vec<(String, String)>>;

/// The first value under a name.
pub(crate) fn value<'p>(pairs: &'p [(String, String)], name: &str) -> Option<&'p str> {
    pairs.iter().find(|(key, _)| key == name).map(|(_, value)| value.as_str())
}
