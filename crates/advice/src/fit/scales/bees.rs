//! Grown bees, against what goes into winter here.

use snowhum_say::{Message, fit as say, regions, usual};

use super::shown::{Shown, hundreds};
use crate::fit::answer::{Scale, Usual, What};
use crate::fit::look::Look;
use crate::site::figures::CombsFor;
use crate::statistics::rounded;

/// Air between which a count shows the cluster: warmer, loose bees cover more seams.
const CLUSTERED_C: std::ops::RangeInclusive<f64> = 5.0..=10.0;

pub(super) fn scale(look: &Look<'_>, at: usize) -> Scale {
    let colony = look.colony(at);
    let nucleus = look.is_nucleus(at);
    let size = if nucleus { CombsFor::Nucleus } else { CombsFor::Full };
    let row = look.figures.bees_at(&look.base.question.apiary.site, size, look.cold);
    let here = row.map(|row| Usual {
        low: row.value[0],
        high: row.value[1],
        region: regions::named(&row.region).unwrap_or_default(),
        hive: say::bees_hive(nucleus),
        says: usual::named(&row.name).unwrap_or_default(),
        source: (&row.source).into(),
        status: row.status,
    });
    let bees = colony.bees;
    let [low, middle, high] = [bees.p10, bees.p50, bees.p90].map(hundreds);
    let says = say::bees(middle, rounded(colony.frames_of_bees, 1), high, low);
    let mut scale =
        Shown { what: What::Bees, figure: Some(bees), unit: "bees", usual: here, end: 20_000.0, decimals: -2, says }
            .scale();
    let other = &look.figures.bees_other_school;
    scale.other_school = Some(say::bees_other(&other.source));
    scale.look = counted(look, at);
    scale
}

/// What the air at the count says of the count.
fn counted(look: &Look<'_>, at: usize) -> Option<Message> {
    match look.colony(at).autumn.counted_at {
        None => Some(say::bees_unknown_air()),
        Some(air) if air.celsius() > *CLUSTERED_C.end() => Some(say::bees_warm(air)),
        Some(air) if air.celsius() < *CLUSTERED_C.start() => Some(say::bees_cold(air)),
        Some(_) => None,
    }
}
