//! What a treatment can still do: by the days of the site where they are known, else by the month.

use jiff::civil::Date;
use snowhum_apiary::Site;
use snowhum_say::{Message, mites as say};

use crate::jobs::answer::JobsAnswer;
use crate::{winter_bees, yard};

/// Windows of the year that words on mites go by: the treatment that spares the winter bees, the last look into open
/// hives in autumn, the first in spring.
const TREAT: &str = "treat-mites";
const LAST_LOOK: &str = "mite-count-autumn";
const FIRST_LOOK: &str = "first-look";

/// The days of a site's year that words on mites go by, and the day asked about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct SeasonDays {
    /// The day asked about.
    pub today: Date,
    /// A treatment begun by then spares the winter bees in nine years of ten.
    pub safe: Date,
    /// The day that is in time in half of all years: from here on winter bees are raised.
    pub usual: Date,
    /// The winter bees are raised: no treatment spares them any more.
    pub raised: Date,
    /// First look at combs in spring.
    pub opened: Date,
}

impl SeasonDays {
    /// The days of a site's windows; none where one of them never comes there. The day by which winter bees are raised is
    /// the plan's own, else that of the last look.
    #[must_use]
    pub fn of(jobs: &JobsAnswer, site: &Site) -> Option<Self> {
        let usual = |id: &str| jobs.window(id)?.usual;
        let raised = winter_bees::emergence(yard::place(site)).map(|day| winter_bees::spared(day, jobs.from.year())[1]);
        Some(Self {
            today: jobs.as_of,
            safe: jobs.window(TREAT)?.earliest?,
            usual: usual(TREAT)?,
            raised: raised.or(usual(LAST_LOOK))?.max(usual(TREAT)?),
            opened: usual(FIRST_LOOK)?,
        })
    }

    /// What a treatment on the day asked about can still do.
    #[must_use]
    pub fn says(&self) -> Message {
        let Self { today, safe, usual, raised, opened } = *self;
        match today {
            today if today <= safe => say::in_time(safe != usual, safe, usual),
            today if today <= usual => say::safe_day_past(safe, usual),
            today if today <= raised => say::being_raised(raised, usual),
            today if today < opened => say::raised(raised),
            _ => say::count_monthly(),
        }
    }
}

/// What holds in a month as the north counts its seasons, where no site is known.
pub(super) fn by_month(month: Option<i8>) -> Message {
    match month {
        Some(7) => say::july(),
        Some(8) => say::august(),
        Some(9) => say::september(),
        Some(10..=12 | 1 | 2) => say::winter(),
        Some(3..=6) => say::count_monthly(),
        _ => say::any_month(),
    }
}
