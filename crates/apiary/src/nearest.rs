//! The nearest known word to a mistyped one.

/// The candidate that differs from `word` by the fewest letters, if that is few enough to be a slip;
/// or the one that `word` is the beginning of.
pub(crate) fn nearest<'a>(word: &str, candidates: impl IntoIterator<Item = &'a str>) -> Option<&'a str> {
    const LONGEST: usize = 48;
    let word: Vec<char> = word.to_lowercase().chars().collect();
    if word.is_empty() || word.len() > LONGEST {
        return None;
    }
    let begun: String = word.iter().collect();
    let candidates: Vec<&str> = candidates.into_iter().collect();
    let longer = candidates.iter().find(|candidate| candidate.to_lowercase().starts_with(&begun));
    if let Some(longer) = longer.filter(|_| word.len() > 3) {
        return Some(longer);
    }
    let most = (word.len() / 3).clamp(1, 4);
    candidates
        .into_iter()
        .map(|candidate| (distance(&word, &candidate.to_lowercase().chars().collect::<Vec<_>>()), candidate))
        .filter(|(apart, _)| *apart <= most)
        .min_by_key(|(apart, _)| *apart)
        .map(|(_, candidate)| candidate)
}

/// So many of some names, those that differ from `word` by the fewest letters first; all of them in order where there are no
/// more than that.
#[must_use]
pub fn nearest_names<'a>(word: &str, names: &[&'a str], most: usize) -> Vec<&'a str> {
    const LONGEST: usize = 48;
    let letters = |text: &str| text.to_lowercase().chars().take(LONGEST).collect::<Vec<char>>();
    let word = letters(word);
    let mut near = names.to_vec();
    if near.len() > most {
        near.sort_by_key(|name| distance(&word, &letters(name)));
        near.truncate(most);
    }
    near
}

/// Letters to insert, drop or change.
fn distance(a: &[char], b: &[char]) -> usize {
    let mut row: Vec<usize> = (0..=b.len()).collect();
    for (i, from) in a.iter().enumerate() {
        let mut diagonal = row[0];
        row[0] = i + 1;
        for (j, to) in b.iter().enumerate() {
            let change = diagonal + usize::from(from != to);
            diagonal = row[j + 1];
            row[j + 1] = change.min(row[j] + 1).min(diagonal + 1);
        }
    }
    // Letters only shaken about, such as two that changed places, are one slip.
    let sorted = |letters: &[char]| {
        let mut letters = letters.to_vec();
        letters.sort_unstable();
        letters
    };
    if row[b.len()] > 1 && sorted(a) == sorted(b) { 1 } else { row[b.len()] }
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
        assert_eq!(distance(&['a', 'b'], &['b']), 1);
    }
}
