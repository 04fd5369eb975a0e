//! A day of bees: deaths, brood, and what becomes of the colony's chance.

use crate::Parameters;
use crate::block::{Bees, Block, CAUSES, Traits};
use crate::ends::Cause;
use crate::lanes::{LANES, Lanes, clamp, exp, gate, ln, max, min};
use crate::laws::Laws;
use snowhum_figures::winter_hour::{CELLS_A_BEE, HUNGER, MOST_HUNGER, VIABLE_WIDTH};

/// Days as egg and larva, and sealed: 21 in all (common knowledge of the trade).
const OPEN_DAYS: f64 = 9.0;
pub(crate) const SEALED_DAYS: f64 = 12.0;
pub(crate) const FROM_EGG_TO_BEE: f64 = OPEN_DAYS + SEALED_DAYS;
/// Days over which the warmth and the flights that start brood are averaged.
const WARMTH_DAYS: f64 = 14.0;
/// Food out of reach above which a starved colony starved beside food.
const FOOD_NEAR: f64 = 0.7;
/// Days from the middle emergence of winter bees to the first: late August at Winnipeg (Mattila, Harris and Otis 2001).
pub(crate) const FIRST_WINTER_BEES: f64 = -25.0;
/// Brood cells below which there is no nest to warm.
const LEAST_NEST: f64 = 50.0;

/// The day as the season sees it.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Season {
    /// Days since winter bees emerged; negative before.
    pub(crate) winter_bee_age: f64,
    /// Hours of daylight.
    pub(crate) day_length: f64,
    /// Hours of daylight that a day adds.
    pub(crate) lengthening: f64,
}

impl Season {
    /// Whether days grow longer.
    fn rising(self) -> bool {
        self.lengthening > 0.0
    }
}

/// One day: `died`, brood and cluster size are renewed, survival mass moves.
#[inline(always)]
pub(crate) fn age(laws: &Laws, season: Season, dark_stores: f64, block: &mut Block) {
    let died = die(laws, season, dark_stores, block);
    rear(laws, season, block);
    resize(laws, &block.traits, &mut block.bees);
    decide(laws, season, block);
    block.bees.died = died;
}

/// Deaths by age, load, confinement, damage and chill; gives the number that died.
#[inline(always)]
fn die(laws: &Laws, season: Season, dark_stores: f64, block: &mut Block) -> Lanes {
    let emerged = gate(season.winter_bee_age >= 0.0);
    let mut died = [0.0; LANES];
    let (bees, tally, traits) = (&mut block.bees, &block.tally, &block.traits);
    for i in 0..LANES {
        let flew = gate(tally.flight[i] >= 1.0);
        bees.confined_days[i] = (bees.confined_days[i] + 1.0) * (1.0 - flew);
        let load = tally.heat[i] / (24.0 * bees.mass[i] + 1e-9);
        let worn = 1.0 + laws.load_wear * max(load - laws.load_threshold, 0.0);
        let long = max(bees.confined_days[i] - laws.confinement_days, 0.0) / 30.0;
        let barren = gate(traits.workers[i] <= 0.0);
        let strain = worn
            * (1.0 + laws.confinement_wear * dark_stores * long)
            * (1.0 + laws.queenless_wear * barren)
            * bees.scatter[i];
        bees.age[i] += emerged * (traits.resting_pace[i] + (1.0 - traits.resting_pace[i]) * bees.nest[i]);
        let hazard = winter_bee_hazard(traits, i, bees.age[i]) * strain;
        let kept = exp(-tally.chilled[i] / laws.chill_drop
            - tally.stifled[i] / laws.stifled_hours
            - tally.locked_in[i] / laws.locked_in_hours);
        let before = total(bees, i);
        let hazard = min(hazard, 50.0);
        bees.winter[i] *= exp(-hazard) * kept;
        bees.damaged[i] *= exp(-min(hazard * traits.damaged_factor[i], 50.0)) * kept;
        bees.unharmed[i] *= exp(-hazard) * kept;
        bees.summer[i] *= exp(-laws.summer_bee_hazard * strain) * kept;
        bees.spring[i] *= exp(-laws.spring_bee_hazard * strain) * kept;
        died[i] = before - total(bees, i);
    }
    died
}

/// Deaths a bee and day of winter bees of `age`: a constant part, and one that grows e-fold in `1 / ageing` days and is
/// as large at `ageing_from` (Gompertz and Makeham's law).
#[inline(always)]
fn winter_bee_hazard(traits: &Traits, i: usize, age: f64) -> f64 {
    traits.winter_hazard[i] * ageing(age, traits.ageing_from[i], traits.ageing[i])
}

