//! Weather that is known in part: drawn paths are bent through temperatures that were read, or follow on from hours
//! that were measured.

use crate::complete::{snow_depths, usual_snow};
use crate::generator::day_of_common_year;
use crate::{Climate, Ensemble, Hourly, Place};
use jiff::Timestamp;
use jiff::civil::Date;
use rayon::prelude::*;
use snowhum_figures::weather_limits::THERMOMETER_NUGGET;
use snowhum_physics::dense::Factors;
use snowhum_say::weather as say;
use snowhum_units::Kelvin;
use snowhum_units::Same;

/// Hours in which a departure from the usual loses all but one in e: a daily lag-1 correlation of 0.75, the middle of
/// the generator's own.
const MEMORY_H: f64 = 83.0;
/// Most readings that bend paths; of more, evenly spread ones are taken.
const MOST_READINGS: usize = 400;

/// Bends every path of an ensemble so that it passes near the temperatures that were read, each path keeping its own
/// weather in between (simulation conditioned by simple kriging of the departures, exponential correlation).
///
/// Source of the method: J.-P. Chilès and P. Delfiner, "Geostatistics", conditional simulation (from memory).
pub fn bend_through(ensemble: &mut Ensemble, place: Place, first_day: Date, read: &[(Timestamp, Kelvin)]) {
    let hours = ensemble.hours();
    let step = read.len().div_ceil(MOST_READINGS).max(1);
    let at: Vec<(usize, f64)> = read
        .iter()
        .step_by(step)
        .filter_map(|(at, kelvin)| Some((hour_of(ensemble.start, *at, hours)?, kelvin.get())))
        .collect();
    let Some(factors) = correlations(&at) else { return };
    let snow = usual_snow(Climate::at(place).ok().as_ref(), day_of_common_year(first_day));
    let faded: Vec<f64> = (0..hours).map(|apart| correlation(0, apart)).collect();
    let bend = |path: &mut Hourly| {
        let departures: Vec<f64> = at.iter().map(|(hour, read)| read - path.temperature[*hour].get()).collect();
        let mut weights = vec![0.0; at.len()];
        factors.solve(&departures, &mut weights);
        for (hour, t) in path.temperature.iter_mut().enumerate() {
            let departure: f64 = at.iter().zip(&weights).map(|((read, _), w)| w * faded[read.abs_diff(hour)]).sum();
            *t = Kelvin::new(t.get() + departure);
        }
        path.snow_depth = snow_depths(snow, &path.temperature, &path.precipitation);
    };
    ensemble.paths.par_iter_mut().for_each(bend);
    if !at.is_empty() {
        ensemble.provenance.notes.push(say::bent(at.len()));
    }
}

/// Puts measured hours in front: every path is `past` as far as that reaches, and its own from there on, with what it is
/// off at the seam fading away. The past must begin with the ensemble. Returns the hours known.
pub fn follow(ensemble: &mut Ensemble, past: &Hourly) -> usize {
    if past.start != ensemble.start || past.is_empty() {
        return 0;
    }
    let known = past.len().min(ensemble.hours());
    for path in &mut ensemble.paths {
        let last = known - 1;
        let off = past.temperature[last].get() - path.temperature[last].get();
        for (hour, t) in path.temperature.iter_mut().enumerate().skip(known) {
            *t = Kelvin::new(t.get() + off * correlation(last, hour));
        }
        let snow_off = past.snow_depth[last] - path.snow_depth[last];
        for depth in path.snow_depth.iter_mut().skip(known) {
            // Snow that lies more or less than drawn is still there, or not yet, until it would have gone.
            *depth = if depth.get() > 0.0 { (*depth + snow_off).max(snowhum_units::Metre::ZERO) } else { *depth };
        }
        put(path, past, known);
    }
    known
}

/// Lays hours that are foretold over every path where they reach, and lets what a path is off at their end fade away.
/// Snow on the ground stays each path's own. Returns how many hours were laid.
pub fn lay_over(ensemble: &mut Ensemble, foretold: &Hourly) -> usize {
    let shift = (foretold.start.as_second() - ensemble.start.as_second()).div_euclid(3_600);
    let hours = ensemble.hours() as i64;
    let first = shift.clamp(0, hours);
    let last = (shift + foretold.len() as i64).clamp(0, hours);
    if first >= last {
        return 0;
    }
    let (first, last) = (first as usize, last as usize);
    let from = (first as i64 - shift) as usize;
    for path in &mut ensemble.paths {
        let off = foretold.temperature[from + last - first - 1].get() - path.temperature[last - 1].get();
        for (hour, t) in path.temperature.iter_mut().enumerate().skip(last) {
            *t = Kelvin::new(t.get() + off * correlation(last - 1, hour));
        }
        let (to, of) = (first..last, from..from + last - first);
        path.temperature[to.clone()].copy_from_slice(&foretold.temperature[of.clone()]);
        path.humidity[to.clone()].copy_from_slice(&foretold.humidity[of.clone()]);
        path.wind[to.clone()].copy_from_slice(&foretold.wind[of.clone()]);
        path.cloud[to.clone()].copy_from_slice(&foretold.cloud[of.clone()]);
        path.global[to.clone()].copy_from_slice(&foretold.global[of.clone()]);
        path.direct[to.clone()].copy_from_slice(&foretold.direct[of.clone()]);
        path.diffuse[to.clone()].copy_from_slice(&foretold.diffuse[of.clone()]);
        path.precipitation[to].copy_from_slice(&foretold.precipitation[of]);
    }
    last - first
}

