//! Mites, against the line of the region and month.

use snowhum_apiary::{Mites, Trouble};
use snowhum_say::Tongue;
use snowhum_units::Range;

use super::shown::Shown;
use crate::fit::answer::{Scale, Usual, What};
use crate::fit::look::Look;
use crate::site::figures::mite_region;
use crate::sums::mites::answer::ColonyMites;
use crate::sums::mites::lines::Line;
use crate::sums::mites::{Counted, MitesQuestion, Sample, line_for, mites};
use crate::words::{day, season_month};

pub(super) fn scale(look: &Look<'_>, at: usize) -> Scale {
    let counted = count(look, at);
    let figure = counted.as_ref().map(|(one, _)| Range { p10: one.uneven.low, p50: one.rate, p90: one.uneven.high });
    let region = mite_region(&look.base.question.apiary.site);
    let line = counted.as_ref().map(|(_, line)| line.clone()).or_else(|| line_for(region.as_deref(), look.month()));
    let usual = line.map(|line| Usual {
        low: 0.0,
        high: line.value[0],
        region: line.region,
        hive: "any hive".to_owned(),
        says: line.says,
        source: line.source,
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

fn says(look: &Look<'_>, at: usize, counted: Option<&ColonyMites>) -> String {
    let colony = look.colony(at);
    let (Some(one), Mites::Counted { on, .. }) = (counted, &colony.mites) else {
        return "nobody counted".to_owned();
    };
    let mut says = format!(
        "{} in {} bees on {}: {:.1} per 100 ({:.1} to {:.1}), {}",
        one.found,
        one.bees.unwrap_or(0),
        day(*on),
        one.rate,
        one.uneven.low,
        one.uneven.high,
        Tongue::BRITISH.say(&one.verdict.words())
    );
    if look.treated_since_count(at) {
        says += "; treated since, so the count is no longer what is there";
    }
    says
}

fn look_for(look: &Look<'_>, at: usize) -> Option<String> {
    if look.colony(at).mites == Mites::NotCounted {
        return Some(
            "wash 300 bees from a comb with open brood. Seeing no mites says little: of samples of 100 bees 37 in 100 show none where 1 bee in 100 carries one"
                .to_owned(),
        );
    }
    (look.month() == 10 || look.month() == 9).then(|| {
        format!(
            "count again in October, before bees cluster about {}: robbers bring mites home",
            day(look.dates.cluster.p50)
        )
    })
}
