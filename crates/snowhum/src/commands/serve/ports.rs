//! Ports listened on.

use std::net::{IpAddr, Ipv4Addr};

use snowhum_say::{Message, serve_terminal as say};
use tokio::net::TcpListener;

use crate::exit;

/// Ports tried after the one wanted, when nobody asked for one.
const NEXT_PORTS: u16 = 20;
const USUAL_PORT: u16 = 8462;

/// This machine alone: at the port asked for, else at the usual one or the next that is free.
pub(in crate::commands) async fn here(port: Option<u16>) -> anyhow::Result<TcpListener> {
    let ports = port.map_or(USUAL_PORT..=USUAL_PORT + NEXT_PORTS, |port| port..=port);
    let mut refused = None;
    for port in ports {
        match TcpListener::bind((Ipv4Addr::LOCALHOST, port)).await {
            Ok(listener) => return Ok(listener),
            Err(error) => refused = Some(refusal(port, &error)),
        }
    }
    Err(exit::failed(refused.unwrap_or_else(say::no_port)))
}

/// These addresses alone, all at one port: no other address of this machine answers.
pub(super) async fn on(addresses: &[IpAddr], port: Option<u16>) -> anyhow::Result<(Vec<TcpListener>, u16)> {
    first_free(addresses, port.map_or(USUAL_PORT..=USUAL_PORT + NEXT_PORTS, |port| port..=port)).await
}

/// The same at the next port that is free.
pub(super) async fn on_after(addresses: &[IpAddr], port: u16) -> anyhow::Result<(Vec<TcpListener>, u16)> {
    let next = port.saturating_add(1);
    first_free(addresses, next..=next.saturating_add(NEXT_PORTS)).await
}

async fn first_free(
    addresses: &[IpAddr],
    ports: std::ops::RangeInclusive<u16>,
) -> anyhow::Result<(Vec<TcpListener>, u16)> {
    let mut refused = None;
    for port in ports {
        match each(addresses, port).await {
            Ok(listening) => return Ok(listening),
            Err(error) => refused = Some(refusal(port, &error)),
        }
    }
    Err(exit::failed(refused.unwrap_or_else(say::no_port)))
}

/// An address that cannot be listened on, as one of IPv6 where that is off, is left out.
async fn each(addresses: &[IpAddr], mut port: u16) -> std::io::Result<(Vec<TcpListener>, u16)> {
    let (mut listening, mut refused) = (Vec::new(), std::io::Error::from(std::io::ErrorKind::AddrNotAvailable));
    for address in addresses {
        match TcpListener::bind((*address, port)).await {
            Ok(listener) => {
                port = listener.local_addr()?.port();
                listening.push(listener);
            }
            Err(error) if error.kind() == std::io::ErrorKind::AddrInUse => return Err(error),
            Err(error) => refused = error,
        }
    }
    if listening.is_empty() { Err(refused) } else { Ok((listening, port)) }
}

fn refusal(port: u16, error: &std::io::Error) -> Message {
    say::port(port.to_string(), error.to_string())
}

#[cfg(test)]
mod tests {
    use super::on;
    use std::net::{IpAddr, Ipv4Addr, Ipv6Addr};

    #[test]
    fn the_addresses_named_are_listened_on_at_one_port_and_no_others() {
        let here = [IpAddr::V4(Ipv4Addr::LOCALHOST), IpAddr::V6(Ipv6Addr::LOCALHOST), "192.0.2.1".parse().unwrap()];
        tokio::runtime::Builder::new_current_thread().enable_io().build().unwrap().block_on(async {
            let (listening, port) = on(&here, Some(0)).await.unwrap();
            let at: Vec<_> = listening.iter().map(|one| one.local_addr().unwrap()).collect();
            assert!(at.iter().all(|at| at.port() == port && here[..2].contains(&at.ip())), "{at:?}");
            assert!(on(&here, Some(port)).await.is_err(), "taken");
        });
    }
}
