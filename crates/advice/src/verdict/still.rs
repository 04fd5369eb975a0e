//! Held still: what stands near a line is decided with its Monte Carlo error, and what was decided last holds until that error
//! is passed, so that another seed says the same.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_apiary::ColonyId;

use super::answer::{ColonyVerdict, Line, Step, Urgency};
use super::task::Task;
use crate::statistics::Estimate;

/// What was decided of a colony when it was last told.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct LastVerdict {
    /// Whose.
    pub colony: ColonyId,
    /// What.
    pub verdict: ColonyVerdict,
}

/// Days within which two days that a run gives, or such a day and a word's line, are near (judgement: the median over 64
/// winters of a date that differs by a week is known to a day and a half).
const NEAR_DAYS: i64 = 3;

/// The lines that a colony stands near, and what was decided of it last.
#[derive(Debug, Clone, Default)]
pub(crate) struct Held {
    pub(super) last: Option<ColonyVerdict>,
    pub(super) near: Vec<Line>,
}

impl Held {
    /// Whether a figure is at or over its line. Near it what was decided last holds, where that is known.
    pub(super) fn is_over(&mut self, line: Line, found: Estimate, limit: f64, last: Option<bool>) -> bool {
        let over = found.value >= limit;
        if !found.is_near(limit) {
            return over;
        }
        self.note(line);
        last.unwrap_or(over)
    }

    pub(super) fn note(&mut self, line: Line) {
        if !self.near.contains(&line) {
            self.near.push(line);
        }
    }

    /// Whether it was fed last, where what was first tells.
    pub(super) fn was_fed(&self) -> Option<bool> {
        let last = self.last.as_ref()?;
        match &last.first {
            Some(Task::FeedSyrup { .. } | Task::FeedThinSyrup { .. } | Task::FeedSolid { .. }) => Some(true),
            None if last.word == Urgency::LeaveAlone => Some(false),
            _ => None,
        }
    }

    /// Whether it was left alone last, where what was first tells.
    pub(super) fn was_well(&self) -> Option<bool> {
        let last = self.last.as_ref()?;
        match &last.first {
            Some(Task::SeeWhatDecides { .. }) => Some(false),
            None if last.word == Urgency::LeaveAlone => Some(true),
            _ => None,
        }
    }

    /// Of steps whose last days are near one another the one that was first last stays so.
    pub(super) fn in_order(&mut self, steps: &mut [Step], today: Date, week: Date) {
        let Some(first) = steps.first().and_then(|step| step.by) else { return };
        let is_near = |step: &Step| step.by.is_some_and(|by| days(first, by) <= NEAR_DAYS && days(first, by) > 0);
        let is_edge = |line: Date| first != line && first > today && days(line, first).abs() < NEAR_DAYS;
        if steps.iter().any(is_near) || is_edge(week) {
            self.note(Line::Day);
        }
        let was = self.last.as_ref().and_then(|last| last.first.clone());
        let stays = |step: &Step| was.as_ref().is_some_and(|was| step.task.is_like(was)) && is_near(step);
        if let Some(at) = steps.iter().position(stays) {
            steps[..=at].rotate_right(1);
        }
    }
}

fn days(from: Date, to: Date) -> i64 {
    to.duration_since(from).as_hours() / 24
}

#[cfg(test)]
mod tests {
    use super::{Estimate, Held, Line};
    use crate::verdict::{ColonyVerdict, Urgency};

    #[test]
    fn near_a_line_what_was_decided_last_holds_and_past_its_error_the_figure_does() {
        let near = Estimate { value: 0.52, error: 0.02 };
        let far = Estimate { value: 0.6, error: 0.02 };
        let mut held = Held::default();
        assert!(held.is_over(Line::Food, near, 0.5, None) && !held.is_over(Line::Food, near, 0.5, Some(false)));
        assert_eq!(held.near, [Line::Food], "noted once");
        assert!(held.is_over(Line::Food, far, 0.5, Some(false)));
    }

    #[test]
    fn what_was_left_alone_is_known_to_have_been_well() {
        let left = ColonyVerdict { word: Urgency::LeaveAlone, by: None, first: None };
        let held = Held { last: Some(left), near: Vec::new() };
        assert_eq!((held.was_well(), held.was_fed()), (Some(true), Some(false)));
    }
}
