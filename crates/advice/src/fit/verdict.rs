//! What to do with a colony before winter, and why.

use snowhum_say::{Message, fit as say, hives, in_hundred};
use snowhum_units::Kilogram;
use snowhum_winter::{Action, Event};

use super::answer::{Uniting, Verdict, VerdictKind};
use super::boost::{self, Boost, LEAST_GAIN};
use super::look::Look;
use super::scales::mites::{count, mites_first};
use super::unite;
use crate::ahead::shortage::WORTH_FEEDING;
use crate::fit::scales::shown::hundreds;
use crate::plan::answer::ColonyPlan;
use crate::queen::{self, Ground, Partner};
use crate::queen_trouble::QueenTrouble;
use crate::site::dates;
use crate::site::health::foulbrood;
use crate::verdict::answer::SOUND;

/// The verdict, and how it would be put to another where that was asked.
pub(super) fn of(look: &Look<'_>, at: usize) -> (Verdict, Option<Uniting>) {
    if foulbrood(look.colony(at)) {
        return (stop(look, at), None);
    }
    let weak = look.is_weak(at);
    let trouble = QueenTrouble::of(look.colony(at));
    let to_unite = trouble.map_or(weak, |trouble| trouble != QueenTrouble::LayingWorkers);
    let uniting = to_unite.then(|| unite::uniting(look, at));
    let verdict = if let Some(trouble) = trouble {
        of_queen(look, at, trouble, uniting.as_ref())
    } else if let Some(verdict) = of_mites(look, at) {
        verdict
    } else if weak {
        of_weak(look, at, uniting.as_ref())
    } else {
        alone(look, at, Vec::new())
    };
    let verdict = if look.health.perhaps_queenless(look.colony(at)) { queen_first(look, verdict) } else { verdict };
    (verdict, uniting)
}

/// A verdict on a colony that may have no queen: she is looked for before anything else.
fn queen_first(look: &Look<'_>, mut verdict: Verdict) -> Verdict {
    let (today, last) = (look.today(), look.dates.requeen_by.p50);
    verdict.says = say::queen_first(last, today > last, verdict.says);
    verdict.reasons.insert(0, say::queen_first_why(today));
    verdict
}

fn verdict(kind: VerdictKind, says: Message, reasons: Vec<Message>) -> Verdict {
    Verdict { kind, queen: None, with: None, says, reasons, near: false }
}

fn stop(look: &Look<'_>, at: usize) -> Verdict {
    verdict(VerdictKind::Stop, say::stop(&look.colony(at).name), vec![say::stop_why()])
}

/// A verdict on a colony whose queen will not bring it through, whatever else there is.
fn of_queen(look: &Look<'_>, at: usize, trouble: QueenTrouble, uniting: Option<&Uniting>) -> Verdict {
    let sick = look.health.sick(look.colony(at));
    let partner = match uniting.map(|uniting| uniting.with.as_deref()) {
        _ if !sick.is_empty() => Partner::Sick,
        Some(Some(with)) => Partner::Named(with),
        Some(None) => Partner::NoneFit,
        None => Partner::NotSought,
    };
    let advice = queen::advise(trouble, &Ground::of(look.base, at, &look.dates, partner));
    let mut reasons = vec![trouble.why(), for_want_of_a_queen(look, at)];
    reasons.extend(sick.into_iter().map(say::sick_too));
    if advice.kind == VerdictKind::Unite {
        reasons.extend(uniting.iter().flat_map(|uniting| uniting.against.clone()));
    }
    let last = look.dates.requeen_by.p50;
    if look.today() > last {
        reasons.push(say::too_late_for_queen(last));
    }
    let with = uniting.filter(|uniting| uniting.advised).and_then(|uniting| uniting.with.clone());
    Verdict { queen: Some(trouble), with, ..verdict(advice.kind, advice.says, reasons) }
}

/// Its end.
fn for_want_of_a_queen(look: &Look<'_>, at: usize) -> Message {
    say::want_of_queen(hives(look.fed_chance(at)), hives(look.plan(at).ends.queen_failed))
}

fn of_mites(look: &Look<'_>, at: usize) -> Option<Verdict> {
    let (count, line) = count(look, at)?;
    let treated = look.treated_since_count(at);
    if !mites_first(look, at) {
        return None;
    }
    let mut reasons = vec![say::treat_why(&line.says, count.rate, line.region()), chance(look, at)];
    if count.rate >= look.figures.virus.value {
        reasons.push(say::viruses());
    }
    if !treated {
        reasons.push(counterfactual(look, at));
    }
    let late = look.today() > dates::winter_bees(look.base)[0];
    if late {
        reasons.push(say::already_hurt());
    }
    let says = match (treated, late) {
        (true, _) => say::count_again(),
        (false, true) => say::treat_late(),
        (false, false) => say::treat(),
    };
    Some(verdict(VerdictKind::Treat, says, reasons))
}

/// What a treatment today does in the model.
fn counterfactual(look: &Look<'_>, at: usize) -> Message {
    let (gain, error) = look.gain(&[Event { day: 0, colony: at, action: Action::Treat }], &[at]);
    if 100.0 * gain < LEAST_GAIN || gain < 2.0 * error {
        return say::treat_by_chance();
    }
    say::treat_gain(100.0 * gain, 200.0 * error)
}

