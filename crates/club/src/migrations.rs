//! The forms a club's records have had, and the steps from one to the next.

use crate::fault::Fault;
use sqlx::postgres::PgConnection;

/// The steps, in order; a step once shipped is never edited.
const STEPS: [&str; 3] = [
    include_str!("../migrations/0001_records.sql"),
    include_str!("../migrations/0002_who_sees_what.sql"),
    include_str!("../migrations/0003_pages.sql"),
];
/// Newest form this program knows.
pub(crate) const KNOWN: i64 = STEPS.len() as i64;

/// Where it is kept how far the records have come; no member reads it.
const BEGIN: &str = "CREATE SCHEMA IF NOT EXISTS club;
    CREATE TABLE IF NOT EXISTS club.steps (number BIGINT NOT NULL PRIMARY KEY);
    ALTER TABLE club.steps ENABLE ROW LEVEL SECURITY;";
/// One program at a time takes steps; the number only has to be its own.
const ALONE: &str = "SELECT pg_advisory_xact_lock(hashtext('snowhum.club.steps'))";

/// Brings the records to the newest form, within a transaction.
pub(crate) async fn apply(writing: &mut PgConnection) -> Result<(), Fault> {
    sqlx::query(ALONE).execute(&mut *writing).await?;
    let is_made: bool =
        sqlx::query_scalar("SELECT to_regclass('club.steps') IS NOT NULL").fetch_one(&mut *writing).await?;
    if !is_made {
        sqlx::raw_sql(BEGIN).execute(&mut *writing).await?;
    }
    let newest = "SELECT COALESCE(MAX(number), 0) FROM club.steps";
    let found: i64 = sqlx::query_scalar(newest).fetch_one(&mut *writing).await?;
    if found > KNOWN {
        return Err(Fault::Newer { found, known: KNOWN });
    }
    for (number, step) in (1..).zip(STEPS).filter(|(number, _)| *number > found) {
        sqlx::raw_sql(step).execute(&mut *writing).await?;
        sqlx::query("INSERT INTO club.steps (number) VALUES ($1)").bind(number).execute(&mut *writing).await?;
    }
    Ok(())
}
