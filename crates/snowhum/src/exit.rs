//! Exit codes: 0 done, 1 needs the keeper now, 2 wrong usage or input, 3 environment, 70 a bug.

use std::process::ExitCode;

/// An error with the exit code it ends in.
#[derive(Debug)]
pub(crate) enum Failure {
    /// Wrong usage or input; the text names what and the remedy.
    Input(String),
    /// Disk, network, port.
    Environment(String),
    /// Done, and something needs the keeper now.
    NeedsKeeper(String),
}

impl std::fmt::Display for Failure {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            Self::Input(text) | Self::Environment(text) | Self::NeedsKeeper(text) => f.write_str(text),
        }
    }
}

impl std::error::Error for Failure {}

/// An input failure as an error.
pub(crate) fn input(text: impl std::fmt::Display) -> anyhow::Error {
    anyhow::Error::new(Failure::Input(text.to_string()))
}

/// An environment failure as an error.
pub(crate) fn environment(text: impl std::fmt::Display) -> anyhow::Error {
    anyhow::Error::new(Failure::Environment(text.to_string()))
}

/// Prints the message on stderr and gives the code.
#[expect(clippy::print_stderr, reason = "messages to the keeper go to stderr")]
pub(crate) fn report(error: &anyhow::Error) -> ExitCode {
    eprintln!("{error}");
    let code = match error.downcast_ref::<Failure>() {
        Some(Failure::NeedsKeeper(_)) => 1,
        Some(Failure::Input(_)) => 2,
        Some(Failure::Environment(_)) => 3,
        None => 70,
    };
    ExitCode::from(code)
}
