//! Dates and times as station software writes them.

use jiff::civil::{Date, DateTime, Time};
use jiff::tz::TimeZone;

/// Which form would be right, as the text of it names them.
const YEARS: &str = "years";

/// Reads a date and a time of day (or both in one text) in the named order of day, month and year.
///
/// `iso` takes year first, or day first with dots; with slashes the order must be named, so that 3/4 is not guessed.
/// An offset or Z at the end wins over the zone. Times that a change of clocks skips or repeats are taken as the clock
/// before the change would show them.
pub(super) fn seconds(date: &str, time: &str, order: &str, zone: &TimeZone) -> Result<i64, &'static str> {
    let whole = format!("{} {}", date.trim(), time.trim());
    let whole = whole.trim();
    if order == "iso"
        && let Ok(instant) = whole.replacen(' ', "T", 1).parse::<jiff::Timestamp>()
    {
        return Ok(instant.as_second());
    }
    let mut words = whole.split([' ', 'T']).filter(|word| !word.is_empty());
    let date = self::date(words.next().unwrap_or_default(), order)?;
    let clock = words.next().unwrap_or("0:00");
    let half = words.next().map(str::to_ascii_lowercase);
    let time = time_of_day(clock, half.as_deref())?;
    on_clock(DateTime::from_parts(date, time), zone)
}

/// The instant at which an hour and minute of a day begin; hour 24 is the midnight that ends the day.
pub(super) fn of_hour(date: Date, hour: i8, minute: i8, zone: &TimeZone) -> Result<i64, &'static str> {
    let (date, hour) = if hour == 24 { (date.tomorrow().map_err(|_| YEARS)?, 0) } else { (date, hour) };
    on_clock(date.at(hour, minute, 0, 0), zone)
}

fn on_clock(at: DateTime, zone: &TimeZone) -> Result<i64, &'static str> {
    zone.to_ambiguous_timestamp(at).compatible().map(|instant| instant.as_second()).map_err(|_| YEARS)
}

pub(super) fn date(text: &str, order: &str) -> Result<Date, &'static str> {
    const FORM: &str = "date";
    let parts: Vec<&str> = text.split(['-', '.', '/']).collect();
    let [a, b, c] = parts[..] else { return Err(FORM) };
    let (year, month, day) = match order {
        "dmy" => (c, b, a),
        "mdy" => (c, a, b),
        "ymd" => (a, b, c),
        _ if a.len() == 4 => (a, b, c),
        _ if text.contains('.') => (c, b, a),
        _ => return Err("order"),
    };
    let century = if year.len() == 2 { 2000 } else { 0 };
    let year = year.parse::<i16>().ok().filter(|year| (0..=9000).contains(year)).map(|year| year + century);
    let date = year.zip(month.parse().ok()).zip(day.parse().ok());
    date.and_then(|((y, m), d)| Date::new(y, m, d).ok()).ok_or(FORM)
}

fn time_of_day(text: &str, half: Option<&str>) -> Result<Time, &'static str> {
    const FORM: &str = "time";
    let lower = text.to_ascii_lowercase();
    let glued = ["am", "pm", "a", "p"].into_iter().find(|end| lower.ends_with(end));
    let digits = lower.trim_end_matches(|c: char| c.is_ascii_alphabetic());
    let mut parts = digits.split(':').map(|part| part.split('.').next().unwrap_or("").parse::<i8>());
    let hour = parts.next().and_then(Result::ok).ok_or(FORM)?;
    let minute = parts.next().unwrap_or(Ok(0)).map_err(|_| FORM)?;
    let second = parts.next().unwrap_or(Ok(0)).map_err(|_| FORM)?;
    let hour = match half.or(glued) {
        Some("pm" | "p" | "p.m.") if hour < 12 => hour + 12,
        Some("am" | "a" | "a.m.") if hour == 12 => 0,
        _ => hour,
    };
    Time::new(hour, minute, second, 0).map_err(|_| FORM)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn common_ways_to_write_an_instant_are_the_same_instant() {
        let helsinki = TimeZone::get("Europe/Helsinki").unwrap();
        let at = |date: &str, time: &str, order: &str| seconds(date, time, order, &helsinki).unwrap();
        let noon = at("2025-01-31 12:00", "", "iso");
        assert_eq!(noon, 1_738_317_600);
        for (date, time, order) in [
            ("2025-01-31T12:00:00", "", "iso"),
            ("2025-01-31T10:00:00Z", "", "iso"),
            ("31.1.2025", "12:00", "iso"),
            ("1/31/2025", "12:00 PM", "mdy"),
            ("31/01/25 12:00", "", "dmy"),
            ("2025/1/31", "12:00p", "ymd"),
        ] {
            assert_eq!(at(date, time, order), noon, "{date} {time}");
        }
    }

    #[test]
    fn slashes_without_an_order_are_not_guessed() {
        assert_eq!(seconds("3/4/2025 12:00", "", "iso", &TimeZone::UTC), Err("order"));
    }
}
