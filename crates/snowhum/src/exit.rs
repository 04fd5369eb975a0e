//! Exit codes: 0 done, 1 needs the keeper now, 2 wrong usage or input, 3 environment, 70 a bug.

use std::process::ExitCode;

use snowhum_advice::verdict::FirstAnswer;
use snowhum_say::{Message, shared_terminal as shared};

use crate::progress;
use crate::text::voice::in_words;

/// An error with the exit code it ends in.
#[derive(Debug)]
pub(crate) enum Failure {
    /// Wrong usage or input; the text names what and the remedy.
    Input(Message),
    /// Disk, network, port.
    Environment(Message),
    /// Done, and something needs the keeper now.
    NeedsKeeper(Message),
}

impl std::fmt::Display for Failure {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(&in_words(self.message()))
    }
}

impl std::error::Error for Failure {}

impl Failure {
    const fn message(&self) -> &Message {
        match self {
            Self::Input(says) | Self::Environment(says) | Self::NeedsKeeper(says) => says,
        }
    }
}

/// What went wrong, for a reader of any language.
pub(crate) fn told(error: &anyhow::Error) -> Message {
    error.downcast_ref::<Failure>().map_or_else(|| error.to_string().into(), |failure| failure.message().clone())
}

/// An input failure as an error, in words of the program's own.
pub(crate) fn input(text: impl std::fmt::Display) -> anyhow::Error {
    refused(text.to_string().into())
}

/// An input failure as an error.
pub(crate) fn refused(says: Message) -> anyhow::Error {
    anyhow::Error::new(Failure::Input(says))
}

/// An environment failure as an error, in words of the program's own.
pub(crate) fn environment(text: impl std::fmt::Display) -> anyhow::Error {
    failed(text.to_string().into())
}

/// An environment failure as an error.
pub(crate) fn failed(says: Message) -> anyhow::Error {
    anyhow::Error::new(Failure::Environment(says))
}

/// What is done and needs the keeper now, as an error.
pub(crate) fn needs_keeper(says: Message) -> anyhow::Error {
    anyhow::Error::new(Failure::NeedsKeeper(says))
}

/// An error where a colony needs the keeper within a week, if that was asked for.
pub(crate) fn check(first: &FirstAnswer, asked: bool) -> anyhow::Result<()> {
    let urgent = first.colonies.iter().filter(|colony| colony.verdict.is_urgent());
    let urgent: Vec<Message> = urgent.map(|one| shared::called(&one.name, one.verdict.words())).collect();
    if !asked || urgent.is_empty() {
        return Ok(());
    }
    Err(needs_keeper(shared::needs_now(urgent)))
}

/// Prints the message on stderr and gives the code.
pub(crate) fn report(error: &anyhow::Error) -> ExitCode {
    let failure = error.downcast_ref::<Failure>();
    match failure {
        Some(failure) => progress::note(failure.to_string()),
        // A bug's words are for its report, and stay as they are.
        None => progress::as_it_is(&error.to_string()),
    }
    ExitCode::from(match failure {
        Some(Failure::NeedsKeeper(_)) => 1,
        Some(Failure::Input(_)) => 2,
        Some(Failure::Environment(_)) => 3,
        None => 70,
    })
}
