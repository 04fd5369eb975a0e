//! The hive: the lid over the bees as a figure, and what is open, empty or forgotten in words.

use snowhum_apiary::{Hive, OpeningKind};
use snowhum_units::{Range, System};

use super::shown::Shown;
use crate::fit::answer::{Scale, Usual, What};
use crate::fit::look::Look;

/// Combs for each comb of bees from which a hive is called large for its bees (judgement).
const LARGE: f64 = 2.4;

/// Thermal resistance in the units of North America for one m² K/W.
const R_OF_SI: f64 = 5.678;

pub(super) fn scale(look: &Look<'_>, at: usize) -> Scale {
    let hive = &look.housed(at).hive;
    let row = &look.figures.lid;
    let lid: f64 = hive.lid.iter().map(|sheet| sheet.resistance().get()).sum();
    let usual = Usual {
        low: row.value[0],
        high: row.value[1],
        region: "cold countries".to_owned(),
        hive: "any hive".to_owned(),
        says: row.says.clone(),
        source: row.source.clone(),
        status: row.status,
    };
    let mut says = over_the_bees(lid, look.system());
    for fault in faults(look, at) {
        says += &format!("; {fault}");
    }
    let shown = Shown {
        what: What::Hive,
        figure: Some(Range::exact(lid)),
        unit: "m² K/W over the bees",
        usual: Some(usual),
        end: 4.0,
        decimals: 1,
        says,
    };
    let mut scale = shown.scale();
    scale.other_school = Some(
        if hive.lid_breathes {
            "others seal the top over foam and leave no upper hole; both schools want no cold surface over the cluster"
        } else {
            "others lay straw or a moisture board that takes up water under a vented roof; both schools want no cold surface over the cluster"
        }
        .to_owned(),
    );
    scale.look = not_noted(look, at);
    scale
}

/// The lid's resistance in the keeper's units.
fn over_the_bees(lid: f64, system: System) -> String {
    match system {
        System::Metric => format!("{lid:.1} m² K/W over the bees"),
        System::Us => format!("R {:.0} over the bees", lid * R_OF_SI),
    }
}

/// What stands open, empty or forgotten.
fn faults(look: &Look<'_>, at: usize) -> Vec<String> {
    let (hive, colony) = (&look.housed(at).hive, look.colony(at));
    let mut faults: Vec<String> = colony.autumn.left_on.iter().flatten().map(|left| left_on(*left)).collect();
    faults.extend(too_high(hive, look.figures.mouse.value));
    if f64::from(hive.comb_count()) > LARGE * colony.frames_of_bees {
        faults.push(format!(
            "{} combs for {:.0} of bees: where winters are mild the space is shrunk to the bees, in Minnesota three boxes stay on; an empty box over the cluster is the worst place for one",
            hive.comb_count(),
            colony.frames_of_bees
        ));
    }
    faults
}

/// What keeps mice out (source: `mouse` of `data/fit.toml`).
pub(crate) const GUARD: &str = "a guard with slots to 8 mm or holes to 9 mm";

/// What to do about a thing left on.
pub(crate) fn left_on(left: snowhum_apiary::LeftOn) -> String {
    use snowhum_apiary::LeftOn;
    match left {
        LeftOn::Excluder => "take the excluder out: the cluster climbs and leaves the queen below it",
        LeftOn::Feeder => "take the empty feeder off: a cold hollow over the cluster",
        LeftOn::EmptySuper => "take the empty super off: a cold room over the cluster",
    }
    .to_owned()
}

/// An entrance that lets mice in.
fn too_high(hive: &Hive, most_mm: f64) -> Option<String> {
    let entrance = hive.openings.iter().find(|opening| opening.kind == OpeningKind::Entrance)?;
    let high_mm = 2_000.0 * entrance.height.get();
    (high_mm > most_mm).then(|| format!("the entrance is {high_mm:.0} mm high, and mice pass: {GUARD}"))
}

fn not_noted(look: &Look<'_>, at: usize) -> Option<String> {
    let floor = "that the hive leans a little forward";
    Some(match look.colony(at).autumn.left_on {
        Some(_) => format!("not in the yard file: look {floor}"),
        None => format!(
            "not in the yard file: whether an excluder, a feeder or an empty super is still on; look, and {floor}"
        ),
    })
}
