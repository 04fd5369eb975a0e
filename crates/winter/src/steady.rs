//! A hive at steady weather: what it settles to, with bees or with a plain heater in their place.

use serde::{Deserialize, Serialize};
use snowhum_units::{
    CubicMetrePerSecond, Fraction, Kelvin, KilogramPerSecond, Metre, MetrePerSecond, Watt, WattPerKelvin,
};

use crate::block::{Block, Boundary, FLOOR, LID, LOW_WALL, Tally, WALL};
use crate::curve::radius;
use crate::engine::Housed;
use crate::environment::{Environment, Hour, Walk};
use crate::laws::Laws;
use crate::saturation::saturation_ratio;
use crate::shell::Shell;
use crate::step::colony;
use crate::{Parameters, start, step};

/// Which side a hive settles from: very warm hives can settle two ways.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum StartFrom {
    /// All of the hive at the outdoor temperature.
    Cold,
    /// All of the hive at 20 °C, the cluster loose.
    Warm,
}

/// A question about one hive in steady weather.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SteadyQuestion {
    /// Outdoor air.
    pub outside: Kelvin,
    /// Outdoor humidity, over ice below 0 °C.
    pub humidity: Fraction,
    /// Wind at the hive.
    pub wind: MetrePerSecond,
    /// Grown bees; ignored with a heater.
    pub bees: f64,
    /// Cells of brood.
    pub brood_cells: f64,
    /// A heater that stands in for the colony.
    pub heater: Option<Watt>,
    /// Which side it settles from.
    pub start: StartFrom,
}

/// What an upper hole shows outside.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum UpperHole {
    /// There is none.
    None,
    /// A dry rim.
    Dry,
    /// A wet rim.
    Damp,
    /// Frost.
    Frost,
}

/// The hive, settled.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SteadyAnswer {
    /// Heat of the colony or heater.
    pub heat: Watt,
    /// Core of the cluster; of the brood nest if there is one.
    pub core: Kelvin,
    /// Mantle of the cluster.
    pub mantle: Kelvin,
    /// Air round and over the cluster.
    pub warm_zone: Kelvin,
    /// Air below.
    pub floor_zone: Kelvin,
    /// Inside surfaces: lid, upper walls, lower walls, floor.
    pub surfaces: [Kelvin; 4],
    /// Radius of the cluster as a sphere, combs left out.
    pub radius: Metre,
    /// Stores eaten.
    pub food: KilogramPerSecond,
    /// Water given off by the bees.
    pub water: KilogramPerSecond,
    /// Air in and out.
    pub air_flow: CubicMetrePerSecond,
    /// Heat over the warm zone's excess over outdoors.
    pub heat_loss: WattPerKelvin,
    /// Relative humidity of the warm zone.
    pub relative_humidity: Fraction,
    /// Carbon dioxide of the air round the cluster, by volume.
    pub carbon_dioxide: Fraction,
    /// Water caught by lid, walls and floor, gross.
    pub condensation: [KilogramPerSecond; 3],
    /// Drips on the cluster.
    pub drip: KilogramPerSecond,
    /// What the upper hole shows.
    pub upper_hole: UpperHole,
}

/// Hours after which a hive has settled: the slowest part, a full deep of honey, has a time constant of some hours.
const SETTLING_HOURS: usize = 24 * 12;

/// Settles a hive at steady weather. Bees, brood and food are held; wet surfaces fill as they would in 12 days.
#[must_use]
pub fn steady(housed: &Housed, parameters: &Parameters, question: SteadyQuestion) -> SteadyAnswer {
    let laws = Laws::of(parameters);
    let day = jiff::civil::date(2025, 1, 1);
    let outside = Environment::steady(day, SETTLING_HOURS, question.outside, question.humidity, question.wind);
    let shell = Shell::of(&housed.hive, start::cluster(&housed.colony, parameters), parameters, outside.pressure());
    let mut block = middle_block(housed, &shell, &outside, parameters, &laws, question);
    let boundary = settle(&shell, &laws, &outside, &mut block);
    answer(&shell, &laws, &boundary, &block, parameters, question)
}

