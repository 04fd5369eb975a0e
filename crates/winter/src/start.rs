//! How a colony enters the run: each member draws its own bees, food, mites and traits from what the keeper knows.

use jiff::ToSpan;
use jiff::civil::Date;
use snowhum_apiary::{Colony, Mites, QueenState, Stores as KeptStores, StoresKind, winter_year};
use snowhum_draws::Key;
use snowhum_figures::winter_start as figures;
use snowhum_units::Kilogram;
use snowhum_units::Same;

use crate::block::{Bees, Block, Stores, Traits};
use crate::daylight;
use crate::environment::Environment;
use crate::joint::World;
use crate::lanes::{LANES, exp};
use crate::laws::{Laws, daily};
use crate::shell::{Cluster, Shell};
use crate::step::colony::Season;
use crate::step::{colony, gas};
use crate::{JointDraw, Parameters};

/// What each four of a start's dimensions are for; what weighs most comes first, where a sequence is the most even.
#[derive(Debug, Clone, Copy)]
enum Four {
    Mites,
    Bees,
    Stores,
    Reach,
    Kept,
    Cluster,
    Harm,
}

/// Days since sealed brood was laid, in the middle.
const SEALED_SINCE: i64 = 15;
/// Days from the emergence of winter bees to early October.
const OCTOBER: f64 = 15.0;

/// Sets up block `index` of a colony.
pub(crate) fn block(
    colony: &Colony,
    shell: &Shell,
    (environment, p): (&Environment, &Parameters),
    (key, world): (Key, World),
    index: usize,
) -> Block {
    let laws = Laws::of(p);
    let mut block = Block::default();
    let winter = winter_year(environment.first_day(), environment.latitude());
    let age = winter_bee_age(environment.first_day(), environment, p);
    let laid_in = season(environment.first_day().saturating_sub(SEALED_SINCE.days()), environment, p);
    for lane in 0..LANES {
        let member = (index * LANES + lane) as u32;
        let draw = |four: Four| key.even_normals([member, 0, four as u32]);
        let z = [draw(Four::Cluster), draw(Four::Reach), draw(Four::Kept)];
        let joint = world.draw(&p.joint, member);
        traits(p, &joint, z, lane, &mut block.traits);
        let spoilt = spoilt_share(colony, p, &joint, [draw(Four::Mites), draw(Four::Harm)], environment);
        block.traits.spoilt[lane] = spoilt;
        bees(colony, p, &joint, draw(Four::Bees), age, lane, &mut block);
        queen(colony, p, (winter, age), lane, &mut block);
        brood(colony, &laws, laid_in, draw(Four::Bees)[1], lane, &mut block);
        let by_october = reared_by_october(&laws, laid_in, age, &block, lane);
        background(p, &joint, (by_october, age, world.year_and_yard(member)), lane, &mut block);
        stores(&colony.stores, p, z[1][3], draw(Four::Stores)[0], lane, &mut block.stores);
        block.heat.roof_snow[lane] = lying_on_roof(shell, environment, index * LANES + lane);
        let air = environment.air(0, index * LANES + lane).celsius();
        settle_air(shell, air, lane, &mut block);
    }
    colony::resize(&laws, &block.traits, &mut block.bees);
    for lane in 0..LANES {
        block.stores.crop[lane] = laws.crop_reserve / laws.bee_mass * block.bees.mass[lane];
        block.heat.fuel[lane] = (block.stores.touched[lane] + block.stores.crop[lane]) * laws.honey_energy / 3_600.0;
        block.bees.loose[lane] = ((block.heat.warm[lane] - laws.tightest_at) * laws.per_kelvin).clamp(0.0, 1.0);
        block.bees.warmth[lane] = environment.air(0, index * LANES + lane).celsius();
        block.bees.flown[lane] = 1.0;
    }
    comb_capacity(shell, &laws, &mut block);
    block
}

/// A block whose lanes are all the middle of every range: what a single question is answered with.
pub(crate) fn middle(colony: &Colony, shell: &Shell, environment: &Environment, p: &Parameters) -> Block {
    let mut block = Block::default();
    let joint = JointDraw::default();
    for lane in 0..LANES {
        traits(p, &joint, [[0.0; 4]; 3], lane, &mut block.traits);
        bees(colony, p, &joint, [0.0; 4], 30.0, lane, &mut block);
        set_brood(&mut block.bees, colony.sealed_brood.map_or(0.0, |seen| seen.p50), lane);
        stores(&colony.stores, p, 0.0, 0.0, lane, &mut block.stores);
        settle_air(shell, environment.air(0, 0).celsius(), lane, &mut block);
    }
    comb_capacity(shell, &Laws::of(p), &mut block);
    block
}

