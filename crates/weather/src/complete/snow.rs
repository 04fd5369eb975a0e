//! Snow on the ground of a file.

use super::{Course, SHORT_GAP_H, column, gaps};
use crate::climatology::days_in_month;
use crate::snow_pack::SnowPack;
use crate::{Climate, RawHour};
use snowhum_say::{Message, weather as say};
use snowhum_units::{Kelvin, Metre};

/// Days of a mean year that are run before the record starts, so that snow lies when it begins in winter.
const SPIN_UP_DAYS: usize = 200;

/// The file's own depths if it has at least nine in ten (and it always lies under some sky), else from temperature and
/// precipitation.
pub(super) fn depth(
    hours: &[RawHour],
    course: &Course,
    precipitation: &[Metre],
    notes: &mut Vec<Message>,
) -> Vec<Metre> {
    let found = column(hours, |hour| hour.snow_depth.map(Metre::get));
    let known = found.iter().flatten().count();
    if known * 10 >= found.len() * 9 {
        let (filled, _) = gaps::bridged(&found, 24 * SHORT_GAP_H);
        if gaps::first_gap(&filled).is_none() {
            return filled.into_iter().flatten().map(Metre::new).collect();
        }
    }
    notes.push(say::snow_derived());
    let climate = course.known.then_some(&course.climate);
    debug_assert_eq!(course.air.len(), precipitation.len());
    snow_depths(usual_snow(climate, course.first_day), &course.air, precipitation)
}

/// Depth of snow under hourly air and precipitation, from the snow that lies before them.
pub(crate) fn snow_depths(mut pack: SnowPack, air: &[Kelvin], precipitation: &[Metre]) -> Vec<Metre> {
    let mut depths = Vec::with_capacity(air.len());
    for (day, fallen) in air.chunks(24).zip(precipitation.chunks(24)) {
        let mean = Kelvin::new(day.iter().map(|t| t.get()).sum::<f64>() / day.len() as f64);
        for (air, fallen) in day.iter().zip(fallen) {
            pack.step(1.0, *fallen, *air, mean);
            depths.push(pack.depth());
        }
    }
    depths
}

/// The snow a mean year would have on a day; none where no climate is known.
pub(crate) fn usual_snow(climate: Option<&Climate>, first_day: usize) -> SnowPack {
    let mut pack = SnowPack::default();
    let Some(climate) = climate else { return pack };
    let year = climate.daily_means();
    for back in (1..=SPIN_UP_DAYS).rev() {
        let day = (first_day + 365 - back) % 365;
        let month = month_of(day);
        let mean = Kelvin::from_celsius(year.on(day));
        pack.step(24.0, climate.precipitation[month] / days_in_month(month) as f64, mean, mean);
    }
    pack
}

fn month_of(day: usize) -> usize {
    let mut left = day;
    for month in 0..12 {
        if left < days_in_month(month) {
            return month;
        }
        left -= days_in_month(month);
    }
    11
}
