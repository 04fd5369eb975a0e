//! Hourly temperature from the days of a path.

use super::days::DayWeather;
use super::frame::{Day, Frame};

/// Temperatures of the hours asked for.
///
/// Under a high sun a day runs by Parton and Logan between its extremes; under a low sun straight between extremes
/// that come at any hour; in between both are blended. A bulge that is nothing at both midnights then makes each day's
/// mean exactly the one drawn.
pub(crate) fn hourly(frame: &Frame, days: &[DayWeather]) -> Vec<f64> {
    let asked = frame.hours.div_ceil(24);
    let mut hours = Vec::with_capacity(asked * 24);
    for index in frame.spin_up..frame.spin_up + asked {
        let mut course = course(&frame.days[index], days, index);
        meet_mean(&mut course, days[index].mean_c);
        hours.extend_from_slice(&course);
    }
    hours.truncate(frame.hours);
    hours
}

fn course(day: &Day, days: &[DayWeather], index: usize) -> [f64; 24] {
    let a = day.advective;
    let mut course = [0.0; 24];
    if a < 1.0 {
        for (t_c, w) in course.iter_mut().zip(&day.shape) {
            let base = &days[index + w.base - 1];
            let next_c = days[index + w.base].coldest_c();
            *t_c = (1.0 - a) * (w.coldest * base.coldest_c() + w.warmest * base.warmest_c() + w.next_coldest * next_c);
        }
    }
    if a > 0.0 {
        let blown = blown(days, index);
        course.iter_mut().zip(blown).for_each(|(t_c, blown_c)| *t_c += a * blown_c);
    }
    course
}

/// Straight lines through the last extreme of the day before, both of the day and the first of the next.
fn blown(days: &[DayWeather], index: usize) -> [f64; 24] {
    let [_, before] = knots(&days[index - 1], -24.0);
    let [first, second] = knots(&days[index], 0.0);
    let [after, _] = knots(&days[index + 1], 24.0);
    std::array::from_fn(|hour| {
        let hour = hour as f64 + 0.5;
        let (from, to) = if hour < first.0 {
            (before, first)
        } else if hour < second.0 {
            (first, second)
        } else {
            (second, after)
        };
        from.1 + (to.1 - from.1) * (hour - from.0) / (to.0 - from.0)
    })
}

fn knots(day: &DayWeather, shift_h: f64) -> [(f64, f64); 2] {
    let (coldest_c, warmest_c) = (day.coldest_c(), day.warmest_c());
    let (first_c, second_c) = if day.coldest_first { (coldest_c, warmest_c) } else { (warmest_c, coldest_c) };
    [(day.turns_h[0] + shift_h, first_c), (day.turns_h[1] + shift_h, second_c)]
}

fn meet_mean(course: &mut [f64; 24], mean_c: f64) {
    // Mean of 6 u (1 - u) over the middles of 24 hours.
    const BULGE_MEAN: f64 = 1.0 + 0.5 / (24.0 * 24.0);
    let lacks_k = (mean_c - course.iter().sum::<f64>() / 24.0) / BULGE_MEAN;
    for (hour, t_c) in course.iter_mut().enumerate() {
        let u = (hour as f64 + 0.5) / 24.0;
        *t_c += lacks_k * 6.0 * u * (1.0 - u);
    }
}
