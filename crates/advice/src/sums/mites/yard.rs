//! Several colonies at once: the worst is named, never only the mean.

use super::answer::{ColonyMites, YardMites};
use super::lines::Line;
use crate::statistics::{mean_and_error, rounded};
use crate::sums::intervals::{Interval, student};

/// Colonies to sample for a yard's mean (Lee et al. 2010).
const ENOUGH: usize = 8;
/// Fewest samples whose spread says anything of the yard's mean (judgement).
const LEAST: usize = 4;

pub(super) fn yard(colonies: &[ColonyMites], line: &Line) -> Option<YardMites> {
    let worst = colonies.iter().max_by(|a, b| a.rate.total_cmp(&b.rate))?;
    if colonies.len() < 2 {
        return None;
    }
    let rates: Vec<f64> = colonies.iter().map(|one| one.rate).collect();
    let (mean, error) = mean_and_error(&rates);
    let reach = student(colonies.len() as f64 - 1.0) * error;
    let over: Vec<String> =
        colonies.iter().filter(|one| one.rate >= line.value[1] - 1e-9).map(|one| one.name.clone()).collect();
    Some(YardMites {
        worst: worst.name.clone(),
        worst_rate: worst.rate,
        say: say(&worst.name, &over, colonies.len(), mean < line.value[0]),
        at_or_over_line: over,
        mean_rate: rounded(mean, 2),
        mean_interval: (colonies.len() >= LEAST)
            .then(|| Interval { low: rounded((mean - reach).max(0.0), 2), high: rounded(mean + reach, 2) }),
        between_colonies_size: between(colonies),
        colonies: colonies.len(),
    })
}

/// Size of the negative binomial of the counts, by moments, where the samples are of one size.
fn between(colonies: &[ColonyMites]) -> Option<f64> {
    let first = colonies.first()?;
    if colonies.iter().any(|one| one.bees != first.bees || one.days != first.days) {
        return None;
    }
    let counts: Vec<f64> = colonies.iter().map(|one| f64::from(one.found)).collect();
    let (mean, error) = mean_and_error(&counts);
    let variance = error * error * counts.len() as f64;
    (variance > mean).then(|| rounded(mean * mean / (variance - mean), 2))
}

fn say(worst: &str, over: &[String], colonies: usize, mean_is_low: bool) -> String {
    let mut words = match over {
        [] => format!("None is at or over the line; {worst} has most."),
        [one] if mean_is_low => {
            format!(
                "{one} is at or over the line though the mean of the yard is under it: go by {one}, not by the mean."
            )
        }
        [one] => format!("{one} is at or over the line."),
        many => format!("{} are at or over the line; {worst} has most.", many.join(", ")),
    };
    if colonies < LEAST {
        words += &format!(" {colonies} samples are too few for a range of the yard's mean.");
    }
    if colonies < ENOUGH {
        words += &unsampled();
    }
    words
}

/// What is not known where fewer colonies than enough were sampled.
fn unsampled() -> String {
    format!(" Colonies not sampled may be worse: in a large yard sample {ENOUGH}.")
}

impl YardMites {
    /// The same where every colony of the yard was sampled: of others nothing is left to say.
    pub(super) fn of_all(&mut self) {
        self.say = self.say.replace(&unsampled(), "");
    }
}
