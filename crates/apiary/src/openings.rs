//! Free areas and heights of the ways for air, from `data/openings.toml`.

use crate::shipped::{same_name, table};
use crate::wrong::Wrong;
use crate::{Floor, FrameWay, Hive, Opening, OpeningKind, Side};
use serde::Deserialize;
use snowhum_figures::files;
use snowhum_say::dress_fault as say;
use snowhum_units::{Fraction, Metre, ParseError, SquareMetre};
use std::f64::consts::PI;
use std::str::FromStr;
use std::sync::LazyLock;

/// An entrance or hole as a keeper writes it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Aperture {
    /// Shut.
    Shut,
    /// The usual reduced entrance.
    Reduced,
    /// As wide as the box.
    Full,
    /// A round hole of this diameter.
    Round(Metre),
    /// A slot, width by height.
    Slot(Metre, Metre),
}

impl FromStr for Aperture {
    type Err = Wrong;

    /// Reads `reduced`, `full`, `none`, `25 mm` or `76 mm x 10 mm`.
    fn from_str(text: &str) -> Result<Self, Wrong> {
        let text = text.trim();
        match text.to_lowercase().as_str() {
            "none" | "off" | "shut" | "closed" => return Ok(Self::Shut),
            "reduced" | "small" => return Ok(Self::Reduced),
            "full" | "open" => return Ok(Self::Full),
            _ => {}
        }
        match text.split_once(['x', '×', 'X']) {
            None => length(text).map(Self::Round),
            Some((width, height)) if snowhum_units::number(width).is_ok() => {
                // "100 x 8 mm": the unit at the end serves both.
                let unit = height.trim_start_matches(|c: char| !c.is_alphabetic());
                Ok(Self::Slot(length(&format!("{} {unit}", width.trim()))?, length(height)?))
            }
            Some((width, height)) => Ok(Self::Slot(length(width)?, length(height)?)),
        }
    }
}

/// Every guard known.
#[must_use]
pub fn guards() -> &'static [Guard] {
    &FIGURES.guard
}

/// Share of an opening's area that lets air through when it is as these words say.
pub(crate) fn opening_state_figures(words: &str) -> Fraction {
    let found = FIGURES.shut.iter().find(|one| one.words == words);
    Fraction::new(found.map_or(0.0, |one| one.free_share))
}

/// The guard of this name.
pub(crate) fn guard(name: &str) -> Option<&'static Guard> {
    FIGURES.guard.iter().find(|guard| same_name(&guard.name, name) || guard.aliases.iter().any(|a| same_name(a, name)))
}

impl Hive {
    /// Sets the flight entrance; `Shut` takes it away.
    pub(crate) fn set_entrance(&mut self, aperture: Aperture, guard: Option<&Guard>) {
        self.openings.retain(|opening| opening.kind != OpeningKind::Entrance);
        let Some((area_m2, height_m)) = self.size_of(aperture, guard.and_then(|guard| guard.highest_mm)) else {
            return;
        };
        let share = guard.map_or(1.0, |guard| guard.free_share);
        self.openings.insert(
            0,
            Opening {
                kind: OpeningKind::Entrance,
                area: SquareMetre::new(area_m2 * share),
                height: Metre::new(height_m / 2.0),
                discharge: Fraction::new(FIGURES.discharge.entrance),
                side: Side::Front,
            },
        );
    }

    /// Sets the upper hole; `Shut` takes it away.
    pub(crate) fn set_upper_hole(&mut self, aperture: Aperture, side: Side) {
        self.openings.retain(|opening| opening.kind != OpeningKind::UpperHole);
        let Some((area_m2, _)) = self.size_of(aperture, None) else { return };
        self.openings.push(Opening {
            kind: OpeningKind::UpperHole,
            area: SquareMetre::new(area_m2),
            height: self.upper_hole_height(),
            discharge: Fraction::new(FIGURES.discharge.upper_hole),
            side,
        });
    }

    /// Whether bees have no way out: neither an entrance nor a hole. A mesh floor and cracks let in air alone.
    #[must_use]
    pub fn is_sealed(&self) -> bool {
        let is_way = |kind| matches!(kind, OpeningKind::Entrance | OpeningKind::UpperHole);
        !self.openings.iter().any(|opening| is_way(opening.kind))
    }

    /// Fits cracks, mesh and the height of the upper hole to boxes and floor as they stand.
    pub(crate) fn fit_openings(&mut self) {
        self.openings.retain(|opening| !matches!(opening.kind, OpeningKind::Crack | OpeningKind::Mesh));
        let hole = self.upper_hole_height();
        for opening in &mut self.openings {
            if opening.kind == OpeningKind::UpperHole {
                opening.height = hole;
            }
        }
        if self.floor == Floor::OpenMesh {
            self.openings.push(self.mesh());
        }
        self.openings.push(self.cracks());
    }

    /// Height of the boxes over the floor.
    #[must_use]
    pub fn boxes_height(&self) -> Metre {
        self.boxes.iter().map(|one| one.depth).sum()
    }

    fn footprint(&self) -> (f64, f64) {
        self.boxes.first().map_or((0.0, 0.0), |one| (one.length.get(), one.width.get()))
    }

    fn upper_hole_height(&self) -> Metre {
        let top_m = self.boxes_height().get();
        let top_box_m = self.boxes.last().map_or(0.0, |one| one.depth.get());
        Metre::new(top_m - (FIGURES.upper_hole.below_top_mm / 1_000.0).min(top_box_m / 2.0))
    }

    fn mesh(&self) -> Opening {
        let (length_m, width_m) = self.footprint();
        Opening {
            kind: OpeningKind::Mesh,
            area: SquareMetre::new(length_m * width_m * FIGURES.mesh.free_share * FIGURES.mesh.frame_share),
            height: Metre::ZERO,
            discharge: Fraction::new(FIGURES.discharge.mesh),
            side: Side::Below,
        }
    }

