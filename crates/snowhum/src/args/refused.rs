//! What is wrong with arguments, in the keeper's words.

use clap::Error;
use clap::error::{ContextKind, ErrorKind};
use snowhum_say::{Message, arguments_terminal as text};
use std::error::Error as _;
use std::num::ParseIntError;

/// What is wrong; none where help itself is what is shown.
pub(crate) fn message(error: &Error) -> Option<Message> {
    let of = |kind| error.get(kind).map(ToString::to_string).unwrap_or_default();
    let (given, value, prior) = (of(ContextKind::InvalidArg), of(ContextKind::InvalidValue), of(ContextKind::PriorArg));
    let says = match error.kind() {
        ErrorKind::UnknownArgument => text::unknown(given),
        ErrorKind::InvalidSubcommand => text::no_command(of(ContextKind::InvalidSubcommand)),
        ErrorKind::InvalidValue if value.is_empty() => text::no_value(given),
        ErrorKind::InvalidValue => text::no_choice(given, of(ContextKind::ValidValue), value),
        ErrorKind::ValueValidation => text::unread(given, why(error, value)?),
        ErrorKind::ArgumentConflict if prior.is_empty() || prior == given => text::twice(given),
        ErrorKind::ArgumentConflict => text::conflict(given, prior),
        ErrorKind::MissingSubcommand => text::which(),
        ErrorKind::MissingRequiredArgument => text::missing(given),
        _ => return None,
    };
    let near = [ContextKind::SuggestedArg, ContextKind::SuggestedSubcommand, ContextKind::SuggestedValue];
    let near = near.into_iter().find_map(|kind| error.get(kind)).map(|near| text::nearest(near.to_string()));
    Some(Message::lines([Some(says), near, Some(text::more())].into_iter().flatten()))
}

/// Why a value cannot be read: in the words of its reader, but for whole numbers, which clap reads.
fn why(error: &Error, value: String) -> Option<Message> {
    let source = error.source()?;
    let told = source.to_string();
    Some(match told.split_once(" is not in ") {
        Some((_, range)) => text::outside(range, value),
        None if source.is::<ParseIntError>() => text::no_whole_number(value),
        None => told.into(),
    })
}
