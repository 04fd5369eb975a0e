//! The shape of the model's answers: what must rise, fall or stay, by published findings.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use snowhum_testkit::{Dress, colony, langstroth};
use snowhum_units::{Fraction, Kelvin, Kilogram, MetrePerSecond, Watt};
use snowhum_winter::{Housed, Parameters, StartFrom, SteadyAnswer, SteadyQuestion, cluster_at, cluster_in, steady};

const TWO_KILOGRAMS: f64 = 17_700.0;

fn parameters() -> Parameters {
    Parameters::shipped().unwrap()
}

fn question(outside_c: f64) -> SteadyQuestion {
    SteadyQuestion {
        outside: Kelvin::from_celsius(outside_c),
        humidity: Fraction::new(0.85),
        wind: MetrePerSecond::new(1.0),
        bees: TWO_KILOGRAMS,
        brood_cells: 0.0,
        heater: None,
        start: StartFrom::Cold,
    }
}

fn ask(dress: Dress, question: SteadyQuestion) -> SteadyAnswer {
    let housed =
        Housed { colony: colony(question.bees, 20.0), hive: langstroth(dress), neighbour: None, stays: Vec::new() };
    steady(&housed, &parameters(), question)
}

fn specific_power(air_c: f64) -> f64 {
    cluster_at(&parameters(), Kilogram::new(2.0), Kelvin::from_celsius(air_c)).heat.get() / 2.0
}

/// Melathopoulos (AAFC Beaverlodge fact sheet): least metabolism at 5-10 °C, forced heating below -10 °C.
#[test]
fn least_power_lies_between_five_and_ten_degrees() {
    let curve: Vec<(f64, f64)> =
        (-300..=180).map(|t| (f64::from(t) / 10.0, specific_power(f64::from(t) / 10.0))).collect();
    let least = curve.iter().map(|(_, w)| *w).fold(f64::INFINITY, f64::min);
    let argmin = curve.iter().find(|(_, w)| *w == least).unwrap().0;
    assert!((3.0..=12.0).contains(&argmin), "least at {argmin} C");
    for (t, w) in curve.iter().filter(|(t, _)| (5.0..=10.0).contains(t)) {
        assert!(*w <= 1.05 * least, "{w} W/kg at {t} C against {least}");
    }
    assert!(specific_power(14.0) >= 1.2 * least && specific_power(-20.0) >= 1.2 * least);
}

/// Same fact sheet: 0.1 W/(kg K) at the tightest; slope 0.07-0.15 W/(kg K) with the mantle as driver is the band.
#[test]
fn power_rises_in_a_straight_line_below_minus_ten() {
    let slopes: Vec<f64> =
        [-12.0, -18.0, -24.0, -30.0].windows(2).map(|t| (specific_power(t[1]) - specific_power(t[0])) / 6.0).collect();
    for slope in &slopes {
        assert!((slope - slopes[0]).abs() < 1e-9);
        assert!((0.07..=0.17).contains(slope), "{slope} W/(kg K)");
    }
}

/// Severson and Erickson 1990: volume 55 % smaller at -23 than at +4 °C.
#[test]
fn volume_shrinks_as_measured() {
    let volume = |t| cluster_at(&parameters(), Kilogram::new(2.0), Kelvin::from_celsius(t)).volume_ratio;
    let ratio = volume(-23.0) / volume(4.0);
    assert!((ratio - 0.45).abs() <= 0.10, "{ratio}");
}

/// Southwick 1985: 1.2 kg at 2 °C gives 5.3 W, within 35 %.
#[test]
fn a_kilogram_and_a_fifth_gives_southwicks_power() {
    let heat = cluster_at(&parameters(), Kilogram::new(1.2), Kelvin::from_celsius(2.0)).heat.get();
    assert!((heat / 5.3 - 1.0).abs() <= 0.35, "{heat} W");
}

/// The hourly step settles to the law written out for one temperature.
#[test]
fn step_and_law_agree() {
    for outside in [-25.0, -10.0, 2.0, 8.0] {
        let settled = ask(Dress::BARE, question(outside));
        let mass = Kilogram::new(TWO_KILOGRAMS * parameters().bee_mass.value);
        let law = cluster_in(&parameters(), mass, settled.warm_zone, Kelvin::from_celsius(outside));
        assert!((settled.heat.get() / law.heat.get() - 1.0).abs() < 1e-3, "{outside}: {settled:?} {law:?}");
        assert!((settled.core - law.core).get().abs() < 0.05);
    }
}

