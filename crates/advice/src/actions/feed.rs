//! Food: brought near, from a heavy neighbour, as syrup, as fondant.

use jiff::ToSpan;
use jiff::civil::Date;
use snowhum_say::{Message, actions as say};
use snowhum_units::{CubicMetre, Kilogram, Range};
use snowhum_winter::{Action, Event};

use super::situation::{Candidate, Situation};
use super::thin_syrup;
use crate::ahead::combs;
use crate::ahead::gifts::{self, Gift};
use crate::ahead::shortage::WORTH_FEEDING;
use crate::answer::ActionKind;
use crate::cautions::Hazard;
use crate::course::Course;
use crate::syrup::STORES_PER_FONDANT;
use crate::{finish, over_rule, rules};

/// Food out of reach worth moving.
const LEAST_FAR: Kilogram = Kilogram::new(0.5);
/// Days before the first hunger at which solid feed should lie over the bees.
const AHEAD: usize = 21;
/// Fondant put on at one time, at most: two blocks.
const MOST_FONDANT: Kilogram = Kilogram::new(10.0);
/// Days after which syrup begun today counts as stores in the model (judgement: the first of it within days).
const SYRUP_TAKEN: i64 = 7;
/// Days within which combs are hung nearer.
const COMBS_NEAR: i64 = 14;
/// Hours of work.
const WORK_LID_OFF: f64 = 0.2;
const WORK_SYRUP: f64 = 1.0;
const WORK_FRAMES: f64 = 0.4;

/// Hang the stores from the far side next to the cluster.
pub(super) fn bring_near(situation: &Situation<'_>) -> Option<Candidate> {
    let stores = &situation.housed().colony.stores;
    let far = stores.total.p50 * stores.place.far;
    if far < LEAST_FAR || !combs::can_be_lifted(situation.base) {
        return None;
    }
    let question = situation.base.question;
    Some(Candidate {
        kind: ActionKind::BringNear,
        what: say::near(far),
        why: say::near_why(),
        from: question.as_of,
        by: before_hunger(situation, COMBS_NEAR),
        cost: WORK_FRAMES * question.apiary.money.hour,
        feeds: false,
        fed_first: false,
        events: vec![Event { day: 0, colony: situation.colony, action: Action::BringNear }],
        caution: Some(Hazard::BeforeTight),
        rule: None,
        sources: vec![say::by_isolation(), say::by_practice()],
    })
}

/// Frames of sealed stores from the colony that can best spare them.
pub(super) fn frames_from_heaviest(situation: &Situation<'_>) -> Option<Candidate> {
    let base = situation.base;
    let Gift { giver, frames, stores } = base.gifts[situation.colony]?;
    let question = base.question;
    let name = &base.housed[giver].colony.name;
    Some(Candidate {
        kind: ActionKind::Frames,
        what: say::frames(frames, name, stores),
        why: say::frames_why(name),
        from: question.as_of,
        by: before_hunger(situation, gifts::WITHIN),
        cost: WORK_FRAMES * question.apiary.money.hour,
        feeds: true,
        fed_first: false,
        events: vec![Event { day: 0, colony: giver, action: Action::MoveFrames { to: situation.colony, stores } }],
        caution: Some(Hazard::HealthyCombs),
        rule: Some(say::frames_rule()),
        sources: vec![say::by_practice()],
    })
}

/// So many days on, and never after one in ten such colonies is hungry.
fn before_hunger(situation: &Situation<'_>, days: i64) -> Date {
    let as_of = situation.base.question.as_of;
    let by = as_of.saturating_add(days.days());
    situation.early_hunger().map_or(by, |day| by.min(situation.base.date(day)).max(as_of))
}

