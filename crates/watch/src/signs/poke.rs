//! A poke at the hole or the entrance, and whether a live bee answers.

use super::look::{Look, rising, there};
use crate::Law;

/// Answered by the strength of the colony, and the less the colder it is: bees deep in a cluster far from the hole feel
/// nothing of a straw and would lose their way back. So silence says little, and least in hard frost. No bee of another
/// hive sits in a hole in frost, which makes one that answers as good as seeing the cluster; on a flying day a robber or a
/// neighbour's bee may be the one met.
pub(super) fn law(look: &Look<'_>) -> Law {
    let p = look.p;
    let felt = 1.0 - rising((-look.day.air_c).max(0.0), p.poke_cold.value);
    let own = p.poke_answers.value * look.strength(p.poke_bees.value) * felt * look.showing();
    there(p.poke_stray.value + p.poke_visitors.value * look.flying_at_all(), own)
}
