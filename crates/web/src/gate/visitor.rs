//! Who looks, and what each may ask for.

use axum::http::Method;

/// What a reader may look at beside it.
const READER: [&str; 9] = [
    "/",
    "/hive/{colony}",
    "/plan",
    "/inside",
    "/source",
    "/source/{file}/{name}",
    "/pictures.css",
    "/renew.js",
    "/sign-out",
];

/// Who looks.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Visitor {
    /// Somebody at the machine itself; nobody signs in there.
    Owner,
    /// Signed in with the pass phrase.
    Keeper,
    /// Let in by a link that only shows.
    Reader,
}

tokio::task_local! {
    pub(super) static VISITOR: Visitor;
}

impl Visitor {
    /// Who asks for what is being answered now.
    pub(crate) fn now() -> Self {
        VISITOR.try_with(|visitor| *visitor).unwrap_or(Self::Owner)
    }

    pub(crate) fn may_write(self) -> bool {
        self != Self::Reader
    }

    /// Whether a link to a page leads anywhere.
    pub(crate) fn may_open(self, address: &str) -> bool {
        self.may_write() || READER.contains(&address)
    }

    pub(super) fn may_ask(self, method: &Method, way: &str) -> bool {
        let is_read = matches!(*method, Method::GET | Method::HEAD);
        self.may_write() || (READER.contains(&way) && (is_read || way == "/sign-out"))
    }
}
