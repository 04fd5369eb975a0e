//! `[[hive]]`: how a hive is built for this winter.

use super::boxes::{self, Kind};
use super::ids::{id, id_of};
use super::indoors::Rooms;
use super::layers;
use super::named_hive::{NamedHive, Wanted, find};
use super::report::Report;
use super::scalar::Limits;
use super::section::{Entry, Section, shown};
use crate::change::{FloorKind, floor_of, hole};
use crate::layer::{face, wall_absorptance};
use crate::openings::{Aperture, guard, guards};
use crate::{ApiaryId, FoodBody, FrameWay, Hive, HiveId, Layer, Material, Neighbour, Side};
use snowhum_say::{Text, hive_fault as say, yard_fault, yard_taken};
use snowhum_units::{Bare, Degree, Fraction, Metre};
use std::str::FromStr;

const KEYS: [&str; 24] = [
    "id",
    "name",
    "kind",
    "boxes",
    "wall",
    "floor",
    "frames_way",
    "lid",
    "lid_breathes",
    "wrap",
    "wall_colour",
    "roof_colour",
    "rim",
    "entrance",
    "guard",
    "upper_hole",
    "upper_hole_side",
    "facing",
    "stand",
    "neighbour",
    "board",
    "indoors",
    "in",
    "out",
];

/// Keys whose silence is filled with what is usual, and that is then said.
const TAKEN: [(&str, Text); 7] = [
    ("boxes", yard_taken::boxes),
    ("floor", yard_taken::floor),
    ("lid", yard_taken::lid),
    ("entrance", yard_taken::entrance),
    ("upper_hole", yard_taken::upper_hole),
    ("wrap", yard_taken::wrap),
    ("facing", yard_taken::facing),
];

/// What every hive of a file is built with.
pub(crate) struct Builder<'a> {
    pub(crate) yard: ApiaryId,
    pub(crate) own: &'a [Material],
    pub(crate) southern: bool,
    pub(crate) rooms: &'a Rooms,
}

pub(crate) fn read(section: &Section<'_>, builder: &Builder<'_>, report: &mut Report) -> NamedHive {
    section.only(&KEYS, report);
    let name = section.need("name", say::needs_name, report);
    let name = name.and_then(|entry| entry.name(report));
    let neighbour = section.get("neighbour", report).and_then(|entry| neighbour(&entry, report));
    let hive_id = name.as_deref().map(|name| HiveId(id(section, id_of(builder.yard, "hive", name), report)));
    let hive = placed(section, name.as_deref().zip(hive_id), builder, report);
    let shut_at = hive.as_ref().filter(|hive| hive.is_sealed()).map(|_| shut(section, report));
    NamedHive { name, hive, spot: section.spot.clone(), shut_at, neighbour }
}

/// The hive of a colony that only says its kind.
pub(crate) fn implied(section: &Section<'_>, name: &str, builder: &Builder<'_>, report: &mut Report) -> NamedHive {
    let id = HiveId(id_of(builder.yard, "hive", name));
    let hive = placed(section, Some((name, id)), builder, report);
    NamedHive { name: Some(name.to_owned()), hive, spot: section.spot.clone(), shut_at: None, neighbour: None }
}

/// The hive as it is built, with where it is to winter.
fn placed(
    section: &Section<'_>,
    named: Option<(&str, HiveId)>,
    builder: &Builder<'_>,
    report: &mut Report,
) -> Option<Hive> {
    let indoors = builder.rooms.of(section, report);
    let food_body = section.get("board", report).map_or(Some(None), |entry| food_body(&entry, report).map(Some));
    let hive = build(section, named, builder, report)?;
    Some(Hive { indoors: indoors?, food_body: food_body?, ..hive })
}

/// Food on the hive as a body, as a note would say it.
fn food_body(entry: &Entry<'_>, report: &mut Report) -> Option<FoodBody> {
    let body = FoodBody::read(entry.text(report)?, Bare::Refused);
    let body = body.map_err(|wrong| report.wrong(&entry.spot, wrong)).ok()?;
    if body.pollen {
        report.advise(&entry.spot, yard_taken::pollen());
    }
    Some(body)
}

