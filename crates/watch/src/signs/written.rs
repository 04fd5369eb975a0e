//! Between what is written down and what a law speaks of.

use super::judged;
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
    judged(&mut sign.clone(), |shown, _| shown.answer())
}

/// The sign that a keeper writes for this answer, in the form of the template: a count as a band if the template is
/// one. `None` when nothing would be written: a thing noted only when seen was not seen, or the answer is of another
/// kind than the template.
#[must_use]
pub fn seen(template: &Sign, answer: &Answer) -> Option<Sign> {
    let mut sign = template.clone();
    judged(&mut sign, |shown, _| shown.take(answer)).flatten().map(|()| sign)
}

/// Every sign that answers the same question as this one, with counts as the bands that a round offers; none where a number
/// is read off.
#[must_use]
pub fn answers_like(sign: &Sign) -> Vec<Sign> {
    let counts = DeadCount::BANDS.map(|band| Answer::Count(band.bounds().0, None));
    let all = [true, false].map(Answer::There).into_iter().chain((0..4).map(Answer::Choice)).chain(counts);
    all.filter_map(|answer| seen(sign, &answer)).collect()
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

/// The part of a sign that its law speaks of, apart from where and how it was looked for.
pub(super) enum Shown<'s> {
    /// Nothing is written of it when it is not there.
    WhenThere,
    Seen(&'s mut Seen),
    Poked(&'s mut Poked),
    Hole(&'s mut UpperHoleSign),
    Flight(&'s mut Flight),
    Droppings(&'s mut DroppingsPlace),
    Count(&'s mut DeadCount),
    Seams(&'s mut f64),
    Probe(&'s mut Kelvin),
    Share(&'s mut Fraction),
    Heft(&'s mut Heft),
    Mass(&'s mut Kilogram),
    /// Both sides, and how far its supports are set in.
    Lift([&'s mut Kilogram; 2], f64),
}

impl<'s> Shown<'s> {
    pub(super) fn of_weighing(weighing: &'s mut Weighing) -> Self {
        match weighing {
            Weighing::Stores { mass_kg: read_kg, .. }
            | Weighing::Scale { gross_kg: read_kg }
            | Weighing::OneSide { read_kg } => Self::Mass(read_kg),
            Weighing::TwoSidedLift { left_kg, right_kg, inset_share } => Self::Lift([left_kg, right_kg], *inset_share),
            Weighing::Heft(heft) => Self::Heft(heft),
        }
    }

    fn answer(self) -> Answer {
        match self {
            Self::WhenThere => Answer::There(true),
            Self::Seen(seen) => Answer::There(*seen == Seen::Yes),
            Self::Poked(poked) => Answer::There(*poked == Poked::Answered),
            Self::Hole(state) => place(*state, &HOLES),
            Self::Flight(flight) => place(*flight, &FLIGHTS),
            Self::Droppings(found) => place(*found, &DROPPINGS),
            Self::Count(count) => Answer::Count(count.bounds().0, count.bounds().1),
            Self::Seams(seams) => Answer::Reading(*seams),
            Self::Probe(read) => Answer::Reading(read.celsius()),
            Self::Share(read) => Answer::Reading(read.get()),
            Self::Heft(heft) => place(*heft, &HEFTS),
            Self::Mass(read) => Answer::Reading(read.get()),
            Self::Lift([left, right], inset) => Answer::Reading((left.get() + right.get()) * whole_over_sum(inset)),
        }
    }

    /// Writes what was drawn from the law; `None` where nothing would be written, or it is of another kind.
    fn take(self, answer: &Answer) -> Option<()> {
        let (mut there, mut which, mut count, mut reading) = (None, None, None, None);
        match *answer {
            Answer::There(found) => there = Some(found),
            Answer::Choice(place) => which = Some(place),
            Answer::Count(n, _) => count = Some(n),
            Answer::Reading(read) => reading = Some(read),
        }
        match self {
            Self::WhenThere => return there?.then_some(()),
            Self::Seen(seen) => *seen = if there? { Seen::Yes } else { Seen::No },
            Self::Poked(poked) => *poked = if there? { Poked::Answered } else { Poked::Silent },
            Self::Hole(state) => *state = *HOLES.get(which?)?,
            Self::Flight(flight) => *flight = *FLIGHTS.get(which?)?,
            Self::Droppings(found) => *found = *DROPPINGS.get(which?)?,
            Self::Count(found) => *found = counted(*found, count?)?,
            Self::Seams(seams) => *seams = reading?.max(0.0),
            Self::Probe(read) => *read = Kelvin::from_celsius(reading?),
            Self::Share(read) => *read = Fraction::new(reading?.clamp(0.0, 1.0)),
            Self::Heft(heft) => *heft = *HEFTS.get(which?)?,
            Self::Mass(read) => *read = Kilogram::new(reading?.max(0.0)),
            Self::Lift([left, right], inset) => {
                *left = Kilogram::new(0.5 * reading?.max(0.0) / whole_over_sum(inset));
                *right = *left;
            }
        }
        Some(())
    }
}

fn place<T: PartialEq>(value: T, choices: &[T]) -> Answer {
    Answer::Choice(choices.iter().position(|choice| *choice == value).unwrap_or(choices.len()))
}

fn counted(like: DeadCount, n: u32) -> Option<DeadCount> {
    let holds = |band: &DeadCount| {
        let (least, most) = band.bounds();
        least <= n && most.is_none_or(|most| n <= most)
    };
    match like {
        DeadCount::Counted(_) => Some(DeadCount::Counted(n)),
        DeadCount::Band(..) => DeadCount::BANDS.into_iter().find(holds),
    }
}
