//! The present as it is answered: plain values with units in their names.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_say::Message;
use snowhum_units::{Against, Range, Usual};
use snowhum_winter::Ends;

use super::food_body::FoodBodyNow;
use super::next_round::NextRound;
use crate::answer::{ActionAnswer, DateRange, OpenDates, WeatherAnswer};
use crate::looks_to::LooksTo;
use crate::plan::answer::PlanAnswer;
use crate::queen_trouble::QueenTrouble;
use crate::verdict::answer::{ColonyVerdict, FirstAnswer};

/// Name and number of the form; the number rises when a key changes.
pub const NOW_SCHEMA: &str = "snowhum.now/2";

/// Where a yard stands.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct NowAnswer {
    /// [`NOW_SCHEMA`].
    pub schema: String,
    /// Name of the yard.
    pub apiary: String,
    /// Whether the yard is made up.
    pub invented: bool,
    /// The day asked about.
    pub as_of: Date,
    /// First flow of the site plus 14 days.
    pub spring: Date,
    /// Food within reach that a colony should have left then.
    #[serde(default)]
    pub reserve_kg: f64,
    /// How far ahead of the day asked about is looked.
    pub looks_to: LooksTo,
    /// What weather it stands on.
    pub weather: WeatherAnswer,
    /// Currency of all money.
    pub currency: String,
    /// The next day on which bees are likely to fly, within ten days.
    pub flight_day: Option<FlightDay>,
    /// Whether a lid may be lifted tomorrow.
    pub lid: LidVerdict,
    /// After a flying day: whom to open first.
    pub open_first: Vec<OpenFirst>,
    /// When to go and look, and at what.
    pub next_round: NextRound,
    /// Every colony in walking order.
    pub colonies: Vec<ColonyNow>,
    /// What a keeper is told first.
    pub first: FirstAnswer,
}

impl PlanAnswer {
    /// Takes what is told first from where the same colonies stand on the same day, so that both say one thing.
    pub fn take_first(&mut self, now: &NowAnswer) {
        if now.as_of != self.as_of || now.first.colonies.len() != self.colonies.len() {
            return;
        }
        self.first = now.first.clone();
        for (at, colony) in self.colonies.iter_mut().enumerate() {
            colony.verdict = self.first.verdict(at);
        }
    }
}

/// What comes of a colony by the end of what is looked at, if nothing is done: chances that sum to one.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize)]
pub struct Fates {
    /// Alive, fed and queenright.
    pub well: f64,
    /// Alive and queenright, with less within reach than it should have then.
    pub hungry: f64,
    /// Alive without a queen.
    pub queenless: f64,
    /// Dead by hunger, what lay out of reach counted.
    pub starved: f64,
    /// Dead of anything else.
    pub died_otherwise: f64,
}

/// Where a colony stands.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ColonyNow {
    /// The keeper's name.
    pub name: String,
    /// What the verdict is about: what is first, or what is known against it.
    pub about: Message,
    /// What no sum holds and is to be known beside it, gravest first; no capitals, no stops.
    pub beside: Vec<Message>,
    /// Chance of being alive.
    pub alive: f64,
    /// Chance of being alive with a queen.
    pub alive_queenright: f64,
    /// Whether the keeper has seen it dead.
    pub seen_dead: bool,
    /// The colony it was put to, if it was: its hive is empty.
    pub united_into: Option<String>,
    /// Whether it is watched no more: dead and examined, sold, or taken.
    #[serde(default)]
    pub is_closed: bool,
    /// What is wrong with its queen, as it was told.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub queen: Option<QueenTrouble>,
    /// Grown bees, if alive; none where a living colony is too unlikely to describe.
    pub bees: Option<Range<f64>>,
    /// Food, if alive.
    pub stores_kg: StoresNow,
    /// When food within reach runs out, if alive today.
    pub runs_out: OpenDates,
    /// Food left within reach from here to the end of what is looked at, if alive.
    pub reachable_kg_ahead: Vec<DateRange>,
    /// The candy board, slab or feeder on the hive.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub food_body: Option<FoodBodyNow>,
    /// Chance of being alive, fed and queenright at the end of what is looked at.
    pub alive_fed_queenright: f64,
    /// Two Monte Carlo standard errors of that.
    pub plus_minus: f64,
    /// What comes of it by the end of what is looked at, if nothing is done.
    #[serde(default)]
    pub fates: Fates,
    /// Chances of having ended already, by cause.
    pub ended: Ends,
    /// When it most likely ended, where that is likelier than one in a hundred.
    pub ended_between: Option<Range<Date>>,
    /// Chances of an end from here to the end of what is looked at, by cause.
    pub ends_ahead: Ends,
    /// What to expect at the next look.
    pub expect_next: Expectation,
    /// What each visit did to the estimate, latest first.
    pub evidence: Vec<Evidence>,
    /// What is most worth doing, best first.
    pub actions: Vec<ActionAnswer>,
    /// Whether looking first could change what to do.
    pub look_first: LookFirst,
    /// Said when nothing that can be done now changes much.
    pub nothing_helps: bool,
    /// The one verdict: how soon, by when, what first.
    pub verdict: ColonyVerdict,
}

