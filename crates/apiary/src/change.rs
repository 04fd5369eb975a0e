//! Changes of a winter set-up, for comparing one with another.

use crate::kinds::{Told, kinds};
use crate::layer::wall_absorptance;
use crate::nearest::instead;
use crate::openings::Aperture;
use crate::shipped::same_name;
use crate::standards::standard;
use crate::wrong::Wrong;
use crate::{Floor, Hive, HiveBox, Layer, OpeningKind, Side};
use snowhum_say::{Message, dress_fault as say, fault};
use snowhum_units::Bare;
use std::fmt;
use std::str::FromStr;

/// One change of a hive's set-up.
#[derive(Debug, Clone, PartialEq)]
pub enum SetupChange {
    /// Insulation over the inner cover in place of what is there; none with `lid=off`.
    Lid(Option<Layer>),
    /// A breathing layer in place of the whole lid; a plain board again with `quilt=off`.
    Quilt(Option<Layer>),
    /// The upper hole.
    UpperHole(Aperture),
    /// What is wrapped round the walls.
    Wrap(Option<Layer>),
    /// The floor.
    Floor(FloorKind),
    /// The flight entrance.
    Entrance(Aperture),
    /// The boxes from below, by size.
    Boxes(Vec<String>),
}

/// A floor by its kind.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FloorKind {
    /// Boards.
    Solid,
    /// Mesh, open below.
    OpenMesh,
    /// Mesh with a tray pushed in.
    TrayedMesh,
}

kinds! {
    /// What a change is about.
    ChangeKind of SetupChange:
    Lid: "lid=50 mm foam" => |told| layer_or_off(told.how).map(SetupChange::Lid);
    Quilt: "quilt=straw 60 mm" => |told| quilt(told.how);
    UpperHole: "upper hole=25 mm" => |told| hole(told.how).map(SetupChange::UpperHole);
    Wrap: "wrap=felt paper" => |told| layer_or_off(told.how).map(SetupChange::Wrap);
    Floor: "floor=open mesh" => |told| told.how.parse().map(SetupChange::Floor);
    Entrance: "entrance=reduced" => |told| told.how.parse().map(SetupChange::Entrance);
    Boxes: "boxes=deep,deep" => |told| boxes(told.how);
}

impl FromStr for SetupChange {
    type Err = Wrong;

    /// Reads `what=how`.
    ///
    /// ```
    /// use snowhum_apiary::SetupChange;
    /// let change: SetupChange = "lid=50mm foam".parse().unwrap();
    /// assert_eq!(change.to_string(), "lid=xps foam 50 mm");
    /// assert!("colour=red".parse::<SetupChange>().is_err());
    /// ```
    fn from_str(text: &str) -> Result<Self, Wrong> {
        const LONGEST: usize = 200;
        if text.len() > LONGEST {
            return Err(Wrong::new(say::too_long(), examples()));
        }
        let Some((what, how)) = text.split_once('=') else {
            return Err(Wrong::new(fault::no_equals(text), examples()));
        };
        let what = what.trim().to_lowercase().replace(['_', '-'], " ");
        let what = match what.as_str() {
            "upper entrance" => "upper hole",
            "box" => "boxes",
            usual => usual,
        };
        let told = Told { what, how, colony: &|_| None, bare: Bare::Refused };
        ChangeKind::of_word(what).ok_or_else(|| unknown(what))?.read(&told)
    }
}

impl fmt::Display for SetupChange {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let layer = |layer: &Option<Layer>| layer.as_ref().map_or("off".to_owned(), Layer::to_string);
        match self {
            Self::Lid(sheet) => write!(f, "lid={}", layer(sheet)),
            Self::Quilt(sheet) => write!(f, "quilt={}", layer(sheet)),
            Self::Wrap(sheet) => write!(f, "wrap={}", layer(sheet)),
            Self::UpperHole(aperture) => write!(f, "upper hole={aperture}"),
            Self::Entrance(aperture) => write!(f, "entrance={aperture}"),
            Self::Floor(floor) => write!(f, "floor={floor}"),
            Self::Boxes(sizes) => write!(f, "boxes={}", sizes.join(",")),
        }
    }
}

impl fmt::Display for Layer {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let millimetres = (self.thickness.get() * 1e5).round() / 100.0;
        write!(f, "{} {millimetres} mm", self.material.name)
    }
}

impl fmt::Display for Aperture {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let millimetres = |length: &snowhum_units::Metre| (length.get() * 1e5).round() / 100.0;
        match self {
            Self::Shut => f.write_str("off"),
            Self::Reduced => f.write_str("reduced"),
            Self::Full => f.write_str("full"),
            Self::Round(diameter) => write!(f, "{} mm", millimetres(diameter)),
            Self::Slot(width, height) => write!(f, "{} mm x {} mm", millimetres(width), millimetres(height)),
        }
    }
}

impl FromStr for FloorKind {
    type Err = Wrong;

    fn from_str(text: &str) -> Result<Self, Wrong> {
        match text.trim().to_lowercase().as_str() {
            "solid" => Ok(Self::Solid),
            "open mesh" | "mesh" | "screened" => Ok(Self::OpenMesh),
            "mesh with tray" | "tray" | "trayed mesh" => Ok(Self::TrayedMesh),
            other => Err(Wrong::new(say::no_floor(other), say::floor_right())),
        }
    }
}

impl fmt::Display for FloorKind {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Solid => "solid",
            Self::OpenMesh => "open mesh",
            Self::TrayedMesh => "mesh with tray",
        })
    }
}

