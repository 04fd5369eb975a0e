//! Is this many dead bees normal?

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_apiary::DeadPlace;
use snowhum_draws::{Key, normal_quantile};
use snowhum_say::{Message, dead_bees as say};
use snowhum_units::{Against, Range, Usual};
use snowhum_watch::{DeadBeesSeen, Ledger};
use snowhum_winter::{Parameters, resting_bee_hazard};

use crate::answer::{DateRange, MonthRange, MonthUsual};
use crate::seasons::season_month;
use crate::statistics::{quantile, rounded};

/// A beginner's question.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DeadBeesQuestion {
    /// Dead bees counted outside and on the landing board.
    pub found: u32,
    /// Days since the last look, or since snow last covered the old ones.
    pub days: f64,
    /// Bees of the colony, if known.
    pub bees: Option<f64>,
    /// Month of the year, 1 to 12, in the northern hemisphere's seasons.
    pub month: i8,
    /// Whether they lie on snow, where every one is seen.
    pub ground: Ground,
}

/// What the dead lie on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Ground {
    /// Snow.
    Snow,
    /// Grass, soil, leaves.
    Bare,
}

/// The answer.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct DeadBeesAnswer {
    /// Dead bees to expect where a keeper would count them.
    pub expected: Usual,
    /// Counted.
    pub found: u32,
    /// Against what is expected.
    pub verdict: Against,
    /// Where the dead are.
    pub lie: Message,
    /// Whether it is worth a worry.
    pub worry: Message,
    /// What to do next.
    pub next: Message,
    /// Deaths a day that are normal for a colony of this size at this time.
    pub deaths_per_day: Range<f64>,
    /// Where it comes from.
    pub sources: Vec<Message>,
}

/// What is usual, as it is said everywhere.
#[must_use]
pub fn usual_words(usual: &Usual) -> Message {
    if usual.least == usual.most { say::usual_one(usual.most) } else { say::usual(usual.least, usual.most) }
}

/// Where its dead are, without a capital or a stop.
#[must_use]
pub fn ledger_words(ledger: &Ledger) -> Message {
    let about = |bees: f64| match bees {
        bees if bees < 20.0 => rounded(bees, 0),
        bees if bees < 200.0 => rounded(bees / 10.0, 0) * 10.0,
        bees => rounded(bees / 100.0, 0) * 100.0,
    };
    let places = [
        (ledger.floor, say::floor(about(ledger.floor))),
        (ledger.before, say::before(about(ledger.before))),
        (ledger.snow, say::snow(about(ledger.snow))),
        (ledger.flown, say::flown(about(ledger.flown))),
        (ledger.taken, say::taken(about(ledger.taken))),
    ];
    let told = places.into_iter().filter(|(bees, _)| *bees >= 1.0).map(|(_, place)| place);
    let told: Vec<Message> = told.collect();
    if told.is_empty() { say::hardly_any() } else { say::lie(about(ledger.had + ledger.died), told) }
}

/// Bees of a wintering colony nobody counted (practice: 5,000 in a nucleus to 20,000).
const UNKNOWN_BEES: Range<f64> = Range { p10: 6_000.0, p50: 12_000.0, p90: 20_000.0 };
const DRAWS: u32 = 2_000;

/// What a living colony shows, where its dead are, and how many die a day.
#[derive(Debug, Clone)]
struct Expected {
    usual: Usual,
    ledger: Ledger,
    daily: Vec<f64>,
}

/// Answers from the model's own hazards and the watch's own law of counting, with every unknown drawn from its range.
#[must_use]
pub fn dead_bees(question: &DeadBeesQuestion, p: &Parameters, signs: &snowhum_watch::Parameters) -> DeadBeesAnswer {
    let Expected { usual, ledger, daily } = expected(question, p, signs);
    let range = |values: &[f64]| Range { p10: 0.1, p50: 0.5, p90: 0.9 }.map(|q| rounded(quantile(values, q), 0));
    let verdict = usual.against(question.found, Some(question.found));
    DeadBeesAnswer {
        expected: usual,
        found: question.found,
        verdict,
        lie: ledger_words(&ledger),
        worry: worry(verdict, question.found, usual),
        next: next(verdict),
        deaths_per_day: range(&daily),
        sources: vec![say::sources_lives(), say::sources_watch()],
    }
}

