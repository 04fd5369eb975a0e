//! MET Norway: read, kept, renewed, and handed on as hours.

use crate::bodies;
use crate::stand_in::{Reply, StandIn};
use crate::yard::{Folder, client, had, minutes_on, morning, request};
use jiff::SignedDuration;
use jiff::tz::TimeZone;
use snowhum_online::{Service, Standing};
use snowhum_say::{Message, Tongue};
use snowhum_units::{Degree, Fraction, Metre, MetrePerSecond};
use snowhum_weather::{Hourly, Place, Reading, complete};

/// An answer that holds for half an hour.
fn good() -> Reply {
    Reply::ok(bodies::met_norway())
        .header("Date", "Wed, 06 Jan 2027 06:00:00 GMT")
        .header("Expires", "Wed, 06 Jan 2027 06:30:00 GMT")
        .header("Last-Modified", "Wed, 06 Jan 2027 05:21:09 GMT")
}

#[test]
fn a_fresh_answer_is_read_in_its_units_and_names_its_source() {
    let (server, folder) = (StandIn::new([good()]), Folder::new());
    let forecast = had(client(&server, &folder).fetch(&request(), morning()));
    assert_eq!((forecast.standing.clone(), forecast.fetched), (Standing::Fresh, morning()));
    assert_eq!(forecast.issued, Some("2027-01-06T05:21:07Z".parse().unwrap()));
    assert_eq!(forecast.service, Service::MetNorway);
    assert!(forecast.attribution.contains("Data from MET Norway") && forecast.attribution.contains("CC BY 4.0"));
    assert!(forecast.notes.is_empty(), "{:?}", forecast.notes);
    let first = forecast.hours[0];
    assert_eq!((first.time, first.lasts), (morning(), SignedDuration::from_hours(1)));
    assert!((first.temperature.celsius() + 15.0).abs() < 1e-9);
    assert_eq!((first.humidity, first.cloud), (Some(Fraction::new(0.84)), Some(Fraction::new(0.625))));
    assert_eq!((first.wind, first.precipitation), (Some(MetrePerSecond::new(3.2)), Some(Metre::new(0.0002))));
    let six_hours = forecast.hours[50];
    assert_eq!(six_hours.lasts, SignedDuration::from_hours(6));
    assert_eq!(six_hours.precipitation, Some(Metre::new(0.0012)));
    assert_eq!(forecast.end(), morning() + SignedDuration::from_hours(121));
}

#[test]
fn nothing_is_sent_before_the_answer_expires() {
    let (server, folder) = (StandIn::new([good()]), Folder::new());
    let first = had(client(&server, &folder).fetch(&request(), morning()));
    let later = had(client(&server, &folder).fetch(&request(), minutes_on(29)));
    assert_eq!(server.asked().len(), 1);
    assert_eq!(later.standing, Standing::StillCurrent { age: SignedDuration::from_mins(29) });
    assert_eq!((later.hours, later.fetched, later.issued), (first.hours, first.fetched, first.issued));
}

#[test]
fn after_that_only_what_is_newer_is_asked_for() {
    let unchanged = Reply::status(304)
        .header("Date", "Wed, 06 Jan 2027 06:31:00 GMT")
        .header("Expires", "Wed, 06 Jan 2027 07:11:00 GMT");
    let (server, folder) = (StandIn::new([good(), unchanged]), Folder::new());
    let client = client(&server, &folder);
    let first = had(client.fetch(&request(), morning()));
    let renewed = had(client.fetch(&request(), minutes_on(31)));
    assert_eq!((renewed.standing, renewed.fetched), (Standing::NotModified, minutes_on(31)));
    assert_eq!(renewed.hours, first.hours);
    let asked = server.asked();
    assert_eq!(asked[0].header("If-Modified-Since"), None);
    assert_eq!(asked[1].header("If-Modified-Since"), Some("Wed, 06 Jan 2027 05:21:09 GMT"));
    // The 304 renewed the term by forty minutes, and the words to send back were kept.
    let held = had(client.fetch(&request(), minutes_on(70)));
    assert_eq!(held.standing, Standing::StillCurrent { age: SignedDuration::from_mins(39) });
    server.then(Reply::ok(bodies::met_norway_from(-9.0).to_string()));
    let newer = had(client.fetch(&request(), minutes_on(72)));
    assert_eq!(newer.standing, Standing::Fresh);
    assert!((newer.hours[0].temperature.celsius() + 9.0).abs() < 1e-9);
    assert_eq!(server.asked()[2].header("If-Modified-Since"), Some("Wed, 06 Jan 2027 05:21:09 GMT"));
}

