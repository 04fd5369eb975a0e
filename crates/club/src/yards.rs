//! Members, their yards version by version, and who may read them.

use crate::database::{Club, Transaction};
use crate::fault::Fault;
use crate::packed::{hash, pack, unpack};
use crate::sharing::Cell;
use uuid::Uuid;

/// What a member is in the club.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Role {
    /// Owns their yards.
    Keeper,
    /// Owns theirs too, and reads those that were shared with them.
    Mentor,
}

impl Role {
    fn word(self) -> &'static str {
        match self {
            Self::Keeper => "keeper",
            Self::Mentor => "mentor",
        }
    }
}

/// A yard as it is handed in.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Yard {
    /// Its id, the same in every export of its keeper.
    pub id: Uuid,
    /// The keeper's name for it.
    pub name: String,
    /// All that an answer is computed from: the yard, its notes, what was told of it last.
    pub body: String,
    /// The coarse cell in which it lies.
    pub cell: Option<Cell>,
    /// Its winters that are over and of which every colony is told.
    pub winters: Vec<Winter>,
}

/// A yard's winter as the club may count it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Winter {
    /// The year of its autumn.
    pub year: i16,
    /// Colonies at risk.
    pub colonies: u32,
    /// Of them lost.
    pub lost: u32,
}

/// What a member hands in.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Handed {
    /// The export, to the byte.
    pub export: String,
    /// The yards in it.
    pub yards: Vec<Yard>,
}

/// What became of it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct TakenIn {
    /// Yards that are new, or of which something changed.
    pub changed: usize,
    /// Yards that are as they were.
    pub unchanged: usize,
    /// Yards that were in the member's last export and are not in this one: they are asked about no more.
    pub left: usize,
}

impl Club {
    /// The member of a name in the club of a name; both are made where they are not there. A role that is named holds
    /// from now on.
    ///
    /// # Errors
    /// When the database cannot be written.
    pub async fn member(&self, club: &str, name: &str, role: Option<Role>) -> Result<Uuid, Fault> {
        let mut writing = self.pool().begin().await?;
        let row =
            "INSERT INTO club.club (id, name) VALUES ($1, $2) ON CONFLICT (name) DO UPDATE SET name = $2 RETURNING id";
        let club: Uuid = sqlx::query_scalar(row).bind(Uuid::now_v7()).bind(club).fetch_one(&mut *writing).await?;
        let row = "INSERT INTO club.member (id, club, name, role) VALUES ($1, $2, $3, COALESCE($4, 'keeper')) \
                   ON CONFLICT (club, name) DO UPDATE SET role = COALESCE($4, member.role) RETURNING id";
        let row = sqlx::query_scalar(row).bind(Uuid::now_v7()).bind(club).bind(name).bind(role.map(Role::word));
        let member = row.fetch_one(&mut *writing).await?;
        writing.commit().await?;
        Ok(member)
    }

    /// A member that is there.
    ///
    /// # Errors
    /// When there is none of that name.
    pub async fn known_member(&self, club: &str, name: &str) -> Result<Uuid, Fault> {
        let row = "SELECT member.id FROM club.member JOIN club.club ON club.id = member.club WHERE club.name = $1 AND member.name = $2";
        let found = sqlx::query_scalar(row).bind(club).bind(name).fetch_optional(self.pool()).await?;
        found.ok_or_else(|| Fault::NoSuch { what: "member", name: name.to_owned() })
    }

    /// Takes in what a member hands in: all of it or nothing. A yard that is as it was gets no new version.
    ///
    /// # Errors
    /// When a yard is another member's, or the database cannot be written.
    pub async fn take_in(&self, owner: Uuid, handed: &Handed) -> Result<TakenIn, Fault> {
        let mut writing = self.pool().begin().await?;
        // Exports of one member come one after another.
        sqlx::query("SELECT FROM club.member WHERE id = $1 FOR UPDATE").bind(owner).execute(&mut *writing).await?;
        keep_export(&mut writing, owner, &handed.export).await?;
        let mut taken = TakenIn::default();
        for yard in &handed.yards {
            own(&mut writing, owner, yard).await?;
            keep_winters(&mut writing, yard).await?;
            match keep_version(&mut writing, yard).await? {
                true => taken.changed += 1,
                false => taken.unchanged += 1,
            }
        }
        let ids: Vec<Uuid> = handed.yards.iter().map(|yard| yard.id).collect();
        let left = "UPDATE club.yard SET left_at = now() WHERE owner = $1 AND id <> ALL($2) AND left_at IS NULL";
        let left = sqlx::query(left).bind(owner).bind(ids).execute(&mut *writing).await?;
        taken.left = usize::try_from(left.rows_affected()).unwrap_or(usize::MAX);
        writing.commit().await?;
        Ok(taken)
    }

    /// What a member handed in last, to the byte; none if nothing was.
    ///
    /// # Errors
    /// When the database cannot be read or is damaged.
    pub async fn last_export(&self, owner: Uuid) -> Result<Option<String>, Fault> {
        let row = "SELECT body FROM club.export WHERE owner = $1 ORDER BY serial DESC LIMIT 1";
        let body: Option<Vec<u8>> = sqlx::query_scalar(row).bind(owner).fetch_optional(self.pool()).await?;
        body.as_deref().map(unpack).transpose()
    }

