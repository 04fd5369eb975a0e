//! Live weather as a keeper turns it on, against a stand-in on this machine with invented answers.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use std::io::{Read, Write};
use std::net::TcpListener;
use std::path::PathBuf;
use std::process::{Command, Output, Stdio};
use std::sync::{Arc, Mutex};

use serde_json::{Value, json};

/// A server that gives one answer to everybody and keeps what it was asked.
struct StandIn {
    address: String,
    asked: Arc<Mutex<Vec<String>>>,
}

impl StandIn {
    fn answering(status: &'static str, body: String) -> Self {
        let listener = TcpListener::bind("127.0.0.1:0").unwrap();
        let address = format!("http://{}", listener.local_addr().unwrap());
        let asked: Arc<Mutex<Vec<String>>> = Arc::default();
        let kept = Arc::clone(&asked);
        std::thread::spawn(move || {
            for stream in listener.incoming() {
                let Ok(mut stream) = stream else { return };
                let mut request = [0; 4_096];
                let read = stream.read(&mut request).unwrap_or(0);
                kept.lock().unwrap().push(String::from_utf8_lossy(&request[..read]).into_owned());
                let head = format!(
                    "HTTP/1.1 {status}\r\nContent-Type: application/json\r\nContent-Length: {}\r\nConnection: close\r\n\r\n",
                    body.len()
                );
                let _ = stream.write_all(head.as_bytes()).and_then(|()| stream.write_all(body.as_bytes()));
            }
        });
        Self { address, asked }
    }
}

/// An invented forecast in the published shape: steady frost, hour by hour from the last whole hour.
fn forecast() -> String {
    let hour = jiff::Timestamp::now().as_second().div_euclid(3_600) * 3_600;
    let step = |at: i64| {
        json!({
            "time": jiff::Timestamp::from_second(hour + 3_600 * at).unwrap().to_string(),
            "data": {
                "instant": { "details": {
                    "air_temperature": -11.0, "relative_humidity": 85.0, "wind_speed": 2.0, "cloud_area_fraction": 90.0
                } },
                "next_1_hours": { "summary": { "symbol_code": "cloudy" }, "details": { "precipitation_amount": 0.0 } }
            }
        })
    };
    let units = json!({
        "air_temperature": "celsius", "relative_humidity": "%", "wind_speed": "m/s", "cloud_area_fraction": "%",
        "precipitation_amount": "mm", "air_pressure_at_sea_level": "hPa", "wind_from_direction": "degrees"
    });
    json!({
        "type": "Feature",
        "geometry": { "type": "Point", "coordinates": [27.3, 61.7, 105] },
        "properties": {
            "meta": { "updated_at": jiff::Timestamp::from_second(hour).unwrap().to_string(), "units": units },
            "timeseries": (0..60).map(step).collect::<Vec<_>>()
        }
    })
    .to_string()
}

struct Folder(PathBuf);

impl Folder {
    fn new(name: &str) -> Self {
        let path = std::env::temp_dir().join(format!("snowhum-fetch-{name}-{}", std::process::id()));
        let _ = std::fs::remove_dir_all(&path);
        std::fs::create_dir_all(&path).unwrap();
        Self(path)
    }

    fn run(&self, stand_in: &StandIn, arguments: &[&str]) -> Output {
        Command::new(env!("CARGO_BIN_EXE_snowhum"))
            .args(arguments)
            .env("XDG_DATA_HOME", &self.0)
            .env("SNOWHUM_WEATHER_STAND_IN", &stand_in.address)
            .stdin(Stdio::null())
            .output()
            .unwrap()
    }
}

impl Drop for Folder {
    fn drop(&mut self) {
        let _ = std::fs::remove_dir_all(&self.0);
    }
}

fn text(bytes: &[u8]) -> String {
    String::from_utf8(bytes.to_vec()).unwrap()
}

