//! Which weather an answer stands on: the keeper's files, else the embedded climate of the site.

mod files;
pub(crate) mod live;
mod present;
mod span;
mod spring;
mod year;

use jiff::ToSpan;
use jiff::civil::Date;
use snowhum_advice::answer::FarAnswer;
use snowhum_advice::{PlanQuestion, yard};
use snowhum_apiary::{Apiary, Site};
use snowhum_say::weather_terminal as say;
use snowhum_weather::{AirPaths, Climate, Ensemble, GeneratorFault, Hourly, generate, generate_air, season};
use snowhum_winter::Parameters;

use crate::args::RunArguments;
use crate::{exit, progress};

pub(crate) use files::{Completed, read_one, site_of, unread};
pub(crate) use present::{Present, asked_day};
pub(crate) use span::zone;
#[cfg(feature = "club")]
pub(crate) use spring::spring_of;
pub(crate) use year::Year;

use span::{AFTER_WINTER, AHEAD, DATES, LONGEST_WINTER, PATHS, high_summer_before};

/// Days of autumn needed to see when bees stop taking syrup: 1 July to the end of November.
const AUTUMN_DAYS: i64 = 153;
/// Shortest winter worth a plan, days.
const SHORTEST_WINTER: i64 = 7;
/// Everything a plan needs of the weather.
pub(crate) struct Weather {
    /// The day the plan starts.
    as_of: Date,
    /// From the start of the as-of date to spring, or to a later day that was asked for.
    pub(crate) winter: Ensemble,
    /// From high summer.
    autumn: AirPaths,
    /// First day of `autumn`.
    autumn_from: Date,
    /// First flow plus 14 days.
    pub(crate) spring: Date,
    /// The yard's site, moved to the weather's place where a file names one far from it.
    pub(crate) site: Site,
}

impl Weather {
    /// Reads or draws the weather for a yard, to its spring.
    pub(crate) fn resolve(apiary: &Apiary, arguments: &RunArguments) -> anyhow::Result<(Self, Date)> {
        Self::resolve_to(apiary, arguments, None)
    }

    /// As [`Self::resolve`], but on to a day, where spring lies before it.
    fn resolve_to(apiary: &Apiary, arguments: &RunArguments, at_least: Option<Date>) -> anyhow::Result<(Self, Date)> {
        let as_of = arguments.as_of.unwrap_or(apiary.as_of);
        let autumn_from = high_summer_before(as_of, &apiary.site);
        if arguments.weather.is_empty() && arguments.columns.is_some() {
            return Err(exit::refused(say::columns_alone()));
        }
        let weather = if arguments.weather.is_empty() {
            Self::of_climate(&apiary.site, (as_of, at_least), autumn_from, arguments.seed)?
        } else {
            let files = files::read_all(&arguments.weather, arguments.columns.as_deref(), &apiary.site)?;
            Self::of_files(&files, &apiary.site, (as_of, at_least), autumn_from, arguments.seed)?
        };
        Ok((weather, as_of))
    }

