//! Stack, wind and orifices against closed forms.

use snowhum_physics::orifice::{SHARP_EDGED, volume_flow};
use snowhum_physics::stack::{Draught, Opening, Openings, draught};
use snowhum_physics::{two_way, wind_pressure};
use snowhum_units::{Fraction, Kelvin, KilogramPerCubicMetre, Metre, MetrePerSecond, Pascal, SquareMetre};

use crate::check::{Basis, Check, Claim, Class};
use crate::table::{largest, part, worked};

/// Flow through openings.
pub(crate) fn checks() -> Vec<Check> {
    const PRINTED: f64 = 1e-6;
    let claim = |id, quantity, source| Claim { id, class: Class::Exact, quantity, source, status: Basis::OutsideTool };
    let stack = "closed forms of ASHRAE Fundamentals ch. 16, evaluated with Python";
    vec![
        claim("A-flow-1", "stack pressure of three hives with two openings, as a part", stack).differs_at_most(
            PRINTED,
            "of it",
            stacks("dp", |got, _| got.pressure.get()),
        ),
        claim("A-flow-2", "mass flow of the same, as a part", stack).differs_at_most(
            PRINTED,
            "of it",
            stacks("mass flow", |got, _| got.mass_flow.get()),
        ),
        claim("A-flow-3", "height of their neutral level, as a part", stack).differs_at_most(
            PRINTED,
            "of it",
            stacks("neutral level above bottom opening", |got, _| got.neutral_level.get()),
        ),
        claim("A-flow-4", "a hole of 1 cm² at 0.1 to 10 Pa, as a part", "Bernoulli, evaluated with Python")
            .differs_at_most(PRINTED, "of it", orifices()),
        claim(
            "A-flow-5",
            "two-way flow in one slot of 300 x 20 mm, as a part",
            "ASHRAE Fundamentals ch. 16, evaluated with Python",
        )
        .differs_at_most(PRINTED, "of it", two_ways()),
        claim("A-flow-6", "wind pressure at 2, 5 and 10 m/s, as a part", "½ρv², evaluated with Python")
            .differs_at_most(PRINTED, "of it", winds()),
    ]
}

/// Dry air as the tables have it.
fn density(t_c: f64) -> KilogramPerCubicMetre {
    KilogramPerCubicMetre::new(101_325.0 / (287.055 * (t_c + 273.15)))
}

fn stacks(quantity: &str, figure: impl Fn(&Draught, KilogramPerCubicMetre) -> f64) -> f64 {
    let hole = |cm2: f64| Opening { area: SquareMetre::new(cm2 * 1e-4), discharge: SHARP_EDGED };
    let cases = [
        ("A equal 2cm2/2cm2 H.5 10/-10", 2.0, 2.0, 0.5, 10.0, -10.0),
        ("B bottom 30cm2 top 2cm2 H.55 5/-10", 30.0, 2.0, 0.55, 5.0, -10.0),
        ("C bottom 7.5cm2 top 3cm2 H.5 0/-20", 7.5, 3.0, 0.5, 0.0, -20.0),
    ];
    largest(cases.map(|(name, lower, upper, height, inside_c, outside_c)| {
        let openings = Openings { lower: hole(lower), upper: hole(upper), height: Metre::new(height) };
        let got = draught(openings, density(outside_c), density(inside_c));
        part(figure(&got, density(inside_c)), worked("stack", &format!("{name} {quantity}")))
    }))
}

fn orifices() -> f64 {
    largest([("0.1", 0.1), ("1", 1.0), ("4", 4.0), ("10", 10.0)].map(|(name, dp_pa)| {
        let got = volume_flow(SquareMetre::new(1e-4), SHARP_EDGED, Pascal::new(dp_pa), density(-10.0));
        part(got.get() * 1e3, worked("orifice", &format!("1 cm2 Cd .61 dp={name} Pa rho(-10C)")))
    }))
}

fn two_ways() -> f64 {
    let (inside, outside) = (Kelvin::from_celsius(10.0), Kelvin::from_celsius(-10.0));
    let slot = SquareMetre::new(0.3 * 0.02);
    let got = two_way::exchange(slot, Metre::new(0.02), Fraction::new(0.6), inside, outside);
    part(got.get() * 1e3, worked("single", "slot 300x20mm, Cd .6, 10/-10: Q=(Cd/3)A sqrt(g h dT/Tm)")).abs()
}

fn winds() -> f64 {
    largest([2, 5, 10].map(|v| {
        let got = wind_pressure::dynamic(density(-10.0), MetrePerSecond::new(f64::from(v)));
        part(got.get(), worked("wind", &format!("0.5 rho v^2 v={v} at -10C")))
    }))
}
