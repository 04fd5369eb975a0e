//! A word on stderr about work that takes longer than half a second.

use std::sync::mpsc::{RecvTimeoutError, channel};
use std::time::Duration;

const PATIENCE: Duration = Duration::from_millis(500);

/// Does `work`; if it takes longer than half a second, says `what` on stderr.
#[expect(clippy::print_stderr, reason = "progress goes to stderr")]
pub(crate) fn during<T>(what: &str, work: impl FnOnce() -> T) -> T {
    let (done, waiting) = channel::<()>();
    std::thread::scope(|scope| {
        scope.spawn(move || {
            if waiting.recv_timeout(PATIENCE) == Err(RecvTimeoutError::Timeout) {
                eprintln!("{what} …");
            }
        });
        let result = work();
        drop(done);
        result
    })
}

/// Says something about an answer, on stderr.
#[expect(clippy::print_stderr, reason = "messages to the keeper go to stderr")]
pub(crate) fn note(text: &str) {
    eprintln!("{}", crate::text::message(text));
}

/// Shows a picture in words, on stdout.
#[expect(clippy::print_stdout, reason = "what a camera looks at is no message")]
pub(crate) fn show(text: &str) {
    print!("{text}");
}
