//! What is said of the parts of a hive, and where each part is.

use super::air;
use super::faces;
use super::food_body;
use super::frame::Frame;
use super::inside::{heap_height, pieces_of};
use super::measured::{MOST_BOXES, Measured, length, share};
use super::section::*;
use crate::figures::about;
use crate::geometry::{Point, Rect};
use snowhum_say::{Message, Text, hive_picture as text};
use snowhum_units::{CubicMetrePerSecond, Kilogram, Same, SquareMetre, System};

/// One part pointed at.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Label {
    pub(crate) anchor: Point,
    pub(crate) heading: String,
    pub(crate) body: String,
}

/// Everything worth pointing at.
pub(crate) fn labels(hive: &HiveSection, m: &Measured, frame: &Frame) -> Vec<Label> {
    let mut labels = Vec::new();
    labels.extend(snow(hive, m, frame));
    labels.extend(roof_and_lid(hive, m, frame));
    labels.extend(walls(hive, m, frame));
    labels.extend(zones(hive, m, frame));
    labels.extend(colony(hive, m, frame));
    labels.extend(food(hive, m, frame));
    labels.extend(board(hive, m, frame));
    labels.extend(hive.openings.iter().take(air::MOST_OPENINGS).map(|one| opening(one, hive, m, frame)));
    labels.push(floor(hive, m, frame));
    labels.extend(heap(hive, m, frame));
    labels
}

/// Parts pointed at first.
const FIRST: usize = 5;

/// The parts that tell most: the bees, what they can eat and what they cannot reach, the openings, the lid over them.
pub(crate) fn first_labels(hive: &HiveSection, m: &Measured, frame: &Frame) -> Vec<Label> {
    let mut labels: Vec<Label> = colony(hive, m, frame).into_iter().take(1).collect();
    labels.extend([IN_REACH, OUT_OF_REACH].into_iter().filter_map(|kind| food_of(kind, hive, m, frame)));
    labels.extend(board(hive, m, frame));
    labels.extend(ways_in(hive).map(|one| opening(one, hive, m, frame)));
    labels.extend(heap(hive, m, frame));
    labels.extend(roof_and_lid(hive, m, frame));
    labels.extend(snow(hive, m, frame));
    labels.truncate(FIRST);
    labels
}

/// What a keeper puts on a hive or takes off it, from the roof down.
pub(crate) fn dress_labels(hive: &HiveSection, m: &Measured, frame: &Frame) -> Vec<Label> {
    let mut labels = roof_and_lid(hive, m, frame);
    labels.extend(board(hive, m, frame));
    labels.extend(walls(hive, m, frame));
    labels.extend(ways_in(hive).map(|one| opening(one, hive, m, frame)));
    labels.push(floor(hive, m, frame));
    labels
}

/// Openings that are cut: joints are everywhere, and a mesh is the floor's.
fn ways_in(hive: &HiveSection) -> impl Iterator<Item = &SectionOpening> {
    hive.openings.iter().filter(|one| !matches!(one.face, Face::Below | Face::Round)).take(air::MOST_OPENINGS)
}

fn label(hive: &HiveSection, anchor: Point, heading: impl Into<Message>, says: impl Into<Message>) -> Label {
    Label { anchor, heading: hive.say(&heading.into()), body: hive.say(&says.into()) }
}

fn snow(hive: &HiveSection, m: &Measured, frame: &Frame) -> Vec<Label> {
    let mut labels = Vec::new();
    if m.snow_roof > 0.0 {
        let at = frame.at(-m.outer * 0.3, m.roof_top + m.snow_roof * 0.5);
        labels.push(label(hive, at, text::snow_on_roof(), text::length(hive.snow.roof)));
    }
    if m.snow_bank > 0.0 {
        let at = frame.at(m.half_width + 0.04, m.ground + 0.4 * m.snow_bank);
        labels.push(label(hive, at, text::snow_round(), text::over_ground(hive.snow.bank)));
    }
    labels
}

fn sheets(hive: &HiveSection, sheets: &[Sheet]) -> Message {
    text::list(sheets.iter().take(MOST_BOXES).map(|sheet| sheet_words(hive, sheet)).collect())
}

/// What a sheet is, with its thickness if that is enough to be told.
fn sheet_words(hive: &HiveSection, sheet: &Sheet) -> Message {
    let least = if hive.tongue.system() == System::Us { 0.001_27 } else { 0.000_75 };
    if sheet.thickness.get() < least { (&sheet.name).into() } else { text::sheet(&sheet.name, sheet.thickness) }
}

