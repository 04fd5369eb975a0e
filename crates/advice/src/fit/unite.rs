//! One colony put to another: with which, whether, by when and how. Nothing sick goes anywhere.

use jiff::ToSpan;
use snowhum_say::Tongue;
use snowhum_winter::{Action, Event};

use super::answer::{Carried, Uniting};
use super::look::Look;
use super::scales::mites::mites_first;
use crate::cautions::Hazard;
use crate::queen_trouble::QueenTrouble;
use crate::statistics::rounded;
use crate::words::day;

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
fn against(look: &Look<'_>, at: usize, with: Option<usize>) -> Vec<String> {
    let mut against: Vec<String> = look
        .health
        .sick(look.colony(at))
        .into_iter()
        .map(|why| format!("it is sick ({}): a sick colony is never put to another", Tongue::BRITISH.say(&why)))
        .collect();
    if with.is_none() {
        against.push(
            "no healthy, queenright colony of the yard, its mites under the line or seen to be treated, is stronger: two weak ones do not make a strong one"
                .to_owned(),
        );
    }
    let last = &look.dates.unite_by;
    if look.today() > last.p90 {
        against.push(format!(
            "it is too late: after about {} colonies here are clustered and no longer merge, least of all in December",
            day(last.p50)
        ));
    }
    against
}

fn steps(look: &Look<'_>, at: usize, with: usize) -> Vec<String> {
    let (weak, strong) = (&look.colony(at).name, &look.colony(with).name);
    let last = &look.dates.unite_by;
    let looked = [at, with].iter().all(|place| look.colony(*place).autumn.troubles.is_some());
    let mut steps = Vec::new();
    if !looked {
        steps.push(format!("first look through the brood of {weak} and {strong}; {}", Hazard::Foulbrood.clause()));
    }
    steps.push(queen(look, at, with));
    steps.push(format!(
        "towards evening lay one sheet of newspaper with a few slits over {strong} and set {weak}'s box on it"
    ));
    if !same_frames(look, at, with) {
        steps.push("their frames differ: shake or brush the bees of the weak one into an empty box of the other's size over the sheet, and leave combs that do not fit".to_owned());
    }
    steps.push("leave them for a week, then take away what is empty; the weak one's own stand is cleared, so that stragglers go to a neighbour".to_owned());
    let today = look.today();
    let close = today.saturating_add(7.days()) > last.p50;
    steps.push(format!(
        "be done by about {} ({} to {}) here, before they cluster{}",
        day(last.p50),
        day(last.p10),
        day(last.p90),
        if close { ": that is now or not at all" } else { "" }
    ));
    steps
}

/// Which queen is kept.
fn queen(look: &Look<'_>, at: usize, with: usize) -> String {
    let (weak, strong) = (look.colony(at), look.colony(with));
    if QueenTrouble::of(look.colony(at)).is_some() {
        return format!("keep {}'s queen; make sure that no queen is left in {}", strong.name, weak.name);
    }
    let younger = |weak: Option<i16>, strong: Option<i16>| matches!((weak, strong), (Some(w), Some(s)) if w > s);
    let weak_is_better = younger(weak.queen.year, strong.queen.year)
        && !weak.queen.late_mated
        && weak.queen.seen_or_laying == Some(true);
    let (kept, gone) = if weak_is_better { (weak, strong) } else { (strong, weak) };
    let year = kept.queen.year.map_or_else(String::new, |year| format!(" (of {year})"));
    format!(
        "keep {}'s queen{year}: find and remove {}'s the day before; bees left to choose may lose both",
        kept.name, gone.name
    )
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
