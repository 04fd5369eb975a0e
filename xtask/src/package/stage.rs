//! What packages hold, laid out once: the program, its manual, completions, notices, the list of its parts.

use super::release::Release;
use super::{bill, license};
use crate::house;
use anyhow::{Context, Result};
use std::path::Path;
use std::process::Command;

/// Lays out what is the same for every machine, by asking the program of this one.
pub(super) fn common(program: &Path, release: &Release) -> Result<()> {
    let stage = release.stage();
    std::fs::create_dir_all(&stage)?;
    house::pass(Command::new(program).arg("generate").arg(&stage))?;
    std::fs::write(stage.join("snowhum.cdx.json"), bill::of(release)?)?;
    std::fs::write(stage.join("THIRD-PARTY.txt"), license::third_parties(release)?)?;
    std::fs::write(stage.join("copyright"), license::own()?)?;
    Ok(())
}

/// Lays out the program for one machine.
pub(super) fn program(program: &Path, release: &Release) -> Result<()> {
    let folder = release.stage().join("bin");
    std::fs::create_dir_all(&folder)?;
    std::fs::copy(program, folder.join("snowhum")).with_context(|| format!("no {}", program.display()))?;
    Ok(())
}
