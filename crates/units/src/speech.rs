//! Words of the trade on one side of the ocean or the other.

use std::borrow::Cow;

/// English as a keeper speaks it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Speech {
    /// British: floor, crownboard, roof.
    #[default]
    British,
    /// North American: bottom board, inner cover, outer cover.
    NorthAmerican,
}

/// One thing by its two names; both are written small.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Pair {
    /// In Britain.
    pub british: &'static str,
    /// In North America.
    pub american: &'static str,
    /// Whether the North American word is everyday English too, and is therefore left alone in British.
    is_everyday: bool,
}

/// The longer before the shorter, so that `mesh floor` is not read as a `floor`.
pub const PAIRS: [Pair; 27] = [
    pair("open-mesh floors", "screened bottom boards"),
    pair("open-mesh floor", "screened bottom board"),
    pair("mesh floors", "screened bottom boards"),
    pair("mesh floor", "screened bottom board"),
    pair("floors", "bottom boards"),
    pair("floor", "bottom board"),
    pair("crownboards", "inner covers"),
    pair("crownboard", "inner cover"),
    pair("roofs", "outer covers"),
    pair("roof", "outer cover"),
    pair("brood boxes", "hive bodies"),
    pair("brood box", "hive body"),
    pair("entrance blocks", "entrance reducers"),
    pair("entrance block", "entrance reducer"),
    everyday("uniting", "combining"),
    everyday("united", "combined"),
    everyday("unites", "combines"),
    everyday("unite", "combine"),
    pair("ekes", "shims"),
    pair("eke", "shim"),
    pair("mite drop", "mite fall"),
    pair("dummy boards", "follower boards"),
    pair("dummy board", "follower board"),
    pair("wasps", "yellowjackets"),
    pair("wasp", "yellowjacket"),
    pair("bee inspectors", "apiary inspectors"),
    pair("bee inspector", "apiary inspector"),
];

/// States, not hives.
const NAMES: [&str; 3] = ["United States", "United Kingdom", "United Nations"];

const fn pair(british: &'static str, american: &'static str) -> Pair {
    Pair { british, american, is_everyday: false }
}

const fn everyday(british: &'static str, american: &'static str) -> Pair {
    Pair { british, american, is_everyday: true }
}

impl Speech {
    /// A text of the house in the keeper's words.
    ///
    /// ```
    /// use snowhum_units::Speech;
    /// assert_eq!(Speech::NorthAmerican.said("Floor and roof on"), "Bottom board and outer cover on");
    /// assert_eq!(Speech::British.said("lift the inner cover"), "lift the crownboard");
    /// ```
    #[must_use]
    pub fn said(self, text: &str) -> String {
        self.said_around(text, &[]).into_owned()
    }

