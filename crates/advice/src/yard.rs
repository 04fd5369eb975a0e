//! From a keeper's yard to a run's yard.

use jiff::civil::Date;
use snowhum_apiary::{Apiary, Colony, Exposure, Hive, Shelter, Site};
use snowhum_units::{Fraction, Metre};
use snowhum_weather::{Ensemble, Place};
use snowhum_winter::{Environment, HARM_BEFORE_EMERGENCE, Housed, YardShelter};

use crate::dates::season_start;
use crate::{indoors, winter_bees};

/// Height of a hive's middle over ground, for the wind it feels.
const HIVE_HEIGHT: Metre = Metre::new(0.8);

/// The site as a point on the earth.
#[must_use]
pub fn place(site: &Site) -> Place {
    Place { latitude: site.latitude, longitude: site.longitude, elevation: site.elevation }
}

/// Wind and sun that reach the hives.
#[must_use]
pub fn shelter(site: &Site) -> YardShelter {
    use snowhum_physics::wind;
    let sheltered = match site.shelter {
        Shelter::Open => wind::SHELTER_OPEN,
        Shelter::Windbreak => wind::SHELTER_WINDBREAK,
        Shelter::Enclosed => wind::SHELTER_ENCLOSED,
    };
    // Share of the direct winter sun (judgement).
    let sun = match site.exposure {
        Exposure::Sunny => 1.0,
        Exposure::Partial => 0.5,
        Exposure::Shaded => 0.15,
    };
    let one = snowhum_units::MetrePerSecond::new(1.0);
    let wind = wind::at_height(one, HIVE_HEIGHT, wind::OPEN_COUNTRY, sheltered);
    YardShelter { wind: Fraction::new(wind.get()), sun: Fraction::new(sun) }
}

/// The yard's outside under an ensemble that begins at the start of `first_day`, with the site's own day of winter bees.
#[must_use]
pub fn environment(site: &Site, weather: &Ensemble, first_day: Date) -> Environment {
    let environment = Environment::yard(weather, place(site), shelter(site), first_day);
    match winter_bees::emergence(place(site)) {
        Some(day) => environment.with_winter_bees(day),
        None => environment,
    }
}

/// Every colony as [`housed`] has it, each queen as she was last found to stand up to a day.
#[must_use]
pub fn housed_on(apiary: &Apiary, day: Date) -> Vec<Housed> {
    let mut all = housed_to(apiary, day);
    for housed in &mut all {
        housed.colony.autumn.queen = apiary.queen_on(&housed.colony, day);
    }
    all
}

/// Every colony with its hive and the place of the hive that warms it; colonies without a hive are left out (a checked
/// yard has none).
///
/// Of two hives that touch, the one with fewer bees is warmed by the other; a hive that is warmed warms no third.
#[must_use]
pub fn housed(apiary: &Apiary) -> Vec<Housed> {
    housed_to(apiary, apiary.as_of)
}

/// The same, in the rooms they stand in and counted for mites by what was noted up to a day. Hives that do not winter side by side warm none.
#[must_use]
pub fn housed_to(apiary: &Apiary, until: Date) -> Vec<Housed> {
    let with_hive: Vec<_> =
        apiary.colonies.iter().filter_map(|colony| Some((colony, apiary.hive_of(colony)?))).collect();
    let stays: Vec<_> = with_hive.iter().map(|(colony, _)| indoors::stays(apiary, colony, until)).collect();
    let bees = |at: usize| with_hive[at].0.bees.p50;
    let beside = |at: usize| {
        let touching = with_hive[at].1.neighbour.as_ref()?.hive;
        with_hive
            .iter()
            .position(|(_, other)| other.id == touching)
            .filter(|&lender| bees(lender) > bees(at) && stays[lender] == stays[at])
    };
    let warmed = |at: usize| beside(at).filter(|&lender| beside(lender).is_none());
    let harm = winter_bees::emergence(place(&apiary.site)).map(|emergence| {
        let season = season_start(apiary.as_of, apiary.site.latitude);
        winter_bees::date(emergence - HARM_BEFORE_EMERGENCE, season.year())
    });
    let house = |(at, (colony, hive)): (usize, &(&Colony, &Hive))| Housed {
        colony: harm.map_or_else(|| (*colony).clone(), |harm| apiary.as_counted(colony, harm, until)),
        hive: (*hive).clone(),
        neighbour: warmed(at),
        stays: stays[at].clone(),
    };
    with_hive.iter().enumerate().map(house).collect()
}
