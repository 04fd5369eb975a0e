//! What can go wrong with a club's records, and what to do.

use snowhum_say::{Message, Tongue, club_fault as say};
use std::io;

/// What is wrong, with what to do about it.
#[derive(Debug, thiserror::Error)]
#[error("{}", Tongue::BRITISH.say(&self.message()))]
pub enum Fault {
    /// No connection.
    Unreachable {
        /// What the system says.
        what: String,
    },
    /// An address that is none.
    Address {
        /// Why not.
        what: String,
    },
    /// Written by a newer program.
    Newer {
        /// Form of the records.
        found: i64,
        /// Newest form this program knows.
        known: i64,
    },
    /// There is no such thing.
    NoSuch {
        /// Its kind.
        what: &'static str,
        /// What was asked for.
        name: String,
    },
    /// A yard of another member.
    NotTheirs {
        /// Its name.
        name: String,
    },
    /// Everything can only go into an empty club.
    NotEmpty,
    /// An export that is not in order.
    Unreadable {
        /// Which.
        line: usize,
        /// What is wrong.
        what: String,
    },
    /// A row that is not what was written.
    Damaged {
        /// Where.
        what: String,
    },
    /// A file of an export.
    File(#[from] io::Error),
    /// Anything else the database says.
    Refused {
        /// In its words.
        what: String,
    },
}

impl Fault {
    /// What is wrong, and what to do. What a database answers, and which row is damaged, stay in English: they are for who looks
    /// after the program.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Unreachable { what } => say::unreachable(what),
            Self::Address { what } => say::address(what),
            Self::Newer { found, known } => say::newer(*found, *known),
            Self::NoSuch { what, name } => say::no_such(name, what),
            Self::NotTheirs { name } => say::not_theirs(name),
            Self::NotEmpty => say::not_empty(),
            Self::Unreadable { line, what } => say::unreadable(*line, what),
            Self::Damaged { what } => say::damaged(what),
            Self::File(error) => say::file(error.to_string()),
            Self::Refused { what } => say::refused(what),
        }
    }
}

impl From<sqlx::Error> for Fault {
    fn from(error: sqlx::Error) -> Self {
        let what = error.to_string();
        match error {
            sqlx::Error::Configuration(_) => Self::Address { what },
            sqlx::Error::Io(_) | sqlx::Error::Tls(_) | sqlx::Error::PoolTimedOut | sqlx::Error::PoolClosed => {
                Self::Unreachable { what }
            }
            sqlx::Error::ColumnDecode { .. } | sqlx::Error::Decode(_) => Self::Damaged { what },
            _ => Self::Refused { what },
        }
    }
}
