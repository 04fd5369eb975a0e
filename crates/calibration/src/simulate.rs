//! The shipped engine on a study's yards, once for each row of joint draws.

use jiff::ToSpan;
use jiff::tz::TimeZone;
use rayon::prelude::*;
use snowhum_advice::yard;
use snowhum_apiary::{Colony, Mites, Site};
use snowhum_testkit::{Dress, colony, langstroth};
use snowhum_units::{Degree, Kelvin, Kilogram, Metre, Range};
use snowhum_weather::{Climate, Ensemble, generate};
use snowhum_winter::{
    Cause, Daily, Environment, Housed, JointDraw, JointDraws, Parameters, Record, Schedule, Settings, Trajectory, Yard,
    run,
};

use crate::CalibrationError;
use crate::study::{Kind, Row, Study, YardKind};

/// Cells of brood that a keeper or a scale sees, and that count as brood at all.
const SEEN_BROOD: f32 = 200.0;
const SOME_BROOD: f32 = 100.0;
/// Weather paths of a study.
const PATHS: usize = 96;
/// Rows that are run together, to hold little at a time.
const TOGETHER: usize = 125;

/// What each row of a study comes to under each row of joint draws.
pub struct Computed {
    /// By row of the study, then by row of draws.
    pub by_row: Vec<Vec<f64>>,
}

/// A study ready to run.
pub struct Winter<'a> {
    study: &'a Study,
    environment: Environment,
}

impl<'a> Winter<'a> {
    /// Makes the weather of a study's place.
    ///
    /// # Errors
    /// Where no weather can be made.
    pub fn of(study: &'a Study, seed: u64) -> Result<Self, CalibrationError> {
        let site = site(study);
        let place = yard::place(&site);
        let climate = Climate::at(place).map_err(|_| CalibrationError::Climate(study.id.clone()))?;
        let mut weather = generate(place, &climate, &TimeZone::UTC, study.first_day(), 24 * study.days, PATHS, seed)
            .map_err(|fault| CalibrationError::Weather { study: study.id.clone(), fault })?;
        warm(&mut weather, study);
        Ok(Self { study, environment: yard::environment(&site, &weather, study.first_day()) })
    }

    /// Runs `replicates` colonies for each row of draws.
    #[must_use]
    pub fn run(&self, parameters: &Parameters, rows: &[JointRow], replicates: usize, seed: u64) -> Computed {
        let parts: Vec<Vec<Vec<f64>>> =
            rows.chunks(TOGETHER).map(|rows| self.part(parameters, rows, replicates, seed)).collect();
        let by_row = (0..self.study.rows.len()).map(|row| parts.iter().flat_map(|part| part[row].clone()).collect());
        Computed { by_row: by_row.collect() }
    }

    fn part(&self, parameters: &Parameters, rows: &[JointRow], replicates: usize, seed: u64) -> Vec<Vec<f64>> {
        let yards: Vec<Members> = self
            .study
            .yards
            .iter()
            .map(|kind| Members::run(&self.environment, parameters, (self.study, kind), rows, replicates, seed))
            .collect();
        let figure = |row: &Row, draw: usize| self.figure(row, &yards, draw);
        self.study
            .rows
            .iter()
            .map(|row| (0..rows.len()).into_par_iter().map(|draw| figure(row, draw)).collect())
            .collect()
    }

    /// A row's figure under one row of draws: its mean over colonies, each kind by its share.
    fn figure(&self, row: &Row, yards: &[Members], draw: usize) -> f64 {
        let (mut sum, mut weight) = (0.0, 0.0);
        for (at, (kind, yard)) in self.study.yards.iter().zip(yards).enumerate() {
            if row.yard.is_some_and(|own| own != at) {
                continue;
            }
            for member in yard.of(draw).filter(|member| yard.is_in(row, *member)) {
                let Some((value, counts)) = yard.value(row, member) else { continue };
                sum += kind.share * counts * value;
                weight += kind.share * counts;
            }
        }
        if weight > 0.0 { sum / weight } else { f64::NAN }
    }
}

/// A row of joint draws: standard deviates in the order of [`JointDraw::NAMES`].
pub type JointRow = Vec<f64>;

/// The colonies of one kind, each under its row of draws.
struct Members {
    trajectory: Trajectory,
    rows: usize,
    first: usize,
}

impl Members {
    fn run(
        environment: &Environment,
        parameters: &Parameters,
        (study, kind): (&Study, &YardKind),
        rows: &[JointRow],
        replicates: usize,
        seed: u64,
    ) -> Self {
        let mut parameters = parameters.clone();
        // Years and yards are told by the rows themselves.
        parameters.background_by_year.fix(0.0);
        parameters.background_by_yard.fix(0.0);
        let mites = &mut parameters.uncounted_mites;
        let [low, value, high] = kind.mites.map(|mites| mites.max(1e-6));
        (mites.low, mites.value, mites.high) = (Some(low), value, Some(high));
        if study.winter_bees_alone {
            parameters.laying_peak.fix(0.0);
            parameters.summer_bee_share.fix(0.0);
        }
        let names = JointDraw::NAMES.iter().map(|name| (*name).to_owned()).collect();
        parameters.joint = JointDraws { names, rows: rows.to_vec(), ..JointDraws::default() };
        let first = parameters.joint.first(seed);
        let colonies =
            [Housed { colony: colony_of(kind), hive: langstroth(dress(study)), neighbour: None, stays: Vec::new() }];
        let yard = Yard { environment, parameters: &parameters, colonies: &colonies };
        let settings = Settings { members: rows.len() * replicates, seed, record: Record::Days };
        Self { trajectory: run(&yard, &Schedule::default(), settings).swap_remove(0), rows: rows.len(), first }
    }

