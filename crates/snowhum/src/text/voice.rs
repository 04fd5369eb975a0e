//! What the keeper of a terminal reads in, chosen once before anything is answered.

use std::borrow::Cow;
use std::sync::OnceLock;

use snowhum_apiary::Apiary;
use snowhum_say::{Message, Tongue};

static TONGUE: OnceLock<Tongue> = OnceLock::new();
/// Texts the keeper wrote, which stand as written.
static OWN: OnceLock<Vec<String>> = OnceLock::new();

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
    let british = tongue().beside(message).map(|british| format!(" ({})", british.say(message)));
    tongue().say(message) + &british.unwrap_or_default()
}

/// Set-ups and notes as they are typed, which are no speech: `floor=mesh` is typed so everywhere.
const TYPED: [&str; 3] = ["floor=", "wasps=", "united="];

/// Leaves alone what the keeper of this yard wrote.
pub(crate) fn respect(apiary: &Apiary) {
    let _ = OWN.set(apiary.own_texts().chain(TYPED).map(str::to_owned).collect());
}

/// A text in the keeper's words.
pub(crate) fn said(text: &str) -> Cow<'_, str> {
    let own = OWN.get().map(Vec::as_slice).unwrap_or_default();
    TONGUE.get().map_or(Cow::Borrowed(text), |tongue| tongue.in_trade_words(text, own))
}
