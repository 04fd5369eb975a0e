//! May I lift the lid?

use snowhum_winter::Environment;

use super::LidVerdict;

/// Air, °C, and wind, m/s, at and above which a lid may be lifted, for how many seconds. Rungs from the mildest down.
///
/// Sources: food given in seconds at -7 °C by some keepers, above 1-3 °C and calm by most (common practice, several
/// countries); combs lifted out from 10-12 °C (common practice); the seconds are judgement.
const RUNGS: [(f64, f64, u32, &str); 4] = [
    (12.0, 5.0, 600, "combs may be lifted for a short look, brood kept warm"),
    (8.0, 4.0, 180, "the lid may be off for some minutes; leave combs where they are"),
    (0.0, 3.0, 60, "the lid may be off for a minute: food on, lid on"),
    (-7.0, 1.5, 20, "only to save a hungry colony: seconds, with everything ready in your hands"),
];

const OTHER_SCHOOL: &str =
    "Some prairie keepers wait for 0 °C, better 15 °C; some give sugar at -7 °C in a few seconds.";

/// The verdict for an hour of this air and wind.
///
/// ```
/// use snowhum_advice::now::may_lift;
/// assert_eq!(may_lift(1.0, 0.5).seconds, 60);
/// assert_eq!(may_lift(1.0, 8.0).seconds, 0);
/// assert_eq!(may_lift(-20.0, 0.0).seconds, 0);
/// ```
#[must_use]
pub fn may_lift(air_c: f64, wind_m_per_s: f64) -> LidVerdict {
    let rung = RUNGS.iter().find(|(air, wind, ..)| air_c >= *air && wind_m_per_s <= *wind);
    let (seconds, says) =
        rung.map_or((0, "leave it shut: too cold or too windy"), |(.., seconds, says)| (*seconds, says));
    let says = format!("At {air_c:.0} °C and wind {wind_m_per_s:.0} m/s {says}.");
    LidVerdict { seconds, says, other_school: OTHER_SCHOOL.to_owned() }
}

/// The verdict for tomorrow at one o'clock, by the middle of the weather paths.
pub(super) fn tomorrow(environment: &Environment, hours_behind: usize) -> LidVerdict {
    let hour = hours_behind + 13;
    let outside: Vec<_> = (0..environment.paths()).filter_map(|path| environment.outside(hour, path)).collect();
    let middle = |mut values: Vec<f64>| {
        values.sort_by(f64::total_cmp);
        values.get(values.len() / 2).copied().unwrap_or(f64::NAN)
    };
    let air = middle(outside.iter().map(|outside| outside.air.celsius()).collect());
    let wind = middle(outside.iter().map(|outside| outside.wind.get()).collect());
    may_lift(air, wind)
}
