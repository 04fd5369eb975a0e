//! The windows as a calendar file (RFC 5545) for the keeper's own calendar.
//!
//! Every job is a whole day, so that it stays on its day wherever the calendar is read: of a deadline the safe day, in time
//! in nine years of ten; of all else the usual day. The range stands in the description. An id is made of yard, job and
//! season alone: when dates shift, a calendar that reads the file again moves the entry and makes no second one.

use icalendar::{Alarm, Calendar, Component, Event, EventLike, Property, Trigger};
use jiff::civil::Date;
use jiff::{Timestamp, ToSpan};
use snowhum_apiary::Apiary;
use snowhum_say::{Message, Tongue, jobs as say};
use uuid::Uuid;

use super::answer::{JobWindow, JobsAnswer, Kind};

/// Hour of the day at which an alarm sounds.
const ALARM_HOUR: i64 = 9;
/// Days before a deadline, and before all else, at which it sounds.
const DAYS_BEFORE_DEADLINE: i64 = 7;
const DAYS_BEFORE: i64 = 1;

/// The calendar file of a yard's windows in the keeper's words, made at `stamped`. Windows that seldom come are left out.
#[must_use]
pub fn calendar(answer: &JobsAnswer, yard: &Apiary, tongue: Tongue, stamped: Timestamp) -> String {
    let mut calendar = Calendar::empty();
    for (key, value) in [("VERSION", "2.0"), ("PRODID", "-//Snowhum//Jobs and dates//EN"), ("CALSCALE", "GREGORIAN")] {
        calendar.append_property(Property::new(key, value));
    }
    calendar.append_property(Property::new("METHOD", "PUBLISH"));
    calendar.append_property(Property::new("X-WR-CALNAME", plain(&tongue.say(&say::calendar_name(&yard.name)))));
    calendar.append_property(Property::new("X-WR-TIMEZONE", plain(&yard.site.zone)));
    for entry in hives(answer).chain(then(answer)).chain(round(answer)).chain(fortnight(answer)).chain(windows(answer))
    {
        let title = tongue.say(&say::calendar_title(&entry.what, &yard.name));
        let told = [title, tongue.say_all(&entry.says).join("\n")].map(|text| plain(&text));
        calendar.push(event(answer, &entry, yard, &told).append_property(stamp(stamped)).done());
    }
    without_alarm_stamps(&calendar.to_string())
}

/// What stands in the calendar.
struct Entry {
    /// Name that stays.
    job: String,
    day: Date,
    kind: Kind,
    what: Message,
    /// A line each.
    says: Vec<Message>,
}

/// What is first at each hive.
fn hives(answer: &JobsAnswer) -> impl Iterator<Item = Entry> {
    answer.hives.iter().filter_map(|hive| {
        Some(Entry {
            job: format!("hive {}", hive.name),
            day: hive.on?,
            kind: if hive.verdict.is_urgent() { Kind::About } else { Kind::By },
            what: hive.words(),
            says: vec![invented(answer)],
        })
    })
}

/// What comes after it there, each under its last day.
fn then(answer: &JobsAnswer) -> impl Iterator<Item = Entry> {
    answer
        .hives
        .iter()
        .flat_map(|hive| hive.then.iter().enumerate().map(move |(at, step)| (hive, at, step)))
        .filter_map(|(hive, at, step)| {
            Some(Entry {
                job: format!("hive {} {}", hive.name, at + 2),
                day: step.by?,
                kind: Kind::By,
                what: say::hive_then(&hive.name, step.words()),
                says: vec![invented(answer)],
            })
        })
}

/// The next walk past the hives, where it would tell something.
fn round(answer: &JobsAnswer) -> Option<Entry> {
    let round = answer.next_round.as_ref()?;
    Some(Entry {
        job: "yard round".to_owned(),
        day: round.on?,
        kind: Kind::About,
        what: say::calendar_look(),
        says: vec![say::calendar_look_says(round.hives(), round.hour), invented(answer)],
    })
}

