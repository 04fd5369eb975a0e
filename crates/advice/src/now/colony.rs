//! One colony's present and what to do for it.

use jiff::Timestamp;
use jiff::civil::Date;
use snowhum_apiary::{Act, Examined, Sign, SpringCount};
use snowhum_say::{Message, now as say};
use snowhum_units::Range;
use snowhum_watch::{Estimate, Standing, Visit, Watching};
use snowhum_winter::{Daily, Ends, MemberEnd};

use super::answer::{ColonyNow, Expectation, Fates, LookFirst, StoresNow};
use super::beside;
use super::evidence;
use super::{food_body, look_first};
use crate::actions::situation::Situation;
use crate::actions::{self, Weighed};
use crate::ahead::base::Base;
use crate::answer::ActionAnswer;
use crate::dates::date_of_hour;
use crate::fit::answer::Verdict;
use crate::looks_to::LooksTo;
use crate::statistics::{mean_and_error, rounded};
use crate::verdict::answer::ColonyVerdict;
use crate::verdict::facts::{Facts, Fate};
use crate::{queen, seasons};

/// A colony as the watch left it.
pub(super) struct Watched<'a> {
    pub(super) estimate: &'a Estimate,
    pub(super) watching: &'a Watching,
    pub(super) visits: &'a [Visit],
    pub(super) expect_next: &'a Expectation,
    /// The end of the day asked about.
    pub(super) end: Timestamp,
    pub(super) looks_to: LooksTo,
}

/// What spring holds for a colony.
struct Spring {
    /// Chance of being alive, fed and queenright, and its standard error.
    fed: (f64, f64),
    /// Chance of being alive then, whatever it lacks.
    alive: f64,
    /// Chance of being alive without a queen.
    queenless: f64,
    /// Hunger that mites hid, since they left fewer bees to feed.
    hidden: f64,
}

impl Spring {
    fn of(base: &Base<'_>, at: usize, alive: f64) -> Self {
        let ends = &base.trajectories[at].ends;
        let fed: Vec<f64> = ends.iter().map(|end| alive * end.fed_and_queenright(base.fed())).collect();
        let (chance, error) = mean_and_error(&fed);
        let chance = base.apart(at).map_or(chance, |apart| alive * apart.fed_and_queenright);
        let mean = |of: &dyn Fn(&MemberEnd) -> f64| alive * ends.iter().map(of).sum::<f64>() / ends.len().max(1) as f64;
        let survives = mean(&MemberEnd::alive);
        let lives = base.apart(at).map_or(survives, |apart| (alive * apart.alive).min(survives));
        Self { fed: (chance, error), alive: lives, queenless: mean(&|end| end.queenless), hidden: survives - lives }
    }

    /// With what ended already and what ends from here.
    fn fates(&self, ended: &Ends, ahead: &Ends) -> Fates {
        let well = self.fed.0;
        let lives = self.alive.max(well);
        let queenless = self.queenless.min(lives - well);
        let dead = (1.0 - lives).max(0.0);
        let starved = (ended.of_hunger() + ahead.of_hunger() + self.hidden).clamp(0.0, dead);
        Fates { well, hungry: lives - well - queenless, queenless, starved, died_otherwise: dead - starved }
    }
}

/// One colony, and what the verdict on it is decided by.
pub(super) struct Seen {
    pub(super) now: ColonyNow,
    pub(super) weighed: Vec<Weighed>,
    fate: Fate,
    is_shut: bool,
    beside: bool,
}

impl Seen {
    pub(super) fn facts<'a>(&'a self, fit: Option<&'a Verdict>, last: Option<&'a ColonyVerdict>) -> Facts<'a> {
        Facts {
            fate: self.fate.clone(),
            alive: self.now.alive,
            alive_queenright: self.now.alive_queenright,
            is_shut: self.is_shut,
            beside: self.beside,
            weighed: &self.weighed,
            fit,
            last,
        }
    }
}

pub(super) fn now(base: &Base<'_>, at: usize, watched: &Watched<'_>) -> Seen {
    let Watched { estimate, visits, end, .. } = *watched;
    let standing = estimate.standing();
    let (seen_dead, united_into) = (seen_dead(visits), united_into(base, visits));
    let closed = closed(visits, seen_dead);
    let gone = seen_dead || united_into.is_some() || closed.is_some();
    let (weighed, beside) = match gone {
        true => (Vec::new(), Vec::new()),
        false => (actions::best(&Situation { base, colony: at }), beside::of(base, at, end)),
    };
    let queen = if gone { None } else { queen::advice(base, at) };
    let look_first = look_first(base, at, standing.alive, &weighed);
    let actions: Vec<ActionAnswer> = weighed.iter().map(|weighed| weighed.answer.clone()).collect();
    let spring = Spring::of(base, at, standing.alive);
    let fate = match (&united_into, &closed) {
        (Some(into), _) => Fate::UnitedInto(into.clone()),
        (None, Some(closed)) => closed.fate(),
        (None, None) if seen_dead => Fate::SeenDead,
        (None, None) => Fate::Lives,
    };
    let signs = !gone && beside::asks_for_a_look(base, at, end);
    let now = ColonyNow {
        beside,
        seen_dead,
        united_into,
        is_closed: matches!(fate, Fate::Gone(_)),
        queen: queen.map(|advice| advice.trouble),
        nothing_helps: !gone && actions::nothing_helps(&actions),
        actions,
        look_first,
        ..standing_of(base, at, watched, (&standing, &spring))
    };
    Seen { now, weighed, fate, is_shut: !gone && base.housed[at].hive.is_sealed(), beside: signs }
}