    /// Lets a mentor read a yard; said by its owner, as whom the database is asked.
    ///
    /// # Errors
    /// When the yard is not the owner's, or the other no mentor of the same club.
    pub async fn share(&self, owner: Uuid, yard: &str, mentor: Uuid) -> Result<(), Fault> {
        let yard = self.own_yard(owner, yard).await?;
        let mut writing = self.as_member(owner).await?;
        let row = "INSERT INTO club.share (yard, mentor) VALUES ($1, $2) ON CONFLICT DO NOTHING";
        let done = sqlx::query(row).bind(yard).bind(mentor).execute(&mut *writing).await;
        match done {
            Err(error) if is_denied(&error) => Err(self.no_mentor(mentor).await?),
            done => {
                done?;
                Ok(writing.commit().await?)
            }
        }
    }

    async fn no_mentor(&self, member: Uuid) -> Result<Fault, Fault> {
        let name = sqlx::query_scalar("SELECT name FROM club.member WHERE id = $1").bind(member);
        let name: Option<String> = name.fetch_optional(self.pool()).await?;
        Ok(Fault::NoSuch { what: "mentor", name: name.unwrap_or_default() })
    }

    /// Takes that back.
    ///
    /// # Errors
    /// When the yard is not the owner's.
    pub async fn unshare(&self, owner: Uuid, yard: &str, mentor: Uuid) -> Result<(), Fault> {
        let yard = self.own_yard(owner, yard).await?;
        let mut writing = self.as_member(owner).await?;
        let row = sqlx::query("DELETE FROM club.share WHERE yard = $1 AND mentor = $2").bind(yard).bind(mentor);
        row.execute(&mut *writing).await?;
        Ok(writing.commit().await?)
    }

    async fn own_yard(&self, owner: Uuid, name: &str) -> Result<Uuid, Fault> {
        let mut reading = self.as_member(owner).await?;
        let row = sqlx::query_scalar("SELECT id FROM club.yard WHERE name = $1 AND owner = $2").bind(name).bind(owner);
        let found = row.fetch_optional(&mut *reading).await?;
        found.ok_or_else(|| Fault::NoSuch { what: "yard", name: name.to_owned() })
    }
}

/// PostgreSQL's code where a policy or a grant says no.
const DENIED: &str = "42501";

/// Whether PostgreSQL said that it may not be.
pub(crate) fn is_denied(error: &sqlx::Error) -> bool {
    error.as_database_error().and_then(|told| told.code()).is_some_and(|code| code == DENIED)
}

async fn keep_export(writing: &mut Transaction, owner: Uuid, export: &str) -> Result<(), Fault> {
    let row = "INSERT INTO club.export (owner, serial, hash, body, taken_at) \
               SELECT $1, COALESCE(MAX(serial), 0) + 1, $2, $3, now() FROM club.export WHERE owner = $1 \
               HAVING (SELECT hash FROM club.export WHERE owner = $1 ORDER BY serial DESC LIMIT 1) IS DISTINCT FROM $2";
    sqlx::query(row).bind(owner).bind(hash(export)).bind(pack(export)).execute(&mut **writing).await?;
    Ok(())
}

/// The yard is its owner's from now on, as it was before if it was there.
async fn own(writing: &mut Transaction, owner: Uuid, yard: &Yard) -> Result<(), Fault> {
    let row = "INSERT INTO club.yard (id, owner, name, cell_north, cell_east) VALUES ($1, $2, $3, $4, $5) \
               ON CONFLICT (id) DO UPDATE SET name = $3, cell_north = $4, cell_east = $5, left_at = NULL \
               WHERE yard.owner = $2";
    let (north, east) = (yard.cell.map(|cell| cell.north), yard.cell.map(|cell| cell.east));
    let row = sqlx::query(row).bind(yard.id).bind(owner).bind(&yard.name).bind(north).bind(east);
    match row.execute(&mut **writing).await?.rows_affected() {
        0 => Err(Fault::NotTheirs { name: yard.name.clone() }),
        _ => Ok(()),
    }
}

/// Its winters as they are told now.
async fn keep_winters(writing: &mut Transaction, yard: &Yard) -> Result<(), Fault> {
    sqlx::query("DELETE FROM club.winter WHERE yard = $1").bind(yard.id).execute(&mut **writing).await?;
    let row = "INSERT INTO club.winter (yard, year, colonies, lost) VALUES ($1, $2, $3, $4)";
    for winter in &yard.winters {
        let row = sqlx::query(row).bind(yard.id).bind(i32::from(winter.year));
        row.bind(i64::from(winter.colonies)).bind(i64::from(winter.lost)).execute(&mut **writing).await?;
    }
    Ok(())
}

/// Keeps a version if it is not as the last one; gives whether it did.
async fn keep_version(writing: &mut Transaction, yard: &Yard) -> Result<bool, Fault> {
    let row = "INSERT INTO club.yard_version (yard, version, hash, body, taken_at) \
               SELECT $1, COALESCE(MAX(version), 0) + 1, $2, $3, now() FROM club.yard_version WHERE yard = $1 \
               HAVING (SELECT hash FROM club.yard_version WHERE yard = $1 ORDER BY version DESC LIMIT 1) IS DISTINCT FROM $2";
    let done = sqlx::query(row).bind(yard.id).bind(hash(&yard.body)).bind(pack(&yard.body));
    Ok(done.execute(&mut **writing).await?.rows_affected() > 0)
}
