//! Answers that are none, and falling back.

use crate::bodies;
use crate::stand_in::{Reply, StandIn};
use crate::yard::{Folder, client, had, minutes_on, morning, request};
use jiff::SignedDuration;
use snowhum_online::{Client, Endpoints, Fault, Standing, Why};
use std::time::{Duration, Instant};

/// What a first request says of an answer, and a later one that has a kept forecast to fall back to.
fn why_of(bad: &Reply) -> Why {
    let (server, folder) = (StandIn::new([bad.clone()]), Folder::new());
    let fault = client(&server, &folder).fetch(&request(), morning()).unwrap_err();
    let (first, notes) = match fault {
        Fault::NoForecast { why, notes, .. } => Some((why, notes)),
        _ => None,
    }
    .unwrap();
    assert!(notes.is_empty(), "{notes:?}");
    let (server, folder) = (StandIn::new([Reply::ok(bodies::met_norway()), bad.clone()]), Folder::new());
    let client = client(&server, &folder);
    let good = had(client.fetch(&request(), morning()));
    let fallen_back = had(client.fetch(&request(), minutes_on(90)));
    assert_eq!(fallen_back.standing, Standing::Cache { age: SignedDuration::from_mins(90), why: first.clone() });
    assert_eq!((fallen_back.hours, fallen_back.fetched), (good.hours, morning()));
    // The bad answer has not replaced the good one.
    server.then(Reply::status(503));
    assert!(matches!(had(client.fetch(&request(), minutes_on(400))).standing, Standing::Cache { .. }));
    first
}

#[test]
fn a_server_in_trouble() {
    assert_eq!(why_of(&Reply::status(500)), Why::Status { status: 500 });
    assert_eq!(why_of(&Reply::status(304)), Why::Status { status: 304 });
}

#[test]
fn an_answer_that_is_no_forecast() {
    let whole = bodies::met_norway();
    let truncated = &whole[..whole.len() / 2];
    let fahrenheit = whole.replace("\"celsius\"", "\"fahrenheit\"");
    let sign_in = "<html><body>Please sign in</body></html>";
    let empty = r#"{"properties":{"meta":{"updated_at":"2027-01-06T05:21:07Z","units":{}},"timeseries":[]}}"#;
    for (body, says) in [
        (truncated, "line 1"),
        (fahrenheit.as_str(), "air_temperature is in fahrenheit, where celsius is right"),
        (sign_in, "line 1 column 1"),
        (empty, "fewer than two hours"),
        ("{}", "properties"),
        ("", "EOF"),
    ] {
        let why = why_of(&Reply::ok(body));
        let Why::NotAForecast { wrong } = &why else { panic!("{why}") };
        assert!(wrong.contains(says), "{says}: {wrong}");
    }
}

#[test]
fn an_answer_that_breaks_off() {
    let why = why_of(&Reply::ok(bodies::met_norway()).claiming(1_000_000));
    assert!(matches!(why, Why::Unreachable { .. }), "{why}");
}

#[test]
fn an_answer_larger_than_is_taken() {
    let mut body = bodies::met_norway();
    body.push_str(&" ".repeat((4 << 20) + 1 - body.len()));
    assert_eq!(why_of(&Reply::ok(body.clone())), Why::TooBig { megabytes: 4 });
    body.pop();
    let (server, folder) = (StandIn::new([Reply::ok(body)]), Folder::new());
    assert_eq!(had(client(&server, &folder).fetch(&request(), morning())).standing, Standing::Fresh);
}

#[test]
fn a_redirect_to_another_place_is_not_followed() {
    let other = StandIn::new([Reply::ok(bodies::met_norway())]);
    for to in [format!("{}/x", other.url()), "http://weather.example/x".to_owned(), "//weather.example/x".to_owned()] {
        let why = why_of(&Reply::status(302).header("Location", &to));
        assert_eq!(why, Why::Elsewhere { to });
    }
    assert!(other.asked().is_empty());
}

