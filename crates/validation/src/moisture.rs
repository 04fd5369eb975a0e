//! The laws of heat and vapour together: a well-mixed hive with wetted lid, walls and floor, five cases.

use snowhum_physics::STANDARD_PRESSURE;
use snowhum_physics::films::{HeatFlow, inner_convection};
use snowhum_physics::moist_air::humidity_ratio_at;
use snowhum_physics::moist_air::specific_heat::DRY_AIR;
use snowhum_physics::wet_surface::vapour_flow;
use snowhum_units::{Fraction, HumidityRatio, Kelvin, WattPerSquareMetreKelvin};

use crate::check::{Basis, Check, Claim, Class};
use crate::table::{Table, largest};

const VAPOUR_KG_S: f64 = 45.5076e-3 / 86_400.0;
const HEAT_W: f64 = 10.0 - VAPOUR_KG_S * 2.45e6;
/// Radiative part of the films in the reference, W/(m² K).
const RADIATION: f64 = 0.9 * 5.14;
/// From the inside face outwards, m² K/W: 19 mm pine; with 25 mm foam; 10 mm plywood with 50 mm foam.
const PINE: f64 = 0.019 / 0.12 + 0.04;
const FOAMED_WALL: f64 = 0.019 / 0.12 + 0.025 / 0.034 + 0.04;
const FOAMED_LID: f64 = 0.010 / 0.13 + 0.05 / 0.034 + 0.04;

struct Case {
    id: &'static str,
    quantity: &'static str,
    name: &'static str,
    outside_c: f64,
    humidity: f64,
    flow_kg_s: f64,
    lid: f64,
    wall: f64,
}

const CASES: [Case; 5] = [
    Case {
        id: "A-moist-1",
        quantity: "bare single deep at -10 °C",
        name: "M1 bare -10C 0.12 g/s",
        outside_c: -10.0,
        humidity: 0.9,
        flow_kg_s: 1.2e-4,
        lid: PINE,
        wall: PINE,
    },
    Case {
        id: "A-moist-2",
        quantity: "the same with foam on the lid",
        name: "M2 XPS lid -10C 0.12 g/s",
        outside_c: -10.0,
        humidity: 0.9,
        flow_kg_s: 1.2e-4,
        lid: FOAMED_LID,
        wall: PINE,
    },
    Case {
        id: "A-moist-3",
        quantity: "with foam on lid and walls",
        name: "M3 XPS lid + XPS25 walls -10C 0.12 g/s",
        outside_c: -10.0,
        humidity: 0.9,
        flow_kg_s: 1.2e-4,
        lid: FOAMED_LID,
        wall: FOAMED_WALL,
    },
    Case {
        id: "A-moist-4",
        quantity: "the same with four times the air",
        name: "M4 XPS lid+walls -10C 0.5 g/s",
        outside_c: -10.0,
        humidity: 0.9,
        flow_kg_s: 5e-4,
        lid: FOAMED_LID,
        wall: FOAMED_WALL,
    },
    Case {
        id: "A-moist-5",
        quantity: "the same at +5 °C",
        name: "M5 XPS lid+walls +5C 0.30 g/s RH .85",
        outside_c: 5.0,
        humidity: 0.85,
        flow_kg_s: 3e-4,
        lid: FOAMED_LID,
        wall: FOAMED_WALL,
    },
];

/// Five cases: water on lid, walls and floor, and the air's temperature.
pub(crate) fn checks() -> Vec<Check> {
    let table = Table::new(include_str!("../data/wet_surfaces.csv"));
    CASES.iter().map(|case| compare(case, &table)).collect()
}

