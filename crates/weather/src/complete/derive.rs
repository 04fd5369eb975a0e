//! Quantities a file lacks, by the generator's laws.

use super::{Course, CourseDay, SHORT_GAP_H, column, gaps::bridged};
use crate::RawHour;
use crate::generator::light;
use crate::generator::season::Season;
use snowhum_figures::weather_generator as figures;
use snowhum_physics::moist_air::relative_humidity;
use snowhum_physics::saturation::over_water;
use snowhum_physics::sun::Irradiance;
use snowhum_say::{Message, weather as say};
use snowhum_units::Same;
use snowhum_units::{Fraction, Kelvin, MetrePerSecond, Pascal, WattPerSquareMetre};

/// Clear-sky sun below which cloud cannot be told from the sun.
const BRIGHT: WattPerSquareMetre = WattPerSquareMetre::new(50.0);

/// Bridges short gaps; what is still missing comes from the law. Notes both.
pub(super) fn with_law(
    of: &'static str,
    found: &[Option<f64>],
    law: impl Fn(usize) -> f64,
    taken: Message,
    notes: &mut Vec<Message>,
) -> Vec<f64> {
    let (filled, count) = bridged(found, SHORT_GAP_H);
    let missing = filled.iter().filter(|value| value.is_none()).count();
    if count > 0 {
        notes.push(say::filled(count, SHORT_GAP_H, say::quantity(of)));
    }
    if missing > 0 {
        notes.push(say::lacking(missing == found.len(), missing, say::quantity(of), taken));
    }
    filled.iter().enumerate().map(|(hour, value)| value.unwrap_or_else(|| law(hour))).collect()
}

/// Dew point first, since it says the same in frost for every station; then humidity over water; then the law.
pub(super) fn humidity(hours: &[RawHour], course: &Course, notes: &mut Vec<Message>) -> Vec<Fraction> {
    let pressure = |hour: &RawHour, air: Kelvin| {
        let by_dew_point = hour.dew_point.map(|dew_point| over_water(dew_point.min(air)).get());
        by_dew_point.or_else(|| hour.humidity.map(|humidity| over_water(air).get() * humidity.get()))
    };
    let vapour: Vec<Option<f64>> = hours.iter().zip(&course.air).map(|(hour, air)| pressure(hour, *air)).collect();
    let offset_k = figures::DEW_OFFSET;
    let law = |hour: usize| over_water(Kelvin::new(course.days[hour / 24].coldest.get() + offset_k)).get();
    let whole = with_law("humidity", &vapour, law, say::dew_point_taken(), notes);
    let over_ice = |(p_pa, air): (&f64, &Kelvin)| relative_humidity(*air, Pascal::new(*p_pa)).min(Fraction::new(1.0));
    whole.iter().zip(&course.air).map(over_ice).collect()
}

pub(super) fn wind(hours: &[RawHour], notes: &mut Vec<Message>) -> Vec<MetrePerSecond> {
    let found = column(hours, |hour| hour.wind.map(MetrePerSecond::get));
    let known: Vec<f64> = found.iter().flatten().copied().collect();
    let usual = figures::WIND_MEAN;
    let mean = if known.is_empty() { usual } else { known.iter().sum::<f64>() / known.len() as f64 };
    let taken = say::wind_taken(MetrePerSecond::new(mean));
    with_law("wind", &found, |_| mean, taken, notes).into_iter().map(MetrePerSecond::new).collect()
}

/// Cover and light; each from the other where only one is there.
pub(super) fn sky(hours: &[RawHour], course: &Course, notes: &mut Vec<Message>) -> (Vec<Fraction>, Vec<Irradiance>) {
    let found = column(hours, |hour| hour.cloud.map(Fraction::get));
    let laws = cover_laws(hours, course);
    let cover = with_law("cloud", &found, |hour| laws[hour / 24], say::cover_taken(), notes);
    let cover: Vec<Fraction> = cover.into_iter().map(|c| Fraction::new(c.clamp(0.0, 1.0))).collect();
    let mut derived = (0, 0);
    let lit = (0..hours.len()).map(|hour| lit(&hours[hour], course, hour, cover[hour], &mut derived)).collect();
    if derived.0 > 0 {
        notes.push(say::sun_derived(derived.0));
    }
    if derived.1 > 0 {
        notes.push(say::sun_split(derived.1));
    }
    (cover, lit)
}

fn lit(hour: &RawHour, course: &Course, at: usize, cover: Fraction, derived: &mut (usize, usize)) -> Irradiance {
    let sun = &course.sun[at];
    let Some(global) = hour.global else {
        derived.0 += 1;
        return light(sun, cover);
    };
    match (hour.direct, hour.diffuse) {
        (Some(direct_normal), Some(diffuse)) => Irradiance { global, direct_normal, diffuse },
        _ => {
            derived.1 += 1;
            sun.split(global)
        }
    }
}

/// Cover of each day: from the day's sun over that under a clear sky, else from its range of temperature.
fn cover_laws(hours: &[RawHour], course: &Course) -> Vec<f64> {
    let season = Season::of(&course.climate);
    (0..course.days.len())
        .map(|day| cover_by_sun(hours, course, day).unwrap_or_else(|| cover_by_range(&season, course, day)))
        .collect()
}

fn cover_by_sun(hours: &[RawHour], course: &Course, day: usize) -> Option<f64> {
    let (mut global, mut clear) = (0.0, 0.0);
    for hour in day * 24..(day * 24 + 24).min(hours.len()) {
        if let Some(found) = hours[hour].global
            && course.sun[hour].clear > BRIGHT
        {
            global += found.get();
            clear += course.sun[hour].clear.get();
        }
    }
    // Kasten and Czeplak turned round.
    (clear > 0.0).then(|| ((1.0 - global / clear) / 0.75).clamp(0.0, 1.0).same_powf(1.0 / 3.4))
}

fn cover_by_range(season: &Season, course: &Course, day: usize) -> f64 {
    let CourseDay { month, mean, coldest, warmest, sun } = &course.days[day];
    let usual_k = season.range_k(sun.clear_mean());
    let deviate = ((*warmest - *coldest).get().max(0.5) / usual_k).same_ln() / figures::RANGE_SPREAD;
    season.sky(*month, season.winterness(mean.celsius())).cover(figures::RANGE_WITH_SKY * deviate.clamp(-3.0, 3.0))
}

pub(super) fn pressure(hours: &[RawHour], standard: Pascal, notes: &mut Vec<Message>) -> Vec<Pascal> {
    let found = column(hours, |hour| hour.pressure.map(Pascal::get));
    let taken = say::pressure_taken();
    with_law("pressure", &found, |_| standard.get(), taken, notes).into_iter().map(Pascal::new).collect()
}
