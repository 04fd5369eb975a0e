//! The model against the outside world: every check computed afresh, written for readers.

use crate::house;
use anyhow::Result;

/// Writes `docs/VALIDATION.md`, `docs/PARAMETERS.md` and `docs/pictures`.
///
/// # Errors
/// When the suite cannot be built or the page not written.
pub(crate) fn run() -> Result<()> {
    let page = house::root().join("docs/VALIDATION.md");
    house::pass(house::cargo(&["run", "--release", "--package", "snowhum-validation", "--"]).arg(page))
}
