//! What must not be carried from hive to hive, and queens that will not do.

use jiff::civil::Date;
use snowhum_apiary::{Colony, Mites, QueenState, Trouble};

use super::answer::SiteDates;
use super::figures::Figures;
use crate::plan::Base;

/// What a colony's health is held against on a day at a site.
pub(crate) struct Health {
    today: Date,
    /// Last sensible days to give a queen and sealed brood.
    requeen_by: Date,
    boost_by: Date,
    /// Mites per 100 bees from which viruses are reckoned with.
    virus: f64,
}

impl Health {
    /// For the plan's first day; none only if the program's own table is broken.
    pub(crate) fn of(base: &Base<'_>) -> Option<Self> {
        let figures = Figures::shipped()?;
        Some(Self::from(base, &figures, &super::dates::of(base, &figures)))
    }

    pub(super) fn from(base: &Base<'_>, figures: &Figures, dates: &SiteDates) -> Self {
        Self {
            today: base.question.as_of,
            requeen_by: dates.requeen_by.p50,
            boost_by: dates.boost_by.p50,
            virus: figures.virus.value,
        }
    }

    /// Why a colony's bees and combs go to no other, in words; empty where nothing is known against it.
    pub(super) fn sick(&self, colony: &Colony) -> Vec<String> {
        let catching = [Trouble::FoulbroodSigns, Trouble::Chalkbrood, Trouble::CrumpledWings, Trouble::Dysentery];
        let troubles = colony.autumn.troubles.iter().flatten().filter(|trouble| catching.contains(trouble));
        let mut why: Vec<String> = troubles.map(|trouble| trouble.words().to_owned()).collect();
        if let Some(rate) = mite_rate(colony).filter(|rate| *rate >= self.virus) {
            why.push(format!("{rate:.1} mites per 100 bees at its last count: viruses come with them"));
        }
        why
    }

    /// Why a queen will not bring a colony through, in words; none where nothing is known against her.
    pub(super) fn hopeless_queen(&self, colony: &Colony) -> Option<&'static str> {
        let late = self.today > self.requeen_by;
        match colony.autumn.queen? {
            QueenState::None => Some("it has no queen"),
            QueenState::DroneLayer => Some("its queen lays drones"),
            QueenState::LayingWorkers => Some("its workers lay: it has no queen"),
            QueenState::Virgin if late => Some("its queen is not mated, and the season for mating is over here"),
            QueenState::Virgin | QueenState::Cast | QueenState::Laying | QueenState::Introduced => None,
        }
    }

    /// Whether a colony may have lost its queen: nobody saw her or her eggs, and while colonies still rear brood there is
    /// none.
    pub(super) fn perhaps_queenless(&self, colony: &Colony) -> bool {
        let unseen = colony.queen.seen_or_laying == Some(false) && colony.autumn.queen.is_none();
        unseen && colony.sealed_brood.p90 < 1.0 && self.today <= self.boost_by
    }

    /// Whether a colony may take in another's bees or give its brood and combs.
    pub(crate) fn may_give_and_take(&self, colony: &Colony) -> bool {
        self.sick(colony).is_empty() && self.hopeless_queen(colony).is_none() && !self.perhaps_queenless(colony)
    }
}

/// Whether a colony shows signs of foulbrood.
pub(super) fn foulbrood(colony: &Colony) -> bool {
    colony.autumn.troubles.iter().flatten().any(|trouble| *trouble == Trouble::FoulbroodSigns)
}

/// Mites per 100 bees as counted.
pub(super) fn mite_rate(colony: &Colony) -> Option<f64> {
    match colony.mites {
        Mites::Counted { found, bees, .. } if bees > 0 => Some(100.0 * f64::from(found) / f64::from(bees)),
        Mites::Counted { .. } | Mites::NotCounted => None,
    }
}
