//! Food: brought near, from a heavy neighbour, as syrup, as fondant.

use jiff::ToSpan;
use snowhum_units::Kilogram;
use snowhum_winter::{Action, Event};

use super::{Candidate, Situation};
use crate::cautions::Hazard;
use crate::plan::Base;
use crate::syrup::{STORES_PER_FONDANT, Strength, sugar_for};
use crate::{finish, words};

/// Least shortage worth feeding for.
const LEAST: Kilogram = Kilogram::new(0.5);
/// Food out of reach worth moving.
const LEAST_FAR: Kilogram = Kilogram::new(0.5);
/// Share of a frame's comb that holds sealed stores in a frame worth moving (judgement).
const FRAME_FULL: f64 = 0.9;
/// Stores on both sides of a square metre of comb: 0.32 kg a dm² (0.30-0.35: three practice sources).
const STORES_PER_COMB: f64 = 32.0;
/// Most frames asked of one giver.
pub(crate) const MOST_FRAMES: usize = 3;
/// Days before the first hunger at which solid feed should lie over the bees.
const AHEAD: usize = 21;
/// Fondant put on at one time, at most: two blocks.
const MOST_FONDANT: Kilogram = Kilogram::new(10.0);
/// Days after which syrup begun today counts as stores in the model (judgement: the first of it within days).
const SYRUP_TAKEN: i64 = 7;
/// Hours of work.
const WORK_LID_OFF: f64 = 0.2;
const WORK_SYRUP: f64 = 1.0;
const WORK_FRAMES: f64 = 0.4;

/// Hang the stores from the far side next to the cluster.
pub(super) fn bring_near(situation: &Situation<'_>) -> Option<Candidate> {
    let stores = &situation.housed().colony.stores;
    let far = stores.total.p50 * stores.place.far;
    if far < LEAST_FAR {
        return None;
    }
    let question = situation.base.question;
    Some(Candidate {
        what: format!("hang the {} from the far side next to the cluster", far.show(question.system, 1)),
        why: "food two bare combs away might as well not be there in a cold spell".to_owned(),
        from: question.as_of,
        by: question.as_of.saturating_add(14.days()),
        cost: WORK_FRAMES * question.apiary.money.hour,
        events: vec![Event { day: 0, colony: situation.colony, action: Action::BringNear }],
        caution: Some(Hazard::BeforeTight),
        rule: None,
        sources: vec!["isolation starvation as the model reaches it", "common practice"],
    })
}

/// Frames of sealed stores from the colony that can best spare them.
pub(super) fn frames_from_heaviest(situation: &Situation<'_>) -> Option<Candidate> {
    let base = situation.base;
    let short = base.shortages[situation.colony];
    let frame = full_frame(base, situation.colony)?;
    if short < LEAST || frame < LEAST {
        return None;
    }
    let giver = heaviest_giver(situation, frame)?;
    let frames = ((short / frame).ceil() as usize).clamp(1, MOST_FRAMES).min(spare(base, giver, frame));
    let stores = frame * frames as f64;
    let question = base.question;
    let name = &base.housed[giver].colony.name;
    Some(Candidate {
        what: format!(
            "hang in {frames} full {} of sealed stores from {name} ({})",
            if frames == 1 { "frame" } else { "frames" },
            stores.show(question.system, 1)
        ),
        why: format!(
            "{name} has more than it needs even in the hungriest winter in ten, and its frames fit (what it can spare it can give once)"
        ),
        from: question.as_of,
        by: question.as_of.saturating_add(21.days()),
        cost: WORK_FRAMES * question.apiary.money.hour,
        events: vec![Event { day: 0, colony: giver, action: Action::MoveFrames { to: situation.colony, stores } }],
        caution: Some(Hazard::HealthyCombs),
        rule: Some("a frame of sealed stores against the cluster is the first remedy where there is one".to_owned()),
        sources: vec!["common practice"],
    })
}

/// The colony with frames of the same size that stays well fed without them; the one with most to spare.
fn heaviest_giver(situation: &Situation<'_>, frame: Kilogram) -> Option<usize> {
    let base = situation.base;
    (0..base.housed.len())
        .filter(|place| frames_fit(base, *place, situation.colony))
        .filter(|place| spare(base, *place, frame) > 0 && healthy(situation, *place))
        .max_by_key(|place| spare(base, *place, frame))
}

/// Stores in a full frame of a hive's top box.
pub(crate) fn full_frame(base: &Base<'_>, place: usize) -> Option<Kilogram> {
    let own = base.housed[place].hive.boxes.last()?;
    Some(Kilogram::new(own.comb_side.get() * STORES_PER_COMB * FRAME_FULL))
}

/// Whether a giver has frames of the size of the taker's top box; no hive gives to itself.
pub(crate) fn frames_fit(base: &Base<'_>, giver: usize, taker: usize) -> bool {
    let Some(own) = base.housed[taker].hive.boxes.last() else { return false };
    let boxes = &base.housed[giver].hive.boxes;
    giver != taker && boxes.iter().any(|b| (b.comb_side / own.comb_side - 1.0).abs() < 0.02 && b.depth == own.depth)
}

