//! A day of bees: deaths, brood, and what becomes of the colony's chance.

use crate::block::{Bees, Block, CAUSES};
use crate::ends::Cause;
use crate::lanes::{LANES, Lanes, clamp, exp, gate, ln, max, min};
use crate::laws::Laws;

/// Days as egg and larva, and sealed: 21 in all (common knowledge of the trade).
const OPEN_DAYS: f64 = 9.0;
const SEALED_DAYS: f64 = 12.0;
/// Days over which the warmth that starts brood is averaged.
const WARMTH_DAYS: f64 = 14.0;
/// Width of the viability limit, as a share of it (judgement).
const VIABLE_WIDTH: f64 = 0.2;
/// Hazard a day of a colony twice as long without a meal as most outlive, and the most (judgement).
const HUNGER: f64 = 4.0;
const MOST_HUNGER: f64 = 5.0;
/// Food out of reach above which a starved colony starved beside food.
const FOOD_NEAR: f64 = 0.7;
/// Days from the middle emergence of winter bees to the first: late August at Winnipeg (Mattila, Harris and Otis 2001).
const FIRST_WINTER_BEES: f64 = -25.0;
/// Brood cells a bee can keep warm and fed, at most (judgement).
const CELLS_A_BEE: f64 = 3.0;
/// Brood cells below which there is no nest to warm.
const LEAST_NEST: f64 = 50.0;

/// The day as the season sees it.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Season {
    /// Days since winter bees emerged.
    pub(crate) winter_bee_age: f64,
    /// Hours of daylight.
    pub(crate) day_length: f64,
    /// Whether days grow longer.
    pub(crate) rising: bool,
}

/// One day: `died`, brood and cluster size are renewed, survival mass moves.
#[inline(always)]
pub(crate) fn age(laws: &Laws, season: Season, dark_stores: f64, block: &mut Block) {
    let died = die(laws, season, dark_stores, block);
    rear(laws, season, block);
    resize(laws, &mut block.bees);
    decide(laws, block);
    block.bees.died = died;
}

/// Deaths by age, load, confinement, damage and chill; gives the number that died.
#[inline(always)]
fn die(laws: &Laws, season: Season, dark_stores: f64, block: &mut Block) -> Lanes {
    let ageing = (max(season.winter_bee_age, 0.0) / laws.winter_bee_ageing).exp();
    let mut died = [0.0; LANES];
    let (bees, tally, traits) = (&mut block.bees, &block.tally, &block.traits);
    for i in 0..LANES {
        let flew = gate(tally.flight[i] >= 1.0);
        bees.confined_days[i] = (bees.confined_days[i] + 1.0) * (1.0 - flew);
        let load = tally.heat[i] / (24.0 * bees.mass[i] + 1e-9);
        let worn = 1.0 + laws.load_wear * max(load - laws.load_threshold, 0.0);
        let long = max(bees.confined_days[i] - laws.confinement_days, 0.0) / 30.0;
        let strain = worn * (1.0 + laws.confinement_wear * dark_stores * long) * bees.scatter[i];
        let hazard = traits.winter_hazard[i] * ageing * strain;
        let kept = exp(-tally.chilled[i] / laws.chill_drop);
        let before = total(bees, i);
        bees.winter[i] *= exp(-hazard) * kept;
        bees.damaged[i] *= exp(-min(hazard * traits.damaged_factor[i], 50.0)) * kept;
        bees.unharmed[i] *= exp(-hazard) * kept;
        bees.summer[i] *= exp(-laws.summer_bee_hazard * strain) * kept;
        bees.spring[i] *= exp(-laws.spring_bee_hazard * strain) * kept;
        died[i] = before - total(bees, i);
    }
    died
}

/// Laying by season, warmth and strength; brood grows up, eats and emerges.
#[inline(always)]
fn rear(laws: &Laws, season: Season, block: &mut Block) {
    let (bees, tally, stores) = (&mut block.bees, &mut block.tally, &mut block.stores);
    let season_allows = if season.rising {
        clamp((season.day_length - 8.0) / 6.5, 0.02, 1.0)
    } else {
        0.6 * clamp((season.day_length - 10.0) / 8.0, 0.0, 1.0)
    };
    let is_summer_bee = gate(!season.rising && season.winter_bee_age < FIRST_WINTER_BEES);
    let is_winter_bee = gate(!season.rising) - is_summer_bee;
    let is_spring_bee = gate(season.rising);
    for i in 0..LANES {
        bees.warmth[i] += (tally.warm[i] / 24.0 - bees.warmth[i]) / WARMTH_DAYS;
        let warmth = clamp((bees.warmth[i] - laws.laying_warmth) / laws.laying_warmth_width, -40.0, 40.0);
        let count = total(bees, i);
        let strength = count / (count + laws.laying_half_bees);
        let larder = stores.touched[i] + stores.above[i] + stores.beside[i] + stores.feed[i];
        let fed_well = larder / (larder + laws.laying_half_stores);
        let laid = laws.laying_peak * season_allows * strength * fed_well / (1.0 + exp(-warmth)) * bees.scatter[i];
        let sealing = bees.open_brood[i] / OPEN_DAYS;
        let food = laws.brood_food * sealing;
        let fed = min(food, stores.touched[i]);
        let reared = sealing * fed / (food + 1e-300);
        let emerging = bees.sealed_brood[i] / SEALED_DAYS;
        stores.touched[i] -= fed;
        tally.eaten[i] += fed;
        bees.open_brood[i] += laid - sealing;
        bees.sealed_brood[i] += reared - emerging;
        let spoilt = block.traits.spoilt[i];
        bees.winter[i] += emerging * is_winter_bee * (1.0 - spoilt);
        bees.damaged[i] += emerging * is_winter_bee * spoilt;
        bees.unharmed[i] += emerging * is_winter_bee;
        bees.spring[i] += emerging * is_spring_bee;
        bees.summer[i] += emerging * is_summer_bee;
        keep_what_bees_cover(bees, i);
    }
}

