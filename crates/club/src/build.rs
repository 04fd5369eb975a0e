//! Which build this program is.

use crate::fault::Fault;
use sha2::{Digest, Sha256};
use std::fmt::Write;

/// Its version and the hash of its own file: parameters, climate and all that it answers with lie in it. Two machines share a
/// night when they run the same file.
///
/// # Errors
/// When the program cannot read itself.
pub fn build() -> Result<String, Fault> {
    let bytes = std::fs::read(std::env::current_exe()?)?;
    let mut build = format!("{}+", env!("CARGO_PKG_VERSION"));
    for byte in Sha256::digest(bytes) {
        // Writing to a text cannot fail.
        let _ = write!(build, "{byte:02x}");
    }
    Ok(build)
}
