//! `generate`: manual pages and completions for shells, for who packs the program.

use std::path::{Path, PathBuf};

use clap::{Args, CommandFactory};
use clap_complete::Shell;
use snowhum_say::Tongue;

use crate::args::Arguments;
use crate::args::help::in_words;
use crate::exit;

#[derive(Debug, Args)]
pub(crate) struct GenerateArguments {
    /// The folder for `man1` and `completions`; what lies there under the same names is written over.
    to: PathBuf,
}

pub(super) fn run(arguments: &GenerateArguments) -> anyhow::Result<()> {
    let (manual, shells) = (arguments.to.join("man1"), arguments.to.join("completions"));
    write(&manual, &shells).map_err(|error| unwritable(&arguments.to, &error))
}

fn write(manual: &Path, shells: &Path) -> std::io::Result<()> {
    std::fs::create_dir_all(manual)?;
    std::fs::create_dir_all(shells)?;
    let mut command = in_words(Arguments::command(), Tongue::BRITISH);
    for shell in [Shell::Bash, Shell::Zsh, Shell::Fish] {
        clap_complete::generate_to(shell, &mut command, "snowhum", shells)?;
    }
    // The command `help` has no page of its own: it shows those of the others.
    let told = Arguments::command().disable_help_subcommand(true);
    let told = told.mut_subcommands(|below| below.disable_help_subcommand(true));
    clap_mangen::generate_to(in_words(told, Tongue::BRITISH), manual)
}

fn unwritable(place: &Path, error: &std::io::Error) -> anyhow::Error {
    exit::environment(format!("{} cannot be written: {error}", place.display()))
}
