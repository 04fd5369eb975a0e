//! When a keeper is told unasked.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_say::{Message, now as say};

use super::answer::{ColonyNow, NowAnswer};
use crate::verdict::answer::Urgency;

/// What a keeper was told, and when.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Alert {
    /// The day.
    pub on: Date,
    /// Every colony's word at that time.
    pub words: Vec<(String, Urgency)>,
    /// Whether any of them called for the keeper.
    pub called: bool,
    /// What was said.
    pub says: Message,
}

/// Days between two alerts of a yard in which no word has changed.
const A_WEEK: i64 = 7;

/// What to tell the keeper today: nothing if no colony calls and none did the last time, nothing within a week of the last
/// time unless a colony's word has changed since.
#[must_use]
pub fn alert(now: &NowAnswer, last: Option<&Alert>) -> Option<Alert> {
    let words: Vec<(String, Urgency)> = now.colonies.iter().map(|one| (one.name.clone(), one.verdict.word)).collect();
    let calling: Vec<&ColonyNow> = now.colonies.iter().filter(|colony| colony.verdict.is_urgent()).collect();
    if let Some(last) = last {
        let days = now.as_of.duration_since(last.on).as_hours() / 24;
        if last.words == words && days < A_WEEK {
            return None;
        }
    }
    if calling.is_empty() && !last.is_some_and(|last| last.called) {
        return None;
    }
    let says = match calling.as_slice() {
        [] => say::alert_nothing(),
        some => Message::sentences(some.iter().map(|colony| say::alert_hive(&colony.about, &colony.name))),
    };
    Some(Alert { on: now.as_of, words, called: !calling.is_empty(), says })
}
