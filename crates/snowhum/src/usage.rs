//! What is said where arguments ask for help, or cannot be read.

use clap::CommandFactory;
use snowhum_say::Tongue;
use std::process::ExitCode;

use crate::args::{Arguments, help, refused};
use crate::progress;
use crate::text::voice;

/// Says what is wrong with the arguments, or what was asked of them: help, the version. They are read again by who speaks the
/// keeper's language.
pub(crate) fn told(first: clap::Error) -> ExitCode {
    let typed: Vec<String> = std::env::args_os().map(|one| one.to_string_lossy().into_owned()).collect();
    voice::speak(Tongue::BRITISH.in_language(help::language(&typed)));
    let again = help::in_words(Arguments::command(), voice::tongue()).try_get_matches_from(std::env::args_os());
    let error = again.err().unwrap_or(first);
    match refused::message(&error) {
        Some(wrong) => progress::note(wrong),
        // Help that cannot be printed, as to a closed pipe, is no fault.
        None => drop(error.print()),
    }
    if error.use_stderr() { ExitCode::from(2) } else { ExitCode::SUCCESS }
}
