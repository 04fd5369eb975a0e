//! Grown bees, against what goes into winter here.

use super::shown::{Shown, thousands};
use crate::fit::answer::{Scale, Usual, What};
use crate::fit::look::Look;
use crate::site::figures::CombsFor;

/// Air between which a count shows the cluster: warmer, loose bees cover more seams.
const CLUSTERED_C: std::ops::RangeInclusive<f64> = 5.0..=10.0;

pub(super) fn scale(look: &Look<'_>, at: usize) -> Scale {
    let colony = look.colony(at);
    let nucleus = look.is_nucleus(at);
    let size = if nucleus { CombsFor::Nucleus } else { CombsFor::Full };
    let row = look.figures.bees_at(&look.base.question.apiary.site, size, look.cold);
    let usual = row.map(|row| Usual {
        low: row.value[0],
        high: row.value[1],
        region: row.region.clone(),
        hive: if nucleus { "nucleus" } else { "full-size hive" }.to_owned(),
        says: row.says.clone(),
        source: row.source.clone(),
        status: row.status,
    });
    let bees = colony.bees;
    let says = format!(
        "about {} bees ({} to {}), on {} {} of this hive",
        thousands(bees.p50),
        thousands(bees.p10),
        thousands(bees.p90),
        combs(colony.frames_of_bees),
        if colony.frames_of_bees <= 1.0 { "comb" } else { "combs or seams" },
    );
    let mut scale =
        Shown { what: What::Bees, figure: Some(bees), unit: "bees", usual, end: 20_000.0, decimals: -2, says }.scale();
    let other = &look.figures.bees_other_school;
    scale.other_school = Some(format!("{} ({})", other.says, other.source));
    scale.look = counted(look, at);
    scale
}

/// What the air at the count says of the count.
fn counted(look: &Look<'_>, at: usize) -> Option<String> {
    match look.colony(at).autumn.counted_at {
        None => Some(
            "the air at the count is not known: count seams in the morning at 5 to 10 °C (41 to 50 °F), when the cluster shows its size"
                .to_owned(),
        ),
        Some(air) if air.celsius() > *CLUSTERED_C.end() => Some(format!(
            "counted at {}: loose bees cover more seams than a cluster; count again at 5 to 10 °C (41 to 50 °F)",
            air.show(look.system(), 0)
        )),
        Some(air) if air.celsius() < *CLUSTERED_C.start() => Some(format!(
            "counted at {}: a tight cluster covers fewer seams than it has bees for",
            air.show(look.system(), 0)
        )),
        Some(_) => None,
    }
}

/// A number of combs without needless decimals.
fn combs(number: f64) -> String {
    if number.fract().abs() < 0.05 { format!("{number:.0}") } else { format!("{number:.1}") }
}
