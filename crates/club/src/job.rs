//! One yard of a night, from the queue to its answer.

use crate::fault::Fault;
use crate::packed::{hash, pack, unpack};
use graphile_worker::{IntoTaskHandlerResult, TaskHandler, WorkerContext};
use serde::{Deserialize, Serialize};
use sqlx::postgres::PgPool;
use std::fmt;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::sync::Arc;
use std::time::Instant;
use tokio::sync::{Mutex, oneshot};
use uuid::Uuid;

/// What a job is called in the queue.
pub(crate) const TASK: &str = "outlook";
/// How often a yard is begun with at most: one that ends its worker each time fails then, and keeps no more from their work.
/// A worker that was killed for another reason costs one of these, so that it is more than one.
const MOST_BEGUN: i64 = 5;

/// What is asked of the model.
#[derive(Debug, Clone, Copy)]
pub struct Asked<'a> {
    /// The night's question.
    pub question: &'a str,
    /// The yard, as it was handed in.
    pub yard: &'a str,
}

/// How the model answers: the same answer to the same words, whoever asks; or why there is none, in words for the keeper.
pub type Reckon = Arc<dyn Fn(&Asked<'_>) -> Result<String, String> + Send + Sync>;

/// References only: what they name is read where it is computed.
#[derive(Debug, Serialize, Deserialize)]
struct Job {
    night: i64,
    yard: Uuid,
}

/// What a job is done with.
#[derive(Clone)]
pub(crate) struct Bench {
    pub(crate) pool: PgPool,
    pub(crate) reckon: Reckon,
    /// Held while a yard is computed that was begun before and not ended: one that ends its worker takes no other with it
    /// twice.
    pub(crate) alone: Arc<Mutex<()>>,
}

/// Inputs of one answer, as they were when the night was planned.
struct Inputs {
    begun: i64,
    input_hash: Vec<u8>,
    version_hash: Vec<u8>,
    body: Vec<u8>,
    question: String,
}

/// What came of it, and how long one core took.
struct Computed {
    answer: Result<String, String>,
    core_ms: i64,
}

impl fmt::Debug for Bench {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Bench").finish_non_exhaustive()
    }
}

impl TaskHandler for Job {
    const IDENTIFIER: &'static str = TASK;

    async fn run(self, context: WorkerContext) -> impl IntoTaskHandlerResult {
        let bench = context.extensions().get::<Bench>().cloned().ok_or("a worker without a bench")?;
        self.done(&bench).await.map_err(|fault| fault.to_string())
    }
}

pub(crate) fn definition() -> graphile_worker::JobDefinition {
    Job::definition()
}

impl Job {
    async fn done(&self, bench: &Bench) -> Result<(), Fault> {
        let _alone = if self.was_begun(&bench.pool).await? { Some(bench.alone.lock().await) } else { None };
        let Some(inputs) = self.begin(&bench.pool).await? else { return Ok(()) };
        let (begun, input_hash) = (inputs.begun, inputs.input_hash.clone());
        if begun > MOST_BEGUN {
            let words = format!(
                "its worker ended in the midst of it {MOST_BEGUN} times: out of memory, or a fault of the program"
            );
            return self.fail(&bench.pool, &words, MOST_BEGUN).await;
        }
        let computed = compute(inputs, bench.reckon.clone()).await;
        match computed.answer {
            Ok(answer) => self.keep(&bench.pool, &input_hash, &answer, computed.core_ms).await,
            Err(words) => self.fail(&bench.pool, &words, begun).await,
        }
    }

    /// Whether some worker began it and did not end it.
    async fn was_begun(&self, pool: &PgPool) -> Result<bool, Fault> {
        let row = "SELECT EXISTS (SELECT FROM club.asked WHERE night = $1 AND yard = $2 AND begun > 0)";
        Ok(sqlx::query_scalar(row).bind(self.night).bind(self.yard).fetch_one(pool).await?)
    }