fn roof_and_lid(hive: &HiveSection, m: &Measured, frame: &Frame) -> Vec<Label> {
    let mut labels = Vec::new();
    if let Some(roof) = &hive.roof {
        let at = frame.at(m.outer * 0.36, (m.roof_top + m.lid_top) / 2.0);
        labels.push(label(hive, at, text::roof(), sheet_words(hive, &roof.sheet)));
    }
    if !hive.lid.is_empty() {
        let at = frame.at(-m.outer * 0.42, (m.lid_top + m.lid_bottom) / 2.0);
        labels.push(label(hive, at, text::lid(), sheets(hive, &hive.lid)));
    }
    if m.lid_bottom - m.boxes_top > 0.02 && hive.food_body.is_none() {
        let at = frame.at(m.outer * 0.5 - 0.01, (m.boxes_top + m.lid_bottom) / 2.0);
        labels.push(label(hive, at, text::rim(), text::length(hive.rim)));
    }
    labels
}

fn walls(hive: &HiveSection, m: &Measured, frame: &Frame) -> Vec<Label> {
    let mut labels = Vec::new();
    if let (Some(one), Some(measured)) = (hive.boxes.first(), m.boxes.first()) {
        let at =
            frame.at(-(measured.inner + measured.wall) / 2.0, measured.bottom + (measured.top - measured.bottom) * 0.4);
        labels.push(label(hive, at, text::walls(), sheet_words(hive, &one.wall)));
    }
    if !hive.wrap.is_empty() {
        let at =
            frame.at(m.outer / 2.0 + super::measured::thickness(&m.wrap) / 2.0, m.rise + (m.boxes_top - m.rise) * 0.24);
        labels.push(label(hive, at, text::wrap(), sheets(hive, &hive.wrap)));
    }
    labels
}

/// Temperatures, with the water that lies on the same face.
fn zones(hive: &HiveSection, m: &Measured, frame: &Frame) -> Vec<Label> {
    let zone = |(spot, heading): (Spot, Text)| {
        let reading = hive.temperatures.iter().find(|reading| reading.spot == spot);
        let wet = hive.wet.iter().find(|wet| wet.face.spot() == spot && wet.rate.get() > 0.0);
        let warmth = reading.map(|one| text::temperature(one.temperature));
        let said: Vec<Message> = warmth.into_iter().chain(wet.map(wet_words)).collect();
        (!said.is_empty()).then(|| label(hive, faces::place(spot, m, frame), heading(), text::list(said)))
    };
    ZONES.into_iter().filter_map(zone).collect()
}

const ZONES: [(Spot, Text); 5] = [
    (Spot::WarmZone, text::warm_zone),
    (Spot::ColdZone, text::cold_zone),
    (Spot::Lid, text::under_lid),
    (Spot::Walls, text::inner_wall),
    (Spot::Floor, text::floor_above),
];

/// Water on a face, by the day.
fn wet_words(wet: &WetFace) -> Message {
    text::wet(wet.form == WaterForm::Frost, Kilogram::new(wet.rate.get() * 86_400.0))
}

fn colony(hive: &HiveSection, m: &Measured, frame: &Frame) -> Vec<Label> {
    let Some(ball) = m.ball else { return Vec::new() };
    match &hive.colony {
        SectionColony::None => Vec::new(),
        SectionColony::Dead(dead) => vec![label(hive, frame.at(ball.x, ball.height), text::dead(), &*dead.words)],
        SectionColony::Alive(cluster) => {
            let edge = frame.at(ball.x - ball.radius * 0.72, ball.height - ball.radius * 0.3);
            let mut labels = vec![label(hive, edge, text::cluster(), text::size(about(cluster.bees), cluster.mantle))];
            if ball.core > 0.0 {
                let core = frame.at(ball.x + ball.core * 0.35, ball.height);
                labels.push(label(hive, core, text::heading(text::core()), text::temperature(cluster.core)));
            }
            labels
        }
    }
}

/// Kinds of food that are told of.
const TOUCHED: (StoresState, Text) = (StoresState::Touched, text::touched);
const IN_REACH: (StoresState, Text) = (StoresState::InReach, text::in_reach);
const OUT_OF_REACH: (StoresState, Text) = (StoresState::OutOfReach, text::out_of_reach);

/// How much food of each kind there is in all, told at its largest piece.
fn food(hive: &HiveSection, m: &Measured, frame: &Frame) -> Vec<Label> {
    [TOUCHED, IN_REACH, OUT_OF_REACH].into_iter().filter_map(|kind| food_of(kind, hive, m, frame)).collect()
}