    /// The members under a row of draws.
    fn of(&self, draw: usize) -> impl Iterator<Item = usize> + '_ {
        let lead = (draw + self.rows - self.first % self.rows) % self.rows;
        (lead..self.trajectory.members()).step_by(self.rows)
    }

    fn day(&self, what: Daily, day: usize, member: usize) -> f64 {
        self.trajectory.of_member(what, day, member).map_or(f64::NAN, f64::from)
    }

    fn is_in(&self, row: &Row, member: usize) -> bool {
        let within =
            |range: Option<[f64; 2]>, value: f64| range.is_none_or(|[from, below]| from <= value && value < below);
        within(row.bees, self.day(Daily::Bees, 0, member)) && within(row.food_kg, self.day(Daily::Stores, 0, member))
    }

    /// A member's figure and how much it counts: colonies that are gone are not weighed or looked into.
    fn value(&self, row: &Row, member: usize) -> Option<(f64, f64)> {
        let [from, to] = row.days.unwrap_or([0, self.trajectory.days()]);
        let end = &self.trajectory.ends[member];
        let sum = |what: Daily| (from..to).map(|day| self.day(what, day, member)).sum::<f64>();
        let living = 1.0 - self.day(Daily::Lost, to - 1, member);
        Some(match row.kind {
            Kind::Loss => (1.0 - end.queenright, 1.0),
            Kind::Queen => (end.queenless + ended(end, Cause::QueenFailed), 1.0),
            Kind::BeesLeft => (self.day(Daily::Bees, to - 1, member) / self.day(Daily::Bees, from, member), living),
            Kind::Food => (1e3 * sum(Daily::Eaten) / (to - from) as f64, living),
            Kind::FoodABee => (1e6 * sum(Daily::Eaten) / sum(Daily::Bees), living),
            Kind::Brood => (f64::from(u8::from(self.day(Daily::Brood, from, member) >= f64::from(SOME_BROOD))), living),
            Kind::BroodBegins => (self.brood_begins(member), living),
            Kind::HalfDead => (self.half_dead(member), 1.0),
        })
    }

    /// Days from 20 September, at which all are taken to live, until half are dead.
    fn half_dead(&self, member: usize) -> f64 {
        /// Days from 20 September to 1 October.
        const BEFORE: f64 = 11.0;
        let half = 0.5 * self.day(Daily::Bees, 0, member);
        let days = self.trajectory.days();
        (0..days).find(|day| self.day(Daily::Bees, *day, member) < half).unwrap_or(days) as f64 + BEFORE
    }

    /// Day of the year from which there is seen brood, at or after the first of December: the day after the last without.
    fn brood_begins(&self, member: usize) -> f64 {
        /// Days from 1 October to 1 January.
        const TO_JANUARY: f64 = 92.0;
        let without = |day: &usize| self.day(Daily::Brood, *day, member) < f64::from(SEEN_BROOD);
        let last = (61..self.trajectory.days()).rev().find(without).unwrap_or(60);
        last as f64 + 2.0 - TO_JANUARY
    }
}

/// Brings the months to what they were.
fn warm(weather: &mut Ensemble, study: &Study) {
    let warmer = |hour: usize| {
        let day = study.first_day().saturating_add((hour as i64 / 24).days());
        study.warmer.get((day.month() as usize + 2) % 12).copied().unwrap_or(0.0)
    };
    let by_hour: Vec<f64> = (0..weather.hours()).map(warmer).collect();
    for path in &mut weather.paths {
        for (air, warmer) in path.temperature.iter_mut().zip(&by_hour) {
            *air = Kelvin::new(air.get() + warmer);
        }
    }
}

fn ended(end: &snowhum_winter::MemberEnd, by: Cause) -> f64 {
    end.ended.by_cause().iter().filter(|(cause, _)| *cause == by).map(|(_, chance)| chance).sum()
}

fn dress(study: &Study) -> Dress {
    let hive = study.hive;
    Dress { boxes: hive.boxes, lid_foam_mm: hive.lid_foam_mm, wall_foam_mm: hive.wall_foam_mm, hole_cm2: hive.hole_cm2 }
}

fn colony_of(kind: &YardKind) -> Colony {
    let range = |[p10, p50, p90]: [f64; 3]| Range { p10, p50, p90 };
    let mut colony = colony(kind.bees[1], kind.food_kg[1]);
    colony.bees = range(kind.bees);
    colony.stores.total = range(kind.food_kg).map(Kilogram::new);
    colony.frames_of_bees = kind.bees[1] / 2_000.0;
    colony.mites = Mites::NotCounted;
    colony.sealed_brood = Some(range([100.0, 1_200.0, 4_000.0]));
    colony
}

fn site(study: &Study) -> Site {
    let [latitude, longitude, elevation] = study.place;
    Site {
        latitude: Degree::new(latitude),
        longitude: Degree::new(longitude),
        elevation: Metre::new(elevation),
        zone: "UTC".to_owned(),
        shelter: snowhum_apiary::Shelter::Windbreak,
        exposure: snowhum_apiary::Exposure::Sunny,
        first_flow: None,
    }
}
