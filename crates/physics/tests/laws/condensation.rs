use crate::table::{Table, near, near_part, worked};
use snowhum_physics::condensation::{Plane, Sheet, Side, planes, total};
use snowhum_physics::layers::series;
use snowhum_physics::moist_air::vapour_pressure_at;
use snowhum_physics::saturation::over_ice_or_water;
use snowhum_physics::saturation_13788::saturation;
use snowhum_physics::temperature_factor::{least_temperature_factor, temperature_factor};
use snowhum_units::{Fraction, Kelvin, Metre, Pascal, SquareMetreKelvinPerWatt as R};

/// Thirty days in seconds, and kilograms in grams.
const G_PER_30_DAYS: f64 = 2_592_000.0 * 1e3;

fn sheet(d_m: f64, conductivity: f64, mu: f64) -> Sheet {
    Sheet { resistance: R::new(d_m / conductivity), vapour_thickness: Metre::new(d_m * mu) }
}

fn side(t_c: f64, vapour: Pascal, film: f64) -> Side {
    Side { temperature: Kelvin::from_celsius(t_c), vapour, film: R::new(film) }
}

/// From outside: brick, light mortar, expanded polystyrene, hollow brick, gypsum.
fn five_layers() -> [Sheet; 5] {
    [
        sheet(0.11, 0.667, 10.0),
        sheet(0.01, 0.41, 10.0),
        sheet(0.03, 0.0375, 20.0),
        sheet(0.03, 0.445, 10.0),
        sheet(0.01, 0.57, 6.0),
    ]
}

fn five_layer_planes() -> Vec<Plane> {
    let outdoors = side(5.0, saturation(Kelvin::from_celsius(5.0)) * 0.96, 0.04);
    let indoors = side(20.0, saturation(Kelvin::from_celsius(20.0)) * 0.55, 0.13);
    planes(outdoors, &five_layers(), indoors, saturation)
}

#[test]
fn the_five_layer_wall_has_its_temperatures_and_pressures() {
    let table = Table::new(include_str!("../data/five_layer_wall.csv"));
    let planes = five_layer_planes();
    let rows: Vec<_> = table.rows().filter(|row| !row.text("interface(out->in)").contains("air")).collect();
    assert_eq!(rows.len(), planes.len());
    for (plane, row) in planes.iter().zip(rows) {
        near("temperature", plane.temperature.celsius(), row.number("T_C"), 1e-9);
        near("depth", plane.depth.get(), row.number("sd_acc_m"), 1e-9);
        near_part("straight pressure", plane.dry_vapour.get(), row.number("p_linear_Pa"), 1e-10);
        near_part("saturation", plane.saturation.get(), row.number("psat_Pa"), 1e-10);
    }
}

#[test]
fn the_five_layer_wall_condenses_in_two_planes() {
    let planes = five_layer_planes();
    let grams: Vec<f64> = planes.iter().map(|plane| plane.rate.get() * G_PER_30_DAYS).collect();
    near("outside the mortar", grams[1], 15.8649, 5e-5);
    near("inside the mortar", grams[2], 15.5326, 5e-5);
    near("all", total(&planes).get() * G_PER_30_DAYS, 31.397530032177634, 1e-6);
    assert!([0, 3, 4, 5].iter().all(|&plane| grams[plane] == 0.0), "{grams:?}");
}

/// Without the mortar's own plane (its thickness of air joined to the brick's) all gathers at the polystyrene.
#[test]
fn one_plane_alone_takes_less() {
    let [brick, mortar, polystyrene, hollow, gypsum] = five_layers();
    let joined = Sheet {
        resistance: brick.resistance + mortar.resistance,
        vapour_thickness: brick.vapour_thickness + mortar.vapour_thickness,
    };
    let outdoors = side(5.0, saturation(Kelvin::from_celsius(5.0)) * 0.96, 0.04);
    let indoors = side(20.0, saturation(Kelvin::from_celsius(20.0)) * 0.55, 0.13);
    let planes = planes(outdoors, &[joined, polystyrene, hollow, gypsum], indoors, saturation);
    near("one plane", total(&planes).get() * G_PER_30_DAYS, 30.075454627910432, 1e-6);
}

