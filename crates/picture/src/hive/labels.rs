//! What is said of the parts of a hive, and where each part is.

use super::air;
use super::faces;
use super::food_body;
use super::frame::Frame;
use super::inside::{heap_height, pieces_of};
use super::measured::{MOST_BOXES, Measured, length, share};
use super::section::*;
use crate::figures::{Figures, about, percent};
use crate::geometry::{Point, Rect};
use snowhum_units::{Kilogram, Same, SquareMetre};

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
    spoken(hive, labels)
}

/// Parts pointed at first.
const FIRST: usize = 5;

/// The parts that tell most: the bees, what they can eat and what they cannot reach, the openings, the lid over them.
pub(crate) fn first_labels(hive: &HiveSection, m: &Measured, frame: &Frame) -> Vec<Label> {
    let food = [StoresState::InReach, StoresState::OutOfReach];
    let mut labels: Vec<Label> = colony(hive, m, frame).into_iter().take(1).collect();
    labels.extend(food.into_iter().filter_map(|state| food_of(state, hive, m, frame)));
    labels.extend(board(hive, m, frame));
    labels.extend(ways_in(hive).map(|one| opening(one, hive, m, frame)));
    labels.extend(heap(hive, m, frame));
    labels.extend(roof_and_lid(hive, m, frame));
    labels.extend(snow(hive, m, frame));
    labels.truncate(FIRST);
    spoken(hive, labels)
}

/// What a keeper puts on a hive or takes off it, from the roof down.
pub(crate) fn dress_labels(hive: &HiveSection, m: &Measured, frame: &Frame) -> Vec<Label> {
    let mut labels = roof_and_lid(hive, m, frame);
    labels.extend(board(hive, m, frame));
    labels.extend(walls(hive, m, frame));
    labels.extend(ways_in(hive).map(|one| opening(one, hive, m, frame)));
    labels.push(floor(hive, m, frame));
    spoken(hive, labels)
}

/// Openings that are cut: joints are everywhere, and a mesh is the floor's.
fn ways_in(hive: &HiveSection) -> impl Iterator<Item = &SectionOpening> {
    hive.openings.iter().filter(|one| !matches!(one.face, Face::Below | Face::Round)).take(air::MOST_OPENINGS)
}

fn spoken(hive: &HiveSection, mut labels: Vec<Label>) -> Vec<Label> {
    for label in &mut labels {
        label.heading = hive.speech.said(&label.heading);
    }
    labels
}

fn label(anchor: Point, heading: impl Into<String>, body: impl Into<String>) -> Label {
    Label { anchor, heading: heading.into(), body: body.into() }
}

fn figures(hive: &HiveSection) -> Figures {
    Figures { system: hive.system }
}

fn snow(hive: &HiveSection, m: &Measured, frame: &Frame) -> Vec<Label> {
    let say = figures(hive);
    let mut labels = Vec::new();
    if m.snow_roof > 0.0 {
        let at = frame.at(-m.outer * 0.3, m.roof_top + m.snow_roof * 0.5);
        labels.push(label(at, "Snow on the roof", say.length(hive.snow.roof)));
    }
    if m.snow_bank > 0.0 {
        let at = frame.at(m.half_width + 0.04, m.ground + 0.4 * m.snow_bank);
        labels.push(label(at, "Snow round it", format!("{} over the ground", say.length(hive.snow.bank))));
    }
    labels
}

fn sheets(hive: &HiveSection, sheets: &[Sheet]) -> String {
    let said = sheets.iter().take(MOST_BOXES).map(|sheet| sheet_words(hive, sheet));
    said.collect::<Vec<_>>().join(", ")
}

fn sheet_words(hive: &HiveSection, sheet: &Sheet) -> String {
    match figures(hive).thickness(sheet.thickness) {
        Some(thickness) => format!("{} {thickness}", sheet.name),
        None => sheet.name.clone(),
    }
}

