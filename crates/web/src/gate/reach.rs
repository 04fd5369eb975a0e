//! Under which names a server is reached, and what its gate keeps in mind.

use std::net::IpAddr;
use std::sync::Mutex;
use tokio::sync::Semaphore;

use super::patience::Patience;

/// Pass phrases that wait to be tried; more are sent away.
const MOST_WAITING: usize = 8;

/// Under which names the pages are served, and whether one must sign in.
#[derive(Debug, Clone)]
pub struct Reach {
    names: Vec<String>,
    is_network: bool,
}

impl Reach {
    /// This machine alone, where nobody signs in.
    #[must_use]
    pub fn this_machine() -> Self {
        Self { names: ["127.0.0.1", "localhost", "[::1]"].map(str::to_owned).to_vec(), is_network: false }
    }

    /// The network around it, encrypted and behind a pass phrase, under these names and addresses (of IPv6 in brackets)
    /// beside those of the machine itself.
    #[must_use]
    pub fn network(names: impl IntoIterator<Item = String>) -> Self {
        let own = Self::this_machine().names;
        let names = own.into_iter().chain(names.into_iter().map(|name| name.to_ascii_lowercase())).collect();
        Self { names, is_network: true }
    }

    /// Whether it is more than this machine: encrypted, and one must sign in.
    #[must_use]
    pub fn is_network(&self) -> bool {
        self.is_network
    }

    /// Whether a request's own word for this server is one of its names. A page of another name that was made to
    /// point here is refused.
    pub(crate) fn is_own(&self, host: &str) -> bool {
        let name = without_port(host);
        self.names.iter().any(|own| own.eq_ignore_ascii_case(name))
    }

    pub(crate) fn scheme(&self) -> &'static str {
        if self.is_network { "https" } else { "http" }
    }
}

fn without_port(host: &str) -> &str {
    match host.rsplit_once(':') {
        Some((name, port)) if !port.is_empty() && port.bytes().all(|digit| digit.is_ascii_digit()) => name,
        _ => host,
    }
}

/// The gate of one server.
pub(crate) struct Gate {
    pub(crate) reach: Reach,
    pub(super) patience: Mutex<Patience>,
    /// One pass phrase is tried at a time: each try takes 19 MiB and some hundredths of a second.
    pub(super) turn: Semaphore,
    pub(super) waiting: Semaphore,
}

impl Gate {
    pub(crate) fn new(reach: Reach) -> Self {
        let patience = Mutex::new(Patience::default());
        Self { reach, patience, turn: Semaphore::new(1), waiting: Semaphore::new(MOST_WAITING) }
    }
}

/// From which address a request comes.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Peer(pub(crate) IpAddr);
