//! The stack of boxes: sizes of the standard by name, or own sizes written out.

use super::report::Report;
use super::scalar::Limits;
use super::section::{Entry, Section, shown};
use crate::nearest::{instead, quoted};
use crate::standards::{Standard, standards};
use crate::{HiveBox, Layer, standard};
use snowhum_say::{dress_fault, hive_fault as say, yard_fault};
use snowhum_units::{Metre, SquareMetre};
use toml::de::DeValue;

const OWN_KEYS: [&str; 7] = ["size", "length", "width", "depth", "frames", "comb_length", "comb_height"];
const OWN_EXAMPLE: &str = "{ size = \"brood\", length = \"450 mm\", width = \"380 mm\", depth = \"300 mm\", \
                           frames = 10, comb_length = \"410 mm\", comb_height = \"260 mm\" }";
const INSIDE: Limits = Limits::new(0.1, 1.5, || yard_fault::between("100 mm", "1.5 m", "450 mm"));
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
    let entry = section.need("kind", say::needs_kind, report)?;
    let written = entry.text(report)?.trim();
    if written.eq_ignore_ascii_case("own") {
        return Some(Kind::Own);
    }
    if let Some(found) = standard(written) {
        return Some(Kind::Standard(found));
    }
    let names = standards().iter().map(|standard| standard.name.as_str());
    let aliases = standards().iter().flat_map(|standard| standard.aliases.iter().map(String::as_str));
    let remedy = say::or_own_sizes(instead(written, names.chain(aliases)));
    report.fault(&entry.spot, say::no_kind(shown(written)), remedy);
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
                report.missing(&section.spot, "boxes", yard_fault::write(format!("boxes = [{OWN_EXAMPLE}]")));
                None
            }
        };
    };
    let items = entry.list(report)?;
    if items.is_empty() || items.len() > MOST_BOXES {
        report.fault(&entry.spot, say::stack(items.len()), say::stack_right(MOST_BOXES));
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
        report.fault(&entry.spot, say::no_sizes(), yard_fault::write(OWN_EXAMPLE));
        return None;
    };
    let name = entry.text(report)?;
    let found = shelf.size(name);
    if found.is_none() {
        let known = quoted(shelf.sizes.iter().map(|size| &size.size));
        report.fault(&entry.spot, dress_fault::no_box(&shelf.name, shown(name)), say::box_right(known));
    }
    found.map(|size| size.build(wall))
}

fn own(entry: &Entry<'_>, wall: &Layer, report: &mut Report) -> Option<HiveBox> {
    let section = entry.section(OWN_EXAMPLE, report)?;
    section.only(&OWN_KEYS, report);
    let mut metres = |key: &str, limits: &Limits| {
        let found = section.need(key, say::needs_size, report)?;
        found.quantity::<Metre>(limits, report)
    };
    let comb = Limits::new(0.05, 1.5, || yard_fault::between("50 mm", "1.5 m", "260 mm"));
    let (length, width, depth) = (metres("length", &INSIDE), metres("width", &INSIDE), metres("depth", &INSIDE));
    let (comb_length, comb_height) = (metres("comb_length", &comb), metres("comb_height", &comb));
    let frames = section.need("frames", say::needs_frames, report);
    let frames = frames.and_then(|entry| entry.whole(&Limits::new(1.0, 40.0, || yard_fault::from("1", "40")), report));
    let size = match section.get("size", report) {
        Some(size) => size.name(report)?,
        None => "own".to_owned(),
    };
    let (length, width, depth, comb_length, comb_height) = (length?, width?, depth?, comb_length?, comb_height?);
    let frames = frames?;
    if comb_length > length || comb_height > depth {
        report.fault(&section.spot, say::large_combs(), say::large_combs_right());
        return None;
    }
    // Less than 25 mm a comb leaves no room for bees between combs that are 25 mm thick themselves.
    if width.get() / f64::from(frames) < 0.025 {
        report.fault(&section.spot, say::narrow(frames), say::narrow_right());
        return None;
    }
    let comb_side: SquareMetre = comb_length * comb_height;
    Some(HiveBox { size, length, width, depth, wall: wall.clone(), frames, comb_side })
}
