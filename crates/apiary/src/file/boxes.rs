//! The stack of boxes: sizes of the standard by name, or own sizes written out.

use super::report::Report;
use super::scalar::Limits;
use super::section::{Entry, Section, shown};
use crate::standards::{Standard, standards};
use crate::{HiveBox, Layer, standard};
use snowhum_units::{Metre, SquareMetre};
use toml::de::DeValue;

const OWN_KEYS: [&str; 7] = ["size", "length", "width", "depth", "frames", "comb_length", "comb_height"];
const OWN_EXAMPLE: &str = "{ size = \"brood\", length = \"450 mm\", width = \"380 mm\", depth = \"300 mm\", \
                           frames = 10, comb_length = \"410 mm\", comb_height = \"260 mm\" }";
const INSIDE: Limits = Limits::new(0.1, 1.5, "between 100 mm and 1.5 m, such as \"450 mm\"");
const MOST_BOXES: usize = 12;

/// What a hive is built to.
pub(crate) enum Kind {
    /// A standard known by name.
    Standard(&'static Standard),
    /// The keeper's own sizes.
    Own,
}

/// `kind = "…"`.
pub(crate) fn kind(section: &Section<'_>, report: &mut Report) -> Option<Kind> {
    let entry = section.need("kind", "say what it is built to, such as kind = \"Langstroth 10\"", report)?;
    let written = entry.text(report)?.trim();
    if written.eq_ignore_ascii_case("own") {
        return Some(Kind::Own);
    }
    if let Some(found) = standard(written) {
        return Some(Kind::Standard(found));
    }
    let names = standards().iter().map(|standard| standard.name.as_str());
    let aliases = standards().iter().flat_map(|standard| standard.aliases.iter().map(String::as_str));
    let remedy = format!("{}; or write \"own\" with the sizes", crate::nearest::instead(written, names.chain(aliases)));
    report.fault(&entry.spot, format!("\"{}\" is no known kind of hive", shown(written)), remedy);
    None
}

/// `boxes = [ … ]`, from below; without it the boxes the standard usually winters in.
pub(crate) fn boxes(section: &Section<'_>, kind: &Kind, wall: &Layer, report: &mut Report) -> Option<Vec<HiveBox>> {
    let Some(entry) = section.get("boxes", report) else {
        return match kind {
            Kind::Standard(shelf) => {
                let usual = shelf.usual_boxes.iter().filter_map(|name| shelf.size(name));
                Some(usual.map(|size| size.build(wall)).collect())
            }
            Kind::Own => {
                report.missing(&section.spot, "boxes", &format!("write boxes = [{OWN_EXAMPLE}]"));
                None
            }
        };
    };
    let items = entry.list(report)?;
    if items.is_empty() || items.len() > MOST_BOXES {
        let problem = format!("a hive of {} boxes cannot be", items.len());
        report.fault(
            &entry.spot,
            problem,
            format!("name 1 to {MOST_BOXES} boxes from below, such as [\"deep\", \"deep\"]"),
        );
        return None;
    }
    let read: Vec<Option<HiveBox>> = items.iter().map(|item| one(item, kind, wall, report)).collect();
    read.into_iter().collect()
}

fn one(entry: &Entry<'_>, kind: &Kind, wall: &Layer, report: &mut Report) -> Option<HiveBox> {
    if matches!(entry.value, DeValue::Table(_)) {
        return own(entry, wall, report);
    }
    let Kind::Standard(shelf) = kind else {
        report.fault(&entry.spot, "needs its sizes, since the hive is of its own kind", format!("write {OWN_EXAMPLE}"));
        return None;
    };
    let name = entry.text(report)?;
    let found = shelf.size(name);
    if found.is_none() {
        let known: Vec<String> = shelf.sizes.iter().map(|size| format!("\"{}\"", size.size)).collect();
        let problem = format!("{} has no box called \"{}\"", shelf.name, shown(name));
        report.fault(&entry.spot, problem, format!("use one of {}, or write the sizes out", known.join(", ")));
    }
    found.map(|size| size.build(wall))
}

fn own(entry: &Entry<'_>, wall: &Layer, report: &mut Report) -> Option<HiveBox> {
    let section = entry.section(OWN_EXAMPLE, report)?;
    section.only(&OWN_KEYS, report);
    let mut metres = |key: &str, limits: &Limits| {
        let found = section.need(key, "every size of an own box is needed, such as \"450 mm\"", report)?;
        found.quantity::<Metre>(limits, report)
    };
    let comb = Limits::new(0.05, 1.5, "between 50 mm and 1.5 m, such as \"260 mm\"");
    let (length, width, depth) = (metres("length", &INSIDE), metres("width", &INSIDE), metres("depth", &INSIDE));
    let (comb_length, comb_height) = (metres("comb_length", &comb), metres("comb_height", &comb));
    let frames = section.need("frames", "say how many combs it holds", report);
    let frames = frames.and_then(|entry| entry.whole(&Limits::new(1.0, 40.0, "from 1 to 40"), report));
    let size = match section.get("size", report) {
        Some(size) => size.name(report)?,
        None => "own".to_owned(),
    };
    let (length, width, depth, comb_length, comb_height) = (length?, width?, depth?, comb_length?, comb_height?);
    let frames = frames?;
    if comb_length > length || comb_height > depth {
        report.fault(
            &section.spot,
            "has combs larger than the box",
            "measure the comb inside its frame, the box inside its walls",
        );
        return None;
    }
    // Less than 25 mm a comb leaves no room for bees between combs that are 25 mm thick themselves.
    if width.get() / f64::from(frames) < 0.025 {
        report.fault(
            &section.spot,
            format!("is too narrow for {frames} combs"),
            "a comb with its gap takes 32 to 40 mm of the width",
        );
        return None;
    }
    let comb_side: SquareMetre = comb_length * comb_height;
    Some(HiveBox { size, length, width, depth, wall: wall.clone(), frames, comb_side })
}
