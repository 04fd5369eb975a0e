//! Speed of the winter step, beside what the same sum costs in other tools.

use crate::house;
use anyhow::{Result, bail};
use serde_json::Value;

/// A peer measured once: nanoseconds per particle-hour.
struct Yardstick {
    peer: &'static str,
    nanoseconds: u32,
}

/// 1,000 particles over 4,344 h of an eight-node hive network with stores, numbers of bees and a resampling every 72 h,
/// best of a few runs on two virtual cores that had other work, so upper bounds. Measured for this project.
const YARDSTICKS: [Yardstick; 3] = [
    Yardstick { peer: "numba, cached inverse", nanoseconds: 116 },
    Yardstick { peer: "NumPy, vectorised, cached inverse", nanoseconds: 165 },
    Yardstick { peer: "NumPy, a fresh solve each hour", nanoseconds: 5_930 },
];
const PACKAGE: &str = "snowhum-winter";
const REPLAY: &str = "snowhum-watch";

/// Runs the bench and prints the yardsticks under it.
///
/// # Errors
/// When there is no bench or it fails.
pub(crate) fn run() -> Result<()> {
    if !has_bench(&house::metadata()?) {
        bail!("{PACKAGE} has no bench to run");
    }
    // One thread, as the yardsticks had.
    house::pass(house::cargo(&["bench", "--package", PACKAGE, "--bench", "*"]).env("RAYON_NUM_THREADS", "1"))?;
    println!("\nYardsticks, nanoseconds per particle-hour on one thread, measured on another day (upper bounds):");
    for Yardstick { peer, nanoseconds } in YARDSTICKS {
        println!("  {nanoseconds:>6}  {peer}");
    }
    println!("They do a smaller work: heat, stores and numbers alone, without water, air flow or causes of death.\n");
    house::pass(&mut house::cargo(&["bench", "--package", REPLAY, "--bench", "*"]))?;
    Ok(())
}

fn has_bench(metadata: &Value) -> bool {
    let is_bench = |target: &Value| target["kind"].as_array().is_some_and(|kinds| kinds.iter().any(|k| k == "bench"));
    let packages = metadata["packages"].as_array().into_iter().flatten();
    packages
        .filter(|package| package["name"] == PACKAGE)
        .flat_map(|package| package["targets"].as_array().into_iter().flatten())
        .any(is_bench)
}

#[cfg(test)]
mod tests {
    use super::has_bench;
    use serde_json::json;

    #[test]
    fn only_a_bench_target_counts_as_a_bench() {
        let with = |kind: &str| json!({"packages": [{"name": "snowhum-winter", "targets": [{"kind": [kind]}]}]});
        assert!(has_bench(&with("bench")));
        assert!(!has_bench(&with("lib")));
    }
}
