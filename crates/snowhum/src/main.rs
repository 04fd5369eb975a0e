//! The one binary: arguments become a resolved plan of work, which is run and told in words or JSON.

mod args;
mod commands;
mod exit;
mod keep;
mod new_file;
mod progress;
mod room_record;
mod sources;
mod text;
mod usage;
mod weather_source;

use clap::Parser;
use std::process::ExitCode;

fn main() -> ExitCode {
    let arguments = match args::Arguments::try_parse() {
        Ok(arguments) => arguments,
        Err(error) => return usage::told(error),
    };
    match commands::run(&arguments) {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => exit::report(&error),
    }
}
