//! May I lift the lid?

use snowhum_units::{Kelvin, MetrePerSecond, System};
use snowhum_winter::{Environment, Housed};

use super::answer::LidVerdict;
use super::thresholds::Thresholds;

/// Where schools differ: keepers of the prairie and of Minnesota (common practice).
fn other_school(system: System) -> String {
    let t = |celsius: f64| Kelvin::from_celsius(celsius).show(system, 0);
    let (zero, mild, frost) = (t(0.0), t(15.0), t(-7.0));
    format!("Some prairie keepers wait for {zero}, better {mild}; some give sugar at {frost} in a few seconds.")
}

/// A rung of the ladder: from this air and up to this wind, so long, for that.
struct Rung {
    air_c: f64,
    wind_m_per_s: f64,
    seconds: f64,
    says: &'static str,
}

/// The rungs from the mildest down.
fn rungs(t: &Thresholds) -> [Rung; 4] {
    let rung =
        |air: &snowhum_winter::Parameter,
         wind: &snowhum_winter::Parameter,
         time: &snowhum_winter::Parameter,
         says: &'static str| Rung { air_c: air.value, wind_m_per_s: wind.value, seconds: time.value, says };
    [
        rung(
            &t.lid_look_air,
            &t.lid_look_wind,
            &t.lid_look_time,
            "combs may be lifted for a short look, brood kept warm",
        ),
        rung(
            &t.lid_minutes_air,
            &t.lid_minutes_wind,
            &t.lid_minutes_time,
            "the lid may be off for some minutes; leave combs where they are",
        ),
        rung(
            &t.lid_minute_air,
            &t.lid_minute_wind,
            &t.lid_minute_time,
            "the lid may be off for a minute: food on, lid on",
        ),
        rung(
            &t.lid_seconds_air,
            &t.lid_seconds_wind,
            &t.lid_seconds_time,
            "only to save a hungry colony: seconds, with everything ready in your hands",
        ),
    ]
}

/// The verdict for an hour of this air and wind.
///
/// ```
/// use snowhum_advice::now::{Thresholds, may_lift};
/// use snowhum_units::{Kelvin, MetrePerSecond, System};
/// let t = Thresholds::shipped().unwrap();
/// let seconds = |air, wind| {
///     may_lift(Kelvin::from_celsius(air), MetrePerSecond::new(wind), &t, System::Metric).seconds
/// };
/// assert_eq!(seconds(1.0, 0.5), 60);
/// assert_eq!(seconds(1.0, 8.0), 0);
/// assert_eq!(seconds(-20.0, 0.0), 0);
/// ```
#[must_use]
pub fn may_lift(air: Kelvin, wind: MetrePerSecond, thresholds: &Thresholds, system: System) -> LidVerdict {
    let rungs = rungs(thresholds);
    let rung = rungs.iter().find(|rung| air.celsius() >= rung.air_c && wind.get() <= rung.wind_m_per_s);
    let (seconds, says) = rung.map_or((0.0, "leave it shut: too cold or too windy"), |rung| (rung.seconds, rung.says));
    let says = format!("At {} and a wind of {} at the hives {says}.", air.show(system, 0), wind.show(system, 0));
    // Where combs may be lifted the schools are of one mind.
    let is_mild = rung.is_some_and(|rung| rung.air_c >= thresholds.lid_look_air.value);
    let other_school = if is_mild { String::new() } else { other_school(system) };
    LidVerdict { seconds: seconds as u32, says, other_school }
}

/// The verdict for tomorrow at one o'clock, by the middle of the weather paths.
pub(super) fn tomorrow(
    environment: &Environment,
    housed: &[Housed],
    (hours_behind, thresholds): (usize, &Thresholds),
    system: System,
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
    may_lift(Kelvin::from_celsius(air), MetrePerSecond::new(wind), thresholds, system)
}
