//! Moist air against tables of two libraries.

use snowhum_physics::STANDARD_PRESSURE;
use snowhum_physics::moist_air::{frost_or_dew_point, humidity_ratio_at};
use snowhum_physics::{saturation, saturation_13788};
use snowhum_units::{Fraction, Kelvin, Pascal};

use crate::check::{Basis, Check, Claim, Class};
use crate::table::{Row, Table, largest, part};

/// Saturation, humidity ratio and dew point.
pub(crate) fn checks() -> Vec<Check> {
    let table = Table::new(include_str!("../data/saturation.csv"));
    let states = Table::new(include_str!("../data/states.csv"));
    let ratio = |column: &'static str| largest(states.rows().map(|row| part(humidity_ratio(&row), row.number(column))));
    vec![
        claim(
            "A-air-1",
            "saturation pressure over water, -40 to 40 °C, as a part",
            "PsychroLib 2.5.0, Hyland and Wexler 1983",
        )
        .differs_at_most(5e-4, "of it", pressure(&table, "pws_HW_water_Pa", saturation::over_water)),
        claim(
            "A-air-2",
            "saturation pressure over ice, -40 to 0 °C, as a part",
            "PsychroLib 2.5.0, Hyland and Wexler 1983",
        )
        .differs_at_most(5e-4, "of it", pressure(&table, "pws_HW_ice_Pa", saturation::over_ice)),
        claim(
            "A-air-3",
            "the formula of ISO 13788, used in its cases alone, -40 to 40 °C, as a part",
            "ISO 13788, evaluated with Python",
        )
        .differs_at_most(5e-4, "of it", pressure(&table, "pws_ISO13788_Pa", saturation_13788::saturation)),
        claim("A-air-4", "humidity ratio of moist states, -20 to 40 °C, as a part", "PsychroLib 2.5.0")
            .differs_at_most(5e-3, "of it", ratio("W_kgkg")),
        claim("A-air-5", "the same against real gas", "CoolProp 8.0.0")
            .differs_at_most(5e-3, "of it", ratio("W_coolprop"))
            .because("the real gas holds 0.4 % more vapour than the ideal one (enhancement factor)"),
        claim("A-air-6", "dew point, below 0 °C frost point, of the same states", "PsychroLib 2.5.0").differs_at_most(
            0.02,
            "K",
            dew_point(&states),
        ),
    ]
}

fn claim(id: &'static str, quantity: &'static str, source: &'static str) -> Claim {
    Claim { id, class: Class::Exact, quantity, source, status: Basis::OutsideTool }
}

fn temperature(row: &Row<'_>) -> Kelvin {
    Kelvin::from_celsius(row.number("t_C"))
}

fn pressure(table: &Table, column: &str, law: impl Fn(Kelvin) -> Pascal) -> f64 {
    let given = table.rows().filter(|row| !row.text(column).is_empty());
    largest(given.map(|row| part(law(temperature(&row)).get(), row.number(column))))
}

fn humidity_ratio(row: &Row<'_>) -> f64 {
    humidity_ratio_at(temperature(row), Fraction::new(row.number("RH")), STANDARD_PRESSURE).get()
}

fn dew_point(states: &Table) -> f64 {
    largest(states.rows().map(|row| {
        let found = frost_or_dew_point(Pascal::new(row.number("pv_Pa"))).map_or(f64::NAN, Kelvin::celsius);
        found - row.number("dew_or_frost_psychrolib_C")
    }))
}
