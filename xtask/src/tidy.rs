//! The rules of the house that no compiler checks.

mod circles;
mod decisions;
mod figures;
mod files;
mod finding;
mod functions;
mod messages;
mod order;
mod same;
mod scrub;
mod unwraps;
mod words;

use crate::house;
use anyhow::{Result, ensure};
use files::File;
use finding::{Finding, Weight};

/// Longest file, lines.
const LONGEST_FILE: usize = 500;

/// Checks the whole house and prints what it finds.
///
/// # Errors
/// When there is a fault; warnings alone pass.
pub(crate) fn run() -> Result<()> {
    let files = files::of(&house::root())?;
    ensure!(files.iter().any(|file| file.place == "Cargo.toml"), "no files found at {}", house::root().display());
    let mut findings = order::check(&house::metadata()?);
    findings.extend(decisions::check(&files));
    findings.extend(circles::check(&files));
    findings.extend(figures::of_house(&files));
    findings.extend(messages::of_house(&files));
    for file in &files {
        findings.extend(check(file));
    }
    findings.iter().for_each(|finding| println!("{finding}"));
    let faults = findings.iter().filter(|finding| finding.weight == Weight::Fault).count();
    println!("tidy: {} files, {faults} faults, {} warnings", files.len(), findings.len() - faults);
    ensure!(faults == 0, "the house is not tidy");
    Ok(())
}

fn check(file: &File) -> Vec<Finding> {
    let mut findings = words::check(file);
    findings.extend(figures::check(file));
    findings.extend(too_long(file));
    if file.is_rust() {
        findings.extend(functions::check(file));
        findings.extend(unwraps::check(file));
        findings.extend(same::check(file));
    }
    findings
}

fn too_long(file: &File) -> Option<Finding> {
    let lines = file.text.lines().count();
    let is_source = [".rs", ".py", ".js", ".css"].iter().any(|ending| file.place.ends_with(ending));
    (is_source && lines > LONGEST_FILE)
        .then(|| Finding::fault(&file.place, format!("{lines} lines; a file has at most {LONGEST_FILE}")))
}

#[cfg(test)]
mod tests {
    use super::{File, LONGEST_FILE, too_long};

    #[test]
    fn a_file_may_have_as_many_lines_as_the_rule_says_and_no_more() {
        let file = |lines: usize| File::new("crates/x/src/lib.rs", "//\n".repeat(lines));
        assert_eq!(too_long(&file(LONGEST_FILE)), None);
        assert!(too_long(&file(LONGEST_FILE + 1)).is_some());
        let table = File::new("data/table.csv", "1\n".repeat(LONGEST_FILE + 1));
        assert_eq!(too_long(&table), None);
    }
}
