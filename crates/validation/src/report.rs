//! The page `docs/VALIDATION.md`.

mod figures;
mod founding;
mod real;
mod weather;

pub(crate) use figures::figures;
pub use founding::NOT_INDEPENDENT;

use std::fmt::Write as _;

use crate::check::{Check, Class};
use crate::elsewhere::{PROMISES, Promise};
use crate::picture::Picture;
use crate::validation::Validation;

const OPENING: &str = "\
# How far to trust what Snowhum computes

This page is made afresh by `cargo xtask validate` from the code as it stands: every figure under *computed* comes out of
the shipped laws and the winter model, every figure under *expected* from outside. A figure outside its band stays
here with its reason; bands are not widened to fit.

## In short

| what | trust |
|---|---|
| walls, lids, air through holes, condensation laws, sun | the laws are right to far better than any hive is built; what you say about your hive limits the answer |
| heat and food of a full colony in frost, no brood | right within about a third of what scales and calorimeters found |
| food with brood | the rise from February is there; its size within a factor of one and a half |
| nuclei | may eat up to four fifths more than computed |
| very strong colonies on mild days | a bee of theirs eats as much as one of a small colony, where a third less was measured |
| what insulation saves | in frost yes, with and without brood; on mild days nothing, and it costs nothing |
| where water settles | which surface, and what insulation does to it: yes; grams a day: roughly |
| cluster and brood temperatures | set from measurements, so they agree; the cluster's surface with brood is too warm |
| numbers of bees, their deaths | the size and course of what long winters show |
| made winters | as cold, changeable and wet as the inputs say; in the deepest cold of one spot the built-in climate can be off by several kelvins either way: give the site's known design cold or a weather file |
| mites, queens, losses | parameters are fitted to the losses of real yards (class D): a range for a yard like others is honest, and wide, since years and yards differ more than anything that is known of a hive |

What this page does not show: no winter of real hives has been replayed hour by hour with its own weather; class D runs yards
like the real ones in the climate of their place.

";

const CLASSES: &str = "\
- **A exact**: a law with one right answer; all must be inside.
- **B shape**: what must rise, fall or stay; all must be inside.
- **C numbers**: measured numbers, from a list fixed with the design; at least nine in ten must be inside.
- **further**: other measured or derived numbers, or weaker sources; shown so that gaps are seen, none is demanded.
- **practice**: what the trade finds; shown, none is demanded.

";

/// The whole page.
pub(crate) fn page(validation: &Validation) -> String {
    let Validation { parameters, weather, .. } = validation;
    let checks = validation.checks();
    let mut page = String::from(OPENING);
    pictures(&mut page, validation.pictures());
    summary(&mut page, checks);
    outside(&mut page, checks);
    for class in Class::ALL {
        table(&mut page, class, checks);
    }
    real::write(&mut page, &validation.real);
    weather::write(&mut page, weather);
    elsewhere(&mut page);
    founding::set_and_checked(&mut page, checks, parameters);
    founding::open(&mut page, parameters);
    page
}

fn pictures(page: &mut String, pictures: &[Picture]) {
    line(
        page,
        format_args!(
            "## In pictures\n\nComputed figures are blue, expected ones rust-brown with dashed or whiskered bands.\n"
        ),
    );
    for Picture { file, title, description, .. } in pictures {
        line(page, format_args!("![{title}](pictures/{file})\n\n{description}\n"));
    }
}

fn elsewhere(page: &mut String) {
    line(
        page,
        format_args!(
            "## Kept by tests elsewhere\n\n\
             What these look at is not open to anyone outside its crate, so that no figure stands here; `cargo xtask test` \
             fails when one no longer holds.\n\n\
             | promise | test | file |\n|---|---|---|"
        ),
    );
    for Promise { promise, test, file } in PROMISES {
        line(page, format_args!("| {promise} | `{test}` | `{file}` |"));
    }
    page.push('\n');
}

/// A line added to the page; writing to a string cannot fail.
fn line(page: &mut String, text: std::fmt::Arguments<'_>) {
    let _ = page.write_fmt(text);
    page.push('\n');
}

fn summary(page: &mut String, checks: &[Check]) {
    line(page, format_args!("## Counts\n\n| class | checks | inside | outside |\n|---|---|---|---|"));
    for class in Class::ALL {
        let of_class = || checks.iter().filter(|check| check.class == class);
        let inside = of_class().filter(|check| check.is_inside()).count();
        let all = of_class().count();
        line(page, format_args!("| {class} | {all} | {inside} | {} |", all - inside));
    }
    line(page, format_args!("\n{CLASSES}## Outside, and why\n"));
}

fn outside(page: &mut String, checks: &[Check]) {
    for check in checks.iter().filter(|check| !check.is_inside()) {
        let Check { id, quantity, expected, computed, .. } = check;
        let why = check.explanation.unwrap_or("not explained yet");
        line(page, format_args!("- **{id}**, {quantity}: {computed} where {expected} is expected. Why: {why}."));
    }
    page.push('\n');
}

fn table(page: &mut String, class: Class, checks: &[Check]) {
    line(
        page,
        format_args!("## {class}\n\n| check | quantity | expected | computed | | source |\n|---|---|---|---|---|---|"),
    );
    for check in checks.iter().filter(|check| check.class == class) {
        let Check { id, quantity, expected, computed, verdict, source, status, .. } = check;
        let remark = check.explanation.filter(|_| check.is_inside());
        let remark = remark.map_or_else(String::new, |remark| format!(" ({remark})"));
        line(
            page,
            format_args!("| {id} | {quantity}{remark} | {expected} | {computed} | {verdict} | {source}; {status} |"),
        );
    }
    page.push('\n');
}