    /// The question of a plan under this weather; `apiary` is [`Self::moved`].
    pub(crate) fn question<'a>(
        &'a self,
        apiary: &'a Apiary,
        parameters: &'a Parameters,
        arguments: &RunArguments,
    ) -> PlanQuestion<'a> {
        PlanQuestion {
            apiary,
            winter: &self.winter,
            autumn: &self.autumn,
            autumn_from: self.autumn_from,
            as_of: self.as_of,
            spring: self.spring,
            parameters,
            members: arguments.members as usize,
            seed: arguments.seed,
        }
    }

    /// Says on stderr what lies far, beside an answer that does not speak of its weather.
    pub(crate) fn tell_far(&self) {
        self.winter.provenance.far.iter().for_each(|far| progress::note(FarAnswer::new(far).says));
    }

    /// The yard at the weather's place.
    pub(crate) fn moved(&self, apiary: &Apiary) -> Apiary {
        Apiary { site: self.site.clone(), ..apiary.clone() }
    }

    fn of_climate(
        site: &Site,
        (as_of, at_least): (Date, Option<Date>),
        autumn_from: Date,
        seed: u64,
    ) -> anyhow::Result<Self> {
        let place = yard::place(site);
        let zone = zone(site)?;
        let climate = Climate::at(place).map_err(|outside| exit::refused(outside.message()))?;
        let found = season::spring_of_climate(place, &climate, spring::year(as_of, site), DATES).map_err(undrawn)?;
        let spring = match (spring::own(site, as_of), found) {
            (Some(own), _) => own,
            (None, Some(range)) => range.p50,
            (None, None) => return Err(exit::refused(say::no_spring())),
        };
        let days = winter_days(as_of, spring, at_least)?;
        let hours = |days: i64| 24 * days as usize;
        let (winter, autumn) = rayon::join(
            || generate(place, &climate, &zone, as_of, hours(days), PATHS, seed),
            || generate_air(place, &climate, &zone, autumn_from, hours(AUTUMN_DAYS), PATHS, DATES),
        );
        Ok(Self {
            as_of,
            winter: winter.map_err(undrawn)?,
            autumn: autumn.map_err(undrawn)?,
            autumn_from,
            spring,
            site: site.clone(),
        })
    }

    fn of_files(
        files: &[Completed],
        site: &Site,
        (as_of, at_least): (Date, Option<Date>),
        autumn_from: Date,
        seed: u64,
    ) -> anyhow::Result<Self> {
        let (site, far) = files::site_of(files, site)?;
        let long = longest(files, &site, as_of, seed)?;
        let covered = as_of.saturating_add(((long.hours() / 24) as i64).days());
        let found = season::spring_of(&long, site.latitude, &zone(&site)?).map(|range| range.p50);
        let spring =
            spring::own(&site, as_of).or(found).or_else(|| spring::of_climate(&site, as_of)).unwrap_or(covered);
        let spring = spring.min(covered);
        let mut winter = cut(&long, 24 * winter_days(as_of, spring, at_least.map(|day| day.min(covered)))? as usize);
        winter.provenance.far = far;
        let autumn = files::ensemble(files, &site, autumn_from, 24 * AUTUMN_DAYS as usize, PATHS, DATES);
        let autumn = match autumn {
            Ok(autumn) => AirPaths::from(&autumn),
            // A file of the winter alone says nothing of autumn; the climate of its place does.
            Err(too_short) => {
                let climate = Climate::at(yard::place(&site)).map_err(|_| too_short)?;
                generate_air(
                    yard::place(&site),
                    &climate,
                    &zone(&site)?,
                    autumn_from,
                    24 * AUTUMN_DAYS as usize,
                    PATHS,
                    DATES,
                )
                .map_err(undrawn)?
            }
        };
        Ok(Self { as_of, winter, autumn, autumn_from, spring, site })
    }
}

/// Weather that cannot be drawn, as an error.
fn undrawn(fault: GeneratorFault) -> anyhow::Error {
    exit::refused(fault.message())
}

/// The longest ensemble, up to eleven months, that the files allow.
fn longest(files: &[Completed], site: &Site, as_of: Date, seed: u64) -> anyhow::Result<Ensemble> {
    const STEP: usize = 10;
    let mut refused = None;
    for days in (1..=LONGEST_WINTER as usize / STEP).rev().map(|steps| steps * STEP) {
        match files::ensemble(files, site, as_of, 24 * days, PATHS, seed) {
            Ok(ensemble) => return Ok(ensemble),
            Err(error) => refused = Some(error),
        }
    }
    Err(refused.unwrap_or_else(|| exit::refused(say::no_hours())))
}

/// Days from the as-of date to spring, or on to a later day as long as its colonies are followed.
fn winter_days(as_of: Date, spring: Date, at_least: Option<Date>) -> anyhow::Result<i64> {
    let last = spring.saturating_add((AFTER_WINTER + AHEAD).days());
    let until = at_least.map_or(spring, |day| day.min(last).max(spring));
    let days = spring::days_between(as_of, until);
    if days >= SHORTEST_WINTER && spring::days_between(as_of, spring) <= LONGEST_WINTER {
        return Ok(days);
    }
    Err(exit::refused(say::too_short(as_of.to_string(), spring.to_string())))
}

/// The first `hours` of an ensemble.
fn cut(ensemble: &Ensemble, hours: usize) -> Ensemble {
    let path = |path: &Hourly| Hourly {
        start: path.start,
        temperature: path.temperature[..hours].to_vec(),
        humidity: path.humidity[..hours].to_vec(),
        wind: path.wind[..hours].to_vec(),
        cloud: path.cloud[..hours].to_vec(),
        global: path.global[..hours].to_vec(),
        direct: path.direct[..hours].to_vec(),
        diffuse: path.diffuse[..hours].to_vec(),
        precipitation: path.precipitation[..hours].to_vec(),
        snow_depth: path.snow_depth[..hours].to_vec(),
        pressure: path.pressure[..hours].to_vec(),
    };
    Ensemble {
        start: ensemble.start,
        paths: ensemble.paths.iter().map(path).collect(),
        provenance: ensemble.provenance.clone(),
    }
}
