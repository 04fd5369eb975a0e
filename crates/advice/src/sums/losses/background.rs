//! What a yard's own winters say of its losses to what nobody names.
//!
//! The winter model draws that hazard alike for all hives of a yard, by year and by yard; here the keeper's winters are
//! read back through the same law. A few hives say little, and hives of one winter less than hives of several.

pub(crate) mod law;

use serde::{Deserialize, Serialize};
use snowhum_say::{Message, losses as say};
use snowhum_units::Range;
use snowhum_units::Same;
use snowhum_winter::Parameters;

use crate::answer::founded;
use crate::statistics::rounded;
use crate::sums::SumFault;
pub use law::{Learnt, OwnWinter, YardEffect, learnt};

/// The yard's background before and after its own winters.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Background {
    /// Winters learnt from.
    pub winters: usize,
    /// All of them together.
    pub together: OwnWinter,
    /// Chance of being lost over a winter in a yard like any other, in a middling year, one in ten below and above.
    pub any_yard: Range<f64>,
    /// The same in this yard.
    pub own_yard: Range<f64>,
    /// By how much this yard's hazard differs.
    pub yard_effect: YardEffect,
    /// Width of the second range over that of the first, both on the logarithm.
    pub doubt_left: f64,
    /// What to make of it.
    pub say: Vec<Message>,
    /// What it stands on, and what it leaves out.
    pub sources: Vec<Message>,
}

/// Learns a yard's background from its own winters.
///
/// # Errors
/// When more were lost than were at risk, or the shipped parameters cannot be read.
pub fn background(winters: &[OwnWinter]) -> Result<Background, SumFault> {
    let table = |error: snowhum_winter::ParameterError| SumFault::Table {
        table: "winter_parameters.toml",
        fault: error.to_string(),
    };
    let parameters = Parameters::shipped().map_err(table)?;
    let winters: Vec<OwnWinter> = winters.iter().copied().filter(|winter| winter.at_risk > 0).collect();
    let together = together(&winters)?;
    let (before, after) = (learnt(&parameters, &[]), learnt(&parameters, &winters));
    let width = |range: Range<f64>| (range.p90 / range.p10).same_ln();
    let mut background = Background {
        winters: winters.len(),
        together,
        any_yard: before.chance.map(|p| rounded(p, 4)),
        own_yard: after.chance.map(|p| rounded(p, 4)),
        yard_effect: YardEffect { mean: rounded(after.yard.mean, 3), sd: rounded(after.yard.sd, 3) },
        doubt_left: rounded(width(after.chance) / width(before.chance), 3),
        say: Vec::new(),
        sources: sources(&parameters),
    };
    background.say = say(&background);
    Ok(background)
}

fn together(winters: &[OwnWinter]) -> Result<OwnWinter, SumFault> {
    winters.iter().try_fold(OwnWinter::default(), |all, one| {
        if one.lost > one.at_risk || one.cause_not_told > one.lost || one.at_risk > 100_000 {
            return Err(SumFault::Contradiction(say::winter_cannot_be(one.at_risk, one.lost)));
        }
        let add = |a: u32, b: u32| a.saturating_add(b);
        Ok(OwnWinter {
            at_risk: add(all.at_risk, one.at_risk),
            lost: add(all.lost, one.lost),
            cause_not_told: add(all.cause_not_told, one.cause_not_told),
        })
    })
}

fn say(background: &Background) -> Vec<Message> {
    let OwnWinter { at_risk, lost, cause_not_told } = background.together;
    let [any, own] = [background.any_yard, background.own_yard].map(of_100);
    if background.winters == 0 {
        return vec![say::any_yard(any)];
    }
    let mut told = vec![
        say::own_yard(any, at_risk, lost, own, background.winters),
        say::doubt_left((100.0 * background.doubt_left).min(100.0)),
    ];
    if cause_not_told > 0 {
        told.push(say::no_cause(lost, cause_not_told));
    }
    told
}

/// A range in 100, with a decimal where it would round to none.
fn of_100(chance: Range<f64>) -> Message {
    let one = |p: f64| say::in_100(100.0 * p, p < 0.01);
    say::between(one(chance.p10), one(chance.p90))
}

fn sources(p: &Parameters) -> Vec<Message> {
    let (loss, year, yard) = (&p.background_loss, &p.background_by_year, &p.background_by_yard);
    vec![
        say::sources_unnamed(&loss.source, founded(loss.status)),
        say::sources_by_year(&year.source, founded(year.status)),
        say::sources_by_yard(&yard.source, founded(yard.status)),
        say::sources_left_out(),
    ]
}