fn build(
    section: &Section<'_>,
    named: Option<(&str, HiveId)>,
    builder: &Builder<'_>,
    report: &mut Report,
) -> Option<Hive> {
    let kind = boxes::kind(section, report);
    let wall = wall(section, kind.as_ref(), builder, report);
    let stack = kind.as_ref().zip(wall.as_ref()).and_then(|(kind, wall)| boxes::boxes(section, kind, wall, report));
    let dress = dress(section, kind.as_ref(), builder, report);
    let place = place(section, builder, report);
    let ways = ways(section, report);
    let floor_kind = section.get("floor", report).map_or(Some(FloorKind::Solid), |entry| entry.parsed(report));
    let ((name, id), kind) = (named?, kind?);
    let (boxes, dress, place, ways) = (stack?, dress?, place?, ways?);
    say_defaults(section, report);
    Some(cut(
        Hive {
            id,
            name: name.to_owned(),
            standard: kind_name(&kind),
            floor: floor_of(floor_kind?, &boxes).ok()?,
            frames: place.way,
            lid_breathes: dress.breathes,
            wall_absorptance: dress.wall_colour.unwrap_or_else(|| wall_absorptance(&dress.wrap, &boxes)),
            boxes,
            roof_absorptance: dress.roof_colour.unwrap_or_else(|| face(dress.lid.last())),
            lid: dress.lid,
            wrap: dress.wrap,
            rim: place.rim,
            openings: Vec::new(),
            facing: place.facing,
            stand: place.stand,
            neighbour: None,
            indoors: None,
            food_body: None,
        },
        &ways,
    ))
}

/// Says that a hive has no way out for its bees, at the entrance that is shut; gives the line of that.
fn shut(section: &Section<'_>, report: &mut Report) -> usize {
    let spot = section.get("entrance", report).map_or_else(|| section.spot.clone(), |entry| entry.spot);
    report.fault(&spot, say::shut(), say::shut_right());
    spot.line
}

/// Cuts the openings into a hive.
fn cut(mut hive: Hive, ways: &Ways) -> Hive {
    hive.set_entrance(ways.entrance, ways.guard.as_deref().and_then(guard));
    hive.set_upper_hole(ways.upper_hole, ways.upper_hole_side);
    hive.fit_openings();
    hive
}

fn kind_name(kind: &Kind) -> String {
    match kind {
        Kind::Standard(shelf) => shelf.name.clone(),
        Kind::Own => "own sizes".to_owned(),
    }
}

fn wall(section: &Section<'_>, kind: Option<&Kind>, builder: &Builder<'_>, report: &mut Report) -> Option<Layer> {
    match (section.get("wall", report), kind?) {
        (Some(entry), _) => layers::sheet(&entry, builder.own, report),
        (None, Kind::Standard(shelf)) => shelf.wall.parse().ok(),
        (None, Kind::Own) => {
            report.missing(&section.spot, "wall", say::needs_wall());
            None
        }
    }
}

/// What the hive wears.
struct Dress {
    lid: Vec<Layer>,
    breathes: bool,
    wrap: Vec<Layer>,
    wall_colour: Option<Fraction>,
    roof_colour: Option<Fraction>,
}

fn dress(section: &Section<'_>, kind: Option<&Kind>, builder: &Builder<'_>, report: &mut Report) -> Option<Dress> {
    let lid = match section.get("lid", report) {
        Some(entry) => lid(&entry, builder, report),
        None => match kind {
            Some(Kind::Standard(shelf)) => shelf.lid.iter().map(|sheet| sheet.parse().ok()).collect(),
            _ => Layer::from_str("plywood 10 mm").ok().map(|board| vec![board]),
        },
    };
    let wrap = match section.get("wrap", report) {
        Some(entry) => layers::sheets(&entry, builder.own, report),
        None => Some(Vec::new()),
    };
    let mut colour = |key: &str| match section.get(key, report) {
        Some(entry) => colour(&entry, report).map(Some),
        None => Some(None),
    };
    let (wall_colour, roof_colour) = (colour("wall_colour"), colour("roof_colour"));
    let breathes = match section.get("lid_breathes", report) {
        Some(entry) => entry.truth(report),
        None => Some(lid.as_ref().and_then(|lid| lid.first()).is_some_and(Layer::breathes)),
    };
    Some(Dress { lid: lid?, breathes: breathes?, wrap: wrap?, wall_colour: wall_colour?, roof_colour: roof_colour? })
}

