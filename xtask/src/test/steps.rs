//! Steps with their times.

use super::patience::Patience;
use super::tally::Tally;
use crate::house;
use anyhow::{Context, Result, bail, ensure};
use std::io::{BufRead, BufReader};
use std::os::unix::process::CommandExt;
use std::process::{Command, Stdio};
use std::sync::{Mutex, PoisonError};
use std::time::{Duration, Instant};

/// Steps run so far.
#[derive(Debug, Default)]
pub(crate) struct Steps {
    done: Vec<Step>,
    tally: Tally,
}

#[derive(Debug)]
struct Step {
    name: &'static str,
    took: Duration,
    outcome: String,
}

impl Steps {
    /// Runs one step, which may leave a remark for the summary.
    ///
    /// # Errors
    /// Names the step.
    pub(crate) fn run(&mut self, name: &'static str, step: impl FnOnce() -> Result<Option<String>>) -> Result<()> {
        println!("== {name}");
        let begun = Instant::now();
        let outcome = step();
        let remark = match &outcome {
            Ok(remark) => remark.clone().unwrap_or_else(|| "ok".to_owned()),
            Err(_) => "FAILED".to_owned(),
        };
        self.done.push(Step { name, took: begun.elapsed(), outcome: remark });
        outcome.map(|_| ()).with_context(|| format!("step `{name}` failed"))
    }

    /// Runs tests of cargo's side by side, passes their output through and counts them.
    pub(crate) fn run_tests(&mut self, name: &'static str, commands: impl IntoIterator<Item = Command>) -> Result<()> {
        let tally = Mutex::new(Tally::default());
        let counts = &tally;
        let outcome = self.run(name, || {
            std::thread::scope(|scope| {
                let running: Vec<_> = commands
                    .into_iter()
                    .map(|mut command| scope.spawn(move || tests_of(&mut command, counts)))
                    .collect();
                let told: Vec<Result<()>> = running
                    .into_iter()
                    .map(|one| one.join().unwrap_or_else(|_| bail!("a run of tests broke off")))
                    .collect();
                told.into_iter().collect::<Result<()>>()
            })?;
            ensure!(counted(&tally).passed > 0, "no test ran");
            Ok(None)
        });
        self.tally += counted(&tally);
        outcome
    }

    /// Prints the summary.
    pub(crate) fn print(&self) {
        println!("\n== summary");
        for Step { name, took, outcome } in &self.done {
            println!("{name:<14}{:>8.1} s  {outcome}", took.as_secs_f64());
        }
        println!("{} passed, {} failed", self.tally.passed, self.tally.failed);
    }
}

/// Runs a command, passes its output through and counts the tests it tells of.
fn tests_of(command: &mut Command, tally: &Mutex<Tally>) -> Result<()> {
    // An error says in words where it happened; the frames of a runtime under it would hide them.
    command.env("RUST_LIB_BACKTRACE", "0").stdout(Stdio::piped());
    // Nobody sits before a build server to end what hangs; elsewhere a keyboard's interrupt must reach the tests.
    let is_watched = std::env::var_os("CI").is_some();
    if is_watched {
        command.process_group(0);
    }
    let mut child = command.spawn().with_context(|| format!("could not start `{}`", house::words(command)))?;
    let patience = is_watched.then(|| Patience::with_group(child.id()));
    if let Some(output) = child.stdout.take() {
        for line in BufReader::new(output).lines() {
            let line = line?;
            if let Some(patience) = &patience {
                patience.heard();
            }
            println!("{line}");
            tally.lock().unwrap_or_else(PoisonError::into_inner).read(&line);
        }
    }
    let status = child.wait()?;
    ensure!(status.success(), "`{}` ended with {status}", house::words(command));
    Ok(())
}

fn counted(tally: &Mutex<Tally>) -> Tally {
    *tally.lock().unwrap_or_else(PoisonError::into_inner)
}

#[cfg(test)]
mod tests {
    use super::Steps;
    use anyhow::bail;

    #[test]
    fn a_failing_step_is_named() {
        let mut steps = Steps::default();
        let told = format!("{:#}", steps.run("frost", || bail!("no frost found")).unwrap_err());
        assert_eq!(told, "step `frost` failed: no frost found");
        assert_eq!(steps.done[0].outcome, "FAILED");
    }
}
