//! A server on this machine that answers as it is told and remembers what it was asked.

use std::collections::VecDeque;
use std::io::{BufRead, BufReader, Read, Write};
use std::net::{SocketAddr, TcpListener, TcpStream};
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, Mutex};
use std::thread::{self, JoinHandle};
use std::time::Duration;

/// An answer to give.
#[derive(Debug, Clone, Default)]
pub(crate) struct Reply {
    status: u16,
    headers: Vec<(String, String)>,
    body: String,
    delay: Duration,
    /// Between the head and the body.
    pause: Duration,
    /// Length that is claimed, if it is not the body's.
    claimed: Option<usize>,
}

impl Reply {
    pub(crate) fn status(status: u16) -> Self {
        Self { status, ..Self::default() }
    }

    pub(crate) fn ok(body: impl Into<String>) -> Self {
        Self::status(200).saying(body)
    }

    pub(crate) fn saying(mut self, body: impl Into<String>) -> Self {
        self.body = body.into();
        self
    }

    pub(crate) fn header(mut self, name: &str, value: &str) -> Self {
        self.headers.push((name.to_owned(), value.to_owned()));
        self
    }

    pub(crate) fn after(mut self, delay: Duration) -> Self {
        self.delay = delay;
        self
    }

    pub(crate) fn pausing(mut self, pause: Duration) -> Self {
        self.pause = pause;
        self
    }

    pub(crate) fn claiming(mut self, length: usize) -> Self {
        self.claimed = Some(length);
        self
    }
}

/// A question that was asked.
#[derive(Debug, Clone)]
pub(crate) struct Asked {
    /// Path with its query.
    pub(crate) path: String,
    headers: Vec<(String, String)>,
}

impl Asked {
    pub(crate) fn header(&self, name: &str) -> Option<&str> {
        let found = self.headers.iter().find(|(other, _)| other.eq_ignore_ascii_case(name));
        found.map(|(_, value)| value.as_str())
    }
}

/// The server; it ends when dropped.
pub(crate) struct StandIn {
    address: SocketAddr,
    replies: Arc<Mutex<VecDeque<Reply>>>,
    asked: Arc<Mutex<Vec<Asked>>>,
    ended: Arc<AtomicBool>,
    thread: Option<JoinHandle<()>>,
}

impl StandIn {
    /// Gives each reply once, in turn; a question beyond the last gets a 599.
    pub(crate) fn new(replies: impl IntoIterator<Item = Reply>) -> Self {
        let listener = TcpListener::bind("127.0.0.1:0").unwrap();
        let address = listener.local_addr().unwrap();
        let replies = Arc::new(Mutex::new(replies.into_iter().collect()));
        let asked = Arc::new(Mutex::new(Vec::new()));
        let ended = Arc::new(AtomicBool::new(false));
        let thread = {
            let (replies, asked, ended) = (Arc::clone(&replies), Arc::clone(&asked), Arc::clone(&ended));
            thread::spawn(move || {
                for stream in listener.incoming().flatten() {
                    if ended.load(Ordering::SeqCst) {
                        return;
                    }
                    serve(stream, &replies, &asked);
                }
            })
        };
        Self { address, replies, asked, ended, thread: Some(thread) }
    }

    /// Where it is.
    pub(crate) fn url(&self) -> String {
        format!("http://{}", self.address)
    }

    /// Gives another reply after those it has.
    pub(crate) fn then(&self, reply: Reply) {
        self.replies.lock().unwrap().push_back(reply);
    }

    /// Everything asked so far.
    pub(crate) fn asked(&self) -> Vec<Asked> {
        self.asked.lock().unwrap().clone()
    }
}

impl Drop for StandIn {
    fn drop(&mut self) {
        self.ended.store(true, Ordering::SeqCst);
        // Wakes the listener, which then sees that it is over.
        let _ = TcpStream::connect(self.address);
        if let Some(thread) = self.thread.take() {
            let _ = thread.join();
        }
    }
}

fn serve(mut stream: TcpStream, replies: &Mutex<VecDeque<Reply>>, asked: &Mutex<Vec<Asked>>) {
    stream.set_read_timeout(Some(Duration::from_secs(5))).unwrap();
    let Some(question) = question(&stream) else { return };
    asked.lock().unwrap().push(question);
    let reply = replies.lock().unwrap().pop_front().unwrap_or_else(|| Reply::status(599));
    thread::sleep(reply.delay);
    let length = reply.claimed.unwrap_or(reply.body.len());
    let mut head = format!("HTTP/1.1 {} Said\r\nConnection: close\r\nContent-Length: {length}\r\n", reply.status);
    for (name, value) in &reply.headers {
        head.push_str(&format!("{name}: {value}\r\n"));
    }
    // A client that has gone away is part of some tests.
    let _ = stream.write_all(format!("{head}\r\n").as_bytes());
    thread::sleep(reply.pause);
    let _ = stream.write_all(reply.body.as_bytes());
    let _ = stream.shutdown(std::net::Shutdown::Write);
    let _ = stream.read(&mut [0; 64]);
}

fn question(stream: &TcpStream) -> Option<Asked> {
    let mut lines = BufReader::new(stream).lines();
    let first = lines.next()?.ok()?;
    let path = first.split(' ').nth(1)?.to_owned();
    let mut headers = Vec::new();
    for line in lines.map_while(Result::ok).take_while(|line| !line.is_empty()) {
        let (name, value) = line.split_once(':')?;
        headers.push((name.to_owned(), value.trim().to_owned()));
    }
    Some(Asked { path, headers })
}
