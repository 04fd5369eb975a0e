//! Several colonies at once: the worst is named, never only the mean.

use snowhum_say::{Message, mites as say};

use super::answer::{ColonyMites, YardMites};
use super::lines::Line;
use crate::statistics::{mean_and_error, rounded};
use crate::sums::intervals::{Interval, student};

/// Colonies to sample for a yard's mean (Lee et al. 2010).
const ENOUGH: usize = 8;
/// Fewest samples whose spread says anything of the yard's mean (judgement).
const LEAST: usize = 4;

/// Several counts together, of a yard of so many colonies where that is known.
pub(super) fn yard(colonies: &[ColonyMites], line: &Line, all: Option<usize>) -> Option<YardMites> {
    let worst = colonies.iter().max_by(|a, b| a.rate.total_cmp(&b.rate))?;
    let sampled = colonies.len();
    if sampled < 2 {
        return None;
    }
    let rates: Vec<f64> = colonies.iter().map(|one| one.rate).collect();
    let (mean, error) = mean_and_error(&rates);
    let reach = student(sampled as f64 - 1.0) * error;
    let over: Vec<String> =
        colonies.iter().filter(|one| one.rate >= line.value[1] - 1e-9).map(|one| one.name.clone()).collect();
    let against = against(&worst.name, &over, mean < line.value[0]);
    let too_few = (sampled < LEAST).then(|| say::too_few(sampled));
    let not_sampled = (sampled < ENOUGH && all != Some(sampled)).then(|| say::not_sampled(ENOUGH));
    Some(YardMites {
        worst: worst.name.clone(),
        worst_rate: worst.rate,
        say: Message::sentences([Some(against), too_few, not_sampled].into_iter().flatten()),
        at_or_over_line: over,
        mean_rate: rounded(mean, 2),
        mean_interval: (sampled >= LEAST)
            .then(|| Interval { low: rounded((mean - reach).max(0.0), 2), high: rounded(mean + reach, 2) }),
        between_colonies_size: between(colonies),
        colonies: sampled,
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

fn against(worst: &str, over: &[String], mean_is_low: bool) -> Message {
    match over {
        [] => say::none_over(worst),
        [one] if mean_is_low => say::one_over_though(one),
        [one] => say::one_over(one),
        several => say::several_over(several.iter().map(Message::from).collect(), worst),
    }
}
