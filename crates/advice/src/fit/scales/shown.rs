//! What a scale shows, before it is seen where the figure stands.

use snowhum_say::Message;
use snowhum_units::Range;

use crate::fit::answer::{Scale, Stands, Usual, What};
use crate::statistics::rounded;

/// What a scale shows, before it is seen where the figure stands.
pub(super) struct Shown {
    pub(super) what: What,
    pub(super) figure: Option<Range<f64>>,
    pub(super) unit: &'static str,
    pub(super) usual: Option<Usual>,
    /// Least end of the scale.
    pub(super) end: f64,
    pub(super) decimals: i32,
    pub(super) says: Message,
}

impl Shown {
    pub(super) fn scale(self) -> Scale {
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

/// A count as exact as bees are known: to hundreds.
pub(in crate::fit) fn hundreds(count: f64) -> f64 {
    (count / 100.0).round().max(0.0) * 100.0
}
