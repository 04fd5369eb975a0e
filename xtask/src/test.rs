//! Everything that must hold before a change is taken: what the build server runs.

mod browser;
mod patience;
mod smoke;
mod steps;
mod supply;
mod tally;

use crate::bench::counts;
use crate::house::TESTED;
use crate::{house, needs, tidy};
use anyhow::{Result, bail};
use std::path::Path;
use std::process::Command;
use steps::Steps;

/// Runs every step, and ends at the first that fails.
///
/// # Errors
/// Names the step that failed.
pub(crate) fn run() -> Result<()> {
    let mut steps = Steps::default();
    let outcome = all(&mut steps);
    steps.print();
    outcome
}

/// The test program that needs a browser.
const BROWSER: &str = "browser";

/// Makes the guide's pictures afresh.
///
/// # Errors
/// When something that is needed is missing, or a page fails.
pub(crate) fn guide() -> Result<()> {
    needs::meet(needs::BROWSER)?;
    build()?;
    browser::guide()
}

fn all(steps: &mut Steps) -> Result<()> {
    steps.run("needs", || {
        needs::meet(needs::TEST)?;
        needs::meet(needs::BROWSER).map(|()| None)
    })?;
    steps.run("format", || quiet(&["fmt", "--all", "--check"]))?;
    steps.run("tidy", || tidy::run().map(|()| None))?;
    steps.run("supply chain", supply::check)?;
    steps.run("clippy", lint)?;
    steps.run("axe-core", browser::fetch_checker)?;
    steps.run("build", build)?;
    steps.run_tests("tests", side_by_side()?)?;
    steps.run("smoke", smoke::run)?;
    steps.run("instruction counts", counts::gate)
}

/// Lints all that is tested, in the folder it is built in.
fn lint() -> Result<Option<String>> {
    quiet(&[&["clippy"], &TESTED[..], &["--all-targets", "--quiet", "--", "-D", "warnings"]].concat())
}

fn build() -> Result<Option<String>> {
    quiet(&[&["test"], &TESTED[..], &["--no-run"]].concat())
}

/// The tests in a browser, which wait for pages more than they reckon, and beside them all others, which give way to them.
fn side_by_side() -> Result<[Command; 2]> {
    let chore = std::env::current_exe()?;
    let runner = format!("target.\"cfg(all())\".runner = [{chore:?}, \"all-but\", {BROWSER:?}]");
    let others = house::cargo(&[&["--config", &runner, "test"], &TESTED[..], &["--no-fail-fast"]].concat());
    let browser = house::cargo(&[&["test"], &TESTED[..], &["--no-fail-fast", "--test", BROWSER]].concat());
    Ok([browser, house::in_the_background(&others)])
}

/// Runs a test program, but for that of a name: it has a run of its own.
///
/// # Errors
/// When the program cannot be run, or a test fails.
pub(crate) fn all_but(name: &str, run: &[&str]) -> Result<()> {
    let [program, arguments @ ..] = run else { bail!("no program is named") };
    let file = Path::new(program).file_name().unwrap_or_default().to_string_lossy();
    if file.rsplit_once('-').is_some_and(|(stem, _)| stem == name) {
        return Ok(());
    }
    house::pass(Command::new(program).args(arguments))
}

fn quiet(arguments: &[&str]) -> Result<Option<String>> {
    house::pass(&mut house::cargo(arguments)).map(|()| None)
}