fn of_weak(look: &Look<'_>, at: usize, uniting: Option<&Uniting>) -> Verdict {
    let colony = look.colony(at);
    let mut reasons = vec![
        say::weak(hundreds(colony.bees.p50), hundreds(look.figures.company.of(look.cold)), look.dates.country.clone()),
        chance(look, at),
    ];
    reasons.extend(once_fed(look, at));
    let boost = boost::best(look, at);
    let may_boost = boost.as_ref().is_some_and(Boost::is_near);
    match boost {
        Some(boost) if boost.is_worth() => {
            reasons.push(boosted(look, &boost));
            return Verdict { near: may_boost, ..boost_verdict(look, &boost, reasons) };
        }
        Some(boost) => reasons.push(say::boost_by_chance(boosted(look, &boost))),
        None => reasons.push(no_boost(look)),
    }
    let chance = look.fed_estimate(at);
    let line = look.figures.unite_below.value;
    let uniting = uniting.filter(|_| chance.value < line);
    let near = may_boost || chance.is_near(line);
    match uniting.filter(|uniting| uniting.advised) {
        Some(uniting) => {
            reasons.extend(uniting.carried.map(|carried| say::together(hives(carried.together))));
            let says = say::unite(uniting.with.as_deref().unwrap_or_default());
            Verdict { with: uniting.with.clone(), near, ..verdict(VerdictKind::Unite, says, reasons) }
        }
        None => {
            reasons.extend(uniting.iter().flat_map(|uniting| uniting.against.clone()));
            Verdict { near, ..alone(look, at, reasons) }
        }
    }
}

fn boosted(look: &Look<'_>, boost: &Boost) -> Message {
    say::boost_gain(boost.gain_in_100, &look.colony(boost.giver).name, boost.plus_minus)
}

fn boost_verdict(look: &Look<'_>, boost: &Boost, reasons: Vec<Message>) -> Verdict {
    let giver = &look.colony(boost.giver).name;
    let says = say::boost(giver, look.dates.boost_by.p50);
    Verdict { with: Some(giver.clone()), ..verdict(VerdictKind::Boost, says, reasons) }
}

fn no_boost(look: &Look<'_>) -> Message {
    if look.today() > look.dates.boost_by.p50 { say::boost_too_late(look.dates.cluster.p50) } else { say::boost_none() }
}

fn alone(look: &Look<'_>, at: usize, mut reasons: Vec<Message>) -> Verdict {
    let plan = look.plan(at);
    if reasons.is_empty() {
        reasons.push(chance(look, at));
    }
    reasons.extend(once_fed(look, at).filter(|fed| !reasons.contains(fed)));
    let mut needs = Vec::new();
    let (mut kind, mut with) = (VerdictKind::Alone, None);
    if look.is_weak(at) && look.housed(at).neighbour.is_none() {
        needs.push(match company(look, at) {
            Some(strong) => {
                kind = VerdictKind::Company;
                with = Some(look.colony(strong).name.clone());
                say::beside(&look.colony(strong).name)
            }
            None => say::no_company(),
        });
    }
    needs.extend(food(plan));
    let says = if needs.is_empty() { say::alone_nothing() } else { say::alone(needs) };
    Verdict { with, ..verdict(kind, says, reasons) }
}

/// What it is fed, where some is short.
fn food(plan: &ColonyPlan) -> Option<Message> {
    match &plan.over_rule {
        Some(over) if over.first_kg >= WORTH_FEEDING.get() => Some(say::feed_to_rule(Kilogram::new(over.first_kg))),
        Some(_) => Some(say::has_rule()),
        None => (plan.shortage_kg >= WORTH_FEEDING.get()).then(|| say::feed(Kilogram::new(plan.shortage_kg))),
    }
}

/// The strongest healthy colony that can warm a weak one, of those that are not short of food if there is one.
fn company(look: &Look<'_>, at: usize) -> Option<usize> {
    let bees = |place: &usize| look.colony(*place).bees.p50;
    let fit =
        |place: &usize| *place != at && !look.is_weak(*place) && look.health.may_give_and_take(look.colony(*place));
    look.places().filter(fit).max_by(|a, b| {
        let fed = |place: &usize| !look.is_short(*place);
        fed(a).cmp(&fed(b)).then(bees(a).total_cmp(&bees(b)))
    })
}

/// What food makes of its chance, where some is short.
fn once_fed(look: &Look<'_>, at: usize) -> Option<Message> {
    let short = look.plan(at).shortage_kg >= WORTH_FEEDING.get();
    short.then(|| say::once_fed(in_hundred(look.fed_chance(at))))
}

/// Its chance of coming to spring.
fn chance(look: &Look<'_>, at: usize) -> Message {
    let plan = look.plan(at);
    let chance = in_hundred(plan.alive_fed_queenright);
    match plan.ends.most_likely().filter(|_| plan.alive_fed_queenright < SOUND) {
        Some(cause) => say::chance_ends(cause.words(), chance),
        None => say::chance(chance),
    }
}
