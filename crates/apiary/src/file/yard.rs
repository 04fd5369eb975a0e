//! The whole file: the yard, its hives, its colonies, and what must fit between them.

use super::hive::{self, Builder};
use super::ids::id;
use super::indoors::{self, Rooms};
use super::named_hive::NamedHive;
use super::report::{Report, Spot};
use super::section::{Section, shown};
use super::shape::MOST_HIVES;
use super::{colony, layers, site, visits};
use crate::{Apiary, ApiaryId, Colony, Hive, HiveId};
use jiff::civil::Date;
use snowhum_say::{colony_fault, yard_fault as say};
use std::collections::{HashMap, HashSet};
use toml::de::DeTable;
use uuid::Uuid;

/// Names under which ids are made when a file gives none (a version 5 UUID of "snowhum yard file").
const NAMESPACE: Uuid = Uuid::from_u128(0x6a0d_5a5e_6f5b_5d0c_9c1e_7b1c_0f3a_9e21);

const SECTIONS: [&str; 8] = ["apiary", "site", "money", "material", "indoors", "hive", "colony", "visit"];

/// The header: what the yard is called and when it was looked at.
struct Header {
    id: ApiaryId,
    name: String,
    registration: Option<String>,
    invented: bool,
    as_of: Date,
    last_winter: Option<String>,
}

pub(crate) fn read(text: &str, report: &mut Report) -> Option<Apiary> {
    let (table, errors) = DeTable::parse_recoverable(text);
    for error in &errors {
        let byte = error.span().map_or(0, |span| span.start);
        report.syntax(byte, error.message());
    }
    let root = Section::root(table.get_ref());
    root.only(&SECTIONS, report);
    let header = header(&root, report);
    let site = site::read(&root, report);
    let money = site::money(&root, report);
    let own = layers::own_materials(&root, report);
    let yard_id = header.as_ref().map_or(ApiaryId(NAMESPACE), |header| header.id);
    let southern = site.as_ref().is_some_and(|site| site.latitude.get() < 0.0);
    let as_of = header.as_ref().map(|header| header.as_of);
    let rooms = indoors::read(&root, as_of, report);
    let builder = Builder { yard: yard_id, own: &own, southern, rooms: &rooms };
    let mut hives = hives(&root, &builder, report);
    let colonies = colonies(&root, &builder, &mut hives, as_of, report);
    together(&rooms, &mut hives, &colonies, report);
    let (header, site) = (header?, site?);
    let colonies: Vec<Colony> = colonies.into_iter().map(|(colony, _)| colony).collect();
    let rooms = rooms.sound();
    let notes = visits::read(&root, (header.id, &site.zone), (&colonies, &rooms), report);
    Some(Apiary {
        id: header.id,
        name: header.name,
        registration: header.registration,
        invented: header.invented,
        as_of: header.as_of,
        site,
        money: money?,
        rooms,
        hives: hives.into_iter().map(|named| named.hive).collect::<Option<Vec<Hive>>>()?,
        colonies,
        notes,
        past: Vec::new(),
        last_winter: header.last_winter,
    })
}

/// What must fit between hives, rooms and colonies.
fn together(rooms: &Rooms, hives: &mut [NamedHive], colonies: &[(Colony, Spot)], report: &mut Report) {
    hive::join_neighbours(hives, report);
    rooms.say_empty(hives, report);
    unlike_ids(hives, colonies, report);
    sealed(hives, colonies, report);
}

fn header(root: &Section<'_>, report: &mut Report) -> Option<Header> {
    let entry = root.need("apiary", say::needs_head, report)?;
    let section = entry.section("[apiary]", report)?;
    section.only(&["id", "name", "registration", "invented", "as_of", "last_winter", "indoors"], report);
    let name = section.need("name", say::needs_name, report);
    let name = name.and_then(|name| name.name(report));
    let registration = match section.get("registration", report) {
        Some(entry) => Some(entry.name(report)?),
        None => None,
    };
    let last_winter = match section.get("last_winter", report) {
        Some(entry) => Some(entry.text(report)?.to_owned()),
        None => None,
    };
    let invented = section.get("invented", report).map_or(Some(false), |entry| entry.truth(report));
    let as_of = section.need("as_of", say::needs_as_of, report);
    let as_of = as_of.and_then(|entry| entry.date(report));
    let name = name?;
    let made = Uuid::new_v5(&NAMESPACE, format!("apiary/{}", name.to_lowercase()).as_bytes());
    let id = ApiaryId(id(&section, made, report));
    Some(Header { id, name, registration, invented: invented?, as_of: as_of?, last_winter })
}

