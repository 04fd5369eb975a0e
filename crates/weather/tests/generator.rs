//! What the generator promises: the climate's means, the parameters' spread, the cold of real stations, one seed one
//! weather.
#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use jiff::civil::date;
use jiff::tz::TimeZone;
use snowhum_units::{Degree, Fraction, Kelvin, Metre, WattPerSquareMetre};
use snowhum_weather::{AirPaths, Climate, Ensemble, Hourly, Place, generate, generate_air, season, statistics};

fn place(latitude: f64, longitude: f64, elevation_m: f64) -> Place {
    Place { latitude: Degree::new(latitude), longitude: Degree::new(longitude), elevation: Metre::new(elevation_m) }
}

fn rowan_bank() -> Place {
    place(61.7, 27.3, 105.0)
}

/// Winters from 1 November on standard time.
fn winters(place: Place, hours: usize, paths: usize) -> (Climate, Ensemble) {
    let climate = Climate::at(place).unwrap();
    let made = generate(place, &climate, &TimeZone::UTC, date(2025, 11, 1), hours, paths, 11).unwrap();
    (climate, made)
}

fn daily(path: &Hourly) -> Vec<f64> {
    path.temperature.chunks(24).map(|day| day.iter().map(|t| t.celsius()).sum::<f64>() / day.len() as f64).collect()
}

fn mean_sd(values: &[f64]) -> (f64, f64) {
    let n = values.len() as f64;
    let mean = values.iter().sum::<f64>() / n;
    (mean, (values.iter().map(|v| (v - mean).powi(2)).sum::<f64>() / (n - 1.0)).sqrt())
}

/// Two hundred winters: each month within four standard errors of the climate's mean.
#[test]
fn monthly_means_are_those_of_the_climate() {
    let (climate, made) = winters(rowan_bank(), 151 * 24, 200);
    let days: Vec<Vec<f64>> = made.paths.iter().map(daily).collect();
    for (month, from, to) in [(10, 0, 30), (11, 30, 61), (0, 61, 92), (1, 92, 120), (2, 120, 151)] {
        let of_winters: Vec<f64> = days.iter().map(|path| mean_sd(&path[from..to]).0).collect();
        let (mean, sd) = mean_sd(&of_winters);
        let error = sd / 200f64.sqrt();
        let off = (mean - climate.temperature[month].celsius()).abs();
        assert!(off < 4.0 * error && error < 0.3, "month {month}: {off} {error}");
    }
}

/// Day by day over two hundred winters: spread and lag of the daily mean from slow term and residual. The sd and lag
/// of the parameters are worked out here from their file values for the coldest month.
#[test]
fn spread_and_lag_of_the_daily_mean_are_those_of_the_parameters() {
    let (climate, made) = winters(rowan_bank(), 120 * 24, 200);
    let days: Vec<Vec<f64>> = made.paths.iter().map(daily).collect();
    let residual = 1.2 + 0.185 * climate.annual_range().get();
    let expected = (residual * residual + 1.75 * 1.75).sqrt();
    let shared = 1.75 * 1.75 / (expected * expected);
    let (mut variance, mut lagged) = (0.0, 0.0);
    // Middle of January to middle of February: within a few per cent of the coldest.
    let from = 75..105;
    for day in from.clone() {
        let today: Vec<f64> = days.iter().map(|path| path[day]).collect();
        let tomorrow: Vec<f64> = days.iter().map(|path| path[day + 1]).collect();
        let ((a, sa), (b, sb)) = (mean_sd(&today), mean_sd(&tomorrow));
        variance += sa * sa;
        lagged += today.iter().zip(&tomorrow).map(|(x, y)| (x - a) * (y - b)).sum::<f64>() / 199.0 / (sa * sb);
    }
    let n = from.len() as f64;
    let (sd, lag) = ((variance / n).sqrt(), lagged / n);
    assert!((sd / expected - 1.0).abs() < 0.06, "{sd} {expected}");
    // The slow term hardly changes in a day.
    let expected_lag = 0.697 * (1.0 - shared) + shared;
    assert!((lag - expected_lag).abs() < 0.03, "{lag} {expected_lag}");
}

