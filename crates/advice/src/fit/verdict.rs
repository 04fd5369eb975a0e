//! What to do with a colony before winter, and why.

use snowhum_say::Tongue;
use snowhum_units::Kilogram;
use snowhum_winter::{Action, Event};

use super::answer::{Uniting, Verdict, VerdictKind};
use super::boost::{self, Boost, LEAST_GAIN};
use super::look::Look;
use super::scales::mites::{count, mites_first};
use super::unite;
use crate::ahead::shortage::WORTH_FEEDING;
use crate::fit::scales::shown::thousands;
use crate::plan::answer::ColonyPlan;
use crate::queen::{self, Ground, Partner};
use crate::queen_trouble::QueenTrouble;
use crate::site::dates;
use crate::site::health::foulbrood;
use crate::verdict::answer::SOUND;
use crate::words::{day, hives, in_hundred};

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
    let (today, last) = (day(look.today()), look.dates.requeen_by.p50);
    let none = if look.today() <= last {
        format!("none: a mated queen by about {}, or unite it", day(last))
    } else {
        "none: unite it, for it is too late to give a queen here".to_owned()
    };
    verdict.says = format!("look for eggs this week; {none}. If there are eggs: {}", verdict.says);
    verdict.reasons.insert(
        0,
        format!("no queen seen and no brood on {today}: the chances of the plan reckon with a laying queen"),
    );
    verdict
}

fn verdict(kind: VerdictKind, says: impl Into<String>, reasons: Vec<String>) -> Verdict {
    Verdict { kind, queen: None, with: None, says: says.into(), reasons, near: false }
}

fn stop(look: &Look<'_>, at: usize) -> Verdict {
    let name = &look.colony(at).name;
    verdict(
        VerdictKind::Stop,
        format!(
            "close {name}, move no bees, combs or tools between hives, and tell the bee inspector before anything else"
        ),
        vec![
            "signs of foulbrood were noted; it is notifiable in most countries, and every frame moved carries it on"
                .to_owned(),
        ],
    )
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
    let mut reasons = vec![trouble.why().to_owned(), for_want_of_a_queen(look, at)];
    reasons.extend(sick.iter().map(|why| format!("it is sick too ({})", Tongue::BRITISH.say(why))));
    if advice.kind == VerdictKind::Unite {
        reasons.extend(uniting.iter().flat_map(|uniting| uniting.against.clone()));
    }
    let last = look.dates.requeen_by.p50;
    if look.today() > last {
        reasons.push(format!("the last sensible day to give a queen here was about {} (judgement)", day(last)));
    }
    let with = uniting.filter(|uniting| uniting.advised).and_then(|uniting| uniting.with.clone());
    Verdict { queen: Some(trouble), with, ..verdict(advice.kind, advice.says, reasons) }
}

/// Its end, in words.
fn for_want_of_a_queen(look: &Look<'_>, at: usize) -> String {
    let plan = look.plan(at);
    format!(
        "of 100 such hives left as they are {} end for want of a queen before spring, and {} come to spring with one",
        hives(plan.ends.queen_failed),
        hives(look.fed_chance(at))
    )
}

fn of_mites(look: &Look<'_>, at: usize) -> Option<Verdict> {
    let (count, line) = count(look, at)?;
    let treated = look.treated_since_count(at);
    if !mites_first(look, at) {
        return None;
    }
    let mut reasons = vec![format!(
        "{:.1} mites per 100 bees at the last count; the line is {} ({})",
        count.rate, line.says, line.region
    )];
    reasons.push(chance(look, at));
    if count.rate >= look.figures.virus.value {
        reasons.push(VIRUSES.to_owned());
    }
    if !treated {
        reasons.push(counterfactual(look, at));
    }
    let late = look.today() > dates::winter_bees(look.base)[0];
    if late {
        reasons.push(
            "its winter bees are raised, wholly or in part: a treatment now protects the neighbours and next year's bees, not bees already hurt"
                .to_owned(),
        );
    }
    let says = match (treated, late) {
        (true, _) => {
            "count again before anything else: it was treated, but with so many mites the treatment must be seen to have worked; the broodless time is the next good one"
        }
        (false, true) => {
            "treat now within label and law, all of the yard on one day, and again in the broodless time if the count asks for it"
        }
        (false, false) => {
            "treat now within label and law, all of the yard on one day, before its winter bees are raised"
        }
    };
    Some(verdict(VerdictKind::Treat, says, reasons))
}

/// Why a chance is trusted less than the count it was reckoned from, at counts at which viruses are in the bees.
const VIRUSES: &str = "the model reckons mites as shorter lives of the bees they fed on and holds next to nothing of viruses, which nobody \
                       has measured here: at such a count trust the count before the chance";

/// What a treatment today does in the model.
fn counterfactual(look: &Look<'_>, at: usize) -> String {
    let (gain, error) = look.gain(&[Event { day: 0, colony: at, action: Action::Treat }], &[at]);
    if 100.0 * gain < LEAST_GAIN || gain < 2.0 * error {
        return "in the model a treatment today changes this winter of its own by no more than chance does".to_owned();
    }
    format!(
        "in the model a treatment today brings {:.0} ± {:.0} hives in 100 more to spring, fed what they are short of",
        100.0 * gain,
        200.0 * error
    )
}

