//! What the keeper's record says: mite counts, the queen, treatments.

use super::report::Report;
use super::scalar::Limits;
use super::section::{Entry, Section, shown};
use crate::note::mites_counted;
use crate::shipped::same_name;
use crate::{Act, Mites, Queen, Reckoned, Treatment, TreatmentClass, read_day};
use jiff::civil::Date;
use snowhum_say::{colony_fault as say, yard_fault, yard_taken};
use toml::de::DeValue;

/// How mites are written.
const EXAMPLE: &str = "{ found = 2, bees = 300, on = 2025-08-28 }";

pub(crate) fn mites(section: &Section<'_>, as_of: Option<Date>, report: &mut Report) -> Option<Mites> {
    let Some(entry) = section.get("mites", report) else {
        report.advise(&section.at("mites"), yard_taken::mites());
        return Some(Mites::NotCounted);
    };
    if matches!(entry.value, DeValue::String(_)) {
        return in_words(&entry, as_of, report);
    }
    let count = entry.section(say::not_counted(EXAMPLE), report)?;
    count.only(&["found", "bees", "on"], report);
    let mut number = |key: &str, limits: &Limits| {
        let example = || yard_fault::write(say::not_counted(format!("mites = {EXAMPLE}")));
        let found = count.need(key, example, report)?;
        found.whole(limits, report)
    };
    let found = number("found", &Limits::new(0.0, 5_000.0, || yard_fault::from("0", "5000")));
    let bees = number("bees", &Limits::new(20.0, 5_000.0, || yard_fault::from_such("20", "5000", "300")));
    let on = count.need("on", say::needs_count_day, report);
    let on = on.and_then(|entry| past_day(&entry, as_of, report));
    let (found, bees, on) = (found?, bees?, on?);
    if found > bees {
        report.fault(&entry.spot, say::mites(bees, found), say::mites_right());
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
        let remedy = say::no_count_right(say::not_counted(EXAMPLE));
        report.fault(&entry.spot, say::no_count(shown(written)), remedy);
        None
    };
    let Some((count, on)) = written.rsplit_once(" on ") else { return no_count(report) };
    let (Ok(Act::MitesCounted { found, bees }), Ok(on)) = (mites_counted(count), read_day(on, Reckoned::Whole)) else {
        return no_count(report);
    };
    if as_of.is_some_and(|as_of| on > as_of) {
        report.fault(&entry.spot, say::count_late(on.to_string()), say::count_late_right());
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
    let year = entry.whole(&Limits::new(1950.0, 2150.0, say::queen_year_such), report)? as i16;
    if let Some(now) = as_of.map(Date::year).filter(|now| !(now - OLDEST..=*now).contains(&year)) {
        let remedy = say::queen_year_right((now - OLDEST).to_string(), now.to_string());
        report.fault(&entry.spot, say::queen_year(now.to_string(), year.to_string()), remedy);
        return None;
    }
    Some(year)
}

pub(crate) fn treatments(section: &Section<'_>, as_of: Option<Date>, report: &mut Report) -> Option<Vec<Treatment>> {
    const MOST: usize = 50;
    let Some(entry) = section.get("treatments", report) else { return Some(Vec::new()) };
    let items = entry.list(report)?;
    if items.len() > MOST {
        report.fault(&entry.spot, say::treatments(items.len()), say::treatments_right(MOST));
        return None;
    }
    let read: Vec<Option<Treatment>> = items.iter().map(|item| treatment(item, as_of, report)).collect();
    let read: Vec<Treatment> = read.into_iter().collect::<Option<_>>()?;
    if let Some(pair) = read.windows(2).find(|pair| pair[0].on > pair[1].on) {
        let problem = say::disorder(pair[0].on.to_string(), pair[1].on.to_string());
        report.fault(&entry.spot, problem, say::disorder_right());
        return None;
    }
    Some(read)
}

fn treatment(entry: &Entry<'_>, as_of: Option<Date>, report: &mut Report) -> Option<Treatment> {
    let section = entry.section("{ on = 2025-09-15, class = \"formic\" }", report)?;
    section.only(&["on", "class"], report);
    let on = section.need("on", say::needs_begun, report);
    let on = on.and_then(|entry| past_day(&entry, as_of, report));
    let class = section.need("class", say::needs_class, report);
    let class = class.and_then(|entry| entry.word(&TreatmentClass::WORDS, report));
    Some(Treatment { on: on?, class: class? })
}

/// A day no later than the yard's own, and no more than two years before it.
fn past_day(entry: &Entry<'_>, as_of: Option<Date>, report: &mut Report) -> Option<Date> {
    let day = entry.date(report)?;
    let Some(as_of) = as_of else { return Some(day) };
    if day > as_of {
        let last = as_of.to_string();
        report.fault(&entry.spot, say::late(&last, day.to_string()), say::late_right(&last));
        return None;
    }
    if i32::from(as_of.year()) - i32::from(day.year()) > 2 {
        report.fault(&entry.spot, say::early(as_of.to_string(), day.to_string()), say::early_right());
        return None;
    }
    Some(day)
}