fn lid(entry: &Entry<'_>, builder: &Builder<'_>, report: &mut Report) -> Option<Vec<Layer>> {
    let sheets = layers::sheets(entry, builder.own, report)?;
    if sheets.is_empty() {
        report.fault(&entry.spot, say::no_cover(), say::no_cover_right());
        return None;
    }
    Some(sheets)
}

/// Absorptance for sun by colour (from memory).
fn colour(entry: &Entry<'_>, report: &mut Report) -> Option<Fraction> {
    const COLOURS: [(&str, f64); 8] = [
        ("white", 0.3),
        ("light", 0.4),
        ("bare wood", 0.6),
        ("galvanised", 0.6),
        ("middle", 0.6),
        ("grey", 0.7),
        ("dark", 0.85),
        ("black", 0.95),
    ];
    entry.word(&COLOURS, report).map(Fraction::new)
}

/// How the hive stands.
struct Place {
    way: FrameWay,
    rim: Metre,
    facing: Degree,
    stand: Metre,
}

fn place(section: &Section<'_>, builder: &Builder<'_>, report: &mut Report) -> Option<Place> {
    const RIM: Limits = Limits::new(0.0, 0.3, || yard_fault::between("0 mm", "300 mm", "10 mm"));
    const STAND: Limits = Limits::new(0.0, 10.0, || yard_fault::between("0 m", "10 m", "40 cm"));
    let noon = if builder.southern { 0.0 } else { 180.0 };
    let way = match section.get("frames_way", report) {
        Some(entry) => entry.word(&[("cold", FrameWay::Cold), ("warm", FrameWay::Warm)], report),
        None => Some(FrameWay::Cold),
    };
    let mut metres = |key: &str, limits: &Limits, usual_m: f64| match section.get(key, report) {
        Some(entry) => entry.quantity::<Metre>(limits, report),
        None => Some(Metre::new(usual_m)),
    };
    let (rim, stand) = (metres("rim", &RIM, 0.010), metres("stand", &STAND, 0.40));
    let facing = match section.get("facing", report) {
        Some(entry) => facing(&entry, report),
        None => Some(Degree::new(noon)),
    };
    Some(Place { way: way?, rim: rim?, facing: facing?, stand: stand? })
}

/// `"south"`, `"south-east"` or `"150 deg"`.
fn facing(entry: &Entry<'_>, report: &mut Report) -> Option<Degree> {
    const POINTS: [(&str, f64); 8] = [
        ("north", 0.0),
        ("north-east", 45.0),
        ("east", 90.0),
        ("south-east", 135.0),
        ("south", 180.0),
        ("south-west", 225.0),
        ("west", 270.0),
        ("north-west", 315.0),
    ];
    const LIMITS: Limits = Limits::new(0.0, 360.0, say::facing);
    let written = entry.value.as_str().unwrap_or_default();
    if written.trim_start().starts_with(|c: char| c.is_alphabetic()) {
        return entry.word(&POINTS, report).map(Degree::new);
    }
    entry.quantity::<Degree>(&LIMITS, report)
}

/// The ways in for air that the keeper sets.
struct Ways {
    entrance: Aperture,
    guard: Option<String>,
    upper_hole: Aperture,
    upper_hole_side: Side,
}

const SIDES: [(&str, Side); 4] =
    [("front", Side::Front), ("back", Side::Back), ("left", Side::Left), ("right", Side::Right)];