fn expected(question: &DeadBeesQuestion, p: &Parameters, signs: &snowhum_watch::Parameters) -> Expected {
    let key = Key::new(2, 0xDEAD);
    let bees = question.bees.map_or(UNKNOWN_BEES, |n| Range { p10: 0.85 * n, p50: n, p90: 1.15 * n });
    let place = if question.ground == Ground::Snow { DeadPlace::Snow } else { DeadPlace::Ground };
    let mut shown = Vec::with_capacity(DRAWS as usize);
    let mut daily = Vec::with_capacity(DRAWS as usize);
    for draw in 0..DRAWS {
        let [a, b, ..] = key.uniforms([draw, 0, 0, 0]).map(normal_quantile);
        let bees = bees.at(a);
        let deaths_a_day = bees * hazard(question.month, p, b);
        let seen = DeadBeesSeen { deaths_a_day, bees, days: question.days, month: question.month, place };
        shown.push(seen.made_up(signs, |at| key.uniforms([draw, 1, at, 0])));
        daily.push(deaths_a_day);
    }
    let counts: Vec<(f64, f64)> = shown.iter().map(|(count, _)| (*count, 1.0)).collect();
    let ledger = Ledger::mean(shown.iter().map(|(_, ledger)| (*ledger, 1.0)));
    Expected { usual: Usual::of(&counts).unwrap_or(Usual::NONE), ledger, daily }
}

/// Days between two looks of a plan.
const FORTNIGHT: f64 = 14.0;
/// Draws of a month of a plan.
const MONTH_DRAWS: u32 = 300;
/// Months, by the northern seasons, in which snow is taken to lie before a hive (judgement).
const SNOWY: [i8; 4] = [12, 1, 2, 3];

/// What a living colony of a plan shows a fortnight after the last look, month by month: the same law of where the dead go.
pub(crate) fn shown_by_month(
    (dead, bees): (&[MonthRange], &[DateRange]),
    latitude: f64,
    signs: &snowhum_watch::Parameters,
) -> Vec<MonthUsual> {
    let of_month = |deaths: &MonthRange| {
        let first: Date = format!("{}-01", deaths.month).parse().ok()?;
        let bees = bees.iter().rev().find(|bees| bees.date <= first).or(bees.first())?.range;
        let month = season_month(first, latitude);
        let place = if SNOWY.contains(&month) { DeadPlace::Snow } else { DeadPlace::Ground };
        let key = Key::new(3, 0xDEAD);
        let shown = |draw: u32| {
            let [a, b, ..] = key.uniforms([draw, month as u32, 0, 0]).map(normal_quantile);
            let deaths_a_day = deaths.range.at(a).max(0.0);
            let seen = DeadBeesSeen { deaths_a_day, bees: bees.at(b).max(0.0), days: FORTNIGHT, month, place };
            (seen.made_up(signs, |at| key.uniforms([draw, month as u32, at, 1])).0, 1.0)
        };
        let counts: Vec<(f64, f64)> = (0..MONTH_DRAWS).map(shown).collect();
        Some(MonthUsual { month: deaths.month.clone(), usual: Usual::of(&counts)? })
    };
    dead.iter().filter_map(of_month).collect()
}

/// Deaths a bee and day in the middle of a month, for a sound colony.
fn hazard(month: i8, p: &Parameters, z: f64) -> f64 {
    let day = (f64::from(month) - 0.5) * 30.4;
    let age = (day - p.winter_bee_emergence.value).rem_euclid(365.0);
    let age = if age > 250.0 { 0.0 } else { age };
    resting_bee_hazard(p, age, z)
}

fn worry(verdict: Against, found: u32, usual: Usual) -> Message {
    match verdict {
        Against::Fewer => say::few(),
        Against::Expected => say::normal(),
        Against::More if found > usual.most.saturating_mul(4) => say::far_more(),
        Against::More => say::many(),
    }
}

fn next(verdict: Against) -> Message {
    match verdict {
        Against::More => say::next_many(),
        Against::Fewer => say::next_few(),
        Against::Expected => say::next_normal(),
    }
}
