//! Figures and chances as they stand on a page.

use jiff::civil::{Date, Weekday};
use maud::{Markup, PreEscaped, html};
pub(crate) use snowhum_advice::words::capital;
use snowhum_advice::words::{day, hives, in_hundred};
use snowhum_apiary::Note;
use snowhum_say::{Message, Tongue};
use snowhum_units::{Kilogram, Range, System};

/// A message whose text holds marks of its own; what is not the text's own is escaped.
pub(crate) fn marked(tongue: Tongue, message: &Message) -> Markup {
    PreEscaped(tongue.say_around(message, |own| html! { (own) }.into_string()))
}

/// A mass in the keeper's units.
pub(crate) fn mass(kilograms: f64, system: System) -> String {
    Kilogram::new(kilograms).show(system, usize::from(system == System::Metric))
}

/// The middle of a range with what lies around it.
pub(crate) fn masses(range: &Range<f64>, system: System) -> String {
    let of = |kilograms| mass(kilograms, system);
    format!("{} (8 in 10 between {} and {})", of(range.p50), of(range.p10), of(range.p90))
}

/// A chance both ways round.
pub(crate) fn both_ways(chance: f64, so: &str, not_so: &str) -> String {
    if !(0.01..=0.99).contains(&chance) {
        return format!("{} hives like this {so}", capital(&in_hundred(chance)));
    }
    let are = hives(chance);
    let number = |count: u32, words: &str| match words.strip_prefix("are") {
        Some(rest) if count == 1 => format!("is{rest}"),
        _ => words.to_owned(),
    };
    let not = 100 - are;
    format!("Of 100 hives like this about {are} {}, {not} {}", number(are, so), number(not, not_so))
}

/// A number of bees, as exact as it is known.
pub(crate) fn bees(count: f64) -> String {
    let step = if count < 3_000.0 { 100.0 } else { 500.0 };
    let rounded = ((count / step).round() * step).max(0.0) as u64;
    if rounded >= 10_000 { format!("{}\u{202f}{:03}", rounded / 1_000, rounded % 1_000) } else { rounded.to_string() }
}

/// A date for the eye and for programs.
pub(crate) fn date(on: Date) -> Markup {
    html! { time datetime=(on.to_string()) { (day(on)) } }
}

pub(crate) fn weekday(on: Date) -> &'static str {
    match on.weekday() {
        Weekday::Monday => "Monday",
        Weekday::Tuesday => "Tuesday",
        Weekday::Wednesday => "Wednesday",
        Weekday::Thursday => "Thursday",
        Weekday::Friday => "Friday",
        Weekday::Saturday => "Saturday",
        Weekday::Sunday => "Sunday",
    }
}

/// An entry of a note in plain words: `dead=22 on snow` is `dead bees: 22 on snow`.
pub(crate) fn plain(written: &str) -> String {
    let Some((what, how)) = written.split_once('=') else { return written.to_owned() };
    let what = match what {
        "words" => return how.to_owned(),
        "dead" => "dead bees",
        "hook" => "dead bees pulled out with a hook",
        "hole" => "at the upper hole",
        "upper" => "upper hole",
        "poke" => "poke at the hole",
        "wings" => "crumpled wings",
        "board" => return format!("board, slab or feeder: {how}"),
        "lid" => "under the lid, by hand",
        "snow" => "snow at the box",
        "did" => return format!("done: {how}"),
        "bees" => return format!("living bees {how}"),
        "colony" => return format!("colony {how}"),
        "queen" => return format!("queen {how}"),
        other => other,
    };
    format!("{what}: {how}")
}

/// Air, snow and wind of a note, if any were written.
pub(crate) fn conditions(note: &Note, system: System) -> Option<String> {
    let mut parts = Vec::new();
    if let Some(air) = note.conditions.air_k {
        parts.push(air.show(system, 0));
    }
    if let Some(wind) = note.conditions.wind_m_per_s {
        parts.push(format!("wind {}", wind.show(system, 1)));
    }
    (!parts.is_empty()).then(|| parts.join(", "))
}
