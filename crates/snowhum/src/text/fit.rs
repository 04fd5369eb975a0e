//! Fit for winter, in the plan's words: what speaks for and against each colony, the yard's dates and its shopping list.

use jiff::civil::Date;
use snowhum_advice::fit::{ColonyFit, FitAnswer, Scale, Shopping, Stands, VerdictKind, What};
use snowhum_advice::words::capital;
use snowhum_units::{CubicMetre, Kilogram, System};

use crate::text::voice::{in_words, tongue};
use crate::text::{Once, entry};

/// What speaks for and against a colony's winter, where it stands off what is usual, and what nobody looked at.
pub(crate) fn colony(fit: &ColonyFit, once: &mut Once) -> String {
    let verdict = &fit.verdict;
    let mut page = entry("Fit?", &capital(&tongue().say_all(&verdict.reasons).join("; ")));
    let scales: Vec<String> = fit.scales.iter().filter_map(off).collect();
    if !scales.is_empty() {
        page += &entry("Scales", &scales.join("; "));
    }
    if let Some(uniting) = fit.unite.as_ref().filter(|_| verdict.kind == VerdictKind::Unite) {
        page += &entry("How", &tongue().say_all(&uniting.steps).join("; "));
    }
    for say in &fit.say {
        page += &once.entry("", &in_words(say));
    }
    page
}

/// A scale that is not simply usual.
fn off(scale: &Scale) -> Option<String> {
    let (under, over) = match scale.what {
        What::Bees => ("fewer bees", "more bees"),
        What::Brood => ("less brood", "more brood"),
        What::Stores => ("less food", "more food"),
        What::Queen => ("a younger queen", "an older queen"),
        What::Mites => ("fewer mites", "more mites"),
        What::Hive => ("a colder lid", "a warmer lid"),
    };
    Some(match scale.stands {
        Stands::Usual | Stands::NoRange => return None,
        Stands::NotKnown => format!("{} not known", in_words(&scale.what.words()).to_lowercase()),
        Stands::Under => format!("{under} than is usual"),
        Stands::PerhapsUnder => format!("perhaps {under} than is usual"),
        Stands::PerhapsOver => format!("perhaps {over} than is usual"),
        Stands::Over => format!("{over} than is usual"),
    })
}

/// What holds for the whole yard.
pub(crate) fn yard(fit: &FitAnswer, as_of: Date, system: System, once: &mut Once) -> String {
    let mut page = String::from("The yard\n");
    for say in &fit.say {
        page += &once.entry("", &in_words(say));
    }
    page += &shopping(&fit.shopping, system);
    for window in fit.windows.iter().filter(|window| window.until.is_none_or(|until| until.p90 >= as_of)) {
        page += &entry("Mites", &format!("{}: {}", window.class, in_words(&window.says)));
    }
    page
}

fn shopping(list: &Shopping, system: System) -> String {
    let unfed = list.unfed_say().map_or_else(String::new, |says| entry("", &in_words(&says)));
    if list.hives.is_empty() {
        return entry("To buy", if unfed.is_empty() { "no feed: no colony is short" } else { "no feed" }) + &unfed;
    }
    let kg = |kg: f64| Kilogram::new(kg).show(system, 1);
    let litres = CubicMetre::new(list.syrup_l * 1e-3).show(system, 1);
    let late =
        if list.too_late_for_syrup { "it is too late for syrup here" } else { "no feeder is quick enough for syrup" };
    let parts = [
        (list.sugar_kg, format!("{} of sugar as {litres} of 3:2 syrup", kg(list.sugar_kg))),
        (list.solid_kg, format!("{} of fondant, or as much damp sugar, where {late}", kg(list.solid_kg))),
        (list.later_fondant_kg, format!("{} of fondant at hand for the midwinter weighing", kg(list.later_fondant_kg))),
        (list.spared_kg, format!("frames from heavy hives can stand for {} of the stores", kg(list.spared_kg))),
    ];
    let parts: Vec<String> = parts.into_iter().filter(|(kg, _)| *kg > 0.0).map(|(_, words)| words).collect();
    entry("To buy", &parts.join("; ")) + &unfed
}
