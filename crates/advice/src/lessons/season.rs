//! A winter by its days: when it is counted from, and to.

use jiff::civil::Date;
use jiff::tz::TimeZone;
use serde::{Deserialize, Serialize};
use snowhum_apiary::{Apiary, ColonyId, Note};

/// A winter, named by the year of its autumn.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Season {
    /// The year of its autumn.
    pub year: i16,
    /// As it is spoken of: `2025–26`.
    pub name: String,
    /// First day of the year round it: 1 July, 1 January in the south.
    pub from: Date,
    /// The first day after it.
    pub until: Date,
    /// The day from which colonies count as wintered: the keeper's count, else the surveys' 1 October (1 April in the
    /// south).
    pub start: Date,
    /// The last day of winter here: the site's spring.
    pub end: Date,
    /// The day on which surveys with fixed days end it: 1 April (1 October in the south).
    pub fixed_end: Date,
}

impl Season {
    /// The winter of a year; `spring` is the site's, of any year.
    pub(super) fn of(year: i16, apiary: &Apiary, spring: Date) -> Self {
        let is_north = apiary.site.latitude.get() >= 0.0;
        let (first, start, fixed_end) = if is_north { (7, 10, 4) } else { (1, 4, 10) };
        let later = year + i16::from(is_north);
        let on = |year: i16, month: i8, day: i8| {
            // Only 29 February can fail; the day before it is there every year.
            Date::new(year, month, day).or_else(|_| Date::new(year, month, 28)).unwrap_or(Date::ZERO)
        };
        let from = on(year, first, 1);
        let until = on(year + 1, first, 1);
        let counted = (from..until).contains(&apiary.as_of).then_some(apiary.as_of);
        let name = if is_north { format!("{year}–{:02}", later.rem_euclid(100)) } else { year.to_string() };
        Self {
            year,
            name,
            from,
            until,
            start: counted.unwrap_or_else(|| on(year, start, 1)),
            end: on(later, spring.month(), spring.day()),
            fixed_end: on(later, fixed_end, 1),
        }
    }

    /// Whether the yard's counts are of this winter.
    pub(super) fn is_counted(&self, apiary: &Apiary) -> bool {
        (self.from..self.until).contains(&apiary.as_of)
    }
}

/// Notes with their days on the yard's clock, in order.
#[derive(Debug, Clone)]
pub(super) struct Diary<'a> {
    pub(super) notes: Vec<(Date, &'a Note)>,
}

impl<'a> Diary<'a> {
    /// Every note of a yard up to and with a day.
    pub(super) fn of(apiary: &'a Apiary, as_of: Date) -> Self {
        let zone = TimeZone::get(&apiary.site.zone).unwrap_or(TimeZone::UTC);
        let dated = apiary.every_note().map(|note| (note.at.to_zoned_datetime(zone.clone()).date(), note));
        let mut notes: Vec<_> = dated.filter(|(on, _)| *on <= as_of).collect();
        notes.sort_by_key(|(_, note)| (note.at, note.id));
        Self { notes }
    }

    /// Those of a colony within a season, from the day the colonies were counted.
    pub(super) fn wintering<'d>(
        &'d self,
        colony: ColonyId,
        season: &'d Season,
    ) -> impl DoubleEndedIterator<Item = (Date, &'a Note)> + 'd {
        let within = move |(on, note): &&(Date, &Note)| {
            note.colony == colony && (season.start.min(season.end)..season.until).contains(on)
        };
        self.notes.iter().filter(within).copied()
    }

    /// Those of a season, of all colonies.
    pub(super) fn of_season<'d>(&'d self, season: &'d Season) -> impl Iterator<Item = (Date, &'a Note)> + 'd {
        self.notes.iter().filter(|(on, _)| (season.from..season.until).contains(on)).copied()
    }
}
