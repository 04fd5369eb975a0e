//! What can go wrong with a store, and what the keeper can do.

use std::io;
use std::path::Path;

/// Something went wrong with a store or with a file that goes in or out of it.
#[derive(Debug, thiserror::Error)]
#[error("{place}: {wrong}")]
pub struct Fault {
    /// The file it is about.
    pub place: String,
    /// What is wrong, and what to do.
    pub wrong: Wrong,
}

/// What is wrong, with what to do about it.
#[derive(Debug, thiserror::Error)]
pub enum Wrong {
    /// The file or its folder cannot be written.
    #[error("cannot be written; make the file and its folder writable, or name another place for the store")]
    ReadOnly,
    /// No room.
    #[error("the disk is full; free some space and try again. What was answered as stored is safe")]
    Full,
    /// Somebody else writes.
    #[error("another program is using the store and did not let go; close it and try again")]
    Locked,
    /// Not a database.
    #[error("is not a store of Snowhum's records; name the right file, or restore a backup over it")]
    NotADatabase,
    /// A database, but not ours.
    #[error("is a database of another program; name another file, nothing was changed in this one")]
    OtherProgram,
    /// It holds what no store holds.
    #[error("holds {what}, which no store of Snowhum's has; nothing of it was read or run. Name another file")]
    Foreign {
        /// Its kind and name.
        what: String,
    },
    /// It took too long.
    #[error(
        "could not be looked through in the time there is for it; it is damaged, or made to be slow. Name another file, or restore the last backup"
    )]
    TooLong,
    /// Written by a newer program.
    #[error(
        "was written by a newer Snowhum (form {found}; this program knows up to {known}); \
         use the newer program, nothing was changed"
    )]
    Newer {
        /// Form of the store.
        found: i64,
        /// Newest form this program knows.
        known: i64,
    },
    /// The file is damaged.
    #[error("is damaged: {what}; restore the last backup, the damaged file is kept aside")]
    Damaged {
        /// Where.
        what: String,
    },
    /// Rows of it are not in order.
    #[error("is not in order ({what}); nothing was put in the place of your records. Name another backup or export")]
    NotInOrder {
        /// What, and how.
        what: String,
    },
    /// A store that must be there is not.
    #[error("there is no such file; check the name")]
    Missing,
    /// A file that must not be there is.
    #[error("is already there and is not overwritten; name another file")]
    AlreadyThere,
    /// The disk says no.
    #[error("cannot be used ({what}); check that the folder exists and may be written")]
    Disk {
        /// What the system says.
        what: String,
    },
    /// Everything can only go into an empty store.
    #[error("already holds records; read the export into a new store, or import yards and notes one by one")]
    NotEmpty,
    /// A file to be read in is not in order.
    #[error("{at}: {what}; {right}")]
    Unreadable {
        /// Line or entry.
        at: String,
        /// What is wrong.
        what: String,
        /// What would be right.
        right: &'static str,
    },
    /// A value that cannot be kept as it is.
    #[error("{field} cannot be kept: {what}; {right}")]
    Unfit {
        /// Which.
        field: &'static str,
        /// What is wrong.
        what: String,
        /// What would be right.
        right: &'static str,
    },
    /// A note nobody made.
    #[error("there is no note {id}; it may have been written on another device that has not sent it yet")]
    NoSuchNote {
        /// Its id.
        id: String,
    },
    /// A hive or colony stands in another yard.
    #[error(
        "{what} \"{name}\" stands in another yard of this store; take it out of that yard first, or give it a new id"
    )]
    InAnotherYard {
        /// Hive or colony.
        what: &'static str,
        /// Its name.
        name: String,
    },
    /// Anything else the database says.
    #[error("the database refused ({what}); run `snowhum doctor`")]
    Refused {
        /// In its words.
        what: String,
    },
}

impl Fault {
    pub(crate) fn new(place: impl Into<String>, wrong: Wrong) -> Self {
        Self { place: place.into(), wrong }
    }

    pub(crate) fn about(file: &Path, wrong: impl Into<Wrong>) -> Self {
        Self::new(file.display().to_string(), wrong.into())
    }
}

impl Wrong {
    pub(crate) fn damaged(what: impl Into<String>) -> Self {
        Self::Damaged { what: what.into() }
    }
}

impl From<sqlx::Error> for Wrong {
    fn from(error: sqlx::Error) -> Self {
        match &error {
            sqlx::Error::Database(told) => of_code(told.code().as_deref(), told.message()),
            sqlx::Error::PoolTimedOut => Self::Locked,
            sqlx::Error::Io(told) => of_io(told),
            sqlx::Error::ColumnDecode { .. } | sqlx::Error::Decode(_) => Self::damaged(error.to_string()),
            _ => Self::Refused { what: error.to_string() },
        }
    }
}

impl From<io::Error> for Wrong {
    fn from(error: io::Error) -> Self {
        of_io(&error)
    }
}

/// By SQLite's result code, of which the low byte says the kind.
fn of_code(code: Option<&str>, message: &str) -> Wrong {
    let kind = code.and_then(|code| code.parse::<i32>().ok()).map(|code| code & 0xff);
    match kind {
        Some(5 | 6) => Wrong::Locked,
        Some(3 | 8) => Wrong::ReadOnly,
        Some(11) => Wrong::damaged(message),
        Some(13) => Wrong::Full,
        Some(9) => Wrong::TooLong,
        Some(10 | 14) => Wrong::Disk { what: message.to_owned() },
        Some(26) => Wrong::NotADatabase,
        _ => Wrong::Refused { what: message.to_owned() },
    }
}

fn of_io(error: &io::Error) -> Wrong {
    match error.kind() {
        io::ErrorKind::NotFound => Wrong::Missing,
        io::ErrorKind::AlreadyExists => Wrong::AlreadyThere,
        io::ErrorKind::StorageFull | io::ErrorKind::QuotaExceeded => Wrong::Full,
        io::ErrorKind::PermissionDenied | io::ErrorKind::ReadOnlyFilesystem => Wrong::ReadOnly,
        _ => Wrong::Disk { what: error.to_string() },
    }
}

#[cfg(test)]
mod tests {
    use super::{Wrong, of_code};

    #[test]
    fn the_kind_of_a_fault_is_read_from_the_low_byte_of_its_code() {
        assert!(matches!(of_code(Some("517"), ""), Wrong::Locked), "SQLITE_BUSY_SNAPSHOT");
        assert!(matches!(of_code(Some("1032"), ""), Wrong::ReadOnly), "SQLITE_READONLY_DBMOVED");
        assert!(matches!(of_code(Some("267"), ""), Wrong::Damaged { .. }), "SQLITE_CORRUPT_VTAB");
        assert!(matches!(of_code(Some("13"), ""), Wrong::Full));
        assert!(matches!(of_code(None, ""), Wrong::Refused { .. }));
    }
}
