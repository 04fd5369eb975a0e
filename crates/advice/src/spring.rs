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
use snowhum_say::Tongue;

use crate::jobs::answer::JobsAnswer;
use crate::looks_to::LooksTo;
use crate::now::answer::ColonyNow;
use crate::words::{day, in_hundred};

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
    let goal = Tongue::BRITISH.say(&question.now.looks_to.goal());
    let left = match (days_left, usual_days_left) {
        (None, _) => format!("food lasts to {goal} in at least 9 of 10 winters"),
        (Some(early), None) => format!("in 1 of 10 food lasts {early} days or less; most likely to {goal}"),
        (Some(early), Some(middle)) => format!("food for about {middle} days; in 1 of 10 for {early} or less"),
    };
    let alive = if colony.alive < 0.9 { format!("; alive: {}", in_hundred(colony.alive)) } else { String::new() };
    LiftFirst {
        name: colony.name.clone(),
        hunger,
        days_left,
        usual_days_left,
        runs_out: colony.runs_out,
        reachable_kg: colony.stores_kg.reachable,
        says: format!("{left}{alive}"),
    }
}

/// The belief that costs most colonies, with this yard's own days.
fn danger(question: &SpringQuestion<'_>, lifts: &[LiftFirst]) -> Danger {
    let watch = question.jobs.window("starvation-watch");
    let until = watch.and_then(|watch| watch.until);
    let hungry: Vec<String> = lifts.iter().filter(|one| one.days_left.is_some()).map(|one| one.name.clone()).collect();
    let end = until.map_or_else(String::new, |until| format!(" Here it is not over before about {}.", day(until)));
    let own = match hungry.as_slice() {
        [] if question.now.looks_to != LooksTo::Spring => format!(
            " None of your hives is likely to run out by {}; lift them all the same.",
            Tongue::BRITISH.say(&question.now.looks_to.goal())
        ),
        [] => " None of your hives is likely to run out before then; lift them all the same.".to_owned(),
        names => format!(" In at least 1 winter of 10 food runs out at {}.", names.join(", ")),
    };
    Danger {
        from: watch.and_then(|watch| watch.usual),
        until,
        says: format!(
            "The danger does not end in February. Brood takes two to three times the food of midwinter, and cold days keep \
             bees from fetching any: most colonies that starve do so in March, April or, in the north, early May.{end}{own}"
        ),
        hungry,
    }
}

/// Solid, then syrup, then pollen.
fn feeding(jobs: &JobsAnswer) -> Vec<FeedStep> {
    let syrup = jobs.window("spring-syrup");
    let pollen = jobs.window("pollen");
    let from = |window: Option<&crate::jobs::JobWindow>| window.and_then(|window| window.usual);
    let waits =
        |window: Option<&crate::jobs::JobWindow>| window.map_or_else(String::new, |one| one.trigger.words.clone());
    vec![
        FeedStep {
            what: "Solid food".to_owned(),
            from: None,
            until: from(syrup),
            waits_for: "Hunger, in any cold that lets the lid be off for a minute.".to_owned(),
            how: "Fondant, candy or damp sugar on the bars, straight above the cluster; a comb of food from a healthy hive of \
                  the same yard is better still. Never on the far side: bees do not cross cold combs."
                .to_owned(),
        },
        FeedStep {
            what: "Thin syrup, 1:1".to_owned(),
            from: from(syrup),
            until: None,
            waits_for: waits(syrup),
            how: "Only where food is short; it stirs up brood. A litre or so at a time, entrance reduced.".to_owned(),
        },
        FeedStep {
            what: "Added pollen".to_owned(),
            from: from(pollen).max(from(syrup)),
            until: None,
            waits_for: format!("{} Only where none is carried in.", pollen_waits(from(pollen), from(syrup), waits(pollen))),
            how: "Early pollen starts brood that must be fed and kept warm to the end; help given too early starves them."
                .to_owned(),
        },
    ]
}

/// Why pollen waits: for its own day, or, where that comes before syrup can be given, for syrup.
fn pollen_waits(pollen: Option<Date>, syrup: Option<Date>, own: String) -> String {
    match (pollen, syrup) {
        (Some(own_day), Some(syrup)) if syrup > own_day => format!(
            "Not before syrup can be given, in this order; by the flowers alone it would be about {}.",
            day(own_day)
        ),
        _ => own,
    }
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
