//! Weather for a yard as the binary would make it, at a smaller number of paths, and what is noted and asked under it.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use jiff::ToSpan;
use jiff::civil::Date;
use jiff::tz::TimeZone;
use snowhum_advice::jobs::{JobsAnswer, JobsQuestion, SiteYear, Triggers, jobs, season_start};
use snowhum_advice::now::{Ground, NowAnswer, NowQuestion, Thresholds};
use snowhum_advice::{PlanQuestion, yard};
use snowhum_apiary::{Apiary, Conditions, Entry, Note, NoteId, VisitId};
use snowhum_units::Kelvin;
use snowhum_watch::Sizes;
use snowhum_weather::{AirPaths, Climate, Ensemble, bend_through, generate, generate_air, season};
use uuid::Uuid;

const PATHS: usize = 96;
const SEED: u64 = 1;
const AUTUMN_DAYS: usize = 153;

/// First day of the autumn ensemble.
pub(crate) fn autumn_from(apiary: &Apiary) -> Date {
    jiff::civil::date(apiary.as_of.year(), 7, 1)
}

/// Winter, autumn and the day spring is reckoned from.
pub(crate) fn weather(apiary: &Apiary) -> (Ensemble, AirPaths, Date) {
    let place = yard::place(&apiary.site);
    let climate = Climate::at(place).unwrap();
    let zone = TimeZone::get(&apiary.site.zone).unwrap();
    let year = apiary.as_of.year() + 1;
    let spring = season::spring_of_climate(place, &climate, year, SEED).unwrap().unwrap().p50;
    let days = spring.duration_since(apiary.as_of).as_hours() as usize / 24;
    let winter = generate(place, &climate, &zone, apiary.as_of, 24 * days, PATHS, SEED).unwrap();
    let autumn = generate_air(place, &climate, &zone, autumn_from(apiary), 24 * AUTUMN_DAYS, PATHS, SEED).unwrap();
    (winter, autumn, spring)
}

/// The year of a site that a day belongs to, on so many paths.
pub(crate) fn site_year(apiary: &Apiary, as_of: Date, paths: usize, seed: u64) -> SiteYear {
    let (site, place) = (&apiary.site, yard::place(&apiary.site));
    let (from, zone) = (season_start(as_of, site.latitude), TimeZone::get(&site.zone).unwrap());
    let year = generate(place, &Climate::at(place).unwrap(), &zone, from, 24 * 366, paths, seed).unwrap();
    SiteYear::of(site, &year, from, &Triggers::shipped().unwrap())
}

/// The windows of it, without the colonies.
pub(crate) fn site_windows(apiary: &Apiary, as_of: Date, paths: usize, seed: u64) -> JobsAnswer {
    let (year, triggers) = (&site_year(apiary, as_of, paths, seed), &Triggers::shipped().unwrap());
    jobs(&JobsQuestion { apiary, year, as_of, colonies: None, triggers })
}

/// Where its colonies stand on a day.
pub(crate) fn asked(apiary: &Apiary, as_of: Date) -> NowAnswer {
    let parameters = snowhum_winter::Parameters::shipped().unwrap();
    let signs = snowhum_watch::Parameters::shipped().unwrap();
    let thresholds = Thresholds::shipped().unwrap();
    let (mut winter, autumn, spring) = weather(apiary);
    let read: Vec<_> = apiary.notes.iter().filter_map(|note| Some((note.at, note.conditions.air_k?))).collect();
    bend_through(&mut winter, yard::place(&apiary.site), apiary.as_of, &read);
    let question = NowQuestion {
        plan: PlanQuestion {
            apiary,
            winter: &winter,
            autumn: &autumn,
            autumn_from: autumn_from(apiary),
            as_of: as_of.saturating_add(1.days()),
            spring,
            parameters: &parameters,
            members: 64,
            seed: 1,
        },
        as_of,
        known_hours: 0,
        signs: &signs,
        thresholds: &thresholds,
        sizes: Sizes { alive: 300, dead: 120 },
        last: &[],
    };
    let ground = Ground::of(question);
    ground.now(&ground.watch())
}

/// Notes `line` at the colony of this name.
pub(crate) fn note(apiary: &mut Apiary, name: &str, on: Date, line: &str) {
    let colony = apiary.colonies.iter().find(|colony| colony.name == name).unwrap().id;
    let zone = TimeZone::get(&apiary.site.zone).unwrap();
    let number = 1 + apiary.notes.len() as u128;
    let entries = snowhum_apiary::split_entries(line).map(|entry| Entry::read(entry, &|_| None).unwrap()).collect();
    apiary.notes.push(Note {
        id: NoteId(Uuid::from_u128(number)),
        visit: VisitId(Uuid::from_u128(1_000 + on.day_of_year() as u128)),
        colony,
        at: on.at(11, 0, 0, 0).to_zoned_datetime(zone).unwrap().timestamp(),
        conditions: Conditions { air_k: Some(Kelvin::from_celsius(-8.0)), ..Conditions::default() },
        entries,
    });
}
