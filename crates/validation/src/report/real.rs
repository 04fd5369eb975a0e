//! The part of the page on real winters.

use snowhum_calibration::score::own_average;

use super::line;
use crate::real_winters::{RealWinters, shown};
use snowhum_figures::calibration::{MISSED, MISSED_DAYS};

const RATIOS: &str = "
### Months over months

Food of one month over that of the month before, net of dead bees. Two single hives of one study, one that began to brood a
month before the other: what the model holds of a middling colony is held against both together; each alone shows how far one
colony goes from the middle.

| months | found | computed | |
|---|---|---|---|";

const SCORES: &str = "
### Each study foretold by the others

Parameters fitted to all studies but the one named. Brier: mean square of what was missed; log: mean logarithm of the chance
given to what happened; both for rows of counts, higher log and lower Brier are better. *prior*: the ranges before any winter
was read. *own average*: the study's bare share of losses, which has seen it. The version before knew no background and no
joint draws: it gave Ontario 5.6 lost in 100 where 27.2 were, and mites found 13.7 against 16.9 where none were found.

| study | rows within half | within nine tenths | Brier: others, prior, own average | log: others, prior, own average |
|---|---|---|---|---|";

pub(super) fn write(page: &mut String, real: &RealWinters) {
    opening(page);
    for row in &real.rows {
        let (kind, [low, middle, high]) = (row.row.kind, row.computed);
        let found = shown(kind, row.row.observed());
        let computed = format!("{} ({} to {})", shown(kind, middle), shown(kind, low), shown(kind, high));
        let (mark, fitted) =
            (if row.is_inside() { "inside" } else { "outside" }, if row.row.fitted { "fitted" } else { "" });
        line(page, format_args!("| {} | {} | {found} | {computed} | {mark} | {fitted} |", row.study, row.row.what));
    }
    let inside = real.rows.iter().filter(|row| row.is_inside()).count();
    line(page, format_args!("\n{inside} of {} rows inside; four fifths must be.", real.rows.len()));
    line(page, format_args!("{RATIOS}"));
    for ratio in real.ratios() {
        let ([found, computed], within) = (ratio.values, ratio.is_within_a_fifth());
        let mark = if within { "within a fifth" } else { "outside" };
        line(page, format_args!("| {} | {found:.2} | {computed:.2} | {mark} |", ratio.what));
    }
    line(page, format_args!("{SCORES}"));
    for study in &real.studies {
        let Some((others, prior)) = real.scores_of(&study.id) else { continue };
        let own = own_average(&study.rows);
        let three = |values: [Option<f64>; 3]| {
            values.map(|value| value.map_or("-".to_owned(), |value| format!("{value:.3}"))).join(", ")
        };
        line(
            page,
            format_args!(
                "| {} | {} of {} | {} | {} | {} |",
                study.id,
                others.within_half,
                others.rows,
                others.within_nine_tenths,
                three([others.brier, prior.brier, own.map(|own| own.0)]),
                three([others.log, prior.log, own.map(|own| own.1)])
            ),
        );
    }
    line(page, format_args!("\nSources:\n"));
    for study in &real.studies {
        line(page, format_args!("- {}: {}", study.id, study.source));
    }
    page.push('\n');
}

fn opening(page: &mut String) {
    line(
        page,
        format_args!(
            "\
## D real winters

What was found in real yards, beside what the model computes for yards like them in that place's climate, its months
brought to those of the study where they are known. The range holds nine in ten: it carries what is not known of the parameters (256 joint draws, `data/winter_joint_draws.toml`), years and yards
that differ, colonies that differ, the chance of the count and what the model may miss ({MISSED} of a logit or logarithm, {MISSED_DAYS} days:
judgement). *fitted* rows helped to set the parameters, the others were only checked. What a study does not tell of its colonies
is a range in `data/real_winters.toml`, and judgement.

| study | what | found | computed | | |
|---|---|---|---|---|---|"
        ),
    );
}
