//! What the keeper's record says: mite counts, the queen, treatments.

use super::report::Report;
use super::scalar::Limits;
use super::section::{Entry, Section, shown};
use crate::note::mites_counted;
use crate::shipped::same_name;
use crate::{Act, Mites, Queen, Reckoned, Treatment, TreatmentClass, read_day};
use jiff::civil::Date;
use toml::de::DeValue;

/// How mites are written.
const EXAMPLE: &str = "{ found = 2, bees = 300, on = 2025-08-28 }, or \"not counted\"";

pub(crate) fn mites(section: &Section<'_>, as_of: Option<Date>, report: &mut Report) -> Option<Mites> {
    let Some(entry) = section.get("mites", report) else {
        report.advise(&section.at("mites"), "no mite count is given; taken as not counted");
        return Some(Mites::NotCounted);
    };
    if matches!(entry.value, DeValue::String(_)) {
        return in_words(&entry, as_of, report);
    }
    let count = entry.section(EXAMPLE, report)?;
    count.only(&["found", "bees", "on"], report);
    let mut number = |key: &str, limits: &Limits| {
        let found = count.need(key, &format!("write mites = {EXAMPLE}"), report)?;
        found.whole(limits, report)
    };
    let found = number("found", &Limits::new(0.0, 5_000.0, "from 0 to 5000"));
    let bees = number("bees", &Limits::new(20.0, 5_000.0, "from 20 to 5000, such as 300"));
    let on = count.need("on", "write the day of the count, such as on = 2025-08-28", report);
    let on = on.and_then(|entry| past_day(&entry, as_of, report));
    let (found, bees, on) = (found?, bees?, on?);
    if found > bees {
        report.fault(
            &entry.spot,
            format!("{found} mites on {bees} bees cannot be"),
            "write the mites found and the bees in the sample",
        );
        return None;
    }
    Some(Mites::Counted { found, bees, on })
}

/// A text in place of a count: that nobody counted; or the count as a note has it and its day, `14/300 on 28.8.2025`.
fn in_words(entry: &Entry<'_>, as_of: Option<Date>, report: &mut Report) -> Option<Mites> {
    let written = entry.text(report)?;
    if same_name("not counted", written) {
        return Some(Mites::NotCounted);
    }
    let no_count = |report: &mut Report| {
        let problem = format!("\"{}\" is no count of mites with its day", shown(written));
        let remedy = format!("write mites = \"2 of 300 on 2025-08-28\", or mites = {EXAMPLE}");
        report.fault(&entry.spot, problem, remedy);
        None
    };
    let Some((count, on)) = written.rsplit_once(" on ") else { return no_count(report) };
    let (Ok(Act::MitesCounted { found, bees }), Ok(on)) = (mites_counted(count), read_day(on, Reckoned::Whole)) else {
        return no_count(report);
    };
    if as_of.is_some_and(|as_of| on > as_of) {
        report.fault(
            &entry.spot,
            format!("{on} is after the day the colonies were looked at"),
            "write the day of the count",
        );
        return None;
    }
    Some(Mites::Counted { found, bees, on })
}

pub(crate) fn queen(section: &Section<'_>, as_of: Option<Date>, report: &mut Report) -> Option<Queen> {
    let year = match section.get("queen_year", report) {
        Some(entry) => Some(queen_year(&entry, as_of, report)?),
        None => None,
    };
    let seen_or_laying = match section.get("queen_seen", report) {
        Some(entry) => Some(entry.truth(report)?),
        None => None,
    };
    let late_mated = section.get("late_mated", report).map_or(Some(false), |entry| entry.truth(report))?;
    Some(Queen { year, seen_or_laying, late_mated })
}

/// A queen is at most eight years old, and not born yet to come.
fn queen_year(entry: &Entry<'_>, as_of: Option<Date>, report: &mut Report) -> Option<i16> {
    const OLDEST: i16 = 8;
    let year = entry.whole(&Limits::new(1950.0, 2150.0, "such as 2024"), report)? as i16;
    if let Some(now) = as_of.map(Date::year).filter(|now| !(now - OLDEST..=*now).contains(&year)) {
        let remedy = format!("write the year she was born, from {} to {now}", now - OLDEST);
        report.fault(&entry.spot, format!("{year} cannot be the year of a queen alive in {now}"), remedy);
        return None;
    }
    Some(year)
}

pub(crate) fn treatments(section: &Section<'_>, as_of: Option<Date>, report: &mut Report) -> Option<Vec<Treatment>> {
    const MOST: usize = 50;
    let Some(entry) = section.get("treatments", report) else { return Some(Vec::new()) };
    let items = entry.list(report)?;
    if items.len() > MOST {
        report.fault(
            &entry.spot,
            format!("lists {} treatments", items.len()),
            format!("list those since summer, at most {MOST}"),
        );
        return None;
    }
    let read: Vec<Option<Treatment>> = items.iter().map(|item| treatment(item, as_of, report)).collect();
    let read: Vec<Treatment> = read.into_iter().collect::<Option<_>>()?;
    if let Some(pair) = read.windows(2).find(|pair| pair[0].on > pair[1].on) {
        let problem = format!("{} stands before {}: out of order", pair[0].on, pair[1].on);
        report.fault(&entry.spot, problem, "list the earliest first, or mend the date");
        return None;
    }
    Some(read)
}

fn treatment(entry: &Entry<'_>, as_of: Option<Date>, report: &mut Report) -> Option<Treatment> {
    let section = entry.section("{ on = 2025-09-15, class = \"formic\" }", report)?;
    section.only(&["on", "class"], report);
    let on = section.need("on", "write the day it began, such as on = 2025-09-15", report);
    let on = on.and_then(|entry| past_day(&entry, as_of, report));
    let class = section.need("class", "write formic, thymol, oxalic, strips or other", report);
    let class = class.and_then(|entry| entry.word(&TreatmentClass::WORDS, report));
    Some(Treatment { on: on?, class: class? })
}

/// A day no later than the yard's own, and no more than two years before it.
fn past_day(entry: &Entry<'_>, as_of: Option<Date>, report: &mut Report) -> Option<Date> {
    let day = entry.date(report)?;
    let Some(as_of) = as_of else { return Some(day) };
    if day > as_of {
        let problem = format!("{day} is after as_of, {as_of}");
        report.fault(&entry.spot, problem, format!("write a day up to {as_of}, or move as_of"));
        return None;
    }
    if i32::from(as_of.year()) - i32::from(day.year()) > 2 {
        report.fault(
            &entry.spot,
            format!("{day} is long before as_of, {as_of}"),
            "give what belongs to this season; mend the year",
        );
        return None;
    }
    Some(day)
}
