use crate::table::{Table, near};
use snowhum_physics::sun::{
    Face, Irradiance, SunError, SunPosition, clear_sky, extraterrestrial_normal, on_face, position, split, under_cloud,
};
use snowhum_units::{Degree, Fraction, WattPerSquareMetre};

/// Irradiance is printed to 0.00001 W/m²; the angles it comes from are printed to 0.00001°, which moves it by this
/// much.
const PRINTED_W_M2: f64 = 5e-4;

fn table() -> Table {
    Table::new(include_str!("../data/sun_60n.csv"))
}

#[test]
fn the_sun_stands_where_pvlib_has_it() -> Result<(), SunError> {
    for row in table().rows() {
        let sun =
            position(row.number("unix_s") as i64, Degree::new(row.number("lat")), Degree::new(row.number("lon")))?;
        near("zenith", sun.zenith.get(), row.number("zenith"), 1e-3);
        near("azimuth", sun.azimuth.get(), row.number("azimuth"), 1e-3);
    }
    Ok(())
}

/// Reda and Andreas 2003, worked example (2003-10-17 12:30:30 at UTC-7), without refraction.
#[test]
fn the_sun_stands_where_the_worked_example_has_it() -> Result<(), SunError> {
    let sun = position(1_066_419_030, Degree::new(39.742476), Degree::new(-105.1786))?;
    near("zenith", sun.zenith.get(), 50.127954, 1e-3);
    near("azimuth", sun.azimuth.get(), 194.340241, 1e-3);
    Ok(())
}

#[test]
fn a_place_off_the_globe_or_a_time_off_the_calendar_is_refused() {
    let at = |unix_s, latitude, longitude| position(unix_s, Degree::new(latitude), Degree::new(longitude));
    for refused in
        [at(0, 91.0, 0.0), at(0, 0.0, 181.0), at(0, f64::NAN, 0.0), at(i64::MAX, 0.0, 0.0), at(i64::MIN, 0.0, 0.0)]
    {
        let message = refused.map_or_else(|error| error.to_string(), |_| String::new());
        assert!(message.contains("latitude must be -90 to 90"), "{message}");
    }
}

#[test]
fn clear_and_extraterrestrial_light_are_those_of_pvlib() {
    for row in table().rows() {
        let outside = extraterrestrial_normal(row.number("unix_s") as i64);
        near("extraterrestrial", outside.get(), row.number("dni_extra"), 1e-5);
        let clear = clear_sky(Degree::new(row.number("apparent_zenith")));
        near("Haurwitz", clear.get(), row.number("haurwitz_ghi"), PRINTED_W_M2);
    }
}

#[test]
fn direct_and_diffuse_light_are_those_of_pvlib() {
    for row in table().rows() {
        let outside = WattPerSquareMetre::new(row.number("dni_extra"));
        let global = WattPerSquareMetre::new(row.number("in_ghi"));
        let parts = split(global, Degree::new(row.number("zenith")), outside);
        near("diffuse", parts.diffuse.get(), row.number("erbs_dhi"), PRINTED_W_M2);
        near("direct", parts.direct_normal.get(), row.number("erbs_dni"), PRINTED_W_M2);
    }
}

#[test]
fn light_on_a_south_wall_over_snow_is_that_of_pvlib() {
    let wall = Face { tilt: Degree::new(90.0), azimuth: Degree::new(180.0), albedo: Fraction::new(0.6) };
    for row in table().rows() {
        let number = |column| WattPerSquareMetre::new(row.number(column));
        let light =
            Irradiance { global: number("in_ghi"), direct_normal: number("erbs_dni"), diffuse: number("erbs_dhi") };
        let zenith = Degree::new(row.number("apparent_zenith"));
        let got = on_face(light, SunPosition { zenith, azimuth: Degree::new(row.number("azimuth")) }, wall);
        near("direct", got.direct.get(), row.number("poa_dir"), PRINTED_W_M2);
        near("sky", got.sky.get(), row.number("poa_sky"), PRINTED_W_M2);
        near("ground", got.ground.get(), row.number("poa_gnd"), PRINTED_W_M2);
        near("all", got.total().get(), row.number("poa_vertS_iso_alb0.6"), PRINTED_W_M2);
    }
}

#[test]
fn a_sun_behind_the_wall_or_below_the_horizon_gives_no_direct_light() {
    let north = Face { tilt: Degree::new(90.0), azimuth: Degree::new(0.0), albedo: Fraction::new(0.2) };
    let noon = SunPosition { zenith: Degree::new(80.0), azimuth: Degree::new(180.0) };
    let parts = split(WattPerSquareMetre::new(80.0), noon.zenith, WattPerSquareMetre::new(1400.0));
    assert_eq!(on_face(parts, noon, north).direct.get(), 0.0);
    let night = split(WattPerSquareMetre::ZERO, Degree::new(100.0), WattPerSquareMetre::new(1400.0));
    assert_eq!((night.direct_normal.get(), night.diffuse.get()), (0.0, 0.0));
}

/// 1 - 0.75 × 0.5^3.4 by hand.
#[test]
fn cloud_takes_light_as_kasten_and_czeplak_found() {
    let clear = WattPerSquareMetre::new(100.0);
    near("half covered", under_cloud(clear, Fraction::new(0.5)).get(), 92.895079, 1e-6);
    assert_eq!(under_cloud(clear, Fraction::new(7.0)).get(), 25.0);
}
