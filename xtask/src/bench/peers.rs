//! The same sort of winter by other tools, in the same run on the same machine.

use crate::house;
use anyhow::{Context, Result, ensure};
use serde_json::{Value, json};
use std::path::{Path, PathBuf};
use std::process::Command;

/// How the figures are told.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Form {
    Words,
    Json,
}

/// The least ratios promised: the fastest NumPy form and numba over the full step.
const PROMISED: [(&str, f64); 2] = [("NumPy", 4.0), ("numba", 3.0)];
const OURS: &str = "widest vectors";
const LESS: &str = "The peers do less: heat in eight nodes, food and numbers alone, without air flow, water, places of food, \
                    brood or causes of death. Snowhum does its full coupled step.";

/// Times the step, the peers, and the step again; prints nanoseconds of processor per particle-hour and the ratios.
///
/// # Errors
/// When a tool is missing, the peers disagree with one another, or a promised ratio is not reached.
pub(crate) fn run(form: Form) -> Result<()> {
    let python = python()?;
    let before = super::step()?;
    let told =
        house::capture(Command::new(python).arg(scripts().join("peers.py")).env("PYTHONDONTWRITEBYTECODE", "1"))?;
    let peers: Value = serde_json::from_slice(&told).context("the peers did not print JSON")?;
    let after = super::step()?;
    let best = |name: &str| -> Result<f64> {
        let of = |value: &Value| value[name].as_f64().with_context(|| format!("the bench says nothing of {name}"));
        Ok(of(&before)?.min(of(&after)?))
    };
    let ours = best(OURS)?;
    let narrower = best("256-bit vectors")?;
    let measured = peers["nanoseconds"].as_object().context("the peers name no figures")?;
    let figures: Vec<(&str, f64)> =
        measured.iter().filter_map(|(name, ns)| Some((name.as_str(), ns.as_f64()?))).collect();
    match form {
        Form::Json => println!(
            "{}",
            json!({ "snowhum": { "widest vectors": ours, "256-bit vectors": narrower }, "peers": measured, "note": LESS })
        ),
        Form::Words => table(ours, narrower, &figures),
    }
    for (tool, least) in PROMISED {
        let fastest =
            figures.iter().filter(|(name, _)| name.starts_with(tool)).map(|(_, ns)| *ns).fold(f64::INFINITY, f64::min);
        let ratio = fastest / ours;
        ensure!(ratio >= least, "{tool} at its fastest is only {ratio:.1} times slower; at least {least} is promised");
    }
    Ok(())
}

fn table(ours: f64, narrower: f64, peers: &[(&str, f64)]) {
    println!("nanoseconds of processor per particle-hour, one thread, best of several");
    println!("  {ours:>7.1}  Snowhum, full step, widest vectors");
    println!("  {narrower:>7.1}  Snowhum, full step, 256-bit vectors");
    for (name, nanoseconds) in peers {
        println!("  {nanoseconds:>7.1}  {name}: {:.1} times Snowhum's", nanoseconds / ours);
    }
    println!("{LESS}");
}

fn scripts() -> PathBuf {
    house::root().join("xtask/peers")
}

/// A Python of its own under the target folder, with the peers' packages.
fn python() -> Result<PathBuf> {
    let place = house::target()?.join("peers");
    let python = place.join("bin/python");
    if !has_packages(&python) {
        house::pass(Command::new("python3").args(["-m", "venv"]).arg(&place))
            .context("the peers need Python 3 with venv")?;
        house::pass(Command::new(&python).args(["-m", "pip", "install", "--quiet", "numpy", "numba"]))
            .context("the peers need NumPy and numba")?;
    }
    Ok(python)
}

fn has_packages(python: &Path) -> bool {
    let probe = Command::new(python).args(["-c", "import numpy, numba"]).output();
    probe.is_ok_and(|output| output.status.success())
}
