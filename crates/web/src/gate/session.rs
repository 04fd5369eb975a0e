//! Sessions: a random token in the browser, its hash in the store, so that what is kept opens nothing.

use jiff::Timestamp;
use ring::digest::{SHA256, digest};
use ring::rand::{SecureRandom, SystemRandom};
use snowhum_store::{Fault as StoreFault, Store};
use std::fmt::Write;

use crate::fault::Fault;

const PREFIX: &str = "gate.session.";
/// A session not used for so long has ended, s: thirty days, longer than between two looks in winter.
const IDLE: i64 = 30 * 86_400;
/// A session ends after so long whatever happens, s: one winter.
pub(super) const LONGEST: i64 = 180 * 86_400;
/// Use is noted this often, s, so that looking writes little.
const NOTED: i64 = 3_600;
/// Most sessions; the one begun first makes room.
const MOST: usize = 40;

/// When a session was begun and last used, seconds since 1970.
#[derive(Clone, Copy)]
struct Times {
    begun: i64,
    used: i64,
}

impl Times {
    fn read(text: &str) -> Option<Self> {
        let (begun, used) = text.split_once(' ')?;
        Some(Self { begun: begun.parse().ok()?, used: used.parse().ok()? })
    }

    fn written(self) -> String {
        format!("{} {}", self.begun, self.used)
    }

    fn is_good(self, now: i64) -> bool {
        now - self.used < IDLE && now - self.begun < LONGEST
    }
}

/// Begins one and gives its token; what has ended is swept out.
pub(super) async fn begin(store: &Store, now: Timestamp) -> Result<String, Fault> {
    let token = hex(&secret::<32>().ok_or(Fault::Cut)?);
    let now = now.as_second();
    let mut all = all(store).await?;
    all.sort_by_key(|(_, times)| std::cmp::Reverse(times.map_or(0, |times| times.begun)));
    for (at, (name, times)) in all.iter().enumerate() {
        if at + 1 >= MOST || !times.is_some_and(|times| times.is_good(now)) {
            store.unset(name).await?;
        }
    }
    store.set(&name_of(&token), &Times { begun: now, used: now }.written()).await?;
    Ok(token)
}

/// Whether a token opens anything now.
pub(super) async fn is_good(store: &Store, token: &str, now: Timestamp) -> Result<bool, StoreFault> {
    let (name, now) = (name_of(token), now.as_second());
    let Some(times) = store.setting(&name).await?.as_deref().and_then(Times::read) else { return Ok(false) };
    if times.is_good(now) && now - times.used > NOTED {
        store.set(&name, &Times { used: now, ..times }.written()).await?;
    }
    Ok(times.is_good(now))
}

/// Ends one.
pub(super) async fn end(store: &Store, token: &str) -> Result<(), StoreFault> {
    store.unset(&name_of(token)).await
}

/// Ends them all.
pub(super) async fn end_all(store: &Store) -> Result<(), StoreFault> {
    for (name, _) in all(store).await? {
        store.unset(&name).await?;
    }
    Ok(())
}

/// How many are open.
pub(super) async fn count(store: &Store, now: Timestamp) -> Result<usize, StoreFault> {
    let is_good = |(_, times): &(String, Option<Times>)| times.is_some_and(|times| times.is_good(now.as_second()));
    Ok(all(store).await?.iter().filter(|session| is_good(session)).count())
}

async fn all(store: &Store) -> Result<Vec<(String, Option<Times>)>, StoreFault> {
    let kept = store.settings().await?.into_iter().filter(|(name, _)| name.starts_with(PREFIX));
    Ok(kept.map(|(name, value)| (name, Times::read(&value))).collect())
}

fn name_of(token: &str) -> String {
    format!("{PREFIX}{}", hex(digest(&SHA256, token.as_bytes()).as_ref()))
}

/// Bytes nobody can guess.
pub(super) fn secret<const N: usize>() -> Option<[u8; N]> {
    let mut bytes = [0; N];
    SystemRandom::new().fill(&mut bytes).ok()?;
    Some(bytes)
}

/// Bytes as text.
pub(super) fn hex(bytes: &[u8]) -> String {
    bytes.iter().fold(String::with_capacity(2 * bytes.len()), |mut text, byte| {
        let _ = write!(text, "{byte:02x}");
        text
    })
}

/// Text as bytes.
pub(super) fn unhex(text: &str) -> Option<Vec<u8>> {
    let digits: Option<Vec<u8>> = text.chars().map(|digit| u8::try_from(digit.to_digit(16)?).ok()).collect();
    let digits = digits.filter(|digits| digits.len().is_multiple_of(2))?;
    Some(digits.chunks_exact(2).map(|pair| pair[0] << 4 | pair[1]).collect())
}

#[cfg(test)]
mod tests {
    use super::{IDLE, LONGEST, Times, hex, unhex};

    #[test]
    fn a_session_ends_unused_or_old() {
        let times = Times { begun: 0, used: IDLE };
        assert!(times.is_good(2 * IDLE - 1));
        assert!(!times.is_good(2 * IDLE));
        assert!(!Times { begun: 0, used: LONGEST - 1 }.is_good(LONGEST));
        assert!(Times::read("many some").is_none());
    }

    #[test]
    fn bytes_come_back_from_their_text() {
        assert_eq!(unhex(&hex(&[0, 0xa5, 0xff])), Some(vec![0, 0xa5, 0xff]));
        assert_eq!(unhex("é0"), None);
        assert_eq!(unhex("abc"), None);
    }
}
