//! Figures in the units of one system where a keeper reads in the other.

use snowhum_units::System;

const METRIC: [&str; 27] = [
    "kg",
    "g",
    "kilogram",
    "kilograms",
    "gram",
    "grams",
    "mm",
    "cm",
    "m",
    "km",
    "metre",
    "metres",
    "litre",
    "litres",
    "l",
    "°c",
    "hpa",
    "km/h",
    "m/s",
    "w/k",
    "w/m²k",
    "m²",
    "cm²",
    "kilogramm",
    "gramm",
    "kilogrammes",
    "grammes",
];
const US: [&str; 14] =
    ["lb", "pound", "pounds", "oz", "°f", "in", "inch", "inches", "ft", "mi", "mph", "gal", "btu/(h·°f)", "r"];
/// Words of a keeper's note before what they noted, where a page tells it as it was noted.
const NOTED: [&str; 2] = ["side:", "stores:"];
/// Words after a figure within which the same may stand in the other units, in brackets.
const NEAR: usize = 4;

/// The figures of a text that stand in the other system's units alone, each with what is round it. What is typed (beside a `=`
/// or between quotes) and what stands in both units is none.
#[must_use]
pub fn foreign_figures(text: &str, reads: System) -> Vec<String> {
    let (foreign, own): (&[&str], &[&str]) = match reads {
        System::Us => (&METRIC, &US),
        System::Metric => (&US, &METRIC),
    };
    text.lines().flat_map(|line| of_line(line, foreign, own)).collect()
}

fn of_line(line: &str, foreign: &[&str], own: &[&str]) -> Vec<String> {
    let spaced = line.replace(['\u{a0}', '\u{202f}'], " ");
    let words: Vec<&str> = spaced.split_whitespace().collect();
    let is_figure = |at: &usize| {
        let (figure, unit) = (words[*at], bare(words[at + 1]));
        // "8 in 10" is no length.
        let counts =
            unit == "in" && words.get(at + 2).is_some_and(|next| next.starts_with(|c: char| c.is_alphanumeric()));
        figure.ends_with(|last: char| last.is_ascii_digit()) && foreign.contains(&unit.as_str()) && !counts
    };
    let is_typed = |at: usize| {
        // The give or take of a figure is typed where the figure is.
        let at = if at >= 3 && words[at - 1] == "±" { at - 3 } else { at };
        let before = words[..=at].join(" ");
        words[at.saturating_sub(1)..=at].iter().any(|word| word.contains('=') || NOTED.contains(word))
            || before.matches('"').count() % 2 == 1
            || [('„', '“'), ('«', '»')]
                .iter()
                .any(|(opens, closes)| before.matches(*opens).count() > before.matches(*closes).count())
    };
    // In brackets after it, or in the brackets it stands in after the other.
    let is_both = |at: usize| {
        let after = &words[at + 1..words.len().min(at + 2 + NEAR)];
        let before = &words[at.saturating_sub(NEAR)..=at];
        let has_own = |part: &[&str]| part.iter().any(|word| own.contains(&bare(word).as_str()));
        let opens = |part: &[&str]| part.iter().any(|word| word.starts_with('('));
        (opens(after) && has_own(after)) || (opens(before) && has_own(before))
    };
    let found = (0..words.len().saturating_sub(1)).filter(is_figure).filter(|at| !is_typed(*at) && !is_both(*at));
    found.map(|at| words[at.saturating_sub(6)..words.len().min(at + 6)].join(" ")).collect()
}

/// A word without what is written round it.
fn bare(word: &str) -> String {
    word.trim_matches([',', '.', ';', ':', '(', ')', '?', '!', '"', '|', '”', '“', '»']).to_lowercase()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_figure_in_the_other_units_alone_is_found_and_one_in_both_or_typed_is_not() {
        let found = |text| foreign_figures(text, System::Us).len();
        assert_eq!(found("eat 12.5 kg by spring; a slot of 8 mm, at 3 °C"), 3);
        assert_eq!(found("20 kg (45 lb) in a box, 14 lb (6.4 kg) in another; stores=8 kg, such as \"50 mm foam\""), 0);
        assert_eq!(found("115 °C and above (240 °F)"), 0);
        assert_eq!(foreign_figures("8 in 10 hives, 3 lb, 2 in.", System::Metric).len(), 2);
    }
}
