//! Chains of stores: use of food by chance, death of hunger and of other things, weighings and signs.

use snowhum_watch::strata::{Loss, Strata};

use crate::{Luck, MANY, assert_evidence, exact, log_normal, mean, spread, within};

const LIVING: usize = 1000;
const DEAD: usize = 300;
const BIRTHS: usize = 100;
const MOST: usize = 60;

#[derive(Debug, Clone, Copy)]
enum Reading {
    Sign(bool),
    Heft(f64, f64),
}
use Reading::{Heft, Sign};

type Visits = &'static [(usize, Reading)];
const WATCH: Visits = &[
    (3, Sign(true)),
    (5, Heft(30.0, 4.0)),
    (8, Sign(false)),
    (9, Heft(24.0, 4.0)),
    (12, Sign(true)),
    (15, Heft(10.0, 4.0)),
    (16, Sign(false)),
];
const SILENT: Visits = &[
    (8, Sign(false)),
    (9, Sign(false)),
    (10, Sign(false)),
    (11, Sign(false)),
    (12, Sign(false)),
    (13, Sign(false)),
    (14, Sign(false)),
    (15, Sign(false)),
];
const HEAVY: Visits = &[
    (3, Sign(true)),
    (6, Heft(29.0, 2.0)),
    (8, Sign(false)),
    (10, Heft(28.0, 2.0)),
    (12, Sign(false)),
    (14, Heft(29.0, 2.0)),
    (16, Sign(false)),
];

/// What a dead hive weighs, and when an empty one counts as dead.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Rule {
    /// It keeps what it died with, and is dead as soon as it is empty.
    Keeps,
    /// Anything from 0 to 60 units; an empty hive dies in the week after.
    Anything,
}

/// A filter over such a chain, right or with a fault put in.
#[derive(Debug, Clone, Copy)]
struct Filter {
    rule: Rule,
    visits: Visits,
    /// How often each sign is counted; once is right.
    counted: f64,
}

/// What a run says in the end.
struct Said {
    log_evidence: f64,
    alive: f64,
    units_alive: f64,
    units_dead: f64,
    strata: Strata<Vec<usize>, usize>,
}

fn use_of(u: f64) -> usize {
    if u < 0.3 {
        1
    } else if u < 0.8 {
        2
    } else {
        3
    }
}

fn start(luck: Luck) -> Strata<Vec<usize>, usize> {
    let shares: Vec<f64> = (1..=MOST).map(|s| (-0.5 * ((s as f64 - 40.0) / 6.0).powi(2)).exp()).collect();
    let all: f64 = shares.iter().sum();
    let draw = |m: usize| {
        let mut left = luck.uniform(m, 0, 1) * all;
        shares
            .iter()
            .position(|share| {
                left -= share;
                left < 0.0
            })
            .map_or(MOST, |place| place + 1)
    };
    Strata::new((0..LIVING).map(draw).collect(), LIVING)
}

impl Filter {
    fn week(self, strata: &mut Strata<Vec<usize>, usize>, luck: Luck, t: usize) {
        let mut losses = Vec::new();
        for (m, (units, mass)) in strata.alive.iter_mut().zip(&mut strata.alive_mass).enumerate() {
            let background = if *units == 0 { *mass } else { 0.01 * *mass };
            losses.push(Loss { mass: background, remains: *units });
            *mass -= background;
            *units = units.saturating_sub(use_of(luck.uniform(m, t, 1)));
            if *units == 0 && self.rule == Rule::Keeps {
                losses.push(Loss { mass: *mass, remains: 0 });
                *mass = 0.0;
            }
        }
        strata.bury(losses, BIRTHS, luck.uniform(0, t, 3));
        strata.thin(DEAD, luck.uniform(0, t, 4));
    }

    fn log_of_dead(self, reading: Reading, units: usize) -> f64 {
        match (reading, self.rule) {
            (Sign(seen), _) => self.counted * if seen { 0.05_f64 } else { 0.95 }.ln(),
            (Heft(read, sd), Rule::Keeps) => log_normal(read, units as f64, sd),
            (Heft(read, sd), Rule::Anything) => {
                let all: f64 = (0..=MOST).map(|s| log_normal(read, s as f64, sd).exp()).sum();
                (all / (MOST + 1) as f64).ln()
            }
        }
    }

    fn log_of_living(self, reading: Reading, units: usize) -> f64 {
        match reading {
            Sign(seen) => self.counted * if seen { 0.6_f64 } else { 0.4 }.ln(),
            Heft(read, sd) => log_normal(read, units as f64, sd),
        }
    }

