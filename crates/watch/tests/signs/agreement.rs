//! Whether what is drawn from a law is as frequent as the law says.

use snowhum_draws::normal_quantile;
use snowhum_watch::{Answer, Law};

/// The cell in which an answer falls.
pub(crate) type CellOf = Box<dyn Fn(&Answer) -> usize>;

/// Faults frequencies that differ from chances at one in ten thousand: chi-square, its quantile by Wilson and Hilferty
/// (1931). Neighbouring cells are joined until each expects five.
pub(crate) fn agree(chances: &[f64], counts: &[u32], about: &str) {
    let all = f64::from(counts.iter().sum::<u32>());
    let mut joined: Vec<(f64, f64)> = Vec::new();
    let (mut expected, mut found) = (0.0, 0.0);
    for (chance, count) in chances.iter().zip(counts) {
        expected += chance * all;
        found += f64::from(*count);
        if expected >= 5.0 {
            joined.push((expected, found));
            (expected, found) = (0.0, 0.0);
        }
    }
    if let Some(last) = joined.last_mut() {
        last.0 += expected;
        last.1 += found;
    }
    if joined.len() < 2 {
        // One cell holds nearly all: the rest may come no more often than a Poisson count of fewer than five does.
        let most = chances.iter().copied().fold(0.0, f64::max);
        let rest = all - f64::from(counts.iter().copied().max().unwrap_or(0));
        assert!(rest <= (1.0 - most) * all + 12.0, "{about}: {rest} where {} is expected", (1.0 - most) * all);
        return;
    }
    let square: f64 = joined.iter().map(|(expected, found)| (found - expected).powi(2) / expected).sum();
    let freedom = (joined.len() - 1) as f64;
    let spread = 2.0 / (9.0 * freedom);
    let limit = freedom * (1.0 - spread + normal_quantile(1.0 - 1e-4) * spread.sqrt()).powi(3);
    assert!(square < limit, "{about}: chi-square {square:.1}, limit {limit:.1}");
}

/// Edges of cells that hold the most of a reading's chance.
fn edges(mean: f64, sd: f64) -> Vec<f64> {
    (-8..=8).map(|step| mean + 0.4 * f64::from(step) * sd).collect()
}

/// Chance between two edges, by Simpson's rule over the law's own density.
pub(crate) fn between(law: &Law, from: f64, to: f64) -> f64 {
    const PARTS: u32 = 20;
    let step = (to - from) / f64::from(PARTS);
    let at = |place: u32| law.log_probability(&Answer::Reading(from + step * f64::from(place))).exp();
    let weight = |place: u32| if place == 0 || place == PARTS { 1.0 } else { f64::from(2 + 2 * (place % 2)) };
    (0..=PARTS).map(|place| weight(place) * at(place)).sum::<f64>() * step / 3.0
}

/// Chances of cells of a law's answers, and the cell in which an answer falls.
pub(crate) fn cells(law: &Law) -> (Vec<f64>, CellOf) {
    match *law {
        Law::There(_) => {
            let chances = [false, true].map(|there| law.log_probability(&Answer::There(there)).exp());
            (chances.to_vec(), Box::new(|answer| usize::from(*answer == Answer::There(true))))
        }
        Law::Choice(_) => {
            let chances = (0..4).map(|which| law.log_probability(&Answer::Choice(which)).exp()).collect();
            (chances, Box::new(|answer| if let Answer::Choice(which) = answer { *which } else { usize::MAX }))
        }
        Law::Count { .. } => {
            const MOST: u32 = 120;
            let each = (0..MOST).map(|n| law.log_probability(&Answer::Count(n, Some(n))).exp());
            let more = law.log_probability(&Answer::Count(MOST, None)).exp();
            let cell =
                |answer: &Answer| if let Answer::Count(n, _) = answer { (*n).min(MOST) as usize } else { usize::MAX };
            (each.chain([more]).collect(), Box::new(cell))
        }
        Law::Reading { mean, sd, .. } => {
            let edges = edges(mean, sd);
            let mut chances: Vec<f64> = edges.windows(2).map(|pair| between(law, pair[0], pair[1])).collect();
            chances.push(1.0 - chances.iter().sum::<f64>());
            let cell = move |answer: &Answer| {
                let Answer::Reading(read) = answer else { return usize::MAX };
                let inside = edges.windows(2).position(|pair| pair[0] <= *read && *read < pair[1]);
                inside.unwrap_or(edges.len() - 1)
            };
            (chances, Box::new(cell))
        }
    }
}
