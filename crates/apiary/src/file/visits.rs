//! The winter's log in a yard file: visits, and at each of them what was noted at which colony.

use super::ids::id_of;
use super::outdoors::{air, wind};
use super::report::{Report, Spot};
use super::section::{Entry as Value, Section, shared, shown};
use crate::shipped::same_name;
use crate::stays::known_room;
use crate::{
    ApiaryId, Colony, ColonyId, Conditions, Entry, Note, NoteId, Room, SnowCover, VisitId, read_time, split_entries,
};
use jiff::civil::DateTime;
use jiff::tz::TimeZone;
use snowhum_say::yard_fault as say;
use toml::de::DeValue;

/// Most visits a file may list.
const MOST_VISITS: usize = 5_000;

/// The colonies and rooms a note may be about.
struct Known<'a> {
    colonies: &'a [Colony],
    rooms: &'a [Room],
    /// Whether all of them could be read: only then is an unknown name at fault itself.
    complete: bool,
}

/// What the notes of a visit share.
struct Visit {
    at: jiff::Timestamp,
    written: String,
    conditions: Conditions,
}

pub(super) fn read(
    root: &Section<'_>,
    (yard, zone): (ApiaryId, &str),
    (colonies, rooms): (&[Colony], &[Room]),
    report: &mut Report,
) -> Vec<Note> {
    let sections = root.tables("visit", report);
    let zone = TimeZone::get(zone).unwrap_or(TimeZone::UTC);
    if let Some(first) = sections.get(MOST_VISITS) {
        report.fault(&first.spot, say::visits(MOST_VISITS + 1), say::visits_right());
    }
    let known = Known { colonies, rooms, complete: report.is_clean() };
    let mut notes = Vec::new();
    for section in sections.iter().take(MOST_VISITS) {
        section.only(&["at", "air", "snow", "wind", "seen"], report);
        let Some(visit) = visit(section, &zone, report) else { continue };
        let visit_id = VisitId(id_of(yard, "visit", &visit.written));
        let Some(seen) = section.need("seen", say::needs_seen, report) else {
            continue;
        };
        let Some(seen) = seen.section("[visit.seen]", report) else { continue };
        for line in seen.entries(report) {
            let Some((colony, entries)) = noted(&line, &known, report) else { continue };
            let id = NoteId(id_of(yard, "note", &format!("{}/{}", visit.written, colony.0)));
            let note = Note { id, visit: visit_id, colony, at: visit.at, conditions: visit.conditions, entries };
            if notes.iter().any(|other: &Note| other.is_double_of(&note)) {
                report.fault(&line.spot, say::same_visit(), say::same_visit_right());
            }
            notes.push(note);
        }
    }
    notes.sort_by_key(|note| (note.at, note.id));
    notes
}

fn visit(section: &Section<'_>, zone: &TimeZone, report: &mut Report) -> Option<Visit> {
    let moment = section.need("at", say::needs_at, report).and_then(|entry| moment(&entry, report));
    let air_k = section.get("air", report).map(|entry| air(&entry, report));
    let wind = section.get("wind", report).map(|entry| wind(&entry, report));
    let snow = section.get("snow", report).map(|entry| entry.word(&SnowCover::WORDS, report));
    let conditions = Conditions { air_k: shared(air_k)?, snow: shared(snow)?, wind_m_per_s: shared(wind)? };
    let moment = moment?;
    let at = zone.to_ambiguous_timestamp(moment).compatible().ok()?;
    Some(Visit { at, written: moment.to_string(), conditions })
}

fn moment(entry: &Value<'_>, report: &mut Report) -> Option<DateTime> {
    let written = match entry.value {
        DeValue::Datetime(moment) if moment.time.is_some() => moment.to_string(),
        DeValue::Datetime(moment) => format!("{moment}T12:00:00"),
        _ => entry.text(report)?.trim().to_owned(),
    };
    let read = read_time(&written, None);
    read.map_err(|wrong| report.fault(&entry.spot, wrong.problem, say::needs_at())).ok()
}

/// The colony a line is about, and what it says of it.
fn noted(line: &Value<'_>, known: &Known<'_>, report: &mut Report) -> Option<(ColonyId, Vec<Entry>)> {
    let name = line.spot.field.rsplit_once("seen.").map_or("", |(_, name)| name).to_owned();
    let find = |name: &str| known.colonies.iter().find(|colony| same_name(&colony.name, name)).map(|colony| colony.id);
    let colony = find(&name);
    if colony.is_none() {
        if known.complete {
            line.no_such_word(&name, known.colonies.iter().map(|colony| colony.name.as_str()), report);
        }
        return None;
    }
    let text = line.text(report)?;
    let mut entries = Vec::new();
    for written in split_entries(text) {
        let read = Entry::read(written, &find);
        match read.and_then(|entry| known_room(known.rooms, &entry).map(|()| entry)) {
            Ok(entry) => entries.push(entry),
            Err(wrong) => report.wrong(
                &Spot { field: format!("{} \"{}\"", line.spot.field, shown(written)), ..line.spot.clone() },
                wrong,
            ),
        }
    }
    Some((colony?, entries)).filter(|(_, entries)| !entries.is_empty())
}
