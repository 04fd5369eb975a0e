//! Networks of one's own: who in them is served, and who else is not.

use std::net::{IpAddr, Ipv4Addr, Ipv6Addr};

/// Networks that no router leads on from, with the bits that name them: RFC 1918, RFC 3927, RFC 4193, RFC 4291,
/// RFC 6598.
pub const NETWORKS: [(IpAddr, u8); 9] = [
    (IpAddr::V4(Ipv4Addr::new(10, 0, 0, 0)), 8),
    (IpAddr::V4(Ipv4Addr::new(172, 16, 0, 0)), 12),
    (IpAddr::V4(Ipv4Addr::new(192, 168, 0, 0)), 16),
    (IpAddr::V4(Ipv4Addr::new(169, 254, 0, 0)), 16),
    (IpAddr::V4(Ipv4Addr::new(100, 64, 0, 0)), 10),
    (IpAddr::V4(Ipv4Addr::new(127, 0, 0, 0)), 8),
    (IpAddr::V6(Ipv6Addr::new(0xfc00, 0, 0, 0, 0, 0, 0, 0)), 7),
    (IpAddr::V6(Ipv6Addr::new(0xfe80, 0, 0, 0, 0, 0, 0, 0)), 10),
    (IpAddr::V6(Ipv6Addr::LOCALHOST), 128),
];

/// Whether an address is of a network of one's own.
#[must_use]
pub fn is_own_network(address: IpAddr) -> bool {
    NETWORKS.iter().any(|(network, bits)| match (network, address.to_canonical()) {
        (IpAddr::V4(network), IpAddr::V4(address)) => (network.to_bits() ^ address.to_bits()) >> (32 - bits) == 0,
        (IpAddr::V6(network), IpAddr::V6(address)) => (network.to_bits() ^ address.to_bits()) >> (128 - bits) == 0,
        _ => false,
    })
}

/// Whether a connection to `local` from `peer` is served. A device with IPv6 may speak from its address in the open
/// internet to one of the house; with IPv4 it cannot, so that such a peer came through a router.
pub(crate) fn is_served(local: IpAddr, peer: IpAddr) -> bool {
    is_own_network(local) && (is_own_network(peer) || peer.to_canonical().is_ipv6())
}

#[cfg(test)]
mod tests {
    use super::{is_own_network, is_served};

    #[test]
    fn only_networks_of_ones_own_are_served() {
        for own in ["192.168.1.5", "10.0.0.1", "172.31.255.255", "169.254.3.4", "100.64.0.1", "fd12::1", "127.0.0.1"] {
            assert!(is_own_network(own.parse().unwrap()), "{own}");
        }
        for open in ["172.32.0.1", "8.8.8.8", "100.128.0.1", "2001:db8::1", "192.169.0.1"] {
            assert!(!is_own_network(open.parse().unwrap()), "{open}");
        }
    }

    #[test]
    fn a_connection_to_an_open_address_or_through_a_router_is_not_served() {
        let served = |local: &str, peer: &str| is_served(local.parse().unwrap(), peer.parse().unwrap());
        assert!(served("192.168.1.5", "192.168.1.20") && served("::ffff:10.0.0.1", "::ffff:10.0.0.2"));
        assert!(served("fd12::1", "2001:db8::7"), "a phone of the house");
        assert!(!served("8.8.8.8", "192.168.1.20") && !served("2001:db8::1", "fd12::1"), "an open address");
        assert!(!served("192.168.1.5", "8.8.8.8") && !served("::ffff:10.0.0.1", "::ffff:8.8.8.8"), "through a router");
    }
}
