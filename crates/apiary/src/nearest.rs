//! The nearest known words to a mistyped one.

use crate::shipped::same_name;
use snowhum_say::{Message, fault as say};

/// Words offered where one is not known.
const OFFERED: usize = 3;
/// A choice of no more words than this is told whole.
const LISTED: usize = 6;
/// Letters of a word that are compared: what is longer is no slip of the pen.
const LONGEST: usize = 48;

/// The candidate that differs from `word` by the fewest letters, if that is few enough to be a slip;
/// or the one that `word` is the beginning of.
pub(crate) fn nearest<'a>(word: &str, candidates: impl IntoIterator<Item = &'a str>) -> Option<&'a str> {
    let word = word.to_lowercase();
    let letters = word.chars().count();
    if letters == 0 || letters > LONGEST {
        return None;
    }
    let candidates: Vec<&str> = candidates.into_iter().collect();
    let longer = candidates.iter().find(|candidate| candidate.to_lowercase().starts_with(&word));
    if let Some(longer) = longer.filter(|_| letters > 3) {
        return Some(longer);
    }
    let most = (letters / 3).clamp(1, 4);
    let near = candidates.into_iter().map(|candidate| (distance(&word, candidate), candidate));
    near.filter(|(apart, _)| *apart <= most).min_by_key(|(apart, _)| *apart).map(|(_, candidate)| candidate)
}

/// So many of some names, those that differ from `word` by the fewest letters first; all of them in order where there are no
/// more than that.
#[must_use]
pub fn nearest_names<'a>(word: &str, names: &[&'a str], most: usize) -> Vec<&'a str> {
    let word: String = word.to_lowercase().chars().take(LONGEST).collect();
    let mut near = names.to_vec();
    if near.len() > most {
        near.sort_by_key(|name| distance(&word, name));
        near.truncate(most);
    }
    near
}

/// What to write in place of a word that is not known: the one it is a slip of, else the nearest three; of a handful all.
pub(crate) fn instead<'a>(word: &str, known: impl IntoIterator<Item = &'a str>) -> Message {
    let mut all: Vec<&str> = Vec::new();
    for one in known {
        if !all.iter().any(|other| same_name(other, one)) {
            all.push(one);
        }
    }
    let near = nearest_names(word.trim(), &all, OFFERED);
    match nearest(word.trim(), all.iter().copied()) {
        Some(one) if near == [one] => say::did_you_mean(one),
        Some(one) => say::did_you_mean_or(one, quoted(near.into_iter().filter(|other| *other != one))),
        None if all.len() <= LISTED => say::one_of(quoted(all)),
        None => say::nearest(quoted(near)),
    }
}

/// Words, each in quotes.
pub(crate) fn quoted(words: impl IntoIterator<Item = impl AsRef<str>>) -> Vec<Message> {
    words.into_iter().map(|word| say::quoted(word.as_ref())).collect()
}

/// Letters to insert, drop, change or swap with the next.
fn distance(word: &str, candidate: &str) -> usize {
    let candidate: String = candidate.to_lowercase().chars().take(LONGEST).collect();
    strsim::osa_distance(word, &candidate)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_slip_finds_its_word_and_nonsense_finds_none() {
        assert_eq!(nearest("lattitude", ["longitude", "latitude"]), Some("latitude"));
        assert_eq!(nearest("quux", ["longitude", "latitude"]), None);
        assert_eq!(nearest("brich", ["alder", "birch"]), Some("birch"));
        assert_eq!(nearest("frames", ["stores_frames", "frames_of_bees"]), Some("frames_of_bees"));
        assert_eq!(nearest("gold", ["wood"]), None);
        assert_eq!(distance("ab", "b"), 1);
    }

    #[test]
    fn of_many_words_never_more_than_three_are_offered() {
        let known = ["hum", "hole", "hook", "heft", "humidity", "hum", "poke", "melt", "bees"];
        for word in ["hmu", "xylophone", "", "h"] {
            let said = snowhum_say::Tongue::BRITISH.say(&instead(word, known));
            assert!((1..=3).contains(&(said.matches('"').count() / 2)), "{word}: {said}");
        }
    }
}