/// Days since winter bees emerged; negative before.
pub(crate) fn winter_bee_age(day: Date, environment: &Environment, p: &Parameters) -> f64 {
    let since = (f64::from(day.day_of_year()) - environment.winter_bees(p)).rem_euclid(365.0);
    // From midsummer to the emergence day itself winter bees are still to come.
    if since > 275.0 { since - 365.0 } else { since }
}

/// Heat held by honey in the combs changes with the food that is left, and with it their pace.
#[inline(always)]
pub(crate) fn comb_capacity(shell: &Shell, laws: &Laws, block: &mut Block) {
    let (stores, heat) = (&block.stores, &mut block.heat);
    for i in 0..LANES {
        let high = stores.touched[i] + stores.above[i] + stores.feed[i] + 0.5 * stores.beside[i];
        let low = stores.far[i] + stores.unusable[i] + 0.5 * stores.beside[i];
        heat.comb_capacity[i] = shell.comb_capacity + high * laws.honey_heat / 3_600.0;
        heat.low_comb_capacity[i] = shell.low_comb_capacity + low * laws.honey_heat / 3_600.0;
        heat.comb_share[i] = 1.0 - exp(-shell.comb / heat.comb_capacity[i]);
        heat.low_comb_share[i] = 1.0 - exp(-shell.low_comb / heat.low_comb_capacity[i]);
    }
}

/// The cluster as the keeper counted it.
pub(crate) fn cluster(colony: &Colony, p: &Parameters) -> Cluster {
    let mass = Kilogram::new(colony.bees.p50 * p.bee_mass.value);
    Cluster { frames: colony.frames_of_bees, mass }
}

fn traits(p: &Parameters, joint: &JointDraw, z: [[f64; 4]; 3], lane: usize, traits: &mut Traits) {
    let [cluster, reach, kept] = z;
    traits.core_air[lane] = p.conductance_core_air.at(joint.conductance_core_air) * p.reference_cluster_mass.value;
    traits.rest[lane] = p.rest_power.at(joint.rest_power);
    traits.power_ceiling[lane] = p.power_ceiling.at(cluster[1]);
    traits.exchange[lane] = p.zone_exchange.at(cluster[2]);
    traits.touched[lane] = p.touched_per_kg.at(reach[0]);
    traits.climb_from[lane] = p.climb_from.at(reach[1]);
    traits.cross_from[lane] = p.cross_from.at(reach[2]);
    traits.winter_hazard[lane] =
        p.winter_bee_hazard.at(joint.winter_bee_hazard) * (figures::COLONIES_LIVES * kept[0]).same_exp();
    traits.ageing[lane] = 1.0 / p.winter_bee_ageing.at(joint.winter_bee_ageing);
    traits.ageing_from[lane] = p.winter_bee_ageing_from.at(joint.winter_bee_ageing_from);
    traits.resting_pace[lane] = p.resting_pace.at(joint.resting_pace).min(1.0);
    traits.damaged_factor[lane] = p.damaged_bee_hazard.at(joint.damaged_bee_hazard);
    traits.viable[lane] = p.viable_bees.at(joint.viable_bees);
    traits.failing_rate[lane] = p.failing_rate.at(joint.failing_rate);
    traits.laying[lane] = p.laying_peak.at(joint.laying_peak);
    let scatter = p.brood_light_scatter.at(joint.brood_light_scatter);
    traits.brood_light[lane] = p.brood_light.at(joint.brood_light) + scatter * kept[1];
    traits.brood_light_slope[lane] = 1.0 / p.brood_light_width.at(joint.brood_light_width);
    traits.laying_half[lane] = p.laying_half_bees.at(joint.laying_half_bees);
    traits.nest_cells[lane] = p.nest_cells.at(joint.nest_cells);
    traits.brood_food[lane] = p.brood_food.at(joint.brood_food);
    let scatter = (p.brood_any_season_scatter.value * kept[2]).same_exp();
    traits.any_season[lane] = (p.brood_any_season.at(joint.brood_any_season) * scatter).min(1.0);
    traits.workers[lane] = 1.0;
}

