//! Small chains of states that end in death, where a forward pass is exact.

use snowhum_watch::strata::{Loss, Strata};

use crate::{Luck, MANY, assert_evidence, exact, mean, spread, table};

const PARTICLES: usize = 1000;
const SEEDS: u64 = 64;

/// Takes this share of each particle's mass to the dead.
fn die<A: Clone>(strata: &mut Strata<Vec<A>, ()>, hazard: impl Fn(&A) -> f64, births: usize, u: f64) {
    let mut losses = Vec::new();
    for (state, mass) in strata.alive.iter().zip(&mut strata.alive_mass) {
        let lost = *mass * hazard(state);
        *mass -= lost;
        losses.push(Loss { mass: lost, remains: () });
    }
    strata.bury(losses, births, u);
}

#[test]
fn alive_or_dead_is_followed_to_the_last_digits() {
    let seen = [true, true, false, false, false, false];
    let mut strata = Strata::new(vec![(); 10], 10);
    die(&mut strata, |()| 0.01, 10, 0.5);
    let mut log_evidence = 0.0;
    for (t, seen) in seen.into_iter().enumerate() {
        if t > 0 {
            die(&mut strata, |()| 0.02, 3, 0.3);
            strata.thin(5, 0.4);
        }
        let (alive, dead): (f64, f64) = if seen { (0.6, 0.05) } else { (0.4, 0.95) };
        log_evidence += strata.weigh(&[alive.ln(); 10], &vec![dead.ln(); strata.dead.len()]).log_evidence;
        let known = exact("hmm2", &format!("alive_{}", t + 1)).value;
        assert!((strata.alive_share() - known).abs() < 1e-12, "{}: {} {known}", t + 1, strata.alive_share());
    }
    assert!((log_evidence - exact("hmm2", "log_evidence").value).abs() < 1e-12, "{log_evidence}");
}

/// Chances of what was seen: two signs, one, none, a false one.
const SEEN: [[f64; 4]; 3] = [[0.55, 0.30, 0.14, 0.01], [0.25, 0.35, 0.38, 0.02], [0.01, 0.06, 0.88, 0.05]];

/// A week of strong (0) or weak (1), given that it lives.
fn week(strata: &mut Strata<Vec<usize>, ()>, luck: Luck, t: usize) {
    die(strata, |state| [0.005, 0.05][*state], 100, luck.uniform(0, t, 3));
    strata.thin(300, luck.uniform(0, t, 4));
    for (m, state) in strata.alive.iter_mut().enumerate() {
        let stays_or_turns_strong = [0.95 / 0.995, 0.02 / 0.95][*state];
        *state = usize::from(luck.uniform(m, t, 1) >= stays_or_turns_strong);
    }
}

/// Log evidence, and the chance of being alive after each reading and, last, after ten more weeks.
fn strong_weak_dead(seen: &[usize], luck: Luck) -> (f64, Vec<f64>) {
    let start = (0..PARTICLES).map(|m| usize::from(luck.uniform(m, 0, 1) >= 0.80 / 0.99)).collect();
    let mut strata: Strata<Vec<usize>, ()> = Strata::new(start, PARTICLES);
    die(&mut strata, |_| 0.01, 100, luck.uniform(0, 0, 3));
    let (mut log_evidence, mut shares) = (0.0, Vec::new());
    for (t, &seen) in seen.iter().enumerate() {
        if t > 0 {
            week(&mut strata, luck, t);
        }
        let alive: Vec<f64> = strata.alive.iter().map(|state| SEEN[*state][seen].ln()).collect();
        log_evidence += strata.weigh(&alive, &vec![SEEN[2][seen].ln(); strata.dead.len()]).log_evidence;
        shares.push(strata.alive_share());
        strata.renew(luck.uniform(0, t, 2));
    }
    for t in 0..10 {
        week(&mut strata, luck, 100 + t);
    }
    shares.push(strata.alive_share());
    (log_evidence, shares)
}

#[test]
fn strong_weak_or_dead_is_followed_as_exactly_as_chance_allows() {
    let rows = table(include_str!("../data/hmm3.csv"));
    let seen: Vec<usize> = rows.iter().map(|row| row[1] as usize).collect();
    let runs: Vec<(f64, Vec<f64>)> = (0..SEEDS).map(|seed| strong_weak_dead(&seen, Luck::of(seed))).collect();
    assert_evidence("hmm3", &runs.iter().map(|(log, _)| *log).collect::<Vec<_>>());
    for (t, row) in rows.iter().enumerate() {
        let shares: Vec<f64> = runs.iter().map(|(_, shares)| shares[t]).collect();
        let (off, sd) = (mean(&shares) - (1.0 - row[4]), spread(&shares));
        assert!(sd < 0.02, "{}: scatters {sd}", t + 1);
        assert!(off.abs() < MANY * sd / (SEEDS as f64).sqrt(), "{}: off by {off}, sd {sd}", t + 1);
    }
    let last: Vec<f64> = runs.iter().map(|(_, shares)| shares[rows.len()]).collect();
    let (off, sd) = (mean(&last) - exact("hmm3", "alive_22").value, spread(&last));
    assert!(sd < 0.002 && off.abs() < MANY * sd / (SEEDS as f64).sqrt(), "ten weeks on: off by {off}, sd {sd}");
}
