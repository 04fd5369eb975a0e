//! Time and memory by size, and what that means for a night's work: a table and a picture in `docs/PERFORMANCE.md`.

mod picture;

use crate::house;
use anyhow::{Context, Result};
use serde_json::Value;

const PAGE: &str = "docs/PERFORMANCE.md";
const PICTURE: &str = "docs/performance/scaling.svg";
const BEGIN: &str = "<!-- by size: written by cargo xtask bench --scaling -->\n";
const END: &str = "<!-- end of what is written by cargo xtask bench --scaling -->\n";
const HOURS: f64 = 4_344.0;
/// The size the reckoning stands on.
const RECKONED: (usize, usize, usize) = (100, 1_000, 2);
/// Hours in a night's work.
const NIGHT_HOURS: f64 = 10.0;

/// One run.
struct Size {
    colonies: usize,
    members: usize,
    threads: usize,
    kept: &'static str,
}

const fn size(colonies: usize, members: usize, threads: usize, kept: &'static str) -> Size {
    Size { colonies, members, threads, kept }
}

const SIZES: [Size; 11] = [
    size(1, 100, 1, "end"),
    size(1, 1_000, 1, "end"),
    size(1, 10_000, 1, "end"),
    size(10, 1_000, 1, "days"),
    size(20, 1_000, 1, "end"),
    size(100, 1_000, 1, "end"),
    size(1, 1_000, 2, "end"),
    size(20, 1_000, 2, "end"),
    size(100, 1_000, 2, "end"),
    size(1_000, 100, 2, "end"),
    size(1_000, 1_000, 2, "end"),
];

/// What a run took.
pub(super) struct Measured {
    pub(super) particles: usize,
    pub(super) threads: usize,
    pub(super) seconds: f64,
}

/// Runs all sizes, each in a process of its own, and writes the page.
///
/// # Errors
/// When the bench fails or the page has no place for the table.
pub(crate) fn run() -> Result<()> {
    let mut rows = String::from(
        "| colonies | particles each | threads | kept | seconds | processor, s | ns per particle-hour | memory, MB |\n\
         |---:|---:|---:|---|---:|---:|---:|---:|\n",
    );
    let (mut measured, mut reckoning) = (Vec::new(), String::new());
    for of in &SIZES {
        let told = once(of)?;
        let figure = |name: &str| told[name].as_f64().with_context(|| format!("the bench says nothing of {name}"));
        let (seconds, processor, memory) = (figure("seconds")?, figure("processor")?, figure("kilobytes")? / 1_000.0);
        let particles = of.colonies * of.members;
        let nanoseconds = processor * 1e9 / (particles as f64 * HOURS);
        let row = format!(
            "| {} | {} | {} | {} | {seconds:.2} | {processor:.2} | {nanoseconds:.1} | {memory:.0} |\n",
            of.colonies, of.members, of.threads, of.kept
        );
        print!("{row}");
        rows += &row;
        measured.push(Measured { particles, threads: of.threads, seconds });
        if (of.colonies, of.members, of.threads) == RECKONED {
            reckoning = reckon(processor / of.colonies as f64);
        }
    }
    std::fs::write(house::root().join(PICTURE), picture::draw(&measured))?;
    write(&format!("{rows}\n{reckoning}"))
}

fn once(of: &Size) -> Result<Value> {
    let words = [of.colonies.to_string(), of.members.to_string(), of.threads.to_string(), of.kept.to_owned()];
    let mut arguments = vec!["bench", "--quiet", "--package", super::PACKAGE, "--bench", "scaling", "--"];
    arguments.extend(words.iter().map(String::as_str));
    serde_json::from_slice(&house::capture(&mut house::cargo(&arguments))?).context("the bench did not print JSON")
}

/// What so many processor seconds a colony's winter mean for a night.
fn reckon(seconds_a_colony: f64) -> String {
    let line = |colonies: f64| {
        let hours = colonies * seconds_a_colony / 3_600.0;
        let cores = (hours / NIGHT_HOURS).ceil();
        format!("| {colonies:.0} | {hours:.1} | {cores:.0} |\n")
    };
    format!(
        "A night of {NIGHT_HOURS:.0} hours, at {seconds_a_colony:.3} s of processor for a colony's winter of 1,000 particles:\n\n\
         | colonies | core-hours | cores like these |\n|---:|---:|---:|\n{}{}",
        line(1e5),
        line(1e6)
    )
}

/// Puts the table in its place on the page.
fn write(table: &str) -> Result<()> {
    let path = house::root().join(PAGE);
    let text = std::fs::read_to_string(&path)?;
    let (before, rest) = text.split_once(BEGIN).with_context(|| format!("{PAGE} has no place for the table"))?;
    let (_, after) = rest.split_once(END).with_context(|| format!("{PAGE} does not say where the table ends"))?;
    std::fs::write(path, format!("{before}{BEGIN}\n{table}\n{END}{after}"))?;
    println!("written: {PAGE}, {PICTURE}");
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::reckon;

    #[test]
    fn a_nights_cores_are_the_core_hours_over_the_nights_hours() {
        let told = reckon(0.09);
        assert!(told.contains("| 100000 | 2.5 | 1 |") && told.contains("| 1000000 | 25.0 | 3 |"), "{told}");
    }
}
