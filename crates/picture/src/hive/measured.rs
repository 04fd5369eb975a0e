//! The hive's measures made safe: every one finite and of a size a hive can have.

use super::section::{Cluster, DeadColony, FloorLook, HiveSection, Look, Roof, SectionColony, Sheet};
use snowhum_units::{Fraction, Metre};

/// Most boxes drawn.
pub const MOST_BOXES: usize = 8;
/// Most sheets of a lid or of a wrap drawn.
const MOST_SHEETS: usize = 8;
/// Most frames of a box drawn.
const MOST_FRAMES: u32 = 24;
/// A stand higher than this is drawn with a break.
const DRAWN_STAND_M: f64 = 0.16;
/// How far a roof's side stands out.
const OVERHANG_M: f64 = 0.012;
/// Thinner sheets are drawn this thick.
const THINNEST_M: f64 = 0.005;

/// All in metres; heights over the floor.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Measured {
    pub(crate) boxes: Vec<MeasuredBox>,
    pub(crate) rise: f64,
    pub(crate) boxes_top: f64,
    pub(crate) lid_bottom: f64,
    pub(crate) lid: Vec<MeasuredSheet>,
    pub(crate) lid_top: f64,
    pub(crate) roof: Option<MeasuredRoof>,
    pub(crate) roof_top: f64,
    pub(crate) floor_bottom: f64,
    pub(crate) ground: f64,
    pub(crate) stand: f64,
    pub(crate) wrap: Vec<MeasuredSheet>,
    pub(crate) snow_roof: f64,
    pub(crate) snow_bank: f64,
    pub(crate) inner: f64,
    pub(crate) outer: f64,
    /// Half of the widest part, wrap and roof taken in.
    pub(crate) half_width: f64,
    pub(crate) ball: Option<Ball>,
}

#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct MeasuredBox {
    pub(crate) bottom: f64,
    pub(crate) top: f64,
    pub(crate) inner: f64,
    pub(crate) wall: f64,
    pub(crate) look: Look,
    pub(crate) frames: u32,
    pub(crate) spacing: f64,
    pub(crate) comb_bottom: f64,
    pub(crate) comb_top: f64,
}

#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct MeasuredSheet {
    pub(crate) thickness: f64,
    pub(crate) look: Look,
}

#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct MeasuredRoof {
    pub(crate) sheet: MeasuredSheet,
    pub(crate) skirt: f64,
}

/// A cluster, living or dead.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Ball {
    /// From the hive's middle to the right.
    pub(crate) x: f64,
    pub(crate) height: f64,
    pub(crate) radius: f64,
    pub(crate) core: f64,
}

/// A length between two bounds; one that is not finite is the lower.
pub(crate) fn length(value: Metre, least: f64, most: f64) -> f64 {
    if value.get().is_finite() { value.get().clamp(least, most) } else { least }
}

/// A share from nought to one; one that is not finite is nought.
pub(crate) fn share(value: Fraction) -> f64 {
    if value.get().is_finite() { value.get().clamp(0.0, 1.0) } else { 0.0 }
}

impl Measured {
    pub(crate) fn of(hive: &HiveSection) -> Self {
        let rise = length(hive.floor.rise, 0.0, 0.3);
        let boxes = boxes(hive, rise);
        let boxes_top = boxes.last().map_or(rise, |top| top.top);
        let lid_bottom = boxes_top + length(hive.rim, 0.0, 0.5);
        let lid = sheets(&hive.lid);
        let lid_top = lid_bottom + thickness(&lid);
        let roof = hive.roof.as_ref().map(|roof| measured_roof(roof, lid_top - rise));
        let roof_top = lid_top + roof.map_or(0.0, |roof| roof.sheet.thickness);
        let wrap = sheets(&hive.wrap);
        let inner = boxes.iter().map(|one| one.inner).fold(0.1, f64::max);
        let outer = boxes.iter().map(|one| one.inner + 2.0 * one.wall).fold(0.12, f64::max);
        let floor_bottom = -floor_depth(hive);
        let stand = length(hive.stand, 0.0, 3.0);
        let drawn = stand.min(DRAWN_STAND_M);
        let bank = drawn_bank(length(hive.snow.bank, 0.0, 3.0), stand);
        let ball = ball(&hive.colony, inner, lid_bottom);
        Self {
            rise,
            boxes_top,
            lid_bottom,
            lid_top,
            roof_top,
            floor_bottom,
            ground: floor_bottom - drawn,
            stand,
            snow_roof: length(hive.snow.roof, 0.0, 0.8),
            snow_bank: bank.min(drawn + roof_top + 0.2),
            half_width: outer / 2.0 + thickness(&wrap) + roof.map_or(0.0, |_| OVERHANG_M),
            boxes,
            lid,
            roof,
            wrap,
            inner,
            outer,
            ball,
        }
    }

