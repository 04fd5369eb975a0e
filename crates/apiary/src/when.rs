//! Days and times as keepers write them, for every way in.

use crate::wrong::Wrong;
use jiff::ToSpan;
use jiff::civil::{Date, DateTime, Time};
use snowhum_say::fault as say;

/// Years that a keeper's records can be of, as far as memory and plans go: others are slips of the pen or of a clock.
pub const YEARS: std::ops::RangeInclusive<i16> = 1950..=2150;

/// The months as they begin.
const MONTHS: [&str; 12] = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

/// What a day is reckoned from that is not written whole.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Reckoned {
    /// Nothing: a file is read on other days than it is written on.
    Whole,
    /// This day, back: what was seen or done lies behind the keeper.
    Back(Date),
    /// This day, either way: what is asked about may lie ahead.
    Nearest(Date),
}

/// Reads a day: `2026-01-25`, `25.1.2026`, `25 Jan`, `January 25, 2026`, `25/1/2026`, `yesterday`, `3 days ago`.
///
/// ```
/// use jiff::civil::date;
/// use snowhum_apiary::{Reckoned, read_day};
/// let today = Reckoned::Back(date(2026, 1, 10));
/// assert_eq!(read_day("25.1.2026", Reckoned::Whole).unwrap(), date(2026, 1, 25));
/// assert_eq!(read_day("25 Dec", today).unwrap(), date(2025, 12, 25));
/// assert_eq!(read_day("yesterday", today).unwrap(), date(2026, 1, 9));
/// assert!(read_day("4/5/2026", today).unwrap_err().to_string().contains("2026-05-04"));
/// ```
///
/// # Errors
/// When it is no day, or may be two, with what would be right.
pub fn read_day(text: &str, from: Reckoned) -> Result<Date, Wrong> {
    let written = text.trim();
    let lower = written.to_lowercase();
    let read = match written.parse::<Date>() {
        Ok(day) => Ok(Some(day)),
        Err(_) => match spoken(&lower, from) {
            Some(day) => day.map(Some),
            None => in_parts(&lower, from),
        },
    };
    let day = read?.filter(|day| YEARS.contains(&day.year()));
    day.ok_or_else(|| Wrong::new(say::no_day(shown(written)), say::day_right()))
}

/// Reads a time: a day and the hour on the yard's clock, `25.1.2026 10:00`, `yesterday 9:30`, `10:00`; of a day alone its
/// noon, of today the time it is. `now` is what the yard's clock shows; none where a text is read on other days too.
///
/// # Errors
/// When it is no time, with what would be right.
pub fn read_time(text: &str, now: Option<DateTime>) -> Result<DateTime, Wrong> {
    let written = text.trim();
    if let Ok(moment) = written.replacen(' ', "T", 1).parse::<DateTime>()
        && written.contains(':')
        && YEARS.contains(&moment.year())
    {
        return Ok(moment);
    }
    let (day, hour) = match written.rsplit_once([' ', 'T']) {
        Some((day, hour)) if hour.contains(':') => (day, Some(hour)),
        None if written.contains(':') => ("today", Some(written)),
        _ => (written, None),
    };
    let from = now.map_or(Reckoned::Whole, |now| Reckoned::Back(now.date()));
    let day = read_day(day, from).map_err(|wrong| of_time(written, wrong))?;
    match (hour, now) {
        (Some(hour), _) => clock(hour).map(|time| day.to_datetime(time)).ok_or_else(|| no_time(written)),
        (None, Some(now)) if day == now.date() => Ok(now),
        (None, _) => Ok(day.at(12, 0, 0, 0)),
    }
}

/// The month that a text begins as, such as `jan` or `January`.
pub(crate) fn month(text: &str) -> Option<i8> {
    let text = text.to_lowercase();
    let found = MONTHS.iter().zip(1..).find(|(name, _)| text.starts_with(**name));
    found.map(|(_, number)| number)
}

fn no_time(written: &str) -> Wrong {
    Wrong::new(say::no_time(shown(written)), say::time_right())
}

/// A day that may be two keeps its own words; one that is none is no time.
fn of_time(written: &str, wrong: Wrong) -> Wrong {
    if wrong.remedy == say::day_right() { no_time(written) } else { wrong }
}

