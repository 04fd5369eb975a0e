//! The answer to a dead hive in words.

use snowhum_advice::deadout::{CauseChance, DeadoutAnswer, Question, Seen};
use snowhum_say::{Message, deadout_terminal as say, shared_terminal as shared};

use crate::text::voice::in_words;
use crate::text::{entry, paragraph, paragraphs, stands_on, wrapped};

pub(crate) fn words(answer: &DeadoutAnswer) -> String {
    let mut page = match &answer.stop {
        Some(stop) => {
            let signs = stop.signs.iter().map(Message::from).collect();
            in_words(&say::stop())
                + "\n\n"
                + &entry(say::seen(), shared::list(signs))
                + &entry(shared::why(), &stop.why)
                + &entry(say::what_to_do(), &stop.r#do)
        }
        None => causes(answer),
    };
    for record in &answer.from_records {
        page += &entry(say::records(), say::record(&record.because, seen(record.seen), &record.sign));
    }
    if let Some(look) = answer.look() {
        page += &entry(say::look(), look);
    }
    page += "\n";
    page += &entry(say::comb(), &answer.reuse.comb);
    page += &entry(say::stores(), &answer.reuse.stores);
    page += &entry(say::people(), &answer.reuse.people);
    page += "\n";
    page += &paragraphs(&answer.say);
    page += &paragraphs(&answer.cautions);
    if !answer.after.is_empty() {
        page += "\n";
    }
    for after in &answer.after {
        page += &entry(&after.what, &after.words);
    }
    page + "\n" + &stands_on(&answer.sources)
}

fn causes(answer: &DeadoutAnswer) -> String {
    let mut page = format!("{}\n\n", wrapped(answer.likeliest(), 0));
    if let Some(first) = &answer.brood_first {
        page += &(paragraph(first) + "\n");
    }
    page += &answer.listed().map(likely).collect::<String>();
    page + &entry("", say::hundred())
}

/// Every sign and what it asks.
pub(crate) fn list(questions: &[Question]) -> String {
    let one = |question: &Question| {
        let stops = if question.stops { say::stops() } else { Message::NONE };
        let asks = Message::sentences([Message::from(&question.ask), stops]);
        format!("{}\n    {}\n", question.name, wrapped(asks, 4))
    };
    questions.iter().map(one).collect()
}

fn seen(seen: Seen) -> &'static str {
    match seen {
        Seen::Yes => "yes",
        Seen::FairlyYes => "fairly-yes",
        Seen::FairlyNo => "fairly-no",
        Seen::No => "no",
        Seen::Unseen => "unseen",
    }
}

fn likely(cause: &CauseChance) -> String {
    let [likely, low, high] = [cause.p, cause.low, cause.high].map(|chance| (100.0 * chance).round());
    let chance = format!("{likely:>3.0} {}", in_words(&say::between(low, high)));
    format!("  {chance:<16}{}\n", wrapped(&cause.words, 18))
}
