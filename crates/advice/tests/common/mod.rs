//! Weather for a yard as the binary would make it, at a smaller number of paths.

use jiff::civil::Date;
use jiff::tz::TimeZone;
use snowhum_advice::yard;
use snowhum_apiary::Apiary;
use snowhum_weather::{Climate, Ensemble, generate, season};

const PATHS: usize = 64;
const SEED: u64 = 1;
const AUTUMN_DAYS: usize = 153;

/// First day of the autumn ensemble.
pub(crate) fn autumn_from(apiary: &Apiary) -> Date {
    jiff::civil::date(apiary.as_of.year(), 7, 1)
}

/// Winter, autumn and the day spring is reckoned from.
pub(crate) fn weather(apiary: &Apiary) -> (Ensemble, Ensemble, Date) {
    let place = yard::place(&apiary.site);
    let climate = Climate::at(place).unwrap();
    let zone = TimeZone::get(&apiary.site.zone).unwrap();
    let year = apiary.as_of.year() + 1;
    let spring = season::spring_of_climate(place, &climate, year, SEED).unwrap().unwrap().p50;
    let days = spring.duration_since(apiary.as_of).as_hours() as usize / 24;
    let winter = generate(place, &climate, &zone, apiary.as_of, 24 * days, PATHS, SEED).unwrap();
    let autumn = generate(place, &climate, &zone, autumn_from(apiary), 24 * AUTUMN_DAYS, PATHS, SEED).unwrap();
    (winter, autumn, spring)
}
