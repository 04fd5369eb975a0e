//! A winter that was, among two hundred made for its place: Northway, Alaska, October 2018 to May 2019.

use snowhum_units::Kelvin;
use snowhum_weather::{complete, readers, statistics};

use super::made::{DAYS, MONTHS, MadeWinters, NORTHWAY, daily_means};
use crate::Fault;

const FILE: &[u8] = include_bytes!("../../../weather/tests/data/northway_isd_lite_2018_oct_2019_may.z");
/// The record begins at midnight in Greenwich, nine hours before the first whole day at the place.
const BEFORE_MIDNIGHT: usize = 9;

/// Correlation of a day's mean with the next day's.
const DAY_WITH_NEXT: &str = "day with next";

/// Figures of the real winter and where they lie among the made ones.
pub(crate) struct RealWinter {
    pub(crate) figures: Vec<Figure>,
}

/// One figure of the real winter.
pub(crate) struct Figure {
    pub(crate) what: String,
    pub(crate) unit: &'static str,
    pub(crate) decimals: usize,
    pub(crate) real: f64,
    /// One in twenty below, the middle, one in twenty above.
    pub(crate) made: [f64; 3],
    /// Made winters with a lower figure, of a hundred.
    pub(crate) lower: f64,
}

impl RealWinter {
    pub(super) fn among(made: &MadeWinters) -> Result<Self, Fault> {
        let text = miniz_oxide::inflate::decompress_to_vec_zlib(FILE).map_err(|_| Fault::Packed)?;
        let reading = readers::isd_lite(&text, "702910")?;
        let (real, _) = complete(&reading.raw, &reading.file, NORTHWAY.place(), &NORTHWAY.zone())?;
        // The last hours of May run on into a day that is not whole.
        let hours: Vec<Kelvin> = real.temperature.into_iter().skip(BEFORE_MIDNIGHT).take(24 * (DAYS - 1)).collect();
        let mut figures: Vec<Figure> = MONTHS
            .iter()
            .flat_map(|(name, days)| {
                let of = |hours: &[Kelvin]| month(&daily_means(hours)[days.start..days.end.min(DAYS - 1)]);
                let name = (*name).to_owned();
                [
                    Figure::of(format!("{name}, mean"), "°C", 1, |hours| of(hours)[0], &hours, made),
                    Figure::of(format!("{name}, sd of days"), "K", 1, |hours| of(hours)[1], &hours, made),
                    Figure::of(format!("{name}, {DAY_WITH_NEXT}"), "", 2, |hours| of(hours)[2], &hours, made),
                ]
            })
            .collect();
        let cold = |share| move |hours: &[Kelvin]| statistics::quantile(hours, share).map_or(f64::NAN, Kelvin::celsius);
        let spell = |hours: &[Kelvin]| statistics::coldest_spell(hours, 3).map_or(f64::NAN, Kelvin::celsius);
        figures.push(Figure::of("lowest hour".to_owned(), "°C", 1, cold(0.0), &hours, made));
        figures.push(Figure::of("one hour in a hundred below".to_owned(), "°C", 1, cold(0.01), &hours, made));
        figures.push(Figure::of("coldest three days on end".to_owned(), "°C", 1, spell, &hours, made));
        Ok(Self { figures })
    }

    /// Months whose days follow each other more closely than in the middle made winter.
    pub(crate) fn closer_months(&self) -> usize {
        self.figures.iter().filter(|figure| figure.what.ends_with(DAY_WITH_NEXT) && figure.lower > 50.0).count()
    }

    /// Figures that lie between one made winter in twenty below and one in twenty above.
    pub(crate) fn between(&self) -> usize {
        self.figures.iter().filter(|figure| (5.0..=95.0).contains(&figure.lower)).count()
    }
}

impl Figure {
    fn of(
        what: String,
        unit: &'static str,
        decimals: usize,
        figure: impl Fn(&[Kelvin]) -> f64,
        hours: &[Kelvin],
        made: &MadeWinters,
    ) -> Self {
        let real = figure(hours);
        let mut all: Vec<f64> = made.hours.iter().map(|path| figure(&path[..hours.len()])).collect();
        all.sort_by(f64::total_cmp);
        let at = |share: f64| all.get((share * (all.len() - 1) as f64).round() as usize).copied().unwrap_or(f64::NAN);
        let lower = 100.0 * all.iter().filter(|one| **one < real).count() as f64 / all.len() as f64;
        Self { what, unit, decimals, real, made: [at(0.05), at(0.5), at(0.95)], lower }
    }
}

/// Mean, standard deviation and correlation with the next day, of a month's daily means.
fn month(days: &[Kelvin]) -> [f64; 3] {
    let Some((mean, sd)) = statistics::mean_and_spread(days) else { return [f64::NAN; 3] };
    let off: Vec<f64> = days.iter().map(|day| (*day - mean).get()).collect();
    let products: f64 = off.windows(2).map(|pair| pair.iter().product::<f64>()).sum();
    [mean.celsius(), sd.get(), products / ((days.len() - 1) as f64 * sd.get().powi(2))]
}