#[test]
fn a_wall_seen_from_its_other_side_condenses_the_same() {
    let outdoors = side(5.0, saturation(Kelvin::from_celsius(5.0)) * 0.96, 0.04);
    let indoors = side(20.0, saturation(Kelvin::from_celsius(20.0)) * 0.55, 0.13);
    let mut layers = five_layers();
    layers.reverse();
    let there = planes(indoors, &layers, outdoors, saturation);
    for (one, other) in there.iter().rev().zip(five_layer_planes()) {
        near("rate", one.rate.get() * G_PER_30_DAYS, other.rate.get() * G_PER_30_DAYS, 1e-9);
    }
}

#[test]
fn the_hive_lid_condenses_under_its_felt() {
    let air = |t_c, film| side(t_c, vapour_pressure_at(Kelvin::from_celsius(t_c), Fraction::new(0.8)), film);
    let lid = [sheet(0.010, 0.13, 70.0), sheet(0.050, 0.034, 150.0), sheet(0.0008, 0.23, 12_500.0)];
    let planes = planes(air(10.0, 0.10), &lid, air(-10.0, 0.04), over_ice_or_water);
    for (at, plane) in planes.iter().enumerate() {
        let expected = |quantity| worked("glaser", &format!("interface {at} {quantity}"));
        near("temperature", plane.temperature.celsius(), expected("T"), 1e-6);
        near_part("saturation", plane.saturation.get(), expected("psat"), 1e-7);
        near_part("straight pressure", plane.dry_vapour.get(), expected("p linear"), 1e-7);
    }
    let rate = worked("glaser", "condensation rate at XPS/felt interface");
    near_part("under the felt", planes[2].rate.get() * 86_400e3, rate, 1e-7);
    assert_eq!(total(&planes), planes[2].rate, "and nowhere else");
}

#[test]
fn sheets_that_pass_all_vapour_do_not_upset_the_balance() {
    let air = |t_c, film| side(t_c, vapour_pressure_at(Kelvin::from_celsius(t_c), Fraction::new(0.8)), film);
    let open = |r| Sheet { resistance: R::new(r), vapour_thickness: Metre::ZERO };
    let tight = sheet(0.050, 0.034, 150.0);
    for build_up in [vec![], vec![open(1.0)], vec![open(0.5), tight, open(0.5), tight, open(0.5)]] {
        let planes = planes(air(10.0, 0.10), &build_up, air(-10.0, 0.04), over_ice_or_water);
        assert_eq!(planes.len(), build_up.len() + 1);
        assert!(planes.iter().all(|plane| plane.rate.get() >= 0.0 && plane.rate.get().is_finite()));
    }
}

#[test]
fn temperature_factors_are_those_of_the_public_case() {
    let total = series(R::new(0.13), five_layers().map(|sheet| sheet.resistance), R::new(0.04));
    near("Rt", total.get(), 1.24426738, 5e-9);
    near("U", total.transmittance().get(), 0.80368578, 5e-9);
    near("fRsi", temperature_factor(R::new(0.25), total).get(), 0.79907855, 5e-9);
    let (inside, outside) = (Kelvin::from_celsius(20.0), Kelvin::from_celsius(5.0));
    // The public case rounds saturation at 20 °C to 2337 Pa.
    for (humidity, expected) in [(0.55, 0.60574531), (0.75, 0.93079365)] {
        let vapour = Pascal::new(2337.0) * humidity;
        let least = least_temperature_factor(inside, vapour, outside, Fraction::new(0.8));
        near("fRsi,min", least.map_or(f64::NAN, Fraction::get), expected, 5e-9);
    }
    assert!(least_temperature_factor(inside, Pascal::ZERO, outside, Fraction::new(0.8)).is_none());
    assert!(least_temperature_factor(inside, saturation(inside), inside, Fraction::new(0.8)).is_none());
}
