//! The day and the site that all colonies of a yard are judged on.

use jiff::ToSpan;
use jiff::civil::Date;
use snowhum_units::Range;

use super::answer::Urgency;
use crate::ahead::base::Base;
use crate::broodless::broodless_days;
use crate::now::thresholds::Thresholds;
use crate::seasons::season_month;
use crate::site::dates;
use crate::site::dates::SiteDates;
use crate::site::health::Health;
use crate::winter_bees;

/// Half a year, from the one hemisphere's winter to the other's, days.
const HALF_A_YEAR: f64 = 182.0;

/// What is the same for all colonies.
pub(crate) struct Ground<'a> {
    pub(super) base: &'a Base<'a>,
    /// The day asked about; a run may begin on the day after.
    pub(super) today: Date,
    /// The month, as the north counts its seasons.
    pub(super) month: i8,
    pub(super) thresholds: Thresholds,
    pub(super) dates: SiteDates,
    pub(super) health: Health,
    /// When no colony of the yard has brood; none where the run shows no such time.
    pub(super) broodless: Option<[Range<Date>; 2]>,
    /// Treated before the first day all winter bees are spared, after the second none.
    pub(super) spared: [Date; 2],
}

impl<'a> Ground<'a> {
    /// None only if one of the program's own tables is broken.
    pub(super) fn of(base: &'a Base<'a>, today: Date) -> Option<Self> {
        let question = base.question;
        Some(Self {
            base,
            today,
            month: season_month(today, question.apiary.site.latitude.get()),
            thresholds: Thresholds::shipped().ok()?,
            dates: SiteDates::of(base)?,
            health: Health::of(base)?,
            broodless: broodless_days(base),
            spared: dates::winter_bees(base),
        })
    }

    /// So many days from today.
    pub(super) fn within(&self, days: f64) -> Date {
        self.today.saturating_add((days as i64).days())
    }

    /// A week from today.
    pub(super) fn week(&self) -> Date {
        self.within(self.thresholds.verdict_week.value)
    }

    /// Whether colonies can still be opened for a sample of bees: high summer until they cluster.
    pub(super) fn counts_mites(&self) -> bool {
        (7..=10).contains(&self.month) && self.today <= self.dates.cluster.p90
    }

    /// The day of this winter about which there is least brood.
    pub(super) fn least_brood(&self) -> Date {
        let south = self.base.question.apiary.site.latitude.get() < 0.0;
        let of_year = self.thresholds.verdict_least_brood.value + if south { HALF_A_YEAR } else { 0.0 };
        winter_bees::date(of_year, self.base.question.autumn_from.year())
    }

    /// The word of a last day; what has none waits for a day that allows a look.
    pub(super) fn urgency(&self, by: Option<Date>) -> Urgency {
        let Some(by) = by else { return Urgency::LookInside };
        if by <= self.within(self.thresholds.verdict_today.value) {
            Urgency::Today
        } else if by <= self.week() {
            Urgency::ThisWeek
        } else {
            Urgency::By
        }
    }
}
