//! What lies over the flight entrance and the upper hole, from `data/openings.toml`.

use crate::openings::opening_state_figures;
use serde::{Deserialize, Serialize};
use snowhum_say::{Message, hive_word as say};
use snowhum_units::Fraction;

/// How an opening was found, and how it was left.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum OpeningState {
    /// Open as it should be.
    Clear,
    /// Blocked and left so.
    Blocked,
    /// Found blocked and cleared.
    Cleared,
    /// Under drifted snow.
    DriftedOver,
    /// Iced shut.
    Iced,
    /// Plugged with bees, dead or alive.
    PluggedWithBees,
    /// Not to be seen: nobody knows how it stands, and what was noted before holds on.
    NotVisible,
}

impl OpeningState {
    /// Each with the words it is noted by.
    pub const WORDS: [(&'static str, Self); 7] = [
        ("clear", Self::Clear),
        ("blocked", Self::Blocked),
        ("cleared", Self::Cleared),
        ("drifted over", Self::DriftedOver),
        ("iced", Self::Iced),
        ("plugged with bees", Self::PluggedWithBees),
        ("not visible", Self::NotVisible),
    ];

    /// How it stands.
    #[must_use]
    pub fn message(self) -> Message {
        match self {
            Self::Clear => say::clear(),
            Self::Blocked => say::blocked(),
            Self::Cleared => say::cleared(),
            Self::DriftedOver => say::drifted_over(),
            Self::Iced => say::iced(),
            Self::PluggedWithBees => say::plugged(),
            Self::NotVisible => say::not_visible(),
        }
    }

    /// The words it is noted by.
    pub(crate) fn written(self) -> &'static str {
        Self::WORDS.iter().find(|(_, state)| *state == self).map_or("", |(words, _)| words)
    }

    /// Share of the opening's area that lets air through; none where nothing is known.
    ///
    /// ```
    /// use snowhum_apiary::OpeningState;
    /// assert_eq!(OpeningState::Cleared.free(), Some(snowhum_units::Fraction::new(1.0)));
    /// assert!(OpeningState::Iced.free() < OpeningState::DriftedOver.free(), "ice is tight, snow is porous");
    /// assert_eq!(OpeningState::NotVisible.free(), None);
    /// ```
    #[must_use]
    pub fn free(self) -> Option<Fraction> {
        match self {
            Self::Clear | Self::Cleared => Some(Fraction::new(1.0)),
            Self::NotVisible => None,
            shut => Some(opening_state_figures(shut.written())),
        }
    }

    /// Whether something lies over or in the opening: less air, and but for snow no way out for bees.
    #[must_use]
    pub fn is_shut(self) -> bool {
        !matches!(self, Self::Clear | Self::Cleared | Self::NotVisible)
    }
}