/// Bees of early October from eggs that are laid from now on.
fn reared_by_october(laws: &Laws, season: Season, age: f64, block: &Block, lane: usize) -> f64 {
    let last = OCTOBER - colony::FROM_EGG_TO_BEE;
    let days = (last - age).max(0.0) as usize;
    let laid_on = |day: usize| {
        let season = Season { winter_bee_age: age + day as f64, ..season };
        let emerges = season.winter_bee_age + colony::FROM_EGG_TO_BEE;
        let summer = if emerges < colony::FIRST_WINTER_BEES { OCTOBER - emerges } else { 0.0 };
        colony::laid_in_season(laws, season, block, lane) * (-laws.summer_bee_hazard * summer).same_exp()
    };
    (0..days).map(laid_on).sum()
}

/// The hazard of being lost to what nobody names: it differs by year and by yard, alike for all hives of a yard, and is
/// the greater the fewer bees, mites or no mites, there would be in early October.
fn background(
    p: &Parameters,
    joint: &JointDraw,
    (by_october, age, (year, yard)): (f64, f64, (f64, f64)),
    lane: usize,
    block: &mut Block,
) {
    /// Bees in early October of the colony for which the hazard stands: 18,000 of them winter bees.
    const REFERENCE: f64 = 21_000.0;
    let spread = p.background_by_year.at(joint.background_by_year) * year
        + p.background_by_yard.at(joint.background_by_yard) * yard;
    let bees = &block.bees;
    let count = bees.unharmed[lane] + bees.summer[lane];
    let left = (-p.summer_bee_hazard.value * (OCTOBER - age).max(0.0)).same_exp();
    let brood = (bees.sealed_brood[lane] - figures::OCTOBERS_BROOD * count).max(0.0);
    let to_come = (brood + by_october) * block.traits.workers[lane];
    let smaller = REFERENCE / (bees.unharmed[lane] + left * bees.summer[lane] + to_come).max(1.0);
    let by_size = smaller.same_powf(p.background_by_size.at(joint.background_by_size)).min(figures::MOST_BY_SIZE);
    let traits = &mut block.traits;
    traits.background[lane] = daily(p.background_loss.at(joint.background_loss).min(0.9)) * spread.same_exp() * by_size;
    traits.viruses[lane] = p.virus_loss.at(joint.virus_loss) * traits.spoilt[lane];
}

/// How the queen stands: the chance that there is one, how soon she fails, what is laid and what comes of it.
fn queen(colony: &Colony, p: &Parameters, (winter, age): (i16, f64), lane: usize, block: &mut Block) {
    let (present, lays) = queen_now(colony, p, age);
    let (traits, fate) = (&mut block.traits, &mut block.fate);
    traits.queen_hazard[lane] = daily((p.queen_failure.value * queen_factor(colony, p, winter)).min(0.9));
    traits.laying[lane] *= lays;
    traits.workers[lane] = if present > 0.0 { 1.0 } else { 0.0 };
    fate.queenright[lane] = present;
    fate.queenless[lane] = 1.0 - present;
}

/// Chance that a mated queen is there, and the share of a sound queen's laying that goes on in the hive.
fn queen_now(colony: &Colony, p: &Parameters, age: f64) -> (f64, f64) {
    /// Days before winter bees emerge from which drones and warmth to mate become few.
    const MATING_ENDS_OVER: f64 = 30.0;
    let seen = match colony.queen.seen_or_laying {
        Some(true) => 1.0,
        Some(false) => 1.0 - p.queen_missing_unseen.value,
        None => 1.0 - p.queen_missing.value,
    };
    match colony.autumn.queen {
        Some(QueenState::Laying | QueenState::Introduced | QueenState::Cast) => (1.0, 1.0),
        Some(QueenState::Virgin) => {
            let mates = p.virgin_mates.value * (-age / MATING_ENDS_OVER).clamp(0.0, 1.0);
            (mates, if mates > 0.0 { 1.0 } else { p.drone_layer_lays.value })
        }
        Some(QueenState::DroneLayer) => (0.0, p.drone_layer_lays.value),
        Some(QueenState::LayingWorkers) => (0.0, p.laying_workers_lay.value),
        Some(QueenState::None) => (0.0, 0.0),
        None => (seen, 1.0),
    }
}

/// Snow that lies on the roof at the first hour, kg/m²: what wind left of what lies on the ground.
fn lying_on_roof(shell: &Shell, environment: &Environment, path: usize) -> f64 {
    let depth = environment.outside(0, path).map_or(0.0, |outside| outside.snow.get());
    shell.roof.catch * shell.roof.density * depth
}

