//! A winter told day by day: what was foretold in autumn, how it stood by what was noted, what may still come.
//!
//! Every figure is one of the plan or of the present. On days on which nobody looked a colony lies on the straight line
//! between two looks. How the hive does as an enclosure, and how tight the cluster sits, are of one run through the
//! weather as it came and may come.

use jiff::ToSpan;
use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_apiary::split_entries;
use snowhum_say::Message;
use snowhum_units::{Kelvin, Kilogram, Range};
use snowhum_winter::{Daily, Environment, HiveDaily, Trajectory, cluster_in};

use crate::ahead::run::{PlanQuestion, Run};
use crate::answer::OpenDates;
use crate::now::answer::{ColonyNow, Evidence, NowAnswer};
use crate::now::course::CourseDay;
use crate::now::{Ground, NowQuestion};
use crate::plan::answer::{ColonyPlan, PlanAnswer};
use crate::seasons::on_day;
use crate::statistics::rounded;

/// Name and number of the form; the number rises when a key changes.
pub const FILM_SCHEMA: &str = "snowhum.tell/1";

/// Chance of being alive under which a hive that was seen dead is dead (judgement).
const ALL_BUT_DEAD: f64 = 0.01;

/// What is asked, with the two answers that the film tells.
#[derive(Debug, Clone, Copy)]
pub struct FilmQuestion<'a> {
    /// The autumn's plan, from the day the colonies were counted.
    pub autumn: PlanQuestion<'a>,
    /// Its answer.
    pub plan: &'a PlanAnswer,
    /// The present.
    pub present: NowQuestion<'a>,
    /// Its answer.
    pub now: &'a NowAnswer,
}

/// A winter, day by day. It names no place.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct FilmAnswer {
    /// [`FILM_SCHEMA`].
    pub schema: String,
    /// Whether the yard is made up.
    pub invented: bool,
    /// The day the colonies were counted: the first of the film.
    pub from: Date,
    /// The day asked about: up to it stands what came, after it what may come.
    pub as_of: Date,
    /// First flow of the site plus 14 days.
    pub spring: Date,
    /// The weather of each day, the middle of its paths.
    pub weather: Vec<FilmWeather>,
    /// Every hive in walking order.
    pub hives: Vec<HiveFilm>,
}

/// A day outdoors.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct FilmWeather {
    /// Coldest hour.
    pub low_c: f64,
    /// Warmest hour.
    pub high_c: f64,
    /// Snow lying at noon.
    pub snow_cm: f64,
}

/// One hive's winter.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct HiveFilm {
    /// The keeper's name of the colony.
    pub name: String,
    /// Each day, as many as of the weather.
    pub days: Vec<HiveFilmDay>,
    /// What was noted, oldest first, but for free words.
    pub noted: Vec<FilmNote>,
    /// Chance of being alive in spring, as foretold in autumn.
    pub foretold_alive: f64,
    /// When food within reach runs out, as foretold in autumn.
    pub foretold_runs_out: OpenDates,
    /// How long food within reach lasts, as foretold in autumn, in words.
    pub foretold_food: Message,
    /// Chance of being alive on the day asked about.
    pub alive: f64,
    /// Chance of being alive, fed and queenright in spring, as it stands.
    pub alive_fed_queenright: f64,
    /// Whether the keeper has seen it dead.
    pub seen_dead: bool,
    /// What the verdict is about.
    pub about: Message,
    /// How the food that is left compares with what was foretold; none where either is not known.
    pub food: Option<FoodCame>,
}

/// A hive at the end of a day.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct HiveFilmDay {
    /// Chance of being alive.
    pub alive: f64,
    /// All food, kg, if alive.
    pub food_kg: Option<Range<f64>>,
    /// Of it within reach, middle of the range.
    pub reachable_kg: Option<f64>,
    /// All food as foretold in autumn, kg, if alive.
    pub foretold_kg: Option<Range<f64>>,
    /// Grown bees, if alive, middle of the range.
    pub bees: Option<f64>,
    /// Radius of the cluster as a sphere.
    pub radius_cm: Option<f64>,
    /// Its core, without brood.
    pub core_c: Option<f64>,
    /// Air round it.
    pub warm_zone_c: Option<f64>,
    /// Water caught by lid and walls, g a day: frost where they are below freezing.
    pub caught_g: f64,
    /// Share of the day with frost at the upper hole.
    pub frost_at_hole: f64,
}

