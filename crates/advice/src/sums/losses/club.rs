//! A club: the rate of all colonies together, with an interval that knows colonies of one keeper share their luck.
//!
//! Intercept-only quasi-binomial model on the logit scale: dispersion = sum of (lost - n p)² / (n p (1 - p)) over the
//! members, over members less one; standard error of the logit = sqrt(dispersion / (N p (1 - p))). The dispersion is
//! not let below one: members are never more alike than luck. Source: BEEBOOK survey methods, section 10.3.2; the
//! algebra is the binomial model's.

use snowhum_draws::normal_quantile;
use snowhum_say::losses as say;
use snowhum_units::Same;

use super::answer::ClubLosses;
use crate::statistics::rounded;
use crate::sums::SumFault;
use crate::sums::intervals::{Interval, clopper_pearson, student};

/// One member's winter.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Operation {
    /// The member.
    pub name: String,
    /// Colonies at risk.
    pub colonies: u32,
    /// Colonies lost.
    pub lost: u32,
}

pub(super) fn club(operations: &[Operation]) -> Result<ClubLosses, SumFault> {
    if operations.is_empty() {
        return Err(SumFault::Contradiction(say::no_member()));
    }
    for one in operations {
        if one.colonies == 0 || one.colonies > 100_000 || one.lost > one.colonies {
            return Err(SumFault::Contradiction(say::member_cannot_be(one.colonies, one.lost, &one.name)));
        }
    }
    let members = operations.len();
    let colonies = operations.iter().try_fold(0_u32, |all, one| all.checked_add(one.colonies));
    let colonies = colonies.ok_or_else(|| SumFault::Contradiction(say::too_many()))?;
    let lost: u32 = operations.iter().map(|one| one.lost).sum();
    let rate = f64::from(lost) / f64::from(colonies);
    let average =
        operations.iter().map(|one| f64::from(one.lost) / f64::from(one.colonies)).sum::<f64>() / members as f64;
    let dispersion = dispersion(operations, rate);
    let used = dispersion.map(|dispersion| dispersion.max(1.0));
    let (interval, method) = match used {
        Some(used) => (Some(quasi(rate, colonies, used, members)), say::quasi_binomial()),
        None => (clopper_pearson(lost, colonies), say::exact_binomial()),
    };
    let interval = interval.unwrap_or(Interval { low: 0.0, high: 1.0 });
    Ok(ClubLosses {
        members,
        at_risk: colonies,
        lost,
        overall_rate: rounded(rate, 4),
        overall_interval: interval.map(|p| rounded(p, 4)),
        average_rate: rounded(average, 4),
        dispersion: dispersion.map(|dispersion| rounded(dispersion, 4)),
        dispersion_used: used.map(|used| rounded(used, 4)),
        method,
        members_without_loss: operations.iter().filter(|one| one.lost == 0).count(),
        members_who_lost_all: operations.iter().filter(|one| one.lost == one.colonies).count(),
    })
}

/// Spread of the members beyond luck; none for one member, or where all or none were lost.
fn dispersion(operations: &[Operation], rate: f64) -> Option<f64> {
    if operations.len() < 2 || rate <= 0.0 || rate >= 1.0 {
        return None;
    }
    let square = |one: &Operation| {
        let n = f64::from(one.colonies);
        (f64::from(one.lost) - n * rate).powi(2) / (n * rate * (1.0 - rate))
    };
    Some(operations.iter().map(square).sum::<f64>() / (operations.len() as f64 - 1.0))
}

/// Student's t where the spread was reckoned from the members, the normal where it was set to one.
fn quasi(rate: f64, colonies: u32, dispersion: f64, members: usize) -> Interval {
    let reach = if dispersion > 1.0 { student(members as f64 - 1.0) } else { normal_quantile(0.975) };
    let error = (dispersion / (f64::from(colonies) * rate * (1.0 - rate))).sqrt();
    let middle = (rate / (1.0 - rate)).same_ln();
    let back = |logit: f64| 1.0 / (1.0 + (-logit).same_exp());
    Interval { low: back(middle - reach * error), high: back(middle + reach * error) }
}