    /// Notes that it is begun, and reads what it is computed from; none where it is answered already.
    async fn begin(&self, pool: &PgPool) -> Result<Option<Inputs>, Fault> {
        let row = "UPDATE club.asked SET begun = begun + 1 FROM club.yard_version, club.night \
                   WHERE asked.night = $1 AND asked.yard = $2 AND night.id = asked.night \
                   AND yard_version.yard = asked.yard AND yard_version.version = asked.version \
                   AND NOT EXISTS (SELECT FROM club.outlook WHERE outlook.yard = asked.yard AND outlook.input_hash = asked.input_hash) \
                   RETURNING begun, input_hash, yard_version.hash, yard_version.body, night.question";
        let row = sqlx::query_as::<_, (i64, Vec<u8>, Vec<u8>, Vec<u8>, String)>(row).bind(self.night).bind(self.yard);
        let inputs = row.fetch_optional(pool).await?;
        Ok(inputs.map(|(begun, input_hash, version_hash, body, question)| Inputs {
            begun,
            input_hash,
            version_hash,
            body,
            question,
        }))
    }

    /// Keeps an answer, unless it is kept already.
    async fn keep(&self, pool: &PgPool, input_hash: &[u8], answer: &str, core_ms: i64) -> Result<(), Fault> {
        let row = "INSERT INTO club.outlook (yard, input_hash, body, core_ms, made_at) VALUES ($1, $2, $3, $4, now()) \
                   ON CONFLICT DO NOTHING";
        let row = sqlx::query(row).bind(self.yard).bind(input_hash).bind(pack(answer)).bind(core_ms);
        row.execute(pool).await?;
        Ok(())
    }

    /// Keeps why there is no answer. The same inputs would fail again: the queue is told that it is done.
    async fn fail(&self, pool: &PgPool, words: &str, attempts: i64) -> Result<(), Fault> {
        let row = "INSERT INTO club.failure (night, yard, words, attempts) VALUES ($1, $2, $3, $4) \
                   ON CONFLICT (night, yard) DO UPDATE SET words = $3, attempts = $4";
        // PostgreSQL keeps no NUL in a text.
        let words = words.replace('\0', "");
        sqlx::query(row).bind(self.night).bind(self.yard).bind(words).bind(attempts).execute(pool).await?;
        Ok(())
    }
}

/// Computes on one thread of its own: a night keeps each core at one yard, and what it took is what it cost.
async fn compute(inputs: Inputs, reckon: Reckon) -> Computed {
    let (done, waiting) = oneshot::channel();
    let refused = |what: String| Computed { answer: Err(what), core_ms: 0 };
    let core = match rayon::ThreadPoolBuilder::new().num_threads(1).build() {
        Ok(core) => core,
        Err(error) => return refused(format!("no thread to compute on: {error}")),
    };
    core.spawn(move || {
        let begun = Instant::now();
        let answer = catch_unwind(AssertUnwindSafe(|| answer(&inputs, &reckon)));
        let answer = answer.unwrap_or_else(|panic| Err(format!("a fault of the program: {}", words_of(&*panic))));
        let core_ms = i64::try_from(begun.elapsed().as_millis()).unwrap_or(i64::MAX);
        // Nobody waits any more where the worker stops.
        let _ = done.send(Computed { answer, core_ms });
    });
    waiting.await.unwrap_or_else(|_| refused("its thread ended without a word".to_owned()))
}

fn answer(inputs: &Inputs, reckon: &Reckon) -> Result<String, String> {
    let yard = unpack(&inputs.body).map_err(|fault| fault.to_string())?;
    if hash(&yard) != inputs.version_hash {
        return Err("the yard is not as it was handed in: its row was changed; hand it in again".to_owned());
    }
    reckon(&Asked { question: &inputs.question, yard: &yard })
}

fn words_of(panic: &(dyn std::any::Any + Send)) -> &str {
    let text = panic.downcast_ref::<&str>().copied();
    text.or_else(|| panic.downcast_ref::<String>().map(String::as_str)).unwrap_or("it gave no words")
}