fn food_of((state, kind): (StoresState, Text), hive: &HiveSection, m: &Measured, frame: &Frame) -> Option<Label> {
    let of_kind = || hive.stores.iter().filter(|stores| stores.state == state);
    let pieces = of_kind().flat_map(|stores| pieces_of(stores, hive, m, frame));
    let ball = m.ball.map(|ball| (frame.at(ball.x, ball.height), frame.len(ball.radius) + 3.0));
    let is_hidden =
        |at: Point| ball.is_some_and(|(middle, radius)| (at.x - middle.x).same_hypot(at.y - middle.y) < radius);
    let spots = pieces.flat_map(|piece| spots_of(piece).map(|at| (at, piece.width * piece.height)));
    let seen = |(at, area): &(Point, f64)| area * if is_hidden(*at) { 1e-3 } else { 1.0 };
    let (anchor, _) = spots.max_by(|a, b| seen(a).total_cmp(&seen(b)))?;
    let total: Kilogram = of_kind().map(|stores| stores.mass).sum();
    Some(label(hive, anchor, text::heading(kind()), text::mass(total)))
}

/// Where a piece may be pointed at: its middle is liked best.
fn spots_of(piece: Rect) -> [Point; 5] {
    let middle = piece.middle();
    let (aside, up) = (piece.width * 0.38, piece.height * 0.38);
    [middle.moved(0.0, up), middle.moved(0.0, -up), middle.moved(-aside, 0.0), middle.moved(aside, 0.0), middle]
}

/// The board, slab or feeder that is on.
fn board(hive: &HiveSection, m: &Measured, frame: &Frame) -> Option<Label> {
    hive.food_body.as_ref().map(|one| label(hive, food_body::anchor(one, m, frame), &*one.name, &*one.words))
}

fn opening(one: &SectionOpening, hive: &HiveSection, m: &Measured, frame: &Frame) -> Label {
    let mut anchor = air::place(one, m, frame);
    let half = frame.len(length(one.width, 0.0, m.inner)) / 2.0;
    match one.face {
        Face::Front | Face::Back => anchor = anchor.moved(-half * share(one.open).max(0.2) * 0.8, 0.0),
        Face::Left => anchor = anchor.moved(3.0, 0.0),
        Face::Right => anchor = anchor.moved(-3.0, 0.0),
        Face::Below | Face::Round => {}
    }
    label(hive, anchor, text::heading(&one.name), opening_words(one, hive, m))
}

fn opening_words(one: &SectionOpening, hive: &HiveSection, m: &Measured) -> Message {
    let mut said = Vec::new();
    let area = SquareMetre::new(one.width.get() * one.depth.get() * one.open.get());
    if !matches!(one.face, Face::Below | Face::Round) {
        said.push(match (share(one.open), &one.shut) {
            (_, Some(shut)) => shut.into(),
            (0.995.., _) => text::all_open(area),
            (open, _) => text::open(area, 100.0 * open),
        });
    }
    said.extend(match one.flow.get() {
        // In no weather nobody asks.
        flow if !flow.is_finite() => hive.outside.map(|_| text::air_unknown()),
        flow if flow.abs() < 1e-7 => Some(text::air_stands()),
        flow if flow > 0.0 => Some(text::air_in(one.flow)),
        flow => Some(text::air_out(CubicMetrePerSecond::new(-flow))),
    });
    if !matches!(one.face, Face::Round) && m.snow_bank > 0.0 && m.snow_line() >= length(one.height, 0.0, m.roof_top) {
        said.push(text::snow_before());
    }
    text::list(said)
}

fn floor(hive: &HiveSection, m: &Measured, frame: &Frame) -> Label {
    let at = frame.at(m.outer * 0.5 - 0.012, m.floor_bottom * 0.6);
    let kind = match hive.floor.kind {
        FloorLook::Solid => text::solid(),
        FloorLook::Mesh => text::mesh(),
        FloorLook::TrayedMesh => text::tray(),
    };
    let stand = (m.stand > 0.0).then(|| text::stand(hive.stand));
    label(hive, at, text::floor(), text::list([kind].into_iter().chain(stand).collect()))
}

fn heap(hive: &HiveSection, m: &Measured, frame: &Frame) -> Option<Label> {
    let at = frame.at(-m.inner * 0.3, heap_height(hive.dead_on_floor, m) * 0.5);
    let many = || text::about(about(hive.dead_on_floor));
    (hive.dead_on_floor > 0).then(|| label(hive, at, text::dead_on_floor(), many()))
}