/// How much likelier than a young queen this one is to fail in the winter of that year's autumn.
fn queen_factor(colony: &Colony, p: &Parameters, winter: i16) -> f64 {
    /// Years after that of her birth from which a queen counts as old: her third winter.
    const OLD: i16 = 2;
    let old = colony.queen.year.is_some_and(|born| winter - born >= OLD);
    let mut factor = 1.0;
    if old {
        factor *= p.old_queen_factor.value;
    }
    if colony.queen.late_mated {
        factor *= p.late_queen_factor.value;
    }
    factor
}

/// The day before this winter at which mites do most harm: shortly before winter bees emerge.
fn harm_day(environment: &Environment, p: &Parameters) -> Date {
    let today = environment.first_day();
    let age = winter_bee_age(today, environment, p);
    let emergence = today.saturating_sub((age.round() as i64).days());
    emergence.saturating_sub((figures::HARM_BEFORE_EMERGENCE as i64).days())
}

/// Share of winter bees that mites spoil, from what was counted, grown to the time winter bees are brood and brought
/// down once if there was a treatment between. One of the day of the count came after it.
fn spoilt_share(
    colony: &Colony,
    p: &Parameters,
    joint: &JointDraw,
    [z, z2]: [[f64; 4]; 2],
    environment: &Environment,
) -> f64 {
    let harm = harm_day(environment, p);
    let (per_hundred, counted) = match colony.mites {
        // What uncounted yards have in September is what their keepers' usual treatments left.
        Mites::NotCounted => (p.uncounted_mites.at(z[0]), harm),
        Mites::Counted { found, bees, on } => {
            let counted = gamma_quantile(f64::from(found) + 0.5, z[0]) * 100.0 / f64::from(bees.max(1));
            (counted / p.wash_efficiency.at(z[1]) * (figures::BETWEEN_FRAMES * z[2]).same_exp(), on)
        }
    };
    let days_between = harm.duration_since(counted).as_hours() as f64 / 24.0;
    let worked = |on: Date| on >= counted && on <= harm.saturating_sub((figures::WORKS_WITHIN as i64).days());
    let left = if colony.treatments.iter().any(|t| worked(t.on)) { p.mites_treated.value } else { 1.0 };
    // A count after the harm looks back on fewer mites than did it, unless a treatment came between; then on more.
    let treated_since = colony.treatments.iter().any(|t| t.on > harm && t.on < counted);
    let looking_back = if treated_since { 1.0 / p.mites_treated.value } else { 1.0 };
    let at_harm =
        per_hundred * (p.mite_growth.value * days_between.clamp(-60.0, 150.0)).same_exp() * left * looking_back;
    let half = p.mites_half_damage.at(joint.mites_half_damage) * (figures::COLONIES_HARM * z2[0]).same_exp();
    spoilt_by(at_harm, half, p.mites_steepness.at(joint.mites_steepness))
}

/// Dose and response: the share of winter bees that `per_hundred` mites on a hundred bees spoil.
fn spoilt_by(per_hundred: f64, half: f64, steepness: f64) -> f64 {
    let dose = (per_hundred.max(0.0) / half).same_powf(steepness);
    dose / (1.0 + dose)
}

/// Quantile of a gamma distribution of shape `k` and scale 1 at `z` standard normal deviates (Wilson and Hilferty
/// 1931: the cube root is nearly normal).
fn gamma_quantile(k: f64, z: f64) -> f64 {
    let cube_root = 1.0 - 1.0 / (9.0 * k) + z / (3.0 * k.sqrt());
    k * cube_root.max(0.0).powi(3)
}

fn bees(colony: &Colony, p: &Parameters, joint: &JointDraw, z: [f64; 4], age: f64, lane: usize, block: &mut Block) {
    let count = colony.bees.at(z[0]).max(0.0);
    let spoilt = block.traits.spoilt[lane];
    let lived = hazard_lived(&block.traits, lane, age.max(0.0));
    let bees: &mut Bees = &mut block.bees;
    bees.age[lane] = age.max(0.0);
    let outlived = (-(p.summer_bee_hazard.value * age.max(0.0) - lived)).same_exp();
    let at_emergence = (p.summer_bee_share.at(joint.summer_bee_share) + 0.02 * (-age).max(0.0)).min(0.95);
    let summer_share = at_emergence * outlived / (at_emergence * outlived + 1.0 - at_emergence);
    let winter = count * (1.0 - summer_share);
    let spoilt_left = spoilt * (-(block.traits.damaged_factor[lane] - 1.0) * lived).same_exp();
    let all_left = spoilt_left + 1.0 - spoilt;
    bees.summer[lane] = count * summer_share;
    bees.damaged[lane] = winter * spoilt_left / all_left;
    bees.winter[lane] = winter * (1.0 - spoilt) / all_left;
    bees.unharmed[lane] = winter / all_left;
    bees.scatter[lane] = 1.0;
}