const FETCH: &[&str] = &["weather", "fetch", "--live", "met-norway", "--contact", "keeper@example.org", "--json"];

#[test]
fn a_forecast_is_fetched_once_and_kept_with_its_attribution() {
    let (folder, stand_in) = (Folder::new("kept"), StandIn::answering("200 OK", forecast()));
    let fetched = folder.run(&stand_in, FETCH);
    assert!(fetched.status.success(), "{}", text(&fetched.stderr));
    let answer: Value = serde_json::from_slice(&fetched.stdout).unwrap();
    assert!(answer["attribution"].as_str().unwrap().contains("MET Norway"), "{answer}");
    assert_eq!(answer["steps"], 60);
    let asked = stand_in.asked.lock().unwrap()[0].to_lowercase();
    assert!(asked.contains("keeper@example.org") && asked.contains("lat=61.7"), "{asked}");
    let again = folder.run(&stand_in, FETCH);
    let again: Value = serde_json::from_slice(&again.stdout).unwrap();
    assert!(again["standing"].as_str().unwrap().contains("still current"), "{again}");
    assert_eq!(stand_in.asked.lock().unwrap().len(), 1, "not asked again before it runs out");
}

#[test]
fn nothing_is_asked_unless_a_service_is_named_and_reachable_under_a_contact() {
    let (folder, stand_in) = (Folder::new("off"), StandIn::answering("200 OK", forecast()));
    let unnamed = folder.run(&stand_in, &["weather", "fetch"]);
    assert_eq!(unnamed.status.code(), Some(2));
    let nameless = folder.run(&stand_in, &["weather", "fetch", "--live", "met-norway"]);
    assert_eq!(nameless.status.code(), Some(3));
    assert!(text(&nameless.stderr).to_lowercase().contains("contact"), "{}", text(&nameless.stderr));
    let now = folder.run(&stand_in, &["now", "--members", "32", "--json"]);
    assert!(now.status.success());
    assert!(stand_in.asked.lock().unwrap().is_empty());
}

#[test]
fn a_service_that_fails_leaves_the_answers_on_the_climate_and_says_so() {
    let (folder, stand_in) = (Folder::new("down"), StandIn::answering("500 Internal Server Error", String::new()));
    let yard = folder.0.join("yard.toml");
    let today = jiff::tz::TimeZone::get("Europe/Helsinki").unwrap().to_datetime(jiff::Timestamp::now()).date();
    let counted = format!("as_of = {}", today.yesterday().unwrap());
    let text_of = snowhum_apiary::demo_text();
    let plain: String = text_of.split("# The winter's log").next().unwrap().to_owned();
    let plain = plain.replacen("as_of = 2025-10-05", &counted, 1).replacen("invented = true", "invented = false", 1);
    std::fs::write(&yard, plain).unwrap();
    let live = ["--live", "met-norway", "--contact", "keeper@example.org", "--members", "32", "--json"];
    let now = folder.run(&stand_in, &[&["now", "--apiary", yard.to_str().unwrap()][..], &live].concat());
    // In summer there is no winter to stand in; then the program says so, and this says nothing.
    if now.status.code() == Some(2) {
        return;
    }
    assert!(now.status.success(), "{}", text(&now.stderr));
    assert!(text(&now.stderr).contains("No forecast"), "{}", text(&now.stderr));
    let answer: Value = serde_json::from_slice(&now.stdout).unwrap();
    assert!(answer["weather"]["source"].as_str().unwrap().starts_with("weather drawn"), "{answer}");
    let up = StandIn::answering("200 OK", forecast());
    let fresh = Folder::new("up");
    let now = fresh.run(&up, &[&["now", "--apiary", yard.to_str().unwrap()][..], &live].concat());
    let answer: Value = serde_json::from_slice(&now.stdout).unwrap();
    assert!(answer["weather"]["source"].as_str().unwrap().starts_with("the forecast of"), "{}", answer["weather"]);
}
