//! The dead-bees answer in words.

use snowhum_advice::dead_bees::{DeadBeesAnswer, usual_words};
use snowhum_say::{against, dead_bees_terminal as say, shared_terminal as shared};

use crate::text::voice::in_words;
use crate::text::{entry, stands_on};

pub(crate) fn words(answer: &DeadBeesAnswer, days: f64) -> String {
    let (deaths, expected) = (answer.deaths_per_day, &answer.expected);
    in_words(&say::head(days, answer.found, against(answer.verdict)))
        + "\n\n"
        + &entry(say::expected(), say::usual(expected.middle, usual_words(expected)))
        + &entry(say::lie(), &answer.lie)
        + &entry(say::deaths(), say::normal(deaths.p10, deaths.p90))
        + &entry(say::worry(), &answer.worry)
        + &entry(shared::next(), &answer.next)
        + "\n"
        + &stands_on(&answer.sources)
}