fn roof_and_lid(hive: &HiveSection, m: &Measured, frame: &Frame) -> Vec<Label> {
    let mut labels = Vec::new();
    if let Some(roof) = &hive.roof {
        let at = frame.at(m.outer * 0.36, (m.roof_top + m.lid_top) / 2.0);
        labels.push(label(at, "Roof", sheet_words(hive, &roof.sheet)));
    }
    if !hive.lid.is_empty() {
        let at = frame.at(-m.outer * 0.42, (m.lid_top + m.lid_bottom) / 2.0);
        labels.push(label(at, "Over the bees", sheets(hive, &hive.lid)));
    }
    if m.lid_bottom - m.boxes_top > 0.02 && hive.food_body.is_none() {
        let at = frame.at(m.outer * 0.5 - 0.01, (m.boxes_top + m.lid_bottom) / 2.0);
        labels.push(label(at, "Rim over the frames", figures(hive).length(hive.rim)));
    }
    labels
}

fn walls(hive: &HiveSection, m: &Measured, frame: &Frame) -> Vec<Label> {
    let mut labels = Vec::new();
    if let (Some(one), Some(measured)) = (hive.boxes.first(), m.boxes.first()) {
        let at =
            frame.at(-(measured.inner + measured.wall) / 2.0, measured.bottom + (measured.top - measured.bottom) * 0.4);
        labels.push(label(at, "Walls", sheet_words(hive, &one.wall)));
    }
    if !hive.wrap.is_empty() {
        let at =
            frame.at(m.outer / 2.0 + super::measured::thickness(&m.wrap) / 2.0, m.rise + (m.boxes_top - m.rise) * 0.24);
        labels.push(label(at, "Wrap", sheets(hive, &hive.wrap)));
    }
    labels
}

/// Temperatures, with the water that lies on the same face.
fn zones(hive: &HiveSection, m: &Measured, frame: &Frame) -> Vec<Label> {
    let mut labels = Vec::new();
    for spot in [Spot::WarmZone, Spot::ColdZone, Spot::Lid, Spot::Walls, Spot::Floor] {
        let reading = hive.temperatures.iter().find(|reading| reading.spot == spot);
        let wet = hive.wet.iter().find(|wet| wet.face.spot() == spot && wet.rate.get() > 0.0);
        let mut said: Vec<String> = reading.map(|one| figures(hive).temperature(one.temperature)).into_iter().collect();
        said.extend(wet.map(|wet| wet_words(hive, wet)));
        if !said.is_empty() {
            labels.push(label(faces::place(spot, m, frame), spot_words(spot), said.join(", ")));
        }
    }
    labels
}

pub(crate) const fn spot_words(spot: Spot) -> &'static str {
    match spot {
        Spot::WarmZone => "Warm zone",
        Spot::ColdZone => "Cold zone",
        Spot::Lid => "Underside of the lid",
        Spot::Walls => "Inner wall",
        Spot::Floor => "Floor, upper side",
    }
}

pub(crate) fn wet_words(hive: &HiveSection, wet: &WetFace) -> String {
    let form = match wet.form {
        WaterForm::Water => "wet",
        WaterForm::Frost => "frosted",
    };
    format!("{form}, {}", figures(hive).wetting(wet.rate))
}

fn colony(hive: &HiveSection, m: &Measured, frame: &Frame) -> Vec<Label> {
    let Some(ball) = m.ball else { return Vec::new() };
    let say = figures(hive);
    match &hive.colony {
        SectionColony::None => Vec::new(),
        SectionColony::Dead(dead) => vec![label(frame.at(ball.x, ball.height), "Dead colony", dead.words.clone())],
        SectionColony::Alive(cluster) => {
            let edge = frame.at(ball.x - ball.radius * 0.72, ball.height - ball.radius * 0.3);
            let bees = format!("about {} bees, mantle {}", about(cluster.bees), say.temperature(cluster.mantle));
            let mut labels = vec![label(edge, "Cluster", bees)];
            if ball.core > 0.0 {
                let core = frame.at(ball.x + ball.core * 0.35, ball.height);
                labels.push(label(core, "Warm core", say.temperature(cluster.core)));
            }
            labels
        }
    }
}

/// How much food of each kind there is in all, told at its largest piece.
fn food(hive: &HiveSection, m: &Measured, frame: &Frame) -> Vec<Label> {
    let kinds = StoresState::ALL.into_iter().filter(|state| *state != StoresState::Empty);
    kinds.filter_map(|state| food_of(state, hive, m, frame)).collect()
}

