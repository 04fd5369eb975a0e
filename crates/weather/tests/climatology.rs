//! The embedded climatology against cities of an independent one, and its edges.

use snowhum_say::Tongue;
use snowhum_units::{Degree, Metre};
use snowhum_weather::{Climate, OutsideGrid, Place};

fn place(latitude: f64, longitude: f64, elevation_m: f64) -> Place {
    Place { latitude: Degree::new(latitude), longitude: Degree::new(longitude), elevation: Metre::new(elevation_m) }
}

/// Mean of January and July, °C, of CHELSA 2.1 1981-2010 (CC-BY-4.0); the embedded years are twenty later.
#[test]
fn cities_are_plausible() {
    for (name, at, january_c, july_c) in CITIES {
        let climate = Climate::at(place(at.0, at.1, at.2)).unwrap();
        for (found, given) in [(climate.temperature[0], january_c), (climate.temperature[6], july_c)] {
            assert!((found.celsius() - given).abs() < 2.5, "{name}: {:.1} {given}", found.celsius());
        }
    }
}

type City = (&'static str, (f64, f64, f64), f64, f64);

const CITIES: [City; 11] = [
    ("Helsinki", (60.17, 24.94, 20.0), -4.5, 17.4),
    ("Stockholm", (59.33, 18.07, 25.0), -2.0, 17.2),
    ("Oslo", (59.91, 10.75, 25.0), -4.2, 17.6),
    ("Riga", (56.95, 24.11, 10.0), -2.6, 18.2),
    ("Minsk", (53.90, 27.56, 220.0), -4.9, 18.1),
    ("Kyiv", (50.45, 30.52, 170.0), -3.8, 20.1),
    ("Montreal", (45.51, -73.55, 40.0), -9.6, 21.5),
    ("Toronto", (43.65, -79.38, 90.0), -3.4, 21.5),
    ("Chicago", (41.88, -87.63, 180.0), -3.8, 24.2),
    ("Denver", (39.74, -104.98, 1_610.0), -1.3, 22.8),
    ("Ulaanbaatar", (47.90, 106.91, 1_330.0), -22.2, 17.1),
];

#[test]
fn rain_of_a_year_is_plausible() {
    for (at, low_mm, high_mm) in [((60.2, 24.9, 20.0), 550.0, 900.0), ((49.9, -97.1, 235.0), 400.0, 700.0)] {
        let climate = Climate::at(place(at.0, at.1, at.2)).unwrap();
        let year_mm = climate.precipitation.iter().map(|month| month.get() * 1000.0).sum::<f64>();
        assert!((low_mm..high_mm).contains(&year_mm), "{year_mm}");
    }
}

#[test]
fn height_moves_temperature_and_a_coarse_place_is_told() {
    let is_coarse = |climate: &Climate| climate.provenance.notes.iter().any(|note| note.id() == Some("weather-coarse"));
    let valley = Climate::at(place(47.26, 11.4, 580.0)).unwrap();
    let alp = Climate::at(place(47.26, 11.4, 2_080.0)).unwrap();
    assert!(((valley.temperature[0] - alp.temperature[0]).get() - 7.5).abs() < 1e-9);
    assert!(is_coarse(&valley), "{:?}", valley.provenance.notes);
    let flat = Climate::at(place(49.9, -97.1, 235.0)).unwrap();
    assert!(!is_coarse(&flat));
    assert!(Tongue::BRITISH.say(&flat.provenance.notes[0]).contains("Copernicus"));
}

#[test]
fn places_outside_get_a_message_that_asks_for_a_file() {
    for (latitude, longitude) in [(0.0, 20.0), (29.9, 20.0), (76.0, 20.0), (-20.0, 20.0), (-57.0, -70.0), (45.0, -40.0)]
    {
        let fault = Climate::at(place(latitude, longitude, 0.0)).unwrap_err().to_string();
        assert!(fault.contains("weather file"), "{fault}");
    }
    assert!(matches!(Climate::at(place(f64::NAN, 20.0, 0.0)), Err(OutsideGrid::NoPlace { .. })));
    assert!(matches!(Climate::at(place(60.0, 400.0, 0.0)), Err(OutsideGrid::NoPlace { .. })));
    assert!(matches!(Climate::at(place(45.0, -40.0, 0.0)), Err(OutsideGrid::OpenSea { .. })));
}

#[test]
fn the_grid_is_the_same_across_the_meridians() {
    for (latitude, before, after) in
        [(52.0, -1e-9, 1e-9), (66.5, 180.0 - 1e-9, -180.0 + 1e-9), (52.0, 359.999_999_999, 0.0)]
    {
        let west = Climate::at(place(latitude, before, 10.0)).unwrap();
        let east = Climate::at(place(latitude, after, 10.0)).unwrap();
        assert!((west.temperature[0] - east.temperature[0]).get().abs() < 1e-6);
    }
}
