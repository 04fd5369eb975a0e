//! Words that one side of the ocean alone uses, written out here apart from the product's own list.

/// Words that a keeper in North America does not use.
pub const BRITISH: [&str; 20] = [
    "floor",
    "floors",
    "crownboard",
    "crownboards",
    "roof",
    "roofs",
    "brood box",
    "brood boxes",
    "entrance block",
    "unite",
    "united",
    "uniting",
    "eke",
    "mite drop",
    "dummy board",
    "wasp",
    "wasps",
    "bee inspector",
    "bee inspectors",
    "mesh floor",
];

/// Words that a keeper in Britain does not use.
pub const AMERICAN: [&str; 15] = [
    "bottom board",
    "bottom boards",
    "inner cover",
    "outer cover",
    "hive body",
    "hive bodies",
    "entrance reducer",
    "follower board",
    "shim",
    "mite fall",
    "yellowjacket",
    "yellowjackets",
    "apiary inspector",
    "apiary inspectors",
    "screened bottom board",
];

/// Where a text holds a term as a word of its own: the term with what stands before it. States' names are no terms.
#[must_use]
pub fn holds(text: &str, term: &str) -> Option<String> {
    let low = text.to_lowercase().replace("united states", "").replace("united kingdom", "");
    let is_edge = |letter: Option<char>| letter.is_none_or(|letter| !letter.is_alphanumeric());
    low.match_indices(term).find_map(|(at, _)| {
        let (before, after) = (&low[..at], &low[at + term.len()..]);
        let stands = is_edge(before.chars().next_back()) && is_edge(after.chars().next());
        stands.then(|| before.chars().rev().take(40).collect::<Vec<_>>().into_iter().rev().collect::<String>() + term)
    })
}
