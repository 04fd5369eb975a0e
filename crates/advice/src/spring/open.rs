//! On which of the coming days a hive may be opened.

use jiff::ToSpan;
use snowhum_say::{Message, in_hundred, spring as say};
use snowhum_units::Kelvin;
use snowhum_winter::Environment;

use super::answer::{OpenDay, OpenDays};
use super::question::SpringQuestion;
use crate::jobs::triggers::Triggers;
use crate::statistics::rounded;
use crate::yard;

/// Days ahead that are looked at.
const AHEAD: usize = 10;
/// Chance from which a day is named.
const LIKELY: f64 = 0.5;

pub(super) fn days(question: &SpringQuestion<'_>) -> OpenDays {
    let apiary = question.apiary;
    let environment = yard::environment(&apiary.site, question.winter, apiary.as_of);
    let behind = question.now.as_of.duration_since(apiary.as_of).as_hours() / 24 + 1;
    let behind = usize::try_from(behind).unwrap_or(0);
    let days: Vec<OpenDay> = (0..AHEAD).map_while(|at| day(question, &environment, behind, at)).collect();
    let any = on_any_day(question, &environment, behind, days.len());
    let first_for_combs = days.iter().find(|day| day.first_look >= LIKELY).map(|day| day.on);
    OpenDays { says: says(question, &days, any), days, first_for_combs, other_school: other_school(question.triggers) }
}

fn day(question: &SpringQuestion<'_>, environment: &Environment, behind: usize, at: usize) -> Option<OpenDay> {
    let first = 24 * (behind + at);
    if first + 24 > environment.hours() {
        return None;
    }
    let t = question.triggers;
    let share = |fits: &dyn Fn(usize, usize) -> bool| {
        let paths = environment.paths();
        let so = (0..paths).filter(|path| (first + 8..first + 18).any(|hour| fits(hour, *path))).count();
        rounded(so as f64 / paths as f64, 2)
    };
    Some(OpenDay {
        on: question.now.as_of.saturating_add((at as i64 + 1).days()),
        lid: share(&|hour, path| outside(environment, hour, path, t.lid_air.value, t.lid_wind.value)),
        first_look: share(&|hour, path| is_fit(question, environment, hour, path)),
        full_look: share(&|hour, path| combs(environment, hour, path, t.full_look_air.value, t.look_wind.value)),
    })
}

/// Share of the weather paths that have a day fit for a first look among so many.
fn on_any_day(question: &SpringQuestion<'_>, environment: &Environment, behind: usize, days: usize) -> f64 {
    let paths = environment.paths();
    let hours =
        |path: usize| (behind..behind + days).flat_map(|day| 24 * day + 8..24 * day + 18).map(move |hour| (hour, path));
    let so =
        (0..paths).filter(|path| hours(*path).any(|(hour, path)| is_fit(question, environment, hour, path))).count();
    so as f64 / paths.max(1) as f64
}

/// Whether an hour is fit for a first look at combs.
fn is_fit(question: &SpringQuestion<'_>, environment: &Environment, hour: usize, path: usize) -> bool {
    let t = question.triggers;
    combs(environment, hour, path, t.look_air.value, t.look_wind.value)
}

fn combs(environment: &Environment, hour: usize, path: usize, air: f64, wind: f64) -> bool {
    environment.flies(hour, path) && outside(environment, hour, path, air, wind)
}

fn outside(environment: &Environment, hour: usize, path: usize, air: f64, wind: f64) -> bool {
    environment.outside(hour, path).is_some_and(|here| here.air.celsius() >= air && here.wind.get() <= wind)
}

fn says(question: &SpringQuestion<'_>, days: &[OpenDay], any: f64) -> Message {
    let likely = days.iter().find(|day| day.first_look >= LIKELY);
    let best = days.iter().max_by(|a, b| a.first_look.total_cmp(&b.first_look));
    let usual = question.jobs.window("first-look").map(|window| say::open_usual(&window.when));
    let coming = match (likely, best) {
        (Some(day), _) => say::open_likely(day.on, in_hundred(day.first_look)),
        (None, Some(best)) if best.first_look >= 0.1 => {
            say::open_any(in_hundred(any), days.len(), best.on, in_hundred(best.first_look))
        }
        _ => say::open_cold(),
    };
    Message::sentences([coming, usual.unwrap_or_default()])
}

/// Schools of lifting combs (common practice).
fn other_school(triggers: &Triggers) -> Message {
    let [first, full, least] =
        [&triggers.look_air, &triggers.full_look_air, &triggers.comb_air].map(|one| Kelvin::from_celsius(one.value));
    say::open_others(first, full, least)
}
