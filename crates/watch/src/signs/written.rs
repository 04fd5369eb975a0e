//! Between what is written down and what a law speaks of.

use crate::Answer;
use snowhum_apiary::{DeadCount, DroppingsPlace, Flight, Heft, Poked, Seen, Sign, UpperHoleSign, Weighing};
use snowhum_units::{Fraction, Kelvin, Kilogram};

/// Places of a choice, in the order of the laws' weights.
const HOLES: [UpperHoleSign; 4] =
    [UpperHoleSign::NewRime, UpperHoleSign::Rime, UpperHoleSign::Damp, UpperHoleSign::Dry];
const FLIGHTS: [Flight; 4] = [Flight::Well, Flight::Thin, Flight::Traffic, Flight::None];
const DROPPINGS: [DroppingsPlace; 3] = [DroppingsPlace::Snow, DroppingsPlace::Hive, DroppingsPlace::None];
const HEFTS: [Heft; 3] = [Heft::Light, Heft::Fair, Heft::Heavy];

/// A sign as its law speaks of it; `None` for one without a law. A temperature is answered in °C, a humidity as a
/// share, a weighing in kg of what the law is about (for a lift of both sides, the whole hive).
///
/// ```
/// use snowhum_apiary::{DeadCount, DeadPlace, OpeningState, Sign};
/// use snowhum_watch::{Answer, signs};
/// let dead = Sign::DeadBees { count: DeadCount::Band(6, Some(20)), place: DeadPlace::Snow };
/// assert_eq!(signs::answer(&dead), Some(Answer::Count(6, Some(20))));
/// assert_eq!(signs::answer(&Sign::Entrance(OpeningState::Clear)), None);
/// ```
#[must_use]
pub fn answer(sign: &Sign) -> Option<Answer> {
    let answer = match sign {
        Sign::Entrance(_) | Sign::UpperEntrance(_) | Sign::SnowAtBox { .. } | Sign::Poke(Poked::NotTried) => {
            return None;
        }
        Sign::DeadBees { count, .. } => {
            let (least, most) = count.bounds();
            Answer::Count(least, most)
        }
        Sign::UpperHole(state) => place(*state, &HOLES),
        Sign::Flight(flight) => place(*flight, &FLIGHTS),
        Sign::Droppings(where_found) => place(*where_found, &DROPPINGS),
        Sign::Hum { heard, .. } => Answer::There(*heard == Seen::Yes),
        Sign::Poke(poked) => Answer::There(*poked == Poked::Answered),
        Sign::Pollen(found)
        | Sign::MeltedSnow(found)
        | Sign::ThermalSpot(found)
        | Sign::WarmUnderLid(found)
        | Sign::Drones(found)
        | Sign::LarvaeThrownOut(found)
        | Sign::CrumpledWings(found)
        | Sign::Robbers(found)
        | Sign::Wasps(found)
        | Sign::Bird(found)
        | Sign::Mouse(found)
        | Sign::Damage(found)
        | Sign::Smell(found) => Answer::There(*found == Seen::Yes),
        Sign::ClusterSeen { seams: None } | Sign::DeadQueen | Sign::SeenDead => Answer::There(true),
        Sign::Stripes { seams } | Sign::ClusterSeen { seams: Some(seams) } => Answer::Reading(*seams),
        Sign::InsideTemperature { read_k, .. } => Answer::Reading(read_k.celsius()),
        Sign::InsideHumidity { read } => Answer::Reading(read.get()),
        Sign::Weight(weighing) => weighed(weighing),
    };
    Some(answer)
}

/// The sign that a keeper writes for this answer, in the form of the template: a count as a band if the template is
/// one. `None` when nothing would be written: a thing noted only when seen was not seen, or the answer is of another
/// kind than the template.
#[must_use]
pub fn seen(template: &Sign, answer: &Answer) -> Option<Sign> {
    match answer {
        Answer::There(true) => there(template, Seen::Yes),
        Answer::There(false) => there(template, Seen::No),
        Answer::Choice(which) => chosen(template, *which),
        Answer::Count(n, _) => counted(template, *n),
        Answer::Reading(read) => read_off(template, *read),
    }
}

/// Whole weight over the sum of both readings, for supports set in from the lifted edges by `inset` of the width.
///
/// Lifting one edge, the hive turns about the far support, `1 − s` widths away; with the centre of gravity at `x` the
/// hand carries `W (1 − s − x)/(1 − s)`, from the other side `W (x − s)/(1 − s)`: together `W (1 − 2s)/(1 − s)`,
/// wherever the centre of gravity is. Source: statics.
pub(super) fn whole_over_sum(inset: f64) -> f64 {
    const DEEPEST: f64 = 0.4;
    let inset = if inset.is_finite() { inset.clamp(0.0, DEEPEST) } else { 0.0 };
    (1.0 - inset) / (1.0 - 2.0 * inset)
}

