//! Food: syrup while bees take it, the rest as solid feed before hunger, thin syrup in spring.

use snowhum_units::Kilogram;
use snowhum_winter::{Action, Event};

use super::answer::Line;
use super::ground::Ground;
use super::programme::Programme;
use super::task::Task;
use crate::actions::feed::{solid_day, solid_fondant, syrup_day};
use crate::actions::situation::Situation;
use crate::actions::thin_syrup;
use crate::ahead::shortage::WORTH_FEEDING;
use crate::course::Course;
use crate::over_rule;
use crate::statistics::rounded;
use crate::syrup::{STORES_PER_FONDANT, Strength, sugar_for};

/// What is short, fed with its dates.
pub(super) fn add(programme: &mut Programme, ground: &Ground<'_>, at: usize) {
    let base = ground.base;
    let was_fed = programme.held.was_fed();
    if !programme.held.is_over(Line::Food, base.shortage(at), WORTH_FEEDING.get(), was_fed) {
        return;
    }
    let short = Kilogram::new(base.shortages[at].get().max(WORTH_FEEDING.get()));
    let situation = Situation { base, colony: at };
    if thin_syrup::is_taken(base) {
        let sugar = sugar_for(short);
        let syrup_l = rounded(Strength::OneToOne.syrup_with(sugar).get() * 1e3, 1);
        let task = Task::FeedThinSyrup { sugar_kg: rounded(sugar.get(), 1), syrup_l };
        programme.add(ground, task, Some(thin_syrup::latest(&situation)));
        programme.events.push(event(thin_syrup::TAKEN, at, Action::Syrup { stores: short }));
        return;
    }
    let rest = short - syrup(programme, ground, at);
    if rest >= WORTH_FEEDING {
        solid(programme, ground, &situation, rest);
    }
}

fn event(day: usize, colony: usize, action: Action) -> Event {
    Event { day, colony, action }
}

/// As much as is wanted now and bees still take; gives the stores that it becomes.
fn syrup(programme: &mut Programme, ground: &Ground<'_>, at: usize) -> Kilogram {
    let base = ground.base;
    let as_of = base.question.as_of;
    let Some(course) = Course::of(as_of, base.finish_syrup_by, over_rule::now(base, at)) else {
        return Kilogram::new(0.0);
    };
    let task = Task::FeedSyrup { sugar_kg: rounded(course.sugar().get(), 1), syrup_l: rounded(course.litres(), 1) };
    programme.add(ground, task, Some(course.begin));
    let day = syrup_day(&course, as_of);
    programme.events.push(event(day, at, Action::Syrup { stores: course.stores }));
    course.stores
}

/// Solid feed, over the bees before the first go hungry: at once where that is near.
fn solid(programme: &mut Programme, ground: &Ground<'_>, situation: &Situation<'_>, rest: Kilogram) {
    let base = ground.base;
    let fondant = solid_fondant(rest);
    let day = solid_day(situation);
    let hungry = situation.early_hunger().map(|day| base.date(day));
    let at_once = ground.within(ground.thresholds.verdict_hungry_at_once.value);
    let by = match hungry {
        Some(hungry) if hungry <= at_once => ground.today,
        _ => base.date(day).max(ground.week()),
    };
    programme.add(ground, Task::FeedSolid { fondant_kg: fondant.get() }, Some(by));
    let action = Action::SolidFeed { stores: fondant * STORES_PER_FONDANT };
    programme.events.push(event(day, situation.colony, action));
}
