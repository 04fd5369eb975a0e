//! Chances as hives of a hundred.

use crate::{Message, words};

/// A chance as hives of a hundred, never 0 and never 100: nobody has looked.
///
/// ```
/// use snowhum_say::{Tongue, in_hundred};
/// let said = |chance| Tongue::BRITISH.say(&in_hundred(chance));
/// assert_eq!(said(0.917), "about 92 in 100");
/// assert_eq!(said(0.0001), "fewer than 1 in 100");
/// assert_eq!(said(0.9999), "more than 99 in 100");
/// ```
#[must_use]
pub fn in_hundred(chance: f64) -> Message {
    match chance {
        hardly if hardly < 0.01 => words::fewest(),
        nearly if nearly > 0.99 => words::most(),
        chance => words::in_hundred(100.0 * chance),
    }
}

/// Whole hives of a hundred, held between 1 and 99.
#[must_use]
pub fn hives(chance: f64) -> u32 {
    (100.0 * chance).round().clamp(1.0, 99.0) as u32
}

/// Both ways round: of a hundred hives, so many alive and so many not.
#[must_use]
pub fn both_ways(chance: f64) -> Message {
    if !(0.01..=0.99).contains(&chance) {
        return in_hundred(chance);
    }
    let alive = hives(chance);
    words::both_ways(alive, 100 - alive)
}
