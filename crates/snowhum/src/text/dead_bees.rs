//! The dead-bees answer in words.

use snowhum_advice::dead_bees::{DeadBeesAnswer, usual_words};

use crate::text::voice::{in_words, tongue};
use crate::text::{entry, wrapped};

pub(crate) fn words(answer: &DeadBeesAnswer, days: f64) -> String {
    let d = answer.deaths_per_day;
    let mut page = format!("{} dead bees in {days} days: {}\n\n", answer.found, answer.verdict.words());
    let usual = format!("{}, {} most likely", in_words(&usual_words(&answer.expected)), answer.expected.middle);
    page += &entry("Expected", &usual);
    page += &entry("They lie", &in_words(&answer.lie));
    page += &entry("Deaths", &format!("{:.0} to {:.0} bees a day is normal; most stay inside", d.p10, d.p90));
    page += &entry("Worry?", &in_words(&answer.worry));
    page += &entry("Next", &in_words(&answer.next));
    page += "\n";
    page += &wrapped(&format!("Stands on: {}.", tongue().say_all(&answer.sources).join("; ")), 2);
    page
}