/// Coupled moisture case M2 against M1: insulating the lid alone moves the water to the walls.
#[test]
fn insulating_only_the_lid_moves_the_water_to_the_walls() {
    for outside in [-20.0, -10.0, -3.0] {
        let bare = ask(Dress::BARE, question(outside));
        let foam = ask(Dress { lid_foam_mm: 50.0, ..Dress::BARE }, question(outside));
        let share = |a: &SteadyAnswer| a.condensation[0].get() / (a.condensation[0].get() + a.condensation[1].get());
        assert!(foam.condensation[0].get() < 0.5 * bare.condensation[0].get(), "{outside}");
        assert!(foam.condensation[1] > bare.condensation[1], "{outside}");
        assert!(share(&foam) < share(&bare), "{outside}");
    }
}

#[test]
fn insulation_lowers_loss_and_never_cools_a_zone_over_a_heater() {
    let heater = |outside| SteadyQuestion { heater: Some(Watt::new(10.0)), ..question(outside) };
    for outside in [-25.0, -10.0, 0.0, 8.0] {
        let mut last = ask(Dress::BARE, heater(outside));
        for foam in [10.0, 25.0, 50.0, 100.0] {
            let better = ask(Dress { lid_foam_mm: foam, wall_foam_mm: foam, ..Dress::BARE }, heater(outside));
            assert!(better.heat_loss < last.heat_loss, "{outside} {foam}");
            assert!(better.warm_zone >= last.warm_zone && better.floor_zone >= last.floor_zone, "{outside} {foam}");
            last = better;
        }
    }
}

#[test]
fn metabolic_heat_never_rises_with_insulation_while_the_air_round_the_cluster_is_cold() {
    for outside in [-30.0, -20.0, -10.0, -4.0] {
        let bare = ask(Dress::BARE, question(outside));
        let wrapped = ask(Dress { lid_foam_mm: 50.0, wall_foam_mm: 25.0, ..Dress::BARE }, question(outside));
        assert!(wrapped.warm_zone.celsius() < 5.0);
        assert!(wrapped.heat <= bare.heat * (1.0 + 1e-9), "{outside}");
    }
}

#[test]
fn wind_with_both_entrances_open_raises_the_loss() {
    for outside in [-15.0, -5.0, 2.0] {
        let windy = |wind| ask(Dress::BARE, SteadyQuestion { wind: MetrePerSecond::new(wind), ..question(outside) });
        let (calm, breeze, storm) = (windy(0.0), windy(3.0), windy(8.0));
        assert!(calm.heat_loss < breeze.heat_loss && breeze.heat_loss < storm.heat_loss, "{outside}");
        assert!(calm.warm_zone > breeze.warm_zone && breeze.warm_zone > storm.warm_zone, "{outside}");
        assert!(outside > 0.0 || (calm.heat < breeze.heat && breeze.heat < storm.heat), "{outside}");
    }
}

/// Free and Racey 1968, Harbo 1983: food a bee falls with colony size, hardly so above 18,000.
#[test]
fn food_a_bee_falls_with_colony_size_and_flattens() {
    let per_bee = |bees: f64| ask(Dress::BARE, SteadyQuestion { bees, ..question(-2.0) }).food.get() / bees;
    let (small, middle, large, largest) = (per_bee(4_400.0), per_bee(8_900.0), per_bee(18_000.0), per_bee(34_000.0));
    assert!(small > middle && middle > large && large > largest);
    assert!((small - large) > 2.0 * (large - largest));
    let harbo = small / largest;
    assert!((1.0..=2.7).contains(&harbo), "4,400 against 34,000 bees: {harbo}");
}

/// Moeller 1977 as quoted, Melathopoulos: the mantle of a living cluster never below 6 °C.
#[test]
fn mantle_of_a_strong_cluster_stays_above_the_limit_of_motion() {
    for outside in [-45.0, -30.0, -15.0, 0.0, 10.0] {
        let settled = ask(Dress::BARE, question(outside));
        assert!(settled.mantle.celsius() >= 6.0 && settled.core >= settled.mantle, "{outside}: {settled:?}");
    }
}

/// Brood nest 33-36 °C (J. Comp. Physiol. A 2021, introduction).
#[test]
fn brood_is_kept_at_nest_temperature() {
    for (outside, cells) in [(-10.0, 500.0), (0.0, 3_000.0), (8.0, 8_000.0)] {
        let nest = ask(Dress::BARE, SteadyQuestion { brood_cells: cells, ..question(outside) }).core.celsius();
        assert!((33.0..=36.0).contains(&nest), "{outside}: {nest}");
    }
}

/// Great Soviet Encyclopedia, "Wintering": 30-40 g a day in quiet wintering, within 25 %.
#[test]
fn quiet_wintering_uses_as_much_food_as_the_trade_says() {
    for outside in [-10.0, -4.0, 0.0, 4.0] {
        let grams = ask(Dress { lid_foam_mm: 50.0, ..Dress::BARE }, question(outside)).food.get() * 86_400e3;
        assert!((22.5..=50.0).contains(&grams), "{outside}: {grams} g a day");
    }
}
