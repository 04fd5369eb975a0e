//! Weather made by formula: seasons, days, fronts, wet spells and sun, without a generator.

use jiff::Timestamp;
use snowhum_units::{Degree, Fraction, Kelvin, Metre, MetrePerSecond, Pascal, WattPerSquareMetre};
use snowhum_weather::{Ensemble, Hourly, Place, Provenance};

/// A point at 60 N 25 E.
#[must_use]
pub fn place() -> Place {
    Place { latitude: Degree::new(60.0), longitude: Degree::new(25.0), elevation: Metre::new(20.0) }
}

/// Paths of changeable weather about a yearly mean of `mean_c` °C from 1 October 2025, coldest in late January by 13 K;
/// path `n` is shifted in phase.
#[must_use]
pub fn changeable(mean_c: f64, hours: usize, paths: usize) -> Ensemble {
    let start = Timestamp::from_second(1_759_276_800).unwrap_or(Timestamp::UNIX_EPOCH);
    Ensemble {
        start,
        paths: (0..paths).map(|path| one_path(start, mean_c, hours, path as f64)).collect(),
        provenance: Provenance { source: "made by formula for tests".into(), ..Provenance::default() },
    }
}

fn one_path(start: Timestamp, mean_c: f64, hours: usize, phase: f64) -> Hourly {
    let wave = |hour: usize, period_h: f64, shift: f64| {
        (std::f64::consts::TAU * (hour as f64 / period_h + shift) + 0.7 * phase).sin()
    };
    let column = |value: &dyn Fn(usize) -> f64| (0..hours).map(value).collect::<Vec<f64>>();
    let season = |hour: usize| -13.0 * (std::f64::consts::TAU * (hour as f64 - 2_660.0) / 8_760.0).cos();
    let t = column(&|h| {
        mean_c + season(h) + 3.0 * wave(h, 24.0, -0.35) + 6.0 * wave(h, 131.0, 0.0) + 3.0 * wave(h, 57.0, 0.3)
    });
    let sun = column(&|h| (wave(h, 24.0, -0.25)).max(0.0) * 150.0 * (1.0 + wave(h, 210.0, 0.1)) / 2.0);
    let as_vec = |f: &dyn Fn(f64) -> f64, from: &[f64]| from.iter().map(|v| f(*v)).collect::<Vec<f64>>();
    Hourly {
        start,
        temperature: t.iter().map(|t| Kelvin::from_celsius(*t)).collect(),
        humidity: (0..hours).map(|h| Fraction::new(0.85 + 0.12 * wave(h, 77.0, 0.2))).collect(),
        wind: (0..hours).map(|h| MetrePerSecond::new(3.0 + 2.5 * wave(h, 43.0, 0.4))).collect(),
        cloud: vec![Fraction::new(0.5); hours],
        global: sun.iter().map(|s| WattPerSquareMetre::new(*s)).collect(),
        direct: as_vec(&|s| 1.5 * s, &sun).into_iter().map(WattPerSquareMetre::new).collect(),
        diffuse: as_vec(&|s| 0.4 * s, &sun).into_iter().map(WattPerSquareMetre::new).collect(),
        precipitation: vec![Metre::ZERO; hours],
        snow_depth: t.iter().map(|t| Metre::new((0.1 - 0.02 * t).clamp(0.0, 0.5))).collect(),
        pressure: vec![Pascal::new(101_000.0); hours],
    }
}
