//! Books of mass and energy, kept beside the model in tests: nothing may appear or vanish in any hour.

use snowhum_testkit::{Dress, changeable, colony, langstroth, place};
use snowhum_units::Fraction;

use crate::block::{Block, Boundary, FLOOR, LID, LOW_WALL, SURFACES, Tally, WALL};
use crate::environment::{Environment, Hour, Walk, YardShelter};
use crate::joint::World;
use crate::lanes::LANES;
use crate::laws::{EVAPORATION, FUSION, HOUR, Laws};
use crate::shell::Shell;
use crate::step::air::AIR_HEAT;
use crate::step::{self, colony, gas};
use crate::{Parameters, start};

/// The promised closure, relative to what flows.
const CLOSES: f64 = 1e-9;
const DAYS: usize = 200;

/// A whole coupled winter, hour by hour; `check` sees the block before and after each hour.
fn winter(dress: Dress, mut check: impl FnMut(&Shell, &Laws, &Boundary, [&Block; 2], usize)) {
    let p = Parameters::shipped().unwrap();
    let laws = Laws::of(&p);
    let shelter = YardShelter { wind: Fraction::new(0.4), sun: Fraction::new(1.0) };
    let weather = changeable(-3.0, 24 * DAYS, LANES);
    let outside = Environment::yard(&weather, place(), shelter, jiff::civil::date(2025, 10, 1));
    let colony = colony(18_000.0, 22.0);
    let shell = Shell::of(&langstroth(dress), start::cluster(&colony, &p), &p, outside.pressure());
    let key = snowhum_draws::Key::new(3, 5);
    let mut block = start::block(&colony, &shell, (&outside, &p), (key, World::new(3)), 0);
    let mut boundary = Boundary::default();
    for hour in 0..24 * DAYS {
        let mut met = Hour::default();
        assert!(outside.hour(hour, &Walk::InOrder(0), &mut met));
        let before = block.clone();
        step::boundary::fill(&shell, &met, None, &mut block, &mut boundary);
        step::hour(&shell, &laws, &boundary, &mut block);
        check(&shell, &laws, &boundary, [&before, &block], hour);
        if hour % 24 == 23 {
            let lengthening = if hour > 24 * 80 { 0.05 } else { -0.05 };
            let season = colony::Season { winter_bee_age: hour as f64 / 24.0, day_length: 11.5, lengthening };
            colony::age(&laws, season, 1.0, &mut block);
            start::comb_capacity(&shell, &laws, &mut block);
            block.tally = Tally::default();
        }
    }
}

fn sensible(shell: &Shell, capacity_of: &Block, block: &Block, i: usize) -> f64 {
    let surfaces: f64 = (0..SURFACES).map(|at| shell.faces.capacity[at] * block.surfaces[at].temperature[i]).sum();
    surfaces
        + capacity_of.heat.comb_capacity[i] * block.heat.comb[i]
        + capacity_of.heat.low_comb_capacity[i] * block.heat.low_comb[i]
}

/// Heat lost through the shell in the hour, W.
fn shell_loss(outside: &Boundary, after: &Block, i: usize) -> f64 {
    let through = |at: usize, conductance: f64, sees: f64| conductance * (after.surfaces[at].mean[i] - sees);
    through(LID, outside.lid[i], outside.lid_sees[i])
        + through(WALL, outside.wall[i], outside.wall_sees[i])
        + through(LOW_WALL, outside.low_wall[i], outside.wall_sees[i])
        + through(FLOOR, outside.floor[i], outside.air[i])
}

/// Heat carried off by air in the hour, W.
fn air_loss(outside: &Boundary, after: &Block, i: usize) -> f64 {
    let (heat, air) = (&after.heat, outside.air[i]);
    AIR_HEAT * (heat.through[i] * (heat.warm[i] - air) + heat.exchange_low[i] * (heat.cold[i] - air))
}

/// Vapour carried off by air and through a lid that breathes, kg/s.
fn carried_off(shell: &Shell, outside: &Boundary, after: &Block, i: usize) -> f64 {
    let (w, c, outdoors) = (after.water.warm[i], after.water.cold[i], outside.ratio[i]);
    let (through, fresh) = (after.heat.through[i], after.heat.exchange_low[i]);
    through * w + fresh * c - (through + fresh) * outdoors + shell.faces.lid_breathing * (w - outdoors)
}

fn held_water(block: &Block, i: usize) -> f64 {
    let wet: f64 = block.surfaces.iter().map(|s| s.liquid[i] + s.ice[i]).sum();
    wet + block.water.warm_air[i] + block.water.cold_air[i]
}

#[test]
fn energy_is_conserved_every_hour_over_a_winter() {
    winter(Dress::BARE, |shell, laws, outside, [before, after], hour| {
        for i in 0..LANES {
            let gained = sensible(shell, before, after, i) - sensible(shell, before, before, i);
            let latent: f64 = before.surfaces.iter().map(|s| s.latent[i] - s.fusion[i]).sum();
            let heat = after.heat.metabolic[i] * (1.0 - laws.latent_share) + after.heat.heater[i];
            let lost = shell_loss(outside, after, i) + air_loss(outside, after, i);
            let scale = heat.abs() + lost.abs() + latent.abs() + sensible(shell, before, before, i).abs() + 1.0;
            assert!((gained - (heat + latent - lost)).abs() < CLOSES * scale, "hour {hour}, member {i}");
        }
    });
}

