//! The answer to a count of mites in words.

use snowhum_advice::sums::mites::{ColonyMites, MitesAnswer, YardMites};

use crate::text::voice::{in_words, tongue};
use crate::text::{entry, wrapped};

pub(crate) fn words(answer: &MitesAnswer) -> String {
    let mut page = match &answer.yard {
        Some(yard) => several(answer, yard),
        None => answer.colonies.first().map(|one| alone(answer, one)).unwrap_or_default(),
    };
    let line = &answer.line;
    page += &entry("Line", &format!("{} ({}: {})", line.says, line.region, line.source));
    for other in &answer.other_lines {
        page += &entry("", &format!("{}: {}", other.region, other.says));
    }
    page += "\n";
    for say in answer.say.iter().map(in_words).chain(answer.cautions.iter().cloned()) {
        page += &format!("  {}\n", wrapped(&say, 2));
    }
    page += "\n";
    page + &wrapped(&format!("Stands on: {}.", tongue().say_all(&answer.sources).join("; ")), 2)
}

fn unit(answer: &MitesAnswer) -> &'static str {
    if answer.unit.id() == Some("mites-a-day") { "a day" } else { "per 100 bees" }
}

fn alone(answer: &MitesAnswer, one: &ColonyMites) -> String {
    let name = if one.name == "the colony" { String::new() } else { format!("{}: ", one.name) };
    let head = format!("{name}{}, {:.1} {}: {}", counted(one), one.rate, unit(answer), in_words(&one.verdict.words()));
    let mut page = format!("{}\n\n", wrapped(&head, 0));
    page += &entry(
        "Range",
        &format!(
            "{:.1} to {:.1} {} in 95 of 100 such samples if mites sat evenly; they do not: {:.1} to {:.1} is nearer",
            one.even.low,
            one.even.high,
            unit(answer),
            one.uneven.low,
            one.uneven.high
        ),
    );
    if let Some(corrected) = one.corrected_per_100_bees {
        let text = format!(
            "{:.1} per 100 bees ({:.1} to {:.1}) with those the {} misses; lines are drawn for the count as it is",
            corrected.estimate,
            corrected.low,
            corrected.high,
            in_words(&answer.method)
        );
        page += &entry("Truly", &text);
    }
    if let Some(chance) = one.chance_over_line {
        let hundred = (100.0 * chance).round().clamp(1.0, 99.0);
        let text = format!("{hundred:.0} in 100 that the truth is over {} per 100", answer.line.value[1]);
        page += &entry("Chance", &text);
    }
    if !one.clean_sample_misses.is_empty() {
        let misses: Vec<String> = one.clean_sample_misses.iter().map(miss).collect();
        page += &entry("A clean one", &format!("finds no mite at a true {}", misses.join("; ")));
    }
    page
}

fn miss(miss: &snowhum_advice::sums::mites::MissChance) -> String {
    let (even, uneven) = ((100.0 * miss.even).round(), (100.0 * miss.uneven).round());
    let chance = match (even, uneven) {
        (_, 0.0) => "under 1".to_owned(),
        (0.0, most) => format!("at most {most}"),
        (even, uneven) if even == uneven => format!("{even}"),
        (even, uneven) => format!("{even} to {uneven}"),
    };
    format!("{} per 100 in {chance} of 100 samples", miss.true_mites_per_100_bees)
}

fn counted(one: &ColonyMites) -> String {
    let mites = if one.found == 1 { "1 mite".to_owned() } else { format!("{} mites", one.found) };
    match (one.bees, one.days) {
        (Some(bees), _) => format!("{mites} in {bees} bees"),
        (None, Some(days)) => format!("{mites} in {days} days"),
        (None, None) => mites,
    }
}

fn several(answer: &MitesAnswer, yard: &YardMites) -> String {
    let unit = unit(answer);
    let head = format!("Most: {}, {:.1} {unit}. {} colonies sampled", yard.worst, yard.worst_rate, yard.colonies);
    let mut page = format!("{}\n\n", wrapped(&head, 0));
    let mut sorted: Vec<&ColonyMites> = answer.colonies.iter().collect();
    sorted.sort_by(|a, b| b.rate.total_cmp(&a.rate));
    for one in sorted {
        let range = format!("{:.1} to {:.1}", one.uneven.low, one.uneven.high);
        let text = format!("{}, {:.1} {unit} ({range}): {}", counted(one), one.rate, in_words(&one.verdict.words()));
        page += &entry(&short(&one.name), &text);
    }
    page += "\n";
    page += &entry("Yard", &in_words(&yard.say));
    if let Some(mean) = yard.mean_interval {
        let text = format!("{:.1} {unit}, {:.1} to {:.1} for the yard's mean", yard.mean_rate, mean.low, mean.high);
        page += &entry("Mean", &text);
    }
    page
}

/// A name that fits the margin.
fn short(name: &str) -> String {
    if name.chars().count() > 11 { name.chars().take(10).chain("…".chars()).collect() } else { name.to_owned() }
}
