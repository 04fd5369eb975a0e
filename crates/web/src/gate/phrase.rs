//! The pass phrase: never kept, only what it is checked against.

use argon2::password_hash::phc::PasswordHash;
use argon2::{Algorithm, Argon2, Params, PasswordHasher, PasswordVerifier, Version};
use snowhum_say::{Message, sign_in_page as text};
use snowhum_store::{Fault as StoreFault, Store};

use super::session;
use super::session::secret;

const KEPT: &str = "gate.pass-phrase";
/// Fewest letters: enough for a home network where each wrong try makes the next one wait.
const FEWEST: usize = 12;
/// Longest that is read, bytes.
const LONGEST: usize = 1024;
/// Memory in KiB, passes and lanes: the least that the OWASP Password Storage Cheat Sheet gives for Argon2id.
const COST: (u32, u32, u32) = (19_456, 2, 1);
/// The most of each that is spent on a kept one: records from elsewhere may ask for all the machine has; 64 MiB
/// is what a small board can spare.
const MOST: (u32, u32, u32) = (65_536, 8, 4);

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
    pub fn new(typed: &str) -> Result<Self, Message> {
        if typed.trim().chars().count() < FEWEST {
            return Err(text::phrase_short(FEWEST));
        }
        if typed.len() > LONGEST {
            return Err(text::phrase_long(LONGEST));
        }
        Ok(Self(typed.to_owned()))
    }

    /// Whether a store has one that can be tried.
    ///
    /// # Errors
    /// When the store cannot be read.
    pub async fn is_kept(store: &Store) -> Result<bool, StoreFault> {
        Ok(kept(store).await?.is_some_and(|kept| sealed(&kept).is_some()))
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
    let (Ok(argon2), Some(kept)) = (argon2(), sealed(kept)) else { return false };
    text.len() <= LONGEST && argon2.verify_password(text.as_bytes(), &kept).is_ok()
}

/// What is kept, if it is what this program makes and costs no more than it may.
fn sealed(kept: &str) -> Option<PasswordHash> {
    let hash = PasswordHash::new(kept).ok()?;
    let params = Params::try_from(&hash).ok()?;
    let is_cheap = params.m_cost() <= MOST.0 && params.t_cost() <= MOST.1 && params.p_cost() <= MOST.2;
    (is_cheap && hash.algorithm == Algorithm::Argon2id.ident()).then_some(hash)
}

fn argon2() -> Result<Argon2<'static>, argon2::Error> {
    let (memory, passes, lanes) = COST;
    Ok(Argon2::new(Algorithm::Argon2id, Version::V0x13, Params::new(memory, passes, lanes, None)?))
}

#[cfg(test)]
mod tests {
    use super::{argon2, is_right, sealed};
    use argon2::PasswordHasher;
    use std::time::{Duration, Instant};

    #[test]
    fn a_kept_phrase_that_would_cost_all_the_machine_has_is_never_tried() {
        let ours = argon2().unwrap().hash_password_with_salt(b"four frosty hives", &[7; 16]).unwrap().to_string();
        assert!(is_right("four frosty hives", &ours) && !is_right("four frosty hive", &ours));
        let start = Instant::now();
        for (ours_is, planted) in
            [("m=19456", "m=4194304"), ("t=2", "t=4000000"), ("p=1", "p=9000"), ("argon2id", "argon2d")]
        {
            let planted = ours.replace(ours_is, planted);
            assert_ne!(planted, ours);
            assert!(sealed(&planted).is_none() && !is_right("four frosty hives", &planted), "{planted}");
        }
        assert!(start.elapsed() < Duration::from_secs(1));
    }
}
