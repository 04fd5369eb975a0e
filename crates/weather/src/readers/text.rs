//! Bytes as text, and text as it is shown in a message.

use std::borrow::Cow;

/// Bytes as text: UTF-8 without its mark, else Latin-1.
pub(super) fn text(bytes: &[u8]) -> Cow<'_, str> {
    let bytes = bytes.strip_prefix(b"\xef\xbb\xbf").unwrap_or(bytes);
    match std::str::from_utf8(bytes) {
        Ok(text) => Cow::Borrowed(text),
        Err(_) => Cow::Owned(bytes.iter().map(|byte| char::from(*byte)).collect()),
    }
}

/// At most forty characters of what was found, for a message.
pub(super) fn shown(text: &str) -> String {
    let cut: String = text.trim().chars().take(40).filter(|c| !c.is_control()).collect();
    if text.trim().chars().count() > 40 { format!("{cut}…") } else { cut }
}
