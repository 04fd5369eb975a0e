//! Where the house stands, and running programs in it.

use anyhow::{Context, Result, ensure};
use serde_json::Value;
use std::path::{Path, PathBuf};
use std::process::Command;

/// The root of the workspace.
pub(crate) fn root() -> PathBuf {
    // Cargo says at run time where the crate is, so that a moved checkout is still found.
    let xtask = std::env::var("CARGO_MANIFEST_DIR").unwrap_or_else(|_| env!("CARGO_MANIFEST_DIR").to_owned());
    PathBuf::from(xtask).join("..").canonicalize().unwrap_or_else(|_| PathBuf::from("."))
}

/// Cargo, at the root.
pub(crate) fn cargo(arguments: &[&str]) -> Command {
    cargo_of(Path::new(&std::env::var("CARGO").unwrap_or_else(|_| "cargo".to_owned())), arguments)
}

/// The cargo of some toolchain, at the root.
pub(crate) fn cargo_of(program: &Path, arguments: &[&str]) -> Command {
    let mut command = Command::new(program);
    command.args(arguments).current_dir(root());
    // A build script that asks who is built (that of `ring` does) would take this chore's own name for a change, and
    // everything above it would be built twice.
    for name in std::env::vars_os().filter_map(|(name, _)| name.into_string().ok()) {
        if name.starts_with("CARGO_PKG_") || name.starts_with("CARGO_MANIFEST_") {
            command.env_remove(name);
        }
    }
    command
}

/// All crates with the tests in a browser and those of a club, built as they are tested: one profile and one set of features,
/// so that nothing is compiled twice.
pub(crate) const TESTED: [&str; 5] =
    ["--workspace", "--features", "snowhum-browser/browser,snowhum/club", "--profile", "tests"];

/// A command that gives way to others.
pub(crate) fn in_the_background(command: &Command) -> Command {
    let mut nice = Command::new("nice");
    nice.args(["-n", "10"]).arg(command.get_program()).args(command.get_args());
    for (name, value) in command.get_envs() {
        match value {
            Some(value) => nice.env(name, value),
            None => nice.env_remove(name),
        };
    }
    if let Some(folder) = command.get_current_dir() {
        nice.current_dir(folder);
    }
    nice
}

/// Runs the command with its output passed through.
pub(crate) fn pass(command: &mut Command) -> Result<()> {
    let words = words(command);
    let status = command.status().with_context(|| format!("could not start `{words}`"))?;
    ensure!(status.success(), "`{words}` ended with {status}");
    Ok(())
}

/// Runs the command and keeps what it prints on stdout.
pub(crate) fn capture(command: &mut Command) -> Result<Vec<u8>> {
    let words = words(command);
    let output = command.output().with_context(|| format!("could not start `{words}`"))?;
    let told = String::from_utf8_lossy(&output.stderr);
    ensure!(output.status.success(), "`{words}` ended with {}\n{told}", output.status);
    Ok(output.stdout)
}

/// What `cargo metadata` says of the workspace's own crates.
pub(crate) fn metadata() -> Result<Value> {
    let text = capture(&mut cargo(&["metadata", "--format-version", "1", "--no-deps"]))?;
    serde_json::from_slice(&text).context("`cargo metadata` did not print JSON")
}

/// Where cargo builds.
pub(crate) fn target() -> Result<PathBuf> {
    let metadata = metadata()?;
    let target = metadata["target_directory"].as_str().context("`cargo metadata` names no target directory")?;
    Ok(PathBuf::from(target))
}

/// The program as it is built beside its tests.
pub(crate) fn binary() -> Result<PathBuf> {
    Ok(target()?.join("tests").join(format!("snowhum{}", std::env::consts::EXE_SUFFIX)))
}

/// A command as one would type it.
pub(crate) fn words(command: &Command) -> String {
    let name = PathBuf::from(command.get_program());
    let name = name.file_name().map_or_else(String::new, |name| name.to_string_lossy().into_owned());
    let arguments = command.get_args().map(|argument| argument.to_string_lossy().into_owned());
    std::iter::once(name).chain(arguments).collect::<Vec<_>>().join(" ")
}
