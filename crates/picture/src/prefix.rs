//! The start of every id in a picture, so that many pictures stand on one page.

use std::fmt;

/// Longest prefix kept.
const LONGEST: usize = 64;

/// Start of ids: a letter, then letters, digits, `-` and `_`.
///
/// ```
/// use snowhum_picture::IdPrefix;
/// assert_eq!(IdPrefix::new("hive-7").as_str(), "hive-7");
/// assert_eq!(IdPrefix::new("7 \"up\"").as_str(), "p7_20__22_up_22_");
/// ```
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub struct IdPrefix(String);

impl IdPrefix {
    /// A prefix from any text: what an id may not hold is written as its number between underscores, so that different
    /// texts of up to 64 such letters stay different.
    #[must_use]
    pub fn new(text: &str) -> Self {
        let mut id = String::new();
        if !text.starts_with(|first: char| first.is_ascii_alphabetic()) {
            id.push('p');
        }
        for letter in text.chars().take(LONGEST) {
            if letter.is_ascii_alphanumeric() || letter == '-' {
                id.push(letter);
            } else {
                id.push_str(&format!("_{:x}_", u32::from(letter)));
            }
        }
        Self(id)
    }

    /// The prefix.
    #[must_use]
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl fmt::Display for IdPrefix {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}
