//! The sun over a winter at 60° north, against pvlib.

use snowhum_physics::sun::{Face, Irradiance, SunPosition, clear_sky, on_face, position, split};
use snowhum_units::{Degree, Fraction, WattPerSquareMetre};

use crate::check::{Basis, Check, Claim, Class};
use crate::table::{Row, Table, largest};

/// Position and light on a south wall over snow.
pub(crate) fn checks() -> Vec<Check> {
    let claim = |id, quantity| Claim {
        id,
        class: Class::Exact,
        quantity,
        source: "pvlib 0.16.1 (SPA, Haurwitz, Erbs, isotropic sky)",
        status: Basis::OutsideTool,
    };
    let table = Table::new(include_str!("../data/sun_60n.csv"));
    let worst = |error: fn(&Row<'_>) -> f64| largest(table.rows().map(|row| error(&row)));
    vec![
        claim("A-sun-1", "zenith angle, six days from October to March").differs_at_most(0.01, "°", worst(zenith)),
        claim("A-sun-2", "azimuth of the same").differs_at_most(0.01, "°", worst(azimuth)),
        claim("A-sun-3", "clear-sky light on the level").differs_at_most(1e-3, "W/m²", worst(clear)),
        claim("A-sun-4", "diffuse part of it").differs_at_most(1e-3, "W/m²", worst(diffuse)),
        claim("A-sun-5", "light on a south wall over snow").differs_at_most(1e-3, "W/m²", worst(wall)),
    ]
}

fn sun(row: &Row<'_>) -> Option<SunPosition> {
    position(row.number("unix_s") as i64, Degree::new(row.number("lat")), Degree::new(row.number("lon"))).ok()
}

fn zenith(row: &Row<'_>) -> f64 {
    sun(row).map_or(f64::NAN, |sun| sun.zenith.get()) - row.number("zenith")
}

fn azimuth(row: &Row<'_>) -> f64 {
    sun(row).map_or(f64::NAN, |sun| sun.azimuth.get()) - row.number("azimuth")
}

fn clear(row: &Row<'_>) -> f64 {
    clear_sky(Degree::new(row.number("apparent_zenith"))).get() - row.number("haurwitz_ghi")
}

fn diffuse(row: &Row<'_>) -> f64 {
    let number = |column| WattPerSquareMetre::new(row.number(column));
    split(number("in_ghi"), Degree::new(row.number("zenith")), number("dni_extra")).diffuse.get()
        - row.number("erbs_dhi")
}

fn wall(row: &Row<'_>) -> f64 {
    let south = Face { tilt: Degree::new(90.0), azimuth: Degree::new(180.0), albedo: Fraction::new(0.6) };
    let number = |column| WattPerSquareMetre::new(row.number(column));
    let light = Irradiance { global: number("in_ghi"), direct_normal: number("erbs_dni"), diffuse: number("erbs_dhi") };
    let zenith = Degree::new(row.number("apparent_zenith"));
    let seen = on_face(light, SunPosition { zenith, azimuth: Degree::new(row.number("azimuth")) }, south);
    seen.total().get() - row.number("poa_vertS_iso_alb0.6")
}
