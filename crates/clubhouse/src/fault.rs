//! What can go wrong with a request, as a page.

use axum::http::StatusCode;
use axum::response::{IntoResponse, Response};
use maud::html;
use snowhum_say::{Message, Tongue, club_page as text, fault_page};
use snowhum_web::house::marked;

use crate::frame::bare;

/// A request that is not answered as asked.
#[derive(Debug, thiserror::Error)]
#[error("{}", Tongue::BRITISH.say(&self.says()))]
pub(crate) enum Fault {
    /// There is no such thing, or it is not theirs to see: nobody learns which.
    Missing,
    /// It comes from another site.
    Foreign,
    /// Nobody is signed in.
    SignIn,
    /// The records.
    Club(#[source] snowhum_club::Fault),
    /// Something of the machine.
    Cut,
}

impl From<snowhum_club::Fault> for Fault {
    fn from(fault: snowhum_club::Fault) -> Self {
        match fault {
            snowhum_club::Fault::NoSuch { .. } => Self::Missing,
            other => Self::Club(other),
        }
    }
}

impl IntoResponse for Fault {
    /// Where nobody knows what is read.
    fn into_response(self) -> Response {
        self.told(Tongue::BRITISH)
    }
}

impl Fault {
    /// As a page.
    pub(crate) fn told(self, tongue: Tongue) -> Response {
        let status = match self {
            Self::Missing => StatusCode::NOT_FOUND,
            Self::Foreign => StatusCode::FORBIDDEN,
            Self::SignIn => StatusCode::UNAUTHORIZED,
            Self::Club(snowhum_club::Fault::Unreachable { .. }) => StatusCode::SERVICE_UNAVAILABLE,
            Self::Club(_) | Self::Cut => StatusCode::INTERNAL_SERVER_ERROR,
        };
        let title = match self {
            Self::Missing => fault_page::title_missing(),
            _ => fault_page::title_wrong(),
        };
        let title = tongue.say(&title);
        let body = html! {
            h1 { (title) }
            p class="lede" { (tongue.say(&self.says())) }
            p { (marked(tongue, &text::back())) }
        };
        (status, bare(&title, &body, tongue)).into_response()
    }

    fn says(&self) -> Message {
        match self {
            Self::Missing => text::missing(),
            Self::Foreign => fault_page::foreign(),
            Self::SignIn => fault_page::sign_in(),
            // What the database says in its own words is for the machine's keeper, not for each member.
            Self::Club(_) => text::unreadable(),
            Self::Cut => fault_page::cut(),
        }
    }
}
