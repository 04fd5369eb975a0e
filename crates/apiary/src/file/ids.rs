//! Ids: written, or made from names.

use super::report::Report;
use super::section::{Section, shown};
use crate::ApiaryId;
use snowhum_say::yard_fault as say;
use uuid::Uuid;

/// An id that a name always gives.
pub(crate) fn id_of(yard: ApiaryId, kind: &str, name: &str) -> Uuid {
    Uuid::new_v5(&yard.0, format!("{kind}/{}", name.trim().to_lowercase()).as_bytes())
}

/// The id a section carries, or the one its name gives.
pub(crate) fn id(section: &Section<'_>, made: Uuid, report: &mut Report) -> Uuid {
    let Some(entry) = section.get("id", report) else { return made };
    let Some(text) = entry.text(report) else { return made };
    match Uuid::parse_str(text.trim()) {
        Ok(id) => id,
        Err(_) => {
            report.fault(&entry.spot, say::no_id(shown(text)), say::no_id_right());
            made
        }
    }
}
