//! Openings as ways for air.

use snowhum_apiary::{FrameWay, Hive, OpeningKind, Side};
use snowhum_figures::winter_hour::WARM_WAY;

use super::plan::Plan;
use crate::Parameters;

/// What drives and holds back air through a hive.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct AirWays {
    /// Metres of warm air between the openings.
    pub(crate) stack_warm: f64,
    /// Metres of cold air between the openings.
    pub(crate) stack_cold: f64,
    pub(crate) low: Openings,
    pub(crate) high: Openings,
    /// Difference of wind pressure coefficients between low and high openings.
    pub(crate) wind_pressure: f64,
    pub(crate) wind_pumping: f64,
    /// 1 with an upper hole.
    pub(crate) has_hole: f64,
}

/// Openings at one level.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Openings {
    /// Free area that ice, snow or dead bees can block, m².
    pub(crate) area: f64,
    /// Cracks, m².
    pub(crate) always: f64,
    pub(crate) discharge: f64,
}

/// Wind pressure differences (windward +0.6, lee -0.3: from memory): openings on different sides, on one, cracks.
const ACROSS: f64 = 0.9;
const ALONG: f64 = 0.1;
const CRACKS: f64 = 0.3;
/// Height of an entrance slot, m (half-inch to 20 mm, common practice).
pub(crate) const SLOT_HEIGHT: f64 = 0.015;

impl AirWays {
    pub(crate) fn of(hive: &Hive, plan: &Plan, p: &Parameters) -> Self {
        let (low, high) = openings(hive);
        let way = if hive.frames == FrameWay::Warm { WARM_WAY } else { 1.0 };
        Self {
            stack_warm: stack_between(hive, plan.cold_height, plan.height),
            stack_cold: stack_between(hive, 0.0, plan.cold_height),
            low,
            high,
            wind_pressure: wind_pressure(hive),
            wind_pumping: p.wind_pumping.value * way,
            has_hole: if high.area > 0.0 { 1.0 } else { 0.0 },
        }
    }
}

/// Area of all openings of a kind, m².
fn sum(hive: &Hive, kind: OpeningKind) -> f64 {
    hive.openings.iter().filter(|o| o.kind == kind).map(|o| o.area.get()).sum()
}

/// Openings below and above the middle of the hive; cracks are shared between the two.
fn openings(hive: &Hive) -> (Openings, Openings) {
    let sum = |kind: OpeningKind| sum(hive, kind);
    let discharge =
        |kind: OpeningKind| hive.openings.iter().find(|o| o.kind == kind).map_or(0.61, |o| o.discharge.get());
    let cracks = sum(OpeningKind::Crack) / 2.0;
    let (entrance, hole, mesh) = (sum(OpeningKind::Entrance), sum(OpeningKind::UpperHole), sum(OpeningKind::Mesh));
    let low = Openings { area: entrance, always: cracks + mesh, discharge: discharge(OpeningKind::Entrance) };
    let high = Openings { area: hole, always: cracks, discharge: discharge(OpeningKind::UpperHole) };
    (low, high)
}

/// Metres of air column between the lowest and the highest opening that lie between `from` and `to`.
fn stack_between(hive: &Hive, from: f64, to: f64) -> f64 {
    let entrance = hive.openings.iter().find(|o| o.kind == OpeningKind::Entrance).map_or(0.0, |o| o.height.get());
    let top = hive.boxes.iter().map(|b| b.depth.get()).sum::<f64>() + hive.rim.get();
    let hole = hive.openings.iter().find(|o| o.kind == OpeningKind::UpperHole).map_or(top, |o| o.height.get());
    (to.min(hole) - from.max(entrance)).max(0.0)
}

fn wind_pressure(hive: &Hive) -> f64 {
    let side = |kind: OpeningKind| hive.openings.iter().find(|o| o.kind == kind).map(|o| o.side);
    match (side(OpeningKind::Entrance), side(OpeningKind::UpperHole)) {
        (Some(low), Some(high)) if low == high => ALONG,
        (Some(_), Some(Side::Round)) | (Some(_), None) | (None, _) => CRACKS,
        (Some(_), Some(_)) => ACROSS,
    }
}
