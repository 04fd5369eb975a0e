//! When a row of a station's file is: out of one column, of a date beside a time, or of year, month, day and hour apart.

use super::mapping::{Mapped, Role};
use super::station_time;
use super::text::shown;
use jiff::civil::Date;
use jiff::tz::TimeZone;
use snowhum_say::{Message, weather_fault as say};

/// Why a row has no time: heading, and what is wrong with what would be right.
pub(super) type NoTime<'a> = (&'a str, Message);

/// The fields of a row and what they mean.
pub(super) struct Fields<'a> {
    pub(super) row: &'a [String],
    pub(super) columns: &'a [(usize, &'a Mapped)],
}

impl<'a> Fields<'a> {
    /// Seconds since 1970.
    pub(super) fn seconds(&self, zone: &TimeZone) -> Result<i64, NoTime<'a>> {
        let whole = self.of(Role::Time).or_else(|| self.of(Role::Hour));
        let Some((time, clock)) = whole else { return Err(("time", say::station_time_lacks())) };
        let no_time =
            |text: &str, form| (&*time.heading, say::station_no_time(say::station_right(form), shown(text.trim())));
        if time.role == Role::Hour {
            let (hour, minute) = (self.part(Role::Hour, 0, 24)?, self.part(Role::Minute, 0, 59)?);
            let day = self.day()?;
            return station_time::of_hour(day, hour.unwrap_or(0) as i8, minute.unwrap_or(0) as i8, zone)
                .map_err(|form| no_time(clock, form));
        }
        let (date, clock, order) = match self.of(Role::Date) {
            Some((mapped, date)) => (date.to_owned(), clock, mapped.unit),
            None if self.of(Role::Year).is_some() => (self.day()?.to_string(), clock, "ymd"),
            None => (clock.to_owned(), "", time.unit),
        };
        station_time::seconds(&date, clock, order, zone).map_err(|form| no_time(&format!("{date} {clock}"), form))
    }

    /// The column of a role and this row's field in it.
    pub(super) fn of(&self, role: Role) -> Option<(&'a Mapped, &'a str)> {
        let (at, mapped) = self.columns.iter().find(|(_, mapped)| mapped.role == role)?;
        Some((mapped, self.row.get(*at).map_or("", |field| field.trim())))
    }

    fn day(&self) -> Result<Date, NoTime<'a>> {
        if let Some((mapped, text)) = self.of(Role::Date) {
            let first = text.split([' ', 'T']).next().unwrap_or_default();
            let wrong = |form| (&*mapped.heading, say::station_no_date(say::station_right(form), shown(text)));
            return station_time::date(first, mapped.unit).map_err(wrong);
        }
        let [year, month, day] = [(Role::Year, 0, 9_000), (Role::Month, 1, 12), (Role::Day, 1, 31)]
            .map(|(role, low, high)| self.part(role, low, high).map(Option::unwrap_or_default));
        let (year, month, day) = (year?, month?, day?);
        let century = if year < 100 { 2_000 } else { 0 };
        Date::new(year + century, month as i8, day as i8).map_err(|_| {
            let heading = self.of(Role::Day).map_or("day", |(mapped, _)| &mapped.heading);
            (heading, say::station_day(day, month, year + century))
        })
    }

    /// A whole number within bounds; `None` if the role has no column.
    fn part(&self, role: Role, low: i16, high: i16) -> Result<Option<i16>, NoTime<'a>> {
        let Some((mapped, text)) = self.of(role) else { return Ok(None) };
        let number = text.parse::<i16>().ok().filter(|number| (low..=high).contains(number));
        number.map(Some).ok_or_else(|| (&*mapped.heading, say::station_part(high, low, shown(text), role.word())))
    }
}
