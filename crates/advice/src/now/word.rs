//! The one word for a colony, and when a keeper is told.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};

use super::{ColonyNow, NowAnswer, Thresholds};
use crate::LooksTo;
use crate::answer::ActionAnswer;
use crate::fit::VerdictKind;
use crate::queen::QueenAdvice;

/// A colony in one word.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Word {
    /// Nothing to do.
    #[serde(rename = "sound")]
    Sound,
    /// Keep an eye on it.
    #[serde(rename = "watch")]
    Watch,
    /// Something is worth doing now.
    #[serde(rename = "act first")]
    Act,
    /// Dead and examined, sold, or taken: watched no more.
    #[serde(rename = "closed")]
    Closed,
}

impl Word {
    /// As written.
    #[must_use]
    pub fn written(self) -> &'static str {
        match self {
            Self::Sound => "sound",
            Self::Watch => "watch",
            Self::Act => "act first",
            Self::Closed => "closed",
        }
    }
}

/// What a word is chosen by.
pub(super) struct Grounds<'a> {
    pub(super) today: Date,
    pub(super) alive: f64,
    pub(super) alive_queenright: f64,
    pub(super) alive_fed_queenright: f64,
    pub(super) seen_dead: bool,
    pub(super) united_into: Option<&'a str>,
    pub(super) closed: Option<&'a Closed>,
    /// Why its bees cannot stay shut in.
    pub(super) shut: Option<&'a str>,
    pub(super) queen: Option<&'a QueenAdvice>,
    pub(super) actions: &'a [ActionAnswer],
    pub(super) hungry: bool,
    pub(super) beside: &'a [String],
    pub(super) thresholds: &'a Thresholds,
    pub(super) looks_to: LooksTo,
}

/// Why a colony is watched no more.
pub(super) enum Closed {
    /// Dead, and signs of foulbrood in it.
    Foulbrood,
    /// Dead and examined, with what was likeliest.
    Examined(String),
    /// Sold or given away.
    Sold,
    /// Taken by a disaster.
    Disaster,
}

impl Closed {
    fn word(&self) -> (Word, String) {
        match self {
            Self::Foulbrood => {
                let words = "dead, with signs of foulbrood: shut, nothing moved, the bee inspector or authority told";
                (Word::Act, words.to_owned())
            }
            Self::Examined(words) => (Word::Closed, format!("dead and examined: {words}")),
            Self::Sold => (Word::Closed, "sold: watched no more".to_owned()),
            Self::Disaster => (Word::Closed, "taken by a disaster: watched no more".to_owned()),
        }
    }
}

/// The word and what it is about.
pub(super) fn word(grounds: &Grounds<'_>) -> (Word, String) {
    if let Some(other) = grounds.united_into {
        return (Word::Sound, format!("put to {other}: this hive is empty"));
    }
    if let Some(closed) = grounds.closed {
        return closed.word();
    }
    if grounds.seen_dead {
        return (Word::Act, "seen dead: close it against robbers and mice, look for the cause".to_owned());
    }
    if let Some(why) = grounds.shut {
        return (Word::Act, format!("open it now: {why}"));
    }
    if let Some(advice) = grounds.queen {
        let later = matches!(advice.kind, VerdictKind::LookAgain | VerdictKind::Wait);
        let word = if later { Word::Watch } else { Word::Act };
        return (word, format!("{}: {}", advice.trouble.words(), advice.says));
    }
    let t = grounds.thresholds;
    let due = grounds.actions.iter().find(|action| is_due(action, grounds.today, t));
    if let Some(action) = due {
        let does = format!("{}; last day {}", action.what, crate::words::day(action.by));
        let unsure = !action.pays() && grounds.alive < t.alive_sound.value;
        return (Word::Act, if unsure { format!("listen first; if you hear them, {does}") } else { does });
    }
    quiet(grounds)
}

/// The word where nothing is due.
fn quiet(grounds: &Grounds<'_>) -> (Word, String) {
    let (t, is_winter) = (grounds.thresholds, grounds.looks_to == LooksTo::Spring);
    let about = if grounds.alive < t.alive_sound.value {
        "in doubt: too many like it are dead by now, or signs speak against it"
    } else if grounds.alive_queenright < t.queen_sound.value * grounds.alive {
        "the queen is in doubt"
    } else if grounds.hungry && is_winter {
        "food may run short before the first flow"
    } else if grounds.hungry {
        "food may run short unless flowers give some"
    } else if grounds.alive_fed_queenright < t.fed_sound.value && is_winter {
        "spring is open: fewer than three in four like it come through fed and with a queen"
    } else if grounds.alive_fed_queenright < t.fed_sound.value {
        "open: without a flow fewer than three in four like it stay fed and with a queen"
    } else if !grounds.beside.is_empty() {
        "sound by the sums, which do not hold all"
    } else if grounds.actions.iter().any(ActionAnswer::helps) {
        return (Word::Sound, "nothing presses".to_owned());
    } else {
        return (Word::Sound, "nothing to do".to_owned());
    };
    (Word::Watch, about.to_owned())
}

fn is_due(action: &ActionAnswer, today: Date, t: &Thresholds) -> bool {
    let days = action.by.duration_since(today).as_hours() / 24;
    let due = days as f64 <= t.due_within.value;
    let least = if due { t.worth_acting.value } else { t.worth_acting_anyway.value };
    action.worth_hives_in_100 >= least && action.helps() && (due || (action.pays() && !action.too_close_to_call))
}

/// What a keeper was told, and when.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Alert {
    /// The day.
    pub on: Date,
    /// Every colony's word at that time.
    pub words: Vec<(String, Word)>,
    /// What was said.
    pub says: String,
}

/// Days between two alerts of a yard in which no word has changed.
const A_WEEK: i64 = 7;

/// What to tell the keeper today: nothing if no colony calls and none did the last time, nothing within a week of the last
/// time unless a colony's word has changed since.
#[must_use]
pub fn alert(now: &NowAnswer, last: Option<&Alert>) -> Option<Alert> {
    let words: Vec<(String, Word)> = now.colonies.iter().map(|colony| (colony.name.clone(), colony.word)).collect();
    let calling: Vec<&ColonyNow> = now.colonies.iter().filter(|colony| colony.word == Word::Act).collect();
    if let Some(last) = last {
        let days = now.as_of.duration_since(last.on).as_hours() / 24;
        if last.words == words && days < A_WEEK {
            return None;
        }
    }
    let called = last.is_some_and(|last| last.words.iter().any(|(_, word)| *word == Word::Act));
    if calling.is_empty() && !called {
        return None;
    }
    let says = match calling.as_slice() {
        [] => "Nothing calls for you any more.".to_owned(),
        some => some.iter().map(|colony| format!("{}: {}.", colony.name, colony.about)).collect::<Vec<_>>().join(" "),
    };
    Some(Alert { on: now.as_of, words, says })
}
