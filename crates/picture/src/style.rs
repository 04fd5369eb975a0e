//! The style of pictures: classes and custom properties with sane values, light and dark.

use crate::scene::Ink;
use crate::tint::Tint;
use std::collections::BTreeSet;
use std::fmt::Write;

/// The style a page needs for [`crate::Plate::inline`]. A page changes a colour by setting its custom property
/// (`--sn-wood`, `--sn-full`, …) on `.sn` after this sheet.
///
/// ```
/// let css = snowhum_picture::stylesheet();
/// assert!(css.contains("--sn-wood:#") && css.contains("prefers-color-scheme:dark"));
/// ```
#[must_use]
pub fn stylesheet() -> String {
    of(&Tint::ALL.into_iter().collect(), &Ink::ALL.into_iter().collect())
}

pub(crate) fn of(tints: &BTreeSet<Tint>, inks: &BTreeSet<Ink>) -> String {
    let mut tints = tints.clone();
    tints.insert(Tint::Paper);
    let mut inks = inks.clone();
    inks.insert(Ink::Full);
    let properties = |tint_colour: fn(Tint) -> &'static str, ink_colour: fn(Ink) -> &'static str| {
        let tints = tints.iter().map(|tint| format!("--sn-{}:{};", tint.name(), tint_colour(*tint)));
        let inks = inks.iter().map(|ink| format!("--sn-{}:{};", ink.name(), ink_colour(*ink)));
        tints.chain(inks).collect::<String>()
    };
    let mut css = format!(
        ".sn{{{}max-width:100%;height:auto;font-family:system-ui,-apple-system,\"Segoe UI\",Roboto,\"Liberation Sans\",\
         Helvetica,Arial,sans-serif}}",
        properties(Tint::light, Ink::light)
    );
    let dark = properties(Tint::dark, Ink::dark);
    let _ = write!(css, "@media screen and (prefers-color-scheme:dark){{.sn{{{dark}}}}}");
    for tint in &tints {
        let _ = write!(css, ".sn-{0}{{fill:{1};fill:var(--sn-{0})}}", tint.name(), tint.light());
    }
    for ink in &inks {
        let _ = write!(css, ".sn-l-{0}{{stroke:{1};stroke:var(--sn-{0})}}", ink.name(), ink.light());
    }
    let ink = Ink::Full.light();
    let _ = write!(css, ".sn text,.sn-hf{{fill:{ink};fill:var(--sn-full)}}");
    let _ = write!(css, ".sn-h{{stroke:{ink};stroke:var(--sn-full);stroke-opacity:.55}}.sn-hf{{fill-opacity:.55}}");
    css.push_str(".sn-h:not(.sn-hf){fill:none}");
    css
}
