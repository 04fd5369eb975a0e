//! Days in English.

use jiff::civil::Date;

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

/// A day: `long` 15 April, `short` 15 Apr, `full` 15 April 2027, `part` mid-April, `month` April, `short-month` Apr; any other as `long`.
pub(crate) fn shown(day: Date, style: &str) -> String {
    let month = MONTHS[usize::from((day.month() - 1).unsigned_abs())];
    match style {
        "short" => format!("{} {}", day.day(), &month[..3]),
        "full" => format!("{} {month} {}", day.day(), day.year()),
        "part" => format!("{}-{month}", part(day)),
        "month" => month.to_owned(),
        "short-month" => month[..3].to_owned(),
        _ => format!("{} {month}", day.day()),
    }
}

/// A third of a month: as exact as a forecast of months ahead can be.
fn part(day: Date) -> &'static str {
    match day.day() {
        1..=10 => "early",
        11..=20 => "mid",
        _ => "late",
    }
}
