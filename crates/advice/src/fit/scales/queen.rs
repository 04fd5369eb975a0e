//! The queen's age, and what is known against her.

use snowhum_apiary::QueenState;
use snowhum_units::Range;

use super::shown::Shown;
use crate::fit::answer::{Scale, Usual, What};
use crate::fit::look::Look;
use crate::queen_trouble::QueenTrouble;
use crate::words::day;

pub(super) fn scale(look: &Look<'_>, at: usize) -> Scale {
    let queen = &look.colony(at).queen;
    let row = &look.figures.queen;
    let usual = Usual {
        low: row.value[0],
        high: row.value[1],
        region: "anywhere".to_owned(),
        hive: "any hive".to_owned(),
        says: row.says.clone(),
        source: row.source.clone(),
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
    scale.other_school = Some("a queen of two winters that laid well is kept by many (common practice)".to_owned());
    scale.look = look_for(look, at);
    scale
}

/// The year the winter of the plan begins in.
fn winter(look: &Look<'_>) -> i16 {
    look.base.question.autumn_from.year()
}

fn says(look: &Look<'_>, at: usize) -> String {
    let queen = &look.colony(at).queen;
    let mut says = match queen.year {
        Some(year) => format!("of {year}"),
        None => "her year is not known".to_owned(),
    };
    if queen.late_mated {
        says += ", mated in August or later: such queens fail more often";
    }
    if let Some(trouble) = QueenTrouble::of(look.colony(at)) {
        says += &format!("; {}", snowhum_say::Tongue::BRITISH.say(&trouble.why()));
    }
    match look.colony(at).autumn.queen {
        Some(QueenState::Introduced) => says += "; put in this autumn: look for her own brood before trusting her",
        Some(QueenState::Cast) => says += "; a late swarm: only its own sealed worker brood proves her",
        _ => {}
    }
    says
}

fn look_for(look: &Look<'_>, at: usize) -> Option<String> {
    let colony = look.colony(at);
    let unseen = colony.queen.seen_or_laying != Some(true) && colony.autumn.queen.is_none();
    let last = &look.dates.requeen_by;
    let late = look.today() > last.p50;
    unseen.then(|| {
        let then = if late {
            format!(
                "a queen given after about {} seldom does well here (judgement): if she is missing, unite",
                day(last.p50)
            )
        } else {
            format!("if she is missing, give a mated queen by about {} here (judgement)", day(last.p50))
        };
        format!("she was not seen: look for eggs or sealed worker brood; {then}")
    })
}
