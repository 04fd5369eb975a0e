//! Whether what the demo is told holds still: twenty seeds, every colony, nine days of its winter.

use crate::house;
use anyhow::{Context, Result, ensure};
use serde_json::Value;
use std::collections::BTreeMap;
use std::process::Command;

const SEEDS: u32 = 20;
/// Seeds that must say the same.
const SAME: usize = 19;
const DAYS: [&str; 9] = [
    "2025-10-05",
    "2025-10-25",
    "2025-11-15",
    "2025-12-20",
    "2026-01-15",
    "2026-02-07",
    "2026-03-10",
    "2026-04-05",
    "2026-05-10",
];

/// What a seed says of a colony: its word, what is first, and whether it stands near a line.
#[derive(Default)]
struct Said {
    words: BTreeMap<String, usize>,
    near: BTreeMap<String, usize>,
}

/// Asks the binary with each seed on each day and prints every colony that is not told alike. The binary must be built.
///
/// # Errors
/// When it cannot be asked, or a colony that stands near no line is told otherwise by more seeds than one.
pub(crate) fn run() -> Result<()> {
    let (mut held, mut near, mut lost) = (0, 0, Vec::new());
    for day in DAYS {
        for (name, said) in on(day)? {
            let most = said.words.values().copied().max().unwrap_or_default();
            if most >= SAME {
                held += 1;
                continue;
            }
            println!("{day} {name}: {:?}; near {:?}", said.words, said.near);
            if said.near.is_empty() { lost.push(format!("{name} on {day}")) } else { near += 1 }
        }
    }
    println!(
        "{held} told alike by {SAME} of {SEEDS} seeds, {near} within their error of a line, {} neither",
        lost.len()
    );
    ensure!(lost.is_empty(), "not held still: {}", lost.join(", "));
    Ok(())
}

fn on(day: &str) -> Result<BTreeMap<String, Said>> {
    let mut colonies: BTreeMap<String, Said> = BTreeMap::new();
    for seed in 1..=SEEDS {
        let answer = ask(day, seed)?;
        for colony in answer["first"]["colonies"].as_array().context("no colonies are told")? {
            let said = colonies.entry(text(&colony["name"])).or_default();
            let verdict = &colony["verdict"];
            *said.words.entry(format!("{}: {}", text(&verdict["word"]), text(&verdict["first"]["do"]))).or_default() +=
                1;
            for line in colony["near"].as_array().into_iter().flatten() {
                *said.near.entry(text(line)).or_default() += 1;
            }
        }
    }
    Ok(colonies)
}

fn ask(day: &str, seed: u32) -> Result<Value> {
    let mut command = Command::new(house::binary()?);
    // The keeper's own records are out of reach there, so that the demo is asked about.
    let nowhere = std::env::temp_dir().join("snowhum-still");
    command.args(["now", "--json", "--as-of", day, "--seed", &seed.to_string()]);
    command.env("HOME", &nowhere).env("XDG_DATA_HOME", &nowhere);
    let told = house::capture(&mut command)?;
    serde_json::from_slice(&told).context("`now` did not print JSON")
}

fn text(value: &Value) -> String {
    value.as_str().unwrap_or("nothing").to_owned()
}
