//! Steps that a colony needs until spring, together, each with its last day: what is first of them is the verdict.

use jiff::civil::Date;
use snowhum_winter::Event;

use super::answer::Step;
use super::ground::Ground;
use super::still::Held;
use super::task::Task;

/// Steps in order, and what they are in the model.
#[derive(Default)]
pub(crate) struct Programme {
    pub(super) steps: Vec<Step>,
    pub(super) events: Vec<Event>,
    pub(super) held: Held,
}

impl Programme {
    pub(super) fn add(&mut self, ground: &Ground<'_>, task: Task, by: Option<Date>) {
        let by = by.map(|by| by.max(ground.today));
        self.steps.push(Step { task, word: ground.urgency(by), from: ground.today, by });
    }

    /// By last day, then by weight. Mites that nobody counted take the last day of what comes before them, so that hunger never
    /// hides them; treated in the time without brood they do so too, once that is here, but for what is due today. A hive that
    /// may be dead is listened to before anything is done to it: on the next walk, or by the day of what is due within a week.
    pub(super) fn sorted(mut self, ground: &Ground<'_>) -> Self {
        let earliest = self.steps.iter().filter_map(|step| step.by).min();
        let today = ground.within(ground.thresholds.verdict_today.value);
        let next = self.steps.iter().filter_map(|step| step.by).filter(|by| *by > today).min();
        for step in &mut self.steps {
            let before = match step.task {
                Task::CountMites { again: false } => earliest,
                Task::TreatBroodless { look_first: false, counted: false } => next.map(|by| by.max(step.from)),
                Task::Listen => earliest.filter(|by| *by <= ground.week()),
                _ => None,
            };
            if before.is_some() {
                step.by = [step.by, before].into_iter().flatten().min();
                step.word = ground.urgency(step.by);
            }
        }
        self.steps.sort_by_key(|step| (step.task != Task::Listen, step.by.is_none(), step.by, step.task.rank()));
        self.held.in_order(&mut self.steps, ground.today, ground.week());
        self
    }
}
