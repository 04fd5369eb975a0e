//! How a member comes in by the pages: a key that the club hands out, and sessions that it begins.
//!
//! Both are drawn by the system, 122 bits each, so that nobody guesses one; the database keeps their hashes.

use crate::database::Club;
use crate::fault::Fault;
use crate::packed::hash;
use uuid::Uuid;

/// A session not used for so long has ended: longer than between two looks in winter.
const IDLE: &str = "INTERVAL '30 days'";
/// A session ends after so long whatever happens: one winter.
const LONGEST: &str = "INTERVAL '180 days'";
/// Use is noted this often, so that looking writes little.
const NOTED: &str = "INTERVAL '1 hour'";

/// Who is signed in.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Member {
    /// Who.
    pub id: Uuid,
    /// Their name.
    pub name: String,
    /// Their club's.
    pub club: String,
    /// Whether they read what others share with them.
    pub is_mentor: bool,
}

impl Club {
    /// A new key for a member, in groups to be typed. The one before opens nothing any more, and their sessions end.
    ///
    /// # Errors
    /// When the database cannot be written.
    pub async fn give_key(&self, member: Uuid) -> Result<String, Fault> {
        let key = secret();
        let mut writing = self.pool().begin().await?;
        let row = "INSERT INTO club.key (member, hash, made_at) VALUES ($1, $2, now()) \
                   ON CONFLICT (member) DO UPDATE SET hash = $2, made_at = now()";
        sqlx::query(row).bind(member).bind(hash(&key)).execute(&mut *writing).await?;
        sqlx::query("DELETE FROM club.session WHERE member = $1").bind(member).execute(&mut *writing).await?;
        writing.commit().await?;
        let groups: Vec<&str> = (0..key.len()).step_by(4).filter_map(|at| key.get(at..at + 4)).collect();
        Ok(groups.join("-"))
    }

    /// Begins a session for who has a key, however its groups are parted; none where nobody has it.
    ///
    /// # Errors
    /// When the database cannot be written.
    pub async fn sign_in(&self, key: &str) -> Result<Option<String>, Fault> {
        let token = secret();
        let swept = format!("DELETE FROM club.session WHERE NOT ({})", is_good());
        sqlx::query(sqlx::AssertSqlSafe(swept)).execute(self.pool()).await?;
        let row = "INSERT INTO club.session (hash, member, begun_at, used_at) \
                   SELECT $1, member, now(), now() FROM club.key WHERE hash = $2";
        let row = sqlx::query(row).bind(hash(&token)).bind(of_key(key));
        let begun = row.execute(self.pool()).await?.rows_affected() == 1;
        Ok(begun.then_some(token))
    }

    /// Whose key it is, however its groups are parted; none where it is nobody's.
    ///
    /// # Errors
    /// When the database cannot be read.
    pub async fn holder(&self, key: &str) -> Result<Option<Uuid>, Fault> {
        let row = sqlx::query_scalar("SELECT member FROM club.key WHERE hash = $1").bind(of_key(key));
        Ok(row.fetch_optional(self.pool()).await?)
    }

    /// Whose session it is; none where it is nobody's, or has ended.
    ///
    /// # Errors
    /// When the database cannot be read.
    pub async fn signed_in(&self, token: &str) -> Result<Option<Member>, Fault> {
        let row = format!(
            "WITH used AS (UPDATE club.session SET used_at = now() WHERE hash = $1 AND {good} AND used_at < now() - {NOTED}) \
             SELECT member.id, member.name, club.name, member.role = 'mentor' FROM club.session \
             JOIN club.member ON member.id = session.member JOIN club.club ON club.id = member.club WHERE hash = $1 AND {good}",
            good = is_good()
        );
        let row = sqlx::query_as::<_, (Uuid, String, String, bool)>(sqlx::AssertSqlSafe(row)).bind(hash(token));
        let found = row.fetch_optional(self.pool()).await?;
        Ok(found.map(|(id, name, club, is_mentor)| Member { id, name, club, is_mentor }))
    }

    /// Ends a session.
    ///
    /// # Errors
    /// When the database cannot be written.
    pub async fn sign_out(&self, token: &str) -> Result<(), Fault> {
        sqlx::query("DELETE FROM club.session WHERE hash = $1").bind(hash(token)).execute(self.pool()).await?;
        Ok(())
    }
}

/// The hash of a key as it was typed.
fn of_key(key: &str) -> Vec<u8> {
    let key: String = key.chars().filter(char::is_ascii_alphanumeric).collect();
    hash(&key.to_ascii_lowercase())
}

fn is_good() -> String {
    format!("used_at > now() - {IDLE} AND begun_at > now() - {LONGEST}")
}

/// What nobody can guess.
fn secret() -> String {
    Uuid::new_v4().simple().to_string()
}
