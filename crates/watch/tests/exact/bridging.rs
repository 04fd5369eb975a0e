//! A reading far sharper than what is known, against the conjugate answer.

use snowhum_watch::strata::Strata;
use snowhum_watch::tempering::{Bridge, Taken, weigh_sharply};

use crate::{Luck, MANY, log_mean_exp, log_normal, mean, spread};

const PARTICLES: usize = 1000;
const SEEDS: u64 = 64;
/// A reading of 2.0 with a standard deviation of 0.02, where 0 ± 1 was thought.
const READ: f64 = 2.0;
const READ_SD: f64 = 0.02;
/// Density of the reading at a dead hive, which is as likely as a living one before.
const AT_DEAD: f64 = 0.05;
/// Metropolis moves after each resampling.
const MOVES: usize = 8;

fn strata(luck: Luck) -> Strata<Vec<f64>, ()> {
    let mut strata = Strata::new((0..PARTICLES).map(|m| luck.normal(m, 0, 1)).collect(), PARTICLES);
    strata.alive_mass.fill(0.5 / PARTICLES as f64);
    strata.dead.push(((), 0.5));
    strata
}

/// Moves that leave prior × likelihood^power unchanged, as wide as the particles are spread.
fn metropolis(alive: &mut [f64], bridge: &Bridge<'_>, luck: Luck) {
    let step = 2.4 * spread(alive);
    let target = |x: f64| log_normal(x, 0.0, 1.0) + bridge.power * log_normal(READ, x, READ_SD);
    for turn in 0..MOVES {
        for (m, x) in alive.iter_mut().enumerate() {
            let when = 1 + bridge.step * MOVES + turn;
            let to = *x + step * luck.normal(m, when, 2);
            if luck.uniform(m, when, 3).ln() < target(to) - target(*x) {
                *x = to;
            }
        }
    }
}

struct Said {
    log_evidence: f64,
    alive: f64,
    mean: f64,
    sd: f64,
    taken: Taken,
}

fn run(seed: u64) -> Said {
    let luck = Luck::of(seed);
    let mut strata = strata(luck);
    let weighed = weigh_sharply(
        &mut strata,
        |alive, dead| (alive.iter().map(|x| log_normal(READ, *x, READ_SD)).collect(), vec![AT_DEAD.ln(); dead.len()]),
        |alive, bridge| metropolis(alive, bridge, luck),
        |step| luck.uniform(0, step, 4),
    );
    assert!(!weighed.evidence.unexplained);
    said(&strata, weighed.evidence.log_evidence, weighed.taken)
}

fn said(strata: &Strata<Vec<f64>, ()>, log_evidence: f64, taken: Taken) -> Said {
    let alive: f64 = strata.alive_mass.iter().sum();
    let held = || strata.alive.iter().zip(&strata.alive_mass);
    let centre = held().map(|(x, mass)| x * mass).sum::<f64>() / alive;
    let variance = held().map(|(x, mass)| (x - centre).powi(2) * mass).sum::<f64>() / alive;
    Said { log_evidence, alive: strata.alive_share(), mean: centre, sd: variance.sqrt(), taken }
}

/// Exact log evidence, chance of being alive, mean and standard deviation.
fn conjugate() -> [f64; 4] {
    let living = 0.5 * log_normal(READ, 0.0, (1.0 + READ_SD * READ_SD).sqrt()).exp();
    let both = living + 0.5 * AT_DEAD;
    let keeps = 1.0 / (1.0 + READ_SD * READ_SD);
    [both.ln(), living / both, READ * keeps, READ_SD * keeps.sqrt()]
}

/// How far the mean of the runs is off in each of the four, and its band: four standard errors.
fn off(runs: &[Said]) -> [(f64, f64); 4] {
    let known = conjugate();
    let each = |what: fn(&Said) -> f64| runs.iter().map(what).collect::<Vec<f64>>();
    let all = [each(|said| said.log_evidence), each(|said| said.alive), each(|said| said.mean), each(|said| said.sd)];
    std::array::from_fn(|k| {
        let centre = if k == 0 { log_mean_exp(&all[k]) } else { mean(&all[k]) };
        (centre - known[k], MANY * spread(&all[k]) / (runs.len() as f64).sqrt())
    })
}

