//! Bytes that nobody would write, at every way in, for so many minutes each or ten million tries.

use crate::house;
use anyhow::{Context, Result, bail, ensure};
use std::process::Command;

/// Each way in, as in `crates/fuzzed`.
const TARGETS: [&str; 10] =
    ["yard", "note", "epw", "isd_lite", "ghcn_daily", "station_csv", "notes_sheet", "export", "database", "forms"];

/// Those that open records. The thread behind an opened file ends a little after the file is closed: what it still holds
/// is no leak, and one that grows is found by the fuzzer's bound on memory.
const KEEP_RECORDS: [&str; 4] = ["notes_sheet", "export", "database", "forms"];

/// Tries after which a way in is left for the next, though its minutes are not over.
const MOST: u64 = 10_000_000;

/// Where what the fuzzer learns lies from run to run, beside the corpus that is kept.
const FOUND: &str = "target/found";

/// Runs the fuzzer at every way in, or at those named. What it finds lies in `fuzz/artifacts`.
///
/// # Errors
/// When cargo-fuzz is missing, the fuzzer does not build, or it finds something.
pub(crate) fn run(arguments: &[&str]) -> Result<()> {
    let (minutes, named) = match arguments {
        ["--minutes", minutes, named @ ..] => (minutes.parse::<u64>().context("--minutes: give whole minutes")?, named),
        _ => bail!("cargo xtask fuzz --minutes N [{}]", TARGETS.join("|")),
    };
    let present = Command::new("cargo-fuzz").arg("--version").output().is_ok_and(|output| output.status.success());
    ensure!(present, "missing: cargo-fuzz; cargo install --locked cargo-fuzz");
    let targets: Vec<&str> = if named.is_empty() { TARGETS.to_vec() } else { named.to_vec() };
    for target in targets {
        println!("== {target}");
        std::fs::create_dir_all(house::root().join("fuzz").join(FOUND).join(target))?;
        house::pass(&mut fuzzer(target, minutes))?;
    }
    Ok(())
}

fn fuzzer(target: &str, minutes: u64) -> Command {
    let mut command = house::cargo(&["fuzz", "run", target]);
    // The fuzzer's instruments are not stable; the compiler is the same.
    command.env("RUSTC_BOOTSTRAP", "1").current_dir(house::root().join("fuzz"));
    command.arg(format!("{FOUND}/{target}")).arg(format!("corpus/{target}"));
    command.arg("--").arg(format!("-max_total_time={}", 60 * minutes)).args(["-timeout=60", "-print_final_stats=1"]);
    command.arg(format!("-runs={MOST}"));
    if KEEP_RECORDS.contains(&target) {
        command.arg("-detect_leaks=0");
    }
    command
}

#[cfg(test)]
mod tests {
    use super::TARGETS;

    #[test]
    fn every_way_in_has_its_fuzz_target_and_its_corpus() {
        let fuzz = crate::house::root().join("fuzz");
        for target in TARGETS {
            assert!(fuzz.join("fuzz_targets").join(format!("{target}.rs")).exists(), "{target}");
            assert!(fuzz.join("corpus").join(target).read_dir().unwrap().count() > 0, "{target}");
        }
        let files = fuzz.join("fuzz_targets").read_dir().unwrap().count();
        assert_eq!(files, TARGETS.len());
    }
}
