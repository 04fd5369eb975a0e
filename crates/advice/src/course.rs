//! A course of syrup: how much of what is wanted bees still take down before they stop.

use jiff::civil::Date;
use snowhum_units::{Kilogram, Range};

use crate::ahead::shortage::WORTH_FEEDING;
use crate::finish;
use crate::syrup::{Strength, sugar_for};

/// Syrup from the quickest feeder.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Course {
    /// Stores it becomes.
    pub(crate) stores: Kilogram,
    /// Stores that are wanted and that syrup is too late for.
    pub(crate) rest: Kilogram,
    /// Last day to begin.
    pub(crate) begin: Date,
    /// The day by which it is finished.
    pub(crate) finish: Date,
    /// Whether that is the day that is in time in nine years of ten.
    pub(crate) is_safe: bool,
}

impl Course {
    /// All that is wanted by the safe day (`finish.p10`) where that can be; else as much as is taken by the day that is in
    /// time in half of all years. None where that is past, or where nothing worth feeding is wanted or left.
    pub(crate) fn of(as_of: Date, finish: Range<Date>, wanted: Kilogram) -> Option<Self> {
        if wanted < WORTH_FEEDING {
            return None;
        }
        let (_, a_day) = finish::FEEDERS[0];
        let litres = litres(wanted);
        let begin = finish::begin_by(finish.p10, litres, a_day);
        if begin >= as_of {
            let rest = Kilogram::new(0.0);
            return Some(Self { stores: wanted, rest, begin, finish: finish.p10, is_safe: true });
        }
        let taken = (a_day * days(as_of, finish.p50) as f64).clamp(0.0, litres);
        let stores = wanted * (taken / litres);
        let begin = finish::begin_by(finish.p50, taken, a_day).max(as_of);
        (stores >= WORTH_FEEDING).then_some(Self {
            stores,
            rest: wanted - stores,
            begin,
            finish: finish.p50,
            is_safe: false,
        })
    }

    /// Sugar for it.
    pub(crate) fn sugar(&self) -> Kilogram {
        sugar_for(self.stores)
    }

    /// Syrup of three of sugar to two of water.
    pub(crate) fn litres(&self) -> f64 {
        litres(self.stores)
    }

    /// Days until it is finished.
    pub(crate) fn days(&self, as_of: Date) -> i64 {
        days(as_of, self.finish)
    }
}

fn litres(stores: Kilogram) -> f64 {
    Strength::ThreeToTwo.syrup_with(sugar_for(stores)).get() * 1e3
}

fn days(from: Date, until: Date) -> i64 {
    until.duration_since(from).as_hours() / 24
}

#[cfg(test)]
mod tests {
    use super::Course;
    use jiff::civil::{Date, date};
    use snowhum_units::{Kilogram, Range};

    const FINISH: Range<Date> = Range { p10: date(2025, 8, 26), p50: date(2025, 9, 9), p90: date(2025, 9, 20) };

    fn at(day: Date, kg: f64) -> Option<Course> {
        Course::of(day, FINISH, Kilogram::new(kg))
    }

    #[test]
    fn in_good_time_all_of_it_is_finished_by_the_safe_day() {
        let course = at(date(2025, 8, 1), 11.0).unwrap();
        // 11 kg of stores want 10 kg of sugar, 13 L of syrup: five days at three litres.
        assert_eq!((course.begin, course.finish), (date(2025, 8, 21), date(2025, 8, 26)));
        assert!(course.is_safe && course.rest.get() == 0.0);
    }

    #[test]
    fn late_it_is_no_more_than_bees_take_in_the_days_left() {
        let course = at(date(2025, 9, 6), 22.0).unwrap();
        assert!((course.litres() - 9.0).abs() < 1e-9, "three days at three litres: {}", course.litres());
        assert!((course.stores + course.rest - Kilogram::new(22.0)).get().abs() < 1e-9);
        assert!(!course.is_safe);
        assert_eq!(at(date(2025, 9, 9), 22.0), None);
    }

    #[test]
    fn between_the_safe_day_and_the_usual_one_it_is_begun_at_once_or_in_time_for_the_usual() {
        let course = at(date(2025, 8, 27), 11.0).unwrap();
        assert_eq!((course.begin, course.finish, course.rest.get()), (date(2025, 9, 4), date(2025, 9, 9), 0.0));
    }
}
