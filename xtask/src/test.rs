//! Everything that must hold before a change is taken: what the build server runs.

mod browser;
mod patience;
mod smoke;
mod steps;
mod supply;
mod tally;

use crate::bench::counts;
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

/// All tests, those in a browser too: one set of features, so that nothing is compiled twice.
const TESTS: [&str; 4] = ["test", "--workspace", "--features", "snowhum-browser/browser"];

/// The tests in a browser are checked as well, though no plain build has them.
const CLIPPY: [&str; 9] = [
    "clippy",
    "--workspace",
    "--all-targets",
    "--features",
    "snowhum-browser/browser",
    "--quiet",
    "--",
    "-D",
    "warnings",
];

/// Makes the guide's pictures afresh.
///
/// # Errors
/// When something that is needed is missing, or a page fails.
pub(crate) fn guide() -> Result<()> {
    needs::meet(needs::BROWSER)?;
    quiet(&["build", "--release", "--package", "snowhum"])?;
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
    steps.run("clippy", || quiet(&CLIPPY))?;
    steps.run("release build", || quiet(&["build", "--release", "--package", "snowhum"]))?;
    steps.run("axe-core", browser::fetch_checker)?;
    steps.run("test build", || quiet(&[&TESTS[..], &["--no-run"]].concat()))?;
    steps.run_tests("tests", &[&TESTS[..], &["--no-fail-fast"]].concat())?;
    steps.run("smoke", smoke::run)?;
    steps.run("instruction counts", counts::gate)
}

fn quiet(arguments: &[&str]) -> Result<Option<String>> {
    house::pass(&mut house::cargo(arguments)).map(|()| None)
}
