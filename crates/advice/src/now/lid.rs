//! May I lift the lid?

use snowhum_say::{Message, now as say};
use snowhum_units::{Kelvin, MetrePerSecond};
use snowhum_winter::{Environment, Housed, Parameter};

use super::answer::LidVerdict;
use super::thresholds::Thresholds;

/// A rung of the ladder: from this air and up to this wind, so long, for that.
struct Rung {
    air_c: f64,
    wind_m_per_s: f64,
    seconds: f64,
    may: &'static str,
}

/// The rungs from the mildest down.
fn rungs(t: &Thresholds) -> [Rung; 4] {
    let rung = |air: &Parameter, wind: &Parameter, time: &Parameter, may| Rung {
        air_c: air.value,
        wind_m_per_s: wind.value,
        seconds: time.value,
        may,
    };
    [
        rung(&t.lid_look_air, &t.lid_look_wind, &t.lid_look_time, "look"),
        rung(&t.lid_minutes_air, &t.lid_minutes_wind, &t.lid_minutes_time, "minutes"),
        rung(&t.lid_minute_air, &t.lid_minute_wind, &t.lid_minute_time, "minute"),
        rung(&t.lid_seconds_air, &t.lid_seconds_wind, &t.lid_seconds_time, "seconds"),
    ]
}

/// The verdict for an hour of this air and wind.
///
/// ```
/// use snowhum_advice::now::{Thresholds, may_lift};
/// use snowhum_units::{Kelvin, MetrePerSecond};
/// let t = Thresholds::shipped().unwrap();
/// let seconds = |air, wind| may_lift(Kelvin::from_celsius(air), MetrePerSecond::new(wind), &t).seconds;
/// assert_eq!(seconds(1.0, 0.5), 60);
/// assert_eq!(seconds(1.0, 8.0), 0);
/// assert_eq!(seconds(-20.0, 0.0), 0);
/// ```
#[must_use]
pub fn may_lift(air: Kelvin, wind: MetrePerSecond, thresholds: &Thresholds) -> LidVerdict {
    let rungs = rungs(thresholds);
    let rung = rungs.iter().find(|rung| air.celsius() >= rung.air_c && wind.get() <= rung.wind_m_per_s);
    let (seconds, may) = rung.map_or((0.0, "shut"), |rung| (rung.seconds, rung.may));
    // Where combs may be lifted the schools are of one mind.
    let is_mild = rung.is_some_and(|rung| rung.air_c >= thresholds.lid_look_air.value);
    let other_school = if is_mild { Message::NONE } else { other_school() };
    LidVerdict { seconds: seconds as u32, says: say::lid(air, may, wind), other_school }
}

/// Where schools differ: keepers of the prairie and of Minnesota (common practice).
fn other_school() -> Message {
    let [zero, mild, frost] = [0.0, 15.0, -7.0].map(Kelvin::from_celsius);
    say::lid_other_school(frost, mild, zero)
}

/// The verdict for tomorrow at one o'clock, by the middle of the weather paths.
pub(super) fn tomorrow(
    environment: &Environment,
    housed: &[Housed],
    (hours_behind, thresholds): (usize, &Thresholds),
) -> LidVerdict {
    let hour = hours_behind + 13;
    // Where all hives stand indoors it is the first one's room that counts.
    let outdoors = housed.iter().any(|hive| !hive.is_indoors(environment, hour));
    let of_room = housed.first().filter(|_| !outdoors);
    let at = |path: usize| {
        of_room.map_or_else(|| environment.outside(hour, path), |hive| hive.outside(environment, hour, path))
    };
    let outside: Vec<_> = (0..environment.paths()).filter_map(at).collect();
    let middle = |mut values: Vec<f64>| {
        values.sort_by(f64::total_cmp);
        values.get(values.len() / 2).copied().unwrap_or(f64::NAN)
    };
    let air = middle(outside.iter().map(|outside| outside.air.celsius()).collect());
    let wind = middle(outside.iter().map(|outside| outside.wind.get()).collect());
    may_lift(Kelvin::from_celsius(air), MetrePerSecond::new(wind), thresholds)
}
