//! The plate of a hive cut open: drawing in the middle, callouts to both sides, key and scale bar below.

use super::frame::Frame;
use super::labels::{Label, dress_labels, first_labels, labels};
use super::measured::Measured;
use super::section::HiveSection;
use super::{air, faces, food_body, inside, said, shell, snow};
use crate::callout::{Column, Columns, Placed, Wanted, place};
use crate::geometry::{Path, Point, Rect};
use crate::legend;
use crate::plate::Plate;
use crate::scene::{Anchor, Ink, Mark, Pen, Scene, Type};
use crate::tint::Tint;
use crate::words::{clean, fitted, lines, width};
use snowhum_say::{Text, Tongue, hive_picture as text};
use snowhum_units::{Metre, System};

/// How wide the page is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PlateWidth {
    /// A desk: 760 units wide, words beside the drawing.
    Desk,
    /// A phone: 360 units wide, numbers beside the drawing and their words below.
    Phone,
}

/// Heading and words of a callout.
const SIZE: f64 = 14.0;
const LINE: f64 = 17.0;
/// Room of a number's ring, from its middle.
const BADGE: f64 = 13.0;

/// How many parts are pointed at.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Pointed {
    /// The five that tell most: bees, food, openings.
    First,
    /// What it is dressed with.
    Dress,
    /// Every part.
    All,
}

struct Sizes {
    width: f64,
    /// Where the drawing stands, headline left out.
    room: Rect,
    /// Room for a callout's words.
    column: f64,
    left_edge: f64,
    right_edge: f64,
}

impl PlateWidth {
    const fn sizes(self) -> Sizes {
        match self {
            Self::Desk => Sizes {
                width: 760.0,
                room: Rect::new(204.0, 66.0, 352.0, 480.0),
                column: 180.0,
                left_edge: 192.0,
                right_edge: 568.0,
            },
            Self::Phone => Sizes {
                width: 360.0,
                room: Rect::new(40.0, 66.0, 280.0, 420.0),
                column: 2.0 * BADGE,
                left_edge: 28.0,
                right_edge: 332.0,
            },
        }
    }
}

pub(crate) fn cutaway(hive: &HiveSection, plate: PlateWidth, pointed: Pointed) -> Plate {
    let sizes = plate.sizes();
    let measured = Measured::of(hive);
    let frame = Frame::fit(&measured, sizes.room);
    let mut scene = Scene::new(sizes.width, 0.0);
    headline(&mut scene, hive, sizes.width);
    drawing(&mut scene, hive, &measured, &frame);
    let labels = match pointed {
        Pointed::First => first_labels(hive, &measured, &frame),
        Pointed::Dress => dress_labels(hive, &measured, &frame),
        Pointed::All => labels(hive, &measured, &frame),
    };
    let drawn_bottom = frame.y(measured.ground - frame.below());
    let bottom = match plate {
        PlateWidth::Desk => callouts(&mut scene, &labels, &sizes, drawn_bottom),
        PlateWidth::Phone => badges(&mut scene, &labels, &sizes, drawn_bottom),
    };
    scale_bar(&mut scene, hive.tongue, &frame, Point::new(sizes.room.middle().x, drawn_bottom + 14.0));
    let bottom = bottom.max(drawn_bottom + 44.0);
    let keys = keys(hive, &scene);
    let end = legend::draw(&mut scene, &keys, 12.0, sizes.width - 12.0, bottom + 8.0);
    let bottom = if keys.is_empty() { end.y } else { end.y + legend::ROW };
    scene.set_height((bottom + 8.0).ceil());
    Plate {
        title: said::title(hive),
        description: said::description(hive, &labels),
        table: said::table(hive, &labels),
        scene,
    }
}

pub(crate) fn drawing(scene: &mut Scene, hive: &HiveSection, measured: &Measured, frame: &Frame) {
    snow::lying(scene, measured, frame);
    shell::stand(scene, measured, frame);
    shell::wrap(scene, measured, frame);
    shell::boxes(scene, measured, frame);
    inside::frames(scene, hive, measured, frame);
    inside::colony(scene, hive, measured, frame);
    food_body::draw(scene, hive, measured, frame);
    shell::floor(scene, hive, measured, frame);
    shell::lid(scene, measured, frame);
    shell::roof(scene, measured, frame);
    faces::water(scene, hive, measured, frame);
    snow::on_top(scene, measured, frame);
    air::openings(scene, hive, measured, frame);
    faces::points(scene, hive, measured, frame);
}

fn headline(scene: &mut Scene, hive: &HiveSection, width: f64) {
    let room = width - 24.0;
    scene.words(Point::new(12.0, 26.0), fitted(&said::name(hive), 20.0, room), Type::heavy(20.0));
    let weather = fitted(&said::weather_line(hive), 15.0, room);
    if !weather.is_empty() {
        scene.words(Point::new(12.0, 48.0), weather, Type::regular(15.0));
    }
}

/// Words in columns; says where the longer one ends.
fn callouts(scene: &mut Scene, labels: &[Label], sizes: &Sizes, drawn_bottom: f64) -> f64 {
    let body = |label: &Label| lines(&label.body, SIZE, sizes.column);
    let heading = |label: &Label| lines(&label.heading, SIZE, sizes.column);
    let count = |label: &Label| (heading(label).len() + body(label).len()) as f64;
    let wanted: Vec<Wanted> =
        labels.iter().map(|label| Wanted { anchor: label.anchor, height: count(label) * LINE }).collect();
    let placed = place(&wanted, columns(sizes, drawn_bottom, 9.0, LINE * 0.55));
    leaders(scene, labels, &placed, 4.0);
    for one in &placed {
        let label = &labels[one.which];
        let (x, anchor) = match one.column {
            Column::Left => (sizes.left_edge, Anchor::End),
            Column::Right => (sizes.right_edge, Anchor::Start),
        };
        let mut y = one.top + LINE * 0.78;
        let headed = heading(label).into_iter().map(|line| (line, Type::heavy(SIZE)));
        for (line, type_) in headed.chain(body(label).into_iter().map(|line| (line, Type::regular(SIZE)))) {
            scene.words(Point::new(x, y), line, type_.anchored(anchor));
            y += LINE;
        }
    }
    placed.iter().map(|one| one.top + wanted[one.which].height).fold(0.0, f64::max)
}

