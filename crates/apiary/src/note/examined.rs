//! A dead hive examined, and a colony counted in spring, as they are kept.

use crate::wrong::Wrong;
use serde::{Deserialize, Serialize};
use snowhum_say::note_fault as say;
use std::fmt;
use std::str::FromStr;

/// What was found in a dead hive, and what it pointed to on that day.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Examined {
    /// Signs looked for, in the order told.
    pub signs: Vec<FoundSign>,
    /// The likeliest cause; none where foulbrood stopped the examination.
    pub likeliest: Option<Likeliest>,
}

/// A sign looked for in a dead hive.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct FoundSign {
    /// Its short name, such as `small-cluster`.
    pub name: String,
    /// Whether it was there.
    pub found: Found,
}

/// Whether a sign was there, and how sure the keeper is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Found {
    /// Surely.
    Yes,
    /// Fairly sure that it was.
    FairlyYes,
    /// Fairly sure that it was not.
    FairlyNo,
    /// Surely not.
    No,
}

/// The likeliest cause of an end.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Likeliest {
    /// Its short name, such as `mites`.
    pub cause: String,
    /// Of 100 hives that looked like this.
    pub of_100: u8,
}

/// What a colony was in spring, when the winter's count was closed. Dead and united have notes of their own.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum SpringCount {
    /// Alive, with a laying queen.
    Alive,
    /// Alive but smaller than it should be: not lost.
    Weak,
    /// Alive with a queen problem that cannot be mended: lost.
    QueenFailed,
    /// Taken by fire, flood, fall, bear, theft: lost.
    Disaster,
    /// Sold or given away: not lost.
    Sold,
}

impl SpringCount {
    /// Each with its words.
    pub const WORDS: [(&'static str, Self); 5] = [
        ("alive", Self::Alive),
        ("weak", Self::Weak),
        ("queen failed", Self::QueenFailed),
        ("disaster", Self::Disaster),
        ("sold", Self::Sold),
    ];
}

const FOUND: [(&str, Found); 4] =
    [("fairly yes", Found::FairlyYes), ("fairly no", Found::FairlyNo), ("yes", Found::Yes), ("no", Found::No)];
/// What begins the last part.
const LIKELIEST: &str = "likeliest ";
/// Most signs, and most letters of a name.
const MOST_SIGNS: usize = 60;
const MOST_LETTERS: usize = 40;

impl fmt::Display for Examined {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let words = |found: Found| FOUND.iter().find(|(_, known)| *known == found).map_or("", |(words, _)| words);
        let signs = self.signs.iter().map(|sign| format!("{} {}", sign.name, words(sign.found)));
        let likeliest = self.likeliest.iter().map(|one| format!("{LIKELIEST}{} {}", one.cause, one.of_100));
        f.write_str(&signs.chain(likeliest).collect::<Vec<_>>().join(", "))
    }
}

impl FromStr for Examined {
    type Err = Wrong;

    fn from_str(text: &str) -> Result<Self, Wrong> {
        let mut examined = Self { signs: Vec::new(), likeliest: None };
        for part in text.split(',').map(str::trim).filter(|part| !part.is_empty()) {
            match part.strip_prefix(LIKELIEST) {
                Some(likeliest) => examined.likeliest = Some(read_likeliest(likeliest.trim())?),
                None => examined.signs.push(read_sign(part)?),
            }
        }
        if examined.signs.is_empty() || examined.signs.len() > MOST_SIGNS {
            return Err(Wrong::new(say::signs(examined.signs.len()), say::signs_right()));
        }
        Ok(examined)
    }
}

fn read_sign(text: &str) -> Result<FoundSign, Wrong> {
    let of = |(words, found): &(&str, Found)| {
        let name = text.strip_suffix(words)?.strip_suffix(' ')?.trim();
        is_short_name(name).then(|| FoundSign { name: name.to_owned(), found: *found })
    };
    FOUND.iter().find_map(of).ok_or_else(|| Wrong::new(say::no_sign(text), say::signs_right()))
}

fn read_likeliest(text: &str) -> Result<Likeliest, Wrong> {
    let read = text.rsplit_once(' ').and_then(|(cause, of_100)| {
        let of_100 = of_100.parse::<u8>().ok().filter(|of_100| *of_100 <= 100)?;
        is_short_name(cause.trim()).then(|| Likeliest { cause: cause.trim().to_owned(), of_100 })
    });
    read.ok_or_else(|| Wrong::new(say::no_cause(text), say::cause_right()))
}

fn is_short_name(name: &str) -> bool {
    let is_plain = |letter: char| letter.is_ascii_lowercase() || letter.is_ascii_digit() || letter == '-';
    (1..=MOST_LETTERS).contains(&name.len()) && name.chars().all(is_plain)
}

#[cfg(test)]
mod tests {
    use super::{Examined, Found};

    #[test]
    fn it_is_written_as_it_reads() {
        for text in [
            "small-cluster yes, food-near fairly yes, no-food no, heads-in-cells fairly no, likeliest mites 71",
            "ropy-larvae yes",
        ] {
            assert_eq!(text.parse::<Examined>().unwrap().to_string(), text);
        }
        let loose = " small-cluster  fairly yes ,, likeliest mites 100".parse::<Examined>().unwrap();
        assert_eq!(loose.signs[0].found, Found::FairlyYes);
    }

    #[test]
    fn what_cannot_be_read_says_what_can() {
        for text in ["", "small-cluster", "small-cluster perhaps", "likeliest mites 71", "<b> yes", "a b yes"] {
            let wrong = text.parse::<Examined>().unwrap_err();
            assert!(wrong.to_string().contains("small-cluster yes"), "{text}: {wrong}");
        }
        assert!(
            "x yes, likeliest mites 400".parse::<Examined>().unwrap_err().to_string().contains("likeliest mites 71")
        );
    }
}
