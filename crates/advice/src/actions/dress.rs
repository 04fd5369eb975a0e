//! The hive's winter dress: lid, wrap, mesh.

use jiff::ToSpan;
use snowhum_apiary::{Floor, SetupChange};
use snowhum_say::{Message, actions as say};
use snowhum_winter::{Action, Event};

use super::situation::{Candidate, Situation};
use crate::ahead::run::Run;
use crate::answer::ActionKind;

/// Lids better than this, m² K/W, are left alone (30 mm of foam).
const GOOD_LID: f64 = 0.9;
/// Walls better than this are left alone.
const GOOD_WALL: f64 = 0.6;
/// Mean of a fortnight below which a wrap goes on, °C: the jobs' `wrap_mean`.
const WRAP_MEAN_C: f64 = 5.0;
const FORTNIGHT: usize = 14;
/// Hours of work.
const WORK_LID: f64 = 0.3;
const WORK_WRAP: f64 = 0.5;
const WORK_TRAY: f64 = 0.1;

/// 50 mm of foam over the cluster.
pub(super) fn insulate_lid(situation: &Situation<'_>) -> Option<Candidate> {
    let hive = &situation.housed().hive;
    if resistance(&hive.lid) >= GOOD_LID || hive.lid_breathes {
        return None;
    }
    let money = &situation.base.question.apiary.money;
    changed(situation, "lid=50 mm foam", |candidate| Candidate {
        kind: ActionKind::Lid,
        what: say::lid(),
        why: say::lid_why(),
        cost: money.lid + WORK_LID * money.hour,
        rule: Some(say::lid_rule()),
        sources: vec![say::by_covers(), say::by_iso_6946()],
        ..candidate
    })
}

/// A wrap round thin walls, once it is cold enough for it.
pub(super) fn wrap(situation: &Situation<'_>) -> Option<Candidate> {
    let hive = &situation.housed().hive;
    let wall = hive.boxes.last().map(|b| std::slice::from_ref(&b.wall)).map_or(0.0, resistance);
    // A hive that winters indoors needs none.
    if wall >= GOOD_WALL || !hive.wrap.is_empty() || !situation.housed().stays.is_empty() {
        return None;
    }
    let base = situation.base;
    let day = cold_from(base)?;
    let money = &base.question.apiary.money;
    let mut wrap = changed(situation, "wrap=felt paper", |candidate| Candidate {
        kind: ActionKind::Wrap,
        what: say::wrap(),
        why: say::wrap_why(),
        cost: money.wrap + WORK_WRAP * money.hour,
        rule: Some(say::wrap_rule()),
        sources: vec![say::by_poster(), say::by_iso_6946()],
        from: base.date(day),
        by: base.date(day).saturating_add(30.days()),
        ..candidate
    })?;
    wrap.events.iter_mut().for_each(|event| event.day = day);
    Some(wrap)
}

/// The day by which a fortnight's mean, over all that may come, has fallen below the wrap's, as the jobs have it; the run's
/// first day where it is that cold already. Before it bees are kept warm and brood late.
fn cold_from(run: &Run<'_>) -> Option<usize> {
    let (environment, behind) = run.ahead.weather();
    let (days, paths) = (environment.days(), environment.paths());
    let mean = |day: usize| {
        let hours = 24 * day..24 * (day + 1);
        let sum: f64 = hours.flat_map(|hour| (0..paths).map(move |path| environment.air(hour, path).celsius())).sum();
        sum / (24 * paths) as f64
    };
    let means: Vec<f64> = (behind..days).map(mean).collect();
    let is_cold = |fortnight: &[f64]| fortnight.iter().sum::<f64>() < WRAP_MEAN_C * fortnight.len() as f64;
    let fortnight = FORTNIGHT.min(means.len().max(1));
    let first = means.windows(fortnight).position(is_cold)?;
    Some(if first == 0 { 0 } else { first + fortnight - 1 })
}

/// A tray under an open mesh floor.
pub(super) fn close_mesh(situation: &Situation<'_>) -> Option<Candidate> {
    if situation.housed().hive.floor != Floor::OpenMesh {
        return None;
    }
    let money = &situation.base.question.apiary.money;
    changed(situation, "floor=mesh with tray", |candidate| Candidate {
        kind: ActionKind::Tray,
        what: say::tray(),
        why: say::tray_why(),
        cost: WORK_TRAY * money.hour,
        rule: Some(say::tray_rule()),
        sources: vec![say::by_air_flow()],
        ..candidate
    })
}

fn resistance(sheets: &[snowhum_apiary::Layer]) -> f64 {
    sheets.iter().map(|sheet| sheet.resistance().get()).sum()
}

/// A candidate that changes the hive today; `fill` puts in the words and the price.
fn changed(situation: &Situation<'_>, change: &str, fill: impl FnOnce(Candidate) -> Candidate) -> Option<Candidate> {
    let question = situation.base.question;
    let hive = situation.housed().hive.with_change(&change.parse::<SetupChange>().ok()?).ok()?;
    Some(fill(Candidate {
        kind: ActionKind::Lid,
        what: Message::NONE,
        why: Message::NONE,
        from: question.as_of,
        by: question.as_of.saturating_add(30.days()),
        cost: 0.0,
        feeds: false,
        fed_first: false,
        events: vec![Event { day: 0, colony: situation.colony, action: Action::Rebuild(Box::new(hive)) }],
        caution: None,
        rule: None,
        sources: Vec::new(),
    }))
}

#[cfg(test)]
mod tests {
    use super::WRAP_MEAN_C;

    #[test]
    fn a_wrap_goes_on_by_the_jobs_own_figure() {
        let triggers = crate::jobs::Triggers::shipped().unwrap();
        assert!((WRAP_MEAN_C - triggers.wrap_mean.value).abs() < 1e-9);
    }
}