/// A block whose first lane is the middle of every range.
fn middle_block(
    housed: &Housed,
    shell: &Shell,
    outside: &Environment,
    parameters: &Parameters,
    laws: &Laws,
    question: SteadyQuestion,
) -> Block {
    let mut block = start::middle(&housed.colony, shell, outside, parameters);
    let lane = 0;
    let bees = if question.heater.is_some() { 0.0 } else { question.bees };
    block.bees.winter = [bees; crate::LANES];
    block.bees.damaged = [0.0; crate::LANES];
    block.bees.summer = [0.0; crate::LANES];
    block.bees.spring = [0.0; crate::LANES];
    block.bees.open_brood = [0.0; crate::LANES];
    block.bees.sealed_brood = [question.brood_cells; crate::LANES];
    colony::resize(laws, &block.traits, &mut block.bees);
    block.heat.heater = [question.heater.map_or(0.0, Watt::get); crate::LANES];
    block.heat.fuel = [f64::INFINITY; crate::LANES];
    if question.start == StartFrom::Warm {
        for air in [&mut block.heat.warm, &mut block.heat.cold, &mut block.heat.comb, &mut block.heat.low_comb] {
            *air = [20.0; crate::LANES];
        }
    }
    let wanted = (block.heat.warm[lane] - laws.tightest_at) * laws.per_kelvin;
    block.bees.loose = [wanted.clamp(0.0, 1.0); crate::LANES];
    block
}

fn settle(shell: &Shell, laws: &Laws, outside: &Environment, block: &mut Block) -> Boundary {
    let mut boundary = Boundary::default();
    let mut hour = Hour::default();
    for at in 0..SETTLING_HOURS {
        if !outside.hour(at, &Walk::InOrder(0), &mut hour) {
            break;
        }
        step::boundary::fill(shell, &hour, None, block, &mut boundary);
        step::air::flow(shell, &boundary, &block.bees, &mut block.heat);
        step::cluster::tighten(laws, &block.traits, &block.heat, &mut block.bees);
        step::heat::solve(shell, laws, &boundary, block);
        step::water::balance(shell, laws, &boundary, block);
        step::gas::balance(shell, laws, &block.heat, &block.balance, &mut block.gas);
        block.tally = Tally::default();
        step::tally::add(shell, laws, &boundary, block);
    }
    boundary
}

fn answer(
    shell: &Shell,
    laws: &Laws,
    boundary: &Boundary,
    block: &Block,
    parameters: &Parameters,
    question: SteadyQuestion,
) -> SteadyAnswer {
    let (heat, water, bees) = (&block.heat, &block.water, &block.bees);
    let power = heat.metabolic[0] + heat.heater[0];
    let flow = heat.through[0] + heat.exchange_low[0];
    let density = shell.pressure / (287.05 * (boundary.air[0] + 273.15));
    let caught = |at: usize| block.surfaces[at].flux[0].max(0.0);
    let food = heat.metabolic[0] / laws.honey_energy;
    // What the nest has over the mean of the core, when the cluster gives what the nest asks.
    let asked = block.traits.core_air[0] * bees.nest_scale[0] / bees.core_air[0].max(1e-12);
    let over = (laws.core_brood - laws.core_broodless - asked).max(0.0);
    let nest =
        if bees.nest[0] > 0.0 { (heat.core[0] + over).min(laws.core_brood.max(heat.core[0])) } else { heat.core[0] };
    let celsius = Kelvin::from_celsius;
    SteadyAnswer {
        heat: Watt::new(power),
        core: celsius(nest),
        mantle: celsius(heat.mantle[0]),
        warm_zone: celsius(heat.warm[0]),
        floor_zone: celsius(heat.cold[0]),
        surfaces: [LID, WALL, LOW_WALL, FLOOR].map(|at| celsius(block.surfaces[at].temperature[0])),
        radius: radius(bees.mass[0], bees.loose[0], parameters),
        food: KilogramPerSecond::new(food),
        water: KilogramPerSecond::new(water.source[0]),
        air_flow: CubicMetrePerSecond::new(flow / density),
        heat_loss: WattPerKelvin::new(power / (heat.warm[0] - question.outside.celsius()).max(1e-9)),
        relative_humidity: Fraction::new(relative_humidity(water.warm[0], heat.warm[0], shell.pressure)),
        carbon_dioxide: Fraction::new(step::gas::BY_VOLUME * block.gas.warm[0]),
        condensation: [caught(LID), caught(WALL) + caught(LOW_WALL), caught(FLOOR)].map(KilogramPerSecond::new),
        drip: KilogramPerSecond::new(water.drip[0]),
        upper_hole: upper_hole(shell, block),
    }
}

fn upper_hole(shell: &Shell, block: &Block) -> UpperHole {
    if shell.ways.has_hole == 0.0 {
        UpperHole::None
    } else if block.tally.frost[0] > 0.0 {
        UpperHole::Frost
    } else if block.tally.damp[0] > 0.0 {
        UpperHole::Damp
    } else {
        UpperHole::Dry
    }
}

fn relative_humidity(ratio: f64, t_c: f64, pressure_pa: f64) -> f64 {
    let vapour = |w: f64| w * pressure_pa / (crate::saturation::MOLAR_RATIO + w);
    vapour(ratio) / vapour(saturation_ratio(t_c, 1.0 / pressure_pa))
}
