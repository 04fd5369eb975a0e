//! Two hundred winters against the generator's own inputs, each within four standard errors.

use std::ops::Range;

use super::inputs::DayLaw;
use super::made::{MIDWINTER, MONTHS, MadeWinters};
use super::moments::Estimate;
use crate::check::{Basis, Check, Claim, Class};

/// Standard errors allowed: passed by chance alone once in sixteen thousand figures.
const ALLOWED: f64 = 4.0;
/// Standard deviations below the mean beyond which days are counted.
const DEEP: f64 = 3.0;

/// Means, spread, lag, lean, depth and rain.
pub(super) fn checks(made: &[MadeWinters]) -> Vec<Check> {
    vec![
        judged("A-gen-1", "mean temperature of each month, October to May", made, means),
        judged("A-gen-2", "variance of the daily mean in each month", made, spread),
        judged("A-gen-3", "correlation of a day's mean with the next day's, in each month", made, lag),
        judged("A-gen-4", "lean of December to February to the cold: skewness", made, lean),
        judged("A-gen-5", "days of December to February over 3 sd below the climate's mean", made, depth)
            .because("a generator that clips its residuals has none of these days, or far too few"),
        judged("A-gen-6", "rain and melted snow, October to May", made, rain),
    ]
}

/// Departure in standard errors, and the figure in words.
type Finding = (f64, String);

fn judged(id: &'static str, what: &'static str, made: &[MadeWinters], find: fn(&MadeWinters) -> Finding) -> Check {
    let found: Vec<(&str, Finding)> = made.iter().map(|winters| (winters.place.name, find(winters))).collect();
    let largest = crate::table::largest(found.iter().map(|(_, (departure, _))| *departure));
    let shown: Vec<String> = found.iter().map(|(name, (_, words))| format!("{name} {words}")).collect();
    let source = "the climate's monthly means (ERA5 2000-2025) and data/weather_generator.toml; 200 winters a place, seeds 11, 12, 13";
    Claim { id, class: Class::Exact, quantity: what, source, status: Basis::Derived }.holds(
        "within 4 standard errors of the inputs",
        format!("at most {largest:.1} standard errors; {}", shown.join(", ")),
        largest <= ALLOWED,
    )
}

/// Mean over days of a figure of each day's distance from the climate, for each winter.
fn by_winter(winters: &MadeWinters, days: Range<usize>, figure: impl Fn(&[f64], &[DayLaw], usize) -> f64) -> Vec<f64> {
    let laws = &winters.laws;
    let of_one = |means: &Vec<snowhum_units::Kelvin>| {
        let off: Vec<f64> = means.iter().zip(laws).map(|(t, law)| t.celsius() - law.mean_c).collect();
        days.clone().map(|day| figure(&off, laws, day)).sum::<f64>() / days.len() as f64
    };
    winters.days.iter().map(of_one).collect()
}

fn over(laws: &[DayLaw], days: Range<usize>, of: fn(&DayLaw) -> f64) -> f64 {
    let count = days.len() as f64;
    laws[days].iter().map(of).sum::<f64>() / count
}

fn means(winters: &MadeWinters) -> Finding {
    let months = MONTHS.iter().enumerate().map(|(at, (_, days))| {
        let given_c = winters.climate.temperature[(at + 9) % 12].celsius();
        let mean_of = |means: &Vec<snowhum_units::Kelvin>| {
            means[days.clone()].iter().map(|t| t.celsius()).sum::<f64>() / days.len() as f64
        };
        let found = Estimate::of(&winters.days.iter().map(mean_of).collect::<Vec<_>>());
        (found.departure(given_c), (found.mean - given_c).abs())
    });
    let (departure, off_k) = worst(months);
    (departure, format!("{off_k:.2} K off at most"))
}

fn spread(winters: &MadeWinters) -> Finding {
    let months = MONTHS.iter().map(|(_, days)| {
        let found = Estimate::of(&by_winter(winters, days.clone(), |off, _, day| off[day] * off[day]));
        let given = over(&winters.laws, days.clone(), DayLaw::variance);
        (found.departure(given), 100.0 * ((found.mean / given).sqrt() - 1.0).abs())
    });
    let (departure, off) = worst(months);
    let january = over(&winters.laws, 92..123, DayLaw::variance).sqrt();
    (departure, format!("sd {off:.0} % off at most, {january:.1} K in January"))
}

fn lag(winters: &MadeWinters) -> Finding {
    let mut shown = String::new();
    let months = MONTHS.iter().map(|(name, days)| {
        let pairs = days.start..days.end - 1;
        let given = over(&winters.laws, pairs.clone(), DayLaw::with_next)
            / over(&winters.laws, pairs.clone(), DayLaw::variance);
        let squares =
            by_winter(winters, pairs.clone(), |off, _, day| 0.5 * (off[day] * off[day] + off[day + 1] * off[day + 1]));
        let products = by_winter(winters, pairs, |off, _, day| off[day] * off[day + 1]);
        // A ratio of two means: what is left of the product once the given share of the square is taken off.
        let left: Vec<f64> = products.iter().zip(&squares).map(|(product, square)| product - given * square).collect();
        let found = Estimate::of(&products).mean / Estimate::of(&squares).mean;
        if *name == "January" {
            shown = format!("{found:.2} of {given:.2} in January");
        }
        Estimate::of(&left).departure(0.0)
    });
    (crate::table::largest(months), shown)
}

fn lean(winters: &MadeWinters) -> Finding {
    let cubes = Estimate::of(&by_winter(winters, MIDWINTER, |off, _, day| off[day].powi(3)));
    let given = over(&winters.laws, MIDWINTER, DayLaw::third_moment);
    let scale = over(&winters.laws, MIDWINTER, DayLaw::variance).powf(1.5);
    // Nought without its sign, however it rounds.
    let words = |skewness: f64| format!("{:.1}", skewness + 0.0).replace("-0.0", "0.0");
    (cubes.departure(given), format!("{} of {}", words(cubes.mean / scale), words(given / scale)))
}

fn depth(winters: &MadeWinters) -> Finding {
    let is_deep =
        |off: &[f64], laws: &[DayLaw], day: usize| f64::from(u8::from(off[day] < -DEEP * laws[day].variance().sqrt()));
    let found = Estimate::of(&by_winter(winters, MIDWINTER, is_deep));
    let given = over(&winters.laws, MIDWINTER, |law| law.chance_below(DEEP));
    (found.departure(given), format!("{:.1} of {:.1} in a thousand", 1e3 * found.mean, 1e3 * given))
}

fn rain(winters: &MadeWinters) -> Finding {
    let given_mm: f64 = (0..8).map(|at| winters.climate.precipitation[(at + 9) % 12].get() * 1e3).sum();
    let found = Estimate::of(&winters.precipitation.iter().map(|depth| depth.get() * 1e3).collect::<Vec<_>>());
    (found.departure(given_mm), format!("{:.0} of {given_mm:.0} mm", found.mean))
}

/// The largest of each figure.
fn worst(figures: impl Iterator<Item = (f64, f64)>) -> (f64, f64) {
    let (departures, sizes): (Vec<f64>, Vec<f64>) = figures.unzip();
    (crate::table::largest(departures), crate::table::largest(sizes))
}
