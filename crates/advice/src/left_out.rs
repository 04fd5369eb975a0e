//! What a plan does not reckon with, said where it matters.

use snowhum_apiary::{Act, Note};
use snowhum_say::{Message, plan as say};

use crate::ahead::run::PlanQuestion;
use crate::seasons::season_month;

/// Months, as the north counts them, in which flowers may still give nectar (common practice).
pub(crate) const MAY_FLOW: std::ops::RangeInclusive<i8> = 5..=8;

/// Each a sentence; none where nothing is left out.
pub(crate) fn of(question: &PlanQuestion<'_>) -> Vec<Message> {
    let apiary = question.apiary;
    let mut left_out = Vec::new();
    if MAY_FLOW.contains(&season_month(question.as_of, apiary.site.latitude.get())) {
        left_out.push(say::no_nectar(question.as_of));
    }
    let changes =
        |act: &Act| matches!(act, Act::Fed { .. } | Act::FoodPutOn(_) | Act::FramesFrom { .. } | Act::UnitedInto(_));
    // The notes of an invented yard are those of its whole winter, whatever day it is looked at.
    if !apiary.invented && apiary.notes.iter().flat_map(Note::acts).any(changes) {
        left_out.push(say::as_counted(question.as_of));
    }
    left_out
}
