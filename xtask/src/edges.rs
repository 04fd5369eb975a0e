//! Linear losses of a hive's edges, computed into `data/edge_losses.toml`.

mod build_up;
mod junction;
mod table;

use crate::house;
use anyhow::{Context, Result};

/// Computes the table afresh and writes it.
///
/// # Errors
/// When the solver does not settle or the file cannot be written.
pub(crate) fn run() -> Result<()> {
    let path = house::root().join(table::PLACE);
    let rows = table::compute()?;
    std::fs::write(&path, table::print(&rows)).with_context(|| format!("could not write {}", table::PLACE))?;
    println!("{}: {} edges", table::PLACE, rows.len());
    Ok(())
}
