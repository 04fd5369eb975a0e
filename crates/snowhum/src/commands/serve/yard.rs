//! Which yard is served, and where its records lie.

use jiff::Timestamp;
use snowhum_apiary::{Apiary, ApiaryId};
use snowhum_say::serve_terminal;
use snowhum_store::{Store, Wrong};
use std::path::{Path, PathBuf};

use crate::{keep, progress, sources};

/// The field that a yard of an earlier autumn than its records is refused by.
const COUNTED: &str = "count";

/// What the keeper asks to see.
#[derive(Debug, Clone, Copy)]
pub(super) enum Which<'a> {
    /// The yard of a file.
    File(&'a Path),
    /// The yard of the records; the invented one while they hold none.
    Kept,
    /// The invented yard.
    Demo,
}

/// A yard in its store.
pub(super) struct Found {
    pub(super) store: Store,
    pub(super) yard: ApiaryId,
    /// Where a yard begun in the browser is kept.
    pub(super) home: Option<PathBuf>,
    /// Whether the records were asked for and hold no yard yet.
    pub(super) is_first_run: bool,
}

/// Opens the records of the yard asked for.
pub(super) async fn find(which: Which<'_>, asked: Option<&Path>) -> anyhow::Result<Found> {
    let home = asked.map(Path::to_owned).or_else(keep::usual_place);
    match which {
        Which::File(file) => {
            let path = asked.map_or_else(|| beside(file), Path::to_owned);
            taken_in(open(Some(&path)).await?, &sources::yard_file(file)?, home).await
        }
        Which::Demo => taken_in(open(asked).await?, &sources::demo()?, home).await,
        Which::Kept => {
            if let Some(path) = home.as_deref().filter(|path| path.exists())
                && let Some((store, yard)) = kept(path).await?
            {
                return Ok(Found { store, yard, home, is_first_run: false });
            }
            let found = taken_in(open(asked).await?, &sources::demo()?, home).await?;
            Ok(Found { is_first_run: true, ..found })
        }
    }
}

/// The first yard of a store, if it holds one.
async fn kept(path: &Path) -> anyhow::Result<Option<(Store, ApiaryId)>> {
    let store = open(Some(path)).await?;
    let yards = store.yards().await.map_err(keep::of_machine)?;
    Ok(yards.first().map(|yard| yard.id).map(|yard| (store, yard)))
}

async fn taken_in(store: Store, apiary: &Apiary, home: Option<PathBuf>) -> anyhow::Result<Found> {
    match store.import_yard(apiary, Timestamp::now()).await {
        Ok(_) => {}
        // Its next autumn was begun in the pages: the file is of a winter that is over.
        Err(fault) if matches!(fault.wrong, Wrong::Unfit { field: COUNTED, .. }) => {
            progress::note(serve_terminal::records_served(fault.message()));
        }
        Err(fault) => return Err(keep::of_machine(fault)),
    }
    Ok(Found { store, yard: apiary.id, home, is_first_run: false })
}

/// The store in a file, or in memory where none is named.
async fn open(path: Option<&Path>) -> anyhow::Result<Store> {
    match path {
        Some(path) => Store::open(path).await.map_err(keep::of_machine),
        None => Store::in_memory().await.map_err(keep::of_machine),
    }
}

/// Where a yard file's notes are kept when no store is named: beside it, under its name.
pub(crate) fn beside(file: &Path) -> PathBuf {
    file.with_extension("snowhum.db")
}