#[test]
fn a_service_about_to_end_is_said() {
    let ending = Reply::status(203).saying(bodies::met_norway());
    let (server, folder) = (StandIn::new([ending]), Folder::new());
    let forecast = had(client(&server, &folder).fetch(&request(), morning()));
    assert_eq!(forecast.standing, Standing::Fresh);
    assert!(forecast.notes[0].id() == Some("forecast-ending"), "{:?}", forecast.notes);
}

#[test]
fn values_that_are_missing_or_impossible_leave_the_rest() {
    let mut body = bodies::met_norway_from(-15.0);
    let steps = body["properties"]["timeseries"].as_array_mut().unwrap();
    steps[3]["data"]["instant"]["details"]["wind_speed"] = serde_json::Value::Null;
    steps[4]["data"]["instant"]["details"]["air_temperature"] = 4000.0.into();
    let (server, folder) = (StandIn::new([Reply::ok(body.to_string())]), Folder::new());
    let forecast = had(client(&server, &folder).fetch(&request(), morning()));
    assert_eq!(forecast.hours[3].wind, None);
    assert_eq!(forecast.hours[3].lasts, SignedDuration::from_hours(2));
    assert_eq!(forecast.notes.len(), 2, "{:?}", forecast.notes);
}

#[test]
fn the_hours_between_steps_are_straight_lines_and_are_named() {
    let (server, folder) = (StandIn::new([good()]), Folder::new());
    let forecast = had(client(&server, &folder).fetch(&request(), morning()));
    let reading = forecast.to_reading();
    assert_eq!((reading.raw.start, reading.raw.hours.len()), (morning(), 121));
    for (hour, raw) in reading.raw.hours.iter().enumerate() {
        let celsius = raw.temperature.unwrap().celsius();
        assert!((celsius - (-15.0 + 0.1 * hour as f64)).abs() < 1e-9, "hour {hour}: {celsius}");
        assert_eq!(raw.precipitation.is_some(), hour < 120, "hour {hour}");
    }
    let fallen: f64 = reading.raw.hours.iter().filter_map(|hour| hour.precipitation).map(Metre::get).sum();
    assert!((fallen - 0.024).abs() < 1e-9, "{fallen}");
    assert_eq!(forecast.interpolated().count(), 60);
    assert_eq!(forecast.interpolated().next(), Some(minutes_on(49 * 60)));
    let note = "60 hours of the forecast from 2027-01-08T07:00:00Z to 2027-01-11T05:00:00Z";
    let notes = Tongue::BRITISH.say_all(&reading.notes);
    assert!(notes[0].contains("MET Norway"));
    assert!(notes.iter().any(|found| found.starts_with(note)), "{notes:?}");
}

/// The hours made whole by the house's own laws.
fn made_whole(reading: &Reading) -> (Hourly, Vec<Message>) {
    let place = Place { latitude: Degree::new(62.89), longitude: Degree::new(27.68), elevation: Metre::new(97.0) };
    complete(&reading.raw, &reading.file, place, &TimeZone::UTC).unwrap()
}

#[test]
fn the_house_can_make_the_hours_whole() {
    let (server, folder) = (StandIn::new([good()]), Folder::new());
    let forecast = had(client(&server, &folder).fetch(&request(), morning()));
    let (hourly, notes) = made_whole(&forecast.to_reading());
    assert_eq!((hourly.len(), hourly.start), (121, morning()));
    assert_eq!(hourly.wind[60], MetrePerSecond::new(3.2));
    assert!((hourly.temperature[60].celsius() + 9.0).abs() < 1e-9);
    assert!(!notes.iter().any(|note| Tongue::BRITISH.say(note).contains("temperature were filled")), "{notes:?}");
}

#[test]
fn a_dry_forecast_stays_dry() {
    let dry = bodies::met_norway().replace("\"precipitation_amount\":0.2", "\"precipitation_amount\":0.0");
    let dry = dry.replace("\"precipitation_amount\":1.2", "\"precipitation_amount\":0.0");
    let (server, folder) = (StandIn::new([Reply::ok(dry)]), Folder::new());
    let forecast = had(client(&server, &folder).fetch(&request(), morning()));
    let (hourly, _) = made_whole(&forecast.to_reading());
    assert!(hourly.precipitation.iter().all(|fallen| *fallen == Metre::ZERO));
}
