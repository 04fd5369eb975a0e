//! Links that only show: signed, so that nobody makes one; kept by id, so that each can be taken back.

use jiff::{Timestamp, ToSpan};
use ring::hmac;
use serde::{Deserialize, Serialize};
use snowhum_say::links_page as text;
use snowhum_store::{Fault as StoreFault, Store};
use uuid::Uuid;

use super::session::{hex, secret, unhex};
use crate::fault::Fault;
use crate::ids;

const PREFIX: &str = "gate.link.";
const KEY: &str = "gate.link-key";
/// What is signed begins with this, so that the key signs nothing else by mistake.
const SIGNED: &str = "snowhum link 1 ";
/// Letters of the id in a token; the rest is the signature.
const ID: usize = 32;
/// Most links at once.
const MOST: usize = 40;
/// Longest name of a reader, letters.
const LONGEST: usize = 60;

/// For how many days a link can hold; the second is offered first.
pub(super) const DAYS: [i64; 4] = [7, 30, 90, 365];

/// One link.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub(super) struct Share {
    #[serde(skip)]
    pub(super) id: Uuid,
    /// Whom it is for, in the keeper's words.
    pub(super) name: String,
    pub(super) until: Timestamp,
}

/// Makes one.
pub(super) async fn make(store: &Store, name: &str, days: i64, now: Timestamp) -> Result<(), Fault> {
    let name = name.trim();
    if name.is_empty() || name.chars().count() > LONGEST || name.chars().any(char::is_control) {
        return Err(Fault::Wrong(text::wrong_name(LONGEST)));
    }
    if !DAYS.contains(&days) {
        return Err(Fault::Wrong(text::wrong_days()));
    }
    sweep(store, now).await?;
    if all(store, now).await?.len() >= MOST {
        return Err(Fault::Wrong(text::too_many(MOST)));
    }
    let until = now.checked_add((days * 24).hours()).map_err(|_| Fault::Cut)?;
    let share = Share { id: ids::new_id(now), name: name.to_owned(), until };
    let kept = serde_json::to_string(&share).map_err(|_| Fault::Cut)?;
    store.set(&format!("{PREFIX}{}", share.id.simple()), &kept).await?;
    Ok(())
}

/// All that hold, by the time they were made.
pub(super) async fn all(store: &Store, now: Timestamp) -> Result<Vec<Share>, StoreFault> {
    let kept = store.settings().await?;
    let read = kept.iter().filter_map(|(name, value)| {
        let id = name.strip_prefix(PREFIX)?.parse().ok()?;
        Some(Share { id, ..serde_json::from_str(value).ok()? })
    });
    Ok(read.filter(|share| now < share.until).collect())
}

/// Takes one back.
pub(super) async fn revoke(store: &Store, id: Uuid) -> Result<(), StoreFault> {
    store.unset(&format!("{PREFIX}{}", id.simple())).await
}

async fn sweep(store: &Store, now: Timestamp) -> Result<(), StoreFault> {
    let good: Vec<String> =
        all(store, now).await?.iter().map(|share| format!("{PREFIX}{}", share.id.simple())).collect();
    for (name, _) in store.settings().await? {
        if name.starts_with(PREFIX) && !good.contains(&name) {
            store.unset(&name).await?;
        }
    }
    Ok(())
}

/// What stands in a link's address.
pub(super) async fn token(store: &Store, id: Uuid) -> Result<String, Fault> {
    let key = match key(store).await? {
        Some(key) => key,
        None => new_key(store).await?,
    };
    let id = id.simple().to_string();
    let signature = hmac::sign(&key, format!("{SIGNED}{id}").as_bytes());
    Ok(format!("{id}{}", hex(signature.as_ref())))
}

/// The link of a token, if we signed it, nobody took it back, and it still holds.
pub(super) async fn of_token(store: &Store, token: &str, now: Timestamp) -> Result<Option<Share>, StoreFault> {
    let Some((id, signature)) = token.split_at_checked(ID) else { return Ok(None) };
    let (Some(signature), Some(key)) = (unhex(signature), key(store).await?) else { return Ok(None) };
    if hmac::verify(&key, format!("{SIGNED}{id}").as_bytes(), &signature).is_err() {
        return Ok(None);
    }
    let (Ok(id), Some(kept)) = (id.parse(), store.setting(&format!("{PREFIX}{id}")).await?) else { return Ok(None) };
    let share = serde_json::from_str(&kept).ok().map(|share| Share { id, ..share });
    Ok(share.filter(|share| now < share.until))
}

async fn key(store: &Store) -> Result<Option<hmac::Key>, StoreFault> {
    let kept = store.setting(KEY).await?;
    Ok(kept.as_deref().and_then(unhex).map(|bytes| hmac::Key::new(hmac::HMAC_SHA256, &bytes)))
}

async fn new_key(store: &Store) -> Result<hmac::Key, Fault> {
    let bytes = secret::<32>().ok_or(Fault::Cut)?;
    store.set(KEY, &hex(&bytes)).await?;
    Ok(hmac::Key::new(hmac::HMAC_SHA256, &bytes))
}
