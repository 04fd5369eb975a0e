//! How a cluster's heat goes with temperature and size.

use snowhum_units::{Kelvin, Kilogram};
use snowhum_winter::{Parameters, cluster_at};

use crate::check::{Band, Basis, Check, Claim, Class};

const FACT_SHEET: &str = "Melathopoulos, The Biology and Management of Colonies in Winter, AAFC Beaverlodge";

/// Heat of a cluster in still air of one temperature.
pub(crate) fn checks(parameters: &Parameters) -> Vec<Check> {
    let claim =
        |id, quantity| Claim { id, class: Class::Shape, quantity, source: FACT_SHEET, status: Basis::Published };
    let power = |t_c| specific_power(parameters, 2.0, t_c);
    let curve: Vec<(f64, f64)> = (-300..=180).map(|t| f64::from(t) / 10.0).map(|t_c| (t_c, power(t_c))).collect();
    let least = curve.iter().map(|(_, w)| *w).fold(f64::INFINITY, f64::min);
    let near_least = || curve.iter().filter(|(_, w)| *w <= 1.01 * least).map(|(t_c, _)| *t_c);
    let (coldest, warmest) = (near_least().fold(f64::INFINITY, f64::min), near_least().fold(-f64::INFINITY, f64::max));
    let plateau =
        curve.iter().filter(|(t_c, _)| (5.0..=10.0).contains(t_c)).map(|(_, w)| w / least).fold(0.0, f64::max);
    let slopes = [-12.0, -18.0, -24.0].map(|t_c| (power(t_c - 6.0) - power(t_c)) / 6.0);
    let spread = slopes.iter().fold(0.0, |most: f64, slope| most.max((slope / slopes[0] - 1.0).abs()));
    vec![
        claim("B-cluster-1", "air round a 2 kg cluster at which its heat is within 1 % of the least").holds(
            "its middle from 3 to 12 °C (5 to 10 °C in the source)",
            format!("{coldest:.1} to {warmest:.1} °C"),
            (3.0..=12.0).contains(&(0.5 * (coldest + warmest))),
        ),
        claim("B-cluster-2", "most heat from 5 to 10 °C over the least").within(Band::new(1.0, 1.05, "times", 2), plateau),
        claim("B-cluster-3", "heat at +14 °C over the least").within(Band::new(1.2, f64::INFINITY, "times", 2), power(14.0) / least),
        claim("B-cluster-4", "heat at -20 °C over the least").within(Band::new(1.2, f64::INFINITY, "times", 2), power(-20.0) / least),
        claim("B-cluster-5", "rise below -12 °C is a straight line: slopes differ by").within(Band::new(0.0, 0.01, "of the slope", 3), spread),
        claim("B-cluster-6", "the cluster tightens no further below").within(Band::new(-15.0, -5.0, "°C", 1), tightest_at(parameters)),
        Claim {
            id: "B-cluster-7",
            class: Class::Shape,
            quantity: "exponent of a cluster's heat with its mass, 0.3 to 1.2 kg at 2 °C",
            source: "Southwick 1985, J. Comp. Physiol. B 156:143 (0.52) and Omholt 1987, J. theor. Biol. 128:219 (1): sources differ",
            status: Basis::Published,
        }
        .within(Band::new(0.5, 1.0, "", 2), size_exponent(parameters)),
    ]
}

/// W/kg.
fn specific_power(parameters: &Parameters, mass_kg: f64, t_c: f64) -> f64 {
    cluster_at(parameters, Kilogram::new(mass_kg), Kelvin::from_celsius(t_c)).heat.get() / mass_kg
}

/// Warmest tenth of a degree below which the volume stays as it is.
fn tightest_at(parameters: &Parameters) -> f64 {
    let volume = |t_c| cluster_at(parameters, Kilogram::new(2.0), Kelvin::from_celsius(t_c)).volume_ratio;
    let tightest = volume(-40.0);
    let still_tight = |t_c: &f64| volume(*t_c) <= tightest * (1.0 + 1e-9);
    (-300..=180).map(|t| f64::from(t) / 10.0).filter(still_tight).fold(f64::NAN, f64::max)
}

fn size_exponent(parameters: &Parameters) -> f64 {
    let heat = |mass_kg| specific_power(parameters, mass_kg, 2.0) * mass_kg;
    (heat(1.2) / heat(0.3)).ln() / 4.0_f64.ln()
}
