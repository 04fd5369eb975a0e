//! Truth: a yard file, else the records, else the demo, said loudly.

use std::path::Path;

use snowhum_apiary::{Apiary, Colony, Doubt, Faults, PastWinter};
use snowhum_say::{Message, shared_terminal as shared, store};

use crate::args::Common;
use crate::room_record::with_records;
use crate::text::voice::in_words;
use crate::{exit, keep, progress, text};

/// Largest yard file read, so that a wrong path cannot fill memory.
const LARGEST: u64 = 16 * 1024 * 1024;

/// The yard of a file, of the records, or the demo.
pub(crate) fn apiary(file: Option<&Path>, common: &Common) -> anyhow::Result<Apiary> {
    if let Some(path) = file {
        return yard_file(path);
    }
    if common.store.is_some() {
        return Ok(keep::yard(common.store.as_deref())?.1);
    }
    let kept = keep::usual_place().filter(|path| path.exists());
    if let Some(kept) = kept.map(|path| keep::first_yard(&path)).transpose()?.flatten() {
        progress::note(shared::of_records(&kept.name));
        return Ok(kept);
    }
    progress::note(shared::demo());
    demo()
}

/// The yard of a file, with the winters before it.
pub(crate) fn yard_file(path: &Path) -> anyhow::Result<Apiary> {
    with_history(path, yard_alone(path)?)
}

/// The yard of a file alone.
fn yard_alone(path: &Path) -> anyhow::Result<Apiary> {
    let bytes = read(path)?;
    let read = snowhum_apiary::read_bytes(&bytes, &path.display().to_string());
    let (apiary, advisories) = read.map_err(|faults| {
        told(faults).map_or_else(|error| error, |faults| exit::input(faults.said(text::voice::tongue())))
    })?;
    of_today(path, &apiary)?;
    let apiary = with_records(path, apiary)?;
    if !advisories.is_empty() {
        let granted = in_words(&shared::granted(advisories.len()));
        progress::note(format!("{granted}\n  snowhum check {}", path.display()));
    }
    Ok(apiary)
}

/// The yard with the winters before it, out of the files it names.
fn with_history(path: &Path, mut apiary: Apiary) -> anyhow::Result<Apiary> {
    let Some(name) = apiary.last_winter.take() else { return Ok(apiary) };
    let before = path.parent().unwrap_or(Path::new("")).join(&name);
    let wrong = |why: Message| exit::refused(shared::last_winter(path.display().to_string(), &name, why));
    let last = yard_alone(&before).map_err(|error| wrong(exit::told(&error)))?;
    if last.id != apiary.id || last.as_of >= apiary.as_of {
        return Err(wrong(shared::other_yard()));
    }
    // Each file is of an earlier year than the one before it, so that this ends.
    let last = with_history(&before, last)?;
    let over = PastWinter { as_of: last.as_of, hives: last.hives, colonies: last.colonies, notes: last.notes };
    apiary.past = last.past.into_iter().chain([over]).collect();
    Ok(apiary)
}

/// Refuses visits that are still to come, and says which lie before the count; an invented yard has a day of its own.
fn of_today(path: &Path, apiary: &Apiary) -> anyhow::Result<()> {
    if apiary.invented {
        return Ok(());
    }
    let mut early = None;
    for note in &apiary.notes {
        match apiary.doubts(note, jiff::Timestamp::now()).first() {
            Some(ahead @ Doubt::Ahead { .. }) => {
                return Err(exit::refused(shared::visit(path.display().to_string(), ahead.message())));
            }
            Some(Doubt::BeforeCount { on, .. }) => early = early.or(Some(*on)),
            _ => {}
        }
    }
    if let Some(on) = early {
        progress::note(shared::early_visit(apiary.as_of.to_string(), on.to_string()));
    }
    Ok(())
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
    let shown = || path.display().to_string();
    let unread = |error: std::io::Error| unreadable(path, &error);
    let size = std::fs::metadata(path).map_err(unread)?;
    if size.is_dir() {
        return Err(exit::refused(shared::is_folder(shown())));
    }
    if size.len() > LARGEST {
        return Err(exit::refused(shared::too_large(shown())));
    }
    std::fs::read(path).map_err(unread)
}

/// A file that is not there or cannot be read.
pub(crate) fn unreadable(file: &Path, error: &std::io::Error) -> anyhow::Error {
    let shown = file.display().to_string();
    exit::refused(match error.kind() {
        std::io::ErrorKind::NotFound => store::fault(shown, store::missing()),
        _ => shared::unreadable(shown, error.to_string()),
    })
}

/// Names offered where one is not known.
const NEAREST: usize = 3;

/// Place of a colony by name, or what names there are.
pub(crate) fn place_of(apiary: &Apiary, name: &str) -> anyhow::Result<usize> {
    let wanted = name.trim().to_lowercase();
    let same = |colony: &Colony| colony.name.to_lowercase() == wanted;
    apiary.colonies.iter().position(same).ok_or_else(|| {
        if Path::new(name).is_file() {
            return exit::refused(shared::is_file(name));
        }
        let names: Vec<&str> = apiary.colonies.iter().map(|colony| colony.name.as_str()).collect();
        let near = snowhum_apiary::nearest_names(&wanted, &names, NEAREST).into_iter().map(Message::from).collect();
        let which = if names.len() > NEAREST { "nearest" } else { "all" };
        exit::refused(shared::no_colony(name, near, which, &apiary.name))
    })
}
