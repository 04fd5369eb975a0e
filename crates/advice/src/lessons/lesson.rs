//! One colony's winter in one line: what was the first sign, when it could have been known, what to do next autumn.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_apiary::{Apiary, Colony, Examined, Mites};

use super::lines::Parameters;
use super::outcome::{Fate, Outcome};
use super::season::{Diary, Season};
use super::trouble::{self, Trouble};
use crate::deadout::kept::{cause_words, is_stopped};
use crate::words::day;

/// What a colony's winter teaches, as far as the records carry it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ColonyLesson {
    /// The keeper's name for it.
    pub colony: String,
    /// What became of it.
    pub fate: Fate,
    /// The day that was noted.
    pub on: Option<Date>,
    /// The last day it showed life beyond doubt.
    pub last_life: Option<Date>,
    /// The examination of the dead hive.
    pub examined: Option<KeptExamination>,
    /// What spoke first, and when it was known or could have been.
    pub first: Option<Trouble>,
    /// What to do next autumn.
    pub next: Option<String>,
    /// All of it in one line.
    pub line: String,
}

/// An examination as kept.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct KeptExamination {
    /// The day.
    pub on: Date,
    /// Whether signs of foulbrood stopped it.
    pub stopped: bool,
    /// The likeliest cause, by its short name.
    pub cause: Option<String>,
    /// Of 100 hives that looked like this.
    pub of_100: Option<u8>,
    /// In words.
    pub words: String,
}

impl KeptExamination {
    /// From the records.
    #[must_use]
    pub fn of(on: Date, examined: &Examined) -> Self {
        let stopped = is_stopped(examined).unwrap_or(false);
        let likeliest = examined.likeliest.as_ref();
        let words = match likeliest {
            _ if stopped => "signs of foulbrood: move nothing, tell the bee inspector or the authority".to_owned(),
            Some(one) => format!("likeliest {}, {} of 100 such hives", cause_words(&one.cause), one.of_100),
            None => "no cause was kept".to_owned(),
        };
        Self {
            on,
            stopped,
            cause: likeliest.filter(|_| !stopped).map(|one| one.cause.clone()),
            of_100: likeliest.filter(|_| !stopped).map(|one| one.of_100),
            words,
        }
    }
}

pub(super) fn lesson(
    apiary: &Apiary,
    colony: &Colony,
    (diary, season): (&Diary<'_>, &Season),
    outcome: &Outcome,
    lines: &Parameters,
) -> ColonyLesson {
    let examined = outcome.examined.as_ref().map(|(on, examined)| KeptExamination::of(*on, examined));
    let examined = examined.filter(|_| outcome.fate == Fate::Dead);
    let cause = examined.as_ref().and_then(|examined| examined.cause.clone());
    let troubles = trouble::all(apiary, colony, (diary, season), lines);
    let is_stopped = examined.as_ref().is_some_and(|examined| examined.stopped);
    let first = if is_stopped { None } else { first(&troubles, cause.as_deref(), outcome.fate) };
    let points_to = cause.or_else(|| first.as_ref()?.points_to.first().cloned());
    let is_counted = season.is_counted(apiary);
    let next = match outcome.fate {
        Fate::Dead if is_stopped => Some("the authority's word first".to_owned()),
        Fate::Dead | Fate::Weak | Fate::QueenFailed => {
            let of_fate = if outcome.fate == Fate::QueenFailed { Some("queen".to_owned()) } else { points_to };
            of_fate.and_then(|cause| next_autumn(&cause, apiary))
        }
        Fate::Alive if is_counted => count_in_spring(colony, lines),
        _ => None,
    };
    let mut lesson = ColonyLesson {
        colony: colony.name.clone(),
        fate: outcome.fate,
        on: outcome.on,
        last_life: outcome.last_life,
        examined,
        first,
        next,
        line: String::new(),
    };
    lesson.line = line(&lesson);
    lesson
}

/// The earliest trouble that fits the cause, where one is known; of a colony that lived well none is told.
fn first(troubles: &[Trouble], cause: Option<&str>, fate: Fate) -> Option<Trouble> {
    let fits = |trouble: &&Trouble| match (cause, fate) {
        (Some(cause), _) => trouble.points_to.iter().any(|one| one == cause),
        (None, Fate::QueenFailed) => trouble.points_to.iter().any(|one| one == "queen"),
        (None, Fate::Weak) => trouble.points_to.iter().any(|one| ["small", "queen", "mites"].contains(&one.as_str())),
        (None, Fate::Dead) => true,
        _ => false,
    };
    troubles.iter().find(fits).cloned()
}

/// What the next autumn begins with, by the cause; none where nothing follows from it.
pub(super) fn next_autumn(cause: &str, apiary: &Apiary) -> Option<String> {
    let is_north = apiary.site.latitude.get() >= 0.0;
    let (early, late) = if is_north { ("August", "September") } else { ("February", "March") };
    Some(match cause {
        "mites" => format!("mites first: count early in {early}, and treat before the winter bees are reared"),
        "starved" => format!("weigh in {late} and feed up to the plan's mark"),
        "isolation" => "bring food against the bees before the hard frost, and winter them on fewer combs".to_owned(),
        "queen" => format!("requeen by {early}, or unite in {late} if the bees are healthy"),
        "small" => format!("if it is healthy but small, unite it with a strong one in {late}, not in winter"),
        "damp" => "dress the lid: warm above the bees first, and a way out for water".to_owned(),
        "dysentery" => "winter on sugar rather than dark honey, and send a sample of bees in spring".to_owned(),
        "mice" => "guards on before the nights freeze, with nobody inside".to_owned(),
        "robbed" => "a narrow entrance while feeding, the weakest first".to_owned(),
        "poison" => "ask the authority what was sprayed near, and keep a frozen sample".to_owned(),
        _ => return None,
    })
}

/// Living is no proof of few mites.
fn count_in_spring(colony: &Colony, lines: &Parameters) -> Option<String> {
    match colony.mites {
        Mites::NotCounted => {
            Some("its mites were never counted, and living proves nothing of them: count in spring".to_owned())
        }
        Mites::Counted { found, bees, on } if 100.0 * f64::from(found) >= lines.mite_line.value * f64::from(bees) => {
            Some(format!(
                "it lived with {found} mites in {bees} bees on {}: count in spring, they are not gone",
                day(on)
            ))
        }
        Mites::Counted { .. } => None,
    }
}

fn line(lesson: &ColonyLesson) -> String {
    let mut parts = vec![match (lesson.fate, lesson.on, lesson.last_life) {
        (Fate::NotTold, _, Some(seen)) => format!("not told yet; last seen living on {}", day(seen)),
        (Fate::NotTold, ..) => "not told yet".to_owned(),
        (fate, Some(on), _) => format!("{}, noted on {}", fate.words(), day(on)),
        (fate, None, _) => fate.words().to_owned(),
    }];
    match &lesson.examined {
        Some(examined) => parts.push(examined.words.clone()),
        None if lesson.fate == Fate::Dead => parts.push("not examined".to_owned()),
        None => {}
    }
    if let Some(first) = &lesson.first {
        parts.push(format!("first sign: {}, {}", first.what, day(first.on)));
    }
    if let Some(next) = &lesson.next {
        let when = if lesson.fate == Fate::Alive { "now" } else { "next autumn" };
        parts.push(format!("{when}: {next}"));
    }
    parts.join("; ")
}
