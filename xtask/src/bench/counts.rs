//! Instructions of the binary that is tested, counted by callgrind: a gate that no busy machine can move.

mod callgrind;
mod served;

use crate::{house, needs};
use anyhow::{Context, Result, ensure};
use std::collections::BTreeMap;
use std::path::Path;
use std::process::Command;

const STORED: &str = "xtask/instruction-counts.toml";
/// How much more than stored is let through.
const TOLERANCE: f64 = 0.10;
/// The width that callgrind's machine offers; counts at another width are other counts.
const WIDTH: &str = "256-bit vectors";
const HEAD: &str = "\
# Instructions of the binary that is tested (profile `tests`) under callgrind, on one thread, with 256-bit vectors (callgrind knows none wider).
# Compared by `cargo xtask test`; renewed by `cargo xtask bench --counts --store`, with the reason in the commit.
";

/// What is counted: its name and the command, for a yard of one colony.
const COMMANDS: [(&str, &[&str]); 4] = [
    ("hive", &["hive", "One", "--apiary", "yard.toml", "--outside", "-20"]),
    ("plan", &["plan", "--apiary", "yard.toml", "--members", "32"]),
    ("plan_of_64", &["plan", "--apiary", "yard.toml", "--members", "64"]),
    ("replay", &["now", "--apiary", "yard.toml", "--as-of", "2026-02-07"]),
];
/// A block of 32 members more in a plan: the difference of two sizes, in which starting up falls out.
const BLOCK: &str = "block_of_members";

type Counts = BTreeMap<String, u64>;

/// Prints what is counted now beside what is stored.
///
/// # Errors
/// When the binary does not build, or valgrind cannot be had.
pub(crate) fn print() -> Result<()> {
    build()?;
    let (counted, stored) = (count()?, stored()?);
    for (name, instructions) in &counted {
        println!("{instructions:>16}  {name} (stored: {})", stored.get(name).map_or("none".to_owned(), u64::to_string));
    }
    Ok(())
}

/// Stores what is counted now.
///
/// # Errors
/// See [`print`].
pub(crate) fn store() -> Result<()> {
    build()?;
    let lines: String = count()?.iter().map(|(name, count)| format!("{name} = {count}\n")).collect();
    std::fs::write(house::root().join(STORED), format!("{HEAD}{lines}"))?;
    println!("stored in {STORED}");
    Ok(())
}

/// Fails where a count has risen by more than a tenth. The binary must be built.
///
/// # Errors
/// Names each count that rose.
pub(crate) fn gate() -> Result<Option<String>> {
    if let Err(missing) = needs::meet(needs::COUNTS) {
        return Ok(Some(format!("SKIPPED, NOTHING WAS COUNTED: {missing:#}")));
    }
    if !offers_width() {
        return Ok(Some(format!("SKIPPED, NOTHING WAS COUNTED: this machine has no {WIDTH}")));
    }
    let (counted, stored) = (count()?, stored()?);
    let risen = risen(&counted, &stored);
    ensure!(
        risen.is_empty(),
        "more instructions than stored in {STORED}: {}. If they are worth it: cargo xtask bench --counts --store",
        risen.join("; ")
    );
    Ok(Some(format!("ok: {} counts within a tenth of those stored", counted.len())))
}

fn risen(counted: &Counts, stored: &Counts) -> Vec<String> {
    let over = |(name, now): (&String, &u64)| match stored.get(name) {
        None => Some(format!("{name} is not stored")),
        Some(before) if *now as f64 > *before as f64 * (1.0 + TOLERANCE) => {
            Some(format!("{name} {:+.0} %", 100.0 * (*now as f64 / *before as f64 - 1.0)))
        }
        Some(_) => None,
    };
    counted.iter().filter_map(over).collect()
}

fn stored() -> Result<Counts> {
    let text = std::fs::read_to_string(house::root().join(STORED)).unwrap_or_default();
    toml::from_str(&text).with_context(|| format!("{STORED} is not a table of counts"))
}

fn build() -> Result<()> {
    needs::meet(needs::COUNTS)?;
    house::pass(&mut house::cargo(&[&["test"], &house::TESTED[..], &["--no-run", "--test", "snowhum"]].concat()))
}

/// Whether the processor has what callgrind passes on.
fn offers_width() -> bool {
    std::fs::read_to_string("/proc/cpuinfo").is_ok_and(|text| text.contains(" avx2") && text.contains(" fma"))
}

/// All counts, on three threads of our own: how busy the machine is changes none of them.
fn count() -> Result<Counts> {
    let binary = house::binary()?;
    let place = std::env::temp_dir().join(format!("snowhum-counts-{}", std::process::id()));
    std::fs::create_dir_all(&place)?;
    house::capture(at(&place, Command::new(&binary).args(["new", "yard.toml"])))?;
    let one =
        |(name, arguments): &(&str, &[&str])| Ok((name.to_string(), instructions(&binary, &place, name, arguments)?));
    let (first, last) = COMMANDS.split_at(COMMANDS.len() - 1);
    let counted: Result<Vec<(String, u64)>> = std::thread::scope(|scope| {
        let replay = scope.spawn(|| last.iter().map(one).collect::<Result<Vec<_>>>());
        let served = scope.spawn(|| served::count(&binary, &place));
        let mut counts = first.iter().map(one).collect::<Result<Vec<_>>>()?;
        for others in [replay, served] {
            counts.extend(others.join().ok().context("counting broke off")??);
        }
        Ok(counts)
    });
    std::fs::remove_dir_all(&place)?;
    let mut counts: Counts = counted?.into_iter().collect();
    let larger = counts.remove("plan_of_64").unwrap_or_default();
    counts.insert(BLOCK.to_owned(), larger.saturating_sub(counts.get("plan").copied().unwrap_or_default()));
    Ok(counts)
}

fn instructions(binary: &Path, place: &Path, name: &str, arguments: &[&str]) -> Result<u64> {
    let out = place.join(format!("{name}.callgrind"));
    let mut command = Command::new("valgrind");
    command.args(["--tool=callgrind", "--quiet"]).arg(format!("--callgrind-out-file={}", out.display()));
    house::capture(at(place, command.arg(binary).args(arguments).args(["--threads", "1", "--json"])))?;
    callgrind::total(&std::fs::read_to_string(&out)?).with_context(|| format!("callgrind counted nothing for {name}"))
}

/// The keeper's own records are out of reach there.
fn at<'a>(place: &Path, command: &'a mut Command) -> &'a mut Command {
    command.current_dir(place).env("HOME", place).env("XDG_DATA_HOME", place)
}

#[cfg(test)]
mod tests {
    use super::{Counts, risen};

    #[test]
    fn only_what_rose_by_more_than_a_tenth_or_is_unknown_is_named() {
        let counts = |pairs: &[(&str, u64)]| -> Counts { pairs.iter().map(|(n, c)| ((*n).to_owned(), *c)).collect() };
        let stored = counts(&[("a", 100), ("b", 100)]);
        assert!(risen(&counts(&[("a", 110), ("b", 20)]), &stored).is_empty());
        assert_eq!(risen(&counts(&[("a", 112), ("c", 1)]), &stored), ["a +12 %", "c is not stored"]);
    }
}