/// Frames that a colony can spare: nine members in ten keep 3 kg within reach without them.
pub(crate) fn spare(base: &Base<'_>, place: usize, frame: Kilogram) -> usize {
    let left: Vec<f64> = base.trajectories[place].ends.iter().map(|end| end.reachable.get()).collect();
    let over = crate::statistics::quantile(&left, 0.1) - crate::shortage::LEFT_IN_SPRING.get();
    (over / frame.get()).floor().max(0.0) as usize
}

/// A giver that is likely to live, and whose combs are therefore not suspect.
fn healthy(situation: &Situation<'_>, place: usize) -> bool {
    let ends = &situation.base.trajectories[place].ends;
    ends.iter().map(snowhum_winter::MemberEnd::alive).sum::<f64>() > 0.8 * ends.len() as f64
}

/// Syrup, while bees still take it.
pub(super) fn syrup(situation: &Situation<'_>) -> Option<Candidate> {
    let base = situation.base;
    let short = base.shortages[situation.colony];
    let question = base.question;
    let (safe, finish) = (base.finish_syrup_by.p10, base.finish_syrup_by.p50);
    if short < LEAST || question.as_of > finish {
        return None;
    }
    let sugar = sugar_for(short);
    let litres = Strength::ThreeToTwo.syrup_with(sugar);
    let (feeder, a_day) = finish::FEEDERS[0];
    let begin = finish::begin_by(safe, litres.get() * 1e3, a_day);
    let days_left = finish.duration_since(question.as_of).as_hours() / 24;
    Some(Candidate {
        what: format!(
            "feed {} of sugar as {} of 3:2 syrup, finished by {}",
            sugar.show(question.system, 1),
            litres.show(question.system, 0),
            words::day(safe)
        ),
        why: if begin < question.as_of {
            format!(
                "{feeder} is no longer quick enough for all of it to be safe: begin today, and give frames or solid feed for what is not taken ({} is in time in half of all years)",
                words::day(finish)
            )
        } else {
            format!(
                "with {feeder} begin by {}: fed, taken and capped before bees stop taking syrup here ({} is in time in half of all years)",
                words::day(begin),
                words::day(finish)
            )
        },
        from: question.as_of,
        by: begin.max(question.as_of),
        cost: sugar.get() * question.apiary.money.sugar_per_kg + WORK_SYRUP * question.apiary.money.hour,
        events: vec![Event {
            day: days_left.clamp(0, SYRUP_TAKEN) as usize,
            colony: situation.colony,
            action: Action::Syrup { stores: short },
        }],
        caution: Some(Hazard::Robbing),
        rule: None,
        sources: vec!["55 F limit: Ontario beekeeping extension", "1.1 kg of stores a kg of sugar, range 1.0-1.2"],
    })
}

/// Fondant over the cluster before the first members go hungry.
pub(super) fn solid(situation: &Situation<'_>) -> Option<Candidate> {
    let base = situation.base;
    let short = base.shortages[situation.colony];
    if short < LEAST {
        return None;
    }
    let question = base.question;
    let hunger = situation.early_hunger();
    let why = match hunger {
        Some(day) => format!(
            "one in ten colonies like this is hungry by {}; set three weeks ahead of that",
            words::day(base.date(day))
        ),
        None => format!(
            "few go hungry before spring, but the worst tenth reaches it with {} within reach or less",
            worst_tenth(situation).show(question.system, 1)
        ),
    };
    let hunger = hunger.unwrap_or_else(|| base.days().saturating_sub(AHEAD));
    let fondant = half_kilograms(short / STORES_PER_FONDANT).min(MOST_FONDANT);
    let day = hunger.saturating_sub(AHEAD);
    Some(Candidate {
        what: format!("put {} of fondant right over the cluster", fondant.show(question.system, 1)),
        why,
        from: question.as_of,
        by: base.date(day),
        cost: fondant.get() * question.apiary.money.fondant_per_kg + WORK_LID_OFF * question.apiary.money.hour,
        events: vec![Event {
            day,
            colony: situation.colony,
            action: Action::SolidFeed { stores: fondant * STORES_PER_FONDANT },
        }],
        caution: Some(if question.as_of <= base.finish_syrup_by.p50 { Hazard::Robbing } else { Hazard::LidOff }),
        rule: Some(
            "solid sugar helps once bees can use it; autumn stores are better (University of Minnesota Extension)"
                .to_owned(),
        ),
        sources: vec!["computed run-out", "common practice"],
    })
}

/// What one member in ten has within reach at the end, at most.
fn worst_tenth(situation: &Situation<'_>) -> Kilogram {
    let left: Vec<f64> = situation.ends().iter().map(|end| end.reachable.get()).collect();
    Kilogram::new(crate::statistics::quantile(&left, 0.1))
}

fn half_kilograms(mass: Kilogram) -> Kilogram {
    Kilogram::new((2.0 * mass.get()).ceil() / 2.0)
}
