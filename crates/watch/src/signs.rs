//! The law of every sign: its chance for a living or a dead hive, on the day it was looked for.
//!
//! One rule holds throughout: what also a dead hive would show (a neighbour's bee, a gust of wind, old rime), a living
//! one shows as well, and its own doing comes on top. Signs of one visit share one latent [`Today`], since a colony
//! that sits quiet is quiet to ear and eye alike, and all hives of one hour share what kind of [`Hour`] it was; both are
//! summed out over a visit and drawn once for a made-up one.

mod dead_bees;
mod droppings;
mod flight;
mod hour;
mod hum;
mod inside;
mod look;
mod poke;
mod pollen;
mod queen;
mod seams;
mod trouble;
mod upper_hole;
mod warmth;
mod weight;
mod written;

pub use hour::{Hour, Hours, KINDS, hangs_on_the_hour};
pub use look::Today;
pub use written::{answer, seen};

use crate::{Conditions, Law, Parameters, View};
use look::Look;
use snowhum_apiary::{Poked, Sign};
use snowhum_units::Same;

/// The chance that a living colony is [`Today::Quiet`]: greater in cold and wind.
#[must_use]
pub fn quiet_chance(day: &Conditions, p: &Parameters) -> f64 {
    look::quiet_chance(&look::tamed_day(day), p)
}

/// The law of a sign; `None` for one that says nothing about the colony. Numbers that are none or beyond what can be are
/// held within what can be. Parameters and their sources: `data/watch_parameters.toml`, nearly all judgement.
///
/// ```
/// use snowhum_apiary::Sign;
/// use snowhum_watch::{Conditions, FreshSnow, Law, Life, Own, Parameters, View, signs};
/// let own = Own { tare_kg: 20.0, side_share: 0.5, seen: 0.6, ear: 0.0 };
/// let dead = View {
///     life: Life::Dead { days: 9.0 }, bees: 4e3, brood: 0.0, seams: 3.0, spoilt: 0.1, stores_kg: 9.0, other_kg: 1.0,
///     warm_c: -4.0, cold_c: -5.0, humidity: 0.9, rime_hours: 0.0, old_rime_hours: 80.0, damp: 0.0,
///     litter_outside: 0.0, litter_floor: 0.0, flight_hours: 0.0, confined_days: 30.0, lid_resistance: 1.5, own,
/// };
/// let day = Conditions {
///     air_c: -5.0, wind_m_per_s: 1.0, snow_m: 0.2, fresh_snow: FreshSnow::None, week_c: -6.0, season_day: 30.0,
/// };
/// let p = Parameters::shipped().unwrap();
/// let law = signs::law(&Sign::SeenDead, &dead, &day, signs::Today::Lively, signs::Hour::PLAIN, &p);
/// assert_eq!(law, Some(Law::There(0.9)));
/// ```
#[must_use]
pub fn law(sign: &Sign, view: &View, day: &Conditions, today: Today, hour: Hour, p: &Parameters) -> Option<Law> {
    law_of(sign, &Look::new(view, day, today, hour, p))
}

/// The law of a sign on a quiet day, then on a lively one: in each kind of hour where it hangs on that.
pub(crate) fn laws(sign: &Sign, view: &View, day: &Conditions, p: &Parameters) -> Vec<Option<Law>> {
    let plain = Look::new(view, day, Today::Lively, Hour::PLAIN, p);
    let hours: Vec<Hour> = if hangs_on_the_hour(sign) { Hour::all().collect() } else { vec![Hour::PLAIN] };
    let on = |today: Today| hours.iter().map(move |hour| law_of(sign, &Look { today, hour: *hour, ..plain }));
    [Today::Quiet, Today::Lively].into_iter().flat_map(on).collect()
}

/// Whether two signs are answers to one question, so that one law gives the chances of both.
pub(crate) fn answer_alike(one: &Sign, other: &Sign) -> bool {
    match (one, other) {
        (Sign::DeadBees { place: one, .. }, Sign::DeadBees { place: other, .. }) => one == other,
        (Sign::Hum { how: one, .. }, Sign::Hum { how: other, .. }) => one == other,
        (Sign::Flight(_), Sign::Flight(_))
        | (Sign::Poke(_), Sign::Poke(_))
        | (Sign::UpperHole(_), Sign::UpperHole(_)) => true,
        _ => false,
    }
}

/// Natural logarithm of the chance of all signs of one visit, whichever way the colony was that day and whatever kind of
/// hour it was: `ln Σ P(hour) Σ P(today) Π P(sign | today, hour)`. Signs without a law are left out.
#[must_use]
pub fn visit_log_probability(signs: &[Sign], view: &View, day: &Conditions, p: &Parameters) -> f64 {
    Hours::unknown(p).over(&visit_log_probabilities(signs, view, day, p))
}

