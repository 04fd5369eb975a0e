//! Fit for winter, in the plan's words: what speaks for and against each colony, the yard's dates and its shopping list.

use jiff::civil::Date;
use snowhum_advice::fit::{ColonyFit, FitAnswer, Scale, Shopping, Stands, VerdictKind, What};
use snowhum_say::{Message, fit_terminal as say, shared_terminal as shared};
use snowhum_units::{CubicMetre, Kilogram};

use crate::text::voice::{in_words, tongue};
use crate::text::{Once, entry};

/// What speaks for and against a colony's winter, where it stands off what is usual, and what nobody looked at.
pub(crate) fn colony(fit: &ColonyFit, once: &mut Once) -> String {
    let mut page = reasons(fit);
    let scales: Vec<Message> = fit.scales.iter().filter_map(off).collect();
    if !scales.is_empty() {
        page += &entry(say::scales(), shared::parts(scales));
    }
    if let Some(uniting) = fit.unite.as_ref().filter(|_| fit.verdict.kind == VerdictKind::Unite) {
        page += &entry(say::how(), shared::parts(uniting.steps.clone()));
    }
    page + &fit.say.iter().map(|says| once.entry("", says)).collect::<String>()
}

/// What speaks for and against it.
pub(crate) fn reasons(fit: &ColonyFit) -> String {
    entry(shared::fit(), tongue().capital(&shared::parts(fit.verdict.reasons.clone())))
}

/// A scale that is not simply usual.
fn off(scale: &Scale) -> Option<Message> {
    let [what, under, over] = match scale.what {
        What::Bees => ["bees", "bees-under", "bees-over"],
        What::Brood => ["brood", "brood-under", "brood-over"],
        What::Stores => ["stores", "stores-under", "stores-over"],
        What::Queen => ["queen", "queen-under", "queen-over"],
        What::Mites => ["mites", "mites-under", "mites-over"],
        What::Hive => ["hive", "hive-under", "hive-over"],
    };
    Some(match scale.stands {
        Stands::Usual | Stands::NoRange => return None,
        Stands::NotKnown => say::not_known(what),
        Stands::Under => say::off(false, under),
        Stands::PerhapsUnder => say::off(true, under),
        Stands::PerhapsOver => say::off(true, over),
        Stands::Over => say::off(false, over),
    })
}

/// What holds for the whole yard.
pub(crate) fn yard(fit: &FitAnswer, as_of: Date, once: &mut Once) -> String {
    let mut page = in_words(&say::yard()) + "\n";
    for says in &fit.say {
        page += &once.entry("", says);
    }
    page += &shopping(&fit.shopping);
    for window in fit.windows.iter().filter(|window| window.until.is_none_or(|until| until.p90 >= as_of)) {
        page += &entry(shared::mites(), shared::of(&window.class, &window.says));
    }
    page
}

fn shopping(list: &Shopping) -> String {
    let unfed = list.unfed_say().map_or_else(String::new, |says| entry("", says));
    let [sugar, solid, later, spared] =
        [list.sugar_kg, list.solid_kg, list.later_fondant_kg, list.spared_kg].map(Kilogram::new);
    let parts = [
        (sugar, say::buy_sugar(sugar, CubicMetre::new(list.syrup_l * 1e-3))),
        (solid, say::buy_solid(list.too_late_for_syrup, solid)),
        (later, say::buy_later(later)),
        (spared, say::buy_spared(spared)),
    ];
    let bought = match (list.hives.is_empty(), unfed.is_empty()) {
        (true, true) => say::buy_nothing(),
        (true, false) => say::buy_no_feed(),
        (false, _) => shared::parts(parts.into_iter().filter(|(kg, _)| kg.get() > 0.0).map(|(_, part)| part).collect()),
    };
    entry(say::buy(), bought) + &unfed
}
