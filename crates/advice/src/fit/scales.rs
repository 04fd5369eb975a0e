//! The six scales, one a file.

mod bees;
mod brood;
mod hive;
pub(super) mod mites;
mod queen;
mod stores;

pub(super) use brood::FULL_COMB;
pub(crate) use hive::{GUARD, left_on};

use super::Look;
use super::answer::{Scale, Stands, Usual, What};
use snowhum_units::Range;

use crate::statistics::rounded;

pub(super) fn all(look: &Look<'_>, at: usize) -> Vec<Scale> {
    vec![
        bees::scale(look, at),
        brood::scale(look, at),
        stores::scale(look, at),
        queen::scale(look, at),
        mites::scale(look, at),
        hive::scale(look, at),
    ]
}

/// What a scale shows, before it is seen where the figure stands.
struct Shown {
    what: What,
    figure: Option<Range<f64>>,
    unit: &'static str,
    usual: Option<Usual>,
    /// Least end of the scale.
    end: f64,
    decimals: i32,
    says: String,
}

impl Shown {
    fn scale(self) -> Scale {
        let figure = self.figure.map(|range| range.map(|value| rounded(value, self.decimals)));
        let ends = [self.end, figure.map_or(0.0, |range| range.p90), self.usual.as_ref().map_or(0.0, |u| u.high)];
        Scale {
            what: self.what,
            stands: Stands::of(figure, self.usual.as_ref()),
            figure,
            unit: self.unit.to_owned(),
            end: rounded(1.1 * ends.into_iter().fold(0.0, f64::max), self.decimals.max(1)),
            usual: self.usual,
            says: self.says,
            other_school: None,
            look: None,
        }
    }
}

/// A count in words of thousands: `12,000`.
pub(super) fn thousands(count: f64) -> String {
    let count = (count / 100.0).round().max(0.0) as u64 * 100;
    if count >= 1_000 { format!("{},{:03}", count / 1_000, count % 1_000) } else { count.to_string() }
}
