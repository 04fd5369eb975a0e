//! Bodies as JSON, and the small values beside them.

use crate::fault::Wrong;
use jiff::Timestamp;
use serde::de::DeserializeOwned;
use serde::{Deserialize, Serialize};
use serde_json::Value;
use snowhum_apiary::{Apiary, Colony, Hive, Note};
use snowhum_say::{store as say, store_found};
use uuid::Uuid;

/// What a yard is apart from its hives, colonies and notes: every other field of an [`Apiary`], also later ones.
const PARTS: [&str; 3] = ["hives", "colonies", "notes"];

/// JSON of a body, refused if it would not read back as it is (a number that is none).
pub(crate) fn written<T: Serialize + DeserializeOwned + PartialEq>(
    what: &T,
    field: &'static str,
) -> Result<String, Wrong> {
    let unfit = |what| Wrong::Unfit { field, what, right: "finite" };
    let text = serde_json::to_string(what).map_err(|error| unfit(error.to_string().into()))?;
    let again: T = serde_json::from_str(&text).map_err(|error| unfit(error.to_string().into()))?;
    if again != *what {
        return Err(unfit(say::not_as_it_is()));
    }
    Ok(text)
}

/// A body read back; `what` and `id` say which if it cannot be.
pub(crate) fn read<T: DeserializeOwned>(text: &str, what: &str, id: &str) -> Result<T, Wrong> {
    serde_json::from_str(text)
        .map_err(|error| Wrong::damaged(store_found::body(format!("{what} {id}"), error.to_string())))
}

/// The body of a yard.
pub(crate) fn of_yard(yard: &Apiary) -> Result<String, Wrong> {
    written(yard, "yard")?;
    let mut bare = Apiary { hives: Vec::new(), colonies: Vec::new(), notes: Vec::new(), ..yard.clone() };
    // The notes of winters that are over are rows like all others.
    bare.past.iter_mut().for_each(|past| past.notes.clear());
    let refused = |error: serde_json::Error| Wrong::Refused { what: error.to_string() };
    let mut body = serde_json::to_value(bare).map_err(refused)?;
    if let Value::Object(fields) = &mut body {
        PARTS.iter().for_each(|part| drop(fields.remove(*part)));
    }
    Ok(body.to_string())
}

/// A yard put together again.
pub(crate) fn yard(body: &str, id: &str, parts: Parts) -> Result<Apiary, Wrong> {
    let Value::Object(mut fields) = read::<Value>(body, "yard", id)? else {
        return Err(Wrong::damaged(format!("the body of yard {id} is no object")));
    };
    PARTS.iter().for_each(|part| drop(fields.insert((*part).to_owned(), Value::Array(Vec::new()))));
    let bare: Apiary = serde_json::from_value(Value::Object(fields))
        .map_err(|error| Wrong::damaged(store_found::body(format!("yard {id}"), error.to_string())))?;
    Ok(Apiary { hives: parts.hives, colonies: parts.colonies, notes: parts.notes, ..bare })
}

/// What stands in a yard.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
pub(crate) struct Parts {
    pub(crate) hives: Vec<Hive>,
    pub(crate) colonies: Vec<Colony>,
    pub(crate) notes: Vec<Note>,
}

/// Milliseconds since 1970 as a time.
pub(crate) fn time(unix_ms: i64) -> Result<Timestamp, Wrong> {
    Timestamp::from_millisecond(unix_ms).map_err(|_| Wrong::damaged(format!("{unix_ms} is no time")))
}

/// An id as kept.
pub(crate) fn id(text: &str) -> Result<Uuid, Wrong> {
    Uuid::parse_str(text).map_err(|_| Wrong::damaged(format!("{text:?} is no id")))
}

/// A text as the keeper gave it; a NUL is refused, since not every database can keep it.
pub(crate) fn text<'a>(text: &'a str, field: &'static str) -> Result<&'a str, Wrong> {
    if text.contains('\0') {
        return Err(Wrong::Unfit { field, what: say::holds_nul(), right: "no-nul" });
    }
    Ok(text)
}
