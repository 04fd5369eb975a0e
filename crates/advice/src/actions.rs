//! What is worth doing, found by doing it in the model: each candidate is run on the same weather and the same random
//! numbers as the plan itself.

mod clear;
mod dress;
pub(crate) mod feed;
pub(crate) mod mites;
pub(crate) mod situation;
pub(crate) mod thin_syrup;

use snowhum_winter::Event;

use crate::ahead::base::Base;
use crate::ahead::run::A_PART;
use crate::answer::{ActionAnswer, ActionKind};
use crate::queen;
use crate::statistics::{mean, mean_and_error, rounded};
use situation::{Candidate, Situation};

/// Actions shown for a colony.
const SHOWN: usize = 3;
/// Hives in a hundred below which an action is not worth a keeper's walk.
const LEAST_WORTH: f64 = 1.0;

/// A candidate with what it does for each member.
#[derive(Debug, Clone)]
pub(crate) struct Weighed {
    pub(crate) answer: ActionAnswer,
    /// Colonies alive, fed and queenright more than without, of each member that was run again, moved to the mean that all
    /// members tell; empty where that is not weighed.
    pub(crate) gains: Vec<f64>,
    feeds: bool,
    /// What is done in the model.
    pub(crate) events: Vec<Event>,
}

/// The actions most worth doing, best first.
pub(crate) fn best(situation: &Situation<'_>) -> Vec<Weighed> {
    let candidates = candidates(situation);
    let hopeful = candidates.iter().filter(|candidate| may_help(situation, candidate));
    let mut weighed: Vec<Weighed> = hopeful.map(|candidate| weigh(situation, candidate)).collect();
    // A blocked opening is cleared whatever the sums say: what they do not hold is bees that cannot get out.
    // Whether it pays is one question, whether it helps is another: what helps is told with its price.
    weighed.retain(|it| {
        it.answer.kind == ActionKind::ClearOpenings
            || (it.answer.worth_hives_in_100 >= LEAST_WORTH && (it.answer.pays() || it.answer.helps()))
    });
    weighed.sort_by(|a, b| b.answer.worth_money.total_cmp(&a.answer.worth_money));
    let custom = queen::action(situation.base, situation.colony);
    weighed.splice(0..0, custom.map(|answer| Weighed { answer, gains: Vec::new(), feeds: false, events: Vec::new() }));
    weighed.truncate(SHOWN);
    for at in 0..weighed.len() {
        weighed[at].answer.instead = weighed[at].feeds && weighed[..at].iter().any(|before| before.feeds);
    }
    weighed
}

/// Every candidate that makes sense for the situation; those that do nothing are left out before they cost a run.
fn candidates(situation: &Situation<'_>) -> Vec<Candidate> {
    let mut candidates = Vec::new();
    candidates.extend(clear::openings(situation));
    candidates.extend(mites::treat(situation));
    candidates.extend(feed::bring_near(situation));
    candidates.extend(feed::frames_from_heaviest(situation));
    candidates.extend(feed::syrup(situation));
    candidates.extend(thin_syrup::feed(situation));
    candidates.extend(feed::solid(situation));
    candidates.extend(dress::insulate_lid(situation));
    candidates.extend(dress::wrap(situation));
    candidates.extend(dress::close_mesh(situation));
    candidates
}

/// Whether nothing in a list moves the chance by more than its own error. What it costs has no part in this. An
/// opening to be cleared is no "nothing", whatever the sums say.
pub(crate) fn nothing_helps(actions: &[ActionAnswer]) -> bool {
    !actions.iter().any(|action| action.helps() || action.kind == ActionKind::ClearOpenings)
}

/// Standard errors by which a candidate must fall short among them to be left out.
const SURELY: f64 = 3.0;

/// Error of a worth above which it is weighed by as many members as the first run had: twice it is told as three hives in a hundred.
const SURE_ENOUGH: f64 = 0.0125;

/// Whether a candidate can still be worth a keeper's walk once a part of the members has been run with it. What is seen to do
/// next to nothing costs no more than that part.
fn may_help(situation: &Situation<'_>, candidate: &Candidate) -> bool {
    let base = situation.base;
    if base.question.members < 2 * A_PART || candidate.kind == ActionKind::ClearOpenings || candidate.fed_first {
        return true;
    }
    let (gain, error) = mean_and_error(&gains(base, A_PART, &[], &candidate.events));
    let most = base.ahead.alive(situation.colony) * (gain + SURELY * error);
    rounded(100.0 * most, 1) >= LEAST_WORTH
}

/// Runs a candidate and compares it, member by member, with the base's own run.
fn weigh(situation: &Situation<'_>, candidate: &Candidate) -> Weighed {
    let base = situation.base;
    let food = candidate.fed_first.then(|| base.feeding(situation.colony)).flatten();
    let touched = base.touched(&candidate.events);
    // A dead colony gains nothing, and what is done for it costs the same.
    let alive = base.ahead.alive(situation.colony);
    let by = |members: usize| {
        let gains = gains(base, members, food.as_slice(), &candidate.events);
        (base.mean_by_all(&touched, &gains), gains)
    };
    let (mut found, mut gains) = by(base.question.members);
    let all = base.trajectories[situation.colony].members();
    if alive * found.error > SURE_ENOUGH && all > gains.len() {
        (found, gains) = by(all);
    }
    let (gain, error) = (alive * found.value, alive * found.error);
    let money = &base.question.apiary.money;
    let answer = ActionAnswer {
        kind: candidate.kind,
        what: candidate.what.clone(),
        from: candidate.from,
        by: candidate.by,
        worth_money: rounded(gain * money.colony - candidate.cost, 0),
        worth_hives_in_100: rounded(100.0 * gain, 1),
        plus_minus: rounded(200.0 * error, 1),
        too_close_to_call: (gain * money.colony - candidate.cost).abs() < 2.0 * error * money.colony,
        cost_money: rounded(candidate.cost, 0),
        why: candidate.why.clone(),
        caution: candidate.caution.map(|hazard| hazard.clause()),
        rule_of_thumb: candidate.rule.clone(),
        sources: candidate.sources.clone(),
        instead: false,
        by_custom: false,
    };
    let nearer = found.value - mean(&gains);
    let gains = gains.into_iter().map(|gain| gain + nearer).collect();
    Weighed { answer, gains, feeds: candidate.feeds, events: candidate.events.clone() }
}

/// Colonies alive, fed and queenright more than in the plan's run with `food` alone given, for each of the first members.
fn gains(base: &Base<'_>, members: usize, food: &[Event], events: &[Event]) -> Vec<f64> {
    let places = base.touched(events);
    let without = (!food.is_empty()).then(|| base.rerun_of(members, &places, food));
    let outcomes = base.rerun_of(members, &places, &[food, events].concat());
    let fed = base.fed();
    let mut gains = vec![0.0; members];
    for (at, (place, outcome)) in places.iter().zip(&outcomes).enumerate() {
        let before = without.as_ref().map_or(&base.trajectories[*place], |without| &without[at]);
        for ((gain, after), before) in gains.iter_mut().zip(&outcome.ends).zip(&before.ends) {
            *gain += after.fed_and_queenright(fed) - before.fed_and_queenright(fed);
        }
    }
    gains
}
