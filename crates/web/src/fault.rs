//! What can go wrong with a request, as a page or as JSON.

use axum::http::StatusCode;
use axum::response::{IntoResponse, Redirect, Response};
use maud::{Markup, html};
use snowhum_apiary::ColonyId;
use snowhum_say::{Message, Tongue, fault_page as text};

use crate::bare::bare;
use crate::reader;
use crate::words::marked;

/// A request that is not answered as asked.
#[derive(Debug, thiserror::Error)]
#[error("{}", Tongue::BRITISH.say(&self.says()))]
pub(crate) enum Fault {
    /// There is no such thing; which, as the text has it.
    Missing(&'static str),
    /// No colony of the yard has that name or id.
    NoColony {
        /// What was asked for.
        asked: String,
        /// Those that there are.
        colonies: Vec<(String, ColonyId)>,
    },
    /// It stands at another address.
    Elsewhere(String),
    /// What was sent cannot be read; the text says what would be right.
    Wrong(Message),
    /// What was sent may be a slip; the keeper can say that it is right.
    Asked {
        /// What there is to ask.
        says: Message,
        /// The form that was sent, and where to: it is sent again by one tap.
        again: Option<(String, Vec<(String, String)>)>,
    },
    /// It comes from another site.
    Foreign,
    /// Nobody is signed in.
    SignIn,
    /// Who looks through a link may not do this.
    OnlyShown,
    /// The store.
    Store(#[from] snowhum_store::Fault),
    /// The estimate is not there yet.
    NotYet,
    /// The estimate cannot be computed; the text says why.
    Trouble(Message),
    /// A computation ended early.
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
        let title = reader::tongue().say(&match self {
            Self::OnlyShown => text::title_shown(),
            Self::Missing(_) | Self::NoColony { .. } => text::title_missing(),
            Self::Asked { .. } => text::title_asked(),
            _ => text::title_wrong(),
        });
        let body = html! {
            h1 { (title) }
            p class="lede" { (self.told()) }
            (self.ways_on())
        };
        (self.status(), bare(&title, &body)).into_response()
    }
}

impl Fault {
    /// What was sent cannot be read, in the words of who read it.
    pub(crate) fn wrong(text: impl Into<Message>) -> Self {
        Self::Wrong(text.into())
    }

    /// The same in the words of whoever asked.
    pub(crate) fn told(&self) -> String {
        reader::tongue().say(&self.says())
    }

    /// What is said of it.
    pub(crate) fn says(&self) -> Message {
        match self {
            Self::Missing(what) => text::missing(what),
            Self::NoColony { asked, .. } => text::no_colony(asked),
            Self::Elsewhere(address) => text::elsewhere(address),
            Self::Wrong(says) | Self::Asked { says, .. } => says.clone(),
            Self::Foreign => text::foreign(),
            Self::SignIn => text::sign_in(),
            Self::OnlyShown => text::only_shown(),
            Self::Store(fault) => fault.message(),
            Self::NotYet => text::not_yet(),
            Self::Trouble(why) => text::trouble(why),
            Self::Cut => text::cut(),
        }
    }

    /// The same question with the form that was sent.
    pub(crate) fn again(self, action: String, pairs: &[(String, String)]) -> Self {
        match self {
            Self::Asked { says, .. } => Self::Asked { says, again: Some((action, pairs.to_vec())) },
            other => other,
        }
    }

    /// Where to go from here.
    fn ways_on(&self) -> Markup {
        let said = |message: Message| marked(reader::tongue(), &message);
        html! {
            @match self {
                Self::OnlyShown => p { (said(text::yard())) },
                Self::Missing(_) => p { (said(text::mistyped())) },
                Self::NoColony { colonies, .. } => {
                    p { (said(text::colonies())) }
                    ul { @for (name, id) in colonies { li { a class="way" href={ "/hive/" (id.0) } { (name) } } } }
                    p { (said(text::yard())) }
                },
                Self::Asked { again: Some((action, pairs)), .. } => {
                    p { (said(text::not_noted())) }
                    form method="post" action=(action) {
                        @for (name, value) in pairs { input type="hidden" name=(name) value=(value); }
                        input type="hidden" name="sure" value="yes";
                        button class="main" { (said(text::right())) }
                    }
                    p { (said(text::mend())) }
                },
                _ => p { (said(text::unchanged())) },
            }
        }
    }
}
