//! What is asked about before a note is kept: slips of the pen and of the thumb.

use crate::when::YEARS;
use crate::{Apiary, Note};
use jiff::civil::Date;
use jiff::tz::TimeZone;
use jiff::{SignedDuration, Timestamp};
use snowhum_say::{Message, Tongue, note_fault as say};

/// Two notes of the same words so near each other are one that was sent twice: nobody looks at a hive again so soon.
const SAME: SignedDuration = SignedDuration::from_mins(1);
/// What the clock of a phone may be fast: one set by hand is minutes off.
pub const FAST_CLOCK: SignedDuration = SignedDuration::from_mins(15);

/// Why a note is not kept as it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("{}", Tongue::BRITISH.say(&self.message()))]
pub enum Doubt {
    /// Its time is still to come.
    Ahead {
        /// Its time on the yard's clock.
        at: jiff::civil::DateTime,
    },
    /// The colony has this very note already.
    Twice {
        /// The time of the other on the yard's clock.
        at: jiff::civil::DateTime,
    },
    /// It lies before the colonies were counted, so that no answer of this winter heeds it.
    BeforeCount {
        /// Its day.
        on: Date,
        /// The day of the count.
        counted: Date,
    },
}

impl Doubt {
    /// What there is to ask.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Ahead { at } => say::ahead(at.to_string()),
            Self::Twice { at } => say::twice(at.to_string()),
            Self::BeforeCount { on, counted } => say::before_count(counted.to_string(), on.to_string()),
        }
    }

    /// Whether the keeper may say that it is right all the same.
    #[must_use]
    pub fn may_be_right(&self) -> bool {
        !matches!(self, Self::Ahead { .. })
    }
}

impl Apiary {
    /// What there is to ask about a note that is new to this yard, the weightiest first.
    #[must_use]
    pub fn doubts(&self, note: &Note, now: Timestamp) -> Vec<Doubt> {
        let zone = TimeZone::get(&self.site.zone).unwrap_or(TimeZone::UTC);
        let at = zone.to_datetime(note.at);
        let twice = self.notes.iter().find(|other| other.is_double_of(note));
        let ahead = note.at.duration_since(now) > FAST_CLOCK;
        // What is of no year that records can be of is no history, and whoever keeps notes refuses it.
        let before = at.date() < self.as_of && YEARS.contains(&at.year());
        [
            ahead.then_some(Doubt::Ahead { at }),
            twice.map(|other| Doubt::Twice { at: zone.to_datetime(other.at) }),
            before.then_some(Doubt::BeforeCount { on: at.date(), counted: self.as_of }),
        ]
        .into_iter()
        .flatten()
        .collect()
    }
}

impl Note {
    /// Whether another note says the same of the same colony in the same minute.
    pub(crate) fn is_double_of(&self, other: &Self) -> bool {
        self.id != other.id
            && self.colony == other.colony
            && self.at.duration_since(other.at).abs() <= SAME
            && self.entries == other.entries
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{NoteId, demo_text, read};
    use uuid::Uuid;

    #[test]
    fn a_note_twice_within_a_minute_ahead_or_before_the_count_is_asked_about() {
        let yard = read(demo_text(), "demo").unwrap().0;
        let known = yard.notes.first().unwrap().clone();
        let again = Note { id: NoteId(Uuid::from_u128(9)), ..known.clone() };
        let now = yard.notes.last().unwrap().at;
        let moved = |seconds| Note { at: again.at + SignedDuration::from_secs(seconds), ..again.clone() };
        assert!(matches!(yard.doubts(&moved(59), now)[..], [Doubt::Twice { .. }]));
        assert_eq!(yard.doubts(&moved(61), now), []);
        assert_eq!(yard.doubts(&known, now), [], "a note is no double of itself");
        let ahead = Note { at: now + SignedDuration::from_hours(1), ..again.clone() };
        assert!(yard.doubts(&ahead, now).iter().all(|doubt| !doubt.may_be_right()));
        let early = Note { at: again.at - SignedDuration::from_hours(24 * 300), ..again };
        assert!(matches!(yard.doubts(&early, now)[..], [Doubt::BeforeCount { .. }]));
    }
}
