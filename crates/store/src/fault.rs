//! What can go wrong with a store, and what the keeper can do.

use snowhum_say::{Message, Tongue, store as say};
use std::io;
use std::path::Path;

/// Something went wrong with a store or with a file that goes in or out of it.
#[derive(Debug, thiserror::Error)]
#[error("{}", Tongue::BRITISH.say(&self.message()))]
pub struct Fault {
    /// The file it is about.
    pub place: String,
    /// What is wrong, and what to do.
    pub wrong: Wrong,
}

/// What is wrong, with what to do about it.
#[derive(Debug, thiserror::Error)]
#[error("{}", Tongue::BRITISH.say(&self.message()))]
pub enum Wrong {
    /// The file or its folder cannot be written.
    ReadOnly,
    /// No room.
    Full,
    /// Somebody else writes.
    Locked,
    /// Not a database.
    NotADatabase,
    /// A database, but not ours.
    OtherProgram,
    /// It holds what no store holds.
    Foreign {
        /// Its kind and name.
        what: String,
    },
    /// It took too long.
    TooLong,
    /// Written by a newer program.
    Newer {
        /// Form of the store.
        found: i64,
        /// Newest form this program knows.
        known: i64,
    },
    /// The file is damaged.
    Damaged {
        /// Where.
        what: Message,
    },
    /// Rows of it are not in order.
    NotInOrder {
        /// What, and how.
        what: Message,
    },
    /// A store that must be there is not.
    Missing,
    /// A file that must not be there is.
    AlreadyThere,
    /// The disk says no.
    Disk {
        /// What the system says.
        what: Message,
    },
    /// Everything can only go into an empty store.
    NotEmpty,
    /// A file to be read in is not in order.
    Unreadable {
        /// Line or entry.
        at: Box<Message>,
        /// What is wrong.
        what: Message,
        /// What would be right, as the text names it.
        form: &'static str,
    },
    /// A value that cannot be kept as it is.
    Unfit {
        /// Which, as the text names it.
        field: &'static str,
        /// What is wrong.
        what: Message,
        /// What would be right, as the text names it.
        right: &'static str,
    },
    /// A note nobody made.
    NoSuchNote {
        /// Its id.
        id: String,
    },
    /// A hive or colony stands in another yard.
    InAnotherYard {
        /// `hive` or `colony`.
        what: &'static str,
        /// Its name.
        name: String,
    },
    /// Anything else the database says.
    Refused {
        /// In its words.
        what: String,
    },
}

impl Fault {
    /// What is wrong where, and what to do.
    #[must_use]
    pub fn message(&self) -> Message {
        say::fault(&self.place, self.wrong.message())
    }

    pub(crate) fn new(place: impl Into<String>, wrong: Wrong) -> Self {
        Self { place: place.into(), wrong }
    }

    pub(crate) fn about(file: &Path, wrong: impl Into<Wrong>) -> Self {
        Self::new(file.display().to_string(), wrong.into())
    }
}

impl Wrong {
    /// What is wrong, and what to do. How a row is not made as it should be and what a database answers stay in English: they are
    /// for who looks after the program.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::ReadOnly => say::read_only(),
            Self::Full => say::full(),
            Self::Locked => say::locked(),
            Self::NotADatabase => say::no_database(),
            Self::OtherProgram => say::other_program(),
            Self::Foreign { what } => say::foreign(what),
            Self::TooLong => say::too_long(),
            Self::Newer { found, known } => say::newer(*found, *known),
            Self::Damaged { what } => say::damaged(what),
            Self::NotInOrder { what } => say::not_in_order(what),
            Self::Missing => say::missing(),
            Self::AlreadyThere => say::already_there(),
            Self::Disk { what } => say::disk(what),
            Self::NotEmpty => say::not_empty(),
            Self::Unreadable { at, what, form } => say::unreadable(&**at, form, what),
            Self::Unfit { field, what, right } => say::unfit(field, right, what),
            Self::NoSuchNote { id } => say::no_such_note(id),
            Self::InAnotherYard { what, name } => say::in_another_yard(name, what),
            Self::Refused { what } => say::refused(what),
        }
    }

    pub(crate) fn damaged(what: impl Into<Message>) -> Self {
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
        Some(10 | 14) => Wrong::Disk { what: message.into() },
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
        _ => Wrong::Disk { what: error.to_string().into() },
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
