//! The US National Weather Service and Open-Meteo.

use crate::bodies;
use crate::stand_in::{Reply, StandIn};
use crate::yard::{Folder, american, client, had, minutes_on, morning, request};
use jiff::SignedDuration;
use snowhum_online::{Fault, OpenMeteoTerms, Request, Service, Standing, Why};
use snowhum_units::{Fraction, Metre, MetrePerSecond};

/// A server with a point and its square.
fn weather_service() -> StandIn {
    let server = StandIn::new([]);
    server.then(Reply::ok(bodies::point(&server.url())).header("Cache-Control", "public, max-age=75000"));
    server.then(Reply::ok(bodies::square()).header("Cache-Control", "public, max-age=2400"));
    server
}

#[test]
fn a_point_leads_to_its_square_whose_values_are_laid_out_by_hour() {
    let (server, folder) = (weather_service(), Folder::new());
    let forecast = had(client(&server, &folder).fetch(&american(), morning()));
    let paths: Vec<String> = server.asked().into_iter().map(|asked| asked.path).collect();
    assert_eq!(paths, ["/points/46.88,-96.79", "/gridpoints/FGF/99,55"]);
    assert!(server.asked().iter().all(|asked| asked.header("User-Agent").unwrap().contains("keeper@yard.example")));
    assert_eq!((forecast.standing.clone(), forecast.hours.len()), (Standing::Fresh, 36));
    assert!(
        forecast.attribution.contains("National Weather Service") && forecast.attribution.contains("public domain")
    );
    assert_eq!(forecast.issued, Some("2027-01-06T04:10:00Z".parse().unwrap()));
    let celsius: Vec<f64> = forecast.hours[..5].iter().map(|hour| hour.temperature.celsius().round()).collect();
    assert_eq!(celsius, [-22.0, -22.0, -22.0, -21.0, -18.0]);
    let hour = forecast.hours[5];
    assert_eq!((hour.wind, hour.humidity), (Some(MetrePerSecond::new(5.0)), Some(Fraction::new(0.71))));
    assert_eq!((hour.cloud, hour.precipitation), (Some(Fraction::new(0.4)), Some(Metre::new(0.0005))));
    assert_eq!((forecast.hours[7].cloud, forecast.hours[20].precipitation), (None, None));
    assert_eq!(forecast.interpolated().count(), 0);
}

#[test]
fn the_square_is_asked_again_and_the_point_is_not() {
    let (server, folder) = (weather_service(), Folder::new());
    let client = client(&server, &folder);
    had(client.fetch(&american(), morning()));
    had(client.fetch(&american(), minutes_on(39)));
    assert_eq!(server.asked().len(), 2);
    server.then(Reply::ok(bodies::square()));
    assert_eq!(had(client.fetch(&american(), minutes_on(41))).standing, Standing::Fresh);
    assert_eq!(server.asked()[2].path, "/gridpoints/FGF/99,55");
}

#[test]
fn a_point_that_cannot_be_asked_again_still_leads_to_its_square() {
    let (server, folder) = (weather_service(), Folder::new());
    let client = client(&server, &folder);
    had(client.fetch(&american(), morning()));
    server.then(Reply::status(500));
    server.then(Reply::ok(bodies::square()));
    let next_day = had(client.fetch(&american(), minutes_on(21 * 60)));
    assert_eq!(next_day.standing, Standing::Fresh);
    assert!(next_day.notes[0].id() == Some("forecast-square"), "{:?}", next_day.notes);
}

#[test]
fn a_point_across_the_border_is_the_services_to_refuse() {
    let (server, folder) = (StandIn::new([Reply::status(404)]), Folder::new());
    let fault = client(&server, &folder).fetch(&american(), morning()).unwrap_err();
    assert!(matches!(fault, Fault::NoForecast { why: Why::UnknownPlace, .. }), "{fault}");
    assert!(fault.to_string().contains("ask MET Norway"), "{fault}");
}

#[test]
fn a_square_on_another_server_is_not_asked() {
    let other = StandIn::new([Reply::ok(bodies::square())]);
    let (server, folder) = (StandIn::new([Reply::ok(bodies::point(&other.url()))]), Folder::new());
    let fault = client(&server, &folder).fetch(&american(), morning()).unwrap_err();
    assert!(matches!(fault, Fault::NoForecast { why: Why::Elsewhere { .. }, .. }), "{fault}");
    assert!(other.asked().is_empty());
}

#[test]
fn a_layer_in_another_unit_is_no_forecast() {
    for (right, other) in [("wmoUnit:degC", "wmoUnit:degF"), ("wmoUnit:km_h-1", "wmoUnit:kt"), ("wmoUnit:mm", "m")] {
        let server = StandIn::new([]);
        server.then(Reply::ok(bodies::point(&server.url())));
        server.then(Reply::ok(bodies::square().replace(right, other)));
        let folder = Folder::new();
        let fault = client(&server, &folder).fetch(&american(), morning()).unwrap_err();
        assert!(fault.to_string().contains(&format!("\"{other}\", where {right} is right")), "{fault}");
    }
}

#[test]
fn open_meteo_has_rain_at_the_end_of_its_hour() {
    let (server, folder) = (StandIn::new([Reply::ok(bodies::open_meteo())]), Folder::new());
    let request = Request { service: Service::OpenMeteo, open_meteo_terms: OpenMeteoTerms::NonCommercial, ..request() };
    let forecast = had(client(&server, &folder).fetch(&request, morning()));
    let path = &server.asked()[0].path;
    assert!(path.starts_with("/v1/forecast?latitude=62.89&longitude=27.68&elevation=97&hourly=temperature_2m,"));
    assert!(path.contains("wind_speed_unit=ms") && path.contains("timezone=UTC"), "{path}");
    assert!(forecast.attribution.contains("Open-Meteo.com") && forecast.attribution.contains("CC BY 4.0"));
    assert_eq!((forecast.issued, forecast.hours.len()), (None, 30));
    let first = forecast.hours[0];
    assert_eq!((first.precipitation, first.wind), (Some(Metre::new(0.0007)), Some(MetrePerSecond::new(2.5))));
    assert_eq!((forecast.hours[1].precipitation, forecast.hours[2].cloud), (Some(Metre::ZERO), None));
    assert_eq!(forecast.hours[29].precipitation, None);
    // Nothing said how long it holds: an hour is taken.
    let later = had(client(&server, &folder).fetch(&request, minutes_on(59)));
    assert_eq!(later.standing, Standing::StillCurrent { age: SignedDuration::from_mins(59) });
}

#[test]
fn open_meteo_in_other_units_or_with_a_short_column_is_no_forecast() {
    let whole = bodies::open_meteo();
    let request = Request { service: Service::OpenMeteo, open_meteo_terms: OpenMeteoTerms::NonCommercial, ..request() };
    for (body, says) in [
        (whole.replace("\"m/s\"", "\"km/h\""), "wind_speed_10m is in km/h, where m/s is right"),
        (whole.replace("\"utc_offset_seconds\":0", "\"utc_offset_seconds\":7200"), "not UTC"),
        (whole.replace("\"cloud_cover\":[100,", "\"cloud_cover\":["), "not of the same length"),
    ] {
        let (server, folder) = (StandIn::new([Reply::ok(body)]), Folder::new());
        let fault = client(&server, &folder).fetch(&request, morning()).unwrap_err();
        assert!(fault.to_string().contains(says), "{says}: {fault}");
    }
}
