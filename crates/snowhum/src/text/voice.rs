//! What the keeper of a terminal reads in, chosen once before anything is answered.

use std::sync::OnceLock;

use snowhum_say::{Message, Tongue};

static TONGUE: OnceLock<Tongue> = OnceLock::new();

/// Answers in this tongue from now on.
pub(crate) fn speak(tongue: Tongue) {
    // Chosen a second time it stays as it was first chosen: there is one keeper at a terminal.
    let _ = TONGUE.set(tongue);
}

/// What the keeper reads in.
pub(crate) fn tongue() -> Tongue {
    TONGUE.get().copied().unwrap_or_default()
}

/// A message in words; a caution in a language that no keeper of it has read yet with its British text beside it.
pub(crate) fn in_words(message: &Message) -> String {
    let british = tongue().beside(message).map(|british| format!(" ({british})"));
    tongue().say(message) + &british.unwrap_or_default()
}
