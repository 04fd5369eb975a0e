//! Numbers in a keeper's words: hives of a hundred, dates as ranges.

use jiff::civil::Date;

/// A chance as hives of a hundred, never 0 and never 100: nobody has looked.
///
/// ```
/// use snowhum_advice::words::in_hundred;
/// assert_eq!(in_hundred(0.917), "about 92 in 100");
/// assert_eq!(in_hundred(0.0001), "fewer than 1 in 100");
/// assert_eq!(in_hundred(0.9999), "more than 99 in 100");
/// ```
#[must_use]
pub fn in_hundred(chance: f64) -> String {
    let hives = (100.0 * chance).round();
    if chance < 0.01 {
        "fewer than 1 in 100".to_owned()
    } else if chance > 0.99 {
        "more than 99 in 100".to_owned()
    } else {
        format!("about {hives:.0} in 100")
    }
}

/// Whole hives of a hundred, held between 1 and 99.
#[must_use]
pub fn hives(chance: f64) -> u32 {
    (100.0 * chance).round().clamp(1.0, 99.0) as u32
}

/// Both ways round: of a hundred hives, so many alive and so many not.
#[must_use]
pub fn both_ways(chance: f64) -> String {
    if !(0.01..=0.99).contains(&chance) {
        return in_hundred(chance);
    }
    let alive = hives(chance);
    let (are, not) = (verb(alive), verb(100 - alive));
    format!("of 100 hives like this about {alive} {are}, {} {not} not", 100 - alive)
}

fn verb(count: u32) -> &'static str {
    if count == 1 { "is" } else { "are" }
}

/// A day and month, such as `15 April`.
#[must_use]
pub fn day(date: Date) -> String {
    format!("{} {}", date.day(), month(date.month()))
}

/// A month by its number, 1 to 12; a number past the year's end counts on into the next.
///
/// ```
/// use snowhum_advice::words::{month, short_month};
/// assert_eq!((month(1), month(13), short_month(9)), ("January", "January", "Sep"));
/// ```
#[must_use]
pub fn month(number: i8) -> &'static str {
    const MONTHS: [&str; 12] = [
        "January",
        "February",
        "March",
        "April",
        "May",
        "June",
        "July",
        "August",
        "September",
        "October",
        "November",
        "December",
    ];
    MONTHS[usize::from((number - 1).rem_euclid(12).unsigned_abs())]
}

/// A month by its first three letters.
#[must_use]
pub fn short_month(number: i8) -> &'static str {
    &month(number)[..3]
}

/// A day and month by its first three letters, such as `15 Apr`.
#[must_use]
pub fn short_day(date: Date) -> String {
    format!("{} {}", date.day(), short_month(date.month()))
}

/// The month of a day, as the north counts its seasons.
#[must_use]
pub fn season_month(day: Date, latitude: f64) -> i8 {
    if latitude < 0.0 { (day.month() + 5) % 12 + 1 } else { day.month() }
}

/// A third of a month, such as `mid-April`: as exact as a forecast of months ahead can be.
#[must_use]
pub fn part_of_month(date: Date) -> String {
    let part = match date.day() {
        1..=10 => "early",
        11..=20 => "mid",
        _ => "late",
    };
    format!("{part}-{}", month(date.month()))
}

/// A text that begins with a capital and ends with a full stop.
///
/// ```
/// assert_eq!(snowhum_advice::words::sentence("by 4 May"), "By 4 May.");
/// ```
#[must_use]
pub fn sentence(text: &str) -> String {
    let end = if text.ends_with(['.', '!', '?']) { "" } else { "." };
    capital(text) + end
}

/// A text that begins with a capital.
#[must_use]
pub fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}
