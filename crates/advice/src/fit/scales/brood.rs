//! Sealed brood, against what the warmth of the season lets a queen lay.

use snowhum_apiary::brood_on;
use snowhum_say::fit as say;
use snowhum_units::{Kelvin, SquareMetre};

use super::shown::Shown;
use crate::fit::answer::{Scale, Usual, What};
use crate::fit::look::Look;

/// One face of a full-size comb (Langstroth deep).
pub(in crate::fit) const FULL_COMB: SquareMetre = SquareMetre::new(0.0869);

pub(super) fn scale(look: &Look<'_>, at: usize) -> Scale {
    let brood = &look.figures.brood;
    let cells = look.colony(at).sealed_brood;
    let one = brood_on(1.0, FULL_COMB).p50;
    let figure = cells.map(|cells| cells.map(|cells| cells / one));
    let [low, high] = brood.at(look.warmth_c);
    let usual = Usual {
        low,
        high,
        region: say::brood_region(),
        hive: (&brood.unit).into(),
        says: say::brood_usual(high, low, Kelvin::from_celsius(look.warmth_c)),
        source: (&brood.source).into(),
        status: brood.status,
    };
    let says = match figure {
        None => say::brood_not_looked(),
        Some(frames) if frames.p90 < 0.05 => say::brood_none(),
        Some(frames) => say::brood(frames.p50),
    };
    let shown =
        Shown { what: What::Brood, figure, unit: "full-size frames", usual: Some(usual), end: 6.0, decimals: 1, says };
    let mut scale = shown.scale();
    scale.look = figure.is_none().then(say::brood_look);
    scale
}
