//! Eating, and reaching food.
//!
//! A cluster eats what it touches. It climbs to food in its own seams when it is warm enough to move, crosses to the
//! next comb only when warm enough to loosen, and does not leave brood. Food a few centimetres off in a cold spell
//! might as well not be there: isolation starvation is what these gates do, not a label. So it is with a board of candy:
//! bees eat of it once the honey between them and it is gone and the air over them is not too cold, or on a day so mild
//! that they walk to it.

use crate::block::{Bees, Heat, Stores, Traits};
use crate::lanes::{LANES, gate, max, min};
use crate::laws::{HOUR, Laws};
use crate::shell::Shell;

/// Share of its pace at which a cluster with a full brood nest still climbs.
const CLIMB_WITH_BROOD: f64 = 0.5;
/// Share of its pace at which it crosses combs with a full brood nest.
const CROSS_WITH_BROOD: f64 = 0.25;

/// Share of its pace at which bees bring food from combs and boards that the cluster does not touch.
const ROAMING: f64 = 0.5;

/// One hour of eating and moving.
#[inline(always)]
pub(crate) fn eat(shell: &Shell, laws: &Laws, traits: &Traits, heat: &mut Heat, bees: &Bees, stores: &mut Stores) {
    for i in 0..LANES {
        let need = heat.metabolic[i] * (HOUR / laws.honey_energy);
        let from_comb = min(need, stores.touched[i]);
        let from_crop = min(need - from_comb, stores.crop[i]);
        let touched = stores.touched[i] - from_comb;
        let full = laws.crop_reserve / laws.bee_mass * bees.mass[i];
        let refill = min(max(full - (stores.crop[i] - from_crop), 0.0), touched);
        stores.crop[i] += refill - from_crop;
        stores.eaten[i] = from_comb + from_crop;

        let after = touched - refill;
        let warm = heat.warm[i];
        let mut wanted = max(traits.touched[i] * bees.mass[i] - after, 0.0);
        let pace = laws.move_rate * bees.mass[i];
        let climbed = min(
            min(stores.above[i], wanted),
            pace * gate(warm > traits.climb_from[i]) * (1.0 - CLIMB_WITH_BROOD * bees.nest[i]),
        );
        wanted -= climbed;
        let fed = min(min(stores.feed[i], wanted), pace * gate(warm > laws.feed_from));
        wanted -= fed;
        let crossing = gate(warm > traits.cross_from[i]) * (1.0 - (1.0 - CROSS_WITH_BROOD) * bees.nest[i]);
        let touches = gate(stores.above[i] < shell.within_touch) * gate(warm > laws.feed_from);
        let by_touch = crossing + stores.body_over[i] * (touches - crossing);
        let off_body = min(min(stores.body[i], wanted), pace * max(by_touch, ROAMING * gate(warm > laws.carry_from)));
        wanted -= off_body;
        let crossed = min(min(stores.beside[i], wanted), pace * crossing);
        let carried = min(stores.far[i], ROAMING * pace * gate(warm > laws.carry_from));
        stores.above[i] -= climbed;
        stores.feed[i] -= fed;
        stores.beside[i] += carried - crossed;
        stores.far[i] -= carried;
        stores.body[i] -= off_body;
        stores.body_taken[i] += off_body;
        stores.touched[i] = after + climbed + fed + crossed + off_body;

        let empty = gate(stores.touched[i] + stores.crop[i] < 0.05 * full);
        stores.hungry_hours[i] = (stores.hungry_hours[i] + 1.0) * empty;
        heat.fuel[i] = (stores.touched[i] + stores.crop[i]) * (laws.honey_energy / HOUR);
    }
}
