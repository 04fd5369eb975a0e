//! How many bees, and how much brood.

use super::report::Report;
use super::scalar::Limits;
use super::section::{Entry, Section, shown};
use crate::comb::{bees_on, bees_stated, brood_on, frames_covered, most_bees};
use crate::nearest::quoted;
use crate::words::{Combs, brood_words, sized, strength_words};
use crate::{Hive, SizedWord};
use snowhum_say::{colony_fault as say, yard_fault};
use snowhum_units::Range;

const BEES: Limits = Limits::new(1.0, 120_000.0, || yard_fault::from_such("1", "120000", "15000"));
const FRAMES: Limits = Limits::new(0.1, 60.0, || yard_fault::from_such("0.1", "60", "7.5"));

/// Bees as they were found.
pub(crate) struct Found {
    pub(crate) bees: Range<f64>,
    pub(crate) frames: f64,
    pub(crate) by_word: bool,
}

/// What the keeper says about bees, before the hive is asked what it means.
struct Said {
    bees: Option<Range<f64>>,
    frames: Option<f64>,
    word: Option<&'static SizedWord>,
}

pub(crate) fn read(section: &Section<'_>, hive: Option<&Hive>, report: &mut Report) -> Option<Found> {
    let said = Said {
        bees: stated(section, hive, report)?,
        frames: frames(section, hive, report)?,
        word: word(section, hive, report)?,
    };
    let hive = hive?;
    let side = hive.mean_comb_side();
    let (bees, by_word) = match (said.bees, said.frames, said.word) {
        (Some(bees), ..) => (bees, false),
        (None, Some(frames), _) => (bees_on(frames, side), false),
        (None, None, Some(word)) => (word.range(), true),
        (None, None, None) => {
            report.missing(&section.spot, "frames_of_bees", say::needs_bees());
            return None;
        }
    };
    let combs = f64::from(hive.comb_count());
    let frames = said.frames.unwrap_or_else(|| frames_covered(bees.p50, side)).clamp(0.1, combs);
    let most = most_bees(hive);
    Some(Found { bees: bees.map(|count| count.min(most)), frames, by_word })
}

/// `bees`, with `bees_low` and `bees_high` where they are given. The outer `None` is a fault.
fn stated(section: &Section<'_>, hive: Option<&Hive>, report: &mut Report) -> Option<Option<Range<f64>>> {
    let mut figure = |key: &str| match section.get(key, report) {
        Some(entry) => entry.number(&BEES, report).and_then(|bees| room_for(bees, &entry, hive, report)).map(Some),
        None => Some(None),
    };
    let (low, bees, high) = (figure("bees_low"), figure("bees"), figure("bees_high"));
    let (low, bees, high) = (low?, bees?, high?);
    let Some((entry, bees)) = section.get("bees", report).zip(bees) else {
        if low.is_some() || high.is_some() {
            report.missing(&section.spot, "bees", say::needs_likeliest());
            return None;
        }
        return Some(None);
    };
    let usual = bees_stated(bees);
    let range = Range::new(low.unwrap_or(usual.p10), bees, high.unwrap_or(usual.p90));
    if range.is_none() {
        report.fault(&entry.spot, say::outside(), say::outside_right());
    }
    range.map(Some)
}

/// A number of bees that the hive's combs hold; a fault with both figures if they do not.
fn room_for(bees: f64, entry: &Entry<'_>, hive: Option<&Hive>, report: &mut Report) -> Option<f64> {
    let Some((hive, most)) = hive.map(|hive| (hive, most_bees(hive))).filter(|(_, most)| bees > *most) else {
        return Some(bees);
    };
    let hold = (most / 100.0).floor() * 100.0;
    report.fault(&entry.spot, say::crowded(bees, hive.comb_count(), hold), say::crowded_right());
    None
}

/// `frames_of_bees` or `seams_of_bees`.
fn frames(section: &Section<'_>, hive: Option<&Hive>, report: &mut Report) -> Option<Option<f64>> {
    let entry = match (section.get("frames_of_bees", report), section.get("seams_of_bees", report)) {
        (Some(frames), Some(_)) => {
            report.fault(&frames.spot, say::frames_and_seams(), say::frames_and_seams_right());
            return None;
        }
        (frames, seams) => frames.or(seams),
    };
    let Some(entry) = entry else { return Some(None) };
    let frames = entry.number(&FRAMES, report)?;
    let Some(hive) = hive else { return Some(Some(frames)) };
    // The outermost seams lie between a comb and the wall.
    let most = f64::from(hive.comb_count()) + 1.0;
    if frames > most {
        report.fault(&entry.spot, say::frames(hive.comb_count(), frames), say::frames_right());
        return None;
    }
    Some(Some(frames))
}

fn word(section: &Section<'_>, hive: Option<&Hive>, report: &mut Report) -> Option<Option<&'static SizedWord>> {
    match section.get("strength", report) {
        Some(entry) => sized_word(&entry, strength_words(), hive, report).map(Some),
        None => Some(None),
    }
}

/// A word that means something else in a nucleus than in two boxes.
pub(crate) fn sized_word(
    entry: &Entry<'_>,
    words: &'static [SizedWord],
    hive: Option<&Hive>,
    report: &mut Report,
) -> Option<&'static SizedWord> {
    let written = entry.text(report)?;
    let found = sized(words, written, hive.map_or(Combs::OneBox, Combs::of));
    if found.is_none() {
        let known = words.iter().filter(|row| row.combs == Combs::OneBox).map(|row| row.word.as_str());
        entry.no_such_word(written, known, report);
    }
    found
}

/// `brood`: a word, `"1.5 frames"` or `"3000 cells"`; none where nobody looked.
pub(crate) fn brood(section: &Section<'_>, hive: Option<&Hive>, report: &mut Report) -> Option<Option<Range<f64>>> {
    let Some(entry) = section.get("brood", report) else { return Some(None) };
    let written = entry.text(report)?.trim();
    if let Some(row) = brood_words().iter().find(|row| crate::shipped::same_name(&row.word, written)) {
        return Some(row.range());
    }
    let (number, unit) = written.split_once(' ').unwrap_or((written, ""));
    let amount = snowhum_units::number(number).ok().filter(|amount| (0.0..=200_000.0).contains(amount));
    match (amount, unit.trim()) {
        (Some(frames), "frame" | "frames") if frames <= 40.0 => Some(Some(brood_on(frames, hive?.mean_comb_side()))),
        (Some(cells), "cells") => Some(Some(Range { p10: 0.8 * cells, p50: cells, p90: 1.25 * cells })),
        _ => {
            let words = quoted(brood_words().iter().map(|row| &row.word));
            report.fault(&entry.spot, say::no_brood(shown(written)), say::brood_right(words));
            None
        }
    }
}