/// The same in each kind of hour.
#[must_use]
pub fn visit_log_probabilities(signs: &[Sign], view: &View, day: &Conditions, p: &Parameters) -> [f64; KINDS] {
    let quiet = quiet_chance(day, p);
    let plain = Look::new(view, day, Today::Lively, Hour::PLAIN, p);
    let sum = |hanging: bool, look: &Look<'_>| -> f64 {
        let logs = signs.iter().filter(|sign| hangs_on_the_hour(sign) == hanging).filter_map(|sign| {
            let (law, answer) = law_of(sign, look).zip(answer(sign))?;
            Some(law.log_probability(&answer))
        });
        logs.sum()
    };
    let under = |today: Today, chance: f64| {
        let look = Look { today, ..plain };
        (look, chance.same_ln() + sum(false, &look))
    };
    let (tight, lively) = (under(Today::Quiet, quiet), under(Today::Lively, 1.0 - quiet));
    let hangs = signs.iter().any(hangs_on_the_hour);
    let either = |hour: Hour| {
        let of = |(look, log): &(Look<'_>, f64)| if hangs { log + sum(true, &Look { hour, ..*look }) } else { *log };
        let (quiet, lively) = (of(&tight), of(&lively));
        let greater = quiet.max(lively);
        greater + ((quiet - greater).same_exp() + (lively - greater).same_exp()).same_ln()
    };
    if !hangs {
        return [either(Hour::PLAIN); KINDS];
    }
    let mut chances = [0.0; KINDS];
    chances.iter_mut().zip(Hour::all()).for_each(|(chance, hour)| *chance = either(hour));
    chances
}

/// Chance that a sign as written has nothing to do with this hive.
#[must_use]
pub fn slip(sign: &Sign, view: &View, day: &Conditions, p: &Parameters) -> f64 {
    let law = law(sign, view, day, Today::Lively, Hour::PLAIN, p);
    law.zip(answer(sign)).map_or(0.0, |(law, answer)| law.slip(&answer))
}

/// What a keeper who looks for these signs writes down at one visit to this hive. `draw` gives independent uniforms for
/// each place: 0 for the colony's day and the hour, then one for each template in its order. What is written only when it
/// is seen (bees under the lid, a dead queen, a dead colony) is left out when it is not.
#[must_use]
pub fn sample_visit(
    templates: &[Sign],
    view: &View,
    day: &Conditions,
    p: &Parameters,
    mut draw: impl FnMut(u32) -> [f64; 4],
) -> Vec<Sign> {
    let hour = Hour::drawn(draw(0)[1], p);
    sample_visit_in(hour, templates, view, day, p, draw)
}

/// The same in an hour that other hives share.
#[must_use]
pub fn sample_visit_in(
    hour: Hour,
    templates: &[Sign],
    view: &View,
    day: &Conditions,
    p: &Parameters,
    mut draw: impl FnMut(u32) -> [f64; 4],
) -> Vec<Sign> {
    let today = if draw(0)[0] < quiet_chance(day, p) { Today::Quiet } else { Today::Lively };
    let look = Look::new(view, day, today, hour, p);
    let places = (1..).zip(templates);
    let written = places.filter_map(|(place, template)| seen(template, &law_of(template, &look)?.sample(draw(place))));
    written.collect()
}

fn law_of(sign: &Sign, look: &Look<'_>) -> Option<Law> {
    let law = match sign {
        Sign::Entrance(_) | Sign::UpperEntrance(_) | Sign::SnowAtBox { .. } | Sign::Poke(Poked::NotTried) => {
            return None;
        }
        Sign::DeadBees { place, .. } => dead_bees::law(*place, look),
        Sign::UpperHole(_) => upper_hole::law(look),
        Sign::Hum { how, .. } => hum::law(*how, look),
        Sign::Poke(Poked::Answered | Poked::Silent) => poke::law(look),
        Sign::Flight(_) => flight::law(look),
        Sign::Pollen(_) => pollen::law(look),
        Sign::Droppings(_) => droppings::law(look),
        Sign::MeltedSnow(_) => warmth::melted_snow(look),
        Sign::ThermalSpot(_) => warmth::thermal_spot(look),
        Sign::WarmUnderLid(_) => warmth::under_lid(look),
        Sign::Stripes { .. } => seams::stripes(look),
        Sign::ClusterSeen { seams: Some(_) } => seams::counted(look),
        Sign::ClusterSeen { seams: None } => seams::cluster_seen(look),
        Sign::Weight(weighing) => weight::law(weighing, look),
        Sign::InsideTemperature { place, .. } => inside::temperature(*place, look),
        Sign::InsideHumidity { .. } => inside::humidity(look),
        Sign::Drones(_) => queen::drones(look),
        Sign::DeadQueen => queen::dead_queen(look),
        Sign::LarvaeThrownOut(_) => queen::larvae(look),
        Sign::CrumpledWings(_) => trouble::crumpled_wings(look),
        Sign::Robbers(_) => trouble::robbers(look),
        Sign::Wasps(_) => trouble::wasps(look),
        Sign::Bird(_) => trouble::bird(look),
        Sign::Mouse(_) => trouble::mouse(look),
        Sign::Damage(_) => trouble::damage(look),
        Sign::Smell(_) => trouble::smell(look),
        Sign::SeenDead => trouble::seen_dead(look),
    };
    Some(law)
}
