//! A year of a site's weather, from high summer on: what the jobs of the year stand on.

use jiff::civil::Date;
use snowhum_advice::jobs::season_start;
use snowhum_advice::yard;
use snowhum_apiary::{Apiary, Site};
use snowhum_say::weather as say;
use snowhum_weather::{Climate, Ensemble, generate};

use super::files;
use super::span::{PATHS, zone};
use super::undrawn;
use crate::args::RunArguments;
use crate::exit;

/// Hours of a leap year.
const HOURS: usize = 24 * 366;

/// The year that a day belongs to.
pub(crate) struct Year {
    /// First day.
    pub(crate) from: Date,
    /// Its weather.
    pub(crate) weather: Ensemble,
    /// The yard's site, moved to the weather's place where a file names one far from it.
    pub(crate) site: Site,
}

impl Year {
    /// Reads or draws it: a file too short for a whole year leaves the word to the climate of its place.
    pub(crate) fn resolve(apiary: &Apiary, arguments: &RunArguments, as_of: Date) -> anyhow::Result<Self> {
        if arguments.weather.is_empty() {
            let from = season_start(as_of, apiary.site.latitude);
            let weather = of_climate(&apiary.site, from, arguments.seed)?;
            return Ok(Self { from, weather, site: apiary.site.clone() });
        }
        let read = files::read_all(&arguments.weather, arguments.columns.as_deref(), &apiary.site)?;
        let (site, far) = files::site_of(&read, &apiary.site)?;
        let from = season_start(as_of, site.latitude);
        let mut weather = match files::ensemble(&read, &site, from, HOURS, PATHS, arguments.seed) {
            Ok(weather) => weather,
            Err(_) => {
                let mut weather = of_climate(&site, from, arguments.seed)?;
                weather.provenance.notes.push(say::no_whole_year());
                weather
            }
        };
        weather.provenance.far = far;
        Ok(Self { from, weather, site })
    }
}

fn of_climate(site: &Site, from: Date, seed: u64) -> anyhow::Result<Ensemble> {
    let place = yard::place(site);
    let climate = Climate::at(place).map_err(|outside| exit::refused(outside.message()))?;
    generate(place, &climate, &zone(site)?, from, HOURS, PATHS, seed).map_err(undrawn)
}
