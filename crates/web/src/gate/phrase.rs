//! The pass phrase: never kept, only what it is checked against.

use argon2::password_hash::phc::PasswordHash;
use argon2::{Algorithm, Argon2, Params, PasswordHasher, PasswordVerifier, Version};
use snowhum_store::{Fault as StoreFault, Store};

use super::session;
use super::session::secret;

const KEPT: &str = "gate.pass-phrase";
/// Fewest letters: judgement, for a home network where each wrong try makes the next one wait.
const FEWEST: usize = 12;
/// Longest that is read, bytes.
const LONGEST: usize = 1024;
/// Memory in KiB, passes and lanes: the least that the OWASP Password Storage Cheat Sheet gives for Argon2id.
const COST: (u32, u32, u32) = (19_456, 2, 1);

/// A pass phrase that is long enough.
pub struct PassPhrase(String);

/// Why a pass phrase is not kept.
#[derive(Debug, thiserror::Error)]
pub enum NotKept {
    /// The store.
    #[error("{0}")]
    Store(#[from] StoreFault),
    /// The machine gives no random numbers or no memory.
    #[error("the pass phrase cannot be sealed: {0}")]
    Machine(String),
}

impl PassPhrase {
    /// A pass phrase as typed.
    ///
    /// # Errors
    /// When it is too short or too long, with what would be right.
    pub fn new(text: &str) -> Result<Self, String> {
        if text.trim().chars().count() < FEWEST {
            return Err(format!(
                "the pass phrase is too short; take at least {FEWEST} letters, such as four words that have nothing to do with each other"
            ));
        }
        if text.len() > LONGEST {
            return Err(format!("the pass phrase is too long; at most {LONGEST} letters are read"));
        }
        Ok(Self(text.to_owned()))
    }

    /// Whether a store has one.
    ///
    /// # Errors
    /// When the store cannot be read.
    pub async fn is_kept(store: &Store) -> Result<bool, StoreFault> {
        Ok(store.setting(KEPT).await?.is_some())
    }

    /// Keeps it in place of any other, and ends all sessions.
    ///
    /// # Errors
    /// When the store cannot be written, or the machine cannot seal it.
    pub async fn keep(&self, store: &Store) -> Result<(), NotKept> {
        let salt: [u8; 16] = secret().ok_or_else(|| NotKept::Machine("no random numbers".to_owned()))?;
        let machine = |error: &dyn std::fmt::Display| NotKept::Machine(error.to_string());
        let sealed: PasswordHash = argon2()
            .map_err(|error| machine(&error))?
            .hash_password_with_salt(self.0.as_bytes(), &salt)
            .map_err(|error| machine(&error))?;
        store.set(KEPT, &sealed.to_string()).await?;
        session::end_all(store).await?;
        Ok(())
    }
}

/// What a pass phrase is checked against.
pub(super) async fn kept(store: &Store) -> Result<Option<String>, StoreFault> {
    store.setting(KEPT).await
}

/// Whether a text is the pass phrase. Takes as long for a wrong one as for the right one.
pub(super) fn is_right(text: &str, kept: &str) -> bool {
    let (Ok(argon2), Ok(kept)) = (argon2(), PasswordHash::new(kept)) else { return false };
    text.len() <= LONGEST && argon2.verify_password(text.as_bytes(), &kept).is_ok()
}

fn argon2() -> Result<Argon2<'static>, argon2::Error> {
    let (memory, passes, lanes) = COST;
    Ok(Argon2::new(Algorithm::Argon2id, Version::V0x13, Params::new(memory, passes, lanes, None)?))
}
