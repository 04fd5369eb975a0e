//! Words that must not be in the house: loose ends, and paths that mean something on one machine alone.

use super::files::File;
use super::finding::Finding;

/// Put together so that this file does not hold them.
const LOOSE_ENDS: [&str; 2] = [concat!("TO", "DO"), concat!("FIX", "ME")];
const MACHINE_PATHS: [&str; 3] = [concat!("/wo", "rk/"), concat!("/ro", "ot/"), concat!("../sha", "red")];

/// Faults each such word.
pub(crate) fn check(file: &File) -> Vec<Finding> {
    if file.place == "Cargo.lock" {
        return Vec::new();
    }
    let mut findings = Vec::new();
    for (line, text) in file.text.lines().enumerate() {
        let loose = LOOSE_ENDS.into_iter().filter(|word| has_word(text, word));
        for word in loose.chain(MACHINE_PATHS.into_iter().filter(|path| text.contains(path))) {
            findings.push(Finding::fault(format!("{}:{}", file.place, line + 1), format!("`{word}`")));
        }
    }
    findings
}

fn has_word(text: &str, word: &str) -> bool {
    text.match_indices(word).any(|(at, _)| {
        let edge = |letter: Option<char>| letter.is_none_or(|letter| !letter.is_alphanumeric());
        edge(text[..at].chars().next_back()) && edge(text[at + word.len()..].chars().next())
    })
}

#[cfg(test)]
mod tests {
    use super::super::File;
    use super::{LOOSE_ENDS, MACHINE_PATHS, check};

    #[test]
    fn each_forbidden_word_is_found_at_its_line() {
        for word in LOOSE_ENDS.into_iter().chain(MACHINE_PATHS) {
            let found = check(&File::new("docs/a.md", format!("one\ntwo {word}: three\n")));
            assert_eq!(found.len(), 1, "{word}");
            assert_eq!(found[0].place, "docs/a.md:2");
        }
    }

    #[test]
    fn a_word_that_only_holds_one_is_let_be() {
        let text = format!("{}S, a network/layer, a shared word", LOOSE_ENDS[0]);
        assert_eq!(check(&File::new("docs/a.md", text)), []);
    }
}