impl HiveFilmDay {
    /// A day of a hive that was seen dead: from where hardly a living one is thought of it is dead.
    fn of_dead(self) -> Self {
        if self.alive >= ALL_BUT_DEAD {
            return self;
        }
        Self { alive: 0.0, food_kg: None, reachable_kg: None, bees: None, radius_cm: None, core_c: None, ..self }
    }
}

/// What was noted on a day.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct FilmNote {
    /// The day.
    pub on: Date,
    /// Its place among the days.
    pub day: usize,
    /// What was noted.
    pub note: String,
    /// What it moved.
    pub moved: Message,
}

/// Food on the day asked about, against the autumn's forecast.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct FoodCame {
    /// As foretold, kg.
    pub foretold_kg: Range<f64>,
    /// As it stands, kg, middle of the range.
    pub stands_kg: f64,
    /// How they compare.
    pub came: Came,
}

/// What came against a range that held in eight of ten winters.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Came {
    /// Under the range.
    Less,
    /// Within it.
    AsForetold,
    /// Over it.
    More,
}

impl Came {
    /// Where a figure lies against a range.
    #[must_use]
    pub fn of(figure: f64, foretold: Range<f64>) -> Self {
        match figure {
            figure if figure < foretold.p10 => Self::Less,
            figure if figure > foretold.p90 => Self::More,
            _ => Self::AsForetold,
        }
    }
}

impl FilmAnswer {
    /// The place of the day asked about among the days.
    #[must_use]
    pub fn today(&self) -> usize {
        let days = self.as_of.duration_since(self.from).as_hours() / 24;
        usize::try_from(days).unwrap_or(0).min(self.weather.len().saturating_sub(1))
    }

    /// The date of a day of the film.
    #[must_use]
    pub fn date(&self, day: usize) -> Date {
        self.from.saturating_add((day as i64).days())
    }

    /// The film of one hive alone; `None` where there is no such place.
    #[must_use]
    pub fn of_hive(mut self, at: usize) -> Option<Self> {
        if at >= self.hives.len() {
            return None;
        }
        let one = self.hives.swap_remove(at);
        Some(Self { hives: vec![one], ..self })
    }
}

/// The winter of a yard, told.
#[must_use]
pub fn film(question: &FilmQuestion<'_>) -> FilmAnswer {
    let FilmQuestion { autumn, plan, now, .. } = question;
    let from = autumn.apiary.as_of;
    let foretold = Run::of(autumn);
    let through = PlanQuestion { as_of: from, ..question.present.plan };
    let through = Run::of(&through);
    let ground = Ground::of(question.present);
    let courses = ground.courses(&ground.watch());
    let days = foretold.days().min(through.days()).min(courses.iter().map(Vec::len).min().unwrap_or(0));
    let hive = |(at, course): (usize, &Vec<CourseDay>)| {
        let (colony, planned) = (now.colonies.get(at)?, plan.colonies.get(at)?);
        let runs = Runs { foretold: foretold.trajectories.get(at)?, through: &through, at };
        Some(hive_film(colony, planned, (0..days).map(|day| runs.day(course, day)).collect(), (from, now.as_of)))
    };
    FilmAnswer {
        schema: FILM_SCHEMA.to_owned(),
        invented: now.invented,
        from,
        as_of: now.as_of,
        spring: plan.spring,
        weather: (0..days).map(|day| weather(through.ahead.weather().0, day)).collect(),
        hives: courses.iter().enumerate().filter_map(hive).collect(),
    }
}

