//! What belongs to a keeper and a hive, before anything was noted.

use snowhum_apiary::{EmptyHive, Hive};
use snowhum_figures::watch_looks::TARE_SPREAD;
use snowhum_units::Range;
use snowhum_units::Same;
use snowhum_winter::Parameter;

use crate::flock::{logistic, logit};
use crate::parameters::Parameters;
use crate::view::Own;

/// Ranges to draw [`Own`] from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Priors {
    tare_kg: f64,
    side: Range<f64>,
    seen: Range<f64>,
    ear: f64,
}

impl Priors {
    /// For a hive as it is built.
    #[must_use]
    pub(crate) fn of(hive: &Hive, p: &Parameters) -> Self {
        Self { tare_kg: tare_kg(hive), side: range(&p.side_share), seen: range(&p.seen_share), ear: p.ear_spread.value }
    }

    /// For a hive of which only the keeper's eyes matter.
    #[must_use]
    pub(crate) fn unknown(p: &Parameters) -> Self {
        Self { tare_kg: 20.0, side: range(&p.side_share), seen: range(&p.seen_share), ear: p.ear_spread.value }
    }

    /// One particle's own, from four standard normals.
    #[must_use]
    pub(crate) fn draw(&self, [tare, side, seen, ear]: [f64; 4]) -> Own {
        Own {
            tare_kg: self.tare_kg * (TARE_SPREAD * tare).same_exp(),
            side_share: between(self.side, side),
            seen: between(self.seen, seen),
            ear: self.ear * ear,
        }
    }
}

fn range(parameter: &Parameter) -> Range<f64> {
    let (low, high) = (parameter.low, parameter.high);
    Range { p10: low.unwrap_or(parameter.value), p50: parameter.value, p90: high.unwrap_or(parameter.value) }
}

/// A share from its range, drawn on log-odds so that it stays one.
fn between(range: Range<f64>, z: f64) -> f64 {
    const Z90: f64 = 1.281_551_565_544_6;
    let outer = logit(if z < 0.0 { range.p10 } else { range.p90 });
    let middle = logit(range.p50);
    logistic(middle + (outer - middle) * z.abs() / Z90)
}

/// Weight of the empty hive from its parts list.
#[must_use]
pub fn tare_kg(hive: &Hive) -> f64 {
    EmptyHive::of(&hive.boxes, &hive.lid, &hive.wrap).total().get()
}
