//! Days: the season that one belongs to, and days of many winters put in order.

use jiff::ToSpan;
use jiff::civil::Date;
use snowhum_units::Degree;

use crate::statistics::rounded;

/// Later than any day.
const NEVER: i64 = i64::MAX;

/// First day of the season that a day belongs to: 1 July in the north, 1 January in the south. A month before, the
/// season to come counts.
///
/// ```
/// use jiff::civil::date;
/// use snowhum_advice::jobs::season_start;
/// use snowhum_units::Degree;
/// assert_eq!(season_start(date(2026, 4, 10), Degree::new(61.7)), date(2025, 7, 1));
/// assert_eq!(season_start(date(2026, 6, 2), Degree::new(61.7)), date(2026, 7, 1));
/// assert_eq!(season_start(date(2026, 9, 10), Degree::new(-42.0)), date(2026, 1, 1));
/// ```
#[must_use]
pub fn season_start(day: Date, latitude: Degree) -> Date {
    let southern = latitude.get() < 0.0;
    let month = if southern { 1 } else { 7 };
    let soon = day.saturating_add(30.days());
    let year = if soon.month() >= month { soon.year() } else { soon.year() - 1 };
    Date::new(year, month, 1).unwrap_or(day)
}

/// The date of an hour of the run.
pub(crate) fn date_of_hour(first_day: Date, hour: usize) -> Date {
    first_day.saturating_add((hour.saturating_sub(1) as i64 / 24).days())
}

/// The day on which something falls due, one of each path or member; none where it never does.
#[derive(Debug, Clone)]
pub(crate) struct Dates {
    days: Vec<Option<i64>>,
}

impl Dates {
    /// One for each.
    pub(crate) fn of(days: Vec<Option<i64>>) -> Self {
        Self { days }
    }

    /// So many days later, or earlier.
    pub(crate) fn moved(&self, by: f64) -> Self {
        Self { days: self.days.iter().map(|day| day.map(|day| day + by.round() as i64)).collect() }
    }

    /// The earlier of two, path by path.
    pub(crate) fn earlier(&self, other: &Self) -> Self {
        let both = self.days.iter().zip(&other.days);
        Self { days: both.map(|(a, b)| [*a, *b].into_iter().flatten().min()).collect() }
    }

    /// The later of two, path by path. Where the other never comes, this one decides.
    pub(crate) fn later(&self, other: &Self) -> Self {
        let both = self.days.iter().zip(&other.days);
        Self { days: both.map(|(own, other)| own.map(|own| other.map_or(own, |other| own.max(other)))).collect() }
    }

    /// Share of the winters in which it comes.
    pub(crate) fn share(&self) -> f64 {
        let come = self.days.iter().filter(|day| day.is_some()).count();
        rounded(come as f64 / self.days.len().max(1) as f64, 2)
    }

    /// The day by which it has come in a share of all winters, counted from `first`; straight between two days.
    pub(crate) fn at(&self, share: f64, first: Date) -> Option<Date> {
        let mut days: Vec<i64> = self.days.iter().map(|day| day.unwrap_or(NEVER)).collect();
        days.sort_unstable();
        let at = share * days.len().saturating_sub(1) as f64;
        let (low, high) = (*days.get(at.floor() as usize)?, *days.get(at.ceil() as usize)?);
        if high == NEVER {
            return None;
        }
        let day = low as f64 + at.fract() * (high - low) as f64;
        Some(first.saturating_add((day.round() as i64).days()))
    }
}

#[cfg(test)]
mod tests {
    use super::Dates;
    use jiff::civil::date;

    #[test]
    fn what_never_comes_counts_as_later_than_all() {
        let dates = Dates::of(vec![Some(3), None, Some(1), Some(2), None]);
        let first = date(2025, 7, 1);
        assert_eq!([0.0, 0.5, 0.9].map(|q| dates.at(q, first)), [Some(date(2025, 7, 2)), Some(date(2025, 7, 4)), None]);
        assert!((dates.share() - 0.6).abs() < 1e-12);
        assert!(Dates::of(Vec::new()).at(0.5, first).is_none());
    }
}
