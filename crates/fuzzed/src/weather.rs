//! Weather files.

use jiff::tz::{Offset, TimeZone};
use snowhum_units::{Degree, Metre};
use snowhum_weather::readers::{self, Mapping};
use snowhum_weather::{Place, Reading, WeatherFaults, complete};

/// Longest file tried, hours: more of the same only takes longer.
const MOST_HOURS: usize = 50_000;

fn place() -> Place {
    Place { latitude: Degree::new(62.0), longitude: Degree::new(25.0), elevation: Metre::new(100.0) }
}

/// A reading is made whole, which must do or say why not.
fn tried(read: Result<Reading, WeatherFaults>) {
    let reading = match read {
        Ok(reading) => reading,
        Err(faults) => return assert!(!faults.to_string().is_empty()),
    };
    if reading.raw.hours.len() > MOST_HOURS {
        return;
    }
    let whole = complete(&reading.raw, "fuzzed", reading.place.unwrap_or_else(place), &TimeZone::UTC);
    drop(whole.map_err(|faults| assert!(!faults.to_string().is_empty())));
}

/// EPW.
pub fn epw(bytes: &[u8]) {
    tried(readers::epw(bytes, "fuzzed"));
}

/// ISD-lite.
pub fn isd_lite(bytes: &[u8]) {
    tried(readers::isd_lite(bytes, "fuzzed"));
}

/// GHCN-Daily.
pub fn ghcn_daily(bytes: &[u8]) {
    tried(readers::ghcn_daily(bytes, "fuzzed", place(), Offset::UTC));
}

/// A station's CSV; the first line says what its columns are.
pub fn station_csv(bytes: &[u8]) {
    let end = bytes.iter().position(|byte| *byte == b'\n').unwrap_or(bytes.len());
    let (first, rest) = bytes.split_at(end);
    let Ok(Ok(mapping)) = std::str::from_utf8(first).map(|text| Mapping::read(text, TimeZone::UTC)) else { return };
    tried(readers::station_csv(rest, "fuzzed", &mapping, Some(place())));
}