#[test]
fn water_is_conserved_every_hour_over_a_winter() {
    for dress in [Dress::BARE, Dress { lid_foam_mm: 50.0, wall_foam_mm: 25.0, hole_cm2: 0.0, ..Dress::BARE }] {
        winter(dress, |shell, _, outside, [before, after], hour| {
            for i in 0..LANES {
                let w = &after.water;
                let net = HOUR * (w.source[i] - carried_off(shell, outside, after, i) - w.drained[i]);
                let held = held_water(before, i);
                let gained = held_water(after, i) - held;
                assert!((gained - net).abs() < CLOSES * (held + net.abs()), "hour {hour}, member {i}: {gained} {net}");
            }
        });
    }
}

#[test]
fn latent_heat_matches_the_water_that_changed_form() {
    let mut booked = [0.0; LANES];
    let mut ends = None;
    winter(Dress::BARE, |_, _, _, [before, after], hour| {
        for i in 0..LANES {
            let heat: f64 = after.surfaces.iter().map(|s| (s.latent[i] - s.fusion[i]) * HOUR).sum();
            let ice = |b: &Block| b.surfaces.iter().map(|s| s.ice[i]).sum::<f64>();
            let wet = |b: &Block| b.surfaces.iter().map(|s| s.liquid[i] + s.ice[i]).sum::<f64>();
            let left = after.water.drained[i] * HOUR;
            let expected = EVAPORATION * (wet(after) - wet(before) + left) + FUSION * (ice(after) - ice(before));
            let scale = 1.0 + expected.abs() + FUSION * ice(before);
            assert!((heat - expected).abs() < 1e-8 * scale, "hour {hour}, member {i}: {heat} {expected}");
            booked[i] += heat;
        }
        ends = Some(after.clone());
    });
    assert!(booked.iter().all(|heat| heat.is_finite()) && ends.is_some());
}

#[test]
fn food_eaten_is_the_food_that_went_and_the_heat_that_came() {
    winter(Dress::BARE, |_, laws, _, [before, after], hour| {
        for i in 0..LANES {
            let food = |b: &Block| {
                let s = &b.stores;
                s.touched[i] + s.above[i] + s.beside[i] + s.far[i] + s.feed[i] + s.body[i] + s.crop[i]
            };
            let gone = food(before) - food(after);
            assert!((gone - after.stores.eaten[i]).abs() < CLOSES * (1.0 + food(before)), "hour {hour}");
            let heat = after.stores.eaten[i] * laws.honey_energy / HOUR;
            assert!((heat - after.heat.metabolic[i]).abs() < CLOSES * (1.0 + heat), "hour {hour}");
        }
    });
}

#[test]
fn carbon_dioxide_is_conserved_every_hour_over_a_winter() {
    for dress in [Dress::BARE, Dress { hole_cm2: 0.0, ..Dress::BARE }] {
        winter(dress, |shell, laws, _, [before, after], hour| {
            for i in 0..LANES {
                let held = |b: &Block| shell.warm_air * b.gas.warm[i] + shell.cold_air * b.gas.cold[i];
                let breathed = after.heat.metabolic[i] * laws.dioxide_per_honey / laws.honey_energy;
                let (through, fresh) = (after.heat.through[i], after.heat.exchange_low[i]);
                let over = |ratio: f64| ratio - gas::OUTDOORS;
                let left =
                    (through + gas::breathing(shell)) * over(after.gas.warm[i]) + fresh * over(after.gas.cold[i]);
                let gained = held(after) - held(before);
                let flows = HOUR * (breathed.abs() + left.abs()) + held(before);
                assert!((gained - HOUR * (breathed - left)).abs() < CLOSES * flows, "hour {hour}, member {i}");
            }
        });
    }
}

#[test]
fn nothing_is_ever_negative_and_air_never_above_saturation() {
    winter(Dress::BARE, |shell, _, _, [_, after], hour| {
        for i in 0..LANES {
            for surface in &after.surfaces {
                assert!(surface.liquid[i] >= -1e-15 && surface.ice[i] >= -1e-15, "hour {hour}");
            }
            let s = &after.stores;
            for food in [s.touched[i], s.above[i], s.beside[i], s.far[i], s.feed[i], s.body[i], s.crop[i]] {
                assert!(food >= -1e-12, "hour {hour}");
            }
            let (air, held) = (after.water.warm_air[i], after.water.warm[i] * shell.warm_air);
            assert!(air >= 0.0 && after.water.cold_air[i] >= 0.0, "hour {hour}");
            assert!((air - held).abs() <= 1e-6 * held + 1e-9, "hour {hour}: {air} in the air, {held} by its ratio");
            let (w, t) = (after.water.warm[i], after.heat.warm[i]);
            let saturated = crate::saturation::saturation_ratio(t, shell.per_pascal);
            assert!(w >= 0.0 && w <= saturated * 1.001 + 1e-7, "hour {hour}: {w} over {saturated}");
            assert!(after.heat.mantle[i] <= after.heat.core[i] + 1e-9, "hour {hour}");
        }
    });
}
