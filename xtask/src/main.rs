//! Chores of the house, run as `cargo xtask CHORE`.

#![expect(clippy::print_stdout, clippy::print_stderr, reason = "a chore talks to the one who runs it")]

mod bench;
mod calibrate;
pub mod climatology;
mod conduction;
mod edges;
mod fuzz;
mod house;
mod needs;
mod package;
mod test;
mod tidy;
mod validate;

use anyhow::{Result, bail};
use std::process::ExitCode;

const USAGE: &str = "\
cargo xtask CHORE

  test    everything that must hold: format, tidy, clippy, tests, also in a browser, a smoke run, counts of instructions
  tidy    the rules of the house that no compiler checks
  edges   compute data/edge_losses.toml afresh
  fuzz    bytes that nobody would write at every way in: --minutes N [WAY] (needs cargo-fuzz)
  package packages to install, into target/package: for Debian, for any Linux, sums, a signature (see docs/OPERATIONS.md);
          --try makes them twice and installs them into a bare system (needs to be root; many minutes)
  guide   take the pictures of docs/user-guide in a real browser
  bench   nanoseconds per particle-hour; --peers [--json] beside other tools (needs Python 3 and the network),
          --counts [--store] instructions (needs valgrind), --scaling by size, into docs/PERFORMANCE.md,
          --precision BEFORE AFTER [SEEDS] variance of answers and processor time of two binaries, on the demo and made-up yards,
          --still whether twenty seeds say one thing of the demo (the tests must be built)
  validate
          compute every check afresh and write docs/VALIDATION.md, docs/PARAMETERS.md and docs/pictures
  calibrate
          fit the parameters that real winters set together, into data/ (some minutes; repeats to the byte)
  climatology
          rebuild data/climatology from its pinned sources (needs Python 3 and the network)";

fn main() -> ExitCode {
    match run() {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            // The chain of causes, without a stack: the step's name says where.
            eprintln!("error: {error:#}");
            ExitCode::FAILURE
        }
    }
}

fn run() -> Result<()> {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let words: Vec<&str> = arguments.iter().map(String::as_str).collect();
    match words.as_slice() {
        ["test"] => test::run(),
        ["tidy"] => tidy::run(),
        ["edges"] => edges::run(),
        ["fuzz", rest @ ..] => fuzz::run(rest),
        ["package", rest @ ..] => package::run(rest),
        ["all-but", program, run @ ..] => test::all_but(program, run),
        ["guide"] => test::guide(),
        ["bench", rest @ ..] => bench::run(rest),
        ["climatology"] => climatology::run(),
        ["validate"] => validate::run(),
        ["calibrate"] => calibrate::run(),
        [] | ["help" | "--help" | "-h"] => {
            println!("{USAGE}");
            Ok(())
        }
        unknown => bail!("no such chore: {}\n\n{USAGE}", unknown.join(" ")),
    }
}
