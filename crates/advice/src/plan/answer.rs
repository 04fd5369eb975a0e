//! The plan as it is answered: plain values with units in their names, the same for terminal, page, print and JSON.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_say::Message;
use snowhum_units::Range;
use snowhum_winter::Ends;

use crate::answer::{
    ActionAnswer, DateRange, HiveVerdict, MonthRange, MonthUsual, OpenDates, RuleOfThumb, WeatherAnswer,
};
use crate::fit::answer::FitAnswer;
use crate::looks_to::LooksTo;
use crate::over_rule::OverRule;
use crate::verdict::answer::{ColonyVerdict, FirstAnswer};

/// Name and number of the plan's form; the number rises when a key changes.
pub const PLAN_SCHEMA: &str = "snowhum.plan/1";

/// The winter ahead for a yard.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct PlanAnswer {
    /// [`PLAN_SCHEMA`].
    pub schema: String,
    /// Name of the yard.
    pub apiary: String,
    /// Whether the yard is made up.
    pub invented: bool,
    /// The day the plan starts.
    pub as_of: Date,
    /// First flow of the site plus 14 days: the end of the plan.
    pub spring: Date,
    /// What weather the plan stands on.
    pub weather: WeatherAnswer,
    /// Currency of all money.
    pub currency: String,
    /// What it does not reckon with, each a sentence.
    pub left_out: Vec<Message>,
    /// How sure science is of such a plan, in a sentence.
    #[serde(default)]
    pub how_sure: Message,
    /// Every colony in the yard's order.
    pub colonies: Vec<ColonyPlan>,
    /// Whether each colony is fit for winter, and what the yard needs for it.
    pub fit: Option<FitAnswer>,
    /// What a keeper is told first.
    pub first: FirstAnswer,
}

impl ColonyPlan {
    /// When its food runs out, in words.
    #[must_use]
    pub fn food_lasts(&self) -> Message {
        self.runs_out.run_out(LooksTo::Spring, self.alive_fed_queenright < 0.5 * self.alive_queenright_if_fed)
    }
}

/// One colony's winter.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ColonyPlan {
    /// The keeper's name.
    pub name: String,
    /// Whether only the four quick-start facts are known.
    pub quick_start: bool,
    /// Chance of being alive in spring.
    pub alive_in_spring: f64,
    /// Chance of being alive, fed and queenright in spring.
    pub alive_fed_queenright: f64,
    /// Two Monte Carlo standard errors of the chance above.
    pub plus_minus: f64,
    /// Chance of being alive with a queen in spring once it has what it is short of: hunger apart.
    #[serde(default)]
    pub alive_queenright_if_fed: f64,
    /// Food.
    pub stores_kg: StoresAnswer,
    /// When food within reach runs out: one in ten before `p10`; none where it lasts to spring.
    pub runs_out: OpenDates,
    /// Stores to add so that 9 in 10 reach spring with at least 3 kg within reach.
    pub shortage_kg: f64,
    /// Sugar for the shortage.
    pub sugar_kg: f64,
    /// Syrup from that sugar, by strength.
    pub syrup_l: SyrupLitres,
    /// By when syrup must be finished here: fed, taken and capped.
    pub finish_syrup_by: Range<Date>,
    /// Whether that day is past.
    pub too_late_for_syrup: bool,
    /// The hive in the coldest month.
    pub hive: HiveVerdict,
    /// Food eaten a day, by month.
    pub food_g_per_day: Vec<MonthRange>,
    /// Bees that die a day, by month.
    pub dead_bees_per_day: Vec<MonthRange>,
    /// Dead bees that a living colony shows before the hive a fortnight after the last look, by month.
    pub dead_bees_shown: Vec<MonthUsual>,
    /// Grown bees through the winter.
    pub bees: Vec<DateRange>,
    /// When brood is there again.
    pub brood_begins: OpenDates,
    /// How colonies like this end, as chances; they sum to 1 - `alive_in_spring`.
    pub ends: Ends,
    /// The published or usual rule for stores here, beside the computed need.
    pub rule_of_thumb: Option<RuleOfThumb>,
    /// Said where the computed need is far over that rule.
    pub over_rule: Option<OverRule>,
    /// What is most worth doing, best first.
    pub actions: Vec<ActionAnswer>,
    /// Said when nothing that can be done now changes much.
    pub nothing_helps: bool,
    /// The one verdict: how soon, by when, what first.
    pub verdict: ColonyVerdict,
}

/// Food of a colony.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct StoresAnswer {
    /// Now, middle of the range.
    pub now: f64,
    /// Of it within reach.
    pub reachable_now: f64,
    /// In spring, if alive.
    pub spring: Range<f64>,
}

/// Litres of syrup by strength (sugar to water by weight).
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct SyrupLitres {
    /// Three of sugar to two of water.
    #[serde(rename = "3:2")]
    pub three_to_two: f64,
    /// Two of sugar to one of water.
    #[serde(rename = "2:1")]
    pub two_to_one: f64,
}
