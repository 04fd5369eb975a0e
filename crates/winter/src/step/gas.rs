//! Carbon dioxide: from the bees into two air zones, out with the air.

use crate::block::{Balance, Gas, Heat};
use crate::lanes::{LANES, clamp};
use crate::laws::{HOUR, Laws};
use crate::shell::Shell;

/// Mass of a mole of dry air over one of carbon dioxide: turns a ratio of masses into one of volumes. As each mole of
/// carbon dioxide takes the place of one of oxygen, the whole stays as it was.
pub(crate) const BY_VOLUME: f64 = 28.96 / 44.01;
/// That of outdoor air, kg a kilogram: 420 parts in a million by volume.
pub(crate) const OUTDOORS: f64 = 420e-6 / BY_VOLUME;
/// How fast carbon dioxide diffuses through still air over how fast water vapour does: 16 over 25 mm²/s.
const DIFFUSES: f64 = 0.64;

/// One hour: both zones' balances, implicit in their ratios and solved exactly, and what bees can give in such air.
#[inline(always)]
pub(crate) fn balance(shell: &Shell, laws: &Laws, heat: &Heat, balance: &Balance, gas: &mut Gas) {
    let (warm_held, cold_held) = (shell.warm_air * (1.0 / HOUR), shell.cold_air * (1.0 / HOUR));
    let breathing = breathing(shell);
    let per_joule = laws.dioxide_per_honey / laws.honey_energy;
    let per_span = 1.0 / (laws.dioxide_stops - laws.dioxide_eases);
    for i in 0..LANES {
        let fresh = heat.through[i] + heat.exchange_low[i];
        let (upward, mixed) = (balance.upward[i], balance.mixed[i]);
        let (warm_out, cold_out) = (warm_held + breathing + upward, cold_held + fresh + mixed);
        let warm_in = heat.metabolic[i] * per_joule + breathing * OUTDOORS + warm_held * gas.warm[i];
        let cold_in = fresh * OUTDOORS + cold_held * gas.cold[i];
        let inverse = 1.0 / (warm_out * cold_out - upward * mixed);
        gas.warm[i] = (warm_in * cold_out + upward * cold_in) * inverse;
        gas.cold[i] = (cold_in * warm_out + mixed * warm_in) * inverse;
        gas.breath[i] = clamp((laws.dioxide_stops - BY_VOLUME * gas.warm[i]) * per_span, 0.0, 1.0);
    }
}

/// What a lid that breathes passes, kg/s for a unit of ratio.
pub(crate) fn breathing(shell: &Shell) -> f64 {
    DIFFUSES * shell.faces.lid_breathing
}
