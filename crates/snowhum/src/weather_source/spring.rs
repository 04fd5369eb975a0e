//! When a yard's winter ends: its first flow plus 14 days, by the keeper's own day, else by the climate of its place.

use jiff::ToSpan;
use jiff::civil::Date;
use snowhum_advice::yard;
use snowhum_apiary::Site;
use snowhum_weather::{Climate, season};

use super::span::{DATES, LONGEST_WINTER};

/// Days from the first flow to what is called spring.
const AFTER_FLOW: i64 = 14;

/// The keeper's own first flow plus 14 days: the next after the as-of date. Where that lies further off than the longest
/// winter, the one just past: its winter is over, and the next has not begun.
pub(super) fn own(site: &Site, as_of: Date) -> Option<Date> {
    let (month, day) = site.first_flow?;
    let of_year = |year: i16| Some(flow(year, month, day)?.saturating_add(AFTER_FLOW.days()));
    let springs = [as_of.year() - 1, as_of.year(), as_of.year() + 1].map(of_year);
    let next = springs.iter().flatten().find(|spring| **spring > as_of).copied()?;
    let just_past = springs.iter().flatten().rfind(|spring| **spring <= as_of).copied();
    if days_between(as_of, next) > LONGEST_WINTER { just_past.or(Some(next)) } else { Some(next) }
}

/// The spring of a site: the keeper's own, else the climate's.
#[cfg(feature = "club")]
pub(crate) fn spring_of(site: &Site, as_of: Date) -> Option<Date> {
    own(site, as_of).or_else(|| of_climate(site, as_of))
}

/// The middle of the climate's springs.
pub(super) fn of_climate(site: &Site, as_of: Date) -> Option<Date> {
    let place = yard::place(site);
    let climate = Climate::at(place).ok()?;
    season::spring_of_climate(place, &climate, year(as_of, site), DATES).ok()?.map(|range| range.p50)
}

/// Year of the midwinter that the plan looks to.
pub(super) fn year(as_of: Date, site: &Site) -> i16 {
    let southern = site.latitude.get() < 0.0;
    let after = if southern { as_of.month() >= 11 } else { as_of.month() >= 7 };
    as_of.year() + i16::from(after)
}

/// Days from one day to another.
pub(super) fn days_between(from: Date, to: Date) -> i64 {
    to.duration_since(from).as_hours() / 24
}

/// The day of a year on which flowers first give; a day that the year has not is the last of its month.
fn flow(year: i16, month: i8, day: i8) -> Option<Date> {
    let first = Date::new(year, month, 1).ok()?;
    Date::new(year, month, day.min(first.days_in_month())).ok()
}

#[cfg(test)]
mod tests {
    use super::*;
    use jiff::civil::date;

    fn flowering(month: i8, day: i8) -> Site {
        let demo = snowhum_apiary::read(snowhum_apiary::demo_text(), "demo").unwrap().0;
        Site { first_flow: Some((month, day)), ..demo.site }
    }

    #[test]
    fn the_next_spring_is_the_end_of_the_fortnight_and_not_the_next_flow() {
        let site = flowering(4, 25);
        assert_eq!(own(&site, date(2026, 4, 20)), Some(date(2026, 5, 9)));
        assert_eq!(own(&site, date(2026, 4, 28)), Some(date(2026, 5, 9)), "the flow is past, spring is not");
        assert_eq!(own(&site, date(2025, 10, 1)), Some(date(2026, 5, 9)));
        assert_eq!(own(&flowering(12, 25), date(2026, 1, 3)), Some(date(2026, 1, 8)), "over the turn of a year");
    }

    #[test]
    fn a_spring_just_past_is_not_the_next_years() {
        let site = flowering(4, 25);
        assert_eq!(own(&site, date(2026, 5, 20)), Some(date(2026, 5, 9)));
        assert_eq!(own(&site, date(2026, 7, 15)), Some(date(2027, 5, 9)));
    }

    #[test]
    fn a_leap_day_is_the_last_of_february_in_other_years() {
        assert_eq!(own(&flowering(2, 29), date(2025, 10, 1)), Some(date(2026, 3, 14)));
        assert_eq!(own(&flowering(2, 29), date(2027, 10, 1)), Some(date(2028, 3, 14)));
    }
}
