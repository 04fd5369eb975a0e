//! What is said to a keeper. A [`Message`] is a name and its facts, in SI and in no language; a [`Tongue`] puts it into
//! words. The texts lie in `messages/`, a folder a language, a file a topic; each message there is a function here, in the
//! module of its topic, and takes its facts in the order of their names.
//!
//! ```
//! use jiff::civil::date;
//! use snowhum_say::{Language, Tongue, words};
//! use snowhum_units::System;
//! let by = words::by(date(2026, 2, 7));
//! assert_eq!(Tongue::BRITISH.say(&by), "by 7 February");
//! assert_eq!(Tongue::BRITISH.sentence(&by), "By 7 February.");
//! assert_eq!(Tongue::new(System::Metric).in_language(Language::German).say(&by), "bis zum 7. Februar");
//! ```

mod chance;
mod fact;
mod functions;
mod language;
mod message;
mod of_units;
mod tongue;

pub use chance::{both_ways, hives, in_hundred};
pub use fact::{Fact, Number};
pub use language::Language;
pub use message::{Message, Text};
pub use of_units::{against, unread, usual};
pub use tongue::{Tongue, capital, sentence};

include!(concat!(env!("OUT_DIR"), "/messages.rs"));