#[inline(always)]
fn ageing(age: f64, from: f64, per_day: f64) -> f64 {
    1.0 + exp(clamp((age - from) * per_day, -40.0, 12.0))
}

/// Deaths a bee and day of winter bees `days` after they emerged, in a sound colony that rests from a month after on, with
/// hazard `z` standard deviates from its middle.
#[must_use]
pub fn resting_bee_hazard(p: &Parameters, days: f64, z: f64) -> f64 {
    /// Days after emergence from which there is no brood to nurse.
    const NURSING: f64 = 30.0;
    let days = days.max(0.0);
    let age = days.min(NURSING) + p.resting_pace.value * (days - NURSING).max(0.0);
    p.winter_bee_hazard.at(z) * ageing(age, p.winter_bee_ageing_from.value, 1.0 / p.winter_bee_ageing.value)
}

/// Share of the peak's laying that the season allows: late summer's brood ends with what becomes winter bees, and brood begins
/// by light led by its change, so that rising light starts it at a length at which falling light has ended it. What is reared
/// in any season is reared without flights too: in the dark of winter buildings there is a little all winter (Harris 2009,
/// abstract), while the season's own waits for them.
#[inline(always)]
fn season_allows(laws: &Laws, season: Season, traits: &Traits, flights: f64, i: usize) -> f64 {
    let led = season.day_length + laws.brood_light_lead * season.lengthening;
    let begun = 1.0 / (1.0 + exp(-clamp((led - traits.brood_light[i]) * traits.brood_light_slope[i], -40.0, 40.0)));
    let to_end = clamp((-laws.brood_ends - season.winter_bee_age) / laws.brood_ends_width, -40.0, 40.0);
    let not_ended = gate(!season.rising()) / (1.0 + exp(-to_end));
    let always = traits.any_season[i];
    always + (1.0 - always) * max(begun, not_ended) * flights
}

/// Eggs a day that the season has a queen lay before bees stop flying, in colony `i` as strong as it starts.
pub(crate) fn laid_in_season(laws: &Laws, season: Season, block: &Block, i: usize) -> f64 {
    let count = total(&block.bees, i);
    block.traits.laying[i] * season_allows(laws, season, &block.traits, 1.0, i) * count
        / (count + block.traits.laying_half[i])
}

