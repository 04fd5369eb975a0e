//! `[[indoors]]`: rooms that hives winter in; and which of them a hive, or the whole yard, goes into, from when to when.

use super::named_hive::NamedHive;
use super::report::{Report, Spot};
use super::scalar::Limits;
use super::section::{Entry, Section, shared, shown};
use crate::note::percent;
use crate::shipped::same_name;
use crate::wrong::Wrong;
use crate::{IndoorPlan, Room, RoomRecord};
use jiff::ToSpan;
use jiff::civil::Date;
use snowhum_say::{fault, hive_fault as say, note_fault, yard_fault, yard_taken};
use snowhum_units::{Fraction, Kelvin};
use toml::de::DeValue;

const KEYS: [&str; 8] = ["name", "temperature", "humidity", "dark", "record", "record_columns", "in", "out"];
/// What a hive says of it, or a colony that only says its kind.
pub(crate) const AT_A_HIVE: [&str; 3] = ["indoors", "in", "out"];
const MOST_ROOMS: usize = 50;
const LIMITS: Limits = Limits::new(253.15, 298.15, say::warmth);
/// Days after the count within which a winter's day in lies.
const A_WINTER: i64 = 330;

/// The rooms of a file, and the one that the whole yard goes into.
pub(crate) struct Rooms {
    rooms: Vec<ReadRoom>,
    everywhere: Option<IndoorPlan>,
    as_of: Option<Date>,
}

/// A room, or at least its name where it has a fault.
struct ReadRoom {
    name: String,
    room: Option<Room>,
    enters: Option<Date>,
    leaves: Option<Date>,
    spot: Spot,
}

pub(crate) fn read(root: &Section<'_>, as_of: Option<Date>, report: &mut Report) -> Rooms {
    let sections = root.tables("indoors", report);
    if let Some(beyond) = sections.get(MOST_ROOMS) {
        report.fault(&beyond.spot, say::rooms(MOST_ROOMS + 1), say::rooms_right(MOST_ROOMS));
    }
    let mut rooms = Rooms { rooms: Vec::new(), everywhere: None, as_of };
    for section in sections.iter().take(MOST_ROOMS) {
        let Some(read) = room(section, as_of, report) else { continue };
        if let Some(same) = rooms.rooms.iter().find(|one| same_name(&one.name, &read.name)) {
            let spot = Spot { line: section.spot.line, field: format!("{}.name", section.spot.field) };
            report.fault(&spot, yard_fault::same_name(same.spot.line, "room"), yard_fault::same_name_right("room"));
        }
        rooms.rooms.push(read);
    }
    let of_all = root.get("apiary", report).and_then(|entry| match entry.value {
        DeValue::Table(table) => Section::of(table, entry.spot).get("indoors", report),
        _ => None,
    });
    rooms.everywhere = of_all.and_then(|entry| rooms.named(&entry, report)).flatten();
    rooms
}

fn room(section: &Section<'_>, as_of: Option<Date>, report: &mut Report) -> Option<ReadRoom> {
    section.only(&KEYS, report);
    let name = section.need("name", say::needs_room_name, report);
    let name = name.and_then(|entry| entry.name(report));
    let air = section.need("temperature", say::needs_warmth, report);
    let air = air.and_then(|entry| temperatures(&entry, report));
    let humidity = shared(section.get("humidity", report).map(|entry| humidity(&entry, report)));
    let is_dark = section.get("dark", report).map_or(Some(true), |entry| entry.truth(report));
    let record = record(section, as_of, report);
    let days = days(section, (None, None), as_of, report);
    let name = name?;
    let room = || {
        let (coldest, warmest) = air?;
        let (humidity, is_dark, record) = (humidity?, is_dark?, record?);
        Some(Room { name: name.clone(), coldest, warmest, humidity, is_dark, record })
    };
    let (room, (enters, leaves)) = (room(), days.unwrap_or_default());
    Some(ReadRoom { name, room, enters, leaves, spot: section.spot.clone() })
}

/// One temperature, or from the coldest to the warmest.
fn temperatures(entry: &Entry<'_>, report: &mut Report) -> Option<(Kelvin, Kelvin)> {
    let Some((low, high)) = entry.value.as_str().and_then(|text| text.split_once(" to ")) else {
        return entry.quantity::<Kelvin>(&LIMITS, report).map(|air| (air, air));
    };
    // "2 to 6 C": the unit at the end serves both.
    let unit = high.trim_start_matches(|letter: char| !letter.is_alphabetic());
    let is_bare = snowhum_units::number(low).is_ok();
    let low = if is_bare { format!("{} {unit}", low.trim()) } else { low.to_owned() };
    let read = |text: &str| text.trim().parse::<Kelvin>();
    let (low, high) = match (read(&low), read(high)) {
        (Ok(low), Ok(high)) => (low, high),
        (Err(wrong), _) | (_, Err(wrong)) => {
            report.wrong(&entry.spot, Wrong::from(wrong));
            return None;
        }
    };
    if low > high || !LIMITS.holds(low.get()) || !LIMITS.holds(high.get()) {
        let problem = fault::cannot_be(shown(entry.value.as_str().unwrap_or_default()));
        report.fault(&entry.spot, problem, say::coldest_right((LIMITS.said)()));
        return None;
    }
    Some((low, high))
}

