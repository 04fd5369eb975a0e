//! `serve --lan` as a phone meets it: the certificate page, trust, the pass phrase, and what is refused. On this machine
//! alone; the yard is invented.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpStream;
use std::path::PathBuf;
use std::process::{Child, ChildStderr, Command, Stdio};
use std::thread::JoinHandle;
use std::time::{Duration, Instant};

use ureq::Agent;
use ureq::http::Response;
use ureq::tls::{Certificate, RootCerts, TlsConfig};

const PHRASE: &str = "four frosty winter hives";

/// A server of its own, ended with the test.
struct Server {
    child: Child,
    /// Held, so that the server can go on speaking.
    _stderr: BufReader<ChildStderr>,
    folder: PathBuf,
    pages: u16,
    plain: u16,
    fingerprint: String,
}

struct Answer {
    status: u16,
    cookie: Option<String>,
    location: Option<String>,
    body: String,
}

/// Eight bytes of a fingerprint.
fn is_print(line: &str) -> bool {
    let bytes: Vec<&str> = line.trim().split(':').collect();
    bytes.len() == 8 && bytes.iter().all(|byte| byte.len() == 2 && u8::from_str_radix(byte, 16).is_ok())
}

fn folder(name: &str) -> PathBuf {
    let folder = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join(format!("lan-{name}-{}", std::process::id()));
    std::fs::create_dir_all(&folder).unwrap();
    folder
}

fn command(folder: &std::path::Path) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_snowhum"));
    command.args(["serve", "--lan", "--port", "0", "--members", "8", "--store"]).arg(folder.join("records.db"));
    command.env_remove("SNOWHUM_PASS_PHRASE").stdin(Stdio::null()).stdout(Stdio::piped()).stderr(Stdio::piped());
    command
}

impl Server {
    fn start(name: &str) -> Self {
        let folder = folder(name);
        let phrase = folder.join("phrase");
        std::fs::write(&phrase, format!("{PHRASE}\n")).unwrap();
        let mut begun = command(&folder);
        begun.arg("--pass-phrase-file").arg(phrase);
        Self::begun(begun, folder)
    }

    /// Ends it and begins another on the same records.
    fn restart(&mut self, arguments: &[&str], phrase: Option<&str>) {
        self.end();
        let mut again = command(&self.folder);
        again.args(arguments).envs(phrase.map(|phrase| ("SNOWHUM_PASS_PHRASE", phrase)));
        let folder = std::mem::take(&mut self.folder);
        *self = Self::begun(again, folder);
    }

    fn begun(mut command: Command, folder: PathBuf) -> Self {
        let mut child = command.spawn().unwrap();
        let mut said = Vec::new();
        let mut stderr = BufReader::new(child.stderr.take().unwrap());
        for line in stderr.by_ref().lines() {
            said.push(line.unwrap());
            // The fingerprint stands on four lines, the last of what is always said.
            if said.iter().filter(|line| is_print(line)).count() == 4 {
                break;
            }
        }
        let port = |scheme: &str| {
            let line = said.iter().find_map(|line| line.trim().strip_prefix(scheme)).unwrap();
            line.trim_end_matches('/').rsplit(':').next().unwrap().parse().unwrap()
        };
        let print: Vec<&str> = said.iter().filter(|line| is_print(line)).map(|line| line.trim()).collect();
        let fingerprint = print.join(":");
        Self { pages: port("https://"), plain: port("http://"), fingerprint, child, _stderr: stderr, folder }
    }

    fn end(&mut self) {
        self.child.kill().unwrap();
        self.child.wait().unwrap();
    }

    fn plain(&self, path: &str) -> Answer {
        answer(agent(None).get(format!("http://127.0.0.1:{}{path}", self.plain)).call().unwrap())
    }

    fn certificate(&self) -> String {
        self.plain("/snowhum-authority.crt").body
    }

    /// Asks as a device that trusts the authority.
    fn trusting(&self) -> Agent {
        agent(Some(&self.certificate()))
    }

    fn address(&self, path: &str) -> String {
        format!("https://127.0.0.1:{}{path}", self.pages)
    }

    fn get(&self, agent: &Agent, path: &str, cookie: &str) -> Answer {
        let request = agent.get(self.address(path)).header("accept", "text/html").header("cookie", cookie);
        answer(request.call().unwrap())
    }

    fn post(&self, agent: &Agent, path: &str, pairs: &[(&str, &str)]) -> Answer {
        let request = agent.post(self.address(path)).header("accept", "text/html");
        let request = request.header("origin", format!("https://127.0.0.1:{}", self.pages));
        answer(request.send_form(pairs.iter().copied()).unwrap())
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        self.end();
        if !self.folder.as_os_str().is_empty() {
            std::fs::remove_dir_all(&self.folder).unwrap();
        }
    }
}

