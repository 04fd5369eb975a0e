//! `note`: what was seen and done at a colony; `undo`: the last of it taken back.

use clap::Args;
use jiff::tz::TimeZone;
use jiff::{SignedDuration, Timestamp};
use serde::Serialize;
use snowhum_apiary::{
    Apiary, ColonyId, Conditions, Entry, Note, NoteId, SnowCover, VisitId, read_time, sign_examples, split_entries,
};
use snowhum_say::{arguments_terminal, fault, note_terminal as say};
use snowhum_store::{LastOf, Put, Store, Undone};
use snowhum_units::{Bare, Kelvin, MetrePerSecond};
use std::path::PathBuf;
use uuid::Uuid;

use super::keeping;
use crate::args::{Common, Written};
use crate::text::voice::in_words;
use crate::{exit, keep, sources, text};

/// Notes of one walk past the hives lie within so much time of each other.
const ONE_WALK: SignedDuration = SignedDuration::from_hours(2);

#[derive(Debug, Args)]
#[command(after_help = words_of_notes())]
pub(crate) struct NoteArguments {
    colony: String,
    #[arg(value_name = "WHAT=HOW", required_unless_present = "list")]
    entries: Vec<String>,
    #[arg(long, value_name = "TIME")]
    at: Option<String>,
    #[arg(long, allow_hyphen_values = true, value_name = "T")]
    air: Option<Written<Kelvin>>,
    #[arg(long, value_name = "SNOW", value_parser = snow)]
    snow: Option<SnowCover>,
    #[arg(long, value_name = "W")]
    wind: Option<Written<MetrePerSecond>>,
    #[arg(long, value_name = "ID")]
    edit: Option<Uuid>,
    #[arg(long, conflicts_with_all = ["entries", "edit"])]
    list: bool,
    #[arg(long, value_name = "FILE", conflicts_with = "edit")]
    apiary: Option<PathBuf>,
    #[arg(long)]
    sure: bool,
}

#[derive(Debug, Args)]
pub(crate) struct UndoArguments {
    colony: String,
}

/// What is answered once a note is on the disk.
#[derive(Debug, Serialize)]
struct Noted {
    id: NoteId,
    colony: String,
    at: Timestamp,
    /// `stored`, `edited` or `known already`.
    done: &'static str,
    note: String,
}

fn words_of_notes() -> String {
    let examples: String = sign_examples().iter().map(|(_, example)| format!("  {example}\n")).collect();
    examples + "  words=anything else\n"
}

fn snow(written: &str) -> Result<SnowCover, String> {
    SnowCover::read(written).ok_or_else(|| in_words(&arguments_terminal::no_snow()))
}

pub(super) fn run(arguments: &NoteArguments, common: &Common) -> anyhow::Result<()> {
    let (book, apiary) = keeping::yard(arguments.apiary.as_deref(), common)?;
    let colony = apiary.colonies[sources::place_of(&apiary, &arguments.colony)?].id;
    if arguments.list {
        return list(&apiary, colony, common);
    }
    let note = note(arguments, &apiary, colony, common)?;
    if arguments.edit.is_none() {
        keeping::asked(&apiary, &note, arguments.sure)?;
    }
    let done = match book.keep(&apiary, &note)? {
        Put::Stored => "stored",
        Put::AlreadyThere => "known already",
        Put::Edited => "edited",
    };
    tell(&apiary, &note, done, common)
}

pub(super) fn undo(arguments: &UndoArguments, common: &Common) -> anyhow::Result<()> {
    let (path, apiary) = keep::yard(common.store.as_deref())?;
    let colony = apiary.colonies[sources::place_of(&apiary, &arguments.colony)?].id;
    let undone = keep::with(async {
        let store = Store::open(&path).await?;
        let undone = store.undo_last(LastOf::Colony(colony), Timestamp::now()).await?;
        store.close().await;
        Ok(undone)
    })?;
    match undone {
        Undone::Nothing => Err(exit::refused(say::nothing_back(&arguments.colony))),
        Undone::Withdrawn(note) => tell(&apiary, &note, "withdrawn", common),
        Undone::Restored(note) => tell(&apiary, &note, "restored", common),
    }
}

fn tell(apiary: &Apiary, note: &Note, done: &'static str, common: &Common) -> anyhow::Result<()> {
    let noted = noted(apiary, note, done);
    if common.json {
        return text::say(&serde_json::to_string_pretty(&noted)?);
    }
    let when = shown(note.at, &zone(apiary)?);
    let done = if done == "known already" { "known" } else { done };
    text::say(&text::wrapped(say::noted(when, &noted.colony, done, note.id.0.to_string(), &noted.note), 2))
}

