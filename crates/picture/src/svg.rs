//! Writing a plate as SVG.

use crate::geometry::{Path, Point, Step};
use crate::plate::Plate;
use crate::prefix::IdPrefix;
use crate::scene::{Anchor, Ink, Mark, Pen, Scene, Type, Weight};
use crate::style;
use crate::tint::Tint;
use crate::words::{clean, escaped};
use std::collections::BTreeSet;
use std::fmt::Write;

/// Largest coordinate written; what lies farther off is drawn at the edge.
const FARTHEST: f64 = 1e5;

/// Outlines longer than this are written once and used twice, bytes.
const LONG_OUTLINE: usize = 120;

/// Whether the picture carries its own style.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Dress {
    Bare,
    Dressed,
}

pub(crate) fn write(plate: &Plate, prefix: &IdPrefix, dress: Dress) -> String {
    let scene = &plate.scene;
    let tints = tints_of(scene);
    let mut out = String::with_capacity(8_192);
    let (width, height) = (number(scene.width()), number(scene.height()));
    let _ = write!(
        out,
        "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"sn\" viewBox=\"0 0 {width} {height}\" role=\"img\" \
         aria-labelledby=\"{prefix}-t {prefix}-d\"><title id=\"{prefix}-t\">{}</title><desc id=\"{prefix}-d\">{}</desc>",
        escaped(&clean(&plate.title)),
        escaped(&clean(&plate.description)),
    );
    if dress == Dress::Dressed {
        let _ = write!(out, "<style>{}</style>", style::of(&tints, &inks_of(scene)));
    }
    definitions(&mut out, scene, prefix, &tints);
    out.push_str("<g fill=\"none\" stroke-linecap=\"round\" stroke-linejoin=\"round\">");
    if dress == Dress::Dressed {
        let _ = write!(out, "<path class=\"sn-paper\" d=\"M0 0H{width}V{height}H0z\"/>");
    }
    for (at, mark) in scene.marks.iter().enumerate() {
        write_mark(&mut out, mark, at, prefix);
    }
    out.push_str("</g></svg>\n");
    out
}

fn tints_of(scene: &Scene) -> BTreeSet<Tint> {
    let tint = |mark: &Mark| match mark {
        Mark::Shape { tint, .. } => *tint,
        Mark::Words { .. } => None,
    };
    scene.marks.iter().filter_map(tint).collect()
}

fn inks_of(scene: &Scene) -> BTreeSet<Ink> {
    let ink = |mark: &Mark| match mark {
        Mark::Shape { pen, .. } => (pen.width > 0.0).then_some(pen.ink),
        Mark::Words { .. } => None,
    };
    scene.marks.iter().filter_map(ink).collect()
}

fn definitions(out: &mut String, scene: &Scene, prefix: &IdPrefix, tints: &BTreeSet<Tint>) {
    let hatched: Vec<_> = tints.iter().filter_map(|tint| tint.hatch().map(|hatch| (tint, hatch))).collect();
    if hatched.is_empty() && scene.clips.is_empty() {
        return;
    }
    out.push_str("<defs stroke-linecap=\"round\">");
    for (tint, hatch) in hatched {
        let (width, height, tile) = hatch.tile();
        let class = if hatch.is_filled() { "sn-h sn-hf" } else { "sn-h" };
        let _ = write!(
            out,
            "<pattern id=\"{prefix}-{}\" width=\"{width}\" height=\"{height}\" patternUnits=\"userSpaceOnUse\">\
             <path class=\"{class}\" stroke-width=\"{}\" d=\"{tile}\"/></pattern>",
            tint.name(),
            hatch.stroke(),
        );
    }
    for (at, clip) in scene.clips.iter().enumerate() {
        let _ = write!(out, "<clipPath id=\"{prefix}-c{at}\"><path d=\"{}\"/></clipPath>", outline(&Path::rect(*clip)));
    }
    out.push_str("</defs>");
}