/// Syrup, while bees still take it: as much as is wanted now, and no more than they take in the days that are left.
pub(super) fn syrup(situation: &Situation<'_>) -> Option<Candidate> {
    let base = situation.base;
    let question = base.question;
    let course = Course::of(question.as_of, base.finish_syrup_by, over_rule::now(base, situation.colony))?;
    let syrup = CubicMetre::new(course.litres() * 1e-3);
    Some(Candidate {
        kind: ActionKind::Syrup,
        what: say::syrup(course.finish, is_all(&course), course.rest, course.sugar(), syrup),
        why: why_syrup(&course, base.finish_syrup_by, rules::feeding_custom(&question.apiary.site)),
        from: question.as_of,
        by: course.begin,
        cost: course.sugar().get() * question.apiary.money.sugar_per_kg + WORK_SYRUP * question.apiary.money.hour,
        feeds: true,
        fed_first: false,
        events: vec![Event {
            day: syrup_day(&course, question.as_of),
            colony: situation.colony,
            action: Action::Syrup { stores: course.stores },
        }],
        caution: Some(Hazard::Robbing),
        rule: None,
        sources: vec![say::by_limit(), say::by_sugar()],
    })
}

/// The day of the run on which a course of syrup counts as stores.
pub(crate) fn syrup_day(course: &Course, as_of: Date) -> usize {
    course.days(as_of).clamp(0, SYRUP_TAKEN) as usize
}

/// Whether all that is wanted is still taken as syrup.
fn is_all(course: &Course) -> bool {
    course.rest < WORTH_FEEDING
}

fn why_syrup(course: &Course, finish: Range<Date>, custom: Option<Message>) -> Message {
    let feeder = finish::FEEDERS[0].0();
    let why = match course.is_safe {
        true => say::syrup_safe(course.begin, feeder, finish.p50),
        false => say::syrup_late(feeder, finish.p50, is_all(course), finish.p10),
    };
    match custom {
        Some(custom) => say::syrup_custom(custom, why),
        None => why,
    }
}

/// Fondant over the cluster before the first members go hungry; in spring until syrup can be given.
pub(super) fn solid(situation: &Situation<'_>) -> Option<Candidate> {
    let base = situation.base;
    let short = base.shortages[situation.colony];
    if short < WORTH_FEEDING || thin_syrup::is_taken(base) {
        return None;
    }
    let question = base.question;
    let (fondant, day) = (solid_fondant(short), solid_day(situation));
    Some(Candidate {
        kind: ActionKind::SolidFeed,
        what: say::fondant(fondant),
        why: solid_why(situation),
        from: question.as_of,
        by: base.date(day),
        cost: fondant.get() * question.apiary.money.fondant_per_kg + WORK_LID_OFF * question.apiary.money.hour,
        feeds: true,
        fed_first: false,
        events: vec![Event {
            day,
            colony: situation.colony,
            action: Action::SolidFeed { stores: fondant * STORES_PER_FONDANT },
        }],
        caution: Some(if question.as_of <= base.finish_syrup_by.p50 { Hazard::Robbing } else { Hazard::LidOff }),
        rule: Some(say::fondant_rule()),
        sources: vec![say::by_run_out(), say::by_practice()],
    })
}

/// Fondant for what is short, as it is put on at one time.
pub(crate) fn solid_fondant(short: Kilogram) -> Kilogram {
    half_kilograms(short / STORES_PER_FONDANT).min(MOST_FONDANT)
}

/// The day of the run by which solid feed lies over the bees.
pub(crate) fn solid_day(situation: &Situation<'_>) -> usize {
    let hunger = situation.early_hunger().unwrap_or_else(|| situation.base.days().saturating_sub(AHEAD));
    hunger.saturating_sub(AHEAD)
}

fn solid_why(situation: &Situation<'_>) -> Message {
    match situation.early_hunger() {
        Some(day) => say::fondant_hungry(situation.base.date(day)),
        None => say::fondant_little(worst_tenth(situation)),
    }
}

/// What one member in ten has within reach at the end, at most.
fn worst_tenth(situation: &Situation<'_>) -> Kilogram {
    let left: Vec<f64> = situation.ends().iter().map(|end| end.reachable.get()).collect();
    Kilogram::new(crate::statistics::quantile(&left, 0.1))
}

fn half_kilograms(mass: Kilogram) -> Kilogram {
    Kilogram::new((2.0 * mass.get()).ceil() / 2.0)
}
