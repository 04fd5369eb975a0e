//! Words a keeper chooses from, shares and numbers, read and written again.

use crate::nearest::instead;
use crate::shipped::same_name;
use crate::wrong::Wrong;
use snowhum_say::fault as say;
use snowhum_units::{Fraction, number};

pub(super) fn word<T: Clone>(written: &str, choices: &[(&str, T)]) -> Result<T, Wrong> {
    if let Some((_, choice)) = choices.iter().find(|(word, _)| same_name(word, written)) {
        return Ok(choice.clone());
    }
    let remedy = instead(written, choices.iter().map(|(word, _)| *word));
    Err(Wrong::new(say::unknown(written), remedy))
}

pub(super) fn name_of<T: PartialEq>(value: &T, choices: &[(&'static str, T)]) -> &'static str {
    choices.iter().find(|(_, choice)| choice == value).map_or("", |(word, _)| word)
}

pub(crate) fn percent(text: &str) -> Result<Fraction, Wrong> {
    let share = number(text.trim().trim_end_matches('%')).ok();
    let share = share.map(|percent| percent / 100.0).filter(|share| (0.0..=1.0).contains(share));
    share.map(Fraction::new).ok_or_else(|| Wrong::new(say::no_share(text.trim()), say::share_right()))
}

/// A number to three places at most, without idle zeros.
pub(super) fn short(value: f64) -> String {
    let rounded = (value * 1e3).round() / 1e3;
    rounded.to_string()
}