fn clock(hour: &str) -> Option<Time> {
    let mut parts = hour.trim().split(':');
    let (hours, minutes) = (parts.next()?.parse().ok()?, parts.next()?.parse().ok()?);
    let seconds = parts.next().map_or(Some(0), |seconds| seconds.parse().ok())?;
    Time::new(hours, minutes, seconds, 0).ok().filter(|_| parts.next().is_none())
}

/// A day by its distance from today.
fn spoken(text: &str, from: Reckoned) -> Option<Result<Date, Wrong>> {
    let days = match text {
        "today" => 0,
        "yesterday" => -1,
        "tomorrow" => 1,
        _ => {
            let ago = text.strip_suffix(" ago")?.trim();
            let (number, unit) = ago.split_once(' ')?;
            let number =
                if number == "a" { 1 } else { number.parse::<i32>().ok().filter(|n| (0..=4_000).contains(n))? };
            match unit.trim() {
                "day" | "days" => -number,
                "week" | "weeks" => -7 * number,
                _ => return None,
            }
        }
    };
    let Some(today) = from.today() else {
        return Some(Err(Wrong::new(say::moving_day(text), say::moving_day_right())));
    };
    Some(today.checked_add(days.days()).map_err(|_| Wrong::new(say::far_day(text), say::day_right())))
}

/// A day by its numbers, in the orders that are in use.
fn in_parts(text: &str, from: Reckoned) -> Result<Option<Date>, Wrong> {
    let parts: Vec<&str> = text.split([' ', ',', '.', '/', '-']).filter(|part| !part.is_empty()).collect();
    if let Some(at) = parts.iter().position(|part| part.len() >= 3 && month(part).is_some()) {
        return named(&parts, at, from);
    }
    let Some(numbers) = parts.iter().map(|part| whole(part)).collect::<Option<Vec<i16>>>() else { return Ok(None) };
    match (numbers.as_slice(), text.contains('/'), parts.first().map(|part| part.len())) {
        ([year, month, day], _, Some(4)) => Ok(date(*year, *month, *day)),
        ([a, b, year], true, _) => slashed(text, (*a, *b), *year),
        ([day, month, year], false, _) if text.contains('.') => Ok(date(century(*year), *month, *day)),
        ([day, month], false, _) if text.contains('.') => reckoned(*month, *day, text, from),
        _ => Ok(None),
    }
}

/// `25 Jan`, `Jan 25 2026`, `25th January 2026`.
fn named(parts: &[&str], at: usize, from: Reckoned) -> Result<Option<Date>, Wrong> {
    let Some(month) = month(parts[at]).map(i16::from) else { return Ok(None) };
    let others: Vec<&str> = parts.iter().enumerate().filter(|(place, _)| *place != at).map(|(_, part)| *part).collect();
    let day_of = |text: &str| whole(text.trim_end_matches(|letter: char| letter.is_ascii_alphabetic()));
    let is_year = |text: &str| text.len() == 4 && whole(text).is_some();
    match others[..] {
        [day] => day_of(day).map_or(Ok(None), |day| reckoned(month, day, &parts.join(" "), from)),
        [year, day] if is_year(year) => Ok(whole(year).zip(day_of(day)).and_then(|(year, day)| date(year, month, day))),
        [day, year] if is_year(year) => Ok(whole(year).zip(day_of(day)).and_then(|(year, day)| date(year, month, day))),
        _ => Ok(None),
    }
}

/// Day and month stand in either order between strokes: read where only one order is a day.
fn slashed(text: &str, (a, b): (i16, i16), year: i16) -> Result<Option<Date>, Wrong> {
    let year = century(year);
    match (date(year, b, a), date(year, a, b)) {
        (Some(one), Some(other)) if one != other => {
            Err(Wrong::new(say::two_days(text), say::either_day(one.to_string(), other.to_string())))
        }
        (one, other) => Ok(one.or(other)),
    }
}

/// A day without its year: the latest one so far, or the nearest.
fn reckoned(month: i16, day: i16, text: &str, from: Reckoned) -> Result<Option<Date>, Wrong> {
    let Some(today) = from.today() else {
        return Err(Wrong::new(say::every_year(text), say::every_year_right()));
    };
    let years = today.year() - 4..=today.year() + 4;
    let days = years.filter_map(|year| date(year, month, day));
    Ok(match from {
        Reckoned::Nearest(_) => days.min_by_key(|one| one.duration_since(today).abs()),
        Reckoned::Whole | Reckoned::Back(_) => days.filter(|one| *one <= today).max(),
    })
}

