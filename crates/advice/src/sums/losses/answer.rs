//! The answer to a winter's losses, and what is said of it.

use serde::{Deserialize, Serialize};

use super::background::Background;
use crate::sums::intervals::Interval;

/// What counts as lost.
pub(super) const DEFINITION: &str = "Lost: no living bees, or too small to be a colony; or a queen problem that cannot be mended; or taken by a disaster. Weak but alive is not lost; united with another is one fewer at risk, not a loss.";

/// The answer.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct LossesAnswer {
    /// [`super::LOSSES_SCHEMA`].
    pub schema: String,
    /// One yard.
    pub yard: Option<YardLosses>,
    /// Members of a club.
    pub club: Option<ClubLosses>,
    /// What the yard's own winters say of losses to what nobody names; none where that was not asked.
    pub background: Option<Background>,
    /// Colonies lost, at their price and the season's worth.
    pub cost_money: Option<f64>,
    /// Currency of all money.
    pub currency: String,
    /// What counts as lost.
    pub definition: String,
    /// What to make of it.
    pub say: Vec<String>,
    /// Where it comes from.
    pub sources: Vec<String>,
}

/// One yard's losses.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct YardLosses {
    /// Colonies at risk.
    pub at_risk: u32,
    /// Lost, for whichever reason.
    pub lost: u32,
    /// Alive.
    pub alive: u32,
    /// Of them weak.
    pub weak: u32,
    /// Dead, empty or too small.
    pub dead: u32,
    /// Queen problem that cannot be mended.
    pub queen_failed: u32,
    /// Disaster.
    pub disaster: u32,
    /// Lost over at risk: exact, since every hive was counted.
    pub rate: f64,
    /// Rates that luck alone could turn into this count (exact).
    pub luck_clopper_pearson: Interval,
    /// The same by Wilson's score.
    pub luck_wilson: Interval,
    /// What to expect of another winter like it, drawn to what yards usually lose.
    pub next_rate: f64,
    /// Its 95 % interval.
    pub next_rate_interval: Interval,
    /// What yards usually lose.
    pub usual_rate: f64,
    /// Chance of so many or more lost at that rate, by luck alone.
    pub chance_of_so_many_at_usual_rate: f64,
}

/// A club's losses.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ClubLosses {
    /// Members who answered.
    pub members: usize,
    /// Colonies at risk.
    pub at_risk: u32,
    /// Colonies lost.
    pub lost: u32,
    /// All colonies together: the overall loss rate.
    pub overall_rate: f64,
    /// Its 95 % interval.
    pub overall_interval: Interval,
    /// Mean of the members' own rates, in which small yards weigh as much as large ones.
    pub average_rate: f64,
    /// Spread between members over that of luck.
    pub dispersion: Option<f64>,
    /// The spread the interval stands on.
    pub dispersion_used: Option<f64>,
    /// How the interval was made.
    pub method: String,
    /// Members without a loss.
    pub members_without_loss: usize,
    /// Members who lost every colony.
    pub members_who_lost_all: usize,
}

/// Colonies above which a yard's own rate begins to say something (judgement).
const FEW: u32 = 20;

pub(super) fn say(yard: Option<&YardLosses>, club: Option<&ClubLosses>) -> Vec<String> {
    let mut say = Vec::new();
    if let Some(yard) = yard {
        say.push(of_yard(yard));
        say.push("Every hive was counted, so the rate is exact for this yard and this winter; ranges speak of luck, not of a sample.".to_owned());
    }
    if let Some(club) = club {
        say.push("Overall and average rate differ: small yards weigh as much as large ones in the average, and lose more often all or nothing.".to_owned());
        say.push(
            "Those who answer are seldom all members: those with losses, or with none, may keep silent.".to_owned(),
        );
        if club.members < 10 {
            say.push("With so few members the range is wide for good reason.".to_owned());
        }
    }
    say
}

fn of_yard(yard: &YardLosses) -> String {
    let hives = if yard.at_risk == 1 { "1 hive".to_owned() } else { format!("{} hives", yard.at_risk) };
    let luck = yard.luck_clopper_pearson.map(|share| (100.0 * share).round());
    if yard.at_risk > FEW {
        return format!("Luck alone fits any yearly rate from {:.0} to {:.0} %.", luck.low, luck.high);
    }
    let what = match yard.lost {
        0 => "no loss proves no method".to_owned(),
        1 => "one loss tells almost nothing about your method".to_owned(),
        lost => format!("{lost} losses tell little about your method"),
    };
    format!("With {hives} {what}: luck alone fits any yearly rate from {:.0} to {:.0} %.", luck.low, luck.high)
}

pub(super) fn sources() -> Vec<String> {
    [
        "case definitions and rates: van der Zee et al. 2013, J. Apic. Res. 52(4), COLOSS BEEBOOK survey methods 2.3 and 10.3.2; one apiary is a census: vanEngelsdorp et al. 2013",
        "usual rate 20 %: COLOSS 12.0 % (2015/16), 20.9 % (2016/17), 16.7 % (2018/19); Canada 27 % (mean of 2007 to 2022, CAPA); its weight of 20 colonies: judgement",
        "intervals: Clopper and Pearson 1934, Wilson 1927, quasi-binomial logit",
    ]
    .map(str::to_owned)
    .to_vec()
}
