//! Spring: which hive to lift first, when it is safe to open, what to look for, what to feed, and how strong is strong.

mod answer;
mod look;
mod open;
mod question;
mod strength;

pub use answer::{
    CheckItem, Danger, FeedStep, Hunger, LiftFirst, OpenDay, OpenDays, SPRING_SCHEMA, Springtime, Step, Strength,
    StrengthWord, UsualStrength,
};
pub use question::SpringQuestion;

use jiff::civil::Date;
use snowhum_say::{Message, in_hundred, spring as say};

use crate::jobs::answer::JobsAnswer;
use crate::looks_to::LooksTo;
use crate::now::answer::ColonyNow;

/// The spring of a yard, from the day its present is of.
#[must_use]
pub fn spring(question: &SpringQuestion<'_>) -> Springtime {
    let SpringQuestion { apiary, now, jobs, .. } = *question;
    let alive = || now.colonies.iter().filter(|colony| !colony.is_gone());
    let mut lift_first: Vec<LiftFirst> = alive().map(|colony| lift(question, colony)).collect();
    // Of two whose food lasts as long, the one with less within reach.
    let grams = |one: &LiftFirst| one.reachable_kg.map_or(0, |kilograms| (1e3 * kilograms.p10) as i64);
    let last = i64::MAX;
    lift_first.sort_by_key(|one| (one.days_left.unwrap_or(last), one.usual_days_left.unwrap_or(last), grams(one)));
    let strength: Vec<Strength> = alive().filter_map(|colony| strength::of(question, colony)).collect();
    Springtime {
        schema: SPRING_SCHEMA.to_owned(),
        apiary: apiary.name.clone(),
        invented: apiary.invented,
        as_of: now.as_of,
        weather: now.weather.clone(),
        danger: danger(question, &lift_first),
        lift_first,
        open: open::days(question),
        first_look: look::checklist(),
        feeding: feeding(jobs),
        usual_strength: strength::usual(&apiary.site, now.as_of),
        weak: if strength.iter().any(|one| one.word == StrengthWord::VeryWeak) { look::weak() } else { Vec::new() },
        strength,
        hive: ["clean-floor", "unwrap", "reverse"].iter().filter_map(|id| step(jobs, id)).collect(),
    }
}

fn lift(question: &SpringQuestion<'_>, colony: &ColonyNow) -> LiftFirst {
    let today = question.now.as_of;
    let days = |date: Option<Date>| date.map(|date| (date.duration_since(today).as_hours() / 24).max(0));
    let (days_left, usual_days_left) = (days(colony.runs_out.p10), days(colony.runs_out.p50));
    let soon = question.triggers.hungry_within_days.value as i64;
    let hunger = match days_left {
        Some(left) if left <= soon => Hunger::Now,
        Some(_) => Hunger::BeforeFlowers,
        None => Hunger::Lasts,
    };
    let goal = question.now.looks_to.goal();
    let lasts = match (days_left, usual_days_left) {
        (None, _) => say::lasts(goal),
        (Some(early), None) => say::lasts_most(early, goal),
        (Some(early), Some(days)) => say::lasts_days(days, early),
    };
    LiftFirst {
        name: colony.name.clone(),
        hunger,
        days_left,
        usual_days_left,
        runs_out: colony.runs_out,
        reachable_kg: colony.stores_kg.reachable,
        says: if colony.alive < 0.9 { say::lasts_if_alive(in_hundred(colony.alive), lasts) } else { lasts },
    }
}

/// The belief that costs most colonies, with this yard's own days.
fn danger(question: &SpringQuestion<'_>, lifts: &[LiftFirst]) -> Danger {
    let watch = question.jobs.window("starvation-watch");
    let until = watch.and_then(|watch| watch.until);
    let hungry: Vec<String> = lifts.iter().filter(|one| one.days_left.is_some()).map(|one| one.name.clone()).collect();
    let own = match hungry.as_slice() {
        [] if question.now.looks_to != LooksTo::Spring => say::danger_none_by(question.now.looks_to.goal()),
        [] => say::danger_none(),
        names => say::danger_hives(names.iter().map(Message::from).collect()),
    };
    let end = until.map(say::danger_until).unwrap_or_default();
    Danger {
        from: watch.and_then(|watch| watch.usual),
        until,
        says: Message::sentences([say::danger(), end, own]),
        hungry,
    }
}

/// Solid, then syrup, then pollen.
fn feeding(jobs: &JobsAnswer) -> Vec<FeedStep> {
    let [(from_syrup, syrup), (from_pollen, pollen)] = ["spring-syrup", "pollen"].map(|id| waits(jobs, id));
    let pollen = match (from_pollen, from_syrup) {
        // By the flowers alone it would come before syrup can be given.
        (Some(own), Some(syrup)) if syrup > own => say::pollen_after_syrup(own),
        _ => pollen,
    };
    vec![
        FeedStep {
            what: say::solid(),
            from: None,
            until: from_syrup,
            waits_for: say::solid_waits(),
            how: say::solid_how(),
        },
        FeedStep { what: say::syrup(), from: from_syrup, until: None, waits_for: syrup, how: say::syrup_how() },
        FeedStep {
            what: say::pollen(),
            from: from_pollen.max(from_syrup),
            until: None,
            waits_for: Message::sentences([pollen, say::pollen_only()]),
            how: say::pollen_how(),
        },
    ]
}

/// The usual day of a window, and what it waits for.
fn waits(jobs: &JobsAnswer, id: &str) -> (Option<Date>, Message) {
    jobs.window(id).map(|window| (window.usual, window.trigger.words.clone())).unwrap_or_default()
}

fn step(jobs: &JobsAnswer, id: &str) -> Option<Step> {
    let window = jobs.window(id)?;
    Some(Step {
        id: id.to_owned(),
        what: window.what.clone(),
        usual: window.usual,
        when: window.when.clone(),
        waits_for: window.trigger.words.clone(),
        why: window.why.clone(),
    })
}
