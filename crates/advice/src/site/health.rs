//! What must not be carried from hive to hive, and queens that will not do.

use jiff::civil::Date;
use snowhum_apiary::{Colony, Mites, Trouble};
use snowhum_say::{Message, site as say};

use super::dates::SiteDates;
use super::figures::Figures;
use crate::ahead::run::Run;
use crate::queen_trouble::QueenTrouble;

/// What a colony's health is held against on a day at a site.
pub(crate) struct Health {
    today: Date,
    /// Last sensible day to give sealed brood.
    boost_by: Date,
    /// Mites per 100 bees from which viruses are reckoned with.
    virus: f64,
}

impl Health {
    /// For the plan's first day; none only if the program's own table is broken.
    pub(crate) fn of(run: &Run<'_>) -> Option<Self> {
        let figures = Figures::shipped()?;
        Some(Self::by(run, &figures, &SiteDates::by(run, &figures)))
    }

    pub(crate) fn by(run: &Run<'_>, figures: &Figures, dates: &SiteDates) -> Self {
        Self { today: run.question.as_of, boost_by: dates.boost_by.p50, virus: figures.virus.value }
    }

    /// Why a colony's bees and combs go to no other, in words; empty where nothing is known against it.
    pub(crate) fn sick(&self, colony: &Colony) -> Vec<Message> {
        let catching = [Trouble::FoulbroodSigns, Trouble::Chalkbrood, Trouble::CrumpledWings, Trouble::Dysentery];
        let troubles = colony.autumn.troubles.iter().flatten().filter(|trouble| catching.contains(trouble));
        let mut why: Vec<Message> = troubles.map(|trouble| trouble.message()).collect();
        if let Some(rate) = mite_rate(colony).filter(|rate| *rate >= self.virus) {
            why.push(say::sick_mites(rate));
        }
        why
    }

    /// Whether a colony may have lost its queen: nobody saw her or her eggs, and while colonies still rear brood there is
    /// none.
    pub(crate) fn perhaps_queenless(&self, colony: &Colony) -> bool {
        let unseen = colony.queen.seen_or_laying == Some(false) && colony.autumn.queen.is_none();
        unseen && colony.sealed_brood.is_some_and(|brood| brood.p90 < 1.0) && self.today <= self.boost_by
    }

    /// Whether mites so many on 100 bees bring viruses with them.
    pub(crate) fn brings_viruses(&self, per_100: f64) -> bool {
        per_100 >= self.virus
    }

    /// Whether a colony may take in another's bees or give its brood and combs.
    pub(crate) fn may_give_and_take(&self, colony: &Colony) -> bool {
        self.sick(colony).is_empty() && QueenTrouble::of(colony).is_none() && !self.perhaps_queenless(colony)
    }
}

/// Whether a colony shows signs of foulbrood.
pub(crate) fn foulbrood(colony: &Colony) -> bool {
    colony.autumn.troubles.iter().flatten().any(|trouble| *trouble == Trouble::FoulbroodSigns)
}

/// Mites per 100 bees as counted.
pub(crate) fn mite_rate(colony: &Colony) -> Option<f64> {
    match colony.mites {
        Mites::Counted { found, bees, .. } if bees > 0 => Some(100.0 * f64::from(found) / f64::from(bees)),
        Mites::Counted { .. } | Mites::NotCounted => None,
    }
}
