//! Speed of the winter step: by width of vectors, beside peers, by size, and in instructions.

pub(crate) mod counts;
mod peers;
mod precision;
mod scaling;
mod still;

use crate::house;
use anyhow::{Context, Result, bail};
use serde_json::Value;

const PACKAGE: &str = "snowhum-winter";
const REPLAY: &str = "snowhum-watch";

/// Runs what `arguments` ask for; without any, the step and the replay.
///
/// # Errors
/// When there is no such bench or it fails.
pub(crate) fn run(arguments: &[&str]) -> Result<()> {
    match arguments {
        [] => usual(),
        ["--peers"] => peers::run(peers::Form::Words),
        ["--peers", "--json"] => peers::run(peers::Form::Json),
        ["--counts"] => counts::print(),
        ["--counts", "--store"] => counts::store(),
        ["--scaling"] => scaling::run(),
        ["--still"] => still::run(),
        ["--precision", before, after, seeds @ ..] => {
            precision::run(before, after, seeds.first().map_or(Ok(32), |seeds| seeds.parse())?)
        }
        unknown => {
            bail!(
                "no such bench: {} (--peers [--json], --counts [--store], --precision BEFORE AFTER [SEEDS], --scaling, --still)",
                unknown.join(" ")
            )
        }
    }
}

fn usual() -> Result<()> {
    house::pass(house::cargo(&["bench", "--package", PACKAGE, "--bench", "step"]).env("RAYON_NUM_THREADS", "1"))?;
    house::pass(&mut house::cargo(&["bench", "--package", REPLAY, "--bench", "*"]))
}

/// Nanoseconds of processor per particle-hour of the full step on one thread, by the bench's names.
fn step() -> Result<Value> {
    let arguments = ["bench", "--quiet", "--package", PACKAGE, "--bench", "step", "--", "--json"];
    let told = house::capture(house::cargo(&arguments).env("RAYON_NUM_THREADS", "1"))?;
    serde_json::from_slice(&told).context("the step's bench did not print JSON")
}