    pub(crate) fn is_stand_broken(&self) -> bool {
        self.stand > DRAWN_STAND_M
    }

    /// Height of the snow against the walls, over the floor.
    pub(crate) fn snow_line(&self) -> f64 {
        self.ground + self.snow_bank
    }
}

/// Depth of the floor: a mesh stands in a frame that must hold its tray.
fn floor_depth(hive: &HiveSection) -> f64 {
    let least = if hive.floor.kind == FloorLook::Solid { 0.008 } else { 0.04 };
    length(hive.floor.thickness, least, 0.15)
}

/// Height of a snow bank as drawn: beside a stand drawn short it is drawn shorter too.
fn drawn_bank(bank: f64, stand: f64) -> f64 {
    let drawn = stand.min(DRAWN_STAND_M);
    if bank <= stand { bank * drawn / stand.max(1e-9) } else { bank - stand + drawn }
}

pub(crate) fn thickness(sheets: &[MeasuredSheet]) -> f64 {
    sheets.iter().map(|sheet| sheet.thickness).sum()
}

fn boxes(hive: &HiveSection, rise: f64) -> Vec<MeasuredBox> {
    let mut bottom = rise;
    let mut boxes = Vec::new();
    for one in hive.boxes.iter().take(MOST_BOXES) {
        let height = length(one.height, 0.05, 0.8);
        let comb = length(one.comb_height, 0.0, height - 0.035);
        let comb_top = bottom + height - 0.027;
        boxes.push(MeasuredBox {
            bottom,
            top: bottom + height,
            inner: length(one.inner_width, 0.08, 1.2),
            wall: length(one.wall.thickness, THINNEST_M, 0.2),
            look: one.wall.look,
            frames: one.frames.min(MOST_FRAMES),
            spacing: length(one.spacing, 0.02, 0.1),
            comb_bottom: comb_top - comb,
            comb_top,
        });
        bottom += height;
    }
    boxes
}

fn sheets(sheets: &[Sheet]) -> Vec<MeasuredSheet> {
    sheets.iter().take(MOST_SHEETS).map(sheet).collect()
}

/// A roof whose sides hang down no farther than to the floor.
fn measured_roof(roof: &Roof, most: f64) -> MeasuredRoof {
    MeasuredRoof { sheet: sheet(&roof.sheet), skirt: length(roof.skirt, 0.0, most.max(0.0)) }
}

fn sheet(sheet: &Sheet) -> MeasuredSheet {
    MeasuredSheet { thickness: length(sheet.thickness, THINNEST_M, 0.4), look: sheet.look }
}

fn ball(colony: &SectionColony, inner: f64, most: f64) -> Option<Ball> {
    let (across, height, radius, core) = match colony {
        SectionColony::None => return None,
        SectionColony::Alive(Cluster { across, height, radius, core_radius, .. }) => {
            (*across, *height, *radius, length(*core_radius, 0.0, 0.5))
        }
        SectionColony::Dead(DeadColony { across, height, radius, .. }) => (*across, *height, *radius, 0.0),
    };
    let radius = length(radius, 0.0, 0.5);
    (radius > 0.0).then(|| Ball {
        x: (share(across) - 0.5) * inner,
        height: length(height, 0.0, most),
        radius,
        core: core.min(radius),
    })
}
