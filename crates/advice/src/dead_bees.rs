//! Is this many dead bees normal?

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_apiary::DeadPlace;
use snowhum_draws::{Key, normal_quantile};
use snowhum_units::{Against, Range, Usual};
use snowhum_watch::{DeadBeesSeen, Ledger};
use snowhum_winter::{Parameters, resting_bee_hazard};

use crate::answer::{DateRange, MonthRange, MonthUsual};
use crate::statistics::{quantile, rounded};
use crate::words::season_month;

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
    pub lie: String,
    /// Whether it is worth a worry, in words.
    pub worry: String,
    /// What to do next.
    pub next: String,
    /// Deaths a day that are normal for a colony of this size at this time.
    pub deaths_per_day: Range<f64>,
    /// Where it comes from.
    pub sources: Vec<String>,
}

/// What is usual, as it is said everywhere.
#[must_use]
pub fn usual_words(usual: &Usual) -> String {
    format!("{} are usual, 9 looks in 10", usual.words())
}

/// Where its dead are, in one sentence without a capital or a stop.
#[must_use]
pub fn ledger_words(ledger: &Ledger) -> String {
    let about = |bees: f64| match bees {
        bees if bees < 20.0 => rounded(bees, 0),
        bees if bees < 200.0 => rounded(bees / 10.0, 0) * 10.0,
        bees => rounded(bees / 100.0, 0) * 100.0,
    };
    let places = [
        (ledger.floor, "on its floor"),
        (ledger.before, "before the hive"),
        (ledger.snow, "there under snow"),
        (ledger.flown, "flown off or carried away"),
        (ledger.taken, "taken by birds and mice"),
    ];
    let told: Vec<String> = places
        .into_iter()
        .filter(|(bees, _)| *bees >= 1.0)
        .map(|(bees, place)| format!("{:.0} {place}", about(bees)))
        .collect();
    let all = about(ledger.had + ledger.died);
    if told.is_empty() {
        "hardly any have died".to_owned()
    } else {
        format!("of some {all:.0} dead about {}", told.join(", "))
    }
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
        worry: worry(verdict, question.found, usual).to_owned(),
        next: next(verdict).to_owned(),
        deaths_per_day: range(&daily),
        sources: vec![
            "lives of winter bees: Minaud 2024 review (130 days), Fukuda and Sekiguchi 1966 (154 days)".to_owned(),
            "how the dead lie and are found, as the watch has it: data/watch_parameters.toml, judgement".to_owned(),
        ],
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

fn worry(verdict: Against, found: u32, usual: Usual) -> &'static str {
    match verdict {
        Against::Fewer => {
            "Few dead bees are no bad sign: in cold weather they stay inside, and a small colony loses few."
        }
        Against::Expected => "Normal. A colony of winter bees loses some every day; that is how it gets to spring.",
        Against::More if found > usual.most.saturating_mul(4) => {
            "Far more than a winter's day-to-day loss. After a first mild day this can still be house-cleaning."
        }
        Against::More => {
            "More than usual. After a mild day bees carry out weeks of dead at once: that is a sign of life."
        }
    }
}

fn next(verdict: Against) -> &'static str {
    match verdict {
        Against::More => {
            "Clear the entrance. Look for crumpled wings, brown streaks on the hive, shrew-bitten bees; note it and count again."
        }
        Against::Fewer => {
            "Nothing to do. If neighbours show many and this hive no sign of any kind, listen at it on a calm day."
        }
        Against::Expected => "Keep the entrance clear of them, and note the count.",
    }
}
