//! An entrance or an upper hole that was noted as blocked.

use jiff::ToSpan;
use snowhum_apiary::{OpeningKind, OpeningState};
use snowhum_say::actions as say;
use snowhum_units::Fraction;
use snowhum_winter::{Action, Event};

use super::situation::{Candidate, Situation};
use crate::answer::ActionKind;
use crate::cautions::Hazard;

const WORK: f64 = 0.1;
/// Days within which a blocked opening should be free: bees that cannot get out on the next mild day foul the hive.
const WITHIN_DAYS: i64 = 3;

/// Rake or melt them free; snow is left.
pub(super) fn openings(situation: &Situation<'_>) -> Option<Candidate> {
    let noted = situation.base.ahead.openings(situation.colony);
    let hive = &situation.housed().hive;
    let is_blocked = |kind| {
        let is_tight = noted.shut(kind).is_some_and(|noted| noted.state != OpeningState::DriftedOver);
        is_tight && hive.has_opening(kind)
    };
    let blocked = match (is_blocked(OpeningKind::Entrance), is_blocked(OpeningKind::UpperHole)) {
        (false, false) => return None,
        (true, false) => "entrance",
        (false, true) => "upper-hole",
        (true, true) => "both",
    };
    let question = situation.base.question;
    let open = Action::Openings { entrance: Fraction::new(1.0), hole: Fraction::new(1.0) };
    Some(Candidate {
        kind: ActionKind::ClearOpenings,
        what: say::clear(blocked),
        why: say::clear_why(blocked),
        from: question.as_of,
        by: question.as_of.saturating_add(WITHIN_DAYS.days()),
        cost: WORK * question.apiary.money.hour,
        feeds: false,
        fed_first: false,
        events: vec![Event { day: 0, colony: situation.colony, action: open }],
        caution: Some(Hazard::Entrance),
        rule: Some(say::clear_rule()),
        sources: vec![say::by_practice()],
    })
}
