//! The plan as it is answered: plain values with units in their names, the same for terminal, page, print and JSON.

pub use crate::over_rule::OverRule;

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_units::{Range, System, Usual};
use snowhum_weather::{Far, Provenance};
use snowhum_winter::Ends;

use crate::LooksTo;
use crate::fit::FitAnswer;
use crate::now::NowAnswer;
use crate::statistics::rounded;
use crate::verdict::{ColonyVerdict, FirstAnswer};
use crate::words::run_out;

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
    pub left_out: Vec<String>,
    /// How sure science is of such a plan, in a sentence.
    #[serde(default)]
    pub how_sure: String,
    /// Every colony in the yard's order.
    pub colonies: Vec<ColonyPlan>,
    /// Whether each colony is fit for winter, and what the yard needs for it.
    pub fit: Option<FitAnswer>,
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

/// Weather a plan stands on.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct WeatherAnswer {
    /// One line.
    pub source: String,
    /// Members of the ensemble for each colony.
    pub members: usize,
    /// Weather paths they walk.
    pub paths: usize,
    /// What to know about it.
    pub notes: Vec<String>,
    /// Files whose place lies far from the yard.
    pub far: Vec<FarAnswer>,
}

/// Weather files of one place far from the yard.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct FarAnswer {
    /// Their names.
    pub files: String,
    /// From the yard.
    pub distance_km: f64,
    /// Above the yard; negative below.
    pub higher_m: f64,
    /// It in words, with what would be right.
    pub says: String,
}

impl WeatherAnswer {
    /// From what a weather says of itself.
    #[must_use]
    pub fn new(provenance: &Provenance, members: usize, paths: usize, system: System) -> Self {
        let far = provenance.far.iter().map(|far| FarAnswer::new(far, system)).collect();
        Self { source: provenance.source.clone(), members, paths, notes: provenance.notes.clone(), far }
    }

    /// All that must be known of it, what lies far first.
    pub fn told(&self) -> impl Iterator<Item = &String> {
        self.far.iter().map(|far| &far.says).chain(&self.notes)
    }
}

impl FarAnswer {
    /// From what was found of a file's place.
    #[must_use]
    pub fn new(far: &Far, system: System) -> Self {
        Self {
            files: far.files.clone(),
            distance_km: rounded(far.distance.get() / 1e3, 1),
            higher_m: rounded(far.higher.get(), 0),
            says: far.says(system),
        }
    }
}

impl ColonyPlan {
    /// When its food runs out, in words.
    #[must_use]
    pub fn food_lasts(&self) -> String {
        run_out(&self.runs_out, LooksTo::Spring, self.alive_fed_queenright < 0.5 * self.alive_queenright_if_fed)
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

/// Quantiles of a date that may never come.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct OpenDates {
    /// One in ten before.
    pub p10: Option<Date>,
    /// Half before.
    pub p50: Option<Date>,
    /// Nine in ten before.
    pub p90: Option<Date>,
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

/// The hive as an enclosure, mean of the coldest month.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct HiveVerdict {
    /// Heat loss over the warm zone's excess over outdoors.
    pub heat_loss_w_per_k: f64,
    /// Air in and out.
    pub air_flow_l_per_s: f64,
    /// Water caught on each face.
    pub condensation_g_per_day: Condensation,
    /// Of it dripping on the cluster.
    pub drip_on_cluster_g_per_day: f64,
    /// Share of hours with frost at the upper hole; none without a hole.
    pub frost_at_hole: Option<f64>,
}

/// Water by face.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Condensation {
    /// Inside of the lid.
    pub lid: f64,
    /// Walls.
    pub walls: f64,
    /// Floor.
    pub floor: f64,
}

/// A month's figure.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct MonthRange {
    /// Year and month, `2025-11`.
    pub month: String,
    /// Its range over members.
    #[serde(flatten)]
    pub range: Range<f64>,
}

/// A month's usual count.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct MonthUsual {
    /// Year and month, `2025-11`.
    pub month: String,
    /// What is usual.
    #[serde(flatten)]
    pub usual: Usual,
}