fn agent(trusts: Option<&str>) -> Agent {
    let roots = trusts
        .map_or(RootCerts::WebPki, |pem| RootCerts::new_with_certs(&[Certificate::from_pem(pem.as_bytes()).unwrap()]));
    let config = Agent::config_builder().http_status_as_error(false).max_redirects(0).proxy(None);
    let config = config.timeout_global(Some(Duration::from_secs(60)));
    config.tls_config(TlsConfig::builder().root_certs(roots).build()).build().new_agent()
}

fn answer(mut response: Response<ureq::Body>) -> Answer {
    let header = |name: &str| response.headers().get(name).map(|value| value.to_str().unwrap().to_owned());
    let cookie = header("set-cookie").map(|cookie| cookie.split(';').next().unwrap().to_owned());
    let (status, location) = (response.status().as_u16(), header("location"));
    Answer { status, cookie, location, body: response.body_mut().read_to_string().unwrap() }
}

/// SHA-256 of the certificate in a PEM, as two hex digits a byte with colons between.
fn fingerprint(pem: &str) -> String {
    let certificate = Certificate::from_pem(pem.as_bytes()).unwrap();
    let digest = ring::digest::digest(&ring::digest::SHA256, certificate.der());
    digest.as_ref().iter().map(|byte| format!("{byte:02X}")).collect::<Vec<_>>().join(":")
}

#[test]
fn a_phone_trusts_signs_in_and_sees_the_yard() {
    let server = Server::start("phone");
    let page = server.plain("/");
    assert_eq!(page.status, 200);
    assert!(
        page.body.replace("<br>", ":").contains(&server.fingerprint),
        "the page shows the fingerprint of the terminal"
    );
    assert_eq!(fingerprint(&server.certificate()), server.fingerprint);
    let phone = server.trusting();
    let asked = server.get(&phone, "/", "");
    assert_eq!((asked.status, asked.location.as_deref()), (303, Some("/sign-in")));
    assert_eq!(server.get(&phone, "/sign-in", "").status, 200);
    let entered = server.post(&phone, "/sign-in", &[("phrase", PHRASE)]);
    let cookie = entered.cookie.unwrap();
    assert_eq!((entered.status, entered.location.as_deref()), (303, Some("/")));
    let yard = server.get(&phone, "/", &cookie);
    assert_eq!(yard.status, 200);
    assert!(yard.body.contains("Alder"));
}

#[test]
fn trust_and_sessions_outlast_a_restart_and_a_new_pass_phrase_ends_them() {
    let mut server = Server::start("again");
    let (phone, print) = (server.trusting(), server.fingerprint.clone());
    let cookie = server.post(&phone, "/sign-in", &[("phrase", PHRASE)]).cookie.unwrap();
    server.restart(&[], None);
    assert_eq!(server.fingerprint, print);
    assert_eq!(server.get(&phone, "/round", &cookie).status, 200, "the same trust and the same session");
    server.restart(&["--new-pass-phrase"], Some("another winter, another word"));
    assert_eq!(server.fingerprint, print);
    assert_eq!(server.get(&phone, "/round", &cookie).status, 303);
    assert_eq!(server.post(&phone, "/sign-in", &[("phrase", PHRASE)]).status, 401);
    assert_eq!(server.post(&phone, "/sign-in", &[("phrase", "another winter, another word")]).status, 303);
}

#[test]
fn who_does_not_trust_the_authority_is_not_served() {
    let server = Server::start("stranger");
    let refused = agent(None).get(server.address("/sign-in")).call();
    assert!(matches!(refused, Err(ureq::Error::Rustls(_) | ureq::Error::Io(_))), "{refused:?}");
    // Nor is plain HTTP spoken where TLS is.
    let spoken = agent(None).get(format!("http://127.0.0.1:{}/", server.pages)).call();
    assert!(spoken.is_err());
}

#[test]
fn what_is_not_encrypted_gives_the_certificate_page_and_nothing_else() {
    let server = Server::start("plain");
    for path in ["/round", "/api/notes", "/sign-in", "/settings", "/hive/x", "/..%2F..%2Fetc%2Fpasswd"] {
        let answer = server.plain(path);
        assert_eq!((answer.status, answer.location.as_deref()), (303, Some("/")), "{path}");
        assert_eq!(answer.body, "", "{path}");
    }
    let sent = agent(None).post(format!("http://127.0.0.1:{}/sign-in", server.plain)).send_form([("phrase", PHRASE)]);
    let sent = answer(sent.unwrap());
    assert_eq!((sent.status, sent.cookie), (303, None));
    assert!(!server.plain("/").body.contains("Alder"));
}

/// A body of which a byte comes each second, and would for minutes.
struct Dribble(u32);

