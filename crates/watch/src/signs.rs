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

pub use hour::{Hour, Hours, KINDS};
pub use look::Today;
pub use written::{answer, answers_like, seen};

use crate::{Conditions, Law, Parameters, View};
use look::Look;
use snowhum_apiary::Sign;
use snowhum_units::Same;
use written::Shown;

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
    law_of(sign, &Look::new(view, day, today, p), hour)
}

/// The law of a sign on a quiet day, then on a lively one: in each kind of hour where it hangs on that.
pub(crate) fn laws(sign: &Sign, view: &View, day: &Conditions, p: &Parameters) -> Vec<Option<Law>> {
    let plain = Look::new(view, day, Today::Lively, p);
    let hours: Vec<Hour> = if hangs_on_the_hour(sign) { Hour::all().collect() } else { vec![Hour::PLAIN] };
    let on = |today: Today| hours.iter().map(move |hour| law_of(sign, &Look { today, ..plain }, *hour));
    [Today::Quiet, Today::Lively].into_iter().flat_map(on).collect()
}

/// Whether two signs are answers to one question, so that one law gives the chances of both.
pub(crate) fn answer_alike(one: &Sign, other: &Sign) -> bool {
    answer(other).and_then(|answer| seen(one, &answer)).as_ref() == Some(other)
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
    let plain = Look::new(view, day, Today::Lively, p);
    let sum = |hanging: bool, look: &Look<'_>, hour: Hour| -> f64 {
        let logs = signs.iter().filter(|sign| hangs_on_the_hour(sign) == hanging).filter_map(|sign| {
            let (law, answer) = law_of(sign, look, hour).zip(answer(sign))?;
            Some(law.log_probability(&answer))
        });
        logs.sum()
    };
    let under = |today: Today, chance: f64| {
        let look = Look { today, ..plain };
        (look, chance.same_ln() + sum(false, &look, Hour::PLAIN))
    };
    let (tight, lively) = (under(Today::Quiet, quiet), under(Today::Lively, 1.0 - quiet));
    let hangs = signs.iter().any(hangs_on_the_hour);
    let either = |hour: Hour| {
        let of = |(look, log): &(Look<'_>, f64)| if hangs { log + sum(true, look, hour) } else { *log };
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
    let look = Look::new(view, day, today, p);
    let places = (1..).zip(templates);
    let written =
        places.filter_map(|(place, template)| seen(template, &law_of(template, &look, hour)?.sample(draw(place))));
    written.collect()
}

/// What a law is asked with.
enum AskedWith<'l> {
    Look(&'l dyn Fn(&Look<'_>) -> Law),
    /// It hangs on the hour of the look as well.
    Hour(&'l dyn Fn(&Look<'_>, Hour) -> Law),
}

/// Each sign with the part of it that its law speaks of, and the law; `None` for one that says nothing of the colony.
fn judged<T>(sign: &mut Sign, of: impl FnOnce(Shown<'_>, AskedWith<'_>) -> T) -> Option<T> {
    use AskedWith::{Hour, Look};
    use Shown::{Count, Droppings, Flight, Hole, Poked, Probe, Seams, Seen, Share, WhenThere};
    Some(match sign {
        Sign::Entrance(_) | Sign::UpperEntrance(_) | Sign::SnowAtBox { .. } => return None,
        Sign::DeadBees { count, place } => of(Count(count), Look(&|look| dead_bees::law(*place, look))),
        Sign::UpperHole(state) => of(Hole(state), Look(&upper_hole::law)),
        Sign::Hum { heard, how } => of(Seen(heard), Look(&|look| hum::law(*how, look))),
        Sign::Poke(snowhum_apiary::Poked::NotTried) => return None,
        Sign::Poke(poked) => of(Poked(poked), Look(&poke::law)),
        Sign::Flight(flight) => of(Flight(flight), Hour(&flight::law)),
        Sign::Pollen(found) => of(Seen(found), Hour(&pollen::law)),
        Sign::Droppings(found) => of(Droppings(found), Look(&droppings::law)),
        Sign::MeltedSnow(found) => of(Seen(found), Look(&warmth::melted_snow)),
        Sign::ThermalSpot(found) => of(Seen(found), Look(&warmth::thermal_spot)),
        Sign::WarmUnderLid(felt) => of(Seen(felt), Look(&warmth::under_lid)),
        Sign::Stripes { seams } => of(Seams(seams), Look(&seams::stripes)),
        Sign::ClusterSeen { seams: Some(seams) } => of(Seams(seams), Look(&seams::counted)),
        Sign::ClusterSeen { seams: None } => of(WhenThere, Look(&seams::cluster_seen)),
        Sign::Weight(weighing) => {
            let how = *weighing;
            of(Shown::of_weighing(weighing), Look(&|look| weight::law(&how, look)))
        }
        Sign::InsideTemperature { read_k, place } => of(Probe(read_k), Look(&|look| inside::temperature(*place, look))),
        Sign::InsideHumidity { read } => of(Share(read), Look(&inside::humidity)),
        Sign::Drones(found) => of(Seen(found), Look(&queen::drones)),
        Sign::DeadQueen => of(WhenThere, Look(&queen::dead_queen)),
        Sign::LarvaeThrownOut(found) => of(Seen(found), Look(&queen::larvae)),
        Sign::CrumpledWings(found) => of(Seen(found), Look(&trouble::crumpled_wings)),
        Sign::Robbers(found) => of(Seen(found), Hour(&trouble::robbers)),
        Sign::Wasps(found) => of(Seen(found), Look(&trouble::wasps)),
        Sign::Bird(found) => of(Seen(found), Look(&|look| look.told(|p| [&p.bird_at_living, &p.bird_at_dead]))),
        Sign::Mouse(found) => of(Seen(found), Look(&|look| look.told(|p| [&p.mouse_at_living, &p.mouse_at_dead]))),
        Sign::Damage(found) => of(Seen(found), Look(&|look| look.told(|p| [&p.damage_at_living, &p.damage_at_dead]))),
        Sign::Smell(found) => of(Seen(found), Look(&trouble::smell)),
        Sign::SeenDead => of(WhenThere, Look(&|look| look.told(|p| [&p.seen_dead_wrongly, &p.seen_dead]))),
    })
}

fn law_of(sign: &Sign, look: &Look<'_>, hour: Hour) -> Option<Law> {
    judged(&mut sign.clone(), |_, law| match law {
        AskedWith::Look(law) => law(look),
        AskedWith::Hour(law) => law(look, hour),
    })
}

/// Whether what a sign says of a colony hangs on the hour it was looked for in.
#[must_use]
pub fn hangs_on_the_hour(sign: &Sign) -> bool {
    judged(&mut sign.clone(), |_, law| matches!(law, AskedWith::Hour(_))).unwrap_or(false)
}
