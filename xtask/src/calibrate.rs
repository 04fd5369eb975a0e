//! Parameters that real winters set together, fitted afresh.

use crate::house;
use anyhow::Result;

/// Writes `data/winter_joint_draws.toml`, `data/real_winter_scores.toml` and the ranges in `data/winter_parameters.toml`.
///
/// # Errors
/// When the calibration cannot be built or run.
pub(crate) fn run() -> Result<()> {
    let data = house::root().join("data");
    house::pass(house::cargo(&["run", "--release", "--package", "snowhum-calibration", "--"]).arg(data))
}
