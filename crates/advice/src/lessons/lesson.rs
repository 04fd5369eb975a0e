//! One colony's winter in one line: what was the first sign, when it could have been known, what to do next autumn.

use jiff::civil::{Date, date};
use serde::{Deserialize, Serialize};
use snowhum_apiary::{Apiary, Colony, Examined, Mites};
use snowhum_say::{Message, lessons as say};

use super::lines::Parameters;
use super::outcome::{Fate, Outcome};
use super::season::{Diary, Season};
use super::trouble::{self, Trouble};
use crate::deadout::kept::{cause_words, is_stopped};

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
    pub next: Option<Message>,
    /// All of it in one line.
    pub line: Message,
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
    pub words: Message,
}

impl KeptExamination {
    /// From the records.
    #[must_use]
    pub fn of(on: Date, examined: &Examined) -> Self {
        let stopped = is_stopped(examined).unwrap_or(false);
        let likeliest = examined.likeliest.as_ref();
        let words = match likeliest {
            _ if stopped => say::kept_foulbrood(),
            Some(one) => say::kept_likeliest(cause_words(&one.cause), one.of_100),
            None => say::kept_no_cause(),
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
        Fate::Dead if is_stopped => Some(say::next_foulbrood()),
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
        line: Message::NONE,
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

/// A year for months that are named without one.
const YEAR: i16 = 2000;

/// What the next autumn begins with, by the cause; none where nothing follows from it.
pub(super) fn next_autumn(cause: &str, apiary: &Apiary) -> Option<Message> {
    let is_north = apiary.site.latitude.get() >= 0.0;
    let (early, late) = if is_north { (8, 9) } else { (2, 3) };
    let (early, late) = (date(YEAR, early, 1), date(YEAR, late, 1));
    Some(match cause {
        "mites" => say::next_mites(early),
        "starved" => say::next_starved(late),
        "isolation" => say::next_isolation(),
        "queen" => say::next_queen(early, late),
        "small" => say::next_small(late),
        "damp" => say::next_damp(),
        "dysentery" => say::next_dysentery(),
        "mice" => say::next_mice(),
        "robbed" => say::next_robbed(),
        "poison" => say::next_poison(),
        _ => return None,
    })
}

/// Living is no proof of few mites.
fn count_in_spring(colony: &Colony, lines: &Parameters) -> Option<Message> {
    match colony.mites {
        Mites::NotCounted => Some(say::next_never_counted()),
        Mites::Counted { found, bees, on } if 100.0 * f64::from(found) >= lines.mite_line.value * f64::from(bees) => {
            Some(say::next_lived_with(bees, found, on))
        }
        Mites::Counted { .. } => None,
    }
}

fn line(lesson: &ColonyLesson) -> Message {
    let mut parts = vec![match (lesson.fate, lesson.on, lesson.last_life) {
        (Fate::NotTold, _, Some(seen)) => say::not_told_seen(seen),
        (Fate::NotTold, ..) | (_, None, _) => lesson.fate.words(),
        (fate, Some(on), _) => say::noted(fate.words(), on),
    }];
    match &lesson.examined {
        Some(examined) => parts.push(examined.words.clone()),
        None if lesson.fate == Fate::Dead => parts.push(say::not_examined()),
        None => {}
    }
    parts.extend(lesson.first.as_ref().map(|first| say::first_sign(first.on, &first.what)));
    let when = |next: &Message| if lesson.fate == Fate::Alive { say::now(next) } else { say::next_autumn(next) };
    parts.extend(lesson.next.as_ref().map(when));
    say::line(parts)
}
