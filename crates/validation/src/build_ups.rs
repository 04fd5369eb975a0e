//! Films, air layers, walls and snow against closed forms.

use snowhum_physics::air_layer::{AirLayer, resistance};
use snowhum_physics::films::{
    HeatFlow, STANDARD_OUTER_RESISTANCE, inner_resistance, outer_resistance, standard_inner_resistance,
};
use snowhum_physics::layers::{Layer, u_value};
use snowhum_physics::snow;
use snowhum_units::{
    Fraction, JoulePerKilogramKelvin, Kelvin, KelvinDifference, KilogramPerCubicMetre, Metre, MetrePerSecond,
    WattPerMetreKelvin,
};

use crate::check::{Basis, Check, Claim, Class};
use crate::table::{largest, part, worked};

/// Resistances of films, air layers and build-ups; snow.
pub(crate) fn checks() -> Vec<Check> {
    /// Digits of the tables.
    const PRINTED: f64 = 1e-6;
    let claim = |id, quantity, source| Claim { id, class: Class::Exact, quantity, source, status: Basis::OutsideTool };
    vec![
        claim("A-wall-1", "outside film, 0 to 10 m/s of wind, as a part", "ISO 6946 annex C, evaluated with Python")
            .differs_at_most(PRINTED, "of it", outer_films()),
        claim("A-wall-2", "inside films up, sideways and down, as a part", "ISO 6946 annex C, evaluated with Python")
            .differs_at_most(PRINTED, "of it", inner_films()),
        claim(
            "A-wall-3",
            "air layers of 5 to 300 mm, plain and with foil, as a part",
            "ISO 6946 annex D, evaluated with Python",
        )
        .differs_at_most(PRINTED, "of it", air_layers()),
        claim("A-wall-4", "U-values of hive walls, lids and floors, as a part", "ISO 6946, evaluated with Python")
            .differs_at_most(PRINTED, "of it", u_values()),
        claim(
            "A-wall-5",
            "snow of 100 to 500 kg/m³, logarithmic form, as a part",
            "Sturm et al. 1997, evaluated with Python",
        )
        .differs_at_most(PRINTED, "of it", snow_conductivities()),
    ]
}

const PLAIN: Fraction = Fraction::new(0.9);
const FOIL: Fraction = Fraction::new(0.05);
const FLOWS: [(HeatFlow, &str); 3] = [(HeatFlow::Up, "u"), (HeatFlow::Horizontal, "h"), (HeatFlow::Down, "d")];

fn outer_films() -> f64 {
    largest([0, 1, 2, 3, 4, 5, 7, 10].map(|v| {
        let got = outer_resistance(MetrePerSecond::new(f64::from(v)), PLAIN, Kelvin::from_celsius(0.0));
        part(got.get(), worked("Rse", &format!("v={v} m/s eps=.9 Tm=0C")))
    }))
}

fn inner_films() -> f64 {
    let named = [
        (HeatFlow::Up, "upward hci=5.0"),
        (HeatFlow::Horizontal, "horizontal hci=2.5"),
        (HeatFlow::Down, "downward hci=0.7"),
    ];
    largest(named.map(|(flow, name)| {
        let got = inner_resistance(flow, PLAIN, Kelvin::from_celsius(20.0)).get();
        part(got, worked("Rsi", &format!("{name} eps .9 Tm=20C")))
    }))
}

fn air_layers() -> f64 {
    let plain = [5, 7, 10, 15, 25, 50, 100, 300].map(|mm| (mm, PLAIN, "airlayer", "e=.9/.9"));
    let foiled = [10, 20, 25, 50].map(|mm| (mm, FOIL, "airlayer_lowE", "e=.05/.9"));
    let one = |(mm, emissivity, case, faces): (i32, Fraction, &str, &str), (flow, letter): (HeatFlow, &str)| {
        let layer = AirLayer { thickness: Metre::new(f64::from(mm) / 1_000.0), emissivity: [emissivity, PLAIN], flow };
        let got = resistance(layer, Kelvin::from_celsius(10.0), KelvinDifference::new(5.0)).get();
        part(got, worked(case, &format!("d={mm}mm dir={letter} {faces} Tm=10")))
    };
    let layers = plain.into_iter().chain(foiled);
    largest(layers.flat_map(|layer| FLOWS.map(|flow| one(layer, flow))))
}

fn layer(millimetres: f64, conductivity: f64) -> Layer {
    Layer {
        thickness: Metre::new(millimetres / 1_000.0),
        conductivity: WattPerMetreKelvin::new(conductivity),
        density: KilogramPerCubicMetre::new(450.0),
        specific_heat: JoulePerKilogramKelvin::new(1_600.0),
        vapour_resistance: 50.0,
    }
}

fn u_values() -> f64 {
    let pine = layer(19.0, 0.12);
    let cases = [
        ("wall 19mm pine, Rsi .13 Rse .04", vec![pine], HeatFlow::Horizontal),
        ("wall 22mm cedar k=.11", vec![layer(22.0, 0.11)], HeatFlow::Horizontal),
        ("wall 19 pine + 25 XPS k=.034", vec![pine, layer(25.0, 0.034)], HeatFlow::Horizontal),
        ("wall 19 pine + 50 EPS k=.036", vec![pine, layer(50.0, 0.036)], HeatFlow::Horizontal),
        ("polystyrene hive wall 40 EPS k=.033", vec![layer(40.0, 0.033)], HeatFlow::Horizontal),
        ("lid 19mm pine Rsi .10", vec![pine], HeatFlow::Up),
        ("lid 10 ply k=.13 + 50 XPS k=.034", vec![layer(10.0, 0.13), layer(50.0, 0.034)], HeatFlow::Up),
        ("floor 19 pine Rsi .17", vec![pine], HeatFlow::Down),
    ];
    largest(cases.iter().map(|(name, layers, flow)| {
        let got = u_value(standard_inner_resistance(*flow), layers, STANDARD_OUTER_RESISTANCE).get();
        part(got, worked("U", name))
    }))
}

fn snow_conductivities() -> f64 {
    largest([100, 150, 200, 250, 300, 350, 400, 500].map(|density| {
        let got = snow::conductivity(KilogramPerCubicMetre::new(f64::from(density))).get();
        part(got, worked("snow", &format!("Sturm1997 log rho={density}")))
    }))
}
