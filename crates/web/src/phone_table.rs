//! The table a phone carries out of reach: what each sign of the round would say of every hive today.

use jiff::Timestamp;
use jiff::civil::Date;
use serde::Serialize;
use snowhum_advice::now::{ColonyNow, Ground, LookToday, NowAnswer};
use snowhum_apiary::{Entry, Sign};
use snowhum_say::Message;
use snowhum_units::{Same, Usual};
use snowhum_watch::Watching;
use uuid::Uuid;

use crate::pages::round::Question;

/// Number of the form; it rises when a key or the arithmetic changes.
pub(crate) const VERSION: u32 = 1;
const LETTERS: &[u8; 64] = b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
/// Two letters hold -ln of a chance in steps of this.
const STEP: f64 = 0.005;

/// The table of a yard.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PhoneTable {
    version: u32,
    /// The day it is for.
    on: Date,
    hives: Vec<HiveTable>,
}

/// The table of one hive.
#[derive(Debug, Clone, PartialEq, Serialize)]
struct HiveTable {
    colony: Uuid,
    name: String,
    /// When it is reckoned for.
    at: Timestamp,
    /// Outdoor air that it is reckoned for, °C.
    air_c: f64,
    /// What is first to be done there, as every page has it.
    first: Message,
    /// Dead bees of a living colony.
    expected: Option<Expected>,
    /// Chance that the colony sits tight.
    quiet: f64,
    /// Chance of each kind of hour.
    hours: Vec<f64>,
    /// Signs as they are written, and whether they hang on the hour.
    signs: Vec<(String, bool)>,
    /// Share of each group of particles; the first `living` of them live.
    masses: Vec<f64>,
    living: usize,
    /// Chances, group by group.
    chances: String,
}

/// Dead bees that a living colony shows.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub(crate) struct Expected {
    pub(crate) count: Usual,
    /// As an entry.
    pub(crate) written: String,
}

impl PhoneTable {
    /// Dead bees that a living colony in this hive shows today.
    pub(crate) fn expected(&self, colony: Uuid) -> Option<&Expected> {
        self.hives.iter().find(|hive| hive.colony == colony)?.expected.as_ref()
    }

    /// Of a yard's estimate; colonies that are gone are left out.
    pub(crate) fn of(ground: &Ground<'_>, watchings: &[Watching], (now, colonies): (&NowAnswer, &[Uuid])) -> Self {
        let asked = asked();
        let signs: Vec<Sign> = asked.iter().map(|(_, sign)| sign.clone()).collect();
        let written = |sign: &Sign| {
            let found = asked.iter().find(|(_, other)| other == sign);
            found.map_or_else(|| Entry::Sign(sign.clone()).written(&|_| String::new()), |(written, _)| written.clone())
        };
        let looks = ground.looks_today(watchings, &signs);
        let hives = looks.iter().zip(&now.colonies).zip(colonies).filter(|((_, colony), _)| !colony.is_gone());
        let of_hive = |((look, colony), id): ((&LookToday, &ColonyNow), &Uuid)| {
            let table = &look.table;
            HiveTable {
                expected: look.usual.as_ref().map(|(count, sign)| Expected { count: *count, written: written(sign) }),
                colony: *id,
                name: colony.name.clone(),
                at: look.at,
                air_c: (10.0 * table.air_c).round() / 10.0,
                first: colony.about.clone(),
                quiet: table.quiet,
                hours: table.hours.to_vec(),
                signs: table.columns.iter().map(|column| (written(&column.sign), column.hangs)).collect(),
                masses: table.groups.iter().map(|group| group.mass).collect(),
                living: table.groups.iter().filter(|group| group.alive).count(),
                chances: table.groups.iter().flat_map(|group| &group.chances).map(|chance| letters(*chance)).collect(),
            }
        };
        Self { version: VERSION, on: now.as_of, hives: hives.map(of_hive).collect() }
    }
}

/// Every sign that the round asks for by taps, as it is written and as it is read. Dead bees lie on snow where nothing else
/// is said, or on the ground.
fn asked() -> Vec<(String, Sign)> {
    let answers = Question::all().into_iter().flat_map(|question| question.answers(false));
    let both = answers.flat_map(|(_, written)| match written.starts_with("dead=") {
        true => vec![written.clone(), format!("{written} on ground")],
        false => vec![written],
    });
    let read = both.filter_map(|written| match Entry::read(&written, &|_| None) {
        Ok(Entry::Sign(sign)) => Some((written, sign)),
        _ => None,
    });
    read.collect()
}

fn letters(chance: f64) -> String {
    let steps = (-chance.max(1e-9).same_ln() / STEP).round().clamp(0.0, 4_095.0) as usize;
    [LETTERS[steps / 64], LETTERS[steps % 64]].map(char::from).iter().collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn two_letters_hold_a_chance_to_a_quarter_of_a_hundredth() {
        for chance in [1.0, 0.83, 0.2, 1e-3, 2e-9] {
            let [high, low] = [0, 1].map(|at| letters(chance).as_bytes()[at]);
            let place = |letter: u8| LETTERS.iter().position(|one| *one == letter).unwrap_or(64) as f64;
            let read = (-STEP * (64.0 * place(high) + place(low))).exp();
            assert!((read / chance - 1.0).abs() < 0.003, "{chance} read as {read}");
        }
    }

    #[test]
    fn every_answer_of_the_round_with_a_law_is_asked_for_once() {
        let asked = asked();
        assert!(asked.len() > 30 && asked.iter().any(|(written, _)| written == "dead=6-20 on ground"));
        for (at, (written, sign)) in asked.iter().enumerate() {
            assert!(asked[..at].iter().all(|(_, other)| other != sign), "{written} twice");
        }
    }
}
