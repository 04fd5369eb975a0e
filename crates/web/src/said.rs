//! What was just done, told on the page it leads to: the address carries which, the records say what.

use axum::extract::Request;
use axum::middleware::Next;
use axum::response::Response;
use snowhum_apiary::NoteId;
use std::fmt;
use uuid::Uuid;

/// Name of the question in an address.
const NAME: &str = "said";

/// What a keeper just did.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Said {
    /// Kept a note.
    Noted(NoteId),
    /// Changed one.
    Changed(NoteId),
    /// Took one out of the answers.
    Withdrew(NoteId),
    /// Took back the last thing done at a colony.
    TookBack(Uuid),
    /// Asked about another day.
    AnotherDay,
}

tokio::task_local! {
    static SAID: Option<Said>;
}

impl Said {
    /// What the request under way tells of.
    pub(crate) fn now() -> Option<Self> {
        SAID.try_with(|said| *said).unwrap_or(None)
    }

    /// A page's address that tells of it.
    pub(crate) fn on(self, address: &str) -> String {
        let (path, part) =
            address.split_once('#').map_or((address, String::new()), |(path, part)| (path, format!("#{part}")));
        let joint = if path.contains('?') { '&' } else { '?' };
        format!("{path}{joint}{NAME}={self}{part}")
    }

    fn of(query: &str) -> Option<Self> {
        let text = query.split('&').find_map(|pair| pair.strip_prefix(NAME)?.strip_prefix('='))?;
        let (what, id) = text.split_once('.').unwrap_or((text, ""));
        let id = || id.parse::<Uuid>().ok();
        match what {
            "noted" => id().map(|id| Self::Noted(NoteId(id))),
            "changed" => id().map(|id| Self::Changed(NoteId(id))),
            "withdrew" => id().map(|id| Self::Withdrew(NoteId(id))),
            "took-back" => id().map(Self::TookBack),
            "day" => Some(Self::AnotherDay),
            _ => None,
        }
    }
}

impl fmt::Display for Said {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Noted(note) => write!(f, "noted.{}", note.0),
            Self::Changed(note) => write!(f, "changed.{}", note.0),
            Self::Withdrew(note) => write!(f, "withdrew.{}", note.0),
            Self::TookBack(colony) => write!(f, "took-back.{colony}"),
            Self::AnotherDay => f.write_str("day"),
        }
    }
}

/// Lets the page asked for know what its address tells of.
pub(crate) async fn hear(request: Request, next: Next) -> Response {
    let said = request.uri().query().and_then(Said::of);
    SAID.scope(said, next.run(request)).await
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_an_address_tells_is_read_back() {
        let id = Uuid::from_u128(7);
        let all = [
            Said::Noted(NoteId(id)),
            Said::Changed(NoteId(id)),
            Said::Withdrew(NoteId(id)),
            Said::TookBack(id),
            Said::AnotherDay,
        ];
        for said in all {
            let address = said.on("/hive/x?a=1#note");
            let query = address.split_once('?').and_then(|(_, rest)| rest.split_once('#')).unwrap();
            assert_eq!(query.1, "note");
            assert_eq!(Said::of(query.0), Some(said), "{address}");
        }
        assert_eq!(Said::on(Said::AnotherDay, "/"), "/?said=day");
        assert_eq!(Said::of("said=noted.<b>"), None);
        assert_eq!(Said::of("unsaid=day"), None);
    }
}
