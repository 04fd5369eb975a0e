//! Ids, apart from names: a colony may be renamed, a hive is not its colony.

use serde::{Deserialize, Serialize};
use uuid::Uuid;

macro_rules! id {
    ($($(#[$doc:meta])* $name:ident;)*) => {$(
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
        #[serde(transparent)]
        pub struct $name(pub Uuid);
    )*};
}

id! {
    /// Id of an apiary.
    ApiaryId;
    /// Id of a hive, the box.
    HiveId;
    /// Id of a colony, the bees.
    ColonyId;
    /// Id of a note.
    NoteId;
    /// Id of a visit: one walk past the hives.
    VisitId;
}
