//! `words`: the trade's terms on both sides of the ocean.

use snowhum_advice::glossary::{Term, find, terms};
use snowhum_say::{Message, shared_terminal as shared};

use crate::args::Common;
use crate::text::entry;
use crate::text::voice::in_words;
use crate::{exit, text};

pub(super) fn run(term: Option<&str>, common: &Common) -> anyhow::Result<()> {
    let found: Vec<&Term> = term.map_or_else(|| terms().iter().collect(), find);
    if found.is_empty() {
        let sought = term.unwrap_or_default();
        return Err(exit::refused(shared::no_word(sought)));
    }
    if common.json {
        return text::say(&serde_json::to_string_pretty(&found)?);
    }
    let page: String = found.iter().map(|term| paragraph(term)).collect();
    text::say(&page)
}

fn paragraph(term: &Term) -> String {
    let names = if term.british == term.american {
        Message::from(&term.british)
    } else {
        shared::term(&term.american, &term.british)
    };
    let told = Message::sentences([Some(&term.means), term.trap.as_ref()].into_iter().flatten().cloned());
    format!("{}\n{}", in_words(&names), entry("", told))
}
