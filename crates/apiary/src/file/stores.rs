//! How much food, of what, and where it sits.

use super::bees::sized_word;
use super::report::Report;
use super::scalar::Limits;
use super::section::{Entry, Section};
use crate::comb::{food_in, most_food};
use crate::words::{food_words, sitting_words, weighed};
use crate::{Hive, KnownBy, Stores, StoresKind, StoresPlace};
use snowhum_say::{colony_fault as say, yard_fault, yard_taken};
use snowhum_units::{Kilogram, Range};
use toml::de::DeValue;

const WEIGHT: Limits = Limits::new(0.0, 150.0, || yard_fault::between("0 kg", "150 kg", "12 kg"));
const ERROR: Limits = Limits::new(0.0, 50.0, || yard_fault::between("0 kg", "50 kg", "2 kg"));
const FRAMES: Limits = Limits::new(0.0, 60.0, || yard_fault::from_such("0", "60", "6.5"));

/// Food as it was found.
pub(crate) struct Found {
    pub(crate) stores: Stores,
    pub(crate) by_word: bool,
}

pub(crate) fn read(section: &Section<'_>, hive: Option<&Hive>, report: &mut Report) -> Option<Found> {
    let total = total(section, hive, report);
    let kind = kind(section, report);
    let place = match section.get("food_sits", report) {
        Some(entry) => sits(&entry, report),
        None => hive.map(usual_place),
    };
    let (total, known_by, by_word) = total?;
    Some(Found { stores: Stores { total, place: place?, kind: kind?, known_by }, by_word })
}

type Total = (Range<Kilogram>, KnownBy, bool);

fn total(section: &Section<'_>, hive: Option<&Hive>, report: &mut Report) -> Option<Total> {
    let known_by = known_by(section, report);
    let plus_minus = match section.get("plus_minus", report) {
        Some(entry) => entry.quantity::<Kilogram>(&ERROR, report).map(Some),
        None => Some(None),
    };
    let ways = ["stores", "stores_frames", "food"];
    let mut said = ways.iter().filter_map(|key| section.get(key, report).map(|entry| (*key, entry)));
    let Some((key, entry)) = said.next() else {
        report.missing(&section.spot, "stores", say::needs_stores());
        return None;
    };
    if let Some((second, other)) = said.next() {
        report.fault(&other.spot, say::two_ways(key, second), say::two_ways_right());
        return None;
    }
    let (total, known_by, by_word) = match key {
        "stores" => {
            let figure = weight(&entry, report);
            let known_by = known_by?.unwrap_or(KnownBy::Stated);
            (weighed(figure?, known_by, plus_minus?), known_by, false)
        }
        "stores_frames" => {
            let frames = entry.number(&FRAMES, report)?;
            let food = food_in(frames, hive?.mean_comb_side());
            (weighed(food.p50, KnownBy::Frames, plus_minus?), KnownBy::Frames, false)
        }
        _ => (sized_word(&entry, food_words(), hive, report)?.range().map(Kilogram::new), KnownBy::Heft, true),
    };
    within(total, hive?, &entry, report).map(|total| (total, known_by, by_word))
}

/// A weight; a word for food in its place is sent to the key where it belongs.
fn weight(entry: &Entry<'_>, report: &mut Report) -> Option<Kilogram> {
    if let Some(row) = food_words().iter().find(|row| entry.value.as_str() == Some(&row.word)) {
        report.fault(&entry.spot, say::word(&row.word), yard_fault::write(format!("food = \"{}\"", row.word)));
        return None;
    }
    entry.quantity::<Kilogram>(&WEIGHT, report)
}

/// Faults what the combs cannot hold, and cuts what a range says beyond it.
fn within(total: Range<Kilogram>, hive: &Hive, entry: &Entry<'_>, report: &mut Report) -> Option<Range<Kilogram>> {
    let most = most_food(hive);
    if total.p50 > most {
        report.fault(&entry.spot, say::heavy(total.p50, most), say::heavy_right());
        return None;
    }
    Some(total.map(|mass| mass.min(most)))
}

fn known_by(section: &Section<'_>, report: &mut Report) -> Option<Option<KnownBy>> {
    const ALL: [KnownBy; 5] = [KnownBy::Frames, KnownBy::Scale, KnownBy::TwoSidedLift, KnownBy::Heft, KnownBy::Stated];
    match section.get("known_by", report) {
        Some(entry) => entry.word(&ALL.map(|by| (by.word(), by)), report).map(Some),
        None => Some(None),
    }
}

fn kind(section: &Section<'_>, report: &mut Report) -> Option<StoresKind> {
    const KINDS: [(&str, StoresKind); 6] = [
        ("sugar", StoresKind::Sugar),
        ("honey", StoresKind::Honey),
        ("honeydew", StoresKind::Honeydew),
        ("heather", StoresKind::Heather),
        ("ivy", StoresKind::Ivy),
        ("rape", StoresKind::Rape),
    ];
    match section.get("stores_kind", report) {
        Some(entry) => entry.word(&KINDS, report),
        None => {
            report.advise(&section.at("stores_kind"), yard_taken::stores());
            Some(StoresKind::Sugar)
        }
    }
}

/// Where food is taken to sit: above the cluster in two boxes, round it in one.
fn usual_place(hive: &Hive) -> StoresPlace {
    let word = if hive.boxes.len() > 1 { "mostly above" } else { "round the bees" };
    let row = sitting_words().iter().find(|row| row.word == word);
    row.map_or(StoresPlace { touched: 0.3, above: 0.3, beside: 0.3, far: 0.1 }, crate::Sitting::place)
}

/// `food_sits`: a word, or the four shares.
fn sits(entry: &Entry<'_>, report: &mut Report) -> Option<StoresPlace> {
    const EXAMPLE: &str = "{ touched = 0.2, above = 0.6, beside = 0.15, far = 0.05 }";
    const SHARE: Limits = Limits::new(0.0, 1.0, || yard_fault::from("0", "1"));
    if matches!(entry.value, DeValue::String(_)) {
        let words: Vec<(&str, StoresPlace)> =
            sitting_words().iter().map(|row| (row.word.as_str(), row.place())).collect();
        return entry.word(&words, report);
    }
    let section = entry.section(EXAMPLE, report)?;
    section.only(&["touched", "above", "beside", "far"], report);
    let mut share = |key: &str| match section.get(key, report) {
        Some(entry) => entry.number(&SHARE, report),
        None => Some(0.0),
    };
    let (touched, above, beside, far) = (share("touched"), share("above"), share("beside"), share("far"));
    let shares = [touched?, above?, beside?, far?];
    let sum: f64 = shares.iter().sum();
    if (sum - 1.0).abs() > 0.011 {
        report.fault(&entry.spot, say::shares(sum), say::shares_right(EXAMPLE));
        return None;
    }
    let [touched, above, beside, far] = shares.map(|share| share / sum);
    Some(StoresPlace { touched, above, beside, far })
}