/// Water on each surface in g a day and the air's temperature in K, the largest difference of both.
fn compare(case: &Case, table: &Table) -> Check {
    let row = |quantity: &str| table.rows_where("case", case.name).find(|row| row.text("quantity") == quantity);
    let expected = |quantity: &str| row(quantity).map_or(f64::NAN, |row| row.number("value"));
    let air = case.solve();
    let mut errors = vec![air.t_c - expected("T_in")];
    for surface in case.surfaces() {
        let grams = surface.settle(&air, case.outside_c).1 * surface.area_m2 * 86_400e3;
        errors.push(grams - expected(&format!("cond_{}_g_per_day", surface.name)));
    }
    Claim {
        id: case.id,
        class: Class::Exact,
        quantity: case.quantity,
        source: "scipy 1.17.1 and PsychroLib 2.5.0, one tool",
        status: Basis::OutsideTool,
    }
    .differs_at_most(1e-3, "g a day on lid, walls and floor, and K", largest(errors))
}

struct Air {
    t_c: f64,
    ratio: f64,
}

struct Surface {
    name: &'static str,
    area_m2: f64,
    convection: WattPerSquareMetreKelvin,
    outward_m2k_w: f64,
}

impl Surface {
    fn film(&self) -> f64 {
        self.convection.get() + RADIATION
    }

    fn flux(&self, air: &Air, face_c: f64) -> f64 {
        let saturated = humidity_ratio_at(Kelvin::from_celsius(face_c), Fraction::new(1.0), STANDARD_PRESSURE);
        vapour_flow(self.convection, HumidityRatio::new(air.ratio), saturated).get().max(0.0)
    }

    /// Temperature of the face and the vapour that settles on it, kg/(m² s).
    fn settle(&self, air: &Air, outside_c: f64) -> (f64, f64) {
        let face_c = bisect(outside_c - 30.0, air.t_c + 60.0, |face_c| {
            let latent = if face_c < 0.0 { 2.834e6 } else { 2.501e6 };
            self.film() * (air.t_c - face_c) + self.flux(air, face_c) * latent
                - (face_c - outside_c) / self.outward_m2k_w
        });
        (face_c, self.flux(air, face_c))
    }
}

impl Case {
    fn surfaces(&self) -> [Surface; 3] {
        let surface = |name, area_m2, flow, outward_m2k_w| Surface {
            name,
            area_m2,
            convection: inner_convection(flow),
            outward_m2k_w,
        };
        [
            surface("lid", 0.467 * 0.375, HeatFlow::Up, self.lid),
            surface("walls", 2.0 * (0.467 + 0.375) * 0.244, HeatFlow::Horizontal, self.wall),
            surface("floor", 0.467 * 0.375, HeatFlow::Down, PINE),
        ]
    }

    /// The air whose heat and water balances both close.
    fn solve(&self) -> Air {
        let outdoors =
            humidity_ratio_at(Kelvin::from_celsius(self.outside_c), Fraction::new(self.humidity), STANDARD_PRESSURE)
                .get();
        let ratio = bisect(outdoors, outdoors + VAPOUR_KG_S / self.flow_kg_s, |ratio| {
            let air = self.air_of(ratio);
            let settled = |surface: &Surface| surface.area_m2 * surface.settle(&air, self.outside_c).1;
            VAPOUR_KG_S - self.flow_kg_s * (ratio - outdoors) - self.surfaces().iter().map(settled).sum::<f64>()
        });
        self.air_of(ratio)
    }

    fn air_of(&self, ratio: f64) -> Air {
        let t_c = bisect(self.outside_c - 5.0, 80.0, |t_c| {
            let air = Air { t_c, ratio };
            let lost =
                |surface: &Surface| surface.area_m2 * surface.film() * (t_c - surface.settle(&air, self.outside_c).0);
            let carried = self.flow_kg_s * DRY_AIR.get() * (t_c - self.outside_c);
            HEAT_W - carried - self.surfaces().iter().map(lost).sum::<f64>()
        });
        Air { t_c, ratio }
    }
}

/// A zero of a falling function.
fn bisect(mut low: f64, mut high: f64, falling: impl Fn(f64) -> f64) -> f64 {
    for _ in 0..100 {
        let middle = 0.5 * (low + high);
        if falling(middle) > 0.0 { low = middle } else { high = middle }
    }
    0.5 * (low + high)
}
