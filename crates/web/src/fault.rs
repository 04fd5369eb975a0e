//! What can go wrong with a request, as a page or as JSON.

use axum::http::StatusCode;
use axum::response::{IntoResponse, Response};
use maud::html;

use crate::page::bare;

/// A request that is not answered as asked.
#[derive(Debug, thiserror::Error)]
pub(crate) enum Fault {
    /// There is no such thing.
    #[error("There is no {0} here.")]
    Missing(&'static str),
    /// What was sent cannot be read; the text says what would be right.
    #[error("{0}")]
    Wrong(String),
    /// It comes from another site.
    #[error("This was sent from another site, and is refused.")]
    Foreign,
    /// Nobody is signed in.
    #[error("Sign in first.")]
    SignIn,
    /// Who looks through a link may not do this.
    #[error("This link shows the yard and its hives, and nothing else. Nothing can be changed through it.")]
    OnlyShown,
    /// The store.
    #[error("{0}")]
    Store(#[from] snowhum_store::Fault),
    /// The estimate is not there yet.
    #[error("The first estimate is still being computed. Ask again in a moment.")]
    NotYet,
    /// A computation ended early.
    #[error("A computation ended early. Ask again; if it happens again it is a fault of the program.")]
    Cut,
}

impl Fault {
    pub(crate) fn status(&self) -> StatusCode {
        match self {
            Self::Missing(_) => StatusCode::NOT_FOUND,
            Self::Wrong(_) => StatusCode::UNPROCESSABLE_ENTITY,
            Self::SignIn => StatusCode::UNAUTHORIZED,
            Self::Foreign | Self::OnlyShown => StatusCode::FORBIDDEN,
            Self::Store(_) | Self::Cut => StatusCode::INTERNAL_SERVER_ERROR,
            Self::NotYet => StatusCode::SERVICE_UNAVAILABLE,
        }
    }
}

impl IntoResponse for Fault {
    fn into_response(self) -> Response {
        let title = if matches!(self, Self::OnlyShown) { "Only to look at" } else { "Not done" };
        let body = html! {
            h1 { (title) }
            p class="lede" { (self.to_string()) }
            p {
                @if matches!(self, Self::OnlyShown) { a href="/" { "Look at the yard" } "." }
                @else { "Nothing was changed. Go back and mend it, or " a href="/" { "look at the yard" } "." }
            }
        };
        (self.status(), bare(title, &body)).into_response()
    }
}