fn hive_film(
    colony: &ColonyNow,
    planned: &ColonyPlan,
    days: Vec<HiveFilmDay>,
    (from, as_of): (Date, Date),
) -> HiveFilm {
    let since = |on: Date| usize::try_from(on.duration_since(from).as_hours() / 24).unwrap_or(0);
    let note = |evidence: &Evidence| {
        let note: Vec<&str> = split_entries(&evidence.note).filter(|entry| !entry.starts_with("words=")).collect();
        (!note.is_empty()).then(|| FilmNote {
            on: evidence.on,
            day: since(evidence.on),
            note: note.join("; "),
            moved: evidence.moved.clone(),
        })
    };
    let foretold = days.get(since(as_of)).and_then(|day| day.foretold_kg);
    let stands = colony.stores_kg.total.filter(|_| !colony.is_gone());
    let days = if colony.seen_dead { days.into_iter().map(HiveFilmDay::of_dead).collect() } else { days };
    HiveFilm {
        name: colony.name.clone(),
        noted: colony.evidence.iter().rev().filter_map(note).collect(),
        days,
        foretold_alive: planned.alive_in_spring,
        foretold_runs_out: planned.runs_out,
        foretold_food: planned.food_lasts(),
        alive: colony.alive,
        alive_fed_queenright: colony.alive_fed_queenright,
        seen_dead: colony.seen_dead,
        about: colony.about.clone(),
        food: foretold.zip(stands).map(|(foretold_kg, stands)| FoodCame {
            foretold_kg,
            stands_kg: stands.p50,
            came: Came::of(stands.p50, foretold_kg),
        }),
    }
}

/// The runs that a hive's days are read from.
struct Runs<'a> {
    foretold: &'a Trajectory,
    through: &'a Run<'a>,
    at: usize,
}

impl Runs<'_> {
    fn day(&self, course: &[CourseDay], day: usize) -> HiveFilmDay {
        let stands = &course[day];
        let hive = |what| self.through.trajectories[self.at].hive(what, [day]);
        let kg = |range: Option<Range<f64>>| range.map(|range| range.map(|kilograms| rounded(kilograms, 1)));
        let bees = stands.bees.map(|bees| bees.p50).filter(|bees| *bees >= 1.0);
        let warm = hive(HiveDaily::Warm);
        let cluster = bees.zip(warm).map(|(bees, warm)| {
            let parameters = self.through.question.parameters;
            cluster_in(
                parameters,
                Kilogram::new(bees * parameters.bee_mass.value),
                Kelvin::from_celsius(warm),
                self.noon(day),
            )
        });
        let grams = |what| hive(what).unwrap_or(0.0);
        HiveFilmDay {
            alive: rounded(stands.alive, 3),
            food_kg: kg(stands.stores_kg),
            reachable_kg: stands.reachable_kg.map(|range| rounded(range.p50, 1)),
            foretold_kg: kg(on_day(self.foretold, Daily::Stores, day)),
            bees: bees.map(|bees| rounded(bees / 100.0, 0) * 100.0),
            radius_cm: cluster.map(|cluster| rounded(cluster.radius.get() * 100.0, 1)),
            core_c: cluster.map(|cluster| rounded(cluster.core.celsius(), 0)),
            warm_zone_c: warm.map(|celsius| rounded(celsius, 1)),
            caught_g: rounded(grams(HiveDaily::Lid) + grams(HiveDaily::Walls), 1),
            frost_at_hole: rounded(grams(HiveDaily::Frost), 2),
        }
    }

    /// Outdoor air at a day's noon, the middle of the paths.
    fn noon(&self, day: usize) -> Kelvin {
        let environment = self.through.ahead.weather().0;
        Kelvin::new(middle((0..environment.paths()).map(|path| environment.air(24 * day + 12, path).get())))
    }
}

fn weather(environment: &Environment, day: usize) -> FilmWeather {
    let paths = || 0..environment.paths();
    let extreme = |path: usize, pick: fn(f64, f64) -> f64| {
        let hours = 24 * day..24 * (day + 1);
        hours.map(|hour| environment.air(hour, path).celsius()).reduce(pick).unwrap_or(f64::NAN)
    };
    let snow = paths().filter_map(|path| environment.outside(24 * day + 12, path)).map(|outside| outside.snow.get());
    FilmWeather {
        low_c: rounded(middle(paths().map(|path| extreme(path, f64::min))), 0),
        high_c: rounded(middle(paths().map(|path| extreme(path, f64::max))), 0),
        snow_cm: rounded(middle(snow) * 100.0, 0),
    }
}

fn middle(values: impl Iterator<Item = f64>) -> f64 {
    let mut sorted: Vec<f64> = values.collect();
    sorted.sort_by(f64::total_cmp);
    sorted.get(sorted.len() / 2).copied().unwrap_or(0.0)
}
