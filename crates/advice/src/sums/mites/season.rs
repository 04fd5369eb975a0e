//! What a treatment can still do: by the days of the site where they are known, else by the month.

use jiff::civil::Date;
use snowhum_apiary::Site;

use crate::jobs::answer::JobsAnswer;
use crate::words::day;
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

    /// What a treatment on the day asked about can still do, in words.
    #[must_use]
    pub fn says(&self) -> String {
        let [safe, usual, raised] = [self.safe, self.usual, self.raised].map(day);
        let half = if safe == usual { String::new() } else { format!(" ({usual} is in time in half of all years)") };
        if self.today <= self.safe {
            format!(
                "The winter bees are still to be raised here: a treatment begun by {safe} protects this winter{half}. \
                 One begun later comes too late for part of them."
            )
        } else if self.today <= self.usual {
            format!(
                "The safe day to begin a treatment here, {safe}, is past; {usual} is in time in half of all years. Begin \
                 now: each week later comes too late for more of the winter bees."
            )
        } else if self.today <= self.raised {
            format!(
                "The winter bees are being raised here, from about {usual} to about {raised}: a treatment now is too \
                 late for part of them; it protects the rest, the neighbours and next year."
            )
        } else if self.today < self.opened {
            format!(
                "The winter bees have been raised here, most of them by about {raised}: a treatment now protects the \
                 neighbours and next year's bees, and no longer mends these."
            )
        } else {
            "Mites grow as long as there is brood: count again every month.".to_owned()
        }
    }
}

/// What holds in a month as the north counts its seasons, where no site is known.
pub(super) fn by_month(month: Option<i8>) -> &'static str {
    match month {
        Some(7) => "The winter bees will soon be raised: what is done before them protects this winter.",
        Some(8) => {
            "The winter bees are raised from about mid-August: what is done before protects this winter; what is done after comes too late for part of them, and protects the neighbours and next year."
        }
        Some(9) => {
            "The winter bees are being raised: a treatment now is too late for part of them; it protects the rest, the neighbours and next year."
        }
        Some(10..=12 | 1 | 2) => {
            "The winter bees are raised: a treatment now protects the neighbours and next year's bees, and no longer mends these."
        }
        Some(3..=6) => "Mites grow as long as there is brood: count again every month.",
        _ => {
            "Winter bees are raised in August to October: a treatment before them protects this winter, one after them the neighbours and next year."
        }
    }
}
