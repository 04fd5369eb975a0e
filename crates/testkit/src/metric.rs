//! Metric figures in a text.

const METRIC: [&str; 14] = ["kg", "g", "L", "litres", "mm", "cm", "m", "km", "km/h", "m/s", "°C", "W/K", "L/s", "m²"];
const US: [&str; 12] = ["lb", "oz", "gal", "qt", "in", "ft", "miles", "mph", "°F", "R", "Btu/(h·°F)", "ft³/min"];

/// The first figure in metric units beside which none in US units stands in brackets, with what is near it.
///
/// ```
/// use snowhum_testkit::metric_figure;
/// assert_eq!(metric_figure("lift 36 to 41 kg (80 to 90 lb) with two, 5 lb alone"), None);
/// assert_eq!(metric_figure("food for 3 weeks: 12.5 kg").as_deref(), Some("food for 3 weeks: 12.5 kg"));
/// ```
#[must_use]
pub fn metric_figure(text: &str) -> Option<String> {
    let words: Vec<&str> = text.split_whitespace().collect();
    let bare = |word: &str| word.trim_end_matches([',', ';', ':', '.', ')', '?', '”']).to_owned();
    let is_figure = |word: &str| {
        let end = word.rsplit(['-', '–', '(', '±', '+', '−']).next().unwrap_or_default();
        end.chars().any(|letter| letter.is_ascii_digit())
            && end.chars().all(|c| c.is_ascii_digit() || c == '.' || c == ',')
    };
    let is_told_both = |at: usize| {
        words.get(at + 1).is_some_and(|next| next.starts_with('('))
            && words[at + 1..].iter().take(6).any(|word| US.contains(&bare(word).as_str()))
    };
    (1..words.len())
        .find(|&at| METRIC.contains(&bare(words[at]).as_str()) && is_figure(words[at - 1]) && !is_told_both(at))
        .map(|at| words[at.saturating_sub(5)..=at].join(" "))
}
