//! Rows of one store into a fresh one: how a backup is made and how one is taken in. Nothing but rows crosses.

use crate::connect;
use crate::fault::Wrong;
use crate::files;
use crate::hashes::{self, Sum};
use crate::migrations;
use crate::rows::{Cells, TABLES, Table, opens_the_gate};
use snowhum_say::store_found as say;
use sqlx::Connection;
use sqlx::sqlite::SqliteConnection;
use std::path::Path;

/// Whether what opens this machine's gate comes along: the pass phrase, sessions, links.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Access {
    /// It stays behind.
    Left,
    /// It comes along.
    Taken,
}

/// Copies the rows of a store of a form into a fresh file, brought to the newest form; gives how many rows were left
/// behind. A file of that name left over by an end halfway is thrown away.
pub(crate) async fn into_fresh(
    from: &mut SqliteConnection,
    form: i64,
    new: &Path,
    access: Access,
) -> Result<usize, Wrong> {
    let mut fresh = connect::fresh(new).await?;
    let copied = async {
        let mut writing = fresh.begin_with(migrations::BEGIN_WRITING).await?;
        migrations::make(&mut writing, form).await?;
        let mut left = 0;
        for table in TABLES {
            left += copy(table, from, form, &mut writing, access).await?;
        }
        writing.commit().await?;
        migrations::apply_to(&mut fresh).await?;
        Ok(left)
    };
    let copied: Result<usize, Wrong> = copied.await;
    fresh.close().await?;
    let left = copied?;
    files::settle(new)?;
    Ok(left)
}

/// Copies a table as it is, with the hashes its rows were kept with.
async fn copy(
    table: Table,
    from: &mut SqliteConnection,
    form: i64,
    writing: &mut SqliteConnection,
    access: Access,
) -> Result<usize, Wrong> {
    let stays = |row: &Cells| access == Access::Left && opens_the_gate(table, row);
    let (left, rows): (Vec<_>, Vec<_>) = table.read(form, from).await?.into_iter().partition(stays);
    for row in &rows {
        table.add(form, writing, row).await.map_err(|wrong| misfit(table, row, wrong))?;
    }
    if form >= hashes::SINCE {
        let mut sum = Sum::read(table, from).await?;
        left.iter().for_each(|row| sum.take(hashes::kept(row).1));
        sum.write(table, writing).await?;
    }
    Ok(left.len())
}

/// A row that no store takes is a fault of where it came from.
pub(crate) fn misfit(table: Table, row: &Cells, wrong: Wrong) -> Wrong {
    match wrong {
        Wrong::Refused { what } => Wrong::damaged(say::not_kept_row(table.called(row), what)),
        other => other,
    }
}