/// At 4 583 stations the 99 % heating temperature lies 12.2 K (sd 4.0 K) below the coldest month.
#[test]
fn one_hour_in_a_hundred_is_about_twelve_kelvins_below_the_coldest_month() {
    let mut below = Vec::new();
    for at in [
        (60.17, 24.94, 20.0),
        (61.7, 27.3, 105.0),
        (49.9, -97.1, 235.0),
        (41.98, -87.92, 201.0),
        (52.2, 21.0, 100.0),
        (44.05, -103.05, 1_030.0),
    ] {
        let at = place(at.0, at.1, at.2);
        let climate = Climate::at(at).unwrap();
        let made = generate(at, &climate, &TimeZone::UTC, date(2025, 7, 1), 8_760, 12, 5).unwrap();
        let hours: Vec<Kelvin> = made.paths.iter().flat_map(|path| path.temperature.clone()).collect();
        let cold = statistics::quantile(&hours, 0.01).unwrap();
        let depth = (climate.coldest_month() - cold).get();
        assert!((8.0..=16.0).contains(&depth), "{at:?}: {depth}");
        below.push(depth);
    }
    let mean = mean_sd(&below).0;
    assert!((mean - 12.2).abs() < 2.0, "{mean} {below:?}");
}

#[test]
fn a_known_design_cold_is_met() {
    let at = rowan_bank();
    let climate = Climate::at(at).unwrap().with_design_cold(Kelvin::from_celsius(-27.0));
    let made = generate(at, &climate, &TimeZone::UTC, date(2025, 7, 1), 8_760, 24, 5).unwrap();
    let hours: Vec<Kelvin> = made.paths.iter().flat_map(|path| path.temperature.clone()).collect();
    let cold = statistics::quantile(&hours, 0.01).unwrap().celsius();
    assert!((cold + 27.0).abs() < 2.5, "{cold}");
}

#[test]
fn the_cold_tail_is_longer_than_the_warm_one() {
    let (_, made) = winters(rowan_bank(), 120 * 24, 100);
    let winter: Vec<f64> = made.paths.iter().flat_map(|path| daily(path)[60..].to_vec()).collect();
    let (mean, sd) = mean_sd(&winter);
    let skewness = winter.iter().map(|t| ((t - mean) / sd).powi(3)).sum::<f64>() / winter.len() as f64;
    assert!((-0.8..-0.25).contains(&skewness), "{skewness}");
    assert!(winter.iter().any(|t| *t < mean - 4.0 * sd), "clipped?");
}

#[test]
fn winters_differ_by_the_slow_term() {
    let (_, made) = winters(rowan_bank(), 121 * 24, 200);
    let means: Vec<f64> = made.paths.iter().map(|path| mean_sd(&daily(path)[30..]).0).collect();
    let (_, sd) = mean_sd(&means);
    assert!((1.3..2.6).contains(&sd), "{sd}");
}

#[test]
fn the_same_seed_gives_the_same_weather_whatever_the_number_of_paths() {
    let at = rowan_bank();
    let climate = Climate::at(at).unwrap();
    let make = |paths: usize, seed: u64| {
        generate(at, &climate, &TimeZone::UTC, date(2025, 10, 5), 2_000, paths, seed).unwrap()
    };
    assert_eq!(make(8, 1), make(8, 1));
    assert_eq!(make(8, 1).paths[3], make(4, 1).paths[3]);
    assert_ne!(make(8, 1).paths[3], make(8, 2).paths[3]);
    assert_ne!(make(8, 1).paths[3].temperature, make(8, 1).paths[4].temperature);
}

#[test]
fn every_quantity_stays_within_what_weather_can_have() {
    for at in [
        rowan_bank(),
        place(70.0, 25.0, 50.0),
        place(-45.0, 170.0, 300.0),
        place(62.97, -141.93, 522.0),
        place(36.0, 140.0, 30.0),
    ] {
        let climate = Climate::at(at).unwrap();
        let made = generate(at, &climate, &TimeZone::UTC, date(2025, 10, 5), 6_000, 8, 1).unwrap();
        for path in &made.paths {
            let columns = [
                path.humidity.len(),
                path.wind.len(),
                path.cloud.len(),
                path.global.len(),
                path.direct.len(),
                path.diffuse.len(),
                path.precipitation.len(),
                path.snow_depth.len(),
                path.pressure.len(),
            ];
            assert_eq!(columns, [6_000; 9]);
            for hour in 0..6_000 {
                let t = path.temperature[hour].celsius();
                assert!((-75.0..50.0).contains(&t), "{t}");
                assert!((0.02..=1.0).contains(&path.humidity[hour].get()), "{}", path.humidity[hour]);
                assert!((0.0..45.0).contains(&path.wind[hour].get()), "{}", path.wind[hour]);
                assert!((Fraction::ZERO..=Fraction::new(1.0)).contains(&path.cloud[hour]));
                assert!(
                    (0.0..1_150.0).contains(&path.global[hour].get())
                        && (0.0..1_200.0).contains(&path.direct[hour].get())
                );
                assert!(path.diffuse[hour] <= path.global[hour] && path.diffuse[hour] >= WattPerSquareMetre::ZERO);
                assert!((0.0..0.1).contains(&path.precipitation[hour].get()));
                assert!((0.0..6.0).contains(&path.snow_depth[hour].get()), "{}", path.snow_depth[hour]);
            }
        }
    }
}