fn put(path: &mut Hourly, past: &Hourly, known: usize) {
    path.temperature[..known].copy_from_slice(&past.temperature[..known]);
    path.humidity[..known].copy_from_slice(&past.humidity[..known]);
    path.wind[..known].copy_from_slice(&past.wind[..known]);
    path.cloud[..known].copy_from_slice(&past.cloud[..known]);
    path.global[..known].copy_from_slice(&past.global[..known]);
    path.direct[..known].copy_from_slice(&past.direct[..known]);
    path.diffuse[..known].copy_from_slice(&past.diffuse[..known]);
    path.precipitation[..known].copy_from_slice(&past.precipitation[..known]);
    path.snow_depth[..known].copy_from_slice(&past.snow_depth[..known]);
    path.pressure[..known].copy_from_slice(&past.pressure[..known]);
}

fn hour_of(start: Timestamp, at: Timestamp, hours: usize) -> Option<usize> {
    let hour = (at.as_second() - start.as_second()).div_euclid(3_600);
    usize::try_from(hour).ok().filter(|hour| *hour < hours)
}

fn correlation(a: usize, b: usize) -> f64 {
    (-(a.abs_diff(b) as f64) / MEMORY_H).same_exp()
}

fn correlations(at: &[(usize, f64)]) -> Option<Factors> {
    let cells = at.iter().enumerate().flat_map(|(i, (a, _))| {
        at.iter()
            .enumerate()
            .map(move |(j, (b, _))| correlation(*a, *b) + if i == j { THERMOMETER_NUGGET } else { 0.0 })
    });
    Factors::new(at.len(), cells.collect()).ok()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::generate;
    use jiff::civil::date;
    use jiff::tz::TimeZone;
    use snowhum_units::{Degree, Metre};

    fn winter() -> (Place, Ensemble) {
        let place = Place { latitude: Degree::new(61.7), longitude: Degree::new(27.3), elevation: Metre::new(105.0) };
        let climate = Climate::at(place).unwrap();
        (place, generate(place, &climate, &TimeZone::UTC, date(2025, 10, 5), 24 * 120, 16, 3).unwrap())
    }

    #[test]
    fn paths_pass_near_what_was_read_and_keep_their_own_weather_far_from_it() {
        let (place, drawn) = winter();
        let at = drawn.start + jiff::SignedDuration::from_hours(24 * 60 + 10);
        let mut bent = drawn.clone();
        bend_through(&mut bent, place, date(2025, 10, 5), &[(at, Kelvin::from_celsius(-24.0))]);
        let hour = 24 * 60 + 10;
        for (path, before) in bent.paths.iter().zip(&drawn.paths) {
            assert!((path.temperature[hour].celsius() + 24.0).abs() < 1.2, "{}", path.temperature[hour].celsius());
            assert!((path.temperature[24].get() - before.temperature[24].get()).abs() < 1e-3);
        }
        let spread = |ensemble: &Ensemble, hour: usize| {
            let all: Vec<f64> = ensemble.paths.iter().map(|path| path.temperature[hour].get()).collect();
            all.iter().copied().fold(f64::MIN, f64::max) - all.iter().copied().fold(f64::MAX, f64::min)
        };
        assert!(spread(&bent, hour) < 0.1 * spread(&drawn, hour));
        assert!(spread(&bent, hour + 24 * 20) > 0.9 * spread(&drawn, hour + 24 * 20));
    }

    #[test]
    fn a_forecast_lies_over_every_path_and_fades_into_each() {
        let (_, drawn) = winter();
        let mut foretold = drawn.paths[5].clone();
        foretold.start = drawn.start + jiff::SignedDuration::from_hours(24 * 30);
        let truncate = |column: &mut Vec<Kelvin>| column.truncate(24 * 9);
        truncate(&mut foretold.temperature);
        let mut laid = drawn.clone();
        assert_eq!(lay_over(&mut laid, &foretold), 24 * 9);
        let (first, last) = (24 * 30, 24 * 39);
        for (path, own) in laid.paths.iter().zip(&drawn.paths) {
            assert_eq!(path.temperature[first..last], foretold.temperature[..]);
            assert_eq!(path.temperature[..first], own.temperature[..first]);
            assert!((path.temperature[last + 600].get() - own.temperature[last + 600].get()).abs() < 0.05);
            assert_eq!(path.snow_depth, own.snow_depth);
        }
        foretold.start = drawn.start - jiff::SignedDuration::from_hours(24 * 400);
        assert_eq!(lay_over(&mut laid, &foretold), 0, "long past");
    }

    #[test]
    fn a_known_past_is_kept_to_the_bit_and_its_end_is_no_jump() {
        let (_, drawn) = winter();
        let mut past = drawn.paths[3].clone();
        past.temperature.truncate(24 * 50);
        let mut joined = drawn.clone();
        let known = follow(&mut joined, &past);
        assert_eq!(known, 24 * 50);
        for (path, own) in joined.paths.iter().zip(&drawn.paths) {
            assert_eq!(path.temperature[..known], drawn.paths[3].temperature[..known]);
            let jump = path.temperature[known].get() - path.temperature[known - 1].get();
            let usual = own.temperature[known].get() - own.temperature[known - 1].get();
            assert!((jump - usual).abs() < 0.5, "{jump} {usual}");
            assert!((path.temperature[known + 600].get() - own.temperature[known + 600].get()).abs() < 0.05);
        }
    }
}
