//! A made-up yard that asks, and the folder it keeps answers in.

use crate::stand_in::StandIn;
use jiff::{SignedDuration, Timestamp};
use snowhum_online::{Client, Endpoints, Fault, Forecast, OpenMeteoTerms, Position, Request, Service};
use snowhum_units::{Degree, Metre};
use std::path::PathBuf;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::time::Duration;

/// Six in the morning of a winter's day.
pub(crate) fn morning() -> Timestamp {
    "2027-01-06T06:00:00Z".parse().unwrap()
}

/// Some minutes after that.
pub(crate) fn minutes_on(minutes: i64) -> Timestamp {
    morning() + SignedDuration::from_mins(minutes)
}

/// A folder of its own, gone at the end.
pub(crate) struct Folder(pub(crate) PathBuf);

impl Folder {
    pub(crate) fn new() -> Self {
        static COUNT: AtomicUsize = AtomicUsize::new(0);
        let name = format!("snowhum-online-{}-{}", std::process::id(), COUNT.fetch_add(1, Ordering::SeqCst));
        Self(std::env::temp_dir().join(name))
    }

    /// The names of the files in it, in order.
    pub(crate) fn files(&self) -> Vec<String> {
        let entries = std::fs::read_dir(&self.0).unwrap();
        let mut names: Vec<String> = entries.map(|entry| entry.unwrap().file_name().into_string().unwrap()).collect();
        names.sort();
        names
    }
}

impl Drop for Folder {
    fn drop(&mut self) {
        let _ = std::fs::remove_dir_all(&self.0);
        let _ = std::fs::remove_file(&self.0);
    }
}

/// A yard in the north that asks MET Norway.
pub(crate) fn request() -> Request {
    Request {
        service: Service::MetNorway,
        position: Position {
            latitude: Degree::new(62.892_437),
            longitude: Degree::new(27.678_345),
            elevation: Some(Metre::new(97.4)),
        },
        contact: Some("keeper@yard.example".to_owned()),
        open_meteo_terms: OpenMeteoTerms::NotAccepted,
    }
}

/// A yard in the United States that asks the National Weather Service.
pub(crate) fn american() -> Request {
    let position = Position { latitude: Degree::new(46.877_186), longitude: Degree::new(-96.789_803), elevation: None };
    Request { service: Service::Nws, position, ..request() }
}

/// A client that asks one server for everything and does not wait long.
pub(crate) fn client(server: &StandIn, folder: &Folder) -> Client {
    let endpoints = Endpoints { met_norway: server.url(), nws: server.url(), open_meteo: server.url() };
    Client::new(&folder.0, endpoints).with_patience(Duration::from_secs(5))
}

/// A forecast that must be there.
pub(crate) fn had(answer: Result<Forecast, Fault>) -> Forecast {
    answer.unwrap()
}
