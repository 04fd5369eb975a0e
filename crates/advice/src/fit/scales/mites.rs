//! Mites, against the line of the region and month.

use snowhum_apiary::{Mites, Trouble};
use snowhum_say::{Message, fit as say};
use snowhum_units::Range;

use super::shown::Shown;
use crate::fit::answer::{Scale, Usual, What};
use crate::fit::look::Look;
use crate::seasons::season_month;
use crate::site::figures::mite_region;
use crate::sums::mites::answer::ColonyMites;
use crate::sums::mites::lines::Line;
use crate::sums::mites::{Counted, MitesQuestion, Sample, line_for, mites};

pub(super) fn scale(look: &Look<'_>, at: usize) -> Scale {
    let counted = count(look, at);
    let figure = counted.as_ref().map(|(one, _)| Range { p10: one.uneven.low, p50: one.rate, p90: one.uneven.high });
    let region = mite_region(&look.base.question.apiary.site);
    let line = counted.as_ref().map(|(_, line)| line.clone()).or_else(|| line_for(region.as_deref(), look.month()));
    let usual = line.map(|line| Usual {
        low: 0.0,
        high: line.value[0],
        region: line.region(),
        hive: say::any_hive(),
        says: line.says,
        source: line.source.into(),
        status: line.status,
    });
    let shown = Shown {
        what: What::Mites,
        figure,
        unit: "mites per 100 bees",
        usual,
        end: 6.0,
        decimals: 1,
        says: says(look, at, counted.as_ref().map(|(one, _)| one)),
    };
    let mut scale = shown.scale();
    scale.look = look_for(look, at);
    scale
}

/// The colony's last count against its line; none where nobody counted.
pub(in crate::fit) fn count(look: &Look<'_>, at: usize) -> Option<(ColonyMites, Line)> {
    let colony = look.colony(at);
    let Mites::Counted { found, bees, on } = colony.mites else { return None };
    let site = &look.base.question.apiary.site;
    let question = MitesQuestion {
        samples: vec![Sample { colony: colony.name.clone(), found, by: Counted::Wash { bees } }],
        region: mite_region(site),
        month: Some(season_month(on, site.latitude.get())),
    };
    let answer = mites(&question).ok()?;
    Some((answer.colonies.into_iter().next()?, answer.line))
}

/// Whether mites come before anything else: over the line and nothing done about them, or so many that their viruses are
/// in the bees.
pub(in crate::fit) fn mites_first(look: &Look<'_>, at: usize) -> bool {
    let Some((count, line)) = count(look, at) else { return false };
    let colony = look.colony(at);
    let many = count.rate >= look.figures.virus.value;
    let wings = colony.autumn.troubles.iter().flatten().any(|trouble| *trouble == Trouble::CrumpledWings);
    many || wings || (count.rate >= line.value[1] - 1e-9 && !look.treated_since_count(at))
}

fn says(look: &Look<'_>, at: usize, counted: Option<&ColonyMites>) -> Message {
    let (Some(one), Mites::Counted { on, .. }) = (counted, &look.colony(at).mites) else {
        return say::mites_not_counted();
    };
    let (bees, uneven) = (one.bees.unwrap_or(0), &one.uneven);
    let says = say::mites(bees, one.found, uneven.high, uneven.low, *on, one.rate, one.verdict.words());
    if look.treated_since_count(at) { say::mites_treated(says) } else { says }
}

fn look_for(look: &Look<'_>, at: usize) -> Option<Message> {
    if look.colony(at).mites == Mites::NotCounted {
        return Some(say::mites_wash());
    }
    matches!(look.month(), 9 | 10).then(|| say::mites_again(look.dates.cluster.p50))
}
