//! `now --alert`: what is new, and nothing else.

use jiff::Timestamp;
use serde_json::json;
use snowhum_advice::now::{Alert, NowAnswer, alert};
use snowhum_apiary::ApiaryId;
use snowhum_store::Store;

use crate::args::Common;
use crate::{keep, text};

/// Tells what is new about the yard of the records, and keeps that it was told.
pub(super) fn tell(answer: &NowAnswer, common: &Common) -> anyhow::Result<()> {
    let (path, apiary) = keep::yard(common.store.as_deref())?;
    let last = keep::with(async { Store::open(&path).await?.alert_last(apiary.id).await })?;
    let last: Option<Alert> =
        last.iter().rev().find(|one| one.colony.is_none()).and_then(|one| serde_json::from_str(&one.word).ok());
    let new = alert(answer, last.as_ref());
    if let Some(new) = &new {
        keep_told(&path, apiary.id, new)?;
    }
    if common.json {
        return text::say(&serde_json::to_string_pretty(&json!({ "alert": new }))?);
    }
    text::say(&new.map_or_else(|| "nothing new".to_owned(), |new| text::wrapped(text::voice::in_words(&new.says), 0)))
}

fn keep_told(path: &std::path::Path, yard: ApiaryId, told: &Alert) -> anyhow::Result<()> {
    let word = serde_json::to_string(told)?;
    let kept = snowhum_store::Alert { yard, colony: None, word, at: Timestamp::now() };
    keep::with(async { Store::open(path).await?.put_alert(&kept).await })
}
