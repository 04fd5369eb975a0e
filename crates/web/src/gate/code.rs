//! A code told at the machine itself that signs one browser in, once: the keeper's way past any number of wrong tries.

use jiff::Timestamp;
use ring::digest::{SHA256, digest};
use snowhum_store::{Fault as StoreFault, Store};

use super::phrase::NotKept;
use super::session::{hex, secret};

const KEPT: &str = "gate.code";
/// How long it holds, s: long enough to walk to the other room with it.
const HOLDS: i64 = 600;
/// Letters that are not taken for one another: 32, so that 20 of them hold 100 bits, which nobody guesses.
const LETTERS: &[u8; 32] = b"ABCDEFGHJKLMNPQRSTUVWXYZ23456789";
const LENGTH: usize = 20;
/// Letters between two strokes.
const GROUP: usize = 5;

/// Makes one in place of any other, and keeps its hash.
///
/// # Errors
/// When the store cannot be written, or the machine gives no random numbers.
pub async fn sign_in_code(store: &Store, now: Timestamp) -> Result<String, NotKept> {
    let bytes = secret::<LENGTH>().ok_or_else(|| NotKept::Machine("no random numbers".to_owned()))?;
    let letters: Vec<char> = bytes.iter().map(|byte| char::from(LETTERS[usize::from(*byte) % LETTERS.len()])).collect();
    let code: String = letters.iter().collect();
    store.set(KEPT, &format!("{} {}", hash(&code), now.as_second() + HOLDS)).await?;
    Ok(letters.chunks(GROUP).map(|group| group.iter().collect::<String>()).collect::<Vec<_>>().join("-"))
}

/// Whether a text is the code that holds now; then it holds no more.
pub(super) async fn spend(store: &Store, text: &str, now: Timestamp) -> Result<bool, StoreFault> {
    let code: String =
        text.chars().filter(char::is_ascii_alphanumeric).map(|letter| letter.to_ascii_uppercase()).collect();
    if code.len() != LENGTH {
        return Ok(false);
    }
    let Some(kept) = store.setting(KEPT).await? else { return Ok(false) };
    let holds = kept.split_once(' ').and_then(|(kept, until)| Some((kept, until.parse::<i64>().ok()?)));
    let is_right =
        holds.is_some_and(|(kept, until)| kept == hash(&code) && (0..=HOLDS).contains(&(until - now.as_second())));
    if is_right {
        store.unset(KEPT).await?;
    }
    Ok(is_right)
}

/// What is compared is hashes of what nobody chose, so that the time it takes tells nothing.
fn hash(code: &str) -> String {
    hex(digest(&SHA256, code.as_bytes()).as_ref())
}
