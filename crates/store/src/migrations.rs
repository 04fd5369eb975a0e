//! The forms a store has had, and the steps from one to the next.

use crate::fault::Wrong;
use sqlx::sqlite::{SqliteConnection, SqlitePool};

/// The steps, in order; a step once shipped is never edited.
const STEPS: [Step; 1] = [Step { number: 1, sql: include_str!("../migrations/0001_records.sql") }];
/// Begins a transaction that writes: the right to write is taken at once, so that it cannot be lost half way.
pub(crate) const BEGIN_WRITING: &str = "BEGIN IMMEDIATE";

/// One step.
#[derive(Debug, Clone, Copy)]
struct Step {
    number: i64,
    sql: &'static str,
}

/// Newest form this program knows.
pub(crate) const KNOWN: i64 = STEPS[STEPS.len() - 1].number;

/// Brings a store to the newest form, each step whole or not at all.
pub(crate) async fn apply(pool: &SqlitePool) -> Result<(), Wrong> {
    apply_steps(pool, &STEPS).await
}

/// Form of a store: 0 for an empty file.
pub(crate) async fn form(connection: &mut SqliteConnection) -> Result<i64, Wrong> {
    // One statement, since another program may be making the tables.
    let tables: Vec<String> = sqlx::query_scalar("SELECT name FROM sqlite_master").fetch_all(&mut *connection).await?;
    if tables.is_empty() {
        return Ok(0);
    }
    if !tables.iter().any(|name| name == "snowhum_steps") {
        return Err(Wrong::OtherProgram);
    }
    let newest = "SELECT COALESCE(MAX(number), 0) FROM snowhum_steps";
    Ok(sqlx::query_scalar(newest).fetch_one(connection).await?)
}

/// Refuses a store of a newer form.
pub(crate) fn refuse_newer(found: i64, known: i64) -> Result<(), Wrong> {
    if found > known {
        return Err(Wrong::Newer { found, known });
    }
    Ok(())
}

async fn apply_steps(pool: &SqlitePool, steps: &'static [Step]) -> Result<(), Wrong> {
    let known = steps.last().map_or(0, |step| step.number);
    let mut reader = pool.acquire().await?;
    let found = form(&mut reader).await?;
    drop(reader);
    refuse_newer(found, known)?;
    for step in steps.iter().filter(|step| step.number > found) {
        apply_step(pool, *step).await?;
    }
    Ok(())
}

async fn apply_step(pool: &SqlitePool, step: Step) -> Result<(), Wrong> {
    let mut writing = pool.begin_with(BEGIN_WRITING).await?;
    // Another program may have done it while this one waited.
    if form(&mut writing).await? < step.number {
        let steps = "CREATE TABLE IF NOT EXISTS snowhum_steps (number BIGINT NOT NULL PRIMARY KEY)";
        sqlx::query(steps).execute(&mut *writing).await?;
        sqlx::raw_sql(step.sql).execute(&mut *writing).await?;
        sqlx::query("INSERT INTO snowhum_steps (number) VALUES ($1)").bind(step.number).execute(&mut *writing).await?;
    }
    Ok(writing.commit().await?)
}

#[cfg(test)]
mod tests {
    use super::{Step, apply_steps, form};
    use crate::connect;
    use crate::fault::Wrong;

    const FIRST: Step = Step { number: 1, sql: "CREATE TABLE a (x BIGINT); INSERT INTO a VALUES (7);" };
    const BROKEN: Step = Step { number: 2, sql: "UPDATE a SET x = 8; CREATE TABLE b (y BIGINT); NO SUCH WORDS;" };
    const SECOND: Step = Step { number: 2, sql: "UPDATE a SET x = x + 1; CREATE TABLE b (y BIGINT);" };

    #[test]
    fn a_step_is_taken_once_and_one_that_fails_leaves_no_trace() {
        tokio::runtime::Builder::new_current_thread().enable_time().build().unwrap().block_on(async {
            let pool = connect::memory().await.unwrap();
            let state = async || {
                let x: i64 = sqlx::query_scalar("SELECT x FROM a").fetch_one(&pool).await.unwrap();
                (form(&mut pool.acquire().await.unwrap()).await.unwrap(), x)
            };
            apply_steps(&pool, &[FIRST]).await.unwrap();
            assert_eq!(state().await, (1, 7));
            assert!(apply_steps(&pool, &[FIRST, BROKEN]).await.is_err());
            assert_eq!(state().await, (1, 7));
            for _ in 0..2 {
                apply_steps(&pool, &[FIRST, SECOND]).await.unwrap();
                assert_eq!(state().await, (2, 8));
            }
            let newer = apply_steps(&pool, &[FIRST]).await.unwrap_err();
            assert!(matches!(newer, Wrong::Newer { found: 2, known: 1 }));
        });
    }
}
