//! Water inside a build-up: the five-layer wall and a hive lid.

use snowhum_physics::condensation::{Plane, Sheet, Side, planes, total};
use snowhum_physics::moist_air::vapour_pressure_at;
use snowhum_physics::saturation::over_ice_or_water;
use snowhum_physics::saturation_13788::saturation;
use snowhum_units::{Fraction, Kelvin, Metre, Pascal, SquareMetreKelvinPerWatt};

use crate::check::{Basis, Check, Claim, Class};
use crate::table::{Table, largest, part, worked};

/// Planes, temperatures and condensate.
pub(crate) fn checks() -> Vec<Check> {
    const GRAMS_IN_30_DAYS: f64 = 2_592_000.0 * 1e3;
    let claim = |id, quantity, source| Claim { id, class: Class::Exact, quantity, source, status: Basis::OutsideTool };
    let checker = "public test values of an open ISO 13788 checker (pachi/condensaciones)";
    let wall = five_layer_wall();
    let table = Table::new(include_str!("../data/five_layer_wall.csv"));
    let faces = || table.rows().filter(|row| !row.text("interface(out->in)").contains("air"));
    let temperature = largest(wall.iter().zip(faces()).map(|(got, row)| got.temperature.celsius() - row.number("T_C")));
    let pressure =
        largest(wall.iter().zip(faces()).map(|(got, row)| part(got.dry_vapour.get(), row.number("p_linear_Pa"))));
    vec![
        claim("A-cond-1", "temperatures between the layers of the five-layer wall", checker).differs_at_most(
            1e-6,
            "K",
            temperature,
        ),
        claim("A-cond-2", "vapour pressures there, as a part", checker).differs_at_most(1e-6, "of it", pressure),
        claim("A-cond-3", "condensate of its two planes in 30 days, 31.3975 g/m², as a part", checker).differs_at_most(
            1e-6,
            "of it",
            part(total(&wall).get() * GRAMS_IN_30_DAYS, 31.397_530_032_177_634).abs(),
        ),
        claim(
            "A-cond-4",
            "condensate under the roofing felt of a foam lid, 1.386 g/m² a day, as a part",
            "Glaser's method, evaluated with Python",
        )
        .differs_at_most(1e-6, "of it", hive_lid()),
    ]
}

fn sheet(thickness_m: f64, conductivity: f64, vapour_resistance: f64) -> Sheet {
    Sheet {
        resistance: SquareMetreKelvinPerWatt::new(thickness_m / conductivity),
        vapour_thickness: Metre::new(thickness_m * vapour_resistance),
    }
}

fn side(t_c: f64, vapour: Pascal, film: f64) -> Side {
    Side { temperature: Kelvin::from_celsius(t_c), vapour, film: SquareMetreKelvinPerWatt::new(film) }
}

/// From outside: brick, light mortar, expanded polystyrene, hollow brick, gypsum.
fn five_layer_wall() -> Vec<Plane> {
    let sheets = [
        sheet(0.11, 0.667, 10.0),
        sheet(0.01, 0.41, 10.0),
        sheet(0.03, 0.0375, 20.0),
        sheet(0.03, 0.445, 10.0),
        sheet(0.01, 0.57, 6.0),
    ];
    let outdoors = side(5.0, saturation(Kelvin::from_celsius(5.0)) * 0.96, 0.04);
    let indoors = side(20.0, saturation(Kelvin::from_celsius(20.0)) * 0.55, 0.13);
    planes(outdoors, &sheets, indoors, saturation)
}

/// 10 mm of plywood, 50 mm of foam and felt; 10 °C and 80 % under it, -10 °C and 80 % outside.
fn hive_lid() -> f64 {
    let air = |t_c, film| side(t_c, vapour_pressure_at(Kelvin::from_celsius(t_c), Fraction::new(0.8)), film);
    let felt = Sheet { resistance: SquareMetreKelvinPerWatt::new(0.0008 / 0.23), vapour_thickness: Metre::new(10.0) };
    let lid = [sheet(0.010, 0.13, 70.0), sheet(0.050, 0.034, 150.0), felt];
    let planes = planes(air(10.0, 0.10), &lid, air(-10.0, 0.04), over_ice_or_water);
    let under_felt = planes.get(2).map_or(f64::NAN, |plane| plane.rate.get() * 86_400e3);
    part(under_felt, worked("glaser", "condensation rate at XPS/felt interface")).abs()
}
