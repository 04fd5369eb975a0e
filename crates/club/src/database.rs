//! The club's database, and for whom it is asked.

use crate::fault::Fault;
use crate::migrations;
use graphile_worker::WorkerUtils;
use sqlx::Postgres;
use sqlx::postgres::{PgConnectOptions, PgConnection, PgPool, PgPoolOptions};
use std::time::Duration;
use uuid::Uuid;

/// A transaction on the club's records.
pub(crate) type Transaction = sqlx::Transaction<'static, Postgres>;

/// The schema that the queue keeps its tables in.
pub(crate) const QUEUE: &str = "graphile_worker";
/// Connections of a command.
const CONNECTIONS: u32 = 4;
/// How long is waited for a connection.
const PATIENCE: Duration = Duration::from_secs(10);

/// A club's records. Cheap to clone; clones share the connections.
#[derive(Debug, Clone)]
pub struct Club {
    pool: PgPool,
    address: PgConnectOptions,
}

impl Club {
    /// Connects to a club's database, and brings it and its queue to the newest form; an empty one becomes a club's.
    ///
    /// # Errors
    /// When the address is none, nobody answers there, or the records are of a newer program.
    pub async fn open(address: &str) -> Result<Self, Fault> {
        let address: PgConnectOptions = address.parse()?;
        let pool = pool(address.clone(), CONNECTIONS).await?;
        let mut writing = pool.begin().await?;
        migrations::apply(&mut writing).await?;
        let queue = WorkerUtils::new(pool.clone(), QUEUE).migrate().await;
        queue.map_err(|error| Fault::Refused { what: error.to_string() })?;
        writing.commit().await?;
        Ok(Self { pool, address })
    }

    /// A transaction that sees and may do what a member may, and no more: PostgreSQL itself holds the line.
    ///
    /// # Errors
    /// When the database cannot be reached.
    pub async fn as_member(&self, member: Uuid) -> Result<Transaction, Fault> {
        let mut reading = self.pool.begin().await?;
        speak_for(&mut reading, member).await?;
        Ok(reading)
    }

    /// Waits for what is being written, and lets go of the database. Clones are closed too.
    pub async fn close(self) {
        self.pool.close().await;
    }

    pub(crate) fn pool(&self) -> &PgPool {
        &self.pool
    }

    /// Connections of a worker. What it writes may be lost with the machine of the database, the latest first, and is then
    /// computed again: it need not wait for the disk.
    pub(crate) async fn pool_of_worker(&self, jobs: usize) -> Result<PgPool, Fault> {
        let address = self.address.clone().options([("synchronous_commit", "off")]);
        pool(address, u32::try_from(jobs).unwrap_or(u32::MAX).saturating_add(CONNECTIONS)).await
    }
}

/// From here to the end of the transaction a member speaks.
pub(crate) async fn speak_for(connection: &mut PgConnection, member: Uuid) -> Result<(), Fault> {
    sqlx::query("SET LOCAL ROLE snowhum_member").execute(&mut *connection).await?;
    let whose = sqlx::query("SELECT set_config('snowhum.member', $1, true)").bind(member.to_string());
    whose.execute(connection).await?;
    Ok(())
}

async fn pool(address: PgConnectOptions, connections: u32) -> Result<PgPool, Fault> {
    let options = PgPoolOptions::new().max_connections(connections).acquire_timeout(PATIENCE);
    Ok(options.connect_with(address).await?)
}