    fn run(self, seed: u64) -> Said {
        let luck = Luck::of(seed);
        let mut strata = start(luck);
        let mut log_evidence = 0.0;
        for t in 0..17 {
            if t > 0 {
                self.week(&mut strata, luck, t);
            }
            if let Some((_, reading)) = self.visits.iter().find(|(week, _)| *week == t) {
                let alive: Vec<f64> = strata.alive.iter().map(|units| self.log_of_living(*reading, *units)).collect();
                let dead: Vec<f64> = strata.dead.iter().map(|(units, _)| self.log_of_dead(*reading, *units)).collect();
                log_evidence += strata.weigh(&alive, &dead).log_evidence;
            }
            assert!(strata.alive_share() > 0.0, "seed {seed} lost the living in week {t}");
            strata.renew(luck.uniform(0, t, 2));
        }
        said(strata, log_evidence)
    }
}

fn said(strata: Strata<Vec<usize>, usize>, log_evidence: f64) -> Said {
    let fed = || strata.alive.iter().zip(&strata.alive_mass).filter(|(units, _)| **units > 0);
    let alive: f64 = fed().map(|(_, mass)| mass).sum();
    let units_alive = fed().map(|(units, mass)| *units as f64 * mass).sum::<f64>() / alive;
    let dead: f64 = strata.dead.iter().map(|(_, mass)| mass).sum();
    let units_dead = strata.dead.iter().map(|(units, mass)| *units as f64 * mass).sum::<f64>() / dead;
    Said { log_evidence, alive, units_alive, units_dead, strata }
}

fn runs(filter: Filter, seeds: u64) -> Vec<Said> {
    (0..seeds).map(|seed| filter.run(seed)).collect()
}

fn each(runs: &[Said], what: impl Fn(&Said) -> f64) -> Vec<f64> {
    runs.iter().map(what).collect()
}

fn check(case: &str, visits: Visits) {
    let runs = runs(Filter { rule: Rule::Keeps, visits, counted: 1.0 }, 200);
    assert_evidence(case, &each(&runs[..64], |said| said.log_evidence));
    assert!(within(case, "alive", &each(&runs, |said| said.alive)));
    assert!(within(case, "units_alive", &each(&runs, |said| said.units_alive)));
    assert!(within(case, "units_dead", &each(&runs, |said| said.units_dead)));
}

#[test]
fn a_watched_hive_is_followed_as_exactly_as_chance_allows() {
    check("watch", WATCH);
}

#[test]
fn eight_silent_visits_are_followed_as_exactly_as_chance_allows() {
    check("silent8", SILENT);
}

#[test]
fn a_hive_dead_but_heavy_is_followed_and_never_loses_its_living() {
    check("dead_but_heavy", HEAVY);
}

#[test]
fn a_filter_that_counts_signs_twice_is_found_out() {
    let wrong = runs(Filter { rule: Rule::Keeps, visits: WATCH, counted: 2.0 }, 200);
    assert!(!within("watch", "alive", &each(&wrong, |said| said.alive)));
    let wrong = runs(Filter { rule: Rule::Keeps, visits: SILENT, counted: 2.0 }, 200);
    assert!(!within("silent8", "alive", &each(&wrong, |said| said.alive)));
}

#[test]
fn stores_and_the_day_they_run_out_are_followed_where_death_forgets() {
    let filter = Filter { rule: Rule::Anything, visits: WATCH, counted: 1.0 };
    let runs = runs(filter, 64);
    assert_evidence("stores62", &each(&runs, |said| said.log_evidence));
    assert!(within("stores62", "alive", &each(&runs, |said| said.alive)));
    assert!(within("stores62", "units_alive", &each(&runs, |said| said.units_alive)));
    for weeks in [2, 4, 6, 8, 10] {
        let outs: Vec<f64> =
            runs.iter().enumerate().map(|(k, said)| out_within(said, weeks, Luck::of(k as u64))).collect();
        let known = exact("stores62", &format!("out_within_{weeks}")).value;
        let (off, sd) = (mean(&outs) - known, spread(&outs));
        assert!(sd < 0.04, "{weeks} weeks: scatters {sd}");
        assert!(off.abs() < MANY * sd / (outs.len() as f64).sqrt(), "{weeks} weeks: off by {off}, sd {sd}");
    }
}

/// Share of the living and fed whose food is gone within so many weeks, nothing else ending them.
fn out_within(said: &Said, weeks: usize, luck: Luck) -> f64 {
    let (mut all, mut out) = (0.0, 0.0);
    for (m, (units, mass)) in said.strata.alive.iter().zip(&said.strata.alive_mass).enumerate() {
        if *units == 0 {
            continue;
        }
        let used: usize = (0..weeks).map(|w| use_of(luck.uniform(m, 100 + w, 1))).sum();
        all += mass;
        out += if used >= *units { *mass } else { 0.0 };
    }
    out / all
}
