//! The forms a store has had, and the steps from one to the next. What a file is made of is looked at before, in `schema`.

use crate::fault::Wrong;
use crate::hashes;
use sqlx::Connection;
use sqlx::sqlite::{SqliteConnection, SqlitePool};

/// The steps, in order; a step once shipped is never edited.
const STEPS: [Step; 2] = [
    Step { number: 1, sql: include_str!("../migrations/0001_records.sql"), then: Then::Nothing },
    Step { number: 2, sql: include_str!("../migrations/0002_hashes.sql"), then: Then::Seal },
];
/// Begins a transaction that writes: the right to write is taken at once, so that it cannot be lost half way.
pub(crate) const BEGIN_WRITING: &str = "BEGIN IMMEDIATE";
/// How far a store has come.
pub(crate) const NEWEST: &str = "SELECT COALESCE(MAX(number), 0) FROM snowhum_steps";

/// One step.
#[derive(Debug, Clone, Copy)]
struct Step {
    number: i64,
    sql: &'static str,
    then: Then,
}

/// What a step does that no statement can.
#[derive(Debug, Clone, Copy)]
enum Then {
    Nothing,
    /// Gives every row its hash.
    Seal,
}

/// Newest form this program knows.
pub(crate) const KNOWN: i64 = STEPS[STEPS.len() - 1].number;

/// Brings a store to the newest form, each step whole or not at all.
pub(crate) async fn apply(pool: &SqlitePool) -> Result<(), Wrong> {
    apply_steps(&mut *pool.acquire().await?, &STEPS).await
}

/// Brings one connection's store to the newest form.
pub(crate) async fn apply_to(connection: &mut SqliteConnection) -> Result<(), Wrong> {
    apply_steps(connection, &STEPS).await
}

/// Makes the empty tables of a form in an empty file.
pub(crate) async fn make(connection: &mut SqliteConnection, form: i64) -> Result<(), Wrong> {
    for step in STEPS.iter().filter(|step| step.number <= form) {
        take(connection, *step).await?;
    }
    Ok(())
}

/// Refuses a store of a newer form.
pub(crate) fn refuse_newer(found: i64, known: i64) -> Result<(), Wrong> {
    if found > known {
        return Err(Wrong::Newer { found, known });
    }
    Ok(())
}

async fn apply_steps(connection: &mut SqliteConnection, steps: &'static [Step]) -> Result<(), Wrong> {
    let known = steps.last().map_or(0, |step| step.number);
    let found = form(connection).await?;
    refuse_newer(found, known)?;
    for step in steps.iter().filter(|step| step.number > found) {
        let mut writing = connection.begin_with(BEGIN_WRITING).await?;
        // Another program may have done it while this one waited.
        if form(&mut writing).await? < step.number {
            take(&mut writing, *step).await?;
        }
        writing.commit().await?;
    }
    Ok(())
}

/// How far it says it has come: 0 for an empty file.
async fn form(connection: &mut SqliteConnection) -> Result<i64, Wrong> {
    let is_made = "SELECT COUNT(*) FROM sqlite_master WHERE name = 'snowhum_steps'";
    let is_made: i64 = sqlx::query_scalar(is_made).fetch_one(&mut *connection).await?;
    Ok(if is_made == 0 { 0 } else { sqlx::query_scalar(NEWEST).fetch_one(connection).await? })
}

async fn take(writing: &mut SqliteConnection, step: Step) -> Result<(), Wrong> {
    let steps = "CREATE TABLE IF NOT EXISTS snowhum_steps (number BIGINT NOT NULL PRIMARY KEY)";
    sqlx::query(steps).execute(&mut *writing).await?;
    sqlx::raw_sql(step.sql).execute(&mut *writing).await?;
    match step.then {
        Then::Nothing => {}
        Then::Seal => hashes::seal(writing).await?,
    }
    sqlx::query("INSERT INTO snowhum_steps (number) VALUES ($1)").bind(step.number).execute(writing).await?;
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::{Step, Then, apply_steps, form};
    use crate::connect;
    use crate::fault::Wrong;

    const FIRST: Step =
        Step { number: 1, sql: "CREATE TABLE a (x BIGINT); INSERT INTO a VALUES (7);", then: Then::Nothing };
    const BROKEN: Step =
        Step { number: 2, sql: "UPDATE a SET x = 8; CREATE TABLE b (y BIGINT); NO SUCH WORDS;", then: Then::Nothing };
    const SECOND: Step =
        Step { number: 2, sql: "UPDATE a SET x = x + 1; CREATE TABLE b (y BIGINT);", then: Then::Nothing };

    #[test]
    fn a_step_is_taken_once_and_one_that_fails_leaves_no_trace() {
        tokio::runtime::Builder::new_current_thread().enable_time().build().unwrap().block_on(async {
            let pool = connect::memory().await.unwrap();
            let state = async || {
                let x: i64 = sqlx::query_scalar("SELECT x FROM a").fetch_one(&pool).await.unwrap();
                (form(&mut pool.acquire().await.unwrap()).await.unwrap(), x)
            };
            apply_steps(&mut pool.acquire().await.unwrap(), &[FIRST]).await.unwrap();
            assert_eq!(state().await, (1, 7));
            assert!(apply_steps(&mut pool.acquire().await.unwrap(), &[FIRST, BROKEN]).await.is_err());
            assert_eq!(state().await, (1, 7));
            for _ in 0..2 {
                apply_steps(&mut pool.acquire().await.unwrap(), &[FIRST, SECOND]).await.unwrap();
                assert_eq!(state().await, (2, 8));
            }
            let newer = apply_steps(&mut pool.acquire().await.unwrap(), &[FIRST]).await.unwrap_err();
            assert!(matches!(newer, Wrong::Newer { found: 2, known: 1 }));
        });
    }
}
