//! Irradiance outside the atmosphere.

use snowhum_units::Same;
use snowhum_units::WattPerSquareMetre;

/// Irradiance on a plane across the sun's rays outside the atmosphere, on the UTC day of a unix second.
///
/// I_0n = 1366.1 (1.00011 + 0.034221 cos B + 0.00128 sin B + 0.000719 cos 2B + 0.000077 sin 2B), B = 2π (n - 1) / 365
///
/// Valid within 0.01 % of the series for any year; the sun itself varies by 0.1 %.
///
/// Source: Spencer 1971, Search 2:172, with the solar constant of ASTM E490.
///
/// ```
/// use snowhum_physics::sun::extraterrestrial_normal;
/// // 2025-10-15 07:30 UTC.
/// assert!((extraterrestrial_normal(1_760_513_400).get() - 1374.18958).abs() < 1e-5);
/// ```
#[must_use]
pub fn extraterrestrial_normal(unix_s: i64) -> WattPerSquareMetre {
    const SOLAR_CONSTANT: f64 = 1366.1;
    let b = std::f64::consts::TAU * (day_of_year(unix_s) - 1) as f64 / 365.0;
    let distance = 1.000_11
        + 0.034_221 * b.same_cos()
        + 0.001_28 * b.same_sin()
        + 0.000_719 * (2.0 * b).same_cos()
        + 0.000_077 * (2.0 * b).same_sin();
    WattPerSquareMetre::new(SOLAR_CONSTANT * distance)
}

/// Day of the Gregorian year in UTC, from 1. Counts in 400-year eras of years that begin in March, so that a leap day
/// is last.
fn day_of_year(unix_s: i64) -> i64 {
    const ERA_DAYS: i64 = 146_097;
    const DAYS_FROM_MARCH_0_TO_1970: i64 = 719_468;
    let days = unix_s.div_euclid(86_400) + DAYS_FROM_MARCH_0_TO_1970;
    let day_of_era = days.rem_euclid(ERA_DAYS);
    let year_of_era = (day_of_era - day_of_era / 1_460 + day_of_era / 36_524 - day_of_era / 146_096) / 365;
    let from_march = day_of_era - (365 * year_of_era + year_of_era / 4 - year_of_era / 100);
    if from_march >= 306 {
        return from_march - 305;
    }
    let leap = year_of_era % 4 == 0 && (year_of_era % 100 != 0 || year_of_era % 400 == 0);
    from_march + 60 + i64::from(leap)
}

#[cfg(test)]
mod tests {
    use super::day_of_year;

    #[test]
    fn days_of_the_year_count_leap_days() {
        const DAY_S: i64 = 86_400;
        assert_eq!(day_of_year(0), 1); // 1970-01-01
        assert_eq!(day_of_year(-1), 365); // 1969-12-31
        assert_eq!(day_of_year(951_782_400), 60); // 2000-02-29
        assert_eq!(day_of_year(951_782_400 + DAY_S), 61); // 2000-03-01
        assert_eq!(day_of_year(978_220_800), 366); // 2000-12-31
        assert_eq!(day_of_year(983_404_800), 60); // 2001-03-01
        assert_eq!(day_of_year(-2_203_891_200), 60); // 1900-03-01
    }
}
