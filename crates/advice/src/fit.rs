//! Fit for winter? Six scales for each colony, a verdict with its reasons, and what the yard needs for it.

pub(crate) mod answer;
mod boost;
mod look;
mod say;
pub(crate) mod scales;
mod shopping;
mod unite;
mod verdict;
mod windows;

pub use answer::{
    BeginBy, Carried, ClassWindow, ColonyFit, FEEDER_L, FitAnswer, HiveFeed, OutOf, Scale, Shopping, Spared, Stands,
    Uniting, Usual, Verdict, VerdictKind, What,
};

use crate::ahead::base::Base;
use crate::plan::answer::ColonyPlan;
use crate::site::dates;
use look::Look;

/// Whether each colony is fit for winter; none only if the program's own table is broken.
pub(crate) fn fit(base: &Base<'_>, plans: &[ColonyPlan]) -> Option<FitAnswer> {
    let look = Look::at(base, plans)?;
    let colonies: Vec<ColonyFit> = look.places().map(|at| colony(&look, at)).collect();
    Some(FitAnswer {
        shopping: shopping::of(&look, &colonies),
        windows: windows::of(&look),
        treat_before: dates::winter_bees(base),
        winter_bees: dates::winter_bees_say(base),
        say: say::yard(&look, &colonies),
        dates: look.dates.clone(),
        colonies,
    })
}

fn colony(look: &Look<'_>, at: usize) -> ColonyFit {
    let scales = scales::all(look, at);
    let (verdict, unite) = verdict::of(look, at);
    ColonyFit { name: look.colony(at).name.clone(), say: say::colony(look, at), scales, verdict, unite }
}
