use crate::table::{PRINTED, near, near_part, worked};
use snowhum_physics::orifice::{SHARP_EDGED, mass_flow, volume_flow};
use snowhum_physics::stack::{Opening, Openings, approximate_flow, draught};
use snowhum_physics::{two_way, wind, wind_pressure};
use snowhum_units::{Degree, Fraction, Kelvin, KilogramPerCubicMetre, Metre, MetrePerSecond, Pascal, SquareMetre};

/// Dry air as the tables have it.
fn density(t_c: f64) -> KilogramPerCubicMetre {
    KilogramPerCubicMetre::new(101_325.0 / (287.055 * (t_c + 273.15)))
}

fn openings(lower_cm2: f64, upper_cm2: f64, height_m: f64) -> Openings {
    let hole = |cm2| Opening { area: SquareMetre::new(cm2 * 1e-4), discharge: SHARP_EDGED };
    Openings { lower: hole(lower_cm2), upper: hole(upper_cm2), height: Metre::new(height_m) }
}

#[test]
fn stack_cases_have_their_flow_and_neutral_level() {
    let cases = [
        ("A equal 2cm2/2cm2 H.5 10/-10", openings(2.0, 2.0, 0.5), 10.0, -10.0),
        ("B bottom 30cm2 top 2cm2 H.55 5/-10", openings(30.0, 2.0, 0.55), 5.0, -10.0),
        ("C bottom 7.5cm2 top 3cm2 H.5 0/-20", openings(7.5, 3.0, 0.5), 0.0, -20.0),
    ];
    for (name, openings, inside_c, outside_c) in cases {
        let expected = |quantity: &str| worked("stack", &format!("{name} {quantity}"));
        let got = draught(openings, density(outside_c), density(inside_c));
        near_part(name, got.pressure.get(), expected("dp"), PRINTED);
        near_part(name, got.at_lower.get(), expected("dp_bottom"), PRINTED);
        near_part(name, got.mass_flow.get(), expected("mass flow"), PRINTED);
        near_part(name, got.neutral_level.get(), expected("neutral level above bottom opening"), PRINTED);
        near_part(name, got.mass_flow.get() * 1006.0, expected("sensible W/K"), PRINTED);
        let litres = got.mass_flow.get() / density(inside_c).get() * 1e3;
        near_part(name, litres, expected("vol flow (inside density)"), PRINTED);
        let q = approximate_flow(openings, Kelvin::from_celsius(outside_c), Kelvin::from_celsius(inside_c));
        near_part(name, q.get() * 1e3, expected("ASHRAE-form Q (Aeff, Ti)"), PRINTED);
    }
}

#[test]
fn the_mass_in_is_the_mass_out() {
    let openings = openings(7.5, 3.0, 0.5);
    for (outside_c, inside_c) in [(-20.0, 0.0), (15.0, 5.0)] {
        let (outside, inside) = (density(outside_c), density(inside_c));
        let got = draught(openings, outside, inside);
        let (low, high) = if outside > inside { (outside, inside) } else { (inside, outside) };
        let lower = mass_flow(openings.lower.area, SHARP_EDGED, got.at_lower, low);
        let upper = mass_flow(openings.upper.area, SHARP_EDGED, got.pressure - got.at_lower, high);
        near_part("low", lower.get(), got.mass_flow.get(), 1e-12);
        near_part("high", upper.get(), got.mass_flow.get(), 1e-12);
        assert_eq!(got.mass_flow.get() > 0.0, outside > inside, "warm air rises");
    }
}

#[test]
fn a_shut_opening_or_equal_air_stops_the_stack() {
    let (cold, warm) = (density(-10.0), density(5.0));
    for (shut, neutral_m) in
        [(openings(0.0, 2.0, 0.5), 0.5), (openings(2.0, 0.0, 0.5), 0.0), (openings(0.0, 0.0, 0.5), 0.25)]
    {
        let got = draught(shut, cold, warm);
        assert_eq!(got.mass_flow.get(), 0.0);
        assert_eq!(got.neutral_level.get(), neutral_m);
    }
    assert_eq!(draught(openings(2.0, 2.0, 0.5), cold, cold).mass_flow.get(), 0.0);
}

#[test]
fn orifice_flows_are_those_of_bernoulli() {
    let area = SquareMetre::new(1e-4);
    for dp in ["0.1", "1", "4", "10"] {
        let got = volume_flow(area, SHARP_EDGED, Pascal::new(dp.parse().unwrap_or(f64::NAN)), density(-10.0));
        let expected = worked("orifice", &format!("1 cm2 Cd .61 dp={dp} Pa rho(-10C)"));
        near_part("orifice", got.get() * 1e3, expected, PRINTED);
    }
}

#[test]
fn one_opening_exchanges_both_ways() {
    let (inside, outside) = (Kelvin::from_celsius(10.0), Kelvin::from_celsius(-10.0));
    let area = SquareMetre::new(0.3 * 0.02);
    let got = two_way::exchange(area, Metre::new(0.02), Fraction::new(0.6), inside, outside);
    let expected = worked("single", "slot 300x20mm, Cd .6, 10/-10: Q=(Cd/3)A sqrt(g h dT/Tm)");
    near_part("slot", got.get() * 1e3, expected, PRINTED);
    assert_eq!(two_way::exchange(area, Metre::new(0.02), Fraction::new(0.6), outside, inside), got);
}

#[test]
fn wind_presses_with_its_dynamic_pressure() {
    for v in [2, 5, 10] {
        let got = wind_pressure::dynamic(density(-10.0), MetrePerSecond::new(f64::from(v)));
        near_part("wind", got.get(), worked("wind", &format!("0.5 rho v^2 v={v} at -10C")), PRINTED);
    }
    for (angle, expected) in [(0.0, 0.6), (90.0, -0.4), (180.0, -0.3), (270.0, -0.4), (-360.0, 0.6)] {
        near("coefficient", wind_pressure::coefficient(Degree::new(angle)), expected, 1e-12);
    }
}

#[test]
fn wind_falls_toward_the_ground_and_behind_shelter() {
    let v = MetrePerSecond::new(5.0);
    let at = |height_m, shelter| wind::at_height(v, Metre::new(height_m), wind::OPEN_COUNTRY, shelter).get();
    near("at 10 m as measured", at(10.0, wind::SHELTER_OPEN), 5.0, 1e-12);
    assert_eq!(at(0.01, wind::SHELTER_OPEN), 0.0);
    let sheltered = [wind::SHELTER_OPEN, wind::SHELTER_WINDBREAK, wind::SHELTER_ENCLOSED].map(|s| at(0.5, s));
    assert!(sheltered[0] > sheltered[1] && sheltered[1] > sheltered[2] && sheltered[0] < 5.0, "{sheltered:?}");
}
