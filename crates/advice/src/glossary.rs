//! The words of the trade: their two names from `data/glossary.toml`, and what is said of each.

use std::sync::LazyLock;

use serde::{Deserialize, Serialize};
use snowhum_say::{Message, glossary as texts};

/// A thing by its two names.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Term {
    /// In Britain.
    pub british: String,
    /// In North America.
    pub american: String,
    /// What it is, in a sentence.
    #[serde(default)]
    pub means: Message,
    /// What is easily taken wrongly.
    #[serde(default)]
    pub trap: Option<Message>,
}

#[derive(Default, Deserialize)]
struct Glossary {
    term: Vec<Term>,
}

static SHIPPED: LazyLock<Vec<Term>> = LazyLock::new(|| {
    let glossary: Glossary = toml::from_str(include_str!("../../../data/glossary.toml")).unwrap_or_default();
    glossary.term.into_iter().map(Term::told).collect()
});

impl Term {
    fn told(self) -> Self {
        let name = self.british.to_lowercase().replace(' ', "-");
        let trap = texts::named(&format!("{name}-trap"));
        Self { means: texts::named(&name).unwrap_or_default(), trap, ..self }
    }
}

/// Every word, in the order of the hive and the year.
#[must_use]
pub fn terms() -> &'static [Term] {
    &SHIPPED
}

/// The words that hold a text under one of their names; those that are just that come first.
///
/// ```
/// let found = snowhum_advice::glossary::find("Inner cover");
/// assert_eq!(found[0].british, "crownboard");
/// ```
#[must_use]
pub fn find(text: &str) -> Vec<&'static Term> {
    let text = text.trim().to_lowercase();
    let names = |term: &Term| [term.british.to_lowercase(), term.american.to_lowercase()];
    let mut found: Vec<&Term> = terms().iter().filter(|term| names(term).iter().any(|n| n.contains(&text))).collect();
    found.sort_by_key(|term| !names(term).contains(&text));
    found
}

#[cfg(test)]
mod tests {
    use super::{find, terms};
    use snowhum_say::Tongue;
    use std::collections::BTreeMap;

    #[test]
    fn sixty_words_each_with_both_names_and_a_meaning() {
        assert!(terms().len() >= 60, "{}", terms().len());
        for term in terms() {
            assert!(!term.british.is_empty() && !term.american.is_empty(), "{term:?}");
            let means = Tongue::BRITISH.say(&term.means);
            assert!(means.ends_with('.') && means.chars().count() < 160, "{term:?}");
        }
    }

    /// The words of the trade that texts share, by their names.
    fn shared(texts: &'static str) -> BTreeMap<&'static str, &'static str> {
        texts.lines().filter_map(|line| line.strip_prefix('-')?.split_once(" = ")).collect()
    }

    #[test]
    fn every_word_that_is_another_across_the_ocean_is_in_the_glossary() {
        let british = shared(include_str!("../../say/messages/en-GB/terms.ftl"));
        let american = shared(include_str!("../../say/messages/en-US/terms.ftl"));
        let bare = |word: &str| word.strip_suffix("ies").map_or(word.to_owned(), |stem| format!("{stem}y"));
        for (name, word) in british.into_iter().filter(|(_, word)| !word.ends_with('s') && !word.ends_with("boxes")) {
            let other = bare(american[name]);
            let is_told = terms().iter().any(|term| term.british == word && term.american == other);
            assert!(is_told || ["unite", "united", "uniting", "mesh floor"].contains(&word), "{word}: {other}");
        }
        assert!(find("nothing of the kind").is_empty());
    }
}