    /// A text in the keeper's words, in which whatever the keeper wrote himself stands as he wrote it.
    ///
    /// ```
    /// use snowhum_units::Speech;
    /// let own = ["Roof Garden".to_owned()];
    /// let said = Speech::NorthAmerican.said_around("Roof Garden: snow on the roof", &own);
    /// assert_eq!(said, "Roof Garden: snow on the outer cover");
    /// ```
    #[must_use]
    pub fn said_around<'t>(self, text: &'t str, own: &[String]) -> Cow<'t, str> {
        let mut out = String::new();
        let mut told = 0;
        let mut at = 0;
        while let Some((start, found, other)) = self.next_term(text, at) {
            at = start + found.len();
            if is_name(text, start) || own.iter().any(|own| covers(text, own, start, at)) {
                continue;
            }
            out.push_str(&text[told..start]);
            out.push_str(&like(&text[start..at], other));
            told = at;
        }
        if told == 0 {
            return Cow::Borrowed(text);
        }
        out.push_str(&text[told..]);
        Cow::Owned(out)
    }

    /// Whether a text holds a word that this keeper has another word for.
    #[must_use]
    pub fn is_foreign(self, text: &str) -> bool {
        self.next_term(text, 0).is_some()
    }

    /// The language as HTML names it.
    #[must_use]
    pub const fn language(self) -> &'static str {
        match self {
            Self::British => "en-GB",
            Self::NorthAmerican => "en-US",
        }
    }

    /// The next word of the other side from a byte on: where, the word, and this keeper's word for it.
    fn next_term(self, text: &str, from: usize) -> Option<(usize, &'static str, &'static str)> {
        let bytes = text.as_bytes();
        (from..bytes.len()).find_map(|at| {
            let begins = bytes[at].is_ascii_alphabetic() && (at == 0 || !joins(bytes[at - 1]));
            let (word, other) = if begins { self.term_at(bytes, at)? } else { return None };
            Some((at, word, other))
        })
    }

    fn term_at(self, bytes: &[u8], at: usize) -> Option<(&'static str, &'static str)> {
        let is_there = |word: &str| {
            let end = at + word.len();
            bytes.get(at..end).is_some_and(|found| found.eq_ignore_ascii_case(word.as_bytes()))
                && bytes.get(end).is_none_or(|after| !joins(*after))
        };
        let terms = PAIRS.iter().filter_map(|pair| match self {
            Self::NorthAmerican => Some((pair.british, pair.american)),
            Self::British if pair.is_everyday => None,
            Self::British => Some((pair.american, pair.british)),
        });
        let first = bytes[at].to_ascii_lowercase();
        terms.filter(|(word, _)| word.as_bytes()[0] == first).find(|(word, _)| is_there(word))
    }
}

/// Whether a byte goes on with a word.
const fn joins(byte: u8) -> bool {
    byte.is_ascii_alphanumeric() || byte == b'_' || byte >= 0x80
}

fn is_name(text: &str, start: usize) -> bool {
    NAMES.iter().any(|name| text[start..].starts_with(name))
}

/// Whether an own text stands over these bytes.
fn covers(text: &str, own: &str, start: usize, end: usize) -> bool {
    !own.is_empty() && text.match_indices(own).any(|(at, own)| at <= start && end <= at + own.len())
}

/// The other word with as many capitals as the one it stands for.
fn like(found: &str, other: &str) -> String {
    let capitals = |text: &str| text.chars().filter(char::is_ascii_uppercase).count();
    if capitals(found) > 1 && found.chars().all(|letter| !letter.is_ascii_lowercase()) {
        return other.to_ascii_uppercase();
    }
    let mut letters = other.chars();
    match letters.next() {
        Some(first) if capitals(found) > 0 => first.to_uppercase().chain(letters).collect(),
        _ => other.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::{PAIRS, Speech};

    #[test]
    fn every_pair_goes_both_ways_and_said_twice_is_said_once() {
        for pair in PAIRS {
            assert_eq!(Speech::NorthAmerican.said(pair.british), pair.american);
            assert_eq!(Speech::NorthAmerican.said(pair.american), pair.american);
            assert_eq!(Speech::British.said(pair.british), pair.british);
        }
        assert_eq!(Speech::British.said("the screened bottom board"), "the open-mesh floor");
        assert_eq!(Speech::British.said("The Outer cover; SHIM"), "The Roof; EKE");
    }

    #[test]
    fn words_that_only_hold_a_term_are_let_be() {
        for text in ["roofing felt", "the floorboards", "a waspish keeper", "United States", "unit", "crumpled eked"] {
            assert_eq!(Speech::NorthAmerican.said(text), text);
        }
        assert_eq!(Speech::British.said("pooled and combined"), "pooled and combined", "everyday English");
    }

    #[test]
    fn what_the_keeper_wrote_stands() {
        let own = ["Floor 2".to_owned(), "the roof leaks".to_owned()];
        let said = Speech::NorthAmerican.said_around("Floor 2: floor wet; the roof leaks — roof", &own);
        assert_eq!(said, "Floor 2: bottom board wet; the roof leaks — outer cover");
        assert!(!Speech::British.is_foreign("floor") && Speech::NorthAmerican.is_foreign("a floor"));
    }
}
