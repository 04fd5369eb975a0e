//! The windows of a year as they are answered: plain values, the same for terminal, page, calendar and JSON.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_say::{Message, jobs as say};
use snowhum_units::Range;
use snowhum_winter::Status;

use crate::answer::WeatherAnswer;
use crate::now::next_round::NextRound;
use crate::verdict::answer::{ColonyVerdict, Step};

/// Name and number of the form; the number rises when a key changes.
pub const JOBS_SCHEMA: &str = "snowhum.jobs/1";

/// What is due at a site in a year, and when.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct JobsAnswer {
    /// [`JOBS_SCHEMA`].
    pub schema: String,
    /// Name of the yard.
    pub apiary: String,
    /// Whether the yard is made up.
    pub invented: bool,
    /// The day asked about.
    pub as_of: Date,
    /// First day of the year answered for.
    pub from: Date,
    /// What weather it stands on.
    pub weather: WeatherAnswer,
    /// The one verdict on each colony on the day asked about, who is due first first; none where that day has none.
    #[serde(default)]
    pub hives: Vec<HiveDue>,
    /// When to go and look, as the day asked about has it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub next_round: Option<NextRound>,
    /// The windows in order of their usual day.
    pub windows: Vec<JobWindow>,
    /// How many days serve for what, half-month by half-month.
    pub half_months: Vec<HalfMonth>,
    /// What to know of this answer.
    pub notes: Vec<Message>,
}

/// What is due at one hive.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct HiveDue {
    /// The keeper's name.
    pub name: String,
    /// The one verdict.
    pub verdict: ColonyVerdict,
    /// What is first, or what is known against it; no capital, no stop.
    pub says: Message,
    /// The day it stands on in a calendar: the last, or the next on which bees fly where a look waits for one; none where
    /// nothing is to be done.
    pub on: Option<Date>,
    /// What is to be done after it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub then: Vec<Step>,
}

impl HiveDue {
    /// Hive, word and what is first.
    #[must_use]
    pub fn words(&self) -> Message {
        say::hive(&self.name, &self.says, self.verdict.words())
    }
}

/// One job and when it falls due here.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct JobWindow {
    /// Name that stays, such as `honey-off`.
    pub id: String,
    /// What.
    pub what: Message,
    /// How the dates are meant.
    pub kind: Kind,
    /// One winter in ten before.
    pub earliest: Option<Date>,
    /// Half before.
    pub usual: Option<Date>,
    /// Nine in ten before; none where it never comes in some winters.
    pub latest: Option<Date>,
    /// Share of the winters in which it comes at all; none where only the dates are known.
    pub share: Option<f64>,
    /// Usual last day, of what lasts.
    pub until: Option<Date>,
    /// Where the day asked about stands to it.
    pub due: Due,
    /// The dates in words.
    pub when: Message,
    /// What it waits for.
    pub trigger: Trigger,
    /// Why then.
    pub why: Message,
    /// How others go about it.
    pub other_school: Option<Message>,
    /// A belief that costs colonies, and what is so.
    pub belief: Option<Belief>,
    /// The colonies it concerns; none for the whole yard.
    pub colonies: Vec<String>,
    /// Where it can hurt someone.
    pub caution: Option<Caution>,
}

impl JobWindow {
    /// The day that matters: of a deadline the safe one, of all else the usual one.
    #[must_use]
    pub fn day(&self) -> Option<Date> {
        match self.kind {
            Kind::By => self.earliest,
            Kind::From | Kind::About => self.usual.or(self.earliest),
        }
    }
}

/// How the dates of a window are meant.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Kind {
    /// To be done by then.
    By,
    /// Not before then.
    From,
    /// It comes about then.
    About,
}

/// Where a day stands to a window; the first comes first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Due {
    /// Its time is here.
    Now,
    /// Within a month.
    Soon,
    /// After that.
    Later,
    /// Its time is over.
    Past,
}

impl Due {
    /// In a word or two.
    #[must_use]
    pub fn words(self) -> Message {
        match self {
            Self::Now => say::due_now(),
            Self::Soon => say::due_soon(),
            Self::Later => say::due_later(),
            Self::Past => say::due_past(),
        }
    }
}

/// What a job waits for.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Trigger {
    /// In words, with the threshold.
    pub words: Message,
    /// The threshold's value, in the unit of its figure.
    pub value: f64,
    /// Its name among the figures; none where the figure stands with syrup or brood.
    pub figure: Option<String>,
    /// Who says so.
    pub source: Message,
    /// How well it is founded.
    pub status: Status,
}

/// A belief of the trade that costs colonies.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Belief {
    /// What is said.
    pub said: Message,
    /// What is so.
    pub so: Message,
}

/// Where a job can hurt someone.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Caution {
    /// Which of the cautions, by name, such as `label, acids`.
    pub about: String,
    /// What they say.
    pub says: Message,
}

/// Half a month of the year.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct HalfMonth {
    /// First day.
    pub from: Date,
    /// Last day.
    pub to: Date,
    /// Days on which bees can fly.
    pub flying_days: Range<f64>,
    /// Days on which a lid may be off for a minute.
    pub lid_days: Range<f64>,
    /// Days with an hour fit for combs.
    pub comb_days: Range<f64>,
}
