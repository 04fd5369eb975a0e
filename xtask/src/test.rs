//! Everything that must hold before a change is taken: what the build server runs.

mod smoke;
mod steps;
mod tally;

use crate::{house, needs, tidy};
use anyhow::Result;
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

fn all(steps: &mut Steps) -> Result<()> {
    steps.run("needs", || needs::meet(needs::TEST).map(|()| None))?;
    steps.run("format", || quiet(&["fmt", "--all", "--check"]))?;
    steps.run("tidy", || tidy::run().map(|()| None))?;
    steps.run("clippy", || quiet(&["clippy", "--workspace", "--all-targets", "--quiet", "--", "-D", "warnings"]))?;
    steps.run("release build", || quiet(&["build", "--release", "--package", "snowhum"]))?;
    steps.run_tests(&["test", "--workspace", "--no-fail-fast"])?;
    steps.run("smoke", smoke::run)
}

fn quiet(arguments: &[&str]) -> Result<Option<String>> {
    house::pass(&mut house::cargo(arguments)).map(|()| None)
}
