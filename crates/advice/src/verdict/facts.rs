//! What is known of a colony, whatever it was learnt from.

use snowhum_say::Message;

use super::answer::{ColonyVerdict, Line};
use super::ground::Ground;
use super::still::Held;
use crate::actions::Weighed;
use crate::fit::answer::Verdict;
use crate::statistics::Estimate;

/// What has become of a colony.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Fate {
    /// It lives, for all that is known.
    Lives,
    /// Seen dead, and nobody has looked for the cause.
    SeenDead,
    /// Dead, with signs of foulbrood.
    Foulbrood,
    /// Put to another.
    UnitedInto(String),
    /// Dead and examined, sold, or taken: in words.
    Gone(Message),
}

/// What is known of a colony, whatever it was learnt from.
pub(crate) struct Facts<'a> {
    pub(crate) fate: Fate,
    /// Chance of being alive today.
    pub(crate) alive: f64,
    /// Chance of being alive with a queen.
    pub(crate) alive_queenright: f64,
    /// Why its bees cannot stay shut in, if they are.
    pub(crate) is_shut: bool,
    /// Whether a sign that no sum holds asks for a look.
    pub(crate) beside: bool,
    /// Whether food was weighed and bees counted.
    pub(crate) weighed: &'a [Weighed],
    /// Whether it is fit for winter; none once that is no question.
    pub(crate) fit: Option<&'a Verdict>,
    /// What was decided of it last, where that is kept.
    pub(crate) last: Option<&'a ColonyVerdict>,
}

impl Facts<'_> {
    pub(super) fn queen_in_doubt(&self, ground: &Ground<'_>) -> bool {
        self.alive_queenright < ground.thresholds.queen_sound.value * self.alive
    }

    /// Notes where its life or its queen is so near its line that another draw of members may tell it otherwise.
    pub(super) fn note_doubts(&self, ground: &Ground<'_>, held: &mut Held) {
        let members = ground.base.question.members.max(1) as f64;
        let of = |chance: f64| Estimate { value: chance, error: (chance * (1.0 - chance) / members).max(0.0).sqrt() };
        held.is_over(Line::Alive, of(self.alive), ground.thresholds.alive_sound.value, None);
        if self.alive > 0.0 {
            held.is_over(
                Line::Queen,
                of(self.alive_queenright / self.alive),
                ground.thresholds.queen_sound.value,
                None,
            );
        }
    }
}
