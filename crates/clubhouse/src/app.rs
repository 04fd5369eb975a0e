//! What is served, and what is sent to it.

use axum::Form;
use snowhum_club::Club;
use snowhum_web::Reach;

/// What is served: a club's records, under these names.
#[derive(Debug, Clone)]
pub struct Clubhouse {
    /// The records.
    pub club: Club,
    /// Under which names.
    pub reach: Reach,
}

/// Pairs of a form as sent.
pub(crate) type Pairs = Form<Vec<(String, String)>>;

/// The first value under a name.
pub(crate) fn value<'p>(pairs: &'p [(String, String)], name: &str) -> Option<&'p str> {
    pairs.iter().find(|(key, _)| key == name).map(|(_, value)| value.as_str())
}
