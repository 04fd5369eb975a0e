//! A test that never ends is ended, so that the others' summary is still told.

use std::process::Command;
use std::sync::mpsc::{RecvTimeoutError, Sender, channel};
use std::time::Duration;

/// Longest that no line comes from the tests, which are built by then.
const QUIET: Duration = Duration::from_secs(20 * 60);

/// Ends a group of processes when no sign of life is given for too long, until it is dropped.
pub(super) struct Patience(Sender<()>);

impl Patience {
    /// Watches the group that a process leads.
    pub(super) fn with_group(leader: u32) -> Self {
        let (alive, heard) = channel();
        std::thread::spawn(move || {
            loop {
                match heard.recv_timeout(QUIET) {
                    Ok(()) => {}
                    Err(RecvTimeoutError::Disconnected) => return,
                    Err(RecvTimeoutError::Timeout) => break,
                }
            }
            println!("nothing was printed for {} minutes: a test hangs, and all are ended", QUIET.as_secs() / 60);
            // A kill that fails finds nothing left to end.
            let _ = Command::new("kill").args(["-9", "--", &format!("-{leader}")]).status();
        });
        Self(alive)
    }

    /// A line was printed.
    pub(super) fn heard(&self) {
        // The watch has ended only where it has ended the tests.
        let _ = self.0.send(());
    }
}
