//! The answer to a dead hive in words.

use snowhum_advice::deadout::{CauseChance, DeadoutAnswer, Question, Seen};

use crate::text::voice::{in_words, tongue};
use crate::text::{entry, wrapped};

pub(crate) fn words(answer: &DeadoutAnswer) -> String {
    let mut page = String::new();
    if let Some(stop) = &answer.stop {
        page += "STOP: this may be foulbrood\n\n";
        page += &entry("Seen", &stop.signs.join(", "));
        page += &entry("Why", &stop.why);
        page += &entry("Do", &stop.r#do);
    } else {
        page += &format!("{}\n\n", wrapped(&in_words(&answer.likeliest()), 0));
        if let Some(first) = &answer.brood_first {
            page += &format!("  {}\n\n", wrapped(first, 2));
        }
        for cause in answer.listed() {
            page += &likely(cause);
        }
        page += &entry("", "of 100 hives that look like this; in brackets what others who know might say");
    }
    for record in &answer.from_records {
        page += &entry("Records", &format!("{} {}: {}", record.sign, seen(record.seen), in_words(&record.because)));
    }
    if let Some(look) = answer.look() {
        page += &entry("Look next", &in_words(&look));
    }
    page += "\n";
    page += &entry("Comb", &in_words(&answer.reuse.comb));
    page += &entry("Stores", &in_words(&answer.reuse.stores));
    page += &entry("People", &in_words(&answer.reuse.people));
    page += "\n";
    for say in tongue().say_all(&answer.say).iter().chain(&answer.cautions) {
        page += &format!("  {}\n", wrapped(say, 2));
    }
    if !answer.after.is_empty() {
        page += "\n";
    }
    for after in &answer.after {
        page += &entry(&after.what, &after.words);
    }
    page += "\n";
    page + &wrapped(&format!("Stands on: {}.", tongue().say_all(&answer.sources).join("; ")), 2)
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

fn likely(cause: &CauseChance) -> String {
    let hundred = |chance: f64| (100.0 * chance).round();
    let chance = format!("{:>3.0} ({:.0} to {:.0})", hundred(cause.p), hundred(cause.low), hundred(cause.high));
    format!("  {chance:<16}{}\n", wrapped(&cause.words, 18))
}
