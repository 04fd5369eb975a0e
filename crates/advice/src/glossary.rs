//! The words of the trade, from `data/glossary.toml`.

use std::sync::LazyLock;

use serde::{Deserialize, Serialize};

/// A thing by its two names.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Term {
    /// In Britain.
    pub british: String,
    /// In North America.
    pub american: String,
    /// What it is, in a sentence.
    pub means: String,
    /// What is easily taken wrongly.
    #[serde(default)]
    pub trap: Option<String>,
}

#[derive(Default, Deserialize)]
struct Glossary {
    term: Vec<Term>,
}

static SHIPPED: LazyLock<Vec<Term>> = LazyLock::new(|| {
    let glossary: Glossary = toml::from_str(include_str!("../../../data/glossary.toml")).unwrap_or_default();
    glossary.term
});

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
    use snowhum_units::PAIRS;

    #[test]
    fn sixty_words_each_with_both_names_and_a_meaning() {
        assert!(terms().len() >= 60, "{}", terms().len());
        for term in terms() {
            assert!(!term.british.is_empty() && !term.american.is_empty(), "{term:?}");
            assert!(term.means.ends_with('.') && term.means.chars().count() < 160, "{term:?}");
        }
    }

    #[test]
    fn every_word_the_pages_change_is_in_the_glossary() {
        let is_told = |british: &str, american: &str| {
            terms().iter().any(|term| term.british == british && term.american == american)
        };
        let bare = |word: &str| word.strip_suffix("ies").map_or(word.to_owned(), |stem| format!("{stem}y"));
        for pair in PAIRS.iter().filter(|pair| !pair.british.ends_with('s') && !pair.british.ends_with("boxes")) {
            let verbs = ["unite", "united"].contains(&pair.british);
            let known = is_told(pair.british, &bare(pair.american)) || verbs || pair.british == "mesh floor";
            assert!(known, "{pair:?}");
        }
        assert!(find("nothing of the kind").is_empty());
    }
}
