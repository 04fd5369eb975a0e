//! Values as arguments have them: quantities, plain numbers, days, months.

use jiff::civil::Date;
use snowhum_apiary::{Reckoned, Wrong, read_day};
use snowhum_say::arguments_terminal as text;
use snowhum_units::{Bare, Measured, ParseError, System};
use std::str::FromStr;

use crate::text::voice::in_words;

/// A quantity, read in either system: which of the two a bare number is in is known once all arguments are.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Written<Q> {
    metric: Q,
    us: Q,
}

impl<Q: Measured> FromStr for Written<Q> {
    type Err = String;

    fn from_str(text: &str) -> Result<Self, String> {
        let read = |system| Q::read(text, Bare::In(system)).map_err(told);
        Ok(Self { metric: read(System::Metric)?, us: read(System::Us)? })
    }
}

impl<Q: Copy> Written<Q> {
    /// What the keeper with these units means.
    pub(crate) fn read(self, units: impl Into<System>) -> Q {
        match units.into() {
            System::Metric => self.metric,
            System::Us => self.us,
        }
    }
}

/// A number without a unit.
pub(crate) fn plain(text: &str) -> Result<f64, String> {
    snowhum_units::number(text).map_err(told)
}

fn told(wrong: ParseError) -> String {
    in_words(&Wrong::from(wrong).message())
}

/// A number of `days` or `bees`.
pub(crate) fn in_range(written: &str, low: f64, high: f64, what: &'static str) -> Result<f64, String> {
    let number = plain(written).ok().filter(|value| (low..=high).contains(value));
    number.ok_or_else(|| in_words(&text::out_of_range(high, low, what, written)))
}

/// A day that is asked about, in any order in use, or by its distance from today.
pub(crate) fn parse_date(text: &str) -> Result<Date, String> {
    let today = jiff::Timestamp::now().to_zoned_datetime(jiff::tz::TimeZone::system()).date();
    read_day(text, Reckoned::Nearest(today)).map_err(|wrong| in_words(&wrong.message()))
}

/// A month by its number or name, with its year, or as a day in it.
pub(crate) fn any_month(written: &str) -> Result<i8, String> {
    let written = written.trim();
    let digits = |part: &str, most: usize| (1..=most).contains(&part.len()) && part.bytes().all(|b| b.is_ascii_digit());
    let parts: Vec<&str> = written.split('-').collect();
    let month = match parts[..] {
        [month] if digits(month, 2) => month.parse().ok(),
        [year, month] if year.len() == 4 && month.len() == 2 && digits(year, 4) && digits(month, 2) => {
            month.parse().ok()
        }
        // The year is of no matter here.
        _ => [written.to_owned(), format!("1 {written}")].iter().find_map(|day| month_of(day)),
    };
    let month = month.filter(|month| (1..=12).contains(month));
    month.ok_or_else(|| in_words(&text::no_month(written)))
}

fn month_of(day: &str) -> Option<i8> {
    let any = Date::constant(2024, 1, 1);
    read_day(day, Reckoned::Back(any)).ok().map(Date::month)
}

#[cfg(test)]
mod tests {
    use super::any_month;

    #[test]
    fn a_month_is_a_number_or_a_name_or_a_year_with_it_or_a_day_in_it() {
        for (text, month) in [
            ("7", 7),
            ("07", 7),
            ("12", 12),
            ("2026-07", 7),
            ("2026-07-09", 7),
            (" 2026-01 ", 1),
            ("July", 7),
            ("Jan 2026", 1),
            ("9.7.2026", 7),
        ] {
            assert_eq!(any_month(text), Ok(month), "{text}");
        }
    }

    #[test]
    fn nothing_else_is_a_month() {
        for text in
            ["", "x-3", "-3", "0", "13", "2026-13", "2026-+3", "2026-02-30", "26-03", "2026-3-x", "2026-07-09-01"]
        {
            let wrong = any_month(text).unwrap_err();
            assert!(wrong.contains("2026-01-18"), "{text}: {wrong}");
        }
    }
}
