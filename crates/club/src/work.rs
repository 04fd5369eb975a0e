//! A worker: takes yards of a night off the queue, on any number of machines.

use crate::database::{Club, QUEUE};
use crate::fault::Fault;
use crate::job::{self, Bench, Reckon};
use graphile_worker::{LocalQueueConfig, WorkerOptions, WorkerRecoveryConfig, WorkerShutdownConfig};
use sqlx::postgres::PgPool;
use std::fmt;
use std::sync::Arc;
use std::time::Duration;
use tokio::sync::watch;

/// Jobs taken at once, for each that is computed: enough that no core waits for the queue, few enough that at the end of a
/// night no worker sits on what another could do.
const TAKEN_AHEAD: usize = 4;
/// How often it is asked whether all is done.
const LOOK: Duration = Duration::from_millis(200);

/// How a worker works.
#[derive(Clone)]
pub struct Worker {
    /// Its build: it takes yards of such nights alone as were planned for it.
    pub build: String,
    /// Yards computed at once.
    pub at_once: usize,
    /// How soon what happened is noticed.
    pub pace: Pace,
    /// How it answers.
    pub reckon: Reckon,
    /// Who is told of trouble that it lives through.
    pub told: fn(&Fault),
}

/// How soon what happened is noticed.
#[derive(Debug, Clone, Copy)]
pub struct Pace {
    /// How often the queue is asked where it does not call.
    pub poll: Duration,
    /// How often a worker says that it lives.
    pub alive: Duration,
    /// Of how long a silence it is taken for dead, and its yards are given to others.
    pub dead: Duration,
    /// How long a worker that is to stop may still compute.
    pub grace: Duration,
    /// How long it waits before it tries again to reach the database.
    pub again: Duration,
}

impl Pace {
    /// For machines in earnest: a worker that is dead is missed within some 75 seconds.
    pub const USUAL: Self = Self {
        poll: Duration::from_secs(1),
        alive: Duration::from_secs(10),
        dead: Duration::from_secs(60),
        grace: Duration::from_secs(60),
        again: Duration::from_secs(2),
    };
}

impl fmt::Debug for Worker {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Worker").field("build", &self.build).field("at_once", &self.at_once).finish_non_exhaustive()
    }
}

impl Club {
    /// Works until told to stop; what is being computed then is finished, and what was only taken is given back. A database
    /// that goes away is waited for.
    ///
    /// # Errors
    /// When the database cannot be reached at first.
    pub async fn work(&self, worker: &Worker, until: impl Future<Output = ()> + Send + 'static) -> Result<(), Fault> {
        let pool = self.pool_of_worker(worker.at_once).await?;
        let (stop, stopped) = watch::channel(false);
        let waits = tokio::spawn(async move {
            until.await;
            stop.send_replace(true);
        });
        let mut last_id = None;
        while !*stopped.borrow() {
            if let Err(fault) = shift(worker, &pool, stopped.clone(), &mut last_id).await {
                (worker.told)(&fault);
                tokio::time::sleep(worker.pace.again).await;
            }
        }
        waits.abort();
        pool.close().await;
        Ok(())
    }

    /// Comes back when no yard waits for a build, and none is being computed for it.
    pub async fn all_done(&self, build: String) {
        let left = "SELECT EXISTS (SELECT FROM graphile_worker.jobs \
                    WHERE flags ? $1 AND (locked_at IS NOT NULL OR attempts < max_attempts))";
        loop {
            let left = sqlx::query_scalar::<_, bool>(left).bind(&build).fetch_one(self.pool()).await;
            if matches!(left, Ok(false)) {
                return;
            }
            tokio::time::sleep(LOOK).await;
        }
    }
}

/// Works until told to stop or the database is lost. `last_id` is what the queue called this worker last.
async fn shift(
    worker: &Worker,
    pool: &PgPool,
    mut stopped: watch::Receiver<bool>,
    last_id: &mut Option<String>,
) -> Result<(), Fault> {
    let refused = |what: String| Fault::Refused { what };
    let (server, database, look) = (begun_at(pool).await?, pool.clone(), worker.pace.alive);
    let stop = async move {
        tokio::select! {
            // An end of the sender is an end of the work too.
            _ = stopped.wait_for(|stopped| *stopped) => {}
            () = another_server(&database, &server, look) => {}
        }
    };
    let queue = options(worker, pool, stop).init().await.map_err(|error| refused(error.to_string()))?;
    // What an earlier shift of this worker left behind is not computed by it any more.
    if let Some(id) = last_id.replace(queue.worker_id().clone()) {
        let free = queue.create_utils().force_unlock_workers(&[&id]).await;
        free.map_err(|error| refused(error.to_string()))?;
    }
    queue.run().await.map_err(|error| refused(error.to_string()))
}

/// When the database's server was begun, in its own words.
async fn begun_at(pool: &PgPool) -> Result<String, Fault> {
    Ok(sqlx::query_scalar("SELECT pg_postmaster_start_time()::TEXT").fetch_one(pool).await?)
}

/// Comes back when another server answers: what the one before gave out as it died may never have been heard here, and only a
/// new shift gives it back.
async fn another_server(pool: &PgPool, server: &str, look: Duration) {
    loop {
        tokio::time::sleep(look).await;
        if begun_at(pool).await.is_ok_and(|now| now != server) {
            return;
        }
    }
}

fn options(worker: &Worker, pool: &PgPool, stop: impl Future<Output = ()> + Send + 'static) -> WorkerOptions {
    let pace = worker.pace;
    let recovery = WorkerRecoveryConfig::default()
        .heartbeat_interval(pace.alive)
        .sweep_interval(pace.alive)
        .sweep_threshold(pace.dead)
        .recovery_delay(Duration::ZERO);
    let shutdown = WorkerShutdownConfig::default()
        .listen_os_shutdown_signals(false)
        .shutdown_signal(stop)
        .grace_period(pace.grace)
        .interrupted_job_retry_delay(Duration::ZERO);
    WorkerOptions::default()
        .pg_pool(pool.clone())
        .schema(QUEUE)
        .concurrency(worker.at_once.max(1))
        .poll_interval(pace.poll)
        .local_queue(LocalQueueConfig::default().with_size(TAKEN_AHEAD * worker.at_once.max(1)))
        .worker_recovery(recovery)
        .worker_shutdown(shutdown)
        .add_accepted_flag(&worker.build)
        .add_extension(Bench { pool: pool.clone(), reckon: worker.reckon.clone(), alone: Arc::default() })
        .define_jobs([job::definition()])
}
