//! Wrong pass phrases make the next try wait: from one address, and from all together.

use std::collections::HashMap;
use std::net::{IpAddr, Ipv6Addr};
use std::time::{Duration, Instant};

/// Addresses remembered; the one that was wrong longest ago makes room.
const MOST: usize = 1_024;
/// After so long without a wrong one, all is forgotten.
const FORGOTTEN: Duration = Duration::from_secs(3_600);
/// One address: from how many wrong ones it waits, and the longest wait.
const ONE: Limit = Limit { begins: 4, longest: Duration::from_secs(900) };
/// All addresses: the longest wait is short, so that nobody can shut the keeper out for long.
const ALL: Limit = Limit { begins: 24, longest: Duration::from_secs(20) };

struct Limit {
    begins: u32,
    longest: Duration,
}

#[derive(Debug, Clone, Copy)]
struct Tries {
    wrong: u32,
    last: Instant,
}

impl Tries {
    /// How long to wait still: one second at first, then twice as long each time.
    fn wait(self, limit: &Limit, now: Instant) -> Option<Duration> {
        let over = self.wrong.checked_sub(limit.begins)?;
        let wait = Duration::from_secs(1 << over.min(16)).min(limit.longest);
        let since = now.saturating_duration_since(self.last);
        wait.checked_sub(since).filter(|left| !left.is_zero())
    }

    fn more(before: Option<Self>, now: Instant) -> Self {
        let kept = before.filter(|before| now.saturating_duration_since(before.last) < FORGOTTEN);
        Self { wrong: kept.map_or(1, |kept| kept.wrong.saturating_add(1)), last: now }
    }
}

/// Who was wrong, how often and when.
#[derive(Default)]
pub(super) struct Patience {
    of: HashMap<IpAddr, Tries>,
    all: Option<Tries>,
}

impl Patience {
    /// How long an address must wait before its next try; none if it may try now.
    pub(super) fn wait(&self, from: IpAddr, now: Instant) -> Option<Duration> {
        let one = self.of.get(&network(from)).and_then(|tries| tries.wait(&ONE, now));
        let all = self.all.and_then(|tries| tries.wait(&ALL, now));
        one.max(all)
    }

    /// A wrong one.
    pub(super) fn wrong(&mut self, from: IpAddr, now: Instant) {
        let from = network(from);
        self.all = Some(Tries::more(self.all, now));
        if self.of.len() >= MOST && !self.of.contains_key(&from) {
            let oldest = self.of.iter().min_by_key(|(_, tries)| tries.last).map(|(address, _)| *address);
            oldest.and_then(|oldest| self.of.remove(&oldest));
        }
        let tries = Tries::more(self.of.get(&from).copied(), now);
        self.of.insert(from, tries);
    }

    /// The right one: this address is trusted again.
    pub(super) fn right(&mut self, from: IpAddr) {
        self.of.remove(&network(from));
    }
}

/// An IPv6 host has a whole /64 of addresses to try from.
fn network(address: IpAddr) -> IpAddr {
    match address.to_canonical() {
        IpAddr::V6(v6) => IpAddr::V6(Ipv6Addr::from_bits(v6.to_bits() >> 64 << 64)),
        v4 => v4,
    }
}

#[cfg(test)]
mod tests {
    use super::{ALL, FORGOTTEN, MOST, ONE, Patience};
    use std::net::{IpAddr, Ipv4Addr, Ipv6Addr};
    use std::time::{Duration, Instant};

    const PHONE: IpAddr = IpAddr::V4(Ipv4Addr::new(192, 168, 1, 20));
    const LAPTOP: IpAddr = IpAddr::V4(Ipv4Addr::new(192, 168, 1, 21));

    #[test]
    fn the_wait_doubles_and_ends_and_touches_nobody_else() {
        let (mut patience, start) = (Patience::default(), Instant::now());
        for _ in 1..ONE.begins {
            patience.wrong(PHONE, start);
        }
        assert_eq!(patience.wait(PHONE, start), None);
        for seconds in [1, 2, 4, 8] {
            patience.wrong(PHONE, start);
            assert_eq!(patience.wait(PHONE, start), Some(Duration::from_secs(seconds)));
        }
        assert_eq!(patience.wait(PHONE, start + Duration::from_secs(8)), None);
        assert_eq!(patience.wait(LAPTOP, start), None);
        patience.right(PHONE);
        assert_eq!(patience.wait(PHONE, start), None);
    }

    #[test]
    fn nobody_waits_longer_than_the_longest_and_all_is_forgotten() {
        let (mut patience, start) = (Patience::default(), Instant::now());
        (0..100).for_each(|_| patience.wrong(PHONE, start));
        assert_eq!(patience.wait(PHONE, start), Some(ONE.longest));
        assert_eq!(patience.wait(LAPTOP, start), Some(ALL.longest), "all together");
        patience.wrong(PHONE, start + FORGOTTEN);
        assert_eq!(patience.wait(PHONE, start + FORGOTTEN), None);
    }

    #[test]
    fn a_network_counts_once_and_memory_is_bounded() {
        let (mut patience, start) = (Patience::default(), Instant::now());
        for last in 1..=5 {
            patience.wrong(Ipv6Addr::new(0xfd00, 0, 0, 1, 0, 0, 0, last).into(), start);
        }
        assert!(patience.wait(Ipv6Addr::new(0xfd00, 0, 0, 1, 9, 9, 9, 9).into(), start).is_some());
        for host in 0..2 * MOST as u32 {
            patience.wrong(Ipv4Addr::from_bits(0x0a00_0000 + host).into(), start);
        }
        assert!(patience.of.len() <= MOST);
    }
}
