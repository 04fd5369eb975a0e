//! One yard: a census, exact for itself and weak as evidence of anything else.

use snowhum_say::losses as say;

use super::answer::YardLosses;
use crate::statistics::rounded;
use crate::sums::chances::share_at_least;
use crate::sums::intervals::{Interval, beta_share, clopper_pearson, wilson};
use crate::sums::losses::background::law::OwnWinter;
use crate::sums::{SumFault, within};

/// One yard's winter.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct YardCount {
    /// Colonies that went into winter.
    pub before: u32,
    /// Bought or split since.
    pub added: u32,
    /// Sold or united since.
    pub removed: u32,
    /// Dead, empty, or too small to be a colony.
    pub dead: u32,
    /// Alive with a queen problem that cannot be mended.
    pub queen_failed: u32,
    /// Taken by fire, flood, fall, bear, theft.
    pub disaster: u32,
    /// Alive but weak: not lost.
    pub weak: u32,
}

impl YardCount {
    /// The winter as its background is learnt from it: the cause of no death is told, and queens and disasters are none
    /// of it.
    #[must_use]
    pub fn own_winter(&self) -> OwnWinter {
        let all = self.before.saturating_add(self.added);
        let apart = self.removed.saturating_add(self.queen_failed).saturating_add(self.disaster);
        OwnWinter { at_risk: all.saturating_sub(apart), lost: self.dead, cause_not_told: self.dead }
    }
}

/// Shapes of the beta prior for a yard's rate: mean 0.2, as in surveys (COLOSS 2015/16 to 2018/19 12 to 21 %), worth
/// twenty colonies (judgement).
const PRIOR: [f64; 2] = [4.0, 16.0];
/// A winter's usual rate in such surveys.
const USUAL: f64 = 0.2;

pub(super) fn yard(count: &YardCount) -> Result<YardLosses, SumFault> {
    let figures =
        [count.before, count.added, count.removed, count.dead, count.queen_failed, count.disaster, count.weak];
    for figure in figures {
        within(say::colonies(), f64::from(figure), 0.0, 100_000.0)?;
    }
    let all = count.before + count.added;
    let none = || SumFault::Contradiction(say::none_at_risk(all, count.removed));
    let at_risk = all.checked_sub(count.removed).filter(|colonies| *colonies > 0).ok_or_else(none)?;
    let lost = count.dead + count.queen_failed + count.disaster;
    if lost + count.weak > at_risk {
        return Err(SumFault::Contradiction(say::more_than_at_risk(at_risk, lost, count.weak)));
    }
    let rate = f64::from(lost) / f64::from(at_risk);
    let round =
        |interval: Option<Interval>| interval.unwrap_or(Interval { low: 0.0, high: 1.0 }).map(|p| rounded(p, 4));
    let (mean, range) = beta_share(lost, at_risk, PRIOR).unwrap_or((rate, Interval { low: 0.0, high: 1.0 }));
    Ok(YardLosses {
        at_risk,
        lost,
        alive: at_risk - lost,
        weak: count.weak,
        dead: count.dead,
        queen_failed: count.queen_failed,
        disaster: count.disaster,
        rate: rounded(rate, 4),
        luck_clopper_pearson: round(clopper_pearson(lost, at_risk)),
        luck_wilson: round(wilson(lost, at_risk)),
        next_rate: rounded(mean, 4),
        next_rate_interval: range.map(|p| rounded(p, 4)),
        usual_rate: USUAL,
        chance_of_so_many_at_usual_rate: rounded(at_least(lost, at_risk), 4),
    })
}

/// Chance of `lost` or more of `at_risk` at the usual rate.
fn at_least(lost: u32, at_risk: u32) -> f64 {
    if lost == 0 { 1.0 } else { share_at_least(f64::from(lost), f64::from(at_risk), USUAL) }
}