/// Numbers in columns and their words below; says where the words end.
fn badges(scene: &mut Scene, labels: &[Label], sizes: &Sizes, drawn_bottom: f64) -> f64 {
    let wanted: Vec<Wanted> = labels.iter().map(|label| Wanted { anchor: label.anchor, height: 2.0 * BADGE }).collect();
    let placed = place(&wanted, columns(sizes, drawn_bottom, 4.0, BADGE));
    leaders(scene, labels, &placed, 0.0);
    let mut y = placed.iter().map(|one| one.top + 2.0 * BADGE).fold(drawn_bottom + 40.0, f64::max) + 12.0;
    for (at, one) in placed.iter().enumerate() {
        let label = &labels[one.which];
        let x = if one.column == Column::Left { sizes.left_edge - BADGE } else { sizes.right_edge + BADGE };
        badge(scene, Point::new(x, one.top + BADGE), at + 1);
        badge(scene, Point::new(12.0 + BADGE, y + BADGE), at + 1);
        let text = Point::new(12.0 + 2.0 * BADGE + 8.0, y + BADGE + 5.0);
        y += key(scene, label, text) + 5.0;
    }
    y
}

/// One callout's words, on one line if they fit; says how high they are.
fn key(scene: &mut Scene, label: &Label, at: Point) -> f64 {
    const ROOM: f64 = 302.0;
    let (regular, heading) = (Type::regular(SIZE), clean(&label.heading));
    if width(&format!("{heading}  {}", label.body), SIZE) <= ROOM {
        scene.led_words(at, heading, label.body.clone(), regular);
        return 2.0 * BADGE;
    }
    scene.words(at, fitted(&heading, SIZE, ROOM), Type::heavy(SIZE));
    let body = lines(&label.body, SIZE, ROOM);
    for (row, line) in body.iter().enumerate() {
        scene.words(at.moved(0.0, LINE * (row + 1) as f64), line.clone(), regular);
    }
    LINE * (1 + body.len()) as f64 + 6.0
}

fn badge(scene: &mut Scene, centre: Point, number: usize) {
    scene.shape(Path::circle(centre, BADGE - 1.0), Some(Tint::Paper), Pen::FIRM);
    let type_ = Type::heavy(SIZE).anchored(Anchor::Middle);
    scene.words(centre.moved(0.0, 5.0), number.to_string(), type_);
}

fn columns(sizes: &Sizes, drawn_bottom: f64, gap: f64, drop: f64) -> Columns {
    let (left_edge, right_edge) = (sizes.left_edge, sizes.right_edge);
    Columns { left_edge, right_edge, top: sizes.room.y, bottom: drawn_bottom + 24.0, gap, drop }
}

fn leaders(scene: &mut Scene, labels: &[Label], placed: &[Placed], gap: f64) {
    for one in placed {
        let away = if one.column == Column::Left { gap } else { -gap };
        let (from, to) = (one.joint.moved(away, 0.0), labels[one.which].anchor);
        scene.shape(Path::line(from, to), None, Pen::new(Ink::Page, 2.6));
        scene.part("leader", Path::line(from, to), None, Pen::new(Ink::Full, 0.8));
        scene.shape(Path::circle(to, 1.9), Some(Tint::Solid), Pen::new(Ink::Page, 0.8));
    }
}

fn scale_bar(scene: &mut Scene, tongue: Tongue, frame: &Frame, middle: Point) {
    // 100 mm, 4 in.
    let length = Metre::new(if tongue.system() == System::Us { 0.1016 } else { 0.1 });
    let half = frame.len(length.get()) / 2.0;
    let (left, right) = (middle.moved(-half, 0.0), middle.moved(half, 0.0));
    let bar = Path::line(left, right);
    let ends = Path::line(left.moved(0.0, -4.0), left.moved(0.0, 4.0));
    let ends = ends.and(Path::line(right.moved(0.0, -4.0), right.moved(0.0, 4.0)));
    scene.part("scale", bar, None, Pen::FIRM);
    scene.shape(ends, None, Pen::FIRM);
    scene.words(
        middle.moved(0.0, 17.0),
        tongue.say(&text::scale(length)),
        Type::regular(SIZE).anchored(Anchor::Middle),
    );
}

/// The tints that need a key, as far as they are in the picture.
fn keys(hive: &HiveSection, scene: &Scene) -> Vec<(Tint, String)> {
    const KEYED: [(Tint, Text); 8] = [
        (Tint::Touched, text::touched),
        (Tint::InReach, text::in_reach),
        (Tint::OutOfReach, text::out_of_reach),
        (Tint::EmptyComb, text::empty_comb),
        (Tint::Bees, text::bees),
        (Tint::Core, text::core),
        (Tint::DeadBees, text::dead_bees),
        (Tint::Snow, text::snow),
    ];
    let is_drawn = |(wanted, _): &(Tint, Text)| {
        scene.marks.iter().any(|mark| matches!(mark, Mark::Shape { tint, .. } if *tint == Some(*wanted)))
    };
    KEYED.into_iter().filter(is_drawn).map(|(tint, key)| (tint, hive.say(&key()))).collect()
}
