//! The hive: the lid over the bees as a figure, and what is open, empty or forgotten in words.

use snowhum_apiary::{Hive, LeftOn, OpeningKind};
use snowhum_say::{Message, fit as say};
use snowhum_units::{Range, SquareMetreKelvinPerWatt};

use super::shown::Shown;
use crate::fit::answer::{Scale, Usual, What};
use crate::fit::look::Look;

/// Combs for each comb of bees from which a hive is called large for its bees (judgement).
const LARGE: f64 = 2.4;

pub(super) fn scale(look: &Look<'_>, at: usize) -> Scale {
    let hive = &look.housed(at).hive;
    let row = &look.figures.lid;
    let lid: f64 = hive.lid.iter().map(|sheet| sheet.resistance().get()).sum();
    let usual = Usual {
        low: row.value[0],
        high: row.value[1],
        region: say::hive_region(),
        hive: say::any_hive(),
        says: say::hive_lids(),
        source: (&row.source).into(),
        status: row.status,
    };
    let mut parts = vec![say::hive_lid(SquareMetreKelvinPerWatt::new(lid))];
    parts.extend(faults(look, at));
    let shown = Shown {
        what: What::Hive,
        figure: Some(Range::exact(lid)),
        unit: "m² K/W over the bees",
        usual: Some(usual),
        end: 4.0,
        decimals: 1,
        says: say::parts(parts),
    };
    let mut scale = shown.scale();
    scale.other_school = Some(if hive.lid_breathes { say::hive_sealed_top() } else { say::hive_breathing_top() });
    scale.look = Some(match look.colony(at).autumn.left_on {
        Some(_) => say::hive_lean(),
        None => say::hive_not_noted(),
    });
    scale
}

/// What stands open, empty or forgotten.
fn faults(look: &Look<'_>, at: usize) -> Vec<Message> {
    let (hive, colony) = (&look.housed(at).hive, look.colony(at));
    let mut faults: Vec<Message> = colony.autumn.left_on.iter().flatten().map(|left| left_on(*left)).collect();
    faults.extend(too_high(hive, look.figures.mouse.value));
    if f64::from(hive.comb_count()) > LARGE * colony.frames_of_bees {
        faults.push(say::hive_large(colony.frames_of_bees, hive.comb_count()));
    }
    faults
}

/// What to do about a thing left on.
pub(crate) fn left_on(left: LeftOn) -> Message {
    match left {
        LeftOn::Excluder => say::hive_excluder(),
        LeftOn::Feeder => say::hive_feeder(),
        LeftOn::EmptySuper => say::hive_empty_super(),
    }
}

/// An entrance that lets mice in.
fn too_high(hive: &Hive, most_mm: f64) -> Option<Message> {
    let entrance = hive.openings.iter().find(|opening| opening.kind == OpeningKind::Entrance)?;
    let high = 2.0 * entrance.height;
    (1_000.0 * high.get() > most_mm).then(|| say::hive_mice(say::hive_guard(), high))
}
