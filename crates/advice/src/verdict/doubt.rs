//! A colony for which nothing known is due, and of which too few like it come to spring: it is not left alone in peace, for a
//! look can tell what no sum does.

use snowhum_winter::{Cause, Ends, Trajectory};

use super::answer::{Line, Step};
use super::ground::Ground;
use super::still::Held;
use super::task::Task;
use crate::statistics::{Estimate, mean_ends};

/// A look on the first day that allows one, at what most that end still end of; none where its chance is fair.
pub(super) fn look(ground: &Ground<'_>, held: &mut Held, chance: Estimate, run: &Trajectory) -> Option<Step> {
    let was_well = held.was_well();
    if held.is_over(Line::Spring, chance, ground.thresholds.fed_sound.value, was_well) {
        return None;
    }
    let task = Task::SeeWhatDecides { of: named(&mean_ends(run)) };
    Some(Step { task, word: ground.urgency(None), from: ground.today, by: None })
}

/// The likeliest end that has a name.
fn named(ends: &Ends) -> Option<Cause> {
    let causes = ends.by_cause().into_iter().filter(|(cause, share)| *cause != Cause::Other && *share > 0.0);
    causes.max_by(|a, b| a.1.total_cmp(&b.1)).map(|(cause, _)| cause)
}