/// The fortnightly walk, where no walk that tells more comes before it.
fn fortnight(answer: &JobsAnswer) -> Option<Entry> {
    Some(Entry {
        job: "fortnightly round".to_owned(),
        day: answer.next_round.as_ref()?.by_custom()?,
        kind: Kind::About,
        what: say::calendar_round(),
        says: vec![say::calendar_round_says(), invented(answer)],
    })
}

fn windows(answer: &JobsAnswer) -> impl Iterator<Item = Entry> {
    answer.windows.iter().filter_map(|window| {
        Some(Entry {
            job: window.id.clone(),
            day: window.day()?,
            kind: window.kind,
            what: window.what.clone(),
            says: description(answer, window),
        })
    })
}

/// The id of a job of a season, whatever its dates.
#[must_use]
pub fn event_id(yard: Uuid, job: &str, season: i16) -> Uuid {
    Uuid::new_v5(&yard, format!("job {job} {season}").as_bytes())
}

fn event(answer: &JobsAnswer, entry: &Entry, yard: &Apiary, [summary, says]: &[String; 2]) -> Event {
    let mut event = Event::new();
    event
        .uid(&event_id(yard.id.0, &entry.job, answer.from.year()).to_string())
        .sequence(sequence(answer))
        .summary(summary)
        .description(says);
    event.append_property(whole_day("DTSTART", entry.day));
    event.append_property(whole_day("DTEND", entry.day.saturating_add(1.days())));
    event.append_property(Property::new("TRANSP", "TRANSPARENT"));
    let before = if entry.kind == Kind::By { DAYS_BEFORE_DEADLINE } else { DAYS_BEFORE };
    let ahead = chrono::Duration::hours(24 * before - ALARM_HOUR);
    event.alarm(Alarm::display(summary, Trigger::before_start(ahead)));
    event
}

fn stamp(stamped: Timestamp) -> Property {
    Property::new("DTSTAMP", stamped.strftime("%Y%m%dT%H%M%SZ").to_string())
}

/// A later answer of the season has a greater number, as the standard asks of one that changes dates.
fn sequence(answer: &JobsAnswer) -> u32 {
    let days = answer.as_of.duration_since(answer.from).as_hours() / 24 + 31;
    u32::try_from(days).unwrap_or(0)
}

fn whole_day(key: &str, day: Date) -> Property {
    Property::new(key, day.strftime("%Y%m%d").to_string()).add_parameter("VALUE", "DATE").done()
}

fn description(answer: &JobsAnswer, window: &JobWindow) -> Vec<Message> {
    let mut lines = vec![say::sentence(&window.when), window.trigger.words.clone(), window.why.clone()];
    lines.extend(window.belief.as_ref().map(|belief| say::calendar_belief(&belief.said, &belief.so)));
    lines.extend(window.other_school.clone());
    lines.extend(window.caution.as_ref().map(|caution| caution.says.clone()));
    lines.extend(answer.invented.then(|| invented(answer)));
    lines
}

fn invented(answer: &JobsAnswer) -> Message {
    if answer.invented { say::calendar_invented() } else { Message::NONE }
}

/// A text without the control characters that the standard forbids.
fn plain(text: &str) -> String {
    let text = text.replace("\r\n", "\n").replace('\r', "\n");
    text.chars().map(|letter| if letter.is_control() && letter != '\n' { ' ' } else { letter }).collect()
}

/// Alarms without the stamp and the id that the writer gives every part: the one is the clock, the other chance, and
/// RFC 5545 knows neither there.
fn without_alarm_stamps(text: &str) -> String {
    let mut in_alarm = false;
    let mut kept = String::with_capacity(text.len());
    for line in text.split_inclusive("\r\n") {
        in_alarm = (in_alarm || line.starts_with("BEGIN:VALARM")) && !line.starts_with("END:VALARM");
        if !(in_alarm && (line.starts_with("DTSTAMP:") || line.starts_with("UID:"))) {
            kept.push_str(line);
        }
    }
    kept
}
