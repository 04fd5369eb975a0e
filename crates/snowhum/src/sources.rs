//! Truth: a yard file, else the records, else the demo, said loudly.

use std::path::Path;

use snowhum_apiary::{Apiary, Colony, Faults};

use crate::args::Common;
use crate::{exit, keep, progress, text};

/// Largest yard file read, so that a wrong path cannot fill memory.
const LARGEST: u64 = 16 * 1024 * 1024;

/// The yard of a file, of the records, or the demo.
pub(crate) fn apiary(file: Option<&Path>, common: &Common) -> anyhow::Result<Apiary> {
    let apiary = found(file, common)?;
    text::voice::respect(&apiary);
    Ok(apiary)
}

fn found(file: Option<&Path>, common: &Common) -> anyhow::Result<Apiary> {
    if let Some(path) = file {
        return yard_file(path);
    }
    if common.store.is_some() {
        return Ok(keep::yard(common.store.as_deref())?.1);
    }
    let kept = keep::usual_place().filter(|path| path.exists());
    if let Some(kept) = kept.map(|path| keep::first_yard(&path)).transpose()?.flatten() {
        progress::note(&format!("This is {} of your records.", kept.name));
        return Ok(kept);
    }
    progress::note("This is the invented demo yard. For your own: snowhum new my-yard.toml");
    demo()
}

/// The yard of a file.
pub(crate) fn yard_file(path: &Path) -> anyhow::Result<Apiary> {
    let bytes = read(path)?;
    let read = snowhum_apiary::read_bytes(&bytes, &path.display().to_string());
    let (apiary, advisories) = read.map_err(|faults| told(faults).map_or_else(|error| error, exit::input))?;
    if !advisories.is_empty() {
        progress::note(&format!(
            "{} things were taken for granted; to see them:\n  snowhum check {}",
            advisories.len(),
            path.display()
        ));
    }
    Ok(apiary)
}

/// The faults of a file with all that is known of them.
pub(crate) fn told(faults: Faults) -> anyhow::Result<Faults> {
    Ok(snowhum_advice::sealed::told(faults, &snowhum_winter::Parameters::shipped()?))
}

/// The invented demo yard.
pub(crate) fn demo() -> anyhow::Result<Apiary> {
    let read = snowhum_apiary::read(snowhum_apiary::demo_text(), "the demo yard");
    Ok(read.map_err(|faults| anyhow::anyhow!("the demo yard is broken: {faults}"))?.0)
}

/// A file's bytes, with a clear word when it cannot be read.
pub(crate) fn read(path: &Path) -> anyhow::Result<Vec<u8>> {
    let shown = path.display();
    let size = std::fs::metadata(path).map_err(|error| exit::input(format!("{shown}: cannot be read: {error}")))?;
    if size.is_dir() {
        return Err(exit::input(format!("{shown}: is a folder; give the file in it")));
    }
    if size.len() > LARGEST {
        return Err(exit::input(format!("{shown}: larger than 16 MB; is this the right file?")));
    }
    std::fs::read(path).map_err(|error| exit::input(format!("{shown}: cannot be read: {error}")))
}

/// Names offered where one is not known.
const NEAREST: usize = 3;

/// Place of a colony by name, or what names there are.
pub(crate) fn place_of(apiary: &Apiary, name: &str) -> anyhow::Result<usize> {
    let wanted = name.trim().to_lowercase();
    let same = |colony: &Colony| colony.name.to_lowercase() == wanted;
    apiary.colonies.iter().position(same).ok_or_else(|| {
        let names: Vec<&str> = apiary.colonies.iter().map(|colony| colony.name.as_str()).collect();
        let (near, more) = (snowhum_apiary::nearest_names(&wanted, &names, NEAREST), names.len() > NEAREST);
        let there_are = if more { "the nearest are" } else { "there are" };
        exit::input(format!("there is no colony \"{name}\" in {}; {there_are} {}", apiary.name, near.join(", ")))
    })
}