/// Brood as it was seen, or where nobody looked as the season has a queen lay.
fn brood(colony: &Colony, laws: &Laws, laid_in: Season, z: f64, lane: usize, block: &mut Block) {
    let laid = colony::laid_in_season(laws, laid_in, block, lane);
    let sealed = match colony.sealed_brood {
        Some(seen) => seen.at(z).max(0.0),
        None => colony::SEALED_DAYS * laid * (figures::COLONIES_BROOD * z).same_exp(),
    };
    set_brood(&mut block.bees, sealed, lane);
}

/// Sealed brood, and the younger beside it by the days each stage lasts, in a season in which laying falls.
fn set_brood(bees: &mut Bees, sealed: f64, lane: usize) {
    bees.sealed_brood[lane] = sealed;
    bees.open_brood[lane] = 0.4 * sealed;
    colony::keep_what_bees_cover(bees, lane);
}

/// What the calendar says on a day.
pub(crate) fn season(date: Date, environment: &Environment, p: &Parameters) -> Season {
    let hours = |days: i16| daylight::hours(date.day_of_year() + days, environment.latitude());
    let today = hours(0);
    Season { winter_bee_age: winter_bee_age(date, environment, p), day_length: today, lengthening: hours(1) - today }
}

/// The hazard that winter bees of `age` have lived through, as nurses: autumn is a time of brood.
fn hazard_lived(traits: &Traits, lane: usize, age: f64) -> f64 {
    let (pace, from) = (traits.ageing[lane], traits.ageing_from[lane]);
    let aged = (((age - from) * pace).same_exp() - (-from * pace).same_exp()) / pace;
    traits.winter_hazard[lane] * (age + aged)
}

fn stores(kept: &KeptStores, p: &Parameters, z_left: f64, z: f64, lane: usize, stores: &mut Stores) {
    let total = kept.total.map(|kg| kg.get()).at(z).max(0.0);
    let left = (p.stores_left_behind.at(z_left) + set_hard(kept.kind)).min(0.9);
    let usable = total * (1.0 - left);
    stores.unusable[lane] = total - usable;
    stores.touched[lane] = usable * kept.place.touched;
    stores.above[lane] = usable * kept.place.above;
    stores.beside[lane] = usable * kept.place.beside;
    stores.far[lane] = usable * kept.place.far;
    stores.first_hungry_day[lane] = f64::INFINITY;
}

/// Share of stores that sets too hard to be used in winter.
fn set_hard(kind: StoresKind) -> f64 {
    match kind {
        StoresKind::Ivy | StoresKind::Rape => figures::SETS_HARD_MOST,
        StoresKind::Honeydew | StoresKind::Heather => figures::SETS_HARD_SOME,
        StoresKind::Sugar | StoresKind::Honey => 0.0,
    }
}

/// How much harder than sugar a kind of stores is on confined bees.
pub(crate) fn darkness(kind: StoresKind) -> f64 {
    match kind {
        StoresKind::Sugar => 1.0,
        StoresKind::Honey | StoresKind::Ivy | StoresKind::Rape => figures::DARK_HONEY,
        StoresKind::Heather => figures::DARK_HEATHER,
        StoresKind::Honeydew => figures::DARK_HONEYDEW,
    }
}

/// Air, walls and combs near the outdoor temperature of the first hour.
fn settle_air(shell: &Shell, air_c: f64, lane: usize, block: &mut Block) {
    let heat = &mut block.heat;
    heat.warm[lane] = air_c + 3.0;
    heat.cold[lane] = air_c + 1.0;
    heat.comb[lane] = air_c + 3.0;
    heat.low_comb[lane] = air_c + 1.0;
    heat.entrance_free[lane] = 1.0;
    heat.hole_free[lane] = 1.0;
    for surface in &mut block.surfaces {
        surface.temperature[lane] = air_c + 1.0;
    }
    let saturated = crate::saturation::saturation_ratio(air_c, shell.per_pascal);
    let ratio = 0.7 * saturated;
    block.water.warm_fog[lane] = saturated;
    block.water.cold_fog[lane] = saturated;
    block.water.warm[lane] = ratio;
    block.water.cold[lane] = ratio;
    block.water.warm_air[lane] = ratio * shell.warm_air;
    block.water.cold_air[lane] = ratio * shell.cold_air;
    block.gas.warm[lane] = gas::OUTDOORS;
    block.gas.cold[lane] = gas::OUTDOORS;
    block.gas.breath[lane] = 1.0;
}
