//! `[[colony]]`: the bees as they were found.

use super::hive::{self, Builder};
use super::ids::{id, id_of};
use super::indoors::AT_A_HIVE;
use super::named_hive::{NamedHive, find};
use super::report::Report;
use super::section::{Entry, Section, shown};
use super::{autumn, bees, record, stores};
use crate::nearest::nearest;
use crate::{Colony, ColonyId, Hive};
use jiff::civil::Date;
use snowhum_say::{colony_fault as say, fault, hive_fault, yard_taken};

const KEYS: [&str; 31] = [
    "id",
    "name",
    "hive",
    "kind",
    "boxes",
    "strength",
    "frames_of_bees",
    "seams_of_bees",
    "bees",
    "bees_low",
    "bees_high",
    "brood",
    "food",
    "stores",
    "stores_frames",
    "known_by",
    "plus_minus",
    "stores_kind",
    "food_sits",
    "mites",
    "queen_year",
    "queen_seen",
    "late_mated",
    "treatments",
    "counted_at",
    "queen",
    "troubles",
    "left_on",
    "indoors",
    "in",
    "out",
];

/// The colony's name, and the colony if it has no fault.
pub(crate) fn read(
    section: &Section<'_>,
    builder: &Builder<'_>,
    hives: &mut Vec<NamedHive>,
    as_of: Option<Date>,
    report: &mut Report,
) -> (Option<String>, Option<Colony>) {
    section.only(&KEYS, report);
    let name = name(section, report);
    let hive = hive_of(section, name.as_deref(), builder, hives, report);
    let found = bees::read(section, hive.as_ref(), report);
    let brood = bees::brood(section, hive.as_ref(), report);
    let food = stores::read(section, hive.as_ref(), report);
    let (mites, queen) = (record::mites(section, as_of, report), record::queen(section, as_of, report));
    let treatments = record::treatments(section, as_of, report);
    let autumn = autumn::read(section, report);
    let colony = || {
        let (found, food, name) = (found?, food?, name.as_deref()?);
        let made = id_of(builder.yard, "colony", name);
        Some(Colony {
            id: ColonyId(id(section, made, report)),
            name: name.to_owned(),
            hive: hive?.id,
            bees: found.bees,
            sealed_brood: brood?,
            frames_of_bees: found.frames,
            stores: food.stores,
            mites: mites?,
            queen: queen?,
            treatments: treatments?,
            autumn: autumn?,
            quick_start: found.by_word && food.by_word,
        })
    };
    let colony = colony();
    if colony.as_ref().is_some_and(|colony| colony.quick_start) {
        report.advise(&section.spot, yard_taken::colony());
    }
    (name, colony)
}

fn name(section: &Section<'_>, report: &mut Report) -> Option<String> {
    let entry = section.need("name", say::needs_name, report)?;
    entry.name(report)
}

/// The hive a colony names, or a usual one of the kind it names.
fn hive_of(
    section: &Section<'_>,
    name: Option<&str>,
    builder: &Builder<'_>,
    hives: &mut Vec<NamedHive>,
    report: &mut Report,
) -> Option<Hive> {
    match (section.get("hive", report), section.get("kind", report)) {
        (Some(entry), None) => named_hive(section, &entry, hives, report),
        (Some(entry), Some(_)) => {
            report.fault(&entry.spot, say::hive_and_kind(), say::hive_and_kind_right());
            None
        }
        (None, Some(entry)) => hive_of_kind(section, &entry, name?, builder, hives, report),
        (None, None) => {
            report.missing(&section.spot, "hive", say::needs_hive());
            None
        }
    }
}

fn named_hive(section: &Section<'_>, entry: &Entry<'_>, hives: &[NamedHive], report: &mut Report) -> Option<Hive> {
    for key in ["boxes"].into_iter().chain(AT_A_HIVE) {
        if let Some(stray) = section.get(key, report) {
            report.fault(&stray.spot, say::of_hive(), say::of_hive_right(key));
        }
    }
    let wanted = entry.text(report)?;
    if let Some(found) = find(hives, wanted) {
        return found.hive.clone();
    }
    let names = hives.iter().filter_map(|hive| hive.name.as_deref());
    let remedy = match nearest(wanted.trim(), names) {
        Some(near) => fault::did_you_mean(shown(near)),
        None => say::hive_right(),
    };
    report.fault(&entry.spot, hive_fault::no_hive(shown(wanted)), remedy);
    None
}

/// Builds the usual hive of a kind, called like its colony, and sets it in the row.
fn hive_of_kind(
    section: &Section<'_>,
    entry: &Entry<'_>,
    name: &str,
    builder: &Builder<'_>,
    hives: &mut Vec<NamedHive>,
    report: &mut Report,
) -> Option<Hive> {
    if find(hives, name).is_some() {
        report.fault(&entry.spot, say::hive_there(), say::hive_there_right(shown(name)));
        return None;
    }
    let made = hive::implied(section, name, builder, report);
    let hive = made.hive.clone();
    hives.push(made);
    hive
}
