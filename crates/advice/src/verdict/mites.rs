//! Mites: counted while hives can be opened, treated where they are over the line, in the broodless time where nobody counted.

use jiff::civil::Date;
use snowhum_apiary::Colony;
use snowhum_winter::{Action, Event};

use super::facts::Facts;
use super::ground::Ground;
use super::programme::Programme;
use super::task::Task;
use super::why::Why;
use crate::actions::mites::over_the_line;
use crate::actions::situation::Situation;
use crate::fit::answer::VerdictKind;

/// Months in which mites that nobody counted still matter to this winter, as the north counts them.
const MATTER: [i8; 7] = [7, 8, 9, 10, 11, 12, 1];

/// What is done about them.
pub(super) fn add(programme: &mut Programme, ground: &Ground<'_>, at: usize, facts: &Facts<'_>) {
    let base = ground.base;
    let [all, none] = ground.spared;
    let colony = &base.housed[at].colony;
    let treat = Event { day: 0, colony: at, action: Action::Treat };
    if over_the_line(&Situation { base, colony: at }).is_some() {
        if ground.counts_mites() {
            programme.add(ground, Task::TreatMites, Some(all.min(none).max(ground.week())));
            programme.events.push(treat);
        } else if matches!(ground.month, 10 | 11 | 12 | 1) {
            broodless(programme, ground, at, true);
        }
        return;
    }
    let many = facts.fit.is_some_and(|fit| fit.kind == VerdictKind::Treat);
    if many && ground.counts_mites() {
        programme.add(ground, Task::CountMites { again: true }, Some(ground.week()));
        return;
    }
    match counted(ground, colony) {
        None if ground.counts_mites() => {
            programme.add(ground, Task::CountMites { again: false }, Some(ground.week()));
            if ground.today < none {
                programme.events.push(treat);
            }
        }
        None if matches!(ground.month, 11 | 12 | 1) && !treated_lately(ground, colony) => {
            broodless(programme, ground, at, false);
        }
        Some(on) if matches!(ground.month, 9 | 10) => {
            let holds = ground.thresholds.verdict_count_holds.value;
            let (old, cluster) =
                ((ground.today.duration_since(on).as_hours() / 24) as f64 > holds, ground.dates.cluster.p50);
            if old && ground.today <= cluster {
                programme.add(ground, Task::CountMites { again: true }, Some(cluster));
            }
        }
        _ => {}
    }
}

/// A treatment in the time without brood, as far as it is still ahead. Where the run shows no such time a look decides, about
/// the day on which there is least.
fn broodless(programme: &mut Programme, ground: &Ground<'_>, at: usize, counted: bool) {
    let (from, by, look_first) = match &ground.broodless {
        Some([_, until]) if ground.today >= until.p50 => return,
        Some([from, until]) => (from.p90.min(until.p10).max(ground.today), until.p10, false),
        None => (ground.today, ground.least_brood(), true),
    };
    programme.add(ground, Task::TreatBroodless { look_first, counted }, Some(by.max(ground.week())));
    if let Some(step) = programme.steps.last_mut() {
        step.from = from;
    }
    let day = from.duration_since(ground.base.question.as_of).as_hours() / 24;
    let day = usize::try_from(day).unwrap_or(0);
    programme.events.push(Event { day, colony: at, action: Action::Treat });
}

/// The day of the last count since high summer.
fn counted(ground: &Ground<'_>, colony: &Colony) -> Option<Date> {
    let question = ground.base.question;
    let last = question.apiary.last_mite_count(colony, ground.today)?;
    (last.on >= question.autumn_from).then_some(last.on)
}

/// Whether it was treated since bees began to cluster: the broodless treatment is done.
fn treated_lately(ground: &Ground<'_>, colony: &Colony) -> bool {
    ground.base.question.apiary.treated_since(colony, ground.dates.cluster.p50).is_some_and(|on| on <= ground.today)
}

/// Whether nobody counted, in months in which that matters.
pub(super) fn not_counted(ground: &Ground<'_>, colony: &Colony) -> bool {
    MATTER.contains(&ground.month) && counted(ground, colony).is_none()
}

/// What is to be known of them.
pub(super) fn why(ground: &Ground<'_>, at: usize) -> Option<Why> {
    let (base, colony) = (ground.base, &ground.base.housed[at].colony);
    if let Some((per_100, _)) = over_the_line(&Situation { base, colony: at }) {
        return Some(Why::Mites { per_100: crate::statistics::rounded(per_100, 1) });
    }
    if not_counted(ground, colony) {
        return Some(Why::MitesNotCounted);
    }
    // Treated since, and so many that their viruses are in the bees.
    let count = base.question.apiary.last_mite_count(colony, ground.today)?;
    let per_100 = count.per_100().filter(|rate| ground.health.brings_viruses(*rate))?;
    Some(Why::Mites { per_100: crate::statistics::rounded(per_100, 1) })
}
