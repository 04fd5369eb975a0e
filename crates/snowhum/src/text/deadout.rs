//! The answer to a dead hive in words.

use snowhum_advice::deadout::{CauseChance, DeadoutAnswer, LookNext, Question, Seen};

use crate::text::{entry, wrapped};

/// Causes less likely than this are not listed.
const LEAST: f64 = 0.02;

pub(crate) fn words(answer: &DeadoutAnswer) -> String {
    let mut page = String::new();
    if let Some(stop) = &answer.stop {
        page += "STOP: this may be foulbrood\n\n";
        page += &entry("Seen", &stop.signs.join(", "));
        page += &entry("Why", &stop.why);
        page += &entry("Do", &stop.r#do);
    } else {
        page += &format!("{}\n\n", wrapped(&head(&answer.causes), 0));
        if let Some(first) = &answer.brood_first {
            page += &format!("  {}\n\n", wrapped(first, 2));
        }
        for cause in answer.causes.iter().filter(|cause| cause.p >= LEAST) {
            page += &likely(cause);
        }
        page += &entry("", "of 100 hives that look like this; in brackets what others who know might say");
    }
    for record in &answer.from_records {
        page += &entry("Records", &format!("{} {}: {}", record.sign, seen(record.seen), record.because));
    }
    if let Some(next) = &answer.look_next {
        page += &entry("Look next", &look(next, &answer.causes));
    }
    page += "\n";
    page += &entry("Comb", &answer.reuse.comb);
    page += &entry("Stores", &answer.reuse.stores);
    page += &entry("People", &answer.reuse.people);
    page += "\n";
    for say in &answer.say {
        page += &format!("  {}\n", wrapped(say, 2));
    }
    if !answer.after.is_empty() {
        page += "\n";
    }
    for after in &answer.after {
        page += &entry(&after.what, &after.words);
    }
    page += "\n";
    page + &wrapped(&format!("Stands on: {}.", answer.sources.join("; ")), 2)
}

/// Every sign and what it asks.
pub(crate) fn list(questions: &[Question]) -> String {
    let one = |question: &Question| {
        let stops = if question.stops { " A yes stops everything." } else { "" };
        format!("{}\n    {}\n", question.name, wrapped(&format!("{}{stops}", question.ask), 4))
    };
    questions.iter().map(one).collect()
}

fn seen(seen: Seen) -> &'static str {
    match seen {
        Seen::Yes => "yes",
        Seen::FairlyYes => "fairly sure",
        Seen::FairlyNo => "fairly sure not",
        Seen::No => "no",
        Seen::Unseen => "not known",
    }
}

fn head(causes: &[CauseChance]) -> String {
    match causes {
        [first, second, ..] if first.low > second.high => format!("Most likely {}", first.words),
        [first, second, ..] => {
            let (first, second) = (&first.words, &second.words);
            format!("Likeliest {first}, then {second}; one cannot be sure of the order")
        }
        [only] => only.words.clone(),
        [] => String::new(),
    }
}

fn look(next: &LookNext, causes: &[CauseChance]) -> String {
    let words = |name: &str| {
        causes.iter().find(|one| one.cause == name).map_or_else(|| name.to_owned(), |one| one.words.clone())
    };
    let other = next.between.iter().find(|name| **name != next.yes_points_to).map_or("", String::as_str);
    format!("{} A yes points to {}, a no to {}.", next.ask, words(&next.yes_points_to), words(other))
}

fn likely(cause: &CauseChance) -> String {
    let hundred = |chance: f64| (100.0 * chance).round();
    let chance = format!("{:>3.0} ({:.0} to {:.0})", hundred(cause.p), hundred(cause.low), hundred(cause.high));
    format!("  {chance:<16}{}\n", wrapped(&cause.words, 18))
}
