//! What was decided of each colony last, kept among the alerts, so that near a line it holds.

use jiff::Timestamp;
use snowhum_advice::now::NowAnswer;
use snowhum_advice::verdict::LastVerdict;
use snowhum_apiary::{Apiary, ApiaryId};
use snowhum_store::{Alert, Fault, Store};

/// What was decided of each colony of a yard when it was last told.
///
/// # Errors
/// When the store cannot be read.
pub async fn last(store: &Store, yard: ApiaryId) -> Result<Vec<LastVerdict>, Fault> {
    let kept = store.alert_last(yard).await?;
    let read = |kept: &Alert| {
        let verdict = serde_json::from_str(&kept.word).ok()?;
        Some(LastVerdict { colony: kept.colony?, verdict })
    };
    Ok(kept.iter().filter_map(read).collect())
}

/// Keeps what is decided now, where that is another thing than last. Of an invented yard nothing is kept.
///
/// # Errors
/// When the store cannot be written.
pub async fn keep(store: &Store, yard: &Apiary, last: &[LastVerdict], now: &NowAnswer) -> Result<(), Fault> {
    if yard.invented {
        return Ok(());
    }
    for (colony, told) in yard.colonies.iter().zip(&now.colonies) {
        let is_last = |last: &LastVerdict| last.colony == colony.id && last.verdict.is_like(&told.verdict);
        if last.iter().any(is_last) {
            continue;
        }
        let Ok(word) = serde_json::to_string(&told.verdict) else { continue };
        store.put_alert(&Alert { yard: yard.id, colony: Some(colony.id), word, at: Timestamp::now() }).await?;
    }
    Ok(())
}