fn place<T: PartialEq>(value: T, choices: &[T]) -> Answer {
    Answer::Choice(choices.iter().position(|choice| *choice == value).unwrap_or(choices.len()))
}

fn weighed(weighing: &Weighing) -> Answer {
    match weighing {
        Weighing::Stores { mass_kg, .. } => Answer::Reading(mass_kg.get()),
        Weighing::Scale { gross_kg } => Answer::Reading(gross_kg.get()),
        Weighing::TwoSidedLift { left_kg, right_kg, inset_share } => {
            Answer::Reading((left_kg.get() + right_kg.get()) * whole_over_sum(*inset_share))
        }
        Weighing::OneSide { read_kg } => Answer::Reading(read_kg.get()),
        Weighing::Heft(heft) => place(*heft, &HEFTS),
    }
}

fn there(template: &Sign, found: Seen) -> Option<Sign> {
    let sign = match template {
        Sign::Hum { how, .. } => Sign::Hum { heard: found, how: *how },
        Sign::Poke(_) => Sign::Poke(if found == Seen::Yes { Poked::Answered } else { Poked::Silent }),
        Sign::Pollen(_) => Sign::Pollen(found),
        Sign::MeltedSnow(_) => Sign::MeltedSnow(found),
        Sign::ThermalSpot(_) => Sign::ThermalSpot(found),
        Sign::WarmUnderLid(_) => Sign::WarmUnderLid(found),
        Sign::Drones(_) => Sign::Drones(found),
        Sign::LarvaeThrownOut(_) => Sign::LarvaeThrownOut(found),
        Sign::CrumpledWings(_) => Sign::CrumpledWings(found),
        Sign::Robbers(_) => Sign::Robbers(found),
        Sign::Wasps(_) => Sign::Wasps(found),
        Sign::Bird(_) => Sign::Bird(found),
        Sign::Mouse(_) => Sign::Mouse(found),
        Sign::Damage(_) => Sign::Damage(found),
        Sign::Smell(_) => Sign::Smell(found),
        Sign::ClusterSeen { seams: None } | Sign::DeadQueen | Sign::SeenDead => {
            return (found == Seen::Yes).then(|| template.clone());
        }
        _ => return None,
    };
    Some(sign)
}

fn chosen(template: &Sign, which: usize) -> Option<Sign> {
    match template {
        Sign::UpperHole(_) => HOLES.get(which).copied().map(Sign::UpperHole),
        Sign::Flight(_) => FLIGHTS.get(which).copied().map(Sign::Flight),
        Sign::Droppings(_) => DROPPINGS.get(which).copied().map(Sign::Droppings),
        Sign::Weight(Weighing::Heft(_)) => HEFTS.get(which).copied().map(|heft| Sign::Weight(Weighing::Heft(heft))),
        _ => None,
    }
}

fn counted(template: &Sign, n: u32) -> Option<Sign> {
    let Sign::DeadBees { count, place } = template else { return None };
    let holds = |band: &DeadCount| {
        let (least, most) = band.bounds();
        least <= n && most.is_none_or(|most| n <= most)
    };
    let count = match count {
        DeadCount::Counted(_) => DeadCount::Counted(n),
        DeadCount::Band(..) => DeadCount::BANDS.into_iter().find(holds)?,
    };
    Some(Sign::DeadBees { count, place: *place })
}

fn read_off(template: &Sign, read: f64) -> Option<Sign> {
    let sign = match template {
        Sign::Stripes { .. } => Sign::Stripes { seams: read.max(0.0) },
        Sign::ClusterSeen { seams: Some(_) } => Sign::ClusterSeen { seams: Some(read.max(0.0)) },
        Sign::InsideTemperature { place, .. } => {
            Sign::InsideTemperature { read_k: Kelvin::from_celsius(read), place: *place }
        }
        Sign::InsideHumidity { .. } => Sign::InsideHumidity { read: Fraction::new(read.clamp(0.0, 1.0)) },
        Sign::Weight(weighing) => Sign::Weight(weighing_of(*weighing, read.max(0.0))?),
        _ => return None,
    };
    Some(sign)
}

fn weighing_of(template: Weighing, read: f64) -> Option<Weighing> {
    let weighing = match template {
        Weighing::Stores { plus_minus_kg, .. } => Weighing::Stores { mass_kg: Kilogram::new(read), plus_minus_kg },
        Weighing::Scale { .. } => Weighing::Scale { gross_kg: Kilogram::new(read) },
        Weighing::TwoSidedLift { inset_share, .. } => {
            let each = Kilogram::new(0.5 * read / whole_over_sum(inset_share));
            Weighing::TwoSidedLift { left_kg: each, right_kg: each, inset_share }
        }
        Weighing::OneSide { .. } => Weighing::OneSide { read_kg: Kilogram::new(read) },
        Weighing::Heft(_) => return None,
    };
    Some(weighing)
}