/// Laying by season, warmth, flights and strength; brood grows up, eats and emerges.
#[inline(always)]
fn rear(laws: &Laws, season: Season, block: &mut Block) {
    let (bees, tally, stores) = (&mut block.bees, &mut block.tally, &mut block.stores);
    let is_summer_bee = gate(!season.rising() && season.winter_bee_age < FIRST_WINTER_BEES);
    let is_winter_bee = gate(!season.rising()) - is_summer_bee;
    let is_spring_bee = gate(season.rising());
    for i in 0..LANES {
        let outdoors = (tally.warm[i] - tally.excess[i]) / 24.0;
        bees.warmth[i] += (outdoors - bees.warmth[i]) / WARMTH_DAYS;
        bees.flown[i] += (gate(tally.flight[i] >= 1.0) - bees.flown[i]) / WARMTH_DAYS;
        let flights = laws.laying_without_flight + (1.0 - laws.laying_without_flight) * bees.flown[i];
        let season_allows = season_allows(laws, season, &block.traits, flights, i);
        let warmth = clamp((bees.warmth[i] - laws.laying_warmth) / laws.laying_warmth_width, -40.0, 40.0);
        let count = total(bees, i);
        let strength = count / (count + block.traits.laying_half[i]);
        let larder = stores.touched[i] + stores.above[i] + stores.beside[i] + stores.feed[i] + stores.body[i];
        let fed_well = larder / (larder + laws.laying_half_stores);
        let laid =
            block.traits.laying[i] * season_allows * strength * fed_well / (1.0 + exp(-warmth)) * bees.scatter[i];
        let sealing = bees.open_brood[i] / OPEN_DAYS;
        let food = block.traits.brood_food[i] * sealing;
        let fed = min(food, stores.touched[i]);
        let reared = sealing * fed / (food + 1e-300);
        let emerging = bees.sealed_brood[i] / SEALED_DAYS;
        stores.touched[i] -= fed;
        tally.eaten[i] += fed;
        bees.open_brood[i] += laid - sealing;
        bees.sealed_brood[i] += reared - emerging;
        let spoilt = block.traits.spoilt[i];
        let emerging_workers = emerging * block.traits.workers[i];
        bees.winter[i] += emerging_workers * is_winter_bee * (1.0 - spoilt);
        bees.damaged[i] += emerging_workers * is_winter_bee * spoilt;
        bees.unharmed[i] += emerging_workers * is_winter_bee;
        bees.spring[i] += emerging_workers * is_spring_bee;
        bees.summer[i] += emerging_workers * is_summer_bee;
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
pub(crate) fn resize(laws: &Laws, traits: &Traits, bees: &mut Bees) {
    /// Bees weigh this at least, kg, if there are any at all: far less than one of them.
    const LEAST_MASS: f64 = 1e-12;
    let per_reference = 1.0 / laws.reference_mass;
    for i in 0..LANES {
        bees.mass[i] = total(bees, i) * laws.bee_mass;
        bees.size[i] = gate(bees.mass[i] > 0.0) * exp(2.0 / 3.0 * ln(max(bees.mass[i], LEAST_MASS) * per_reference));
        let brood = bees.open_brood[i] + bees.sealed_brood[i];
        let nest = gate(brood > LEAST_NEST) * brood / (brood + traits.nest_cells[i]);
        let round_nest = exp(laws.log_area_ratio * laws.nest_looseness * nest);
        bees.nest[i] = nest;
        bees.nest_scale[i] = bees.size[i] * round_nest * nest * (laws.core_brood - laws.core_broodless);
    }
}

/// Moves survival mass. Each hazard is the model's own: hunger, a cluster below viable, a queen that fails, the rest.
///
/// Mites' viruses run with the background. A cluster too small ends by mites for that part of its hazard which it would not run had mites spoilt no bees, and
/// by queen failure for that part which it would not run with the young bees of a laying queen.
#[inline(always)]
fn decide(laws: &Laws, season: Season, block: &mut Block) {
    let (bees, stores, traits, fate) = (&block.bees, &block.stores, &block.traits, &mut block.fate);
    let per_meal = 1.0 / laws.hours_between_meals;
    // What real winters took was counted from autumn on.
    let winter = gate(season.winter_bee_age >= 0.0);
    for i in 0..LANES {
        let near =
            gate(stores.above[i] + stores.beside[i] + stores.far[i] + stores.feed[i] + stores.body[i] > FOOD_NEAR);
        let overdue = max(stores.hungry_hours[i] * per_meal - 1.0, 0.0);
        let hunger = min(HUNGER * overdue * overdue, MOST_HUNGER);
        let old = bees.winter[i] + bees.damaged[i] + bees.summer[i];
        let unharmed = bees.unharmed[i] + bees.summer[i] + bees.spring[i];
        let failing = |bees_left: f64| failing(traits.failing_rate[i], traits.viable[i], bees_left);
        let small = failing(total(bees, i));
        // Where no young bees can come, a cluster that dwindles does so for want of a queen, whatever spoilt it.
        let barren = gate(traits.workers[i] <= 0.0);
        let without_mites = barren * small + (1.0 - barren) * min(failing(unharmed), small);
        let small_queenless = max(failing(old), small);
        // A dead hive's member keeps the chances it has.
        let living = fate.living[i];
        let mut hazard = [0.0; CAUSES];
        hazard[Cause::Starved as usize] = living * hunger * (1.0 - near);
        hazard[Cause::IsolationStarvation as usize] = living * hunger * near;
        hazard[Cause::TooSmall as usize] = living * without_mites * (1.0 - barren);
        hazard[Cause::QueenFailed as usize] = living * without_mites * barren;
        let background = winter * traits.background[i];
        hazard[Cause::Mites as usize] = living * (small - without_mites + background * traits.viruses[i]);
        hazard[Cause::Other as usize] = living * (laws.other_hazard + background);
        let mut queenless = hazard;
        queenless[Cause::QueenFailed as usize] += living * (small_queenless - small);
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
fn failing(rate: f64, viable: f64, count: f64) -> f64 {
    rate / (1.0 + exp(clamp((count - viable) / (VIABLE_WIDTH * viable), -40.0, 40.0)))
}

/// All grown bees of member `i`.
#[inline(always)]
pub(crate) fn total(bees: &Bees, i: usize) -> f64 {
    bees.winter[i] + bees.damaged[i] + bees.summer[i] + bees.spring[i]
}