fn list(apiary: &Apiary, colony: ColonyId, common: &Common) -> anyhow::Result<()> {
    let own: Vec<&Note> = apiary.notes.iter().filter(|note| note.colony == colony).collect();
    if common.json {
        let all: Vec<Noted> = own.iter().map(|note| noted(apiary, note, "stored")).collect();
        return text::say(&serde_json::to_string_pretty(&all)?);
    }
    let zone = zone(apiary)?;
    let line = |note: &&Note| {
        let when = shown(note.at, &zone);
        text::wrapped(say::line(when, note.id.0.to_string(), noted(apiary, note, "stored").note), 2)
    };
    let lines: Vec<String> = own.iter().map(line).collect();
    text::say(&if lines.is_empty() { text::voice::in_words(&say::none()) } else { lines.join("\n") })
}

fn noted(apiary: &Apiary, note: &Note, done: &'static str) -> Noted {
    let (colony, written) = (apiary.colony_name(note.colony), apiary.note_text(note));
    Noted { id: note.id, colony, at: note.at, done, note: written }
}

fn note(arguments: &NoteArguments, apiary: &Apiary, colony: ColonyId, common: &Common) -> anyhow::Result<Note> {
    let edited = match arguments.edit {
        Some(id) => Some(known(apiary, NoteId(id), colony)?),
        None => None,
    };
    let at = match (&arguments.at, edited) {
        (Some(written), _) => moment(written, apiary)?,
        (None, Some(note)) => note.at,
        (None, None) => Timestamp::now(),
    };
    let before = edited.map(|note| note.conditions).unwrap_or_default();
    let air = arguments.air.map(|air| air.read(common.units));
    let wind = arguments.wind.map(|wind| wind.read(common.units));
    Ok(Note {
        id: edited.map_or_else(|| NoteId(Uuid::now_v7()), |note| note.id),
        visit: edited.map_or_else(|| visit(apiary, at), |note| note.visit),
        colony,
        at,
        conditions: Conditions {
            air_k: air.or(before.air_k),
            snow: arguments.snow.or(before.snow),
            wind_m_per_s: wind.or(before.wind_m_per_s),
        },
        entries: entries(&arguments.entries, apiary, colony, Bare::In(common.units.into()))?,
    })
}

fn known(apiary: &Apiary, id: NoteId, colony: ColonyId) -> anyhow::Result<&Note> {
    let found = apiary.notes.iter().find(|note| note.id == id && note.colony == colony);
    found.ok_or_else(|| exit::refused(say::no_such(id.0.to_string())))
}

/// The visit that a note at this time belongs to: that of the nearest note of the yard within one walk, else a new one.
pub(super) fn visit(apiary: &Apiary, at: Timestamp) -> VisitId {
    let apart = |note: &&Note| note.at.duration_since(at).abs();
    let nearest = apiary.notes.iter().filter(|note| apart(note) <= ONE_WALK).min_by_key(apart);
    nearest.map_or_else(|| VisitId(Uuid::now_v7()), |note| note.visit)
}

pub(super) fn entries(written: &[String], apiary: &Apiary, at: ColonyId, bare: Bare) -> anyhow::Result<Vec<Entry>> {
    let colony = |name: &str| {
        apiary.colonies.iter().find(|colony| colony.name.eq_ignore_ascii_case(name.trim())).map(|colony| colony.id)
    };
    let all = written.iter().flat_map(|line| split_entries(line));
    let read: Vec<Entry> = all
        .map(|entry| {
            let read =
                Entry::read_in(entry, &colony, bare).and_then(|read| apiary.check_entry(at, &read).map(|()| read));
            read.map_err(|wrong| exit::refused(say::wrong_entry(entry, wrong.message())))
        })
        .collect::<anyhow::Result<_>>()?;
    if read.is_empty() {
        return Err(exit::refused(say::nothing()));
    }
    Ok(read)
}

/// A time on the yard's clock.
pub(super) fn moment(written: &str, apiary: &Apiary) -> anyhow::Result<Timestamp> {
    let wrong = || exit::refused(say::no_time(written));
    if let Ok(instant) = written.trim().parse::<Timestamp>() {
        return Ok(instant);
    }
    let zone = zone(apiary)?;
    let civil = read_time(written, Some(zone.to_datetime(Timestamp::now())));
    let civil = civil.map_err(|wrong| exit::input(text::voice::in_words(&fault::at("--at", wrong.message()))))?;
    zone.to_ambiguous_timestamp(civil).compatible().map_err(|_| wrong())
}

/// The day of a time on the yard's clock; of now, of an invented yard its own.
pub(super) fn day_of(apiary: &Apiary, at: Option<Timestamp>) -> anyhow::Result<jiff::civil::Date> {
    let last = apiary.notes.iter().map(|note| note.at).max().filter(|_| apiary.invented);
    Ok(zone(apiary)?.to_datetime(at.or(last).unwrap_or_else(Timestamp::now)).date())
}

/// A time as the yard's clock shows it.
fn shown(at: Timestamp, zone: &TimeZone) -> String {
    let civil = zone.to_datetime(at);
    format!("{} {:02}:{:02}", civil.date(), civil.hour(), civil.minute())
}

fn zone(apiary: &Apiary) -> anyhow::Result<TimeZone> {
    crate::weather_source::zone(&apiary.site)
}