impl ColonyNow {
    /// Whether nothing lives in its hive that is still watched: seen dead, put to another colony, sold or closed.
    #[must_use]
    pub fn is_gone(&self) -> bool {
        self.seen_dead || self.united_into.is_some() || self.is_closed
    }

    /// When its food runs out, in words.
    #[must_use]
    pub fn food_lasts(&self, to: LooksTo) -> Message {
        let Fates { well, hungry, starved, .. } = self.fates;
        // Who is told to feed more than one in ten is not told beside it that nine in ten are well fed.
        let short = (hungry + starved) > 0.1 * (well + hungry + starved);
        self.runs_out.run_out(to, hungry > well || self.runs_out.p10.is_none() && short)
    }

    /// Whether it was seen dead and nobody has looked yet for what ended it: until then the model's causes stand.
    #[must_use]
    pub fn is_unexplained(&self) -> bool {
        self.seen_dead && !self.is_closed
    }

    /// An answer of which nothing is known yet.
    pub(super) fn blank() -> Self {
        let never = OpenDates { p10: None, p50: None, p90: None };
        Self {
            name: String::new(),
            about: Message::NONE,
            beside: Vec::new(),
            alive: 0.0,
            alive_queenright: 0.0,
            seen_dead: false,
            united_into: None,
            is_closed: false,
            queen: None,
            bees: None,
            stores_kg: StoresNow { total: None, reachable: None },
            runs_out: never,
            reachable_kg_ahead: Vec::new(),
            food_body: None,
            alive_fed_queenright: 0.0,
            plus_minus: 0.0,
            fates: Fates::default(),
            ended: Ends::default(),
            ended_between: None,
            ends_ahead: Ends::default(),
            expect_next: Expectation {
                on: Date::ZERO,
                air_c: 0.0,
                dead_bees: Usual::NONE,
                frost_at_hole: None,
                hum: 0.0,
                flight: 0.0,
                indoors: false,
            },
            evidence: Vec::new(),
            actions: Vec::new(),
            look_first: LookFirst { weighing_money: 0.0, life_sign_money: 0.0, says: Message::NONE },
            nothing_helps: false,
            verdict: ColonyVerdict::UNDECIDED,
        }
    }
}

/// Food.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct StoresNow {
    /// All of it.
    pub total: Option<Range<f64>>,
    /// Within reach.
    pub reachable: Option<Range<f64>>,
}

/// What a look on a day ahead would most likely show.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Expectation {
    /// The day.
    pub on: Date,
    /// Outdoor air at noon that it is reckoned for, °C.
    pub air_c: f64,
    /// Dead bees before the hive since the last look, as this keeper would find them at a living colony.
    pub dead_bees: Usual,
    /// Chance of new rime at the upper hole; none without a hole.
    pub frost_at_hole: Option<f64>,
    /// Chance of hearing it with an ear at the wall.
    pub hum: f64,
    /// Chance of seeing a cleansing flight at noon.
    pub flight: f64,
    /// Whether it stands indoors that day: the dead are those on its floor, the air is the room's.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub indoors: bool,
}

/// What a visit did to the estimate.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Evidence {
    /// The day.
    pub on: Date,
    /// What was noted.
    pub note: String,
    /// What it moved, in words.
    pub moved: Message,
    /// Chance of being alive before.
    pub alive_before: f64,
    /// And after.
    pub alive_after: f64,
    /// Food before, middle of the range.
    pub stores_before_kg: Option<f64>,
    /// And after.
    pub stores_after_kg: Option<f64>,
    /// Whether nothing the model thought possible explains it: taken with reserve.
    pub unexplained: bool,
    /// Dead bees counted, against what is usual.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub dead_bees: Vec<DeadBeesCounted>,
}

/// Dead bees counted at a visit.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct DeadBeesCounted {
    /// Day of the count before, or of the beginning.
    pub since: Date,
    /// Counted; the middle of a band.
    pub found: u32,
    /// What a living colony shows.
    pub usual: Usual,
    /// How the count stands to it.
    pub verdict: Against,
    /// Where the dead are, in words.
    pub lie: Message,
}

/// A flying day to come.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct FlightDay {
    /// The day.
    pub on: Date,
    /// Chance that bees can fly on it.
    pub chance: f64,
    /// Days from the day asked about.
    pub days_ahead: u32,
    /// Whether bees are likely to fly on most of the coming days, as outside winter.
    pub on_most_days: bool,
}

/// Whether a lid may be lifted.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct LidVerdict {
    /// Longest that it may be open, s; 0 for leave it shut.
    pub seconds: u32,
    /// The verdict.
    pub says: Message,
    /// Where schools differ.
    pub other_school: Message,
}

/// A colony to open before others.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct OpenFirst {
    /// Whose.
    pub name: String,
    /// Why.
    pub why: Message,
}

/// The worth of looking before acting.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct LookFirst {
    /// What a weighing first would be worth, in money.
    pub weighing_money: f64,
    /// What knowing whether it lives would be worth.
    pub life_sign_money: f64,
    /// In words.
    pub says: Message,
}
