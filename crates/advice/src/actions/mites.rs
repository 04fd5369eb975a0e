//! Mites: a treatment while it still spares winter bees.

use jiff::ToSpan;
use jiff::civil::Date;
use snowhum_say::actions as say;
use snowhum_winter::{Action, Event};

use super::situation::{Candidate, Situation};
use crate::answer::ActionKind;
use crate::cautions::Hazard;
use crate::seasons::season_month;
use crate::site::dates;
use crate::site::figures::mite_region;
use crate::sums::mites::line_for;

/// Days within which it is begun where the day that spares all winter bees is past.
const AT_ONCE: i64 = 7;
/// Hours of work.
const WORK: f64 = 0.3;

/// A treatment of a colony that was counted over the line and not treated since; none once all its winter bees are raised.
pub(super) fn treat(situation: &Situation<'_>) -> Option<Candidate> {
    let question = situation.base.question;
    let (rate, _) = over_the_line(situation)?;
    let [all, none] = dates::winter_bees(situation.base);
    if question.as_of >= none {
        return None;
    }
    Some(Candidate {
        kind: ActionKind::TreatMites,
        what: say::treat(),
        why: say::treat_why(all, question.as_of <= all, none, rate),
        from: question.as_of,
        by: all.max(question.as_of.saturating_add(AT_ONCE.days())).min(none),
        cost: WORK * question.apiary.money.hour,
        feeds: false,
        fed_first: true,
        events: vec![Event { day: 0, colony: situation.colony, action: Action::Treat }],
        caution: Some(Hazard::Label),
        rule: None,
        sources: vec![say::by_lines(), say::by_nine_in_ten()],
    })
}

/// Mites per 100 bees at the last count and its day, where they were over the region's line and nothing was done about them
/// since.
pub(crate) fn over_the_line(situation: &Situation<'_>) -> Option<(f64, Date)> {
    let (question, colony) = (situation.base.question, &situation.housed().colony);
    let (apiary, site) = (question.apiary, &question.apiary.site);
    let count = apiary.last_mite_count(colony, question.as_of)?;
    let rate = count.per_100()?;
    let line = line_for(mite_region(site).as_deref(), season_month(count.on, site.latitude.get()))?;
    (rate >= line.value[1] - 1e-9 && apiary.treated_since(colony, count.on).is_none()).then_some((rate, count.on))
}
