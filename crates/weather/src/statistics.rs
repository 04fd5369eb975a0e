//! What a series amounts to: means, quantiles, degree hours, cold spells, flying days.

use crate::Hourly;
use jiff::civil::Date;
use jiff::tz::TimeZone;
use snowhum_units::{Kelvin, KelvinDifference, Metre, MetrePerSecond, WattPerSquareMetre};

/// What bees fly in: at least this warm, not windier, with at least this much sun, and dry.
///
/// Common practice for a good cleansing flight: above 10 °C, calm, sunny.
const FLYING_FROM_C: f64 = 10.0;
const FLYING_WIND: MetrePerSecond = MetrePerSecond::new(4.0);
const FLYING_SUN: WattPerSquareMetre = WattPerSquareMetre::new(100.0);
const FLYING_RAIN: Metre = Metre::new(snowhum_figures::winter_hour::FLIGHT_RAIN);

/// Dates of the days of a series on a clock, each with its range of hours; days cut off at an end are left out.
pub(crate) fn whole_days(series: &Hourly, zone: &TimeZone) -> Vec<(Date, std::ops::Range<usize>)> {
    let mut days: Vec<(Date, std::ops::Range<usize>)> = Vec::new();
    for hour in 0..series.len() {
        let Some(date) = date_of(series, zone, hour) else { break };
        match days.last_mut() {
            Some((last, range)) if *last == date => range.end = hour + 1,
            _ => days.push((date, hour..hour + 1)),
        }
    }
    // A day of changing clocks has 23 or 25 hours.
    days.retain(|(_, hours)| hours.len() >= 23);
    days
}

/// Date of an hour on a clock.
pub(crate) fn date_of(series: &Hourly, zone: &TimeZone, hour: usize) -> Option<Date> {
    let instant = series.start.checked_add(jiff::SignedDuration::from_hours(hour as i64)).ok()?;
    Some(zone.to_datetime(instant).date())
}

/// Mean temperature of each month of the year over the hours there are; `None` for a month without any.
#[must_use]
pub fn monthly_means(series: &Hourly, zone: &TimeZone) -> [Option<Kelvin>; 12] {
    let mut sums = [(0.0, 0.0); 12];
    for (hour, t) in series.temperature.iter().enumerate() {
        if let Some(date) = date_of(series, zone, hour) {
            let (sum, count) = &mut sums[date.month() as usize - 1];
            *sum += t.get();
            *count += 1.0;
        }
    }
    sums.map(|(sum, count)| (count > 0.0).then(|| Kelvin::new(sum / count)))
}

/// Σ max(0, base - T) over the hours, K h.
///
/// ```
/// use snowhum_units::Kelvin;
/// let hours = [Kelvin::from_celsius(8.0), Kelvin::from_celsius(12.0), Kelvin::from_celsius(-5.0)];
/// assert!((snowhum_weather::statistics::degree_hours(&hours, Kelvin::from_celsius(10.0)) - 17.0).abs() < 1e-9);
/// ```
#[must_use]
pub fn degree_hours(hours: &[Kelvin], base: Kelvin) -> f64 {
    hours.iter().map(|t| (base - *t).get().max(0.0)).sum()
}

/// Quantile of the hours: sorted, straight between ranks. `None` without hours or with a share outside 0 to 1.
///
/// ```
/// use snowhum_units::Kelvin;
/// let hours: Vec<Kelvin> = (0..=100).map(|t| Kelvin::new(200.0 + f64::from(t))).collect();
/// assert_eq!(snowhum_weather::statistics::quantile(&hours, 0.01), Some(Kelvin::new(201.0)));
/// ```
#[must_use]
pub fn quantile(hours: &[Kelvin], share: f64) -> Option<Kelvin> {
    if hours.is_empty() || !(0.0..=1.0).contains(&share) {
        return None;
    }
    let mut sorted: Vec<f64> = hours.iter().map(|t| t.get()).collect();
    sorted.sort_by(f64::total_cmp);
    let rank = share * (sorted.len() - 1) as f64;
    let (low, part) = (rank as usize, rank.fract());
    let high = sorted[(low + 1).min(sorted.len() - 1)];
    Some(Kelvin::new(sorted[low] + part * (high - sorted[low])))
}

/// Days with at least one hour above 10 °C, below 4 m/s, above 100 W/m² and dry.
#[must_use]
pub fn flying_days(series: &Hourly, zone: &TimeZone) -> Vec<Date> {
    let flies = |hour: usize| {
        series.temperature[hour].celsius() > FLYING_FROM_C
            && series.wind[hour] < FLYING_WIND
            && series.global[hour] > FLYING_SUN
            && series.precipitation[hour] < FLYING_RAIN
    };
    let days = whole_days(series, zone).into_iter();
    days.filter(|(_, hours)| hours.clone().any(flies)).map(|(date, _)| date).collect()
}

/// The coldest mean over `days` days on end. `None` if there are fewer.
#[must_use]
pub fn coldest_spell(hours: &[Kelvin], days: usize) -> Option<Kelvin> {
    let span = days * 24;
    if span == 0 || hours.len() < span {
        return None;
    }
    let mut sum: f64 = hours[..span].iter().map(|t| t.get()).sum();
    let mut lowest = sum;
    for hour in span..hours.len() {
        sum += (hours[hour] - hours[hour - span]).get();
        lowest = lowest.min(sum);
    }
    Some(Kelvin::new(lowest / span as f64))
}

/// Mean of some hours and their standard deviation.
#[must_use]
pub fn mean_and_spread(hours: &[Kelvin]) -> Option<(Kelvin, KelvinDifference)> {
    if hours.len() < 2 {
        return None;
    }
    let n = hours.len() as f64;
    let mean = hours.iter().map(|t| t.get()).sum::<f64>() / n;
    let variance = hours.iter().map(|t| (t.get() - mean).powi(2)).sum::<f64>() / (n - 1.0);
    Some((Kelvin::new(mean), KelvinDifference::new(variance.sqrt())))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_coldest_spell_is_found_wherever_it_lies() {
        let mut hours = vec![Kelvin::from_celsius(-5.0); 240];
        hours[100..172].fill(Kelvin::from_celsius(-25.0));
        assert!((coldest_spell(&hours, 3).unwrap().celsius() + 25.0).abs() < 1e-6);
        assert!((coldest_spell(&hours, 6).unwrap().celsius() + 15.0).abs() < 1e-6);
        assert!(coldest_spell(&hours, 11).is_none() && coldest_spell(&hours, 0).is_none());
    }
}
