//! Figures and chances as they stand on a page.

use jiff::civil::Date;
use maud::{Markup, PreEscaped, html};
use snowhum_advice::answer;
use snowhum_advice::cautions::Hazard;
use snowhum_apiary::Note;
pub(crate) use snowhum_say::capital;
use snowhum_say::hives;
use snowhum_say::{Message, Tongue, shared_page as text};
use snowhum_units::{Kilogram, Range, System};

/// The middle of a range with what lies around it.
pub(crate) fn masses(range: &Range<f64>, system: System) -> String {
    Tongue::new(system).say(&ranged(range))
}

/// The middle of a range of kilograms with what lies around it.
pub(crate) fn ranged(range: &Range<f64>) -> Message {
    let [low, middle, high] = [range.p10, range.p50, range.p90].map(Kilogram::new);
    text::masses(high, low, middle)
}

/// A text as HTML writes it.
fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;").replace('"', "&quot;")
}

/// A message whose text has marks of a page: what it tells of is escaped.
pub fn marked(tongue: Tongue, message: &Message) -> Markup {
    PreEscaped(tongue.say_around(message, escaped))
}

/// A caution, and in a language that no keeper of it has read yet its British text beside it.
pub(crate) fn cautioned(tongue: Tongue, message: &Message) -> Markup {
    html! { (marked(tongue, message)) (beside(tongue, message)) }
}

/// Cautions, and a tap down their British text in a language that no keeper of it has read yet.
pub(crate) fn cautions(tongue: Tongue, hazards: &[Hazard]) -> Markup {
    let says: Vec<Message> = hazards.iter().map(|hazard| hazard.says()).collect();
    let british = html! { @for caution in says.iter().filter_map(|one| tongue.beside(one)) { p class="caution" lang="en" { (caution) } } };
    html! {
        @for caution in &says { p class="caution" { (marked(tongue, caution)) } }
        @if !british.0.is_empty() { details class="folded" lang="en" { summary { "English" } (british) } }
    }
}

/// The British text of a caution in a language that no keeper of it has read yet; nothing of anything else.
pub(crate) fn beside(tongue: Tongue, message: &Message) -> Markup {
    html! { @if let Some(british) = tongue.beside(message) { " " span class="small" lang="en" { (british) } } }
}

/// How well a figure is founded, of the word its file has.
pub(crate) fn founded(status: &str) -> Message {
    serde_json::from_value(status.into()).map_or_else(|_| status.into(), answer::founded)
}

/// A chance both ways round: hardly any hive or nearly all, else so many of a hundred and so many not.
pub(crate) fn of_hundred(
    chance: f64,
    hardly: impl FnOnce(Message) -> Message,
    both: impl FnOnce(u32, u32) -> Message,
) -> Message {
    if !(0.01..=0.99).contains(&chance) {
        return hardly(snowhum_say::in_hundred(chance));
    }
    both(hives(chance), 100 - hives(chance))
}

/// A number of bees, as exact as it is known.
pub(crate) fn bees(count: f64) -> String {
    let step = if count < 3_000.0 { 100.0 } else { 500.0 };
    let rounded = ((count / step).round() * step).max(0.0) as u64;
    if rounded >= 10_000 { format!("{}\u{202f}{:03}", rounded / 1_000, rounded % 1_000) } else { rounded.to_string() }
}

/// A date for the eye and for programs, in the keeper's language.
pub(crate) fn time(on: Date, tongue: Tongue) -> Markup {
    marked(tongue, &text::date(on))
}

/// An entry of a note in plain words: `dead=22 on snow` is `dead bees: 22 on snow`.
pub(crate) fn plain(written: &str) -> Message {
    let Some((what, how)) = written.split_once('=') else { return written.into() };
    match what {
        "words" => how.into(),
        "dead" => text::noted_dead(how),
        "hook" => text::noted_hook(how),
        "hole" => text::noted_hole(how),
        "upper" => text::noted_upper(how),
        "poke" => text::noted_poke(how),
        "wings" => text::noted_wings(how),
        "board" => text::noted_board(how),
        "lid" => text::noted_lid(how),
        "snow" => text::noted_snow(how),
        "did" => text::noted_did(how),
        "bees" => text::noted_bees(how),
        "colony" => text::noted_colony(how),
        "queen" => text::noted_queen(how),
        other => text::noted_other(how, other),
    }
}

/// Air, snow and wind of a note, if any were written.
pub(crate) fn conditions(note: &Note) -> Option<Message> {
    let air = note.conditions.air_k.map(text::air);
    let parts: Vec<_> = air.into_iter().chain(note.conditions.wind_m_per_s.map(text::wind)).collect();
    (!parts.is_empty()).then(|| text::weather(parts))
}
