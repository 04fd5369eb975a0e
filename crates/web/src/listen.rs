//! Connections: encrypted or not, bounded in number and in time, so that nobody who is slow keeps others out.

use axum::Router;
use axum::body::Body;
use axum::extract::Request;
use hyper::body::Incoming;
use hyper::server::conn::http1;
use hyper::service::service_fn;
use hyper_util::rt::{TokioIo, TokioTimer};
use std::collections::HashMap;
use std::io;
use std::net::IpAddr;
use std::pin::pin;
use std::sync::{Arc, Mutex, PoisonError};
use std::time::Duration;
use tokio::io::{AsyncRead, AsyncWrite};
use tokio::net::{TcpListener, TcpStream};
use tokio::task::JoinSet;
use tokio_rustls::TlsAcceptor;
use tokio_rustls::rustls::ServerConfig;
use tower::ServiceExt;

use crate::gate::Peer;
use crate::network::is_served;

/// Most connections at once, and of one address: a yard has a few readers, a browser opens six each.
const MOST: usize = 512;
const MOST_OF_ONE: usize = 128;
/// How long the handshake and the head of each request may take, and a connection without one: a phone at the
/// edge of its network needs seconds.
const HEAD_PATIENCE: Duration = Duration::from_secs(10);
/// After so long a connection is asked to end, and after so long more, longer than the longest body takes, it is ended.
const LONGEST: Duration = Duration::from_secs(300);
const LAST_ANSWER: Duration = Duration::from_secs(120);
/// Before trying again when the system gives no connection, as when there are no more file handles.
const PAUSE: Duration = Duration::from_millis(200);

/// Answers on all listeners, for ever; with `tls` in TLS alone.
///
/// # Errors
/// When there is no listener.
pub async fn serve(listeners: Vec<TcpListener>, tls: Option<Arc<ServerConfig>>, router: Router) -> io::Result<()> {
    let room = Arc::new(Room::default());
    let tls = tls.map(TlsAcceptor::from);
    let mut accepting = JoinSet::new();
    for listener in listeners {
        accepting.spawn(accept(listener, tls.clone(), router.clone(), Arc::clone(&room)));
    }
    match accepting.join_next().await {
        Some(Err(ended)) => Err(io::Error::other(ended)),
        Some(Ok(())) | None => Err(io::Error::other("nothing listens")),
    }
}

async fn accept(listener: TcpListener, tls: Option<TlsAcceptor>, router: Router, room: Arc<Room>) {
    loop {
        let Ok((stream, peer)) = listener.accept().await else {
            tokio::time::sleep(PAUSE).await;
            continue;
        };
        let address = peer.ip().to_canonical();
        if !stream.local_addr().is_ok_and(|local| is_served(local.ip(), address)) {
            continue;
        }
        let Some(place) = Place::take(&room, address) else { continue };
        let (tls, router) = (tls.clone(), router.clone());
        tokio::spawn(async move {
            let _place = place;
            talk(stream, address, tls, router).await;
        });
    }
}

async fn talk(stream: TcpStream, address: IpAddr, tls: Option<TlsAcceptor>, router: Router) {
    // An answer that is complete is sent at once; where that cannot be set it is a little later.
    let _ = stream.set_nodelay(true);
    match tls {
        None => answer(stream, address, router).await,
        Some(tls) => {
            // Who does not trust us, or is slow, is let go.
            if let Ok(Ok(stream)) = tokio::time::timeout(HEAD_PATIENCE, tls.accept(stream)).await {
                answer(stream, address, router).await;
            }
        }
    }
}

async fn answer(stream: impl AsyncRead + AsyncWrite + Unpin + Send + 'static, address: IpAddr, router: Router) {
    let service = service_fn(move |request: hyper::Request<Incoming>| {
        let mut request: Request = request.map(Body::new);
        request.extensions_mut().insert(Peer(address));
        router.clone().oneshot(request)
    });
    let mut server = http1::Builder::new();
    server.timer(TokioTimer::new()).header_read_timeout(HEAD_PATIENCE).max_buf_size(64 * 1024);
    let mut connection = pin!(server.serve_connection(TokioIo::new(stream), service));
    if tokio::time::timeout(LONGEST, connection.as_mut()).await.is_err() {
        connection.as_mut().graceful_shutdown();
        // Either it ends by itself or it is dropped.
        let _ = tokio::time::timeout(LAST_ANSWER, connection).await;
    }
}

/// How many connections there are, by address.
#[derive(Default)]
struct Room(Mutex<HashMap<IpAddr, usize>>);

/// One connection's place, given back when it ends.
struct Place {
    room: Arc<Room>,
    address: IpAddr,
}

impl Place {
    fn take(room: &Arc<Room>, address: IpAddr) -> Option<Self> {
        let mut taken = room.0.lock().unwrap_or_else(PoisonError::into_inner);
        let own = taken.get(&address).copied().unwrap_or(0);
        if own >= MOST_OF_ONE || taken.values().sum::<usize>() >= MOST {
            return None;
        }
        taken.insert(address, own + 1);
        Some(Self { room: Arc::clone(room), address })
    }
}

impl Drop for Place {
    fn drop(&mut self) {
        let mut taken = self.room.0.lock().unwrap_or_else(PoisonError::into_inner);
        let left = taken.get(&self.address).map_or(0, |own| own.saturating_sub(1));
        if left == 0 {
            taken.remove(&self.address);
        } else {
            taken.insert(self.address, left);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{MOST, MOST_OF_ONE, Place, Room};
    use std::net::{IpAddr, Ipv4Addr};
    use std::sync::Arc;

    #[test]
    fn one_address_cannot_take_every_place_and_places_are_given_back() {
        let room = Arc::new(Room::default());
        let of = |host: u32| IpAddr::V4(Ipv4Addr::from_bits(host));
        let first: Vec<_> = (0..=MOST_OF_ONE).filter_map(|_| Place::take(&room, of(1))).collect();
        assert_eq!(first.len(), MOST_OF_ONE);
        let all: Vec<_> = (2..2 + MOST as u32).filter_map(|host| Place::take(&room, of(host))).collect();
        assert_eq!(first.len() + all.len(), MOST);
        drop((first, all));
        assert!(Place::take(&room, of(1)).is_some());
        assert!(room.0.lock().unwrap().is_empty());
    }
}
