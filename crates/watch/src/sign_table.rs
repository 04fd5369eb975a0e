//! What each sign would say of a hive at one hour, as a small table: what a phone multiplies out of reach, and what tells
//! which look is worth a walk.

use snowhum_apiary::Sign;
use snowhum_units::Same;

use crate::law::Law;
use crate::signs::{self, Hour, KINDS, hangs_on_the_hour};
use crate::{Conditions, Estimate, Parameters, Scene, View};

/// Groups of particles that show much the same: the living, and the dead.
const LIVING: usize = 32;
const DEAD: usize = 12;
/// Chances below this are not told apart when particles are grouped.
const FAINT: f64 = 1e-4;

/// A sign that may be seen, and whether what it says hangs on the hour.
#[derive(Debug, Clone, PartialEq)]
pub struct Column {
    /// The sign.
    pub sign: Sign,
    /// Whether it hangs on the hour: then it has a chance in each of [`KINDS`] kinds.
    pub hangs: bool,
}

/// Particles that show much the same.
#[derive(Debug, Clone, PartialEq)]
pub struct Group {
    /// Whether they live.
    pub alive: bool,
    /// Their share of all.
    pub mass: f64,
    /// Chance of each column's sign: on a quiet day, then on a lively one; where it hangs on the hour, in each kind of it.
    pub chances: Vec<f64>,
}

/// The table of one hive at one hour.
#[derive(Debug, Clone, PartialEq)]
pub struct SignTable {
    /// Hour of the run.
    pub hour: usize,
    /// Outdoor air that it is reckoned for, °C.
    pub air_c: f64,
    /// Chance that the colony sits tight.
    pub quiet: f64,
    /// Chance of each kind of hour.
    pub hours: [f64; KINDS],
    /// Signs.
    pub columns: Vec<Column>,
    /// Groups.
    pub groups: Vec<Group>,
}

/// One particle on its way into a group.
struct Row {
    mass: f64,
    chances: Vec<f64>,
    /// Logarithms that groups are told apart by.
    shows: Vec<f64>,
}

impl Estimate {
    /// Doubt about life now, in bits: no look can take away more.
    #[must_use]
    pub fn doubt(&self) -> f64 {
        doubt(self.strata.alive_share())
    }

    /// What each of these signs would say at this hour; signs without a law are left out. Every `nth` particle is asked.
    #[must_use]
    pub fn sign_table(&self, scene: &Scene<'_>, day: &Conditions, asked: &[Sign], nth: usize) -> SignTable {
        let p = scene.parameters;
        let has_law = |sign: &&Sign| signs::answer(sign).is_some();
        let column = |sign: &Sign| Column { sign: sign.clone(), hangs: hangs_on_the_hour(sign) };
        let columns: Vec<Column> = asked.iter().filter(has_law).map(column).collect();
        let (mut living, mut dead) = (Vec::new(), Vec::new());
        let (mut alive_mass, mut dead_mass) = (0.0, 0.0);
        // Of the living two views follow one another: with a queen and without.
        let (mut of_living, mut of_dead) = (0, 0);
        for (view, mass) in self.views() {
            let (all, rows, place) = match view.life.is_alive() {
                true => (&mut alive_mass, &mut living, &mut of_living),
                false => (&mut dead_mass, &mut dead, &mut of_dead),
            };
            let turn = if view.life.is_alive() { *place / 2 } else { *place };
            *place += 1;
            *all += mass;
            if mass > 0.0 && turn % nth == 0 {
                rows.push(Row::of(&view, mass, day, &columns, p));
            }
        }
        let mut groups = grouped(living, LIVING, alive_mass, true);
        groups.extend(grouped(dead, DEAD, dead_mass, false));
        let hours: Vec<f64> = Hour::all().map(|hour| hour.chance(p)).collect();
        SignTable {
            hour: self.hour(),
            air_c: day.air_c,
            quiet: signs::quiet_chance(day, p),
            hours: std::array::from_fn(|kind| hours[kind]),
            columns,
            groups,
        }
    }
}

impl Row {
    fn of(view: &View, mass: f64, day: &Conditions, columns: &[Column], p: &Parameters) -> Self {
        let mut chances = Vec::with_capacity(4 * columns.len());
        let mut shows = Vec::with_capacity(columns.len());
        // Answers to one question go by one law, which costs more than they do.
        for alike in columns.chunk_by(|one, other| signs::answer_alike(&one.sign, &other.sign)) {
            let laws = alike.first().map_or_else(Vec::new, |first| signs::laws(&first.sign, view, day, p));
            for column in alike {
                let answer = signs::answer(&column.sign);
                let chance =
                    |law: &Option<Law>| law.as_ref().zip(answer.as_ref()).map_or(1.0, |(l, a)| l.probability(a));
                chances.extend(laws.iter().map(chance));
                shows.push(chances.last().copied().unwrap_or(1.0).max(FAINT).same_ln());
            }
        }
        Self { mass, chances, shows }
    }
}

