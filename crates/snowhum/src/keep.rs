//! Where the keeper's records lie, and how they are reached from a command that runs once.

use std::path::{Path, PathBuf};

use snowhum_advice::verdict::LastVerdict;
use snowhum_apiary::Apiary;
use snowhum_say::{shared_terminal as shared, store as say};
use snowhum_store::{Fault, Store, Wrong};
use snowhum_web::Chosen;

use crate::exit;

/// The store's usual file in the keeper's data folder; none where the machine has no such folder.
pub(crate) fn usual_place() -> Option<PathBuf> {
    let set = |name: &str| std::env::var_os(name).filter(|value| !value.is_empty()).map(PathBuf::from);
    let data = set("XDG_DATA_HOME").or_else(|| Some(set("HOME")?.join(".local").join("share")))?;
    Some(data.join("snowhum").join("records.db"))
}

/// The store asked for, else the usual one.
pub(crate) fn place(asked: Option<&Path>) -> anyhow::Result<PathBuf> {
    let usual = || usual_place().ok_or_else(|| exit::refused(shared::no_home()));
    asked.map_or_else(usual, |path| Ok(path.to_owned()))
}

/// Does something with a store.
pub(crate) fn with<T>(work: impl Future<Output = Result<T, Fault>>) -> anyhow::Result<T> {
    runtime()?.block_on(work).map_err(failure)
}

/// Brings something from a file into the records at a place.
pub(crate) fn bring<T>(
    path: &Path,
    file: &Path,
    work: impl AsyncFnOnce(&Store) -> Result<T, Fault>,
) -> anyhow::Result<T> {
    with_store(path, async |store| work(store).await.map_err(|fault| failure_of(file, fault)))
}

/// Does something with the store at a place, and closes it.
pub(crate) fn with_store<T>(path: &Path, work: impl AsyncFnOnce(&Store) -> anyhow::Result<T>) -> anyhow::Result<T> {
    runtime()?.block_on(async {
        let store = Store::open(path).await.map_err(failure)?;
        let done = work(&store).await;
        store.close().await;
        done
    })
}

fn runtime() -> anyhow::Result<tokio::runtime::Runtime> {
    tokio::runtime::Builder::new_current_thread().enable_time().build().map_err(exit::environment)
}

/// A store's fault with the exit code it deserves: what the keeper gave, or what the machine could not do.
pub(crate) fn failure(fault: Fault) -> anyhow::Error {
    if is_of_input(&fault.wrong) { exit::refused(fault.message()) } else { of_machine(fault) }
}

/// A store's fault as one of the machine.
pub(crate) fn of_machine(fault: Fault) -> anyhow::Error {
    exit::failed(fault.message())
}

/// The same for what a file brings into the records: a fault of the file is named by the file.
pub(crate) fn failure_of(file: &Path, fault: Fault) -> anyhow::Error {
    match fault.wrong {
        wrong @ (Wrong::Unreadable { .. } | Wrong::Unfit { .. } | Wrong::Newer { .. }) => {
            exit::refused(say::fault(file.display().to_string(), wrong.message()))
        }
        _ => failure(fault),
    }
}

fn is_of_input(wrong: &Wrong) -> bool {
    use Wrong::{
        Foreign, InAnotherYard, NoSuchNote, NotADatabase, NotEmpty, NotInOrder, OtherProgram, Unfit, Unreadable,
    };
    matches!(
        wrong,
        Foreign { .. }
            | InAnotherYard { .. }
            | NoSuchNote { .. }
            | NotADatabase
            | NotEmpty
            | NotInOrder { .. }
            | OtherProgram
            | Unfit { .. }
            | Unreadable { .. }
    )
}

/// A store that is there already, with the yard it holds.
///
/// # Errors
/// When there is none, or it holds no yard, with what to do.
pub(crate) fn yard(asked: Option<&Path>) -> anyhow::Result<(PathBuf, Apiary)> {
    let path = place(asked)?;
    let found = if path.exists() { first_yard(&path)? } else { None };
    let apiary = found.ok_or_else(|| exit::refused(shared::no_records(path.display().to_string())))?;
    Ok((path, apiary))
}

/// What was decided of each colony of a yard when its pages last told it; nothing where no records are kept of it.
pub(crate) fn last_told(apiary: &Apiary, asked: Option<&Path>) -> Vec<LastVerdict> {
    let path = asked.map(Path::to_owned).or_else(usual_place).filter(|path| path.exists() && !apiary.invented);
    let told = |path: PathBuf| {
        with(async {
            let store = Store::open(&path).await?;
            let last = snowhum_web::last_told(&store, apiary.id).await?;
            store.close().await;
            Ok(last)
        })
    };
    path.map(told).and_then(Result::ok).unwrap_or_default()
}

/// The first yard of a store, with its notes; none if it holds none.
pub(crate) fn first_yard(path: &Path) -> anyhow::Result<Option<Apiary>> {
    with(async {
        let store = Store::open(path).await?;
        let found = match store.yards().await?.first() {
            Some(first) => store.yard(first.id).await?,
            None => None,
        };
        store.close().await;
        Ok(found)
    })
}

/// What was chosen for the pages of the records; nothing where there are none, or they cannot be read: the command itself
/// says so then.
pub(crate) fn chosen(asked: Option<&Path>) -> Chosen {
    let path = asked.map(Path::to_owned).or_else(usual_place).filter(|path| path.exists());
    let kept = path.map(|path| {
        with(async {
            let store = Store::open(&path).await?;
            let chosen = Chosen::of(&store).await;
            store.close().await;
            chosen
        })
    });
    kept.and_then(Result::ok).unwrap_or_default()
}
