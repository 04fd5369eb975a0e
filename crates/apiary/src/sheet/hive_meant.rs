//! Which hive a cell means.

use crate::shipped::same_name;
use crate::{Apiary, Colony};

/// The colony that a cell names: by its name, else by what is left of it without `hive` and `no.`, if that is one alone.
pub(super) fn hive_meant<'a>(yard: &'a Apiary, written: &str) -> Option<&'a Colony> {
    let colonies = &yard.colonies;
    let whole = colonies.iter().find(|colony| same_name(&colony.name, written));
    whole.or_else(|| {
        let wanted = short_name(written);
        let mut near = colonies.iter().filter(|colony| !wanted.is_empty() && short_name(&colony.name) == wanted);
        near.next().filter(|_| near.next().is_none())
    })
}

fn short_name(name: &str) -> String {
    const LEFT_OUT: [&str; 6] = ["hive", "colony", "no", "nr", "number", "the"];
    let lower = name.to_lowercase();
    let words = lower.split(|letter: char| !letter.is_alphanumeric()).filter(|word| !word.is_empty());
    words.filter(|word| !LEFT_OUT.contains(word)).collect::<Vec<_>>().join(" ")
}