/// Puts particles that show much the same together: the group that differs most within itself is halved, again and again.
fn grouped(rows: Vec<Row>, most: usize, all: f64, alive: bool) -> Vec<Group> {
    let mut groups: Vec<(Vec<Row>, (f64, usize))> = Vec::new();
    if !rows.is_empty() {
        let widest = widest(&rows);
        groups.push((rows, widest));
    }
    while groups.len() < most {
        let spread = |(_, (_, (spread, _))): &(usize, &(Vec<Row>, (f64, usize)))| *spread;
        let found = groups.iter().enumerate().max_by(|a, b| spread(a).total_cmp(&spread(b)));
        let Some((at, _)) = found.filter(|one| spread(one) > 1e-9) else { break };
        let (mut rows, (_, by)) = groups.swap_remove(at);
        rows.sort_by(|a, b| a.shows[by].total_cmp(&b.shows[by]));
        let mean = rows.iter().map(|row| row.mass * row.shows[by]).sum::<f64>() / mass(&rows);
        let split = rows.iter().position(|row| row.shows[by] > mean).unwrap_or(rows.len() / 2).clamp(1, rows.len() - 1);
        let upper = rows.split_off(split);
        for half in [rows, upper] {
            let widest = widest(&half);
            groups.push((half, widest));
        }
    }
    let drawn: f64 = groups.iter().map(|(rows, _)| mass(rows)).sum();
    groups.iter().map(|(rows, _)| Group { alive, mass: mass(rows) / drawn * all, chances: means(rows) }).collect()
}

fn mass(rows: &[Row]) -> f64 {
    rows.iter().map(|row| row.mass).sum()
}

/// By how much a group differs within itself, weighed by its mass, and by which sign.
fn widest(rows: &[Row]) -> (f64, usize) {
    let (all, columns) = (mass(rows), rows.first().map_or(0, |row| row.shows.len()));
    let spread = |by: usize| {
        let mean = rows.iter().map(|row| row.mass * row.shows[by]).sum::<f64>() / all;
        rows.iter().map(|row| row.mass * (row.shows[by] - mean).powi(2)).sum::<f64>()
    };
    if rows.len() < 2 {
        return (0.0, 0);
    }
    (0..columns).map(|by| (spread(by), by)).max_by(|a, b| a.0.total_cmp(&b.0)).unwrap_or((0.0, 0))
}

fn means(rows: &[Row]) -> Vec<f64> {
    let all = mass(rows);
    let columns = rows.first().map_or(0, |row| row.chances.len());
    let mean = |at: usize| rows.iter().map(|row| row.mass * row.chances[at]).sum::<f64>() / all;
    (0..columns).map(mean).collect()
}

/// Chance of what was seen and of life together, and of what was seen, in each kind of hour.
type Told = [(f64, f64); KINDS];

impl SignTable {
    /// Chance of life before anything is seen.
    #[must_use]
    pub fn prior(&self) -> f64 {
        self.alive(&[], &[])
    }

    /// Chance of life after signs were seen together, given by their columns, and after what hives of the same hour showed.
    #[must_use]
    pub fn alive(&self, seen: &[usize], beside: &[Told]) -> f64 {
        let told = self.told(seen);
        let (mut alive, mut all) = (0.0, 0.0);
        for kind in 0..KINDS {
            let hour = beside.iter().fold(self.hours[kind], |hour, told| hour * told[kind].1);
            alive += hour * told[kind].0;
            all += hour * told[kind].1;
        }
        alive / all.max(1e-300)
    }

    /// What signs seen together say in each kind of hour.
    #[must_use]
    pub fn told(&self, seen: &[usize]) -> Told {
        let starts = self.starts();
        let mut told = [(0.0, 0.0); KINDS];
        for group in &self.groups {
            for (kind, told) in told.iter_mut().enumerate() {
                let under = |today: usize| {
                    let chance = |column: &usize| {
                        let at = match self.columns[*column].hangs {
                            true => starts[*column] + today * KINDS + kind,
                            false => starts[*column] + today,
                        };
                        group.chances[at]
                    };
                    seen.iter().map(chance).product::<f64>()
                };
                let both = group.mass * (self.quiet * under(0) + (1.0 - self.quiet) * under(1));
                told.1 += both;
                if group.alive {
                    told.0 += both;
                }
            }
        }
        told
    }

    /// Where each column begins among a group's chances.
    fn starts(&self) -> Vec<usize> {
        let mut at = 0;
        let start = |column: &Column| {
            let start = at;
            at += if column.hangs { 2 * KINDS } else { 2 };
            start
        };
        self.columns.iter().map(start).collect()
    }

    /// What a question with these answers would tell of life, in bits: doubt now less doubt after, in the mean.
    #[must_use]
    pub fn information(&self, answers: &[usize]) -> f64 {
        let over_hours = |column: usize| {
            let told = self.told(&[column]);
            (0..KINDS).fold((0.0, 0.0), |(alive, all), kind| {
                let (one, other) = told[kind];
                (alive + self.hours[kind] * one, all + self.hours[kind] * other)
            })
        };
        let told: Vec<(f64, f64)> = answers.iter().map(|column| over_hours(*column)).collect();
        let all: f64 = told.iter().map(|(_, all)| all).sum();
        let (mut after, mut alive) = (0.0, 0.0);
        for (one, other) in told.iter().filter(|(_, other)| *other > 0.0) {
            after += other / all * doubt(one / other);
            alive += one / all;
        }
        (doubt(alive) - after).max(0.0)
    }
}

/// Doubt in bits.
fn doubt(chance: f64) -> f64 {
    let part = |p: f64| if p > 0.0 { -p * p.same_ln() / std::f64::consts::LN_2 } else { 0.0 };
    part(chance) + part(1.0 - chance)
}