#[test]
fn snow_lies_at_the_start_of_a_winter_that_begins_in_january() {
    let at = rowan_bank();
    let climate = Climate::at(at).unwrap();
    let january = generate(at, &climate, &TimeZone::UTC, date(2026, 1, 15), 24, 100, 1).unwrap();
    let snowy = january.paths.iter().filter(|path| path.snow_depth[0].get() > 0.05).count();
    assert!(snowy > 80, "{snowy}");
    let october = generate(at, &climate, &TimeZone::UTC, date(2025, 10, 5), 24, 100, 1).unwrap();
    let bare = october.paths.iter().filter(|path| path.snow_depth[0].get() < 0.01).count();
    assert!(bare > 95, "{bare}");
}

#[test]
fn rain_of_a_winter_is_that_of_the_climate() {
    let (climate, made) = winters(rowan_bank(), 151 * 24, 200);
    let given: f64 = [10, 11, 0, 1, 2].map(|month| climate.precipitation[month].get() * 1000.0).iter().sum();
    let sums: Vec<f64> =
        made.paths.iter().map(|path| path.precipitation.iter().map(|p| p.get() * 1000.0).sum()).collect();
    let (mean, sd) = mean_sd(&sums);
    assert!((mean - given).abs() < 4.0 * sd / 200f64.sqrt(), "{mean} {given}");
}

#[test]
fn spring_of_an_ensemble_and_of_its_climate_agree() {
    let at = rowan_bank();
    let climate = Climate::at(at).unwrap();
    let zone = TimeZone::get("Europe/Helsinki").unwrap();
    let made = generate(at, &climate, &zone, date(2025, 10, 5), 6_500, 64, 1).unwrap();
    let by_paths = season::spring_of(&made, at.latitude, &zone).unwrap();
    let by_climate = season::spring_of_climate(at, &climate, 2026, 1).unwrap().unwrap();
    assert!((by_paths.p50 - by_climate.p50).get_days().abs() <= 4, "{by_paths:?} {by_climate:?}");
    assert!(by_climate.p10 < by_climate.p50 && by_climate.p50 < by_climate.p90);
    let south = place(-45.0, 170.0, 300.0);
    let spring = season::spring_of_climate(south, &Climate::at(south).unwrap(), 2026, 1).unwrap().unwrap();
    assert!((7..=10).contains(&spring.p50.month()), "{}", spring.p50);
}

#[test]
fn dates_and_lengths_out_of_range_are_faults() {
    let at = rowan_bank();
    let climate = Climate::at(at).unwrap();
    let make = |from, hours| generate(at, &climate, &TimeZone::UTC, from, hours, 1, 1);
    assert!(make(date(2025, 10, 5), 0).unwrap_err().to_string().contains("1 to 87840"));
    assert!(make(date(2025, 10, 5), usize::MAX).is_err());
    for year in [-9999, 1, 9999] {
        assert!(make(date(year, 12, 31), 100).unwrap_err().to_string().contains("1700 to 2900"), "{year}");
    }
    let nowhere = Climate { place: place(200.0, 0.0, 0.0), ..climate.clone() };
    assert!(generate(nowhere.place, &nowhere, &TimeZone::UTC, date(2025, 10, 5), 24, 1, 1).is_err());
}

#[test]
fn air_alone_is_that_of_the_whole_weather_to_the_last_bit() {
    let (climate, made) = winters(rowan_bank(), 24 * 60, 5);
    let alone = generate_air(rowan_bank(), &climate, &TimeZone::UTC, date(2025, 11, 1), 24 * 60, 5, 11).unwrap();
    assert_eq!(alone, AirPaths::from(&made));
}
