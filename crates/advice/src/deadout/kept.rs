//! An examination to and from the records.

use snowhum_apiary::{Examined, Found, FoundSign, Likeliest};
use snowhum_say::{Message, deadout_table};

use super::answer::{DeadoutAnswer, Seen, SeenSign};
use super::tables::Tables;
use crate::sums::SumFault;

/// What is kept of an examination; none where nobody looked, whatever the records answer.
#[must_use]
pub fn to_keep(answer: &DeadoutAnswer) -> Option<Examined> {
    let found = |seen: Seen| match seen {
        Seen::Yes => Some(Found::Yes),
        Seen::FairlyYes => Some(Found::FairlyYes),
        Seen::FairlyNo => Some(Found::FairlyNo),
        Seen::No => Some(Found::No),
        Seen::Unseen => None,
    };
    let signs = answer.signs.iter().filter_map(|sign| Some((sign.sign.clone(), found(sign.seen)?)));
    let signs: Vec<FoundSign> = signs.map(|(name, found)| FoundSign { name, found }).collect();
    let likeliest = answer
        .causes
        .first()
        .map(|cause| Likeliest { cause: cause.cause.clone(), of_100: (100.0 * cause.p).round() as u8 });
    (signs.len() > answer.from_records.len()).then_some(Examined { signs, likeliest })
}

/// The signs of a kept examination that are known today.
///
/// # Errors
/// When the shipped table cannot be read.
pub fn kept_signs(examined: &Examined) -> Result<Vec<SeenSign>, SumFault> {
    let tables = Tables::shipped()?;
    let is_known = |name: &str| tables.names().any(|known| known == name);
    let sign = |sign: &FoundSign| SeenSign { name: sign.name.clone(), seen: seen(sign.found) };
    Ok(examined.signs.iter().filter(|sign| is_known(&sign.name)).map(sign).collect())
}

/// Whether a kept examination ended at a sign of foulbrood.
///
/// # Errors
/// When the shipped table cannot be read.
pub fn is_stopped(examined: &Examined) -> Result<bool, SumFault> {
    let tables = Tables::shipped()?;
    let stops = |name: &str| tables.stop.sign.iter().any(|stop| stop.name == name);
    Ok(examined.signs.iter().any(|sign| stops(&sign.name) && seen(sign.found).is_yes()))
}

/// The words for a cause by its short name; the name itself where it is not known.
#[must_use]
pub fn cause_words(name: &str) -> Message {
    deadout_table::named(name).unwrap_or_else(|| name.into())
}

fn seen(found: Found) -> Seen {
    match found {
        Found::Yes => Seen::Yes,
        Found::FairlyYes => Seen::FairlyYes,
        Found::FairlyNo => Seen::FairlyNo,
        Found::No => Seen::No,
    }
}