/// A day's figure.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct DateRange {
    /// The day.
    pub date: Date,
    /// Its range over members.
    #[serde(flatten)]
    pub range: Range<f64>,
}

/// A rule the trade goes by, with where it holds.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct RuleOfThumb {
    /// Region and hive it is for.
    pub region: String,
    /// What it says.
    pub says: String,
    /// Stores it asks for, where it gives a figure.
    pub stores_kg: Option<(f64, f64)>,
    /// Who says so.
    pub source: String,
}

/// What is done, of all that can be.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum ActionKind {
    /// Something about its queen.
    Queen,
    /// A blocked entrance is cleared.
    ClearOpenings,
    /// A treatment against mites.
    TreatMites,
    /// Stores from the far side are hung near.
    BringNear,
    /// Frames of stores from another colony.
    Frames,
    /// Syrup in autumn.
    Syrup,
    /// Thin syrup in spring.
    ThinSyrup,
    /// Fondant over the cluster.
    SolidFeed,
    /// A better lid.
    Lid,
    /// A wrap.
    Wrap,
    /// A tray under the mesh.
    Tray,
}

/// Something to do.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ActionAnswer {
    /// Which of all that can be done.
    pub kind: ActionKind,
    /// What.
    pub what: String,
    /// First day.
    pub from: Date,
    /// Last day.
    pub by: Date,
    /// Worth after its cost.
    pub worth_money: f64,
    /// Hives in a hundred alive, fed and queenright more than without.
    pub worth_hives_in_100: f64,
    /// Two Monte Carlo standard errors of that.
    pub plus_minus: f64,
    /// Whether chance could turn it.
    pub too_close_to_call: bool,
    /// What it costs.
    pub cost_money: f64,
    /// The reason, with this hive's figures.
    pub why: String,
    /// Caution at the act, where one is due.
    pub caution: Option<String>,
    /// The rule of the trade beside it, where there is one.
    pub rule_of_thumb: Option<String>,
    /// Where the reason comes from.
    pub sources: Vec<String>,
    /// Whether it gives what an action before it in the list gives: one of them is enough.
    pub instead: bool,
    /// Whether custom asks for it whatever the sums say, so that its worth is not weighed.
    #[serde(default)]
    pub by_custom: bool,
}

impl ActionAnswer {
    /// One that custom asks for, still to be said.
    pub(crate) fn by_custom() -> Self {
        Self {
            kind: ActionKind::Queen,
            what: String::new(),
            from: Date::ZERO,
            by: Date::ZERO,
            worth_money: 0.0,
            worth_hives_in_100: 0.0,
            plus_minus: 0.0,
            too_close_to_call: false,
            cost_money: 0.0,
            why: String::new(),
            caution: None,
            rule_of_thumb: None,
            sources: Vec::new(),
            instead: false,
            by_custom: true,
        }
    }

    /// Whether it moves the chance by more than its own error, whatever it costs, or custom asks for it.
    #[must_use]
    pub fn helps(&self) -> bool {
        self.by_custom || self.worth_hives_in_100 > self.plus_minus
    }

    /// Whether it is worth more than it costs.
    #[must_use]
    pub fn pays(&self) -> bool {
        self.worth_money > 0.0
    }

    /// What it does and whether that pays, in words; a capital and a stop are left to the page.
    #[must_use]
    pub fn worth(&self, currency: &str) -> String {
        if self.by_custom {
            return "custom asks for it; its worth is not weighed in the model".to_owned();
        }
        let helped = format!("helps about {:.0} hives in 100 (± {:.0})", self.worth_hives_in_100, self.plus_minus);
        match (self.helps(), self.too_close_to_call, self.pays()) {
            (false, _, _) => "too close to call: chance could turn it either way".to_owned(),
            (true, true, _) => {
                format!("{helped}, and is worth hardly more or less than its cost of {:.0} {currency}", self.cost_money)
            }
            (true, false, true) => {
                format!(
                    "{helped}, worth {:.0} {currency} after its cost of {:.0} {currency}",
                    self.worth_money, self.cost_money
                )
            }
            (true, false, false) => {
                format!(
                    "{helped}, but in most such hives is worth less than its cost of {:.0} {currency}",
                    self.cost_money
                )
            }
        }
    }
}