fn humidity(entry: &Entry<'_>, report: &mut Report) -> Option<Fraction> {
    percent(entry.text(report)?).map_err(|wrong| report.wrong(&entry.spot, wrong)).ok()
}

fn record(section: &Section<'_>, as_of: Option<Date>, report: &mut Report) -> Option<Option<RoomRecord>> {
    let text = |key: &str, report: &mut Report| {
        shared(section.get(key, report).map(|entry| entry.text(report).map(str::to_owned)))
    };
    let (file, columns) = (text("record", report), text("record_columns", report));
    let (file, columns) = (file?, columns?);
    if let (None, Some(stray)) = (&file, section.get("record_columns", report)) {
        report.fault(&stray.spot, say::no_record(), say::no_record_right());
        return None;
    }
    Some(file.map(|file| RoomRecord { file, columns, first: as_of.unwrap_or(Date::MIN), celsius: Vec::new() }))
}

/// The days in and out that a section gives, else those it takes over.
fn days(
    section: &Section<'_>,
    (enters, leaves): (Option<Date>, Option<Date>),
    as_of: Option<Date>,
    report: &mut Report,
) -> Option<(Option<Date>, Option<Date>)> {
    let (day_in, day_out) = (section.get("in", report), section.get("out", report));
    if day_in.is_none() && day_out.is_none() {
        return Some((enters, leaves));
    }
    let date = |entry: &Option<Entry<'_>>, report: &mut Report| shared(entry.as_ref().map(|entry| entry.date(report)));
    let (own_in, own_out) = (date(&day_in, report), date(&day_out, report));
    let days = (own_in?.or(enters), own_out?.or(leaves));
    let spot = |entry: &Option<Entry<'_>>| entry.as_ref().map_or(&section.spot, |entry| &entry.spot).clone();
    let last = as_of.map(|as_of| as_of.saturating_add(A_WINTER.days()));
    let (spot, problem, remedy) = match (days, as_of) {
        ((Some(enters), Some(out)), _) if out <= enters => {
            let (enters, out) = (enters.to_string(), out.to_string());
            (spot(&day_out), say::out_early(&enters, out), say::out_early_right(&enters))
        }
        ((_, Some(out)), Some(as_of)) if out <= as_of => {
            (spot(&day_out), say::out_over(as_of.to_string(), out.to_string()), say::out_over_right())
        }
        ((Some(enters), _), Some(as_of)) if last.is_some_and(|last| enters > last) => {
            (spot(&day_in), say::in_late(as_of.to_string(), enters.to_string()), say::in_late_right())
        }
        _ => return Some(days),
    };
    report.fault(&spot, problem, remedy);
    None
}

impl Rooms {
    /// The rooms without a fault.
    pub(crate) fn sound(&self) -> Vec<Room> {
        self.rooms.iter().filter_map(|one| one.room.clone()).collect()
    }

    /// Where the hive of a section is to winter, if indoors.
    pub(crate) fn of(&self, section: &Section<'_>, report: &mut Report) -> Option<Option<IndoorPlan>> {
        let plan = match section.get("indoors", report) {
            Some(entry) => self.named(&entry, report)?,
            None => self.everywhere.clone(),
        };
        let Some(plan) = plan else {
            let stray = ["in", "out"].into_iter().find_map(|key| section.get(key, report));
            if let Some(stray) = stray {
                report.fault(&stray.spot, say::no_room_named(), say::no_room_named_right());
                return None;
            }
            return Some(None);
        };
        let (enters, leaves) = days(section, (plan.enters, plan.leaves), self.as_of, report)?;
        if enters.is_none() {
            report.advise(&section.spot, yard_taken::no_day_in());
        }
        Some(Some(IndoorPlan { enters, leaves, ..plan }))
    }

    /// The room of this name with its own days; none in it for "none".
    fn named(&self, entry: &Entry<'_>, report: &mut Report) -> Option<Option<IndoorPlan>> {
        let wanted = entry.text(report)?;
        if same_name(wanted, "none") {
            return Some(None);
        }
        let Some(found) = self.rooms.iter().find(|one| same_name(&one.name, wanted)) else {
            match self.rooms.is_empty() {
                true => report.fault(&entry.spot, note_fault::no_room(shown(wanted)), say::room_right()),
                false => entry.no_such_word(wanted, self.rooms.iter().map(|one| one.name.as_str()), report),
            }
            return None;
        };
        Some(Some(IndoorPlan { room: found.name.clone(), enters: found.enters, leaves: found.leaves }))
    }

    /// Says which rooms no hive is to winter in.
    pub(crate) fn say_empty(&self, hives: &[NamedHive], report: &mut Report) {
        let plans: Vec<&IndoorPlan> = hives.iter().filter_map(|named| named.hive.as_ref()?.indoors.as_ref()).collect();
        for room in self.rooms.iter().filter(|room| !plans.iter().any(|plan| same_name(&plan.room, &room.name))) {
            report.advise(&room.spot, yard_taken::empty_room(shown(&room.name)));
        }
    }
}
