//! When a yard is without brood: one rule for every answer that names such a day.
//!
//! The model's brood alone ends too early to rest a treatment on, since brood is seldom counted in autumn; the trade's rule
//! (three weeks after the first hard frost) holds beside it, and the later of the two counts.

use jiff::civil::Date;
use snowhum_units::{Kelvin, Range};
use snowhum_winter::{Daily, Trajectory};

use crate::ahead::run::Run;
use crate::dates::Dates;
use crate::jobs::triggers::Triggers;
use crate::seasons;

/// Days of `autumn` before which no frost counts as autumn's.
const SUMMER: usize = 31;

/// Brood through the winter, over all colonies of the yard; days are those of the plan's run, one for each member.
pub(crate) struct BroodDays {
    /// First day on which no colony has brood, by the model and by the trade's rule.
    pub(crate) gone: Dates,
    /// First day after the solstice on which a colony has brood to be seen.
    pub(crate) back: Dates,
}

impl BroodDays {
    /// Reads a run that kept its days.
    pub(crate) fn of(run: &Run<'_>, triggers: &Triggers) -> Self {
        let members = run.trajectories.iter().map(Trajectory::members).min().unwrap_or(0);
        let none = triggers.brood_none.value as f32;
        let brood = |day: usize, member: usize| {
            run.trajectories.iter().filter_map(move |one| one.of_member(Daily::Brood, day, member)).fold(0.0, f32::max)
        };
        let gone = |member: usize| (0..run.days()).find(|&day| brood(day, member) < none).map(|day| day as i64);
        let back = |member: usize| {
            let first = |one: &Trajectory| seasons::first_brood(run, one, member);
            run.trajectories.iter().filter_map(first).min().map(|day| day as i64)
        };
        let by_model = Dates::of((0..members).map(gone).collect());
        let by_rule = Dates::of((0..members).map(|member| hard_frost(run, triggers, member)).collect());
        Self {
            gone: by_model.later(&by_rule.moved(triggers.broodless_after_days.value)),
            back: Dates::of((0..members).map(back).collect()),
        }
    }
}

/// When brood is gone and when it is there again, in the hives of the yard together; none where the plan's days show no such
/// time.
pub(crate) fn broodless_days(run: &Run<'_>) -> Option<[Range<Date>; 2]> {
    let days = BroodDays::of(run, &Triggers::shipped().ok()?);
    let range = |dates: &Dates| {
        let at = |share| dates.at(share, run.question.as_of);
        Some(Range { p10: at(0.1)?, p50: at(0.5)?, p90: at(0.9)? })
    };
    let dates = [range(&days.gone)?, range(&days.back)?];
    (dates[0].p50 < dates[1].p50).then_some(dates)
}

/// The first hard frost of a member's autumn, in days of the plan's run: of the autumn's weather, and where that ends without one,
/// of the winter's.
fn hard_frost(run: &Run<'_>, triggers: &Triggers, member: usize) -> Option<i64> {
    let question = run.question;
    let ahead = question.as_of.duration_since(question.autumn_from).as_hours() / 24;
    let limit = Kelvin::from_celsius(triggers.hard_frost.value);
    let autumn = of_member(&question.autumn.0, member)?;
    let days = autumn.len() / 24;
    let in_autumn = frost(autumn, limit, SUMMER).map(|day| day as i64 - ahead);
    let beyond = usize::try_from(days as i64 - ahead).unwrap_or(0);
    in_autumn
        .or_else(|| frost(&of_member(&question.winter.paths, member)?.temperature, limit, beyond).map(|day| day as i64))
}

fn of_member<T>(paths: &[T], member: usize) -> Option<&T> {
    paths.get(member % paths.len().max(1))
}

/// First day from `from` on with an hour below `limit`.
fn frost(path: &[Kelvin], limit: Kelvin, from: usize) -> Option<usize> {
    path.chunks_exact(24).enumerate().skip(from).find(|(_, day)| day.iter().any(|air| *air < limit)).map(|(day, _)| day)
}
