//! What a service gets to see, and when it is left alone.

use crate::bodies;
use crate::stand_in::{Reply, StandIn};
use crate::yard::{Folder, american, client, had, minutes_on, morning, request};
use jiff::SignedDuration;
use snowhum_online::{Fault, OpenMeteoTerms, Request, Service, Standing, Why};

#[test]
fn the_service_sees_who_asks_and_no_more_than_four_decimals_of_where() {
    let (server, folder) = (StandIn::new([Reply::ok(bodies::met_norway())]), Folder::new());
    had(client(&server, &folder).fetch(&request(), morning()));
    let asked = &server.asked()[0];
    let name = format!("snowhum/{} keeper@yard.example", env!("CARGO_PKG_VERSION"));
    assert_eq!(asked.header("User-Agent"), Some(name.as_str()));
    assert_eq!(asked.path, "/weatherapi/locationforecast/2.0/compact?lat=62.89&lon=27.68&altitude=97");
    let query = asked.path.split_once('?').unwrap().1;
    for value in query.split('&').map(|pair| pair.split_once('=').unwrap().1) {
        assert!(value.split_once('.').is_none_or(|(_, decimals)| decimals.len() <= 4), "{value}");
    }
}

#[test]
fn without_a_contact_nothing_is_sent() {
    let (server, folder) = (StandIn::new([]), Folder::new());
    for (service, request) in [(Service::MetNorway, request()), (Service::Nws, american())] {
        for contact in [None, Some("  ".to_owned())] {
            let fault = client(&server, &folder).fetch(&Request { contact, ..request.clone() }, morning()).unwrap_err();
            assert_eq!(fault, Fault::NoContact { service });
            assert!(fault.to_string().contains("give a contact"), "{fault}");
        }
        let contact = Some("nobody".to_owned());
        let fault = client(&server, &folder).fetch(&Request { contact, ..request }, morning()).unwrap_err();
        assert!(matches!(fault, Fault::UnfitContact { .. }), "{fault}");
    }
    assert!(server.asked().is_empty());
}

#[test]
fn open_meteo_is_asked_only_when_the_keeper_says_so_and_does_not_learn_who_that_is() {
    let (server, folder) = (StandIn::new([Reply::ok(bodies::open_meteo())]), Folder::new());
    let refused = Request { service: Service::OpenMeteo, ..request() };
    assert_eq!(client(&server, &folder).fetch(&refused, morning()).unwrap_err(), Fault::TermsNotAccepted);
    assert!(server.asked().is_empty());
    let accepted = Request { open_meteo_terms: OpenMeteoTerms::NonCommercial, ..refused };
    had(client(&server, &folder).fetch(&accepted, morning()));
    let agent = server.asked()[0].header("User-Agent").map(str::to_owned);
    assert_eq!(agent.as_deref(), Some(concat!("snowhum/", env!("CARGO_PKG_VERSION"))));
}

#[test]
fn the_national_weather_service_is_not_asked_about_europe() {
    let (server, folder) = (StandIn::new([]), Folder::new());
    let european = Request { service: Service::Nws, ..request() };
    let fault = client(&server, &folder).fetch(&european, morning()).unwrap_err();
    assert!(matches!(fault, Fault::NotCovered { service: Service::Nws, .. }), "{fault}");
    assert!(fault.to_string().contains("ask MET Norway"), "{fault}");
    assert!(server.asked().is_empty());
}

#[test]
fn asked_too_often_it_is_left_alone_for_as_long_as_it_says() {
    let busy = Reply::status(429).header("Retry-After", "5400");
    let (server, folder) = (StandIn::new([Reply::ok(bodies::met_norway()), busy]), Folder::new());
    let client = client(&server, &folder);
    had(client.fetch(&request(), morning()));
    let told = had(client.fetch(&request(), minutes_on(61)));
    assert_eq!(told.standing, Standing::Cache { age: SignedDuration::from_mins(61), why: Why::TooOften });
    let waiting = had(client.fetch(&request(), minutes_on(61 + 89)));
    let until = minutes_on(61 + 90);
    assert_eq!(
        waiting.standing,
        Standing::Cache { age: SignedDuration::from_mins(150), why: Why::LeftAlone { until } }
    );
    assert_eq!(server.asked().len(), 2);
    server.then(Reply::ok(bodies::met_norway()));
    assert_eq!(had(client.fetch(&request(), until)).standing, Standing::Fresh);
}

#[test]
fn refused_with_nothing_kept_it_is_left_alone_too() {
    let (server, folder) = (StandIn::new([Reply::status(403)]), Folder::new());
    let client = client(&server, &folder);
    let fault = client.fetch(&request(), morning()).unwrap_err();
    assert!(matches!(fault, Fault::NoForecast { why: Why::Refused, .. }), "{fault}");
    let words = fault.to_string();
    assert!(words.contains("the answers stand on the site's climate") && words.contains("contact"), "{words}");
    let again = client.fetch(&request(), minutes_on(59)).unwrap_err();
    assert!(matches!(again, Fault::NoForecast { why: Why::LeftAlone { .. }, .. }), "{again}");
    assert_eq!(server.asked().len(), 1);
    server.then(Reply::ok(bodies::met_norway()));
    assert_eq!(had(client.fetch(&request(), minutes_on(60))).standing, Standing::Fresh);
}

#[test]
fn a_pause_that_any_answer_asks_for_is_kept() {
    let closed = Reply::status(503).header("Retry-After", "3600");
    let (server, folder) = (StandIn::new([closed]), Folder::new());
    for minutes in [0, 1, 59] {
        client(&server, &folder).fetch(&request(), minutes_on(minutes)).unwrap_err();
    }
    assert_eq!(server.asked().len(), 1);
}