impl Reckoned {
    fn today(self) -> Option<Date> {
        match self {
            Self::Whole => None,
            Self::Back(today) | Self::Nearest(today) => Some(today),
        }
    }
}

/// A year written with two digits is of this century.
fn century(year: i16) -> i16 {
    if (0..100).contains(&year) { 2_000 + year } else { year }
}

fn date(year: i16, month: i16, day: i16) -> Option<Date> {
    Date::new(year, i8::try_from(month).ok()?, i8::try_from(day).ok()?).ok()
}

fn whole(text: &str) -> Option<i16> {
    let is_number = (1..=4).contains(&text.len()) && text.bytes().all(|letter| letter.is_ascii_digit());
    text.parse().ok().filter(|_| is_number)
}

fn shown(text: &str) -> String {
    const LONGEST: usize = 40;
    text.chars().take(LONGEST).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use jiff::civil::date;

    #[test]
    fn a_day_is_read_in_every_order_in_use() {
        let (wanted, today) = (date(2026, 1, 25), Reckoned::Back(date(2026, 3, 1)));
        for text in [
            "2026-01-25",
            "25.1.2026",
            "25.01.26",
            "25. 1. 2026",
            "25.1.",
            "25 Jan",
            "25 January 2026",
            "Jan 25",
            "January 25, 2026",
            "25th jan 2026",
            "25-Jan-2026",
            "2026 Jan 25",
            "25/1/2026",
            "1/25/2026",
            "2026/1/25",
            " 25 JAN ",
        ] {
            assert_eq!(read_day(text, today), Ok(wanted), "{text}");
        }
    }

    #[test]
    fn a_day_without_its_year_lies_behind_a_note_and_nearest_to_a_question() {
        let today = date(2026, 11, 29);
        assert_eq!(read_day("25 Jan", Reckoned::Back(today)), Ok(date(2026, 1, 25)));
        assert_eq!(read_day("25 Jan", Reckoned::Nearest(today)), Ok(date(2027, 1, 25)));
        assert_eq!(read_day("29 Feb", Reckoned::Back(today)), Ok(date(2024, 2, 29)));
        assert!(read_day("25 Jan", Reckoned::Whole).unwrap_err().to_string().contains("year"));
        assert!(read_day("yesterday", Reckoned::Whole).unwrap_err().to_string().contains("2025-10-05"));
        assert_eq!(read_day("2 weeks ago", Reckoned::Back(today)), Ok(date(2026, 11, 15)));
    }

    #[test]
    fn what_may_be_two_days_or_none_is_refused() {
        let today = Reckoned::Back(date(2026, 3, 1));
        let two = read_day("4/5/2026", today).unwrap_err().to_string();
        assert!(two.contains("2026-05-04") && two.contains("2026-04-05"), "{two}");
        for text in [
            "",
            "31.2.2026",
            "13/13/2026",
            "soon",
            "25",
            "1 2",
            "Jan",
            "25 Jan 26 x",
            "9999999999 days ago",
            "1066-10-14",
        ] {
            assert!(read_day(text, today).is_err(), "{text}");
        }
    }

    #[test]
    fn a_time_is_a_day_and_an_hour_or_less() {
        let now = date(2026, 1, 25).at(10, 30, 0, 0);
        let read_time = |text| super::read_time(text, Some(now));
        for (text, wanted) in [
            ("2026-01-06 10:00", date(2026, 1, 6).at(10, 0, 0, 0)),
            ("2026-01-06T10:00:00", date(2026, 1, 6).at(10, 0, 0, 0)),
            ("6.1.2026 9:05", date(2026, 1, 6).at(9, 5, 0, 0)),
            ("yesterday 18:00", date(2026, 1, 24).at(18, 0, 0, 0)),
            ("yesterday", date(2026, 1, 24).at(12, 0, 0, 0)),
            ("8:15", date(2026, 1, 25).at(8, 15, 0, 0)),
            ("today", now),
        ] {
            assert_eq!(read_time(text), Ok(wanted), "{text}");
        }
        for text in ["25:00", "2026-01-06 10:61", "sometime", "", "1066-10-14 10:00"] {
            assert!(read_time(text).unwrap_err().to_string().contains("2026-01-06 10:00"), "{text}");
        }
    }
}
