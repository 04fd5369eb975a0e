//! What nobody names, as the records tell it.

use super::lesson::KeptExamination;
use super::outcome::{Fate, Outcome};
use crate::sums::losses::background::law::OwnWinter;

/// Causes that the winter model reckons by themselves, so that its background is what is left: mites, hunger, queens.
const NAMED: [&str; 4] = ["mites", "starved", "isolation", "queen"];

/// How a colony's end stands to the background.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum End {
    Lived,
    /// Dead, and nothing named was the likeliest cause.
    Unnamed,
    /// Dead, and the record has no cause.
    NoCause,
    /// Gone in a way that is none of the background's.
    Apart,
}

/// A winter's count; none while a colony is not told, or if none was at risk.
pub(super) fn of(outcomes: &[Outcome]) -> Option<OwnWinter> {
    if outcomes.iter().any(|one| one.fate == Fate::NotTold) {
        return None;
    }
    let ends: Vec<End> = outcomes.iter().map(end).collect();
    let count = |is_it: &dyn Fn(End) -> bool| ends.iter().filter(|one| is_it(**one)).count() as u32;
    let winter = OwnWinter {
        at_risk: count(&|end| end != End::Apart),
        lost: count(&|end| matches!(end, End::Unnamed | End::NoCause)),
        cause_not_told: count(&|end| end == End::NoCause),
    };
    (winter.at_risk > 0).then_some(winter)
}

/// A colony that a named cause took did not stand the whole winter against the others, and is not counted.
fn end(outcome: &Outcome) -> End {
    match outcome.fate {
        Fate::Alive | Fate::Weak => End::Lived,
        Fate::Dead => dead(outcome),
        Fate::QueenFailed | Fate::Disaster | Fate::Sold | Fate::United | Fate::NotTold => End::Apart,
    }
}

/// A dead colony by what its examination was kept with.
fn dead(outcome: &Outcome) -> End {
    let Some((on, examined)) = &outcome.examined else { return End::NoCause };
    let kept = KeptExamination::of(*on, examined);
    match kept.cause {
        _ if kept.stopped => End::Apart,
        Some(cause) if NAMED.contains(&cause.as_str()) => End::Apart,
        Some(_) => End::Unnamed,
        None => End::NoCause,
    }
}