fn food_of(state: StoresState, hive: &HiveSection, m: &Measured, frame: &Frame) -> Option<Label> {
    let of_kind = || hive.stores.iter().filter(|stores| stores.state == state);
    let pieces = of_kind().flat_map(|stores| pieces_of(stores, hive, m, frame));
    let ball = m.ball.map(|ball| (frame.at(ball.x, ball.height), frame.len(ball.radius) + 3.0));
    let is_hidden =
        |at: Point| ball.is_some_and(|(middle, radius)| (at.x - middle.x).same_hypot(at.y - middle.y) < radius);
    let spots = pieces.flat_map(|piece| spots_of(piece).map(|at| (at, piece.width * piece.height)));
    let seen = |(at, area): &(Point, f64)| area * if is_hidden(*at) { 1e-3 } else { 1.0 };
    let (anchor, _) = spots.max_by(|a, b| seen(a).total_cmp(&seen(b)))?;
    let total: Kilogram = of_kind().map(|stores| stores.mass).sum();
    let heading = match state {
        StoresState::Touched => "Food touched",
        StoresState::InReach => "Food in reach",
        StoresState::OutOfReach => "Food out of reach",
        StoresState::Empty => "Empty comb",
    };
    Some(label(anchor, heading, figures(hive).mass(total)))
}

/// Where a piece may be pointed at: its middle is liked best.
fn spots_of(piece: Rect) -> [Point; 5] {
    let middle = piece.middle();
    let (aside, up) = (piece.width * 0.38, piece.height * 0.38);
    [middle.moved(0.0, up), middle.moved(0.0, -up), middle.moved(-aside, 0.0), middle.moved(aside, 0.0), middle]
}

/// The board, slab or feeder that is on.
fn board(hive: &HiveSection, m: &Measured, frame: &Frame) -> Option<Label> {
    hive.food_body.as_ref().map(|one| label(food_body::anchor(one, m, frame), &*one.name, &*one.words))
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
    label(anchor, one.name.clone(), opening_words(one, hive, m))
}

pub(crate) fn opening_words(one: &SectionOpening, hive: &HiveSection, m: &Measured) -> String {
    let say = figures(hive);
    let mut said = Vec::new();
    let area = SquareMetre::new(one.width.get() * one.depth.get() * one.open.get());
    if !matches!(one.face, Face::Below | Face::Round) {
        said.push(match share(one.open) {
            _ if one.shut.is_some() => one.shut.clone().unwrap_or_default(),
            open if open >= 0.995 => format!("{}, all open", say.area(area)),
            _ => format!("{} open, {} of it", say.area(area), percent(one.open)),
        });
    }
    said.extend(match one.flow.get() {
        // In no weather nobody asks.
        flow if !flow.is_finite() => hive.outside.map(|_| "air not known".to_owned()),
        flow if flow.abs() < 1e-7 => Some("air stands".to_owned()),
        flow if flow > 0.0 => Some(format!("air in {}", say.flow(one.flow))),
        _ => Some(format!("air out {}", say.flow(one.flow))),
    });
    if !matches!(one.face, Face::Round) && m.snow_bank > 0.0 && m.snow_line() >= length(one.height, 0.0, m.roof_top) {
        said.push("snow before it".to_owned());
    }
    said.join(", ")
}

pub(crate) const fn floor_words(kind: FloorLook) -> &'static str {
    match kind {
        FloorLook::Solid => "solid",
        FloorLook::Mesh => "mesh, open below",
        FloorLook::TrayedMesh => "mesh, tray in",
    }
}

fn floor(hive: &HiveSection, m: &Measured, frame: &Frame) -> Label {
    let at = frame.at(m.outer * 0.5 - 0.012, m.floor_bottom * 0.6);
    let kind = floor_words(hive.floor.kind);
    let words =
        if m.stand > 0.0 { format!("{kind}, stand {}", figures(hive).length(hive.stand)) } else { kind.to_owned() };
    label(at, "Floor", words)
}

fn heap(hive: &HiveSection, m: &Measured, frame: &Frame) -> Option<Label> {
    let at = frame.at(-m.inner * 0.3, heap_height(hive.dead_on_floor, m) * 0.5);
    (hive.dead_on_floor > 0)
        .then(|| label(at, "Dead bees on the floor", format!("about {}", about(hive.dead_on_floor))))
}
