//! The laws together: one well-mixed hive air with wetted lid, walls and floor, solved by nested bisection.

use crate::table::{Table, near, near_part};
use snowhum_physics::STANDARD_PRESSURE as P;
use snowhum_physics::films::{HeatFlow, inner_convection};
use snowhum_physics::moist_air::specific_heat::DRY_AIR;
use snowhum_physics::moist_air::{humidity_ratio_at, relative_humidity, vapour_pressure};
use snowhum_physics::wet_surface::vapour_flow;
use snowhum_units::{Fraction, HumidityRatio, Kelvin, WattPerSquareMetreKelvin};

const VAPOUR_KG_S: f64 = 45.5076e-3 / 86_400.0;
const HEAT_W: f64 = 10.0 - VAPOUR_KG_S * 2.45e6;
const RADIATION: f64 = 0.9 * 5.14;
const PINE_OUTWARD: f64 = 0.019 / 0.12 + 0.04;
const FOAMED_WALL_OUTWARD: f64 = 0.019 / 0.12 + 0.025 / 0.034 + 0.04;
const FOAMED_LID_OUTWARD: f64 = 0.010 / 0.13 + 0.05 / 0.034 + 0.04;

struct Surface {
    name: &'static str,
    area_m2: f64,
    convection: WattPerSquareMetreKelvin,
    outward_m2k_w: f64,
}

struct Air {
    t_c: f64,
    ratio: f64,
}

struct Hive {
    outside: Air,
    flow_kg_s: f64,
    surfaces: [Surface; 3],
}

/// A zero of a falling function.
fn bisect(mut low: f64, mut high: f64, falling: impl Fn(f64) -> f64) -> f64 {
    for _ in 0..100 {
        let middle = 0.5 * (low + high);
        if falling(middle) > 0.0 { low = middle } else { high = middle }
    }
    0.5 * (low + high)
}

impl Surface {
    fn flux(&self, air: &Air, face_c: f64) -> f64 {
        let saturated = humidity_ratio_at(Kelvin::from_celsius(face_c), Fraction::new(1.0), P);
        vapour_flow(self.convection, HumidityRatio::new(air.ratio), saturated).get().max(0.0)
    }

    /// Temperature of the face and the vapour that settles on it, kg/(m² s).
    fn settle(&self, air: &Air, outside_c: f64) -> (f64, f64) {
        let film = self.convection.get() + RADIATION;
        let face_c = bisect(outside_c - 30.0, air.t_c + 60.0, |face_c| {
            let latent = if face_c < 0.0 { 2.834e6 } else { 2.501e6 };
            film * (air.t_c - face_c) + self.flux(air, face_c) * latent - (face_c - outside_c) / self.outward_m2k_w
        });
        (face_c, self.flux(air, face_c))
    }
}

impl Hive {
    fn new(outside_c: f64, humidity: f64, flow_kg_s: f64, lid: f64, wall: f64) -> Self {
        let ratio = humidity_ratio_at(Kelvin::from_celsius(outside_c), Fraction::new(humidity), P).get();
        let surface = |name, area_m2, flow, outward_m2k_w| Surface {
            name,
            area_m2,
            convection: inner_convection(flow),
            outward_m2k_w,
        };
        let surfaces = [
            surface("lid", 0.467 * 0.375, HeatFlow::Up, lid),
            surface("walls", 2.0 * (0.467 + 0.375) * 0.244, HeatFlow::Horizontal, wall),
            surface("floor", 0.467 * 0.375, HeatFlow::Down, PINE_OUTWARD),
        ];
        Self { outside: Air { t_c: outside_c, ratio }, flow_kg_s, surfaces }
    }

    fn air_of(&self, ratio: f64) -> Air {
        let t_c = bisect(self.outside.t_c - 5.0, 80.0, |t_c| {
            let air = Air { t_c, ratio };
            let lost: f64 = self
                .surfaces
                .iter()
                .map(|surface| {
                    let film = surface.convection.get() + RADIATION;
                    surface.area_m2 * film * (t_c - surface.settle(&air, self.outside.t_c).0)
                })
                .sum();
            HEAT_W - self.flow_kg_s * DRY_AIR.get() * (t_c - self.outside.t_c) - lost
        });
        Air { t_c, ratio }
    }

    fn solve(&self) -> Air {
        let most = self.outside.ratio + VAPOUR_KG_S / self.flow_kg_s;
        let ratio = bisect(self.outside.ratio, most, |ratio| {
            let air = self.air_of(ratio);
            let settled = |surface: &Surface| surface.area_m2 * surface.settle(&air, self.outside.t_c).1;
            let all_settled: f64 = self.surfaces.iter().map(settled).sum();
            VAPOUR_KG_S - self.flow_kg_s * (ratio - self.outside.ratio) - all_settled
        });
        self.air_of(ratio)
    }
}

/// Case 6 is outside the validity of a surface-only sink (bulk air far over saturation) and shows just that.
#[test]
fn water_settles_where_an_independent_solver_puts_it() {
    let table = Table::new(include_str!("../data/wet_surfaces.csv"));
    let cases = [
        ("M1 bare -10C 0.12 g/s", Hive::new(-10.0, 0.9, 1.2e-4, PINE_OUTWARD, PINE_OUTWARD)),
        ("M2 XPS lid -10C 0.12 g/s", Hive::new(-10.0, 0.9, 1.2e-4, FOAMED_LID_OUTWARD, PINE_OUTWARD)),
        (
            "M3 XPS lid + XPS25 walls -10C 0.12 g/s",
            Hive::new(-10.0, 0.9, 1.2e-4, FOAMED_LID_OUTWARD, FOAMED_WALL_OUTWARD),
        ),
        ("M4 XPS lid+walls -10C 0.5 g/s", Hive::new(-10.0, 0.9, 5e-4, FOAMED_LID_OUTWARD, FOAMED_WALL_OUTWARD)),
        ("M5 XPS lid+walls +5C 0.30 g/s RH .85", Hive::new(5.0, 0.85, 3e-4, FOAMED_LID_OUTWARD, FOAMED_WALL_OUTWARD)),
        ("M6 bare -25C 0.10 g/s", Hive::new(-25.0, 0.8, 1e-4, PINE_OUTWARD, PINE_OUTWARD)),
    ];
    for (case, hive) in cases {
        let expected = |quantity: &str| {
            let row = table.rows().find(|row| row.text("case") == case && row.text("quantity") == quantity);
            row.map_or(f64::NAN, |row| row.number("value"))
        };
        let air = hive.solve();
        near_part("W_out", hive.outside.ratio, expected("W_out"), 1e-6);
        near_part("W_in", air.ratio, expected("W_in"), 1e-5);
        near("T_in", air.t_c, expected("T_in"), 1e-4);
        let humidity =
            relative_humidity(Kelvin::from_celsius(air.t_c), vapour_pressure(HumidityRatio::new(air.ratio), P));
        near("RH_in", humidity.get(), expected("RH_in"), 1e-5);
        for surface in &hive.surfaces {
            let (face_c, flux) = surface.settle(&air, hive.outside.t_c);
            near(surface.name, face_c, expected(&format!("Ts_{}", surface.name)), 1e-4);
            let grams = flux * surface.area_m2 * 86_400e3;
            near(surface.name, grams, expected(&format!("cond_{}_g_per_day", surface.name)), 1e-3);
        }
    }
}