fn hives(root: &Section<'_>, builder: &Builder<'_>, report: &mut Report) -> Vec<NamedHive> {
    let sections = some_of(root.tables("hive", report), "hives", report);
    let mut hives: Vec<NamedHive> = Vec::new();
    let mut names: HashMap<String, usize> = HashMap::new();
    for section in &sections {
        let hive = hive::read(section, builder, report);
        unlike_name(&hive.name, &section.spot, &mut names, "hive", report);
        hives.push(hive);
    }
    hives
}

fn colonies(
    root: &Section<'_>,
    builder: &Builder<'_>,
    hives: &mut Vec<NamedHive>,
    as_of: Option<Date>,
    report: &mut Report,
) -> Vec<(Colony, Spot)> {
    let sections = some_of(root.tables("colony", report), "colonies", report);
    if sections.is_empty() {
        report.missing(&root.spot, "colony", say::needs_colony());
    }
    let mut colonies: Vec<(Colony, Spot)> = Vec::new();
    let mut names: HashMap<String, usize> = HashMap::new();
    let mut housed: HashMap<HiveId, String> = HashMap::new();
    for section in &sections {
        let (name, colony) = colony::read(section, builder, hives, as_of, report);
        unlike_name(&name, &section.spot, &mut names, "colony", report);
        let Some(colony) = colony else { continue };
        if let Some(other) = housed.insert(colony.hive, colony.name.clone()) {
            let line = section.get("hive", report).map_or(section.spot.line, |entry| entry.spot.line);
            let spot = Spot { line, field: format!("{}.hive", section.spot.field) };
            report.fault(&spot, colony_fault::same_hive(shown(&other)), colony_fault::same_hive_right());
        }
        colonies.push((colony, section.spot.clone()));
    }
    colonies
}

/// The sections that are read; a fault if there are more than a yard can have.
fn some_of<'a>(mut sections: Vec<Section<'a>>, what: &'static str, report: &mut Report) -> Vec<Section<'a>> {
    if sections.len() > MOST_HIVES {
        let spot = sections[MOST_HIVES].spot.clone();
        report.fault(&spot, say::many(sections.len(), what), say::many_right(MOST_HIVES));
        sections.truncate(MOST_HIVES);
    }
    sections
}

fn unlike_name(
    name: &Option<String>,
    spot: &Spot,
    names: &mut HashMap<String, usize>,
    what: &'static str,
    report: &mut Report,
) {
    let Some(name) = name else { return };
    if let Some(line) = names.insert(name.trim().to_lowercase(), spot.line) {
        let spot = Spot { line: spot.line, field: format!("{}.name", spot.field) };
        report.fault(&spot, say::same_name(line, what), say::same_name_right(what));
    }
}

fn unlike_ids(hives: &[NamedHive], colonies: &[(Colony, Spot)], report: &mut Report) {
    let mut seen: HashSet<Uuid> = HashSet::new();
    let hives = hives.iter().filter_map(|named| named.hive.as_ref().map(|hive| (hive.id.0, &named.spot)));
    let colonies = colonies.iter().map(|(colony, spot)| (colony.id.0, spot));
    for (id, spot) in hives.chain(colonies) {
        if !seen.insert(id) {
            let spot = Spot { line: spot.line, field: format!("{}.id", spot.field) };
            report.fault(&spot, say::same_id(), say::same_id_right());
        }
    }
}

/// Keeps the hives that bees cannot leave for whoever says more of them.
fn sealed(hives: &[NamedHive], colonies: &[(Colony, Spot)], report: &mut Report) {
    for named in hives {
        let Some((hive, line)) = named.hive.as_ref().zip(named.shut_at) else { continue };
        if let Some((colony, _)) = colonies.iter().find(|(colony, _)| colony.hive == hive.id) {
            report.sealed(line, hive, colony);
        }
    }
}
