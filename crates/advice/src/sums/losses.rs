//! A winter's losses: one yard counted, or the members of a club pooled.
//!
//! Lost is what the surveys call so (van der Zee et al. 2013, J. Apic. Res. 52(4), COLOSS BEEBOOK): no living bees, or
//! too small to be a colony; or a queen problem that cannot be mended; or taken by a disaster. A colony united with
//! another is one fewer at risk, not a loss.

pub(crate) mod answer;
pub(crate) mod background;
mod club;
pub(crate) mod yard;

pub use answer::{ClubLosses, LossesAnswer, YardLosses};
pub use background::{Background, Learnt, OwnWinter, YardEffect, background, learnt};
pub use club::Operation;
pub use yard::YardCount;

use snowhum_say::losses as say;

use super::{SumFault, within};

/// Name and number of the answer's form; the number rises when a key changes.
pub const LOSSES_SCHEMA: &str = "snowhum.losses/1";

/// Whose losses.
#[derive(Debug, Clone, PartialEq)]
pub struct LossesQuestion {
    /// Who counted.
    pub counted: Counted,
    /// The yard's winters from which its background is learnt; none if that is not asked.
    pub winters: Vec<OwnWinter>,
    /// What a colony costs to replace, in the keeper's money.
    pub colony_price: Option<f64>,
    /// What a colony would have earned in the season that is lost with it.
    pub season_worth: Option<f64>,
    /// The keeper's money.
    pub currency: String,
}

/// Who counted.
#[derive(Debug, Clone, PartialEq)]
pub enum Counted {
    /// One yard.
    Yard(YardCount),
    /// Members of a club.
    Club(Vec<Operation>),
}

/// Answers a winter's losses.
///
/// # Errors
/// When no colony was at risk, or more were lost than were.
pub fn losses(question: &LossesQuestion) -> Result<LossesAnswer, SumFault> {
    for (what, money) in [(say::price(), question.colony_price), (say::season(), question.season_worth)] {
        within(what, money.unwrap_or(0.0), 0.0, 1e6)?;
    }
    let (yard, club) = match &question.counted {
        Counted::Yard(count) => (Some(yard::yard(count)?), None),
        Counted::Club(operations) => (None, Some(club::club(operations)?)),
    };
    let lost = yard.as_ref().map(|yard| yard.lost).or(club.as_ref().map(|club| club.lost)).unwrap_or(0);
    let background = if question.winters.is_empty() { None } else { Some(background(&question.winters)?) };
    let each = question.colony_price.map(|price| price + question.season_worth.unwrap_or(0.0));
    Ok(LossesAnswer {
        schema: LOSSES_SCHEMA.to_owned(),
        say: answer::say(yard.as_ref(), club.as_ref()),
        yard,
        club,
        background,
        cost_money: each.map(|each| each * f64::from(lost)),
        currency: question.currency.clone(),
        definition: say::definition(),
        sources: answer::sources(),
    })
}
