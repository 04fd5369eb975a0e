//! Ids made here.

use jiff::Timestamp;
use snowhum_apiary::{ColonyId, NoteId, VisitId};
use uuid::Uuid;

/// An id that sorts by the time it was made.
pub(crate) fn new_id(at: Timestamp) -> Uuid {
    let seconds = u64::try_from(at.as_second()).unwrap_or(0);
    let nanoseconds = u32::try_from(at.subsec_nanosecond()).unwrap_or(0);
    Uuid::new_v7(uuid::Timestamp::from_unix(uuid::NoContext, seconds, nanoseconds))
}

/// The one note of a colony at a visit, so that a form sent twice is kept once.
pub(crate) fn note_of(visit: VisitId, colony: ColonyId) -> NoteId {
    NoteId(Uuid::new_v5(&visit.0, colony.0.as_bytes()))
}

/// The flight day of a date, one visit however many taps it has.
pub(crate) fn flight_day(yard: Uuid, on: jiff::civil::Date) -> VisitId {
    VisitId(Uuid::new_v5(&yard, format!("flight day {on}").as_bytes()))
}
