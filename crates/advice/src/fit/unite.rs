//! One colony put to another: with which, whether, by when and how. Nothing sick goes anywhere.

use jiff::ToSpan;
use snowhum_say::{Message, fit as say};
use snowhum_winter::{Action, Event};

use super::answer::{Carried, Uniting};
use super::look::Look;
use super::scales::mites::mites_first;
use crate::cautions::Hazard;
use crate::queen_trouble::QueenTrouble;
use crate::statistics::rounded;

/// How a weak or queenless colony would be put to another.
pub(super) fn uniting(look: &Look<'_>, at: usize) -> Uniting {
    let with = partner(look, at);
    let against = against(look, at, with);
    let advised = against.is_empty();
    Uniting {
        with: with.map(|place| look.colony(place).name.clone()),
        steps: with.filter(|_| advised).map(|place| steps(look, at, place)).unwrap_or_default(),
        carried: with.map(|place| carried(look, at, place)),
        advised,
        against,
    }
}

/// The colony it goes to: healthy, queenright, its mites under the line, not weak itself and with more bees; of these one that is
/// not short of food, then one with frames of the same size, then the one with fewest bees.
fn partner(look: &Look<'_>, at: usize) -> Option<usize> {
    let bees = |place: usize| look.colony(place).bees.p50;
    let fit = |place: &usize| {
        *place != at
            && !look.is_weak(*place)
            && bees(*place) >= bees(at)
            && look.colony(*place).queen.seen_or_laying != Some(false)
            && look.health.may_give_and_take(look.colony(*place))
            && !mites_first(look, *place)
    };
    let second = |place: usize| (look.is_short(place), !same_frames(look, at, place));
    look.places().filter(fit).min_by(|a, b| second(*a).cmp(&second(*b)).then(bees(*a).total_cmp(&bees(*b))))
}

fn same_frames(look: &Look<'_>, at: usize, other: usize) -> bool {
    let depth = |place: usize| look.housed(place).hive.boxes.last().map(|one| (one.depth, one.comb_side));
    match (depth(at), depth(other)) {
        (Some((depth, side)), Some((other, other_side))) => depth == other && (side / other_side - 1.0).abs() < 0.02,
        _ => false,
    }
}

/// Why the two are not put together.
fn against(look: &Look<'_>, at: usize, with: Option<usize>) -> Vec<Message> {
    let mut against: Vec<Message> = look.health.sick(look.colony(at)).into_iter().map(say::against_sick).collect();
    if with.is_none() {
        against.push(say::against_none());
    }
    let last = &look.dates.unite_by;
    if look.today() > last.p90 {
        against.push(say::against_late(last.p50));
    }
    against
}

fn steps(look: &Look<'_>, at: usize, with: usize) -> Vec<Message> {
    let (weak, strong) = (&look.colony(at).name, &look.colony(with).name);
    let last = &look.dates.unite_by;
    let looked = [at, with].iter().all(|place| look.colony(*place).autumn.troubles.is_some());
    let mut steps = Vec::new();
    if !looked {
        steps.push(say::step_look(Hazard::Foulbrood.clause(), strong, weak));
    }
    steps.extend([queen(look, at, with), say::step_paper(strong, weak)]);
    if !same_frames(look, at, with) {
        steps.push(say::step_frames());
    }
    let is_close = look.today().saturating_add(7.days()) > last.p50;
    steps.extend([say::step_leave(), say::step_by(last.p10, is_close, last.p50, last.p90)]);
    steps
}

/// Which queen is kept.
fn queen(look: &Look<'_>, at: usize, with: usize) -> Message {
    let (weak, strong) = (look.colony(at), look.colony(with));
    if QueenTrouble::of(look.colony(at)).is_some() {
        return say::step_keep(&strong.name, &weak.name);
    }
    let younger = |weak: Option<i16>, strong: Option<i16>| matches!((weak, strong), (Some(w), Some(s)) if w > s);
    let weak_is_better = younger(weak.queen.year, strong.queen.year)
        && !weak.queen.late_mated
        && weak.queen.seen_or_laying == Some(true);
    let (kept, gone) = if weak_is_better { (weak, strong) } else { (strong, weak) };
    match kept.queen.year {
        Some(year) => say::step_choose_year(&gone.name, &kept.name, year),
        None => say::step_choose(&gone.name, &kept.name),
    }
}

fn carried(look: &Look<'_>, at: usize, with: usize) -> Carried {
    let united = [Event { day: 0, colony: at, action: Action::Unite { into: with } }];
    let (gain, error) = look.gain(&united, &[with]);
    let strong_alone = look.fed_chance(with);
    Carried {
        weak_alone: rounded(look.fed_chance(at), 3),
        strong_alone: rounded(strong_alone, 3),
        together: rounded((strong_alone + gain).clamp(0.0, 1.0), 3),
        plus_minus: rounded(2.0 * error, 3),
    }
}
