//! Spring as it is answered: plain values with units in their names.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_say::{Message, spring as say};
use snowhum_units::Range;

use crate::answer::{OpenDates, WeatherAnswer};

/// Name and number of the form; the number rises when a key changes.
pub const SPRING_SCHEMA: &str = "snowhum.spring/1";

/// The spring of a yard.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Springtime {
    /// [`SPRING_SCHEMA`].
    pub schema: String,
    /// Name of the yard.
    pub apiary: String,
    /// Whether the yard is made up.
    pub invented: bool,
    /// The day asked about.
    pub as_of: Date,
    /// What weather it stands on.
    pub weather: WeatherAnswer,
    /// The hives in the order in which to lift them.
    pub lift_first: Vec<LiftFirst>,
    /// How long the danger lasts.
    pub danger: Danger,
    /// The days on which a hive may be opened.
    pub open: OpenDays,
    /// What to look for at the first look.
    pub first_look: Vec<CheckItem>,
    /// What to feed, in order.
    pub feeding: Vec<FeedStep>,
    /// How strong each colony is.
    pub strength: Vec<Strength>,
    /// What is usual here at this date, where a figure is known.
    pub usual_strength: Option<UsualStrength>,
    /// What to do with a very weak colony; none where there is none.
    pub weak: Vec<Message>,
    /// Floor, wrap and boxes, each with its condition.
    pub hive: Vec<Step>,
}

/// A hive to lift, in its turn.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct LiftFirst {
    /// Whose.
    pub name: String,
    /// How near hunger is.
    pub hunger: Hunger,
    /// Days of food left in the leanest of ten; none where it lasts to spring.
    pub days_left: Option<i64>,
    /// Days of food left as likely as not.
    pub usual_days_left: Option<i64>,
    /// When food within reach runs out.
    pub runs_out: OpenDates,
    /// Food within reach now, if alive, kg.
    pub reachable_kg: Option<Range<f64>>,
    /// In words.
    pub says: Message,
}

/// How near hunger is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Hunger {
    /// Within weeks, in at least one of ten.
    Now,
    /// Before flowers, in at least one of ten.
    BeforeFlowers,
    /// Not before spring.
    Lasts,
}

impl Hunger {
    /// In a word or two.
    #[must_use]
    pub fn words(self) -> Message {
        match self {
            Self::Now => say::hungry(),
            Self::BeforeFlowers => say::may_run_short(),
            Self::Lasts => say::fed(),
        }
    }
}

/// How long the danger of hunger lasts.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Danger {
    /// Usual first day.
    pub from: Option<Date>,
    /// Last day, late springs included.
    pub until: Option<Date>,
    /// Colonies whose food may not last.
    pub hungry: Vec<String>,
    /// In words.
    pub says: Message,
}

/// When hives may be opened.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct OpenDays {
    /// The coming days.
    pub days: Vec<OpenDay>,
    /// The first of them likely to serve for a first look.
    pub first_for_combs: Option<Date>,
    /// In words.
    pub says: Message,
    /// Where schools differ.
    pub other_school: Message,
}

/// A coming day, by shares of the weather paths.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct OpenDay {
    /// The day.
    pub on: Date,
    /// A lid may be off for a minute.
    pub lid: f64,
    /// Combs may be lifted for a first look.
    pub first_look: f64,
    /// Every comb may be lifted.
    pub full_look: f64,
}

/// One thing to look for.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct CheckItem {
    /// What.
    pub look_for: Message,
    /// Why.
    pub why: Message,
    /// What to do if it is not so.
    pub otherwise: Message,
}

/// A food in its turn.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct FeedStep {
    /// Which.
    pub what: Message,
    /// From when, usually.
    pub from: Option<Date>,
    /// Until when, usually.
    pub until: Option<Date>,
    /// What it waits for.
    pub waits_for: Message,
    /// How, and what to mind.
    pub how: Message,
}

/// How strong a colony is.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Strength {
    /// Whose.
    pub name: String,
    /// Grown bees, if alive.
    pub bees: Range<f64>,
    /// Of its own frames covered on both faces.
    pub frames: Range<f64>,
    /// Against what is usual.
    pub word: StrengthWord,
}

/// A colony's strength against what is usual.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum StrengthWord {
    /// Below the line under which the trade writes colonies off.
    VeryWeak,
    /// Below what is usual here.
    BelowUsual,
    /// As usual here.
    Usual,
    /// Above what is usual here.
    AboveUsual,
    /// No figure is known for this place and date.
    NotKnown,
}

impl StrengthWord {
    /// In words.
    #[must_use]
    pub fn words(self) -> Message {
        match self {
            Self::VeryWeak => say::very_weak(),
            Self::BelowUsual => say::below_usual(),
            Self::Usual => say::usual(),
            Self::AboveUsual => say::above_usual(),
            Self::NotKnown => say::usual_not_known(),
        }
    }
}

/// What is usual at a place and date.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct UsualStrength {
    /// Where.
    pub region: Message,
    /// Frames of bees, from and to.
    pub frames: (f64, f64),
    /// What is said.
    pub says: Message,
    /// Who says so.
    pub source: String,
}

/// Something to do at the hive, with its condition.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Step {
    /// The window's id.
    pub id: String,
    /// What.
    pub what: Message,
    /// Usual day.
    pub usual: Option<Date>,
    /// The dates in words.
    pub when: Message,
    /// What it waits for.
    pub waits_for: Message,
    /// Why, and on what condition.
    pub why: Message,
}
