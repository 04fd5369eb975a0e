//! The built binary, run as a keeper would.

use crate::house;
use anyhow::{Context, Result, ensure};
use std::path::PathBuf;
use std::process::Command;

/// Runs the demo, and the same plan on one and on two threads, which must come out alike to the byte.
///
/// # Errors
/// Names the command that failed.
pub(crate) fn run() -> Result<Option<String>> {
    let binary = house::binary()?;
    let help = house::capture(Command::new(&binary).arg("--help"))?;
    if !String::from_utf8_lossy(&help).contains("demo") {
        return Ok(Some("skipped: the binary has no demo".to_owned()));
    }
    let demo = told(&binary, &["demo", "--no-serve"])?;
    ensure!(!demo.trim_ascii().is_empty(), "`snowhum demo --no-serve` printed nothing");
    let one = told(&binary, &["plan", "--json", "--threads", "1"])?;
    let two = told(&binary, &["plan", "--json", "--threads", "2"])?;
    let plan: serde_json::Value = serde_json::from_slice(&one).context("`snowhum plan --json` is not JSON")?;
    ensure!(
        plan["colonies"].as_array().is_some_and(|colonies| !colonies.is_empty()),
        "`snowhum plan --json` names no colony"
    );
    ensure!(one == two, "`snowhum plan --json` differs between one and two threads");
    Ok(Some(format!("ok: a plan of {} bytes, the same on 1 and 2 threads", one.len())))
}

/// Runs the binary with no store of the keeper's own in reach.
fn told(binary: &PathBuf, arguments: &[&str]) -> Result<Vec<u8>> {
    let empty = std::env::temp_dir().join(format!("snowhum-smoke-{}", std::process::id()));
    std::fs::create_dir_all(&empty)?;
    let output = house::capture(
        Command::new(binary).args(arguments).current_dir(&empty).env("HOME", &empty).env("XDG_DATA_HOME", &empty),
    );
    std::fs::remove_dir_all(&empty)?;
    output
}
