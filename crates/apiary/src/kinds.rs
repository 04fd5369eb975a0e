//! What can be noted, as lists that cannot be short.

use crate::ColonyId;
use snowhum_units::Bare;

/// A note as a keeper wrote it: `what=how`.
pub(crate) struct Told<'t> {
    pub(crate) what: &'t str,
    pub(crate) how: &'t str,
    /// Finds a colony by its name.
    pub(crate) colony: &'t dyn Fn(&str) -> Option<ColonyId>,
    pub(crate) bare: Bare,
}

/// The word an example begins with.
pub(crate) fn word_of(example: &str) -> &str {
    example.split_once('=').map_or(example, |(word, _)| word)
}

/// The kinds of what can be noted, each with an example at least, which begins with its word, and with what reads it. A kind
/// that is missing here does not compile, nor one of which a match over the kinds says nothing.
macro_rules! kinds {
    ($(#[$about:meta])* $kinds:ident of $noted:ident: $($kind:ident: $($example:literal),+ => $read:expr;)+) => {
        $(#[$about])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
        pub enum $kinds {
            $(#[doc = concat!("Of [`", stringify!($noted), "::", stringify!($kind), "`].")] $kind,)+
        }

        impl $kinds {
            /// All of them.
            pub const ALL: &'static [Self] = &[$(Self::$kind),+];

            /// As a keeper writes it.
            #[must_use]
            pub const fn examples(self) -> &'static [&'static str] {
                match self { $(Self::$kind => &[$($example),+],)+ }
            }

            /// The word it begins with, the usual one where there are several.
            #[must_use]
            pub fn word(self) -> &'static str {
                $crate::kinds::word_of(self.examples()[0])
            }

            /// The kind of which an example begins with this word.
            pub(super) fn of_word(word: &str) -> Option<Self> {
                let begins = |example: &&str| $crate::kinds::word_of(example) == word;
                Self::ALL.iter().copied().find(|kind| kind.examples().iter().any(begins))
            }

            pub(super) fn read(self, told: &$crate::kinds::Told<'_>) -> Result<$noted, $crate::wrong::Wrong> {
                let read: fn(&$crate::kinds::Told<'_>) -> _ = match self { $(Self::$kind => $read,)+ };
                read(told)
            }
        }

        impl $noted {
            /// Its kind.
            #[must_use]
            pub const fn kind(&self) -> $kinds {
                match self { $(Self::$kind { .. } => $kinds::$kind,)+ }
            }
        }
    };
}

pub(crate) use kinds;
