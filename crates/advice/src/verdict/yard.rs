//! What comes later for the whole yard, and what nobody looked at.

use jiff::ToSpan;
use snowhum_apiary::{Colony, KnownBy};

use super::answer::{Later, LaterKind, Unsure};
use super::facts::{Facts, Fate};
use super::ground::Ground;
use super::mites;
use crate::jobs::triggers::Triggers;
use crate::left_out::MAY_FLOW;

/// What is ahead of the yard, the earliest first.
pub(super) fn later(ground: &Ground<'_>) -> Vec<Later> {
    let cluster = ground.dates.cluster.p50;
    let mut later = Vec::new();
    if (7..=9).contains(&ground.month) {
        later.push(Later { what: LaterKind::CountMites, on: cluster.saturating_sub(1.weeks()) });
    }
    later.push(Later { what: LaterKind::Guards, on: cluster });
    if let Some([gone, back]) = &ground.broodless {
        later.push(Later { what: LaterKind::Broodless, on: gone.p50 });
        let before = Triggers::shipped().map_or(0.0, |triggers| triggers.weigh_before_days.value);
        later.push(Later { what: LaterKind::Weigh, on: back.p50.saturating_sub((before as i64).days()) });
    }
    later.push(Later { what: LaterKind::LookThrough, on: ground.base.question.spring });
    later.retain(|one| one.on > ground.week());
    later.sort_by_key(|one| one.on);
    later
}

/// Whether its food is known by word or hand alone.
pub(super) fn is_told(colony: &Colony) -> bool {
    matches!(colony.stores.known_by, KnownBy::Stated | KnownBy::Heft)
}

/// What nobody looked at in the colonies that live.
pub(super) fn unsure(ground: &Ground<'_>, facts: &[Facts<'_>]) -> Unsure {
    let living = || {
        let colonies = ground.base.housed.iter().map(|housed| &housed.colony);
        colonies.zip(facts).filter(|(_, facts)| facts.fate == Fate::Lives).map(|(colony, _)| colony)
    };
    Unsure {
        nectar: MAY_FLOW.contains(&ground.month),
        mites: living().filter(|colony| mites::not_counted(ground, colony)).count(),
        food: living().filter(|colony| is_told(colony)).count(),
    }
}
