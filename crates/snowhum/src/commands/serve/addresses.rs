//! Names and addresses of this machine in its own network.

use std::net::{IpAddr, Ipv4Addr, Ipv6Addr};

use crate::exit;
use snowhum_web::is_own_network;

/// What this machine is called and reached by.
pub(super) struct Own {
    /// Its name, lower case; none if it has none that can stand in an address.
    pub(super) host: Option<String>,
    /// Addresses in networks of one's own, the likeliest for a phone first.
    pub(super) addresses: Vec<IpAddr>,
    /// Addresses that are not served.
    pub(super) left_out: Vec<IpAddr>,
}

impl Own {
    /// Asks the system.
    pub(super) fn look() -> anyhow::Result<Self> {
        let all = if_addrs::get_if_addrs().map_err(exit::environment)?;
        let all = all.iter().filter(|interface| !interface.is_loopback()).map(if_addrs::Interface::ip);
        // An address with a zone cannot stand in a browser's line.
        let (mut addresses, left_out): (Vec<_>, Vec<_>) =
            all.filter(|ip| !is_link_local_6(*ip)).partition(|ip| is_own_network(*ip));
        addresses.sort_by_key(|ip| (rank(*ip), *ip));
        addresses.dedup();
        let host = gethostname::gethostname().to_string_lossy().to_ascii_lowercase();
        let host = host.split('.').next().unwrap_or_default().to_owned();
        Ok(Self { host: Some(host).filter(|host| is_name(host)), addresses, left_out })
    }

    /// As they stand in an address, addresses before names; this machine's own if there is no other.
    pub(super) fn names(&self) -> Vec<String> {
        let addresses = self.addresses.iter().map(|ip| match ip {
            IpAddr::V4(ip) => ip.to_string(),
            IpAddr::V6(ip) => format!("[{ip}]"),
        });
        let names: Vec<String> = addresses.chain(self.host_names()).collect();
        if names.is_empty() { vec!["127.0.0.1".to_owned()] } else { names }
    }

    /// This machine itself and its addresses in networks of one's own.
    pub(super) fn listened_on(&self) -> Vec<IpAddr> {
        let itself = [IpAddr::V4(Ipv4Addr::LOCALHOST), IpAddr::V6(Ipv6Addr::LOCALHOST)];
        itself.into_iter().chain(self.addresses.iter().copied()).collect()
    }

    /// The host's name, as the network's own name service gives it and bare.
    pub(super) fn host_names(&self) -> Vec<String> {
        self.host.iter().flat_map(|host| [format!("{host}.local"), host.clone()]).collect()
    }
}

/// House networks first, then those of containers, tunnels and no server at all: a phone is in the first.
fn rank(ip: IpAddr) -> usize {
    const FIRST: [u8; 5] = [192, 10, 172, 100, 169];
    match ip {
        IpAddr::V4(ip) => FIRST.iter().position(|first| *first == ip.octets()[0]).unwrap_or(FIRST.len()),
        IpAddr::V6(_) => FIRST.len() + 1,
    }
}

/// A label of a host's name (RFC 1123).
fn is_name(host: &str) -> bool {
    let is_letter = |byte: u8| byte.is_ascii_alphanumeric() || byte == b'-';
    (1..=63).contains(&host.len())
        && host.bytes().all(is_letter)
        && !host.starts_with('-')
        && !host.ends_with('-')
        && host != "localhost"
        && host.bytes().any(|byte| byte.is_ascii_alphabetic())
}

fn is_link_local_6(ip: IpAddr) -> bool {
    matches!(ip, IpAddr::V6(ip) if ip.is_unicast_link_local())
}

#[cfg(test)]
mod tests {
    use super::{Own, is_name};

    #[test]
    fn a_host_is_named_as_browsers_write_it() {
        let own = Own {
            host: Some("shed".to_owned()),
            addresses: vec!["192.168.1.5".parse().unwrap(), "fd12::1".parse().unwrap()],
            left_out: Vec::new(),
        };
        assert_eq!(own.names(), ["192.168.1.5", "[fd12::1]", "shed.local", "shed"]);
        assert!(is_name("bee-shed") && !is_name("") && !is_name("a b") && !is_name("-a") && !is_name("12"));
    }
}