fn of_weak(look: &Look<'_>, at: usize, uniting: Option<&Uniting>) -> Verdict {
    let colony = look.colony(at);
    let mut reasons = vec![
        format!(
            "about {} bees; under {} a colony wants company in {}",
            thousands(colony.bees.p50),
            thousands(look.figures.company.of(look.cold)),
            Tongue::BRITISH.say(&look.dates.country)
        ),
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
        Some(boost) => reasons.push(format!("{}: no more than chance does", boosted(look, &boost))),
        None => reasons.push(no_boost(look)),
    }
    let chance = look.fed_estimate(at);
    let line = look.figures.unite_below.value;
    let uniting = uniting.filter(|_| chance.value < line);
    let near = may_boost || chance.is_near(line);
    match uniting.filter(|uniting| uniting.advised) {
        Some(uniting) => {
            reasons.extend(uniting.carried.map(|carried| {
                format!("together in the model: {} in 100 come to spring, as one colony", hives(carried.together))
            }));
            let says = format!("put it to {}", uniting.with.clone().unwrap_or_default());
            Verdict { with: uniting.with.clone(), near, ..verdict(VerdictKind::Unite, says, reasons) }
        }
        None => {
            reasons.extend(uniting.iter().flat_map(|uniting| uniting.against.clone()));
            Verdict { near, ..alone(look, at, reasons) }
        }
    }
}

fn boosted(look: &Look<'_>, boost: &Boost) -> String {
    format!(
        "in the model one frame of sealed brood from {} brings {:.0} ± {:.0} hives in 100 more of the two to spring",
        look.colony(boost.giver).name,
        boost.gain_in_100,
        boost.plus_minus
    )
}

fn boost_verdict(look: &Look<'_>, boost: &Boost, reasons: Vec<String>) -> Verdict {
    let (giver, last) = (&look.colony(boost.giver).name, day(look.dates.boost_by.p50));
    let says = format!("hang in a frame of sealed brood without its bees from {giver}, by about {last}");
    Verdict { with: Some(giver.clone()), ..verdict(VerdictKind::Boost, says, reasons) }
}

fn no_boost(look: &Look<'_>) -> String {
    let last = &look.dates.boost_by;
    if look.today() > last.p50 {
        format!("it is too late for sealed brood: it must hatch before about {}", day(look.dates.cluster.p50))
    } else {
        "no healthy colony of the yard has sealed brood to spare".to_owned()
    }
}

fn alone(look: &Look<'_>, at: usize, mut reasons: Vec<String>) -> Verdict {
    let plan = look.plan(at);
    if reasons.is_empty() {
        reasons.push(chance(look, at));
    }
    reasons.extend(once_fed(look, at).filter(|fed| !reasons.contains(fed)));
    let mut says: Vec<String> = Vec::new();
    let (mut kind, mut with) = (VerdictKind::Alone, None);
    if look.is_weak(at) && look.housed(at).neighbour.is_none() {
        says.push(match company(look, at) {
            Some(strong) => {
                kind = VerdictKind::Company;
                with = Some(look.colony(strong).name.clone());
                format!("set it beside or over {}, wall to wall, to share its warmth; a hive is shifted when its bees no longer fly", look.colony(strong).name)
            }
            None => "it wants a strong neighbour to warm it, and none is fit for that here".to_owned(),
        });
    }
    says.extend(food(look, plan));
    let says = if says.is_empty() { "it needs no other colony's help".to_owned() } else { says.join(", and ") };
    Verdict { with, ..verdict(kind, says, reasons) }
}

/// What it is fed, where some is short.
fn food(look: &Look<'_>, plan: &ColonyPlan) -> Option<String> {
    let show = |kg: f64| Kilogram::new(kg).show(look.system(), 1);
    match &plan.over_rule {
        Some(over) if over.first_kg >= WORTH_FEEDING.get() => {
            Some(format!("feed it to the rule first, {} of stores, and weigh it in midwinter", show(over.first_kg)))
        }
        Some(_) => Some("it has what the rule asks for and the model asks for more: weigh it in midwinter".to_owned()),
        None => (plan.shortage_kg >= WORTH_FEEDING.get())
            .then(|| format!("feed it first: {} of stores short", show(plan.shortage_kg))),
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

/// What food makes of its chance, in words, where some is short.
fn once_fed(look: &Look<'_>, at: usize) -> Option<String> {
    let short = look.plan(at).shortage_kg >= WORTH_FEEDING.get();
    short.then(|| {
        format!("once it is given what it is short of, {} live with their queen", in_hundred(look.fed_chance(at)))
    })
}

/// Its chance of coming to spring, in words.
fn chance(look: &Look<'_>, at: usize) -> String {
    let plan = look.plan(at);
    let cause = plan.ends.most_likely().filter(|_| plan.alive_fed_queenright < SOUND);
    let ends = cause.map_or_else(String::new, |cause| format!("; most that die: {}", cause.words()));
    format!("as it stands {} come to spring alive, fed and queenright{ends}", in_hundred(plan.alive_fed_queenright))
}