#[test]
fn a_sharp_reading_taken_in_steps_meets_the_conjugate_answer() {
    let runs: Vec<Said> = (0..SEEDS).map(run).collect();
    assert!(runs.iter().all(|said| matches!(said.taken, Taken::InSteps(2..=6))), "steps");
    let [evidence, alive, centre, sd] = off(&runs);
    assert!(evidence.0.abs() < evidence.1, "evidence {evidence:?}");
    assert!(alive.0.abs() < alive.1, "alive {alive:?}");
    assert!(centre.0.abs() < centre.1, "mean {centre:?}");
    assert!(sd.0.abs() < sd.1, "sd {sd:?}");
    // One run alone: its mean within a sixth of the posterior's own spread, its spread within an eighth.
    let [_, _, exact_mean, exact_sd] = conjugate();
    assert!(runs.iter().all(|said| (said.mean - exact_mean).abs() < exact_sd / 6.0));
    assert!(runs.iter().all(|said| (said.sd / exact_sd - 1.0).abs() < 0.125));
}

#[test]
fn the_same_reading_taken_at_once_is_found_out() {
    let at_once = |seed| {
        let mut strata = strata(Luck::of(seed));
        let logs: Vec<f64> = strata.alive.iter().map(|x| log_normal(READ, *x, READ_SD)).collect();
        let evidence = strata.weigh(&logs, &[AT_DEAD.ln()]);
        said(&strata, evidence.log_evidence, Taken::AtOnce)
    };
    let runs: Vec<Said> = (0..SEEDS).map(at_once).collect();
    let [_, _, exact_mean, exact_sd] = conjugate();
    let close = runs.iter().filter(|said| (said.mean - exact_mean).abs() < exact_sd / 6.0).count();
    assert!(close < runs.len() * 3 / 4, "{close} of {} are close", runs.len());
}

#[test]
fn a_blunt_reading_is_taken_at_once_and_moves_nothing() {
    let mut strata = strata(Luck::of(1));
    let before = strata.alive.clone();
    let logs = |alive: &Vec<f64>| alive.iter().map(|x| log_normal(0.3, *x, 1.0)).collect::<Vec<f64>>();
    let mut plain = strata.clone();
    let evidence = plain.weigh(&logs(&before), &[AT_DEAD.ln()]);
    let weighed = weigh_sharply(
        &mut strata,
        |alive, dead| (logs(alive), vec![AT_DEAD.ln(); dead.len()]),
        |alive, _| alive.clear(),
        |_| 0.5,
    );
    assert_eq!((weighed.taken, weighed.evidence), (Taken::AtOnce, evidence));
    assert_eq!((strata.alive, strata.alive_mass), (before, plain.alive_mass));
}

#[test]
fn a_reading_nothing_explains_is_believed_a_tenth_and_told() {
    let mut strata = strata(Luck::of(2));
    let mut last = 0.0;
    let weighed = weigh_sharply(
        &mut strata,
        |alive, dead| (alive.iter().map(|x| log_normal(9.0, *x, 0.05)).collect(), vec![-2000.0; dead.len()]),
        |_, bridge| last = bridge.power,
        |step| Luck::of(2).uniform(0, step, 4),
    );
    assert!(weighed.evidence.unexplained && matches!(weighed.taken, Taken::Widened(_)), "{weighed:?}");
    assert!((last - 0.1).abs() < 1e-12, "{last}");
    let sum: f64 = strata.alive_mass.iter().sum::<f64>() + strata.dead[0].1;
    assert!((sum - 1.0).abs() < 1e-9 && strata.alive_share() > 0.0, "{sum}");
}

#[test]
fn a_reading_that_nothing_at_all_explains_changes_nothing() {
    for impossible in [f64::NEG_INFINITY, f64::NAN] {
        let mut strata = strata(Luck::of(3));
        let before = strata.clone();
        let logs = |count: usize| vec![impossible; count];
        let weighed =
            weigh_sharply(&mut strata, |alive, dead| (logs(alive.len()), logs(dead.len())), |_, _| (), |_| 0.5);
        assert_eq!(weighed.taken, Taken::Refused);
        assert!(weighed.evidence.unexplained);
        assert_eq!((strata.alive, strata.alive_mass), (before.alive, before.alive_mass));
    }
}