impl Read for Dribble {
    fn read(&mut self, buffer: &mut [u8]) -> std::io::Result<usize> {
        std::thread::sleep(Duration::from_secs(1));
        self.0 -= 1;
        buffer[0] = b'x';
        Ok(usize::from(self.0 > 0))
    }
}

/// Sends it; gives how long it was listened to, and the answer if there was one.
fn dribble(phone: Agent, address: String) -> JoinHandle<(Duration, Option<u16>)> {
    std::thread::spawn(move || {
        let start = Instant::now();
        let form = phone.post(address).header("content-type", "application/x-www-form-urlencoded");
        let answer = form.send(ureq::SendBody::from_owned_reader(Dribble(200)));
        (start.elapsed(), answer.ok().map(|answer| answer.status().as_u16()))
    })
}

#[test]
fn wrong_phrases_forged_origins_large_bodies_and_slow_talkers_are_refused() {
    let server = Server::start("hostile");
    let phone = server.trusting();
    let statuses: Vec<u16> =
        (0..8).map(|_| server.post(&phone, "/sign-in", &[("phrase", "wrong wrong wrong")]).status).collect();
    assert_eq!((statuses[0], statuses[7]), (401, 429), "{statuses:?}");
    let forged = phone.post(server.address("/sign-in")).header("origin", "https://evil.example");
    assert_eq!(answer(forged.send_form([("phrase", PHRASE)]).unwrap()).status, 403);
    let named = phone.get(server.address("/sign-in")).header("host", "evil.example");
    assert_eq!(answer(named.call().unwrap()).status, 403);
    let large = phone.post(server.address("/sign-in")).header("content-type", "application/x-www-form-urlencoded");
    // The server may hang up before all is sent; either way nothing of it is taken.
    if let Ok(large) = large.send("x".repeat(10 << 20)) {
        assert_eq!(answer(large).status, 413);
    }
    let dribbling = dribble(server.trusting(), server.address("/sign-in"));
    let start = Instant::now();
    let mut silent = TcpStream::connect(("127.0.0.1", server.pages)).unwrap();
    let mut slow = TcpStream::connect(("127.0.0.1", server.plain)).unwrap();
    slow.write_all(b"GET / HTTP/1.1\r\nHost: ").unwrap();
    for stream in [&mut silent, &mut slow] {
        stream.set_read_timeout(Some(Duration::from_secs(30))).unwrap();
        let mut rest = Vec::new();
        stream.read_to_end(&mut rest).unwrap();
    }
    assert!(start.elapsed() < Duration::from_secs(25), "{:?}", start.elapsed());
    let (took, status) = dribbling.join().unwrap();
    assert!(took < Duration::from_secs(40) && [None, Some(408)].contains(&status), "{took:?}, {status:?}");
    assert_eq!(server.get(&phone, "/sign-in", "").status, 200, "others are served meanwhile");
}

#[test]
fn without_a_pass_phrase_or_kept_records_it_does_not_start() {
    let folder = folder("refused");
    let fails = |command: &mut Command| {
        let output = command.output().unwrap();
        (output.status.code(), String::from_utf8(output.stderr).unwrap())
    };
    let (code, words) = fails(&mut command(&folder));
    assert!(code == Some(2) && words.contains("--pass-phrase-file"), "{words}");
    let (code, words) = fails(command(&folder).env("SNOWHUM_PASS_PHRASE", "too short"));
    assert!(code == Some(2) && words.contains("at least 12"), "{words}");
    let mut bare = Command::new(env!("CARGO_BIN_EXE_snowhum"));
    let (code, words) = fails(bare.args(["serve", "--lan"]).env("SNOWHUM_PASS_PHRASE", PHRASE).stdin(Stdio::null()));
    assert!(code == Some(2) && words.contains("--store"), "{words}");
    let (code, words) = fails(Command::new(env!("CARGO_BIN_EXE_snowhum")).args(["serve", "--no-qr"]));
    assert!(code == Some(2) && words.contains("--lan"), "{words}");
    std::fs::remove_dir_all(folder).unwrap();
}

#[test]
fn on_this_machine_alone_pages_begin_in_the_units_asked_for() {
    let mut command = Command::new(env!("CARGO_BIN_EXE_snowhum"));
    command.args(["serve", "--port", "0", "--members", "8", "--units", "us"]);
    let mut child = command.stdout(Stdio::null()).stderr(Stdio::piped()).spawn().unwrap();
    let mut stderr = BufReader::new(child.stderr.take().unwrap());
    let mut line = String::new();
    while !line.contains("http://") {
        line.clear();
        assert!(stderr.read_line(&mut line).unwrap() > 0, "no address was said");
    }
    let address = line.split_whitespace().find(|word| word.starts_with("http://")).unwrap();
    let page = answer(agent(None).get(format!("{address}settings")).call().unwrap()).body;
    child.kill().unwrap();
    child.wait().unwrap();
    assert!(page.contains("value=\"us\" checked"), "{page}");
}
