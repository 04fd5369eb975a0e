//! How tight the cluster is and what it therefore conducts.

use crate::block::{Bees, Heat, Traits};
use crate::lanes::{LANES, clamp, exp_near_one, max};
use crate::laws::Laws;

/// Tightens or loosens the cluster towards the air round it, and sets its conductance.
///
/// The volume a bee is log-linear in the air's temperature between tightest and loosest; conductance goes with
/// `mass^(2/3) (volume per bee)^(2/3)`, the surface of similar shapes. A brood nest keeps the cluster from shrinking
/// below its comb. It contracts faster than it expands.
#[inline(always)]
pub(crate) fn tighten(laws: &Laws, traits: &Traits, heat: &Heat, bees: &mut Bees) {
    for i in 0..LANES {
        let wanted = clamp((heat.warm[i] - laws.tightest_at) * laws.per_kelvin, 0.0, 1.0);
        let wanted = max(wanted, bees.nest[i] * laws.nest_looseness);
        let rate = if wanted < bees.loose[i] { laws.contracting } else { laws.expanding };
        let loose = bees.loose[i] + (wanted - bees.loose[i]) * rate;
        bees.loose[i] = loose;
        bees.core_air[i] = traits.core_air[i] * bees.size[i] * exp_near_one(laws.log_area_ratio * loose);
    }
}
