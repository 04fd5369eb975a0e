//! When winter bees emerge at a site: measured in two places, elsewhere as autumn cools.
//!
//! The bulk emerges about 20 September at Winnipeg, and 10 to 14 days later in southern Ontario, where autumn cools about as
//! much later (Mattila, Harris and Otis 2001, as summarised). That the day moves with the cooling elsewhere too is judgement.

use jiff::ToSpan;
use jiff::civil::Date;
use snowhum_units::Kelvin;
use snowhum_weather::{Climate, Place, season};
use snowhum_winter::{EMERGENCE_SPREAD, FREE_AFTER};

/// The climate's mean at which little brood is begun any more: that of the jobs' `brood_ends_air`.
const COOL: Kelvin = Kelvin::from_celsius(10.0);
/// Days from the emergence to that day at Winnipeg, by the built-in climate.
const BEFORE_COOL: f64 = 11.0;
/// The emergence at Winnipeg, and the most that another site is taken to be earlier or later, days. Later than in Ontario
/// nothing was measured, and a day named too late reassures falsely; earlier than Winnipeg is judgement.
const AT_WINNIPEG: f64 = 263.0;
const EARLIEST: f64 = 30.0;
const LATEST: f64 = 14.0;
/// Half a year, from the one hemisphere's autumn to the other's.
const HALF_A_YEAR: f64 = 182.0;

/// A day of the year as a date.
#[must_use]
pub fn date(day_of_year: f64, year: i16) -> Date {
    let january = Date::new(year, 1, 1).unwrap_or(Date::ZERO);
    january.saturating_add((((day_of_year - 1.0).rem_euclid(365.0)) as i64).days())
}

/// Before the first day a treatment still spares all winter bees that emerge about a day of the year, after the second none.
#[must_use]
pub fn spared(emergence: f64, year: i16) -> [Date; 2] {
    [-EMERGENCE_SPREAD, EMERGENCE_SPREAD].map(|spread| date(emergence + spread - FREE_AFTER, year))
}

/// Day of the year about which winter bees emerge at a site; none where its climate is not known or it never cools.
#[must_use]
pub fn emergence(place: Place) -> Option<f64> {
    let cools = season::cools_below(&Climate::at(place).ok()?, COOL)?;
    let usual = if place.latitude.get() < 0.0 { AT_WINNIPEG - HALF_A_YEAR } else { AT_WINNIPEG };
    Some((cools - BEFORE_COOL).clamp(usual - EARLIEST, usual + LATEST))
}

#[cfg(test)]
mod tests {
    use super::{COOL, emergence};
    use snowhum_units::{Degree, Metre};
    use snowhum_weather::Place;

    fn at(latitude: f64, longitude: f64, elevation: f64) -> f64 {
        let place = Place {
            latitude: Degree::new(latitude),
            longitude: Degree::new(longitude),
            elevation: Metre::new(elevation),
        };
        emergence(place).unwrap()
    }

    #[test]
    fn it_cools_at_the_jobs_own_figure() {
        let triggers = crate::jobs::Triggers::shipped().unwrap();
        assert!((COOL.celsius() - triggers.brood_ends_air.value).abs() < 1e-9);
    }

    #[test]
    fn the_two_places_that_were_measured_come_out_as_measured() {
        let (winnipeg, guelph) = (at(49.9, -97.1, 235.0), at(43.5, -80.2, 334.0));
        assert!((winnipeg - 263.0).abs() < 1.0, "Winnipeg: day {winnipeg}");
        let later = guelph - winnipeg;
        assert!((10.0..=14.0).contains(&later), "Ontario 10 to 14 days later: {later}");
    }

    #[test]
    fn a_northern_lake_is_earlier_and_a_plain_of_the_south_later() {
        let (lake, plain, alpine) = (at(61.7, 25.0, 80.0), at(46.0, 20.0, 90.0), at(46.6, 8.0, 1_400.0));
        assert!(lake < 263.0 && alpine < plain && plain > 270.0, "{lake} {plain} {alpine}");
    }

    #[test]
    fn in_the_south_it_is_half_a_year_away() {
        let dunedin = at(-45.9, 170.3, 50.0);
        assert!((51.0..=95.0).contains(&dunedin), "{dunedin}");
    }
}
