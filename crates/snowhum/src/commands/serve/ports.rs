//! Ports listened on.

use std::net::{IpAddr, Ipv4Addr, Ipv6Addr};
use tokio::net::TcpListener;

use crate::exit;

/// Ports tried after the one wanted, when nobody asked for one.
const NEXT_PORTS: u16 = 20;
const USUAL_PORT: u16 = 8462;

/// This machine alone: at the port asked for, else at the usual one or the next that is free.
pub(super) async fn here(port: Option<u16>) -> anyhow::Result<TcpListener> {
    let ports = port.map_or(USUAL_PORT..=USUAL_PORT + NEXT_PORTS, |port| port..=port);
    let mut refused = None;
    for port in ports {
        match TcpListener::bind((Ipv4Addr::LOCALHOST, port)).await {
            Ok(listener) => return Ok(listener),
            Err(error) => refused = Some(refusal(port, &error)),
        }
    }
    Err(exit::environment(refused.unwrap_or_else(|| "no port to listen on".to_owned())))
}

/// Every address of this machine, by IPv6 and IPv4 where there is either.
pub(super) async fn everywhere(port: Option<u16>) -> anyhow::Result<(Vec<TcpListener>, u16)> {
    first_free(port.map_or(USUAL_PORT..=USUAL_PORT + NEXT_PORTS, |port| port..=port)).await
}

/// The same at the next port that is free.
pub(super) async fn everywhere_after(port: u16) -> anyhow::Result<(Vec<TcpListener>, u16)> {
    let next = port.saturating_add(1);
    first_free(next..=next.saturating_add(NEXT_PORTS)).await
}

async fn first_free(ports: std::ops::RangeInclusive<u16>) -> anyhow::Result<(Vec<TcpListener>, u16)> {
    let mut refused = None;
    for port in ports {
        match both(port).await {
            Ok(listening) => return Ok(listening),
            Err(error) => refused = Some(refusal(port, &error)),
        }
    }
    Err(exit::environment(refused.unwrap_or_else(|| "no port to listen on".to_owned())))
}

/// Where one socket takes both kinds of address the second is refused, and not needed.
async fn both(port: u16) -> std::io::Result<(Vec<TcpListener>, u16)> {
    let six = TcpListener::bind((IpAddr::V6(Ipv6Addr::UNSPECIFIED), port)).await;
    let port = six.as_ref().ok().and_then(|six| six.local_addr().ok()).map_or(port, |address| address.port());
    let four = TcpListener::bind((IpAddr::V4(Ipv4Addr::UNSPECIFIED), port)).await;
    match (six, four) {
        (Ok(six), Ok(four)) => Ok((vec![six, four], port)),
        (Ok(six), Err(_)) => Ok((vec![six], port)),
        (Err(_), Ok(four)) => {
            let port = four.local_addr()?.port();
            Ok((vec![four], port))
        }
        (Err(error), Err(_)) => Err(error),
    }
}

fn refusal(port: u16, error: &std::io::Error) -> String {
    format!("port {port}: {error}; choose another with --port")
}
