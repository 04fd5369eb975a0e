//! What can go wrong with a request, as a page or as JSON.

use axum::http::StatusCode;
use axum::response::{IntoResponse, Redirect, Response};
use maud::{Markup, html};
use snowhum_apiary::ColonyId;

use crate::bare::bare;

/// A request that is not answered as asked.
#[derive(Debug, thiserror::Error)]
pub(crate) enum Fault {
    /// There is no such thing.
    #[error("There is no {0} here.")]
    Missing(&'static str),
    /// No colony of the yard has that name or id.
    #[error("There is no colony “{asked}” in this yard.")]
    NoColony {
        /// What was asked for.
        asked: String,
        /// Those that there are.
        colonies: Vec<(String, ColonyId)>,
    },
    /// It stands at another address.
    #[error("It stands at {0}.")]
    Elsewhere(String),
    /// What was sent cannot be read; the text says what would be right.
    #[error("{0}")]
    Wrong(String),
    /// What was sent may be a slip; the keeper can say that it is right.
    #[error("{says}")]
    Asked {
        /// What there is to ask.
        says: String,
        /// The form that was sent, and where to: it is sent again by one tap.
        again: Option<(String, Vec<(String, String)>)>,
    },
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
    /// The estimate cannot be computed; the text says why.
    #[error("There is no estimate: {0}")]
    Trouble(String),
    /// A computation ended early.
    #[error("A computation ended early. Ask again; if it happens again it is a fault of the program.")]
    Cut,
}

impl Fault {
    pub(crate) fn status(&self) -> StatusCode {
        match self {
            Self::Missing(_) | Self::NoColony { .. } => StatusCode::NOT_FOUND,
            Self::Elsewhere(_) => StatusCode::SEE_OTHER,
            Self::Wrong(_) | Self::Asked { .. } => StatusCode::UNPROCESSABLE_ENTITY,
            Self::Store(fault) if matches!(fault.wrong, snowhum_store::Wrong::Unfit { .. }) => {
                StatusCode::UNPROCESSABLE_ENTITY
            }
            Self::SignIn => StatusCode::UNAUTHORIZED,
            Self::Foreign | Self::OnlyShown => StatusCode::FORBIDDEN,
            Self::Store(_) | Self::Cut => StatusCode::INTERNAL_SERVER_ERROR,
            Self::NotYet | Self::Trouble(_) => StatusCode::SERVICE_UNAVAILABLE,
        }
    }
}

impl IntoResponse for Fault {
    fn into_response(self) -> Response {
        if let Self::Elsewhere(address) = &self {
            return Redirect::to(address).into_response();
        }
        let title = match self {
            Self::OnlyShown => "Only to look at",
            Self::Missing(_) | Self::NoColony { .. } => "Not here",
            Self::Asked { .. } => "Is that right?",
            _ => "Not done",
        };
        let body = html! {
            h1 { (title) }
            p class="lede" { (self.to_string()) }
            (self.ways_on())
        };
        (self.status(), bare(title, &body)).into_response()
    }
}

impl Fault {
    /// The same question with the form that was sent.
    pub(crate) fn again(self, action: String, pairs: &[(String, String)]) -> Self {
        match self {
            Self::Asked { says, .. } => Self::Asked { says, again: Some((action, pairs.to_vec())) },
            other => other,
        }
    }

    /// Where to go from here.
    fn ways_on(&self) -> Markup {
        html! {
            @match self {
                Self::OnlyShown => p { a href="/" { "Look at the yard" } "." },
                Self::Missing(_) => p { "The address may be mistyped. " a href="/" { "Look at the yard" } "." },
                Self::NoColony { colonies, .. } => {
                    p { "These are in it:" }
                    ul { @for (name, id) in colonies { li { a class="way" href={ "/hive/" (id.0) } { (name) } } } }
                    p { a href="/" { "Look at the yard" } "." }
                },
                Self::Asked { again: Some((action, pairs)), .. } => {
                    p { "Nothing was noted yet." }
                    form method="post" action=(action) {
                        @for (name, value) in pairs { input type="hidden" name=(name) value=(value); }
                        input type="hidden" name="sure" value="yes";
                        button class="main" { "It is right: note it" }
                    }
                    p { "Else go back and mend it, or " a href="/" { "look at the yard" } "." }
                },
                _ => p { "Nothing was changed. Go back and mend it, or " a href="/" { "look at the yard" } "." },
            }
        }
    }
}