fn ways(section: &Section<'_>, report: &mut Report) -> Option<Ways> {
    let entrance = section.get("entrance", report).map_or(Some(Aperture::Reduced), |entry| entry.parsed(report));
    let guard = match section.get("guard", report) {
        Some(entry) => known_guard(&entry, report).map(Some),
        None => Some(None),
    };
    let upper_hole = match section.get("upper_hole", report) {
        Some(entry) => {
            let text = entry.text(report);
            text.and_then(|text| hole(text).map_err(|wrong| report.wrong(&entry.spot, wrong)).ok())
        }
        None => Some(Aperture::Shut),
    };
    let side = section.get("upper_hole_side", report).map_or(Some(Side::Front), |entry| entry.word(&SIDES, report));
    Some(Ways { entrance: entrance?, guard: guard?, upper_hole: upper_hole?, upper_hole_side: side? })
}

fn known_guard(entry: &Entry<'_>, report: &mut Report) -> Option<String> {
    let written = entry.text(report)?;
    if guard(written).is_none() {
        entry.no_such_word(written, guards().iter().map(|guard| guard.name.as_str()), report);
        return None;
    }
    Some(written.to_owned())
}

fn neighbour(entry: &Entry<'_>, report: &mut Report) -> Option<Wanted> {
    const EXAMPLE: &str = "{ hive = \"Alder\", side = \"left\" }";
    let section = entry.section(EXAMPLE, report)?;
    section.only(&["hive", "side"], report);
    let name = section.need("hive", || yard_fault::write(EXAMPLE), report).and_then(|entry| entry.name(report));
    let side = section.need("side", say::needs_side, report);
    let side = side.and_then(|entry| entry.word(&SIDES, report));
    Some(Wanted { name: name?, side: side?, spot: entry.spot.clone() })
}

/// Joins each hive to the neighbour it names, once all are read.
pub(crate) fn join_neighbours(hives: &mut [NamedHive], report: &mut Report) {
    for at in 0..hives.len() {
        let Some(wanted) = hives[at].neighbour.take() else { continue };
        let other = find(hives, &wanted.name);
        let itself = other.is_some_and(|other| other.spot.line == hives[at].spot.line);
        let joined = match (other, &hives[at].hive) {
            (None, _) => {
                report.fault(&wanted.spot, say::no_hive(shown(&wanted.name)), say::no_hive_right());
                None
            }
            _ if itself => {
                report.fault(&wanted.spot, say::itself(), say::itself_right());
                None
            }
            (Some(other), Some(own)) => other.hive.as_ref().map(|other| joined(own, other, wanted.side)),
            _ => None,
        };
        if let Some(hive) = &mut hives[at].hive {
            hive.neighbour = joined;
        }
    }
}

/// The share of the own wall that the other hive covers: that side, as high as both stand.
fn joined(own: &Hive, other: &Hive, side: Side) -> Neighbour {
    let (length, width) = own.boxes.first().map_or((1.0, 1.0), |one| (one.length.get(), one.width.get()));
    let front_is_width = own.frames == FrameWay::Cold;
    let across = matches!(side, Side::Front | Side::Back) == front_is_width;
    let breadth = if across { width } else { length };
    let top = |hive: &Hive| hive.stand.get() + hive.boxes_height().get();
    let overlap = (top(own).min(top(other)) - own.stand.get().max(other.stand.get())).max(0.0);
    let high = own.boxes_height().get().max(f64::MIN_POSITIVE);
    let share = breadth / (2.0 * (length + width)) * (overlap / high).min(1.0);
    Neighbour { hive: other.id, share: Fraction::new(share) }
}

fn say_defaults(section: &Section<'_>, report: &mut Report) {
    let silent = TAKEN.iter().filter(|(key, _)| section.get(key, report).is_none());
    let taken: Vec<_> = silent.map(|(_, what)| what()).collect();
    if !taken.is_empty() {
        report.advise(&section.spot, yard_taken::hive(taken));
    }
}
