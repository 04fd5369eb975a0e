//! Counts of mites, of the yard file and of notes.

use crate::{Act, Apiary, Colony, Mites, Treatment};
use jiff::civil::Date;
use jiff::tz::TimeZone;

/// Mites on a sample of washed bees.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct MiteCount {
    /// Mites found.
    pub found: u32,
    /// Bees in the sample.
    pub bees: u32,
    /// The day.
    pub on: Date,
}

impl MiteCount {
    /// Mites per 100 bees; none of a sample without bees.
    #[must_use]
    pub fn per_100(&self) -> Option<f64> {
        (self.bees > 0).then(|| 100.0 * f64::from(self.found) / f64::from(self.bees))
    }
}

impl Apiary {
    /// The last count of a colony up to a day, in the yard file or noted since; none where nobody counted.
    #[must_use]
    pub fn last_mite_count(&self, colony: &Colony, until: Date) -> Option<MiteCount> {
        self.mite_counts(colony, until).max_by_key(|count| count.on)
    }

    /// A colony as if its yard file had been written on a day: with that of its counts that says most of the mites at their
    /// harm to winter bees, and with what was treated before that count was made. A count on the far side of a treatment says
    /// more of what the treatment left than of what did harm; of others the nearest says most.
    #[must_use]
    pub fn as_counted(&self, colony: &Colony, harm: Date, until: Date) -> Colony {
        let treated: Vec<Treatment> = self.treatments_noted(colony).collect();
        let between = |count: &MiteCount| {
            let (from, to) = (count.on.min(harm), count.on.max(harm));
            colony.treatments.iter().chain(&treated).any(|one| (from..to).contains(&one.on))
        };
        let days = |count: &MiteCount| harm.duration_since(count.on).as_hours().abs();
        let counts = self.mite_counts(colony, until);
        let Some(MiteCount { found, bees, on }) = counts.min_by_key(|count| (between(count), days(count))) else {
            return colony.clone();
        };
        let mut counted = Colony { mites: Mites::Counted { found, bees, on }, ..colony.clone() };
        counted.treatments.extend(treated.into_iter().filter(|one| one.on < on));
        counted
    }

    fn mite_counts(&self, colony: &Colony, until: Date) -> impl Iterator<Item = MiteCount> {
        let noted = self.acts_of(colony).filter_map(|(on, act)| match act {
            Act::MitesCounted { found, bees } => Some(MiteCount { found: *found, bees: *bees, on }),
            _ => None,
        });
        let filed = match colony.mites {
            Mites::Counted { found, bees, on } => Some(MiteCount { found, bees, on }),
            Mites::NotCounted => None,
        };
        filed.into_iter().chain(noted).filter(move |count| count.on <= until)
    }

    fn treatments_noted(&self, colony: &Colony) -> impl Iterator<Item = Treatment> {
        self.acts_of(colony).filter_map(|(on, act)| match act {
            Act::Treated(note) => Some(Treatment { on, class: note.class }),
            _ => None,
        })
    }

    /// The last treatment of a colony on a day or after, in the yard file or noted: a count of that day is made first.
    #[must_use]
    pub fn treated_since(&self, colony: &Colony, on: Date) -> Option<Date> {
        let filed = colony.treatments.iter().cloned();
        filed.chain(self.treatments_noted(colony)).map(|treatment| treatment.on).filter(|day| *day >= on).max()
    }

    /// What was noted as done to a colony, with its day here.
    pub(crate) fn acts_of(&self, colony: &Colony) -> impl Iterator<Item = (Date, &Act)> {
        let zone = TimeZone::get(&self.site.zone).unwrap_or(TimeZone::UTC);
        let id = colony.id;
        self.notes.iter().filter(move |note| note.colony == id).flat_map(move |note| {
            let on = note.at.to_zoned_datetime(zone.clone()).date();
            note.acts().map(move |act| (on, act))
        })
    }
}

#[cfg(test)]
mod tests {
    use crate::{demo_text, read};
    use jiff::civil::date;

    #[test]
    fn the_last_count_and_treatment_are_those_of_file_and_notes_together() {
        let visit = "[[visit]]\nat = 2025-10-20T12:00:00\n[visit.seen]\nLarch = \"mites=3 of 300\"\n";
        let (yard, _) = read(&format!("{}\n{visit}", demo_text()), "demo").unwrap();
        let larch = yard.colonies.iter().find(|colony| colony.name == "Larch").unwrap();
        let rate = |until| yard.last_mite_count(larch, until).unwrap().per_100().unwrap();
        assert!((rate(date(2025, 10, 19)) - 8.0).abs() < 1e-9 && (rate(date(2025, 10, 20)) - 1.0).abs() < 1e-9);
        assert_eq!(yard.last_mite_count(larch, date(2025, 9, 1)), None);
        assert_eq!(yard.treated_since(larch, date(2025, 10, 20)), Some(date(2025, 11, 2)), "noted");
        assert_eq!(yard.treated_since(larch, date(2025, 11, 3)), None);
    }
}
