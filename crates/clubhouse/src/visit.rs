//! Who looks: the member of the session that a request comes with.

use axum::extract::FromRequestParts;
use axum::http::request::Parts;
use axum::response::{IntoResponse, Redirect, Response};
use snowhum_club::Member;
use snowhum_say::Tongue;
use snowhum_web::Reach;
use snowhum_web::house::named;

use crate::app::Clubhouse;
use crate::fault::Fault;
use crate::spoken::tongue;

/// The prefix has browsers keep it to this very server, encrypted, under no other path (RFC 6265bis).
const COOKIE: &str = "__Host-snowhum-club";
/// On the machine itself nothing is encrypted, and a browser would refuse the prefix.
const COOKIE_HERE: &str = "snowhum-club";

/// A member who looks, and what they read in. Who is not signed in is led to where one does.
pub(crate) struct Visit {
    pub(crate) member: Member,
    pub(crate) tongue: Tongue,
}

impl FromRequestParts<Clubhouse> for Visit {
    type Rejection = Response;

    async fn from_request_parts(parts: &mut Parts, house: &Clubhouse) -> Result<Self, Response> {
        let tongue = tongue(&parts.headers);
        let member = match named(&parts.headers, name(&house.reach)) {
            Some(token) => house.club.signed_in(token).await.map_err(|fault| Fault::from(fault).told(tongue))?,
            None => None,
        };
        match member {
            Some(member) => Ok(Self { member, tongue }),
            None if parts.method.is_safe() => Err(Redirect::to("/sign-in").into_response()),
            None => Err(Fault::SignIn.told(tongue)),
        }
    }
}

/// What the cookie of a session is called.
pub(crate) fn name(reach: &Reach) -> &'static str {
    if reach.is_network() { COOKIE } else { COOKIE_HERE }
}
