//! An entrance that was noted as blocked.

use jiff::ToSpan;
use snowhum_units::Fraction;
use snowhum_winter::{Action, Event};

use super::{Candidate, Situation};
use crate::answer::ActionKind;
use crate::cautions::Hazard;

const WORK: f64 = 0.1;
/// Days within which a blocked entrance should be free: bees that cannot get out on the next mild day foul the hive.
const WITHIN_DAYS: i64 = 3;

/// Rake or melt it free.
pub(super) fn entrance(situation: &Situation<'_>) -> Option<Candidate> {
    if !situation.base.ahead.is_blocked(situation.colony) {
        return None;
    }
    let question = situation.base.question;
    let open = Action::Openings { entrance: Fraction::new(1.0), hole: Fraction::new(1.0) };
    Some(Candidate {
        kind: ActionKind::ClearEntrance,
        what: "clear the entrance of ice and dead bees".to_owned(),
        why: "it was noted as blocked: damp stays in, and bees cannot get out on the next mild day".to_owned(),
        from: question.as_of,
        by: question.as_of.saturating_add(WITHIN_DAYS.days()),
        cost: WORK * question.apiary.money.hour,
        feeds: false,
        events: vec![Event { day: 0, colony: situation.colony, action: open }],
        caution: Some(Hazard::Entrance),
        rule: Some("leave snow: it is porous and keeps the hive warm; an ice sheet is not".to_owned()),
        sources: vec!["common practice"],
    })
}
