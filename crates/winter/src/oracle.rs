//! The hourly step against an outside solver of ordinary differential equations (`diffsol`, BDF at tight tolerance).
//!
//! The same hive, bees and weather, but no step of an hour, no nodes eliminated and no straight lines: zones are found by
//! bisection at every instant, air flows belong to that instant, the cluster loosens continuously. Water is left out on
//! both sides, so that what differs is the stepping.

use diffsol::{NalgebraLU, NalgebraMat, OdeBuilder, OdeSolverMethod};
use snowhum_testkit::{Dress, changeable, colony, langstroth, place};
use snowhum_units::Fraction;

use crate::block::{Block, Boundary, FLOOR, LID, LOW_WALL, SURFACES, WALL};
use crate::environment::{Environment, Hour, Walk, YardShelter};
use crate::lanes::LANES;
use crate::laws::Laws;
use crate::shell::Shell;
use crate::step;
use crate::{Parameters, start};

type M = NalgebraMat<f64>;

/// Hours compared: a week with a cold front and sunny days.
const HOURS: usize = 168;
/// Days before the week, so that it lies in midwinter.
const INTO_WINTER: usize = 24 * 100;
/// Nodes with a temperature, and the looseness of the cluster.
const STATES: usize = 7;
const COMB: usize = 4;
const LOW_COMB: usize = 5;
const LOOSE: usize = 6;
/// Largest root of the mean square of a node's difference over the week, K.
const PROMISED: f64 = 0.2;

/// One hour's outside and the hive, for one member.
struct Instant<'a> {
    shell: &'a Shell,
    laws: &'a Laws,
    block: &'a Block,
    boundary: &'a Boundary,
}

/// Air zones at an instant.
struct Zones {
    warm: f64,
    cold: f64,
}

impl Instant<'_> {
    fn flows(&self, zones: &Zones) -> (f64, f64) {
        let mut heat = self.block.heat.clone();
        heat.warm = [zones.warm; LANES];
        heat.cold = [zones.cold; LANES];
        step::air::flow(self.shell, self.boundary, &self.block.bees, &mut heat);
        (heat.through[0], heat.exchange_low[0])
    }

    /// Sensible heat of the cluster in air of `warm`, written as the law says it.
    fn cluster(&self, warm: f64, loose: f64) -> f64 {
        let (laws, traits, bees) = (self.laws, &self.block.traits, &self.block.bees);
        let scale = bees.size[0] * (laws.log_area_ratio * loose).exp();
        let rest_at = self.boundary.air[0].clamp(10.0, 20.0);
        let rest = bees.mass[0] * traits.rest[0] * (laws.rest_per_kelvin * (rest_at - 20.0)).exp();
        let wanted = (traits.core_air[0] * scale * (laws.core_broodless - warm))
            .max(laws.mantle_over_core * traits.core_air[0] * scale * (laws.mantle_floor - warm))
            .max(rest);
        wanted.min(traits.power_ceiling[0] * bees.mass[0]) * (1.0 - laws.latent_share)
    }

    fn cold_zone(&self, y: &[f64], warm: f64, through: f64, exchange: f64) -> f64 {
        let cp = step::air::AIR_HEAT;
        let inner = &self.shell.faces.inner;
        let joined = self.shell.footprint * self.block.traits.exchange[0];
        let fresh = (through + exchange) * cp;
        let total = inner[LOW_WALL] + inner[FLOOR] + self.shell.low_comb + joined + fresh;
        let given = inner[LOW_WALL] * y[LOW_WALL]
            + inner[FLOOR] * y[FLOOR]
            + self.shell.low_comb * y[LOW_COMB]
            + joined * warm
            + fresh * self.boundary.air[0];
        given / total
    }

    /// Surplus of heat in the warm zone at a temperature; it falls as the temperature rises.
    fn surplus(&self, y: &[f64], warm: f64, through: f64, exchange: f64) -> f64 {
        let inner = &self.shell.faces.inner;
        let joined = self.shell.footprint * self.block.traits.exchange[0];
        let cold = self.cold_zone(y, warm, through, exchange);
        self.cluster(warm, y[LOOSE])
            - inner[LID] * (warm - y[LID])
            - inner[WALL] * (warm - y[WALL])
            - self.shell.comb * (warm - y[COMB])
            - (joined + through * step::air::AIR_HEAT) * (warm - cold)
    }

    fn zones(&self, y: &[f64]) -> Zones {
        let mut zones = Zones { warm: y[COMB], cold: y[LOW_COMB] };
        for _ in 0..30 {
            let (through, exchange) = self.flows(&zones);
            let (mut low, mut high) = (-80.0, 80.0);
            for _ in 0..60 {
                let middle = 0.5 * (low + high);
                if self.surplus(y, middle, through, exchange) > 0.0 { low = middle } else { high = middle }
            }
            zones = Zones { warm: low, cold: self.cold_zone(y, low, through, exchange) };
        }
        zones
    }

    /// Rates of change an hour.
    fn rates(&self, y: &[f64]) -> [f64; STATES] {
        let zones = self.zones(y);
        let (faces, b) = (&self.shell.faces, self.boundary);
        let outside = [b.lid[0], b.wall[0], b.low_wall[0], b.floor[0]];
        let sees = [b.lid_sees[0], b.wall_sees[0], b.wall_sees[0], b.air[0]];
        let zone = [zones.warm, zones.warm, zones.cold, zones.cold];
        let mut rates = [0.0; STATES];
        for at in 0..SURFACES {
            let gain = faces.inner[at] * (zone[at] - y[at]) + outside[at] * (sees[at] - y[at]);
            rates[at] = gain / faces.capacity[at];
        }
        rates[COMB] = self.shell.comb * (zones.warm - y[COMB]) / self.block.heat.comb_capacity[0];
        rates[LOW_COMB] = self.shell.low_comb * (zones.cold - y[LOW_COMB]) / self.block.heat.low_comb_capacity[0];
        let wanted = ((zones.warm - self.laws.tightest_at) * self.laws.per_kelvin).clamp(0.0, 1.0);
        let share = if wanted < y[LOOSE] { self.laws.contracting } else { self.laws.expanding };
        rates[LOOSE] = (wanted - y[LOOSE]) * -(1.0 - share).ln();
        rates
    }

    /// An hour by the outside solver.
    fn hour(&self, y: &[f64; STATES]) -> [f64; STATES] {
        const NUDGE: f64 = 1e-6;
        let problem = OdeBuilder::<M>::new()
            .rtol(1e-7)
            .atol([1e-7])
            .rhs_implicit(
                |x, _p, _t, out| {
                    for (at, rate) in self.rates(x).into_iter().enumerate() {
                        out[at] = rate;
                    }
                },
                |x, _p, _t, v, out| {
                    let here = self.rates(x);
                    let moved: [f64; STATES] = std::array::from_fn(|at| x[at] + NUDGE * v[at]);
                    for (at, rate) in self.rates(&moved).into_iter().enumerate() {
                        out[at] = (rate - here[at]) / NUDGE;
                    }
                },
            )
            .init(
                |_p, _t, out| {
                    for (at, value) in y.iter().enumerate() {
                        out[at] = *value;
                    }
                },
                STATES,
            )
            .build()
            .unwrap();
        let mut solver = problem.bdf::<NalgebraLU<f64>>().unwrap();
        while solver.state().t < 1.0 {
            solver.step().unwrap();
        }
        let end = solver.interpolate(1.0).unwrap();
        std::array::from_fn(|at| end[at])
    }
}

