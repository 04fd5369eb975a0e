//! The pages in a real browser.

use crate::house::{self, TESTED};
use anyhow::{Context, Result};
use std::path::PathBuf;
use std::process::Command;

/// The checker of accessibility, of one version so that a run is the same every day.
const CHECKER: &str = "axe-core@4.14.1";

/// Fetches the checker into the target folder, where it is not there already.
///
/// # Errors
/// When npm cannot reach its registry.
pub(super) fn fetch_checker() -> Result<Option<String>> {
    let folder = target()?.join("browser");
    let package = folder.join("node_modules/axe-core/package.json");
    let version = CHECKER.rsplit('@').next().unwrap_or_default();
    if std::fs::read_to_string(package).is_ok_and(|text| text.contains(&format!("\"version\": \"{version}\""))) {
        return Ok(None);
    }
    std::fs::create_dir_all(&folder)?;
    let quietly = ["install", "--no-save", "--no-audit", "--no-fund", "--ignore-scripts", "--prefix"];
    house::pass(Command::new("npm").args(quietly).arg(&folder).arg(CHECKER)).map(|()| None)
}

/// Takes the guide's pictures.
pub(super) fn guide() -> Result<()> {
    let folder = house::root().join("docs/user-guide");
    let test = ["--test", "browser", "every_page_is_in_the_guide"];
    house::pass(house::cargo(&["test"]).args(TESTED).args(test).env("SNOWHUM_GUIDE", folder))
}

fn target() -> Result<PathBuf> {
    let metadata = house::metadata()?;
    metadata["target_directory"].as_str().map(PathBuf::from).context("`cargo metadata` names no target directory")
}
