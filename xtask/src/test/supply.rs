//! What stands below the program: licences, versions, where crates come from, known faults.

use crate::house;
use anyhow::{Context, Result, ensure};
use std::process::{Command, Output};

const RULES: &str = ".ci/deny.toml";
/// What cargo-deny says where the list of known faults cannot be had.
const UNREACHABLE: &str = "failed to fetch advisory database";

/// Checks what stands below the program, where cargo-deny is installed.
///
/// # Errors
/// When a rule of `.ci/deny.toml` is broken.
pub(super) fn check() -> Result<Option<String>> {
    if !deny(&["--version"]).is_ok_and(|output| output.status.success()) {
        return Ok(Some("SKIPPED, NOTHING WAS CHECKED: cargo install --locked cargo-deny".to_owned()));
    }
    let own = deny(&["check", "licenses", "bans", "sources"])?;
    ensure!(own.status.success(), "{RULES} is broken:\n{}", String::from_utf8_lossy(&own.stderr));
    let known = deny(&["check", "advisories"])?;
    Ok(Some(judged(known.status.success(), &String::from_utf8_lossy(&known.stderr))?.to_owned()))
}

/// A list that cannot be had fails nothing and is said; a fault in it fails.
fn judged(is_clean: bool, said: &str) -> Result<&'static str> {
    if is_clean {
        return Ok("ok");
    }
    ensure!(said.contains(UNREACHABLE), "a crate has a known fault:\n{said}");
    Ok("ok, but KNOWN FAULTS WERE NOT LOOKED UP: their list cannot be reached")
}

fn deny(arguments: &[&str]) -> Result<Output> {
    let mut command = Command::new("cargo-deny");
    command.current_dir(house::root()).arg("--config").arg(RULES).args(arguments);
    command.output().context("could not start cargo-deny")
}

#[cfg(test)]
mod tests {
    use super::{UNREACHABLE, judged};

    #[test]
    fn a_list_that_cannot_be_had_is_said_and_a_known_fault_fails() {
        assert_eq!(judged(true, "").unwrap(), "ok");
        assert!(judged(false, &format!("error: {UNREACHABLE} x")).unwrap().contains("NOT LOOKED UP"));
        assert!(judged(false, "error[vulnerability]: out of bounds").is_err());
    }
}