#[test]
fn the_hourly_step_follows_an_outside_solver_within_a_fifth_of_a_kelvin() {
    let p = Parameters::shipped().unwrap();
    let laws = Laws::of(&p);
    let shelter = YardShelter { wind: Fraction::new(0.4), sun: Fraction::new(1.0) };
    let weather = changeable(1.0, INTO_WINTER + HOURS, LANES);
    let outside = Environment::yard(&weather, place(), shelter, jiff::civil::date(2025, 10, 1));
    let colony = colony(18_000.0, 20.0);
    let shell = Shell::of(
        &langstroth(Dress { lid_foam_mm: 50.0, ..Dress::BARE }),
        start::cluster(&colony, &p),
        &p,
        outside.pressure(),
    );
    let mut block = start::middle(&colony, &shell, &outside, &p);
    step::colony::resize(&laws, &block.traits, &mut block.bees);
    block.heat.fuel = [f64::INFINITY; LANES];
    let mut boundary = Boundary::default();
    let mut y = None;
    let mut squares = [0.0; STATES];
    for hour in 0..INTO_WINTER + HOURS {
        let mut met = Hour::default();
        assert!(outside.hour(hour, &Walk::InOrder(0), &mut met));
        step::boundary::fill(&shell, &met, None, &mut block, &mut boundary);
        if hour >= INTO_WINTER {
            let from = y.unwrap_or_else(|| states(&block));
            let instant = Instant { shell: &shell, laws: &laws, block: &block, boundary: &boundary };
            y = Some(instant.hour(&from));
        }
        dry_hour(&shell, &laws, &boundary, &mut block);
        for (square, (a, b)) in squares.iter_mut().zip(y.into_iter().flatten().zip(states(&block))) {
            *square += (a - b).powi(2);
        }
    }
    let rms = squares.map(|sum| (sum / HOURS as f64).sqrt());
    for (node, rms) in rms[..LOOSE].iter().enumerate() {
        assert!(*rms < PROMISED, "node {node}: {rms} K of {rms:?}");
    }
}

fn states(block: &Block) -> [f64; STATES] {
    let mut y = [0.0; STATES];
    for at in 0..SURFACES {
        y[at] = block.surfaces[at].temperature[0];
    }
    y[COMB] = block.heat.comb[0];
    y[LOW_COMB] = block.heat.low_comb[0];
    y[LOOSE] = block.bees.loose[0];
    y
}

/// The hourly step without its water.
fn dry_hour(shell: &Shell, laws: &Laws, boundary: &Boundary, block: &mut Block) {
    step::air::flow(shell, boundary, &block.bees, &mut block.heat);
    step::cluster::tighten(laws, &block.traits, &block.heat, &mut block.bees);
    step::heat::solve(shell, laws, boundary, block);
}
