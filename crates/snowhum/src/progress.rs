//! A word on stderr about work that takes longer than half a second.

use snowhum_say::Message;
use std::io::Write;
use std::sync::mpsc::{RecvTimeoutError, channel};
use std::time::Duration;

use crate::text::voice::in_words;

const PATIENCE: Duration = Duration::from_millis(500);

/// Does `work`; if it takes longer than half a second, says `what` on stderr.
pub(crate) fn during<T>(what: Message, work: impl FnOnce() -> T) -> T {
    let (done, waiting) = channel::<()>();
    std::thread::scope(|scope| {
        scope.spawn(move || {
            if waiting.recv_timeout(PATIENCE) == Err(RecvTimeoutError::Timeout) {
                note(what);
            }
        });
        let result = work();
        drop(done);
        result
    })
}

/// Says something to the keeper, on stderr, broken to the page.
pub(crate) fn note(text: impl Into<Message>) {
    as_it_is(&crate::text::message(&in_words(&text.into())));
}

/// A line on stderr. Where nobody reads there any more, nothing is lost by going on.
pub(crate) fn as_it_is(text: &str) {
    let _ = writeln!(std::io::stderr(), "{text}");
}

/// Shows a picture in words, on stdout.
pub(crate) fn show(text: &str) {
    let _ = write!(std::io::stdout(), "{text}");
}