/// Whether to look first: what custom asks for about a queen hangs on no weighing.
fn look_first(base: &Base<'_>, at: usize, alive: f64, weighed: &[Weighed]) -> LookFirst {
    let best = weighed.iter().find(|one| !one.answer.by_custom);
    if best.is_none() && !weighed.is_empty() { look_first::of_queen() } else { look_first::of(base, at, alive, best) }
}

/// What the estimate and the run ahead say; the rest is left for [`now`] to fill in.
fn standing_of(
    base: &Base<'_>,
    at: usize,
    watched: &Watched<'_>,
    (standing, spring): (&Standing, &Spring),
) -> ColonyNow {
    let kg = |range: Option<Range<f64>>| range.map(|range| range.map(|kg| rounded(kg, 1)));
    let day = |hour: f64| date_of_hour(base.question.apiary.as_of, hour as usize);
    let ahead = ends_ahead(base, at, standing.alive);
    ColonyNow {
        name: base.housed[at].colony.name.clone(),
        alive: standing.alive,
        alive_queenright: standing.queenright,
        bees: standing.bees.map(|range| range.map(|bees| rounded(bees / 100.0, 0) * 100.0)),
        stores_kg: StoresNow { total: kg(standing.stores_kg), reachable: kg(standing.reachable_kg) },
        runs_out: seasons::runs_out(base, at),
        expect_next: *watched.expect_next,
        evidence: evidence::all(base.question.apiary, watched.watching),
        alive_fed_queenright: spring.fed.0,
        plus_minus: 2.0 * spring.fed.1,
        fates: spring.fates(&standing.ended, &ahead),
        food_body: food_body::of(base, at, standing, (watched.end, watched.looks_to)),
        reachable_kg_ahead: seasons::fortnightly(base, at, Daily::Reachable, 1),
        ended: standing.ended,
        ended_between: standing.died_hour.map(|range| range.map(day)),
        ends_ahead: ahead,
        ..ColonyNow::blank()
    }
}

/// Whether the keeper has noted it dead, and nothing living since.
fn seen_dead(visits: &[Visit]) -> bool {
    let of_sign = |sign: &Sign| match sign {
        Sign::SeenDead => Some(true),
        Sign::ClusterSeen { .. } => Some(false),
        _ => None,
    };
    let verdict = visits.iter().rev().find_map(|visit| {
        let examined = || visit.acts.iter().any(|act| matches!(act, Act::Examined(_))).then_some(true);
        visit.signs.iter().rev().find_map(of_sign).or_else(examined)
    });
    verdict.unwrap_or(false)
}

/// Why a colony is watched no more, if the keeper has closed its book.
fn closed(visits: &[Visit], seen_dead: bool) -> Option<Closed> {
    let last = visits.iter().rev().flat_map(|visit| visit.acts.iter().rev()).find_map(|act| match act {
        Act::Examined(examined) => Some(Closed::examined(examined)),
        Act::Counted(SpringCount::Sold) => Some(Some(Closed::Sold)),
        Act::Counted(SpringCount::Disaster) => Some(Some(Closed::Disaster)),
        Act::Counted(_) => Some(None),
        _ => None,
    });
    last.flatten().filter(|closed| seen_dead || !closed.needs_dead())
}

/// Why a colony is watched no more.
enum Closed {
    /// Dead, and signs of foulbrood in it.
    Foulbrood,
    /// Dead and examined, with what was likeliest.
    Examined(Message),
    /// Sold or given away.
    Sold,
    /// Taken by a disaster.
    Disaster,
}

impl Closed {
    fn fate(&self) -> Fate {
        match self {
            Self::Foulbrood => Fate::Foulbrood,
            Self::Examined(found) => Fate::Gone(say::gone_examined(found)),
            Self::Sold => Fate::Gone(say::gone_sold()),
            Self::Disaster => Fate::Gone(say::gone_disaster()),
        }
    }

    fn examined(examined: &Examined) -> Option<Self> {
        let kept = crate::lessons::KeptExamination::of(Date::ZERO, examined);
        Some(if kept.stopped { Self::Foulbrood } else { Self::Examined(kept.words) })
    }

    /// Living bees seen since open the book again.
    fn needs_dead(&self) -> bool {
        matches!(self, Self::Foulbrood | Self::Examined(_))
    }
}

/// The name of the colony it was put to, if it was.
fn united_into(base: &Base<'_>, visits: &[Visit]) -> Option<String> {
    let into = visits.iter().flat_map(|visit| &visit.acts).find_map(|act| match act {
        Act::UnitedInto(other) => Some(*other),
        _ => None,
    })?;
    let found = base.housed.iter().find(|housed| housed.colony.id == into);
    Some(found.map_or_else(|| into.0.to_string(), |housed| housed.colony.name.clone()))
}

fn ends_ahead(base: &Base<'_>, at: usize, alive: f64) -> Ends {
    let ends = &base.trajectories[at].ends;
    let mean = |cause: usize| {
        alive * ends.iter().map(|end| end.ended.by_cause()[cause].1).sum::<f64>() / ends.len().max(1) as f64
    };
    Ends::from_causes(std::array::from_fn(mean))
}
