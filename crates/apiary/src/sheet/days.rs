//! Days and times of a sheet: in the order that its own column shows, where strokes leave it open.

use crate::when::read_time;
use crate::wrong::Wrong;
use jiff::civil::DateTime;

/// Which comes first between strokes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum DayOrder {
    /// The day.
    Day,
    /// The month.
    Month,
}

impl DayOrder {
    pub(super) const WORDS: [(&'static str, Self); 2] = [("dmy", Self::Day), ("mdy", Self::Month)];

    /// What a column of days shows: a number over 12 somewhere is no month. None where nothing shows it, or both do.
    pub(super) fn shown<'a>(cells: impl Iterator<Item = &'a str>) -> Option<Self> {
        let (mut first, mut second) = (false, false);
        for (a, b, _) in cells.filter_map(|cell| stroked(split(cell).0)) {
            first |= a > 12;
            second |= b > 12;
        }
        match (first, second) {
            (true, false) => Some(Self::Day),
            (false, true) => Some(Self::Month),
            _ => None,
        }
    }
}

/// Reads a day and its hour, which may stand in a column of its own; of a day alone its noon.
pub(super) fn moment(day: &str, clock: &str, order: Option<DayOrder>) -> Result<DateTime, Wrong> {
    let (day, with_it) = split(day);
    let dotted = match (stroked(day), order) {
        (Some((day, month, year)), Some(DayOrder::Day)) | (Some((month, day, year)), Some(DayOrder::Month)) => {
            format!("{day}.{month}.{year}")
        }
        (Some(_), None) => day.replace('-', "/"),
        (None, _) => day.to_owned(),
    };
    match if clock.trim().is_empty() { with_it } else { clock } {
        "" => read_time(&dotted, None),
        clock => read_time(&format!("{dotted} {}", twenty_four(clock)), None),
    }
}

/// A day, and the hour behind it if there is one.
fn split(cell: &str) -> (&str, &str) {
    let cell = cell.trim();
    let begins = cell.find(':').and_then(|colon| cell[..colon].rfind([' ', 'T']));
    begins.map_or((cell, ""), |at| (cell[..at].trim(), cell[at + 1..].trim()))
}

/// Three numbers with the year last, between strokes or hyphens.
fn stroked(day: &str) -> Option<(u16, u16, u16)> {
    let parts: Vec<&str> = day.split(['/', '-']).map(str::trim).collect();
    let number = |text: &str, most: usize| text.parse().ok().filter(|_| (1..=most).contains(&text.len()));
    match parts[..] {
        [a, b, year] if year.len() == 2 || year.len() == 4 => Some((number(a, 2)?, number(b, 2)?, number(year, 4)?)),
        _ => None,
    }
}

/// An hour on the clock of twenty-four: `2:30 pm`, `14.30`.
fn twenty_four(clock: &str) -> String {
    let text = clock.trim().to_lowercase().replace(['.', ' '], "");
    let half = ["am", "pm"].into_iter().find_map(|half| Some((half, text.strip_suffix(half)?)));
    let plain = clock.trim().replace('.', ":");
    let Some((half, time)) = half else { return plain };
    let (hours, minutes) = time.split_once(':').unwrap_or((time, "00"));
    match hours.parse::<u8>() {
        Ok(hours @ 1..=12) => format!("{}:{minutes}", hours % 12 + if half == "pm" { 12 } else { 0 }),
        _ => plain,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use jiff::civil::date;

    #[test]
    fn a_day_over_twelve_somewhere_settles_the_order_of_all() {
        let order = |cells: &[&str]| DayOrder::shown(cells.iter().copied());
        assert_eq!(order(&["03/04/2026", "25/04/2026"]), Some(DayOrder::Day));
        assert_eq!(order(&["3-4-26", "4-25-26 10:00"]), Some(DayOrder::Month));
        assert_eq!(order(&["03/04/2026", "2026-04-25", "25.4.2026"]), None);
        assert_eq!(order(&["25/04/2026", "04/25/2026"]), None, "one hand writes in one order");
    }

    #[test]
    fn days_and_hours_are_read_as_spreadsheets_show_them() {
        let at = |hour, minute| date(2026, 1, 5).at(hour, minute, 0, 0);
        for (day, clock, order, wanted) in [
            ("05/01/2026", "", Some(DayOrder::Day), at(12, 0)),
            ("1/5/26", "2:30 PM", Some(DayOrder::Month), at(14, 30)),
            ("1/5/2026 12:05 am", "", Some(DayOrder::Month), at(0, 5)),
            ("5-1-2026", "9.30", Some(DayOrder::Day), at(9, 30)),
            ("2026-01-05 10:00", "", None, at(10, 0)),
            ("2026-01-05T10:00:00", "", None, at(10, 0)),
            ("5. 1. 2026", "10:00", None, at(10, 0)),
            ("5 Jan 2026 10:00", "", None, at(10, 0)),
        ] {
            assert_eq!(moment(day, clock, order), Ok(wanted), "{day} {clock}");
        }
    }

    #[test]
    fn what_nothing_settles_is_refused_with_both_readings() {
        for day in ["03/04/2026", "03-04-2026"] {
            let remedy = moment(day, "", None).unwrap_err().to_string();
            assert!(remedy.contains("2026-04-03") && remedy.contains("2026-03-04"), "{remedy}");
        }
        for (day, clock) in [("2026-01-05", "25:00"), ("2026-01-05", "noonish"), ("46027", ""), ("", "10:00")] {
            assert!(moment(day, clock, Some(DayOrder::Day)).is_err(), "{day} {clock}");
        }
    }
}
