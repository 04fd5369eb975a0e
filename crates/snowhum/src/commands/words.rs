//! `words`: the trade's terms on both sides of the ocean.

use snowhum_advice::glossary::{Term, find, terms};
use snowhum_say::Message;

use crate::args::Common;
use crate::text::entry;
use crate::{exit, text};

pub(super) fn run(term: Option<&str>, common: &Common) -> anyhow::Result<()> {
    let found: Vec<&Term> = term.map_or_else(|| terms().iter().collect(), find);
    if found.is_empty() {
        let sought = term.unwrap_or_default();
        return Err(exit::input(format!("\"{sought}\" is not among the words; see them all: snowhum words")));
    }
    if common.json {
        return text::say(&serde_json::to_string_pretty(&found)?);
    }
    let page: String = found.iter().map(|term| paragraph(term)).collect();
    text::say(&page)
}

fn paragraph(term: &Term) -> String {
    let names = if term.british == term.american {
        term.british.clone()
    } else {
        format!("{} (North American: {})", term.british, term.american)
    };
    let told = Message::sentences([Some(&term.means), term.trap.as_ref()].into_iter().flatten().cloned());
    format!("{names}\n{}", entry("", told))
}
