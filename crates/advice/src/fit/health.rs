//! What must not be carried from hive to hive, and queens that will not do.

use snowhum_apiary::{Colony, Mites, QueenState, Trouble};

use super::Look;

/// Why a colony's bees and combs go to no other, in words; empty where nothing is known against it.
pub(super) fn sick(look: &Look<'_>, at: usize) -> Vec<String> {
    let colony = look.colony(at);
    let catching = [Trouble::FoulbroodSigns, Trouble::Chalkbrood, Trouble::CrumpledWings, Trouble::Dysentery];
    let troubles = colony.autumn.troubles.iter().flatten().filter(|trouble| catching.contains(trouble));
    let mut why: Vec<String> = troubles.map(|trouble| trouble.words().to_owned()).collect();
    if let Some(rate) = mite_rate(colony).filter(|rate| *rate >= look.figures.virus.value) {
        why.push(format!("{rate:.1} mites per 100 bees at its last count: viruses come with them"));
    }
    why
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

/// Whether the colony was treated on the day of its count or after.
pub(super) fn treated_since_count(colony: &Colony) -> bool {
    match colony.mites {
        Mites::Counted { on, .. } => colony.treatments.iter().any(|treatment| treatment.on >= on),
        Mites::NotCounted => false,
    }
}

/// Why a queen will not bring a colony through, in words; none where nothing is known against her.
pub(super) fn hopeless_queen(look: &Look<'_>, at: usize) -> Option<&'static str> {
    let late = look.today() > look.dates.requeen_by.p50;
    match look.colony(at).autumn.queen? {
        QueenState::None => Some("it has no queen"),
        QueenState::DroneLayer => Some("its queen lays drones"),
        QueenState::LayingWorkers => Some("its workers lay: it has no queen"),
        QueenState::Virgin if late => Some("its queen is not mated, and the season for mating is over here"),
        QueenState::Virgin | QueenState::Cast | QueenState::Laying | QueenState::Introduced => None,
    }
}

/// Whether a colony may have lost its queen: nobody saw her or her eggs, and while colonies still rear brood there is none.
pub(super) fn perhaps_queenless(look: &Look<'_>, at: usize) -> bool {
    let colony = look.colony(at);
    let unseen = colony.queen.seen_or_laying == Some(false) && colony.autumn.queen.is_none();
    unseen && colony.sealed_brood.p90 < 1.0 && look.today() <= look.dates.boost_by.p50
}

/// Whether a colony may take in another's bees or give its brood and combs.
pub(super) fn may_give_and_take(look: &Look<'_>, at: usize) -> bool {
    sick(look, at).is_empty() && hopeless_queen(look, at).is_none() && !perhaps_queenless(look, at)
}
