//! The answer to a count of mites in words.

use snowhum_advice::sums::mites::{ColonyMites, MissChance, MitesAnswer, YardMites};
use snowhum_say::{Message, mites_terminal as say, shared_terminal as shared};

use crate::text::{entry, paragraphs, stands_on, wrapped};

pub(crate) fn words(answer: &MitesAnswer) -> String {
    let mut page = match &answer.yard {
        Some(yard) => several(answer, yard),
        None => answer.colonies.first().map(|one| alone(answer, one)).unwrap_or_default(),
    };
    let line = &answer.line;
    page += &entry(say::line(), say::line_says(line.region(), &line.says, &line.source));
    for other in &answer.other_lines {
        page += &entry("", shared::of(other.region(), &other.says));
    }
    page += "\n";
    page += &paragraphs(&answer.say);
    page += &paragraphs(&answer.cautions);
    page + "\n" + &stands_on(&answer.sources)
}

fn unit(answer: &MitesAnswer) -> Message {
    if answer.unit.id() == Some("mites-a-day") { say::a_day() } else { say::per_100() }
}

fn alone(answer: &MitesAnswer, one: &ColonyMites) -> String {
    let head = say::one(counted(one), one.rate, unit(answer), one.verdict.words());
    let head = if one.name == "the colony" { head } else { shared::of(&one.name, head) };
    let mut page = format!("{}\n\n", wrapped(head, 0));
    let (even, uneven) = (&one.even, &one.uneven);
    page += &entry(say::range(), say::ranges(even.high, even.low, uneven.high, uneven.low, unit(answer)));
    if let Some(corrected) = one.corrected_per_100_bees {
        let missed = say::missed(corrected.high, corrected.low, &answer.method, corrected.estimate);
        page += &entry(say::truly(), missed);
    }
    if let Some(chance) = one.chance_over_line {
        let hundred = (100.0 * chance).round().clamp(1.0, 99.0);
        page += &entry(say::chance(), say::over(hundred, answer.line.value[1]));
    }
    if !one.clean_sample_misses.is_empty() {
        let misses = one.clean_sample_misses.iter().map(miss).collect();
        page += &entry(say::clean(), say::finds_none(misses));
    }
    page
}

fn miss(miss: &MissChance) -> Message {
    let samples = match ((100.0 * miss.even).round(), (100.0 * miss.uneven).round()) {
        (_, 0.0) => say::under_one(),
        (0.0, most) => say::at_most(most),
        (even, uneven) if even == uneven => say::about(even),
        (even, uneven) => say::between(even, uneven),
    };
    say::miss(miss.true_mites_per_100_bees, samples)
}

fn counted(one: &ColonyMites) -> Message {
    match (one.bees, one.days) {
        (Some(bees), _) => say::in_bees(bees, one.found),
        (None, Some(days)) => say::in_days(days, one.found),
        (None, None) => say::found(one.found),
    }
}

fn several(answer: &MitesAnswer, yard: &YardMites) -> String {
    let head = say::most(yard.colonies, &yard.worst, yard.worst_rate, unit(answer));
    let mut page = format!("{}\n\n", wrapped(head, 0));
    let mut sorted: Vec<&ColonyMites> = answer.colonies.iter().collect();
    sorted.sort_by(|a, b| b.rate.total_cmp(&a.rate));
    for one in sorted {
        let (range, verdict) = (&one.uneven, one.verdict.words());
        let says = say::of_several(counted(one), range.high, range.low, one.rate, unit(answer), verdict);
        page += &entry(short(&one.name), says);
    }
    page += "\n";
    page += &entry(say::yard(), &yard.say);
    if let Some(mean) = yard.mean_interval {
        page += &entry(say::mean(), say::mean_is(mean.high, mean.low, yard.mean_rate, unit(answer)));
    }
    page
}

/// A name that fits the margin.
fn short(name: &str) -> String {
    if name.chars().count() > 11 { name.chars().take(10).chain("…".chars()).collect() } else { name.to_owned() }
}