    fn cracks(&self) -> Opening {
        let (length_m, width_m) = self.footprint();
        let joints = self.boxes.len() as f64 + 1.0;
        let one_piece = self.boxes.iter().all(|one| one.wall.material.name == "polystyrene");
        let crack = &FIGURES.crack;
        let per_joint_cm2 = if one_piece { crack.polystyrene_cm2_per_joint } else { crack.wood_cm2_per_joint };
        let round = 2.0 * (length_m + width_m) * 1_000.0 / crack.reference_perimeter_mm;
        Opening {
            kind: OpeningKind::Crack,
            area: SquareMetre::new(joints * per_joint_cm2 * round * 1e-4),
            height: self.boxes_height() / 2.0,
            discharge: Fraction::new(FIGURES.discharge.crack),
            side: Side::Round,
        }
    }

    /// Area and height of an aperture in this hive, m² and m.
    fn size_of(&self, aperture: Aperture, highest_mm: Option<f64>) -> Option<(f64, f64)> {
        let entrance = &FIGURES.entrance;
        let nucleus = self.boxes.iter().all(|one| one.frames <= 6);
        let slot = |width_m: f64, height_m: f64| {
            let height_m = highest_mm.map_or(height_m, |highest| height_m.min(highest / 1_000.0));
            (width_m * height_m, height_m)
        };
        match aperture {
            Aperture::Shut => None,
            Aperture::Reduced if nucleus => {
                Some(slot(entrance.nucleus_width_mm / 1_000.0, entrance.nucleus_height_mm / 1_000.0))
            }
            Aperture::Reduced => Some(slot(entrance.reduced_width_mm / 1_000.0, entrance.reduced_height_mm / 1_000.0)),
            Aperture::Full => {
                let (length_m, width_m) = self.footprint();
                let front_m = if self.frames == FrameWay::Cold { width_m } else { length_m };
                Some(slot(front_m, entrance.full_height_mm / 1_000.0))
            }
            Aperture::Round(diameter) => Some((PI / 4.0 * diameter.get().powi(2), diameter.get())),
            Aperture::Slot(width, height) => Some(slot(width.get(), height.get())),
        }
    }
}

/// A guard on the entrance.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Guard {
    /// Its name in the trade.
    pub name: String,
    #[serde(default)]
    aliases: Vec<String>,
    free_share: f64,
    highest_mm: Option<f64>,
    /// Where its free share comes from.
    pub source: String,
    /// How well it is founded.
    pub status: String,
}

/// A width, height or diameter of an opening: above 1 mm, at most a metre.
fn length(text: &str) -> Result<Metre, Wrong> {
    // An opening is measured in millimetres: "25" is no 25 cm.
    let length = Metre::from_str(text).map_err(|error| match error {
        ParseError::NoUnit { text, us, .. } => ParseError::NoUnit { text, metric: "mm", us },
        other => other,
    })?;
    if !(0.001..=1.0).contains(&length.get()) {
        return Err(Wrong::new(say::no_opening(text.trim()), say::opening_right()));
    }
    Ok(length)
}

#[derive(Debug, Default, Deserialize)]
struct Figures {
    discharge: Discharge,
    entrance: Entrance,
    upper_hole: UpperHole,
    crack: Crack,
    mesh: Mesh,
    guard: Vec<Guard>,
    shut: Vec<ShutOpening>,
}

/// An entrance or hole that something lies over or in.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct ShutOpening {
    words: String,
    free_share: f64,
    #[expect(dead_code, reason = "every figure says where it comes from")]
    source: String,
    #[expect(dead_code, reason = "every figure says how well it is founded")]
    status: String,
}

#[derive(Debug, Default, Deserialize)]
struct Discharge {
    entrance: f64,
    upper_hole: f64,
    mesh: f64,
    crack: f64,
}

#[derive(Debug, Default, Deserialize)]
struct Entrance {
    full_height_mm: f64,
    reduced_width_mm: f64,
    reduced_height_mm: f64,
    nucleus_width_mm: f64,
    nucleus_height_mm: f64,
}

#[derive(Debug, Default, Deserialize)]
struct UpperHole {
    below_top_mm: f64,
}

#[derive(Debug, Default, Deserialize)]
struct Crack {
    wood_cm2_per_joint: f64,
    polystyrene_cm2_per_joint: f64,
    reference_perimeter_mm: f64,
}

#[derive(Debug, Default, Deserialize)]
struct Mesh {
    free_share: f64,
    frame_share: f64,
}

static FIGURES: LazyLock<Figures> = LazyLock::new(|| table(files::OPENINGS));

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_guard_has_a_source_and_leaves_part_of_the_entrance_open() {
        assert_eq!(FIGURES.guard.len(), 5);
        for guard in &FIGURES.guard {
            assert!(!guard.source.is_empty() && !guard.status.is_empty(), "{}", guard.name);
            assert!(guard.free_share > 0.0 && guard.free_share <= 1.0, "{}", guard.name);
        }
    }

    #[test]
    fn sizes_are_read_with_one_unit_or_two() {
        let slot = Aperture::Slot(Metre::new(0.1), Metre::new(0.008));
        assert_eq!("100 mm x 8 mm".parse(), Ok(slot));
        assert_eq!("100 x 8 mm".parse(), Ok(slot));
        assert_eq!("25mm".parse(), Ok(Aperture::Round(Metre::new(0.025))));
        assert!("25".parse::<Aperture>().is_err());
        assert!("5 km".parse::<Aperture>().is_err());
    }
}
