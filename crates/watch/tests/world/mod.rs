//! An invented yard of one colony in a cold winter, with its weather known or not.

use jiff::civil::{Date, date};
use jiff::tz::TimeZone;
use snowhum_apiary::{Colony, Mites};
use snowhum_testkit::{Dress, colony, langstroth, place};
use snowhum_units::{Fraction, Kilogram, Range};
use snowhum_watch::{Parameters, Scene};
use snowhum_weather::{Climate, Ensemble, generate};
use snowhum_winter::{Environment, Housed, Yard, YardShelter};

pub(crate) const FIRST_DAY: Date = date(2025, 10, 5);
pub(crate) const DAYS: usize = 180;
static CLOCK: TimeZone = TimeZone::UTC;

/// A colony that may well die: of hunger, of mites, or for being small.
pub(crate) fn uncertain_colony() -> Colony {
    let mut colony = colony(9_000.0, 8.0);
    colony.bees = Range { p10: 5_500.0, p50: 9_000.0, p90: 14_000.0 };
    colony.sealed_brood = Some(Range { p10: 500.0, p50: 1_000.0, p90: 2_000.0 });
    colony.stores.total = Range { p10: 4.5, p50: 7.5, p90: 12.0 }.map(Kilogram::new);
    colony.mites = Mites::Counted { found: 9, bees: 300, on: date(2025, 9, 1) };
    colony.queen.year = Some(2023);
    colony
}

/// Winters drawn for a cold place.
pub(crate) fn winters(paths: usize, seed: u64) -> Ensemble {
    let climate = Climate::at(place()).unwrap();
    generate(place(), &climate, &TimeZone::UTC, FIRST_DAY, 24 * DAYS, paths, seed).unwrap()
}

/// The yard's outside on all paths of an ensemble.
pub(crate) fn environment(winters: &Ensemble) -> Environment {
    let shelter = YardShelter { wind: Fraction::new(0.3), sun: Fraction::new(0.7) };
    Environment::yard(winters, place(), shelter, FIRST_DAY)
}

/// The outside on one path alone: weather that is known.
pub(crate) fn known(winters: &Ensemble, path: usize) -> Environment {
    environment(&Ensemble { paths: vec![winters.paths[path].clone()], ..winters.clone() })
}

pub(crate) struct World {
    pub(crate) winter: snowhum_winter::Parameters,
    pub(crate) signs: Parameters,
    pub(crate) colonies: Vec<Housed>,
}

impl World {
    pub(crate) fn of(colony: Colony) -> Self {
        let hive = langstroth(Dress { lid_foam_mm: 50.0, ..Dress::BARE });
        Self {
            winter: snowhum_winter::Parameters::shipped().unwrap(),
            signs: Parameters::shipped().unwrap(),
            colonies: vec![Housed { colony, hive, neighbour: None, stays: Vec::new() }],
        }
    }

    pub(crate) fn yard<'a>(&'a self, environment: &'a Environment) -> Yard<'a> {
        Yard { environment, parameters: &self.winter, colonies: &self.colonies }
    }

    pub(crate) fn scene<'a>(&'a self, yard: &'a Yard<'a>, known_hours: usize, seed: u64) -> Scene<'a> {
        let start = TimeZone::UTC.to_ambiguous_timestamp(FIRST_DAY.at(0, 0, 0, 0)).compatible().unwrap();
        Scene { yard, start, zone: &CLOCK, known_hours, parameters: &self.signs, seed }
    }
}
