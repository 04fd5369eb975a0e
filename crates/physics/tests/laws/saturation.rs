use crate::table::{Table, near, near_part};
use snowhum_physics::saturation::{TRIPLE_POINT, over_ice, over_ice_or_water, over_water};
use snowhum_physics::saturation_13788;
use snowhum_units::{Kelvin, Pascal};

fn table() -> Table {
    Table::new(include_str!("../data/saturation.csv"))
}

#[test]
fn saturation_is_that_of_hyland_and_wexler() {
    for row in table().rows() {
        let t = Kelvin::from_celsius(row.number("t_C"));
        near_part("over water", over_water(t).get(), row.number("pws_HW_water_Pa"), PRINTED_DIGITS);
        if let Some(ice_pa) = row.optional("pws_HW_ice_Pa") {
            near_part("over ice", over_ice(t).get(), ice_pa, PRINTED_DIGITS);
        }
    }
}

/// Seven digits are printed.
const PRINTED_DIGITS: f64 = 1e-6;

#[test]
fn saturation_is_within_a_twentieth_of_a_percent_of_iapws() {
    for row in table().rows() {
        let t = Kelvin::from_celsius(row.number("t_C"));
        for column in ["psub_IAPWS_R14_ice_Pa", "pws_IAPWS95_coolprop_water_Pa"] {
            if let Some(iapws_pa) = row.optional(column) {
                near_part(column, over_ice_or_water(t).get(), iapws_pa, 5e-4);
            }
        }
    }
}

#[test]
fn ice_and_water_meet_at_the_triple_point() {
    near_part("triple point", over_ice(TRIPLE_POINT).get(), over_water(TRIPLE_POINT).get(), 1e-6);
}

#[test]
fn the_law_of_iso_13788_is_apart_and_as_printed() {
    for row in table().rows() {
        let t = Kelvin::from_celsius(row.number("t_C"));
        let got = saturation_13788::saturation(t);
        near_part("ISO 13788", got.get(), row.number("pws_ISO13788_Pa"), PRINTED_DIGITS);
        let back = saturation_13788::dew_point(got).map_or(f64::NAN, Kelvin::celsius);
        near("back again", back, t.celsius(), 1e-9);
    }
    assert!(saturation_13788::dew_point(Pascal::ZERO).is_none());
}
