//! A dead hive examined: foulbrood first, then the likeliest causes, where to look next, what can be used again.

mod answer;
pub(crate) mod context;
mod factor;
pub(crate) mod kept;
mod look;
pub mod net;
mod reuse;
mod tables;
mod words;

pub use answer::{After, CauseChance, DeadoutAnswer, FromRecords, LookNext, Reuse, Seen, SeenSign, Stop, ToldSign};
pub use context::{from_records, last_life};
pub use kept::{cause_words, is_stopped, kept_signs, to_keep};

use snowhum_draws::Key;
use snowhum_say::{Message, deadout as say};

use crate::cautions::Hazard;
use crate::statistics::{quantile, rounded};
use crate::sums::{SumFault, same_name};
use net::{Evidence, Net};
use tables::{CAUSE, Tables, said};

/// Name and number of the answer's form; the number rises when a key changes.
pub const DEADOUT_SCHEMA: &str = "snowhum.deadout/1";

/// Redrawn tables behind each range.
const DRAWS: u32 = 1_000;

/// A question to the keeper.
#[derive(Debug, Clone, PartialEq)]
pub struct Question {
    /// The sign's name.
    pub name: String,
    /// What to ask of the hive.
    pub ask: Message,
    /// Whether it is one of foulbrood.
    pub stops: bool,
}

/// Every question, foulbrood first.
///
/// # Errors
/// When the shipped table cannot be read.
pub fn questions() -> Result<Vec<Question>, SumFault> {
    let tables = Tables::shipped()?;
    let stops = tables.stop.sign.into_iter().map(|sign| (sign.name, true));
    let others = tables.sign.into_iter().map(|sign| (sign.name, false));
    Ok(stops.chain(others).map(|(name, stops)| Question { ask: said(&name), name, stops }).collect())
}

/// Examines a dead hive by its signs; a sign named twice counts as told last. A sign that is not told is taken from
/// the records, if these answer it.
///
/// # Errors
/// When a sign is not known, or the signs contradict each other so far that no cause is left.
pub fn deadout(signs: &[SeenSign], records: &[FromRecords], seed: u64) -> Result<DeadoutAnswer, SumFault> {
    let tables = Tables::shipped()?;
    let mut told = understood(signs, &tables)?;
    let seen_of = |name: &str| told.iter().find(|sign| sign.sign == name).map_or(Seen::Unseen, |sign| sign.seen);
    let alarms: Vec<String> =
        tables.stop.sign.iter().filter(|sign| seen_of(&sign.name).is_yes()).map(|sign| sign.name.clone()).collect();
    if !alarms.is_empty() {
        return Ok(stopped(alarms, told));
    }
    let unseen_brood = tables.stop.sign.iter().any(|sign| seen_of(&sign.name) == Seen::Unseen);
    let taken = taken(&mut told, records, &tables);
    let net = tables.net()?;
    let evidence = evidence(&told, &net, &tables);
    let causes = causes(&net, &evidence, &tables, seed)?;
    Ok(DeadoutAnswer {
        schema: DEADOUT_SCHEMA.to_owned(),
        stop: None,
        brood_first: unseen_brood.then(say::stop_first),
        look_next: look::next(&net, &evidence, &causes, &told, &tables),
        reuse: reuse::of(&causes, &told, unseen_brood, &tables),
        say: words::of(&causes, &told, unseen_brood, &tables),
        cautions: words::cautions(unseen_brood),
        after: tables.after(),
        causes,
        signs: told,
        from_records: taken,
        sources: vec![say::sources_signs(), say::sources_counts()],
    })
}

/// Adds what the records answer to what was told; gives what was added. What the keeper has looked at stands.
fn taken(told: &mut Vec<ToldSign>, records: &[FromRecords], tables: &Tables) -> Vec<FromRecords> {
    let mut taken = Vec::new();
    for record in records {
        let is_told = told.iter().any(|sign| sign.sign == record.sign && sign.seen != Seen::Unseen);
        if is_told || !tables.sign.iter().any(|sign| sign.name == record.sign) {
            continue;
        }
        told.retain(|sign| sign.sign != record.sign);
        told.push(ToldSign { sign: record.sign.clone(), seen: record.seen });
        taken.push(record.clone());
    }
    taken
}

fn understood(signs: &[SeenSign], tables: &Tables) -> Result<Vec<ToldSign>, SumFault> {
    let mut told: Vec<ToldSign> = Vec::new();
    for sign in signs {
        let Some(name) = tables.names().find(|name| same_name(name, &sign.name)) else {
            let known: Vec<&str> = tables.names().collect();
            return Err(SumFault::Unknown {
                what: snowhum_say::sums::sign(),
                name: sign.name.clone(),
                known: known.join(", "),
            });
        };
        told.retain(|other| other.sign != *name);
        told.push(ToldSign { sign: name.to_owned(), seen: sign.seen });
    }
    Ok(told)
}

/// Signs as likelihoods of no and yes.
fn evidence(told: &[ToldSign], net: &Net, tables: &Tables) -> Vec<Evidence> {
    let likelihood = |seen: Seen| match seen {
        Seen::Yes => Some(vec![1.0, tables.sure.value]),
        Seen::FairlyYes => Some(vec![1.0, tables.fairly_sure.value]),
        Seen::No => Some(vec![tables.sure.value, 1.0]),
        Seen::FairlyNo => Some(vec![tables.fairly_sure.value, 1.0]),
        Seen::Unseen => None,
    };
    let one = |sign: &ToldSign| Some(Evidence { variable: net.place(&sign.sign)?, likelihood: likelihood(sign.seen)? });
    told.iter().filter_map(one).collect()
}

fn causes(net: &Net, evidence: &[Evidence], tables: &Tables, seed: u64) -> Result<Vec<CauseChance>, SumFault> {
    let nothing = || SumFault::Contradiction(say::contradiction());
    let chances = net.chances(CAUSE, evidence).ok_or_else(nothing)?;
    let key = Key::new(seed, 0xDEAD_0001);
    let redrawn = |draw: u32| net.redrawn(key, draw, tables.equivalent_size.value).chances(CAUSE, evidence);
    let draws: Vec<Vec<f64>> = (0..DRAWS).filter_map(redrawn).collect();
    let capped = |chance: f64| rounded(chance.min(tables.highest.value), 3);
    let one = |(at, cause): (usize, &tables::Cause)| {
        let spread: Vec<f64> = draws.iter().map(|draw| draw[at]).collect();
        // The point can lie outside the range of redrawn tables where it is near none or all.
        CauseChance {
            cause: cause.name.clone(),
            words: said(&cause.name),
            p: capped(chances[at]),
            low: capped(quantile(&spread, 0.05).min(chances[at])),
            high: capped(quantile(&spread, 0.95).max(chances[at])),
        }
    };
    let mut causes: Vec<CauseChance> = tables.cause.iter().enumerate().map(one).collect();
    causes.sort_by(|a, b| b.p.total_cmp(&a.p));
    Ok(causes)
}

fn stopped(signs: Vec<String>, told: Vec<ToldSign>) -> DeadoutAnswer {
    DeadoutAnswer {
        schema: DEADOUT_SCHEMA.to_owned(),
        reuse: reuse::nothing(&signs),
        stop: Some(Stop { signs, why: say::stop_why(), r#do: say::stop_do() }),
        brood_first: None,
        causes: Vec::new(),
        look_next: None,
        say: Vec::new(),
        cautions: Hazard::each(&[Hazard::Antibiotics]),
        from_records: Vec::new(),
        after: Vec::new(),
        signs: told,
        sources: vec![say::sources_foulbrood()],
    }
}
