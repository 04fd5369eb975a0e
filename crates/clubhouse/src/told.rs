//! What of an answer is told: how each colony of a yard stands, and how soon the yard needs somebody.

use jiff::civil::Date;
use maud::{Markup, html};
use serde::Deserialize;
use snowhum_advice::verdict::{ColonyFirst, ColonyVerdict, FirstAnswer, Urgency};
use snowhum_club::Outlook;
use snowhum_say::Tongue;

use crate::fault::Fault;

/// The part of an answer that is told here.
#[derive(Debug, Deserialize)]
pub(crate) struct Answer {
    pub(crate) invented: bool,
    pub(crate) first: FirstAnswer,
}

/// A yard of a night with its answer, or why there is none.
#[derive(Debug)]
pub(crate) struct Told {
    pub(crate) outlook: Outlook,
    pub(crate) answer: Result<Answer, String>,
}

/// How soon a yard needs somebody.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Need {
    /// Within a week.
    First,
    /// After that.
    Then,
    /// Not at all by what is known.
    Alone,
    /// Nobody knows: there is no answer, or one for another day.
    Unknown,
}

impl Told {
    pub(crate) fn of(mut outlook: Outlook) -> Result<Self, Fault> {
        let taken = std::mem::replace(&mut outlook.answer, Ok(String::new()));
        let read = |text: String| {
            let what =
                |error| snowhum_club::Fault::Damaged { what: format!("the answer of {}: {error}", outlook.yard) };
            serde_json::from_str(&text).map_err(what)
        };
        let answer = match taken {
            Ok(text) => Ok(read(text)?),
            Err(why) => Err(why),
        };
        Ok(Self { outlook, answer })
    }

    /// How soon it needs somebody, as asked about a day. An answer for another day says nothing of this week.
    pub(crate) fn need(&self, day: Date) -> Need {
        match &self.answer {
            Ok(answer) if answer.first.as_of == day => {
                answer.first.colonies.iter().map(|colony| need(&colony.verdict)).min().unwrap_or(Need::Unknown)
            }
            _ => Need::Unknown,
        }
    }

    /// Colonies that need somebody so soon.
    pub(crate) fn needing(&self, wanted: Need) -> impl Iterator<Item = &ColonyFirst> {
        let colonies = self.answer.as_ref().map_or(&[][..], |answer| &answer.first.colonies);
        colonies.iter().filter(move |colony| need(&colony.verdict) == wanted)
    }

    /// The first last day of what those need; where they have none, none.
    pub(crate) fn by(&self, wanted: Need) -> Option<Date> {
        self.needing(wanted).filter_map(|colony| colony.verdict.by).min()
    }
}

fn need(verdict: &ColonyVerdict) -> Need {
    match verdict.word {
        _ if verdict.is_urgent() => Need::First,
        Urgency::By | Urgency::LookInside => Need::Then,
        Urgency::Today | Urgency::ThisWeek | Urgency::LeaveAlone | Urgency::Lost => Need::Alone,
    }
}

/// A verdict as a chip; its shape says it without colour.
pub(crate) fn chip(verdict: &ColonyVerdict, tongue: Tongue) -> Markup {
    let class = match need(verdict) {
        Need::First => "word act",
        Need::Then | Need::Unknown => "word watch",
        Need::Alone => "word sound",
    };
    html! { span class=(class) { (tongue.say(&verdict.words())) } }
}
