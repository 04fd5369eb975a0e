//! The answer to a winter's losses, and what is said of it.

use serde::{Deserialize, Serialize};
use snowhum_say::{Message, losses as say};

use super::background::Background;
use crate::sums::intervals::Interval;

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
    pub definition: Message,
    /// What to make of it.
    pub say: Vec<Message>,
    /// Where it comes from.
    pub sources: Vec<Message>,
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
    pub method: Message,
    /// Members without a loss.
    pub members_without_loss: usize,
    /// Members who lost every colony.
    pub members_who_lost_all: usize,
}

/// Colonies above which a yard's own rate begins to say something (judgement).
const FEW: u32 = 20;

pub(super) fn say(yard: Option<&YardLosses>, club: Option<&ClubLosses>) -> Vec<Message> {
    let mut told = Vec::new();
    if let Some(yard) = yard {
        told.extend([of_yard(yard), say::exact()]);
    }
    if let Some(club) = club {
        told.extend([say::two_rates(), say::who_answers()]);
        if club.members < 10 {
            told.push(say::few_members());
        }
    }
    told
}

fn of_yard(yard: &YardLosses) -> Message {
    let Interval { low, high } = yard.luck_clopper_pearson.map(|share| (100.0 * share).round());
    if yard.at_risk > FEW { say::luck(high, low) } else { say::luck_of_few(high, yard.at_risk, yard.lost, low) }
}

pub(super) fn sources() -> Vec<Message> {
    vec![say::sources_rates(), say::sources_usual(), say::sources_intervals()]
}
