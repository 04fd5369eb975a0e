//! Thin syrup in spring: what a hungry colony is given once days are warm enough for bees to take it.

use jiff::ToSpan;
use jiff::civil::Date;
use snowhum_say::actions as say;
use snowhum_units::Kelvin;
use snowhum_winter::{Action, Event};

use super::situation::{Candidate, Situation};
use crate::ahead::run::Run;
use crate::ahead::shortage::WORTH_FEEDING;
use crate::answer::ActionKind;
use crate::cautions::Hazard;
use crate::syrup::{Strength, sugar_for};

/// A week's warmest hours above which bees take thin syrup: keepers on the Pacific coast of North America, as the jobs
/// have it (`spring_syrup_high`).
const FROM: Kelvin = Kelvin::from_celsius(10.0);
const WEEK: usize = 7;
/// Days before the first hunger by which it is begun, and days on at the latest where none is near (judgement).
const AHEAD: usize = 7;
const AT_THE_LATEST: i64 = 14;
/// Days after which it counts as stores in the model (judgement: the first of it within days).
pub(crate) const TAKEN: usize = 3;
/// Hours of work: a litre or so at a time is several walks.
const WORK: f64 = 1.0;

/// Whether thin syrup can be given from today on, in place of solid feed: days lengthen and are warm.
pub(crate) fn is_taken(run: &Run<'_>) -> bool {
    let (environment, days) = run.ahead.first_days(WEEK);
    let highest = |day: usize, path: usize| {
        (24 * day..24 * (day + 1)).map(|hour| environment.air(hour, path).get()).fold(f64::MIN, f64::max)
    };
    let paths = environment.paths();
    let sum: f64 = days.clone().flat_map(|day| (0..paths).map(move |path| highest(day, path))).sum();
    run.after_solstice(0) && !days.is_empty() && sum / (days.len() * paths) as f64 >= FROM.get()
}

/// As much as is short, a litre or so at a time.
pub(super) fn feed(situation: &Situation<'_>) -> Option<Candidate> {
    let base = situation.base;
    let short = base.shortages[situation.colony];
    if short < WORTH_FEEDING || !is_taken(base) {
        return None;
    }
    let (question, sugar) = (base.question, sugar_for(short));
    let hunger = situation.early_hunger();
    Some(Candidate {
        kind: ActionKind::ThinSyrup,
        what: say::thin_syrup(sugar, Strength::OneToOne.syrup_with(sugar)),
        why: match hunger {
            Some(day) => say::thin_syrup_hungry(base.date(day)),
            None => say::thin_syrup_little(),
        },
        from: question.as_of,
        by: latest(situation),
        cost: sugar.get() * question.apiary.money.sugar_per_kg + WORK * question.apiary.money.hour,
        feeds: true,
        fed_first: false,
        events: vec![Event { day: TAKEN, colony: situation.colony, action: Action::Syrup { stores: short } }],
        caution: Some(Hazard::Robbing),
        rule: Some(say::thin_syrup_rule()),
        sources: vec![say::by_run_out(), say::by_practice(), say::by_sugar()],
    })
}

/// The last day to begin it.
pub(crate) fn latest(situation: &Situation<'_>) -> Date {
    let base = situation.base;
    let latest = base.question.as_of.saturating_add(AT_THE_LATEST.days());
    situation.early_hunger().map_or(latest, |day| base.date(day.saturating_sub(AHEAD)).min(latest))
}

#[cfg(test)]
mod tests {
    use super::FROM;

    #[test]
    fn thin_syrup_waits_for_the_jobs_own_figure() {
        let triggers = crate::jobs::Triggers::shipped().unwrap();
        assert!((FROM.celsius() - triggers.spring_syrup_high.value).abs() < 1e-9);
    }
}
