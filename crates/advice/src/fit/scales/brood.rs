//! Sealed brood, against what the warmth of the season lets a queen lay.

use snowhum_apiary::brood_on;
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
        region: "this site at this date".to_owned(),
        hive: brood.unit.clone(),
        says: format!(
            "{low} to {high} frames while days reach {}",
            Kelvin::from_celsius(look.warmth_c).show(look.system(), 0)
        ),
        source: brood.source.clone(),
        status: brood.status,
    };
    let says = match figure {
        None => "nobody looked".to_owned(),
        Some(frames) if frames.p90 < 0.05 => "none".to_owned(),
        Some(frames) => format!("about {:.1} full-size frames of sealed brood", frames.p50),
    };
    let shown =
        Shown { what: What::Brood, figure, unit: "full-size frames", usual: Some(usual), end: 6.0, decimals: 1, says };
    let mut scale = shown.scale();
    let seen = "sealed brood in whole patches, eggs beside it, no sunken, holed or ropy cells; drones raised in worker cells mean a failing queen";
    scale.look = figure.is_none().then(|| format!("look for {seen}"));
    scale
}
