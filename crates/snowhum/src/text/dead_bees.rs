//! The dead-bees answer in words.

use snowhum_advice::dead_bees::DeadBeesAnswer;

use crate::text::{entry, wrapped};

pub(crate) fn words(answer: &DeadBeesAnswer, days: f64) -> String {
    let e = answer.expected;
    let d = answer.deaths_per_day;
    let mut page = format!("{} dead bees in {days} days: {}\n\n", answer.found, answer.verdict.words());
    page += &entry(
        "Expected",
        &format!(
            "{:.0} to {:.0} where you would see them, {:.0} most likely (8 times in 10 it lies in that range)",
            e.p10, e.p90, e.p50
        ),
    );
    page += &entry("Deaths", &format!("{:.0} to {:.0} bees a day is normal; most stay inside", d.p10, d.p90));
    page += &entry("Worry?", &answer.worry);
    page += &entry("Next", &answer.next);
    page += "\n";
    page += &wrapped(&format!("Stands on: {}.", answer.sources.join("; ")), 2);
    page
}