fn write_mark(out: &mut String, mark: &Mark, number_of: usize, prefix: &IdPrefix) {
    match mark {
        Mark::Words { at, lead, words, type_ } => {
            let _ = write!(out, "<text x=\"{}\" y=\"{}\"{}>", number(at.x), number(at.y), type_attributes(*type_));
            if !lead.is_empty() {
                let _ = write!(out, "<tspan font-weight=\"600\">{}</tspan> ", escaped(&clean(lead)));
            }
            let _ = write!(out, "{}</text>", escaped(&clean(words)));
        }
        Mark::Shape { path, tint, pen, part, clip } => {
            let d = outline(path);
            let clip = clip.map_or_else(String::new, |at| format!(" clip-path=\"url(#{prefix}-c{at})\""));
            let part = part.map_or_else(String::new, |part| format!(" data-part=\"{part}\""));
            let Some(tint) = tint.filter(|tint| tint.hatch().is_some()) else {
                let attributes = format!("{}{clip}{part}", pen_attributes(*pen));
                return write_path(out, &classes(tint.map_or("", Tint::name), *pen), &attributes, &d);
            };
            let (under, over) = (classes(tint.name(), Pen::NONE), classes("", *pen));
            let fill = format!(" fill=\"url(#{prefix}-{})\"{}{clip}", tint.name(), pen_attributes(*pen));
            if d.len() < LONG_OUTLINE {
                write_path(out, &under, &format!("{clip}{part}"), &d);
                return write_path(out, &over, &fill, &d);
            }
            // A long outline is written once: the tint on a group, the hatch and the line on a second use of it.
            let id = format!("{prefix}-m{number_of}");
            let _ = write!(out, "<g class=\"{under}\"{clip}{part}><path id=\"{id}\" d=\"{d}\"/></g>");
            let over = if over.is_empty() { over } else { format!(" class=\"{over}\"") };
            let _ = write!(out, "<use href=\"#{id}\"{over}{fill}/>");
        }
    }
}

fn write_path(out: &mut String, classes: &str, attributes: &str, d: &str) {
    let class = if classes.is_empty() { String::new() } else { format!(" class=\"{classes}\"") };
    let _ = write!(out, "<path{class}{attributes} d=\"{d}\"/>");
}

fn classes(fill: &str, pen: Pen) -> String {
    let fill = if fill.is_empty() { String::new() } else { format!("sn-{fill}") };
    if pen.width <= 0.0 {
        return fill;
    }
    let gap = if fill.is_empty() { "" } else { " " };
    format!("{fill}{gap}sn-l-{}", pen.ink.name())
}

fn pen_attributes(pen: Pen) -> String {
    if pen.width <= 0.0 {
        return String::new();
    }
    let width = format!(" stroke-width=\"{}\"", number(pen.width));
    let Some((dash, gap)) = pen.dash else { return width };
    format!("{width} stroke-dasharray=\"{} {}\"", number(dash), number(gap))
}

fn type_attributes(type_: Type) -> String {
    let anchor = match type_.anchor {
        Anchor::Start => "",
        Anchor::Middle => " text-anchor=\"middle\"",
        Anchor::End => " text-anchor=\"end\"",
    };
    let weight = match type_.weight {
        Weight::Regular => "",
        Weight::Heavy => " font-weight=\"600\"",
    };
    format!(" font-size=\"{}\"{weight}{anchor}", number(type_.size))
}

fn outline(path: &Path) -> String {
    let mut d = String::new();
    let mut last: Option<Point> = None;
    for step in &path.steps {
        let _ = match *step {
            Step::Move(to) => write!(d, "M{} {}", number(to.x), number(to.y)),
            Step::Line(to) if last.is_some_and(|last| number(last.x) == number(to.x)) => write!(d, "V{}", number(to.y)),
            Step::Line(to) if last.is_some_and(|last| number(last.y) == number(to.y)) => write!(d, "H{}", number(to.x)),
            Step::Line(to) => write!(d, "L{} {}", number(to.x), number(to.y)),
            Step::Curve(bend, to) => {
                write!(d, "Q{} {} {} {}", number(bend.x), number(bend.y), number(to.x), number(to.y))
            }
            Step::Circle(centre, radius) => {
                let (r, across) = (number(radius), number(2.0 * radius));
                let (x, y) = (number(centre.x - radius), number(centre.y));
                write!(d, "M{x} {y}a{r} {r} 0 1 0 {across} 0a{r} {r} 0 1 0 -{across} 0z")
            }
            Step::Box(r) => {
                let (x, y) = (number(r.x), number(r.y));
                write!(d, "M{x} {y}H{}V{}H{x}z", number(r.right()), number(r.bottom()))
            }
            Step::Close => write!(d, "z"),
        };
        last = match *step {
            Step::Move(to) | Step::Line(to) | Step::Curve(_, to) => Some(to),
            _ => None,
        };
    }
    d
}

/// A number to two places, without trailing noughts; nought for one that is not finite.
fn number(value: f64) -> String {
    let value = if value.is_finite() { value } else { 0.0 };
    let value = value.clamp(-FARTHEST, FARTHEST);
    let text = format!("{value:.2}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" { "0".to_owned() } else { text.to_owned() }
}

#[cfg(test)]
mod tests {
    use super::number;

    #[test]
    fn coordinates_are_short() {
        assert_eq!([1.0, 0.5, -0.001, 12.346, -3.1, 100.0].map(number), ["1", "0.5", "0", "12.35", "-3.1", "100"]);
        assert_eq!([1e300, f64::NAN, f64::INFINITY].map(number), ["100000", "0", "0"]);
    }
}
