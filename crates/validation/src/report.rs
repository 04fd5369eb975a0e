//! The page `docs/VALIDATION.md`.

use std::fmt::Write as _;

use snowhum_winter::Parameters;

use crate::check::Check;

/// The whole page.
#[must_use]
pub fn page(checks: &[Check], _parameters: &Parameters) -> String {
    let mut page = String::from("# How far to trust what Snowhum computes\n\n");
    for check in checks {
        let _ = writeln!(page, "{} {} {} {} {}", check.id, check.quantity, check.expected, check.computed, check.verdict);
    }
    page
}
