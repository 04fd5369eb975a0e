//! Cookies: the keeper's session and the reader's link.

use axum::http::{HeaderMap, HeaderValue, header};

use super::Reach;

/// The prefix has browsers keep it to this very server, encrypted, under no other path (RFC 6265bis).
const KEEPER: &str = "__Host-snowhum";
const READER: &str = "__Host-snowhum-reader";
/// On the machine itself nothing is encrypted, and a browser would refuse the prefix.
const READER_HERE: &str = "snowhum-reader";

/// The session a request comes with.
pub(super) fn keeper(headers: &HeaderMap) -> Option<&str> {
    named(headers, KEEPER)
}

/// The link a request comes with.
pub(super) fn reader<'a>(headers: &'a HeaderMap, reach: &Reach) -> Option<&'a str> {
    named(headers, reader_name(reach))
}

/// Gives a session to a browser.
pub(super) fn give_keeper(token: &str, seconds: i64) -> Option<HeaderValue> {
    given(KEEPER, token, seconds, true)
}

/// Gives a link to a browser.
pub(super) fn give_reader(token: &str, seconds: i64, reach: &Reach) -> Option<HeaderValue> {
    given(reader_name(reach), token, seconds, reach.is_network())
}

/// Takes both away.
pub(super) fn take_all(reach: &Reach) -> Vec<HeaderValue> {
    [give_keeper("", 0), give_reader("", 0, reach)].into_iter().flatten().collect()
}

fn reader_name(reach: &Reach) -> &'static str {
    if reach.is_network() { READER } else { READER_HERE }
}

/// A cookie for a browser: for this server alone, and read by no script.
pub fn given(name: &str, token: &str, seconds: i64, is_encrypted: bool) -> Option<HeaderValue> {
    let secure = if is_encrypted { "; Secure" } else { "" };
    let text = format!("{name}={token}; Path=/; Max-Age={seconds}; HttpOnly; SameSite=Strict{secure}");
    HeaderValue::from_str(&text).ok()
}

/// What a request's cookie of a name holds.
pub fn named<'a>(headers: &'a HeaderMap, name: &str) -> Option<&'a str> {
    let all = headers.get_all(header::COOKIE).into_iter().filter_map(|value| value.to_str().ok());
    let mut pairs = all.flat_map(|text| text.split(';')).filter_map(|pair| pair.trim().split_once('='));
    pairs.find(|(key, _)| *key == name).map(|(_, value)| value)
}
