//! The calendar file: a general-purpose reader knows every line of it, nothing is lost, ids stay when dates shift.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use calcard::icalendar::{ICalendar, ICalendarComponentType, ICalendarProperty, ICalendarValue};
use calcard::{Entry, Parser};
use jiff::Timestamp;
use jiff::civil::date;
use proptest::prelude::*;
use snowhum_advice::jobs::JobsAnswer;
use snowhum_advice::jobs::calendar::{calendar, event_id};
use snowhum_apiary::Apiary;
use snowhum_say::Tongue;
use std::collections::BTreeSet;
use std::sync::OnceLock;

use crate::common;

fn apiary() -> Apiary {
    snowhum_apiary::read(snowhum_apiary::demo_text(), "demo").unwrap().0
}

/// The windows of the demo's site under some weather.
fn windows(seed: u64, as_of: jiff::civil::Date) -> JobsAnswer {
    common::site_windows(&apiary(), as_of, 8, seed)
}

fn answer() -> &'static JobsAnswer {
    static ANSWER: OnceLock<JobsAnswer> = OnceLock::new();
    ANSWER.get_or_init(|| windows(1, date(2025, 10, 5)))
}

fn stamped() -> Timestamp {
    "2025-10-05T07:30:00Z".parse().unwrap()
}

/// Reads a file: one calendar of known parts, nothing else, and not a line lost.
fn read(text: &str) -> ICalendar {
    let mut parser = Parser::new(text);
    let Entry::ICalendar(read) = parser.entry() else { return ICalendar { components: Vec::new() } };
    assert!(matches!(parser.entry(), Entry::Eof), "something follows the calendar");
    let known = [ICalendarComponentType::VCalendar, ICalendarComponentType::VEvent, ICalendarComponentType::VAlarm];
    assert!(read.components.iter().all(|one| known.contains(&one.component_type)), "an unknown part");
    let unfolded = text.replace("\r\n ", "");
    let is_frame = |line: &str| line.starts_with("BEGIN:") || line.starts_with("END:");
    let written = unfolded.split("\r\n").filter(|line| !line.is_empty() && !is_frame(line)).count();
    let entries = read.components.iter().flat_map(|one| &one.entries);
    assert_eq!(entries.clone().count(), written, "every line is an entry");
    for entry in entries {
        let is_own = matches!(&entry.name, ICalendarProperty::Other(name) if name.starts_with("X-WR-"));
        assert!(is_own || !matches!(entry.name, ICalendarProperty::Other(_)), "{:?}", entry.name);
    }
    read
}

fn texts(calendar: &ICalendar, kind: ICalendarComponentType, name: ICalendarProperty) -> Vec<String> {
    let own = calendar.components.iter().filter(|one| one.component_type == kind);
    let entries = own.flat_map(|one| &one.entries).filter(|entry| entry.name == name);
    let text = |value: &ICalendarValue| match value {
        ICalendarValue::Text(text) => Some(text.clone()),
        _ => None,
    };
    entries.flat_map(|entry| entry.values.iter().filter_map(text)).collect()
}

#[test]
fn another_s_reader_finds_every_window_with_its_alarm() {
    let text = calendar(answer(), &apiary(), Tongue::BRITISH, stamped());
    let read = read(&text);
    let dated = answer().windows.iter().filter(|window| window.day().is_some()).count();
    let count = |kind| read.components.iter().filter(|one| one.component_type == kind).count();
    assert_eq!(count(ICalendarComponentType::VEvent), dated);
    assert_eq!(count(ICalendarComponentType::VAlarm), dated);
    let expected: Vec<String> = answer()
        .windows
        .iter()
        .filter(|one| one.day().is_some())
        .map(|one| format!("{} (Rowan Bank)", Tongue::BRITISH.say(&one.what)))
        .collect();
    assert_eq!(texts(&read, ICalendarComponentType::VEvent, ICalendarProperty::Summary), expected);
    let day = answer().window("wrap").unwrap().usual.unwrap().strftime("%Y%m%d").to_string();
    assert!(
        text.contains(&format!("DTSTART;VALUE=DATE:{day}\r\n")) && text.contains("X-WR-TIMEZONE:Europe/Helsinki\r\n")
    );
}

#[test]
fn the_file_is_the_same_to_the_byte_and_holds_no_clock_but_the_caller_s() {
    let text = calendar(answer(), &apiary(), Tongue::BRITISH, stamped());
    assert_eq!(text, calendar(answer(), &apiary(), Tongue::BRITISH, stamped()));
    assert!(text.lines().filter(|line| line.starts_with("DTSTAMP")).all(|line| line == "DTSTAMP:20251005T073000Z"));
    assert!(text.split("\r\n").all(|line| line.len() <= 75 && !line.contains('\n')), "lines are folded");
}

#[test]
fn ids_stay_when_dates_shift_and_a_later_answer_has_a_greater_number() {
    let other = windows(2, date(2026, 1, 20));
    let (before, after) = (
        calendar(answer(), &apiary(), Tongue::BRITISH, stamped()),
        calendar(&other, &apiary(), Tongue::BRITISH, stamped()),
    );
    let lines = |text: &str, key: &str| -> BTreeSet<String> {
        text.lines().filter(|line| line.starts_with(key)).map(str::to_owned).collect()
    };
    assert_eq!(lines(&before, "UID:"), lines(&after, "UID:"));
    assert_ne!(lines(&before, "DTSTART"), lines(&after, "DTSTART"), "dates have shifted");
    let number = |text: &str| lines(text, "SEQUENCE:").iter().next().unwrap()[9..].parse::<u32>().unwrap();
    assert!(number(&after) > number(&before));
    let yard = apiary().id.0;
    assert_ne!(event_id(yard, "wrap", 2025), event_id(yard, "wrap", 2026), "next year's wrap is another entry");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn odd_names_come_back_as_they_were_typed(name in "[\\PC,;:\\\\\"\n]{1,120}") {
        let mut yard = apiary();
        yard.name = name.clone();
        let read = read(&calendar(answer(), &yard, Tongue::BRITISH, stamped()));
        let summaries = texts(&read, ICalendarComponentType::VEvent, ICalendarProperty::Summary);
        prop_assert!(summaries.iter().all(|summary| summary.ends_with(&format!(" ({name})"))), "{:?}", summaries.first());
        prop_assert_eq!(summaries.len(), answer().windows.iter().filter(|one| one.day().is_some()).count());
    }

    #[test]
    fn no_name_breaks_out_of_its_line(name in "\\PC*(\r\nEND:VEVENT\r\n|\u{0}|\u{7f}|\t|\r)\\PC*") {
        let mut yard = apiary();
        yard.name = name;
        let read = read(&calendar(answer(), &yard, Tongue::BRITISH, stamped()));
        let dated = answer().windows.iter().filter(|one| one.day().is_some()).count();
        let events = read.components.iter().filter(|one| one.component_type == ICalendarComponentType::VEvent);
        prop_assert_eq!(events.count(), dated);
    }
}
