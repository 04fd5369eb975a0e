//! The queen's age, and what is known against her.

use snowhum_apiary::QueenState;
use snowhum_say::{Message, fit as say};
use snowhum_units::Range;

use super::shown::Shown;
use crate::fit::answer::{Scale, Usual, What};
use crate::fit::look::Look;
use crate::queen_trouble::QueenTrouble;

pub(super) fn scale(look: &Look<'_>, at: usize) -> Scale {
    let queen = &look.colony(at).queen;
    let row = &look.figures.queen;
    let usual = Usual {
        low: row.value[0],
        high: row.value[1],
        region: say::queen_region(),
        hive: say::any_hive(),
        says: say::queen_young(),
        source: (&row.source).into(),
        status: row.status,
    };
    let figure = queen.year.map(|born| Range::exact(f64::from((winter(look) - born).max(0))));
    let shown = Shown {
        what: What::Queen,
        figure,
        unit: "winters behind her",
        usual: Some(usual),
        end: 4.0,
        decimals: 0,
        says: says(look, at),
    };
    let mut scale = shown.scale();
    scale.other_school = Some(say::queen_other());
    scale.look = look_for(look, at);
    scale
}

/// The year the winter of the plan begins in.
fn winter(look: &Look<'_>) -> i16 {
    look.base.question.autumn_from.year()
}

fn says(look: &Look<'_>, at: usize) -> Message {
    let colony = look.colony(at);
    let born = colony.queen.year.map_or_else(say::queen_no_year, say::queen_born);
    let mut parts = vec![if colony.queen.late_mated { say::queen_late(born) } else { born }];
    parts.extend(QueenTrouble::of(colony).map(QueenTrouble::why));
    match colony.autumn.queen {
        Some(QueenState::Introduced) => parts.push(say::queen_introduced()),
        Some(QueenState::Cast) => parts.push(say::queen_cast()),
        _ => {}
    }
    say::parts(parts)
}

fn look_for(look: &Look<'_>, at: usize) -> Option<Message> {
    let colony = look.colony(at);
    let unseen = colony.queen.seen_or_laying != Some(true) && colony.autumn.queen.is_none();
    let last = look.dates.requeen_by.p50;
    unseen.then(|| say::queen_unseen(last, look.today() > last))
}
