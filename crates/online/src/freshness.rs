//! How long an answer holds, and how long a service wants to be left alone.

use crate::transport::Headers;
use jiff::{SignedDuration, Timestamp, fmt::rfc2822};

/// Where the service says nothing: forecasts are renewed every one to six hours.
const USUAL: SignedDuration = SignedDuration::from_hours(1);
/// Shortest, whatever the service says, so that a run in a loop does no harm.
const SHORTEST: SignedDuration = SignedDuration::from_mins(10);
/// Longest, whatever the service says, so that one odd header freezes no forecast.
const LONGEST: SignedDuration = SignedDuration::from_hours(24);

/// Until when an answer received `now` holds: `max-age`, else `Expires` less `Date`, both less `Age`, so that a clock
/// that is wrong at home does not matter (RFC 9111, 4.2).
pub(crate) fn fresh_until(headers: &Headers, now: Timestamp) -> Timestamp {
    let sent = headers.date.as_deref().and_then(instant).unwrap_or(now);
    let expires = headers.expires.as_deref().and_then(instant).map(|expires| expires.duration_since(sent));
    let age = headers.age.as_deref().and_then(seconds).unwrap_or(SignedDuration::ZERO);
    let lifetime = max_age(headers).or(expires).map_or(USUAL, |lifetime| lifetime.saturating_sub(age));
    later(now, lifetime)
}

/// When a service that refused may be asked again: as it says, else in an hour.
pub(crate) fn retry_at(headers: &Headers, now: Timestamp) -> Timestamp {
    let said = headers.retry_after.as_deref();
    let pause = said.and_then(seconds).or_else(|| said.and_then(instant).map(|instant| instant.duration_since(now)));
    later(now, pause.unwrap_or(USUAL))
}

/// Whether a term set at `from` still runs; one that lies too far ahead was set by a wrong clock.
pub(crate) fn runs(until: Timestamp, now: Timestamp) -> bool {
    now < until && until.duration_since(now) <= LONGEST
}

fn later(now: Timestamp, by: SignedDuration) -> Timestamp {
    now.saturating_add(by.clamp(SHORTEST, LONGEST)).unwrap_or(now)
}

fn max_age(headers: &Headers) -> Option<SignedDuration> {
    let directives = headers.cache_control.as_deref()?.split(',');
    directives.filter_map(|directive| directive.trim().strip_prefix("max-age=")).find_map(seconds)
}

fn seconds(text: &str) -> Option<SignedDuration> {
    text.trim().parse::<u32>().ok().map(|seconds| SignedDuration::from_secs(i64::from(seconds)))
}

/// A date as HTTP writes it, such as `Wed, 06 Jan 2027 06:30:00 GMT`.
fn instant(text: &str) -> Option<Timestamp> {
    rfc2822::DateTimeParser::new().parse_timestamp(text.trim()).ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    const NOW: &str = "2027-01-06T06:00:00Z";

    fn minutes(headers: Headers) -> i64 {
        let now: Timestamp = NOW.parse().unwrap();
        fresh_until(&headers, now).duration_since(now).as_mins()
    }

    fn headers(expires: &str) -> Headers {
        Headers { expires: Some(expires.to_owned()), ..Headers::default() }
    }

    #[test]
    fn an_answer_holds_as_long_as_the_service_says() {
        assert_eq!(minutes(headers("Wed, 06 Jan 2027 06:37:00 GMT")), 37);
        let by_age = Headers { cache_control: Some("public, max-age=1800, s-maxage=9".to_owned()), ..headers("x") };
        assert_eq!(minutes(by_age.clone()), 30);
        assert_eq!(minutes(Headers { age: Some("600".to_owned()), ..by_age }), 20);
    }

    #[test]
    fn a_wrong_clock_at_home_does_not_matter() {
        let date = Some("Tue, 05 Jan 2027 02:00:00 GMT".to_owned());
        assert_eq!(minutes(Headers { date, ..headers("Tue, 05 Jan 2027 02:45:00 GMT") }), 45);
        let now: Timestamp = NOW.parse().unwrap();
        assert!(runs("2027-01-06T07:00:00Z".parse().unwrap(), now));
        assert!(!runs("2027-03-06T07:00:00Z".parse().unwrap(), now));
    }

    #[test]
    fn odd_terms_end_up_between_ten_minutes_and_a_day() {
        assert_eq!(minutes(Headers::default()), 60);
        assert_eq!(minutes(headers("0")), 60);
        assert_eq!(minutes(headers("Wed, 06 Jan 2021 06:30:00 GMT")), 10);
        assert_eq!(minutes(headers("Wed, 06 Jan 2100 06:30:00 GMT")), 24 * 60);
    }

    #[test]
    fn a_pause_is_in_seconds_or_until_a_date() {
        let now: Timestamp = NOW.parse().unwrap();
        let pause = |text: Option<&str>| {
            let headers = Headers { retry_after: text.map(str::to_owned), ..Headers::default() };
            retry_at(&headers, now).duration_since(now).as_mins()
        };
        assert_eq!(pause(Some("7200")), 120);
        assert_eq!(pause(Some("Wed, 06 Jan 2027 08:00:00 GMT")), 120);
        assert_eq!((pause(Some("soon")), pause(None), pause(Some("5"))), (60, 60, 10));
    }
}
