//! Hunger kept apart from mites: a colony that mites make small eats less, and so would look the better the more it has.

use snowhum_units::Kilogram;
use snowhum_winter::{Action, Event, MemberEnd, Trajectory};

use crate::actions::touched;
use crate::plan::Base;
use crate::shortage::WORTH_FEEDING;
use crate::statistics::mean_and_error;

/// Stores given beyond a colony's shortage to the one that had no mites, whose more bees eat more (judgement).
const AMPLE: Kilogram = Kilogram::new(10.0);

/// What each colony's chance of being alive, fed and queenright as it stands can be at most: its chance once fed, times the share
/// that hunger leaves of the same colony had it no mites. 1 where food is not short.
pub(crate) fn at_most(base: &Base<'_>) -> Vec<f64> {
    let is_asked = |at: &usize| base.shortages[*at] >= WORTH_FEEDING;
    let asked: Vec<usize> = (0..base.housed.len()).filter(is_asked).collect();
    let mut most = vec![1.0; base.housed.len()];
    if asked.is_empty() {
        return most;
    }
    let event = |colony: usize, action: Action| Event { day: 0, colony, action };
    let clean: Vec<Event> = asked.iter().map(|at| event(*at, Action::HadNoMites)).collect();
    let food = |at: &usize| event(*at, Action::Syrup { stores: base.shortages[*at] + AMPLE });
    let fed: Vec<Event> = clean.iter().cloned().chain(asked.iter().map(food)).collect();
    let places = touched(base, &clean);
    let (hungry, fed) = (base.rerun(&places, &clean), base.rerun(&places, &fed));
    let mean = |run: &Trajectory, of: &dyn Fn(&MemberEnd) -> f64| {
        mean_and_error(&run.ends.iter().map(of).collect::<Vec<_>>()).0
    };
    for ((at, hungry), fed) in places.into_iter().zip(&hungry).zip(&fed).filter(|((at, _), _)| asked.contains(at)) {
        let kept = mean(hungry, &|end| end.fed_and_queenright(base.fed()));
        let all = mean(fed, &|end| end.queenright);
        most[at] = base.queenright_if_fed[at] * (kept / all.max(1e-9)).min(1.0);
    }
    most
}
