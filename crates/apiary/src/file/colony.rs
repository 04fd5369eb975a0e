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

const WIDE: &str = "only words are known of bees and food, so every range is wide; count and weigh to narrow it";

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
        report.advise(&section.spot, WIDE);
    }
    (name, colony)
}

fn name(section: &Section<'_>, report: &mut Report) -> Option<String> {
    let entry = section.need("name", "give the colony a name, such as name = \"Alder\"", report)?;
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
            let remedy = "give either the hive's name or, for a quick start, its kind";
            report.fault(&entry.spot, "stands beside kind", remedy);
            None
        }
        (None, Some(entry)) => hive_of_kind(section, &entry, name?, builder, hives, report),
        (None, None) => {
            let remedy = "name its hive, or for a quick start its kind, such as kind = \"Langstroth 10\"";
            report.missing(&section.spot, "hive", remedy);
            None
        }
    }
}

fn named_hive(section: &Section<'_>, entry: &Entry<'_>, hives: &[NamedHive], report: &mut Report) -> Option<Hive> {
    for key in ["boxes"].into_iter().chain(AT_A_HIVE) {
        if let Some(stray) = section.get(key, report) {
            report.fault(&stray.spot, "belongs to the hive", format!("write {key} in the [[hive]] table"));
        }
    }
    let wanted = entry.text(report)?;
    if let Some(found) = find(hives, wanted) {
        return found.hive.clone();
    }
    let names = hives.iter().filter_map(|hive| hive.name.as_deref());
    let remedy = match nearest(wanted.trim(), names) {
        Some(near) => format!("did you mean \"{}\"?", shown(near)),
        None => "name a hive of this file, or add a [[hive]] table for it".to_owned(),
    };
    report.fault(&entry.spot, format!("there is no hive \"{}\"", shown(wanted)), remedy);
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
        let remedy = format!("write hive = \"{}\" in place of kind", shown(name));
        report.fault(&entry.spot, "a hive of the colony's name is described already", remedy);
        return None;
    }
    let made = hive::implied(section, name, builder, report);
    let hive = made.hive.clone();
    hives.push(made);
    hive
}