#[test]
fn a_redirect_within_the_server_is_followed_twice_at_most() {
    let moved = |to: &str| Reply::status(301).header("Location", to);
    let (server, folder) = (StandIn::new([moved("/a"), moved("/b"), Reply::ok(bodies::met_norway())]), Folder::new());
    assert_eq!(had(client(&server, &folder).fetch(&request(), morning())).standing, Standing::Fresh);
    let paths: Vec<String> = server.asked().into_iter().map(|asked| asked.path).collect();
    assert_eq!(paths[1..], ["/a", "/b"]);
    let (server, folder) = (StandIn::new([moved("/a"), moved("/b"), moved("/c")]), Folder::new());
    let fault = client(&server, &folder).fetch(&request(), morning()).unwrap_err();
    assert!(matches!(fault, Fault::NoForecast { why: Why::Elsewhere { .. }, .. }), "{fault}");
    assert_eq!(server.asked().len(), 3);
}

#[test]
fn a_slow_server_is_not_waited_for() {
    let whole = Reply::ok(bodies::met_norway());
    let long = Duration::from_secs(3);
    for slow in [whole.clone().after(long), whole.pausing(long)] {
        let (server, folder) = (StandIn::new([slow]), Folder::new());
        let client = client(&server, &folder).with_patience(Duration::from_millis(300));
        let begun = Instant::now();
        let fault = client.fetch(&request(), morning()).unwrap_err();
        assert!(begun.elapsed() < Duration::from_secs(2), "{:?}", begun.elapsed());
        assert!(matches!(fault, Fault::NoForecast { why: Why::Slow { .. }, .. }), "{fault}");
    }
}

#[test]
fn a_server_that_is_not_there() {
    let gone = StandIn::new([]).url();
    let folder = Folder::new();
    let client = Client::new(&folder.0, Endpoints { met_norway: gone, ..Endpoints::default() });
    let fault = client.fetch(&request(), morning()).unwrap_err();
    assert!(matches!(fault, Fault::NoForecast { why: Why::Unreachable { .. }, .. }), "{fault}");
    assert!(fault.to_string().contains("check the connection"), "{fault}");
}

#[test]
fn a_kept_forecast_is_taken_until_its_own_end_and_no_longer() {
    let (server, folder) = (StandIn::new([Reply::ok(bodies::met_norway())]), Folder::new());
    let client = client(&server, &folder);
    let end = had(client.fetch(&request(), morning())).end();
    server.then(Reply::status(500));
    let just_before = had(client.fetch(&request(), end - SignedDuration::from_secs(1)));
    assert!(matches!(just_before.standing, Standing::Cache { .. }));
    server.then(Reply::status(500));
    let fault = client.fetch(&request(), end).unwrap_err();
    assert!(matches!(fault, Fault::NoForecast { why: Why::Status { status: 500 }, .. }), "{fault}");
    assert!(fault.to_string().starts_with("no forecast; the answers stand on the site's climate"), "{fault}");
}

#[test]
fn a_forecast_that_is_over_is_none() {
    let (server, folder) = (StandIn::new([Reply::ok(bodies::met_norway())]), Folder::new());
    let fault = client(&server, &folder).fetch(&request(), minutes_on(121 * 60)).unwrap_err();
    assert!(matches!(fault, Fault::NoForecast { why: Why::Over { .. }, .. }), "{fault}");
}

#[test]
fn an_address_that_is_not_encrypted_is_not_asked() {
    let folder = Folder::new();
    let endpoints = Endpoints { met_norway: "http://weather.example".to_owned(), ..Endpoints::default() };
    let fault = Client::new(&folder.0, endpoints).fetch(&request(), morning()).unwrap_err();
    assert!(matches!(fault, Fault::Endpoint { .. }), "{fault}");
    assert!(fault.to_string().contains("https://"), "{fault}");
}

#[test]
fn a_server_that_cannot_encrypt_is_told_nothing() {
    let (server, folder) = (StandIn::new([Reply::ok(bodies::met_norway())]), Folder::new());
    let endpoints = Endpoints { met_norway: server.url().replace("http:", "https:"), ..Endpoints::default() };
    let fault = Client::new(&folder.0, endpoints).fetch(&request(), morning()).unwrap_err();
    assert!(matches!(fault, Fault::NoForecast { why: Why::Unreachable { .. }, .. }), "{fault}");
    assert!(server.asked().is_empty());
}