impl Hive {
    /// The hive with one thing changed.
    ///
    /// # Errors
    /// When the change does not fit this hive: a size of box its standard does not have, an upper hole that is `full`.
    pub fn with_change(&self, change: &SetupChange) -> Result<Self, Wrong> {
        let mut hive = self.clone();
        match change {
            SetupChange::Lid(insulation) => hive.change_lid(insulation.as_ref())?,
            SetupChange::Quilt(Some(quilt)) => {
                hive.lid = vec![quilt.clone()];
                hive.lid_breathes = true;
            }
            SetupChange::Quilt(None) => {
                hive.lid.retain(|sheet| !sheet.breathes());
                hive.board_under_lid()?;
                hive.lid_breathes = false;
            }
            SetupChange::UpperHole(aperture) => hive.change_upper_hole(*aperture),
            SetupChange::Wrap(wrap) => {
                hive.wrap = wrap.iter().cloned().collect();
                hive.wall_absorptance = wall_absorptance(&hive.wrap, &hive.boxes);
            }
            SetupChange::Floor(kind) => {
                hive.floor = floor_of(*kind, &hive.boxes)?;
                hive.fit_openings();
            }
            SetupChange::Entrance(aperture) => hive.set_entrance(*aperture, None),
            SetupChange::Boxes(sizes) => hive.change_boxes(sizes)?,
        }
        Ok(hive)
    }

    /// Keeps the inner cover, if there is one, and lays the insulation on it.
    fn change_lid(&mut self, insulation: Option<&Layer>) -> Result<(), Wrong> {
        self.lid.truncate(1);
        self.lid.retain(Layer::is_board);
        self.board_under_lid()?;
        self.lid.extend(insulation.cloned());
        self.lid_breathes = self.lid.iter().all(Layer::breathes);
        Ok(())
    }

    fn board_under_lid(&mut self) -> Result<(), Wrong> {
        if self.lid.first().is_none_or(|sheet| !sheet.is_board()) {
            self.lid.insert(0, "plywood 10 mm".parse()?);
        }
        Ok(())
    }

    fn change_upper_hole(&mut self, aperture: Aperture) {
        let before = self.openings.iter().find(|opening| opening.kind == OpeningKind::UpperHole);
        let side = before.map_or(Side::Front, |opening| opening.side);
        self.set_upper_hole(aperture, side);
    }

    fn change_boxes(&mut self, sizes: &[String]) -> Result<(), Wrong> {
        self.boxes = sizes.iter().map(|size| self.box_of(size)).collect::<Result<_, _>>()?;
        self.fit_openings();
        Ok(())
    }

    /// A box of this size as the hive has it already, or as its standard has it.
    fn box_of(&self, size: &str) -> Result<HiveBox, Wrong> {
        if let Some(own) = self.boxes.iter().find(|one| same_name(&one.size, size)) {
            return Ok(own.clone());
        }
        let shelf = standard(&self.standard);
        let found = shelf.and_then(|shelf| shelf.size(size));
        match (found, self.boxes.last()) {
            (Some(found), Some(top)) => Ok(found.build(&top.wall)),
            _ => {
                let known = match shelf {
                    Some(shelf) => shelf.sizes.iter().map(|size| (&size.size).into()).collect(),
                    None => self.boxes.iter().map(|one| (&one.size).into()).collect(),
                };
                Err(Wrong::new(say::no_box(&self.standard, size), say::box_right(known)))
            }
        }
    }
}

/// A floor of this kind under these boxes; boards are of the boxes' own wall, a tray is 4 mm plywood (common practice).
pub(crate) fn floor_of(kind: FloorKind, boxes: &[HiveBox]) -> Result<Floor, Wrong> {
    match kind {
        FloorKind::OpenMesh => Ok(Floor::OpenMesh),
        FloorKind::TrayedMesh => "plywood 4 mm".parse().map(Floor::TrayedMesh),
        FloorKind::Solid => match boxes.first() {
            Some(lowest) => Ok(Floor::Solid(lowest.wall.clone())),
            None => "pine 19 mm".parse().map(Floor::Solid),
        },
    }
}

fn layer_or_off(how: &str) -> Result<Option<Layer>, Wrong> {
    match how.trim().to_lowercase().as_str() {
        "off" | "none" | "bare" => Ok(None),
        _ => how.parse().map(Some),
    }
}

fn quilt(how: &str) -> Result<SetupChange, Wrong> {
    let quilt = layer_or_off(how)?;
    if let Some(sheet) = quilt.as_ref().filter(|sheet| !sheet.breathes()) {
        return Err(Wrong::new(say::no_quilt(&sheet.material.name), say::quilt_right()));
    }
    Ok(SetupChange::Quilt(quilt))
}

/// An upper hole; only a hole or slot of some size, or none.
pub(crate) fn hole(how: &str) -> Result<Aperture, Wrong> {
    match how.parse::<Aperture>() {
        Ok(Aperture::Full | Aperture::Reduced) => Err(Wrong::new(say::no_hole(how.trim()), say::hole_right())),
        other => other,
    }
}

fn boxes(how: &str) -> Result<SetupChange, Wrong> {
    const MOST: usize = 12;
    let sizes: Vec<String> = how.split([',', '+']).map(|size| size.trim().to_owned()).collect();
    if sizes.len() > MOST || sizes.iter().any(String::is_empty) {
        return Err(Wrong::new(say::no_stack(how), say::stack_right(MOST)));
    }
    Ok(SetupChange::Boxes(sizes))
}

fn unknown(what: &str) -> Wrong {
    let known = instead(what, ChangeKind::ALL.iter().map(|kind| kind.word()));
    Wrong::new(say::nothing(what), say::nothing_right(known))
}

fn examples() -> Message {
    let all = ChangeKind::ALL.iter().flat_map(|kind| kind.examples());
    say::examples(all.map(|example| (*example).into()).collect())
}