/// Brood that too few bees cover dies.
#[inline(always)]
pub(crate) fn keep_what_bees_cover(bees: &mut Bees, i: usize) {
    let brood = bees.open_brood[i] + bees.sealed_brood[i];
    let kept = min(1.0, CELLS_A_BEE * total(bees, i) / (brood + 1e-300));
    bees.open_brood[i] *= kept;
    bees.sealed_brood[i] *= kept;
}

/// What the new number of bees and brood means for the cluster.
#[inline(always)]
pub(crate) fn resize(laws: &Laws, bees: &mut Bees) {
    /// Bees weigh this at least, kg, if there are any at all: far less than one of them.
    const LEAST_MASS: f64 = 1e-12;
    let per_reference = 1.0 / laws.reference_mass;
    for i in 0..LANES {
        bees.mass[i] = total(bees, i) * laws.bee_mass;
        bees.size[i] = gate(bees.mass[i] > 0.0) * exp(2.0 / 3.0 * ln(max(bees.mass[i], LEAST_MASS) * per_reference));
        let brood = bees.open_brood[i] + bees.sealed_brood[i];
        let nest = gate(brood > LEAST_NEST) * brood / (brood + laws.nest_cells);
        let round_nest = exp(laws.log_area_ratio * laws.nest_looseness * nest);
        bees.nest[i] = nest;
        bees.nest_scale[i] = bees.size[i] * round_nest * nest * (laws.core_brood - laws.core_broodless);
    }
}

/// Moves survival mass. Each hazard is the model's own: hunger, a cluster below viable, a queen that fails, the rest.
///
/// A cluster too small ends by mites for that part of its hazard which it would not run had mites spoilt no bees, and
/// by queen failure for that part which it would not run with the young bees of a laying queen.
#[inline(always)]
fn decide(laws: &Laws, block: &mut Block) {
    let (bees, stores, traits, fate) = (&block.bees, &block.stores, &block.traits, &mut block.fate);
    let per_meal = 1.0 / laws.hours_between_meals;
    for i in 0..LANES {
        let near = gate(stores.above[i] + stores.beside[i] + stores.far[i] + stores.feed[i] > FOOD_NEAR);
        let overdue = max(stores.hungry_hours[i] * per_meal - 1.0, 0.0);
        let hunger = min(HUNGER * overdue * overdue, MOST_HUNGER);
        let old = bees.winter[i] + bees.damaged[i] + bees.summer[i];
        let unharmed = bees.unharmed[i] + bees.summer[i] + bees.spring[i];
        let failing = |bees_left: f64| failing(laws, traits.viable[i], bees_left);
        let small = failing(total(bees, i));
        let without_mites = min(failing(unharmed), small);
        let small_queenless = max(failing(old), small);
        // A dead hive's member keeps the chances it has.
        let living = fate.living[i];
        let mut hazard = [0.0; CAUSES];
        hazard[Cause::Starved as usize] = living * hunger * (1.0 - near);
        hazard[Cause::IsolationStarvation as usize] = living * hunger * near;
        hazard[Cause::TooSmall as usize] = living * without_mites;
        hazard[Cause::Mites as usize] = living * (small - without_mites);
        hazard[Cause::Other as usize] = living * laws.other_hazard;
        let mut queenless = hazard;
        queenless[Cause::QueenFailed as usize] = living * (small_queenless - small);
        let newly = fate.queenright[i] * (1.0 - exp(-living * traits.queen_hazard[i]));
        let (with, lost_with) = lose(fate.queenright[i] - newly, &hazard);
        let (without, lost_without) = lose(fate.queenless[i] + newly, &queenless);
        fate.queenright[i] = with;
        fate.queenless[i] = without;
        for cause in 0..CAUSES {
            fate.ended[cause][i] += lost_with * hazard[cause] + lost_without * queenless[cause];
        }
    }
}

/// What is left of `mass` after a day's hazards, and what is lost to a unit of hazard.
#[inline(always)]
fn lose(mass: f64, hazard: &[f64; CAUSES]) -> (f64, f64) {
    let all = (hazard[0] + hazard[1]) + (hazard[2] + hazard[3]) + (hazard[4] + hazard[5]);
    let kept = mass * exp(-all);
    (kept, (mass - kept) / max(all, 1e-300))
}

/// Chance a day that a cluster of `count` bees fails for being small.
#[inline(always)]
fn failing(laws: &Laws, viable: f64, count: f64) -> f64 {
    laws.failing_rate / (1.0 + exp(clamp((count - viable) / (VIABLE_WIDTH * viable), -40.0, 40.0)))
}

/// All grown bees of member `i`.
#[inline(always)]
pub(crate) fn total(bees: &Bees, i: usize) -> f64 {
    bees.winter[i] + bees.damaged[i] + bees.summer[i] + bees.spring[i]
}
