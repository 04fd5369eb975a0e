//! A page and a resampling, each by itself, counted in a yard that is served: functions of the tested binary that
//! callgrind names. What the server does round them is left out, since it is not the same twice.

use anyhow::{Context, Result, ensure};
use std::io::{Read, Write};
use std::net::{Ipv4Addr, SocketAddr, TcpListener, TcpStream};
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use super::callgrind::of_one_call;
use crate::house;

/// What is counted: its name, and the module and name of the function.
const FUNCTIONS: [(&str, &str, &str); 3] = [
    ("page_of_hive", "snowhum_web::pages::hive", "::drawn"),
    ("page_of_yard", "snowhum_web::pages::apiary", "::drawn"),
    ("resampling_of_1000", "snowhum_watch::strata", "::resample"),
];
/// A weighing two days after the colonies were counted, so far from what was told that members are resampled.
const VISIT: &str = "
[[visit]]
at = 2025-10-07T13:00:00
air = \"8 C\"
snow = \"none\"
[visit.seen]
One = \"stores=17 kg ± 1 kg\"
";
const AS_OF: &str = "2025-10-08";
const PAGES: [&str; 2] = ["/", "/hive/One"];
/// The estimate is there when this is answered.
const STANDING: &str = "/api/now";
/// How often each page is asked for.
const TIMES: usize = 3;
/// How long an estimate may take under callgrind on a busy machine.
const PATIENCE: Duration = Duration::from_secs(600);

/// Serves `yard.toml` of a place with a visit more, and counts.
pub(super) fn count(binary: &Path, place: &Path) -> Result<Vec<(String, u64)>> {
    let yard = std::fs::read_to_string(place.join("yard.toml"))?;
    std::fs::write(place.join("visited.toml"), yard + VISIT)?;
    let out = place.join("served.callgrind");
    let port = free_port()?;
    let mut command = Command::new("valgrind");
    command.args(["--tool=callgrind", "--quiet"]).arg(format!("--callgrind-out-file={}", out.display()));
    command.arg(binary).args(["serve", "--apiary", "visited.toml", "--as-of", AS_OF, "--threads", "1"]);
    let said = std::fs::File::create(place.join("served.log"))?;
    let command = super::at(place, command.args(["--port", &port.to_string()]));
    let mut server = Server(command.stdout(Stdio::null()).stderr(said).spawn().context("valgrind did not start")?);
    server.answers(port, STANDING)?;
    for page in PAGES.iter().cycle().take(TIMES * PAGES.len()) {
        let status = ask(port, page)?;
        ensure!(status == 200, "{page} was answered with {status}");
    }
    server.end()?;
    let profile = std::fs::read_to_string(&out).context("callgrind wrote nothing")?;
    let counted = |(name, module, function): &(&str, &str, &str)| {
        let count =
            of_one_call(&profile, module, function).with_context(|| format!("{module}{function} was not called"));
        Ok(((*name).to_owned(), count?))
    };
    FUNCTIONS.iter().map(counted).collect()
}

/// The server under callgrind; it does not outlive us.
struct Server(Child);

impl Server {
    /// Waits until an address is answered as it should be.
    fn answers(&mut self, port: u16, path: &str) -> Result<()> {
        let begun = Instant::now();
        while !ask(port, path).is_ok_and(|status| status == 200) {
            ensure!(begun.elapsed() < PATIENCE, "the served yard had no estimate after {} s", PATIENCE.as_secs());
            ensure!(self.0.try_wait()?.is_none(), "the server ended before it answered");
            std::thread::sleep(Duration::from_millis(500));
        }
        Ok(())
    }

    /// Ends it so that callgrind still writes what it counted.
    fn end(&mut self) -> Result<()> {
        house::pass(Command::new("kill").arg(self.0.id().to_string()))?;
        self.0.wait()?;
        Ok(())
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        // It has ended already where all went well.
        let _ended = self.0.kill().and_then(|()| self.0.wait());
    }
}

fn free_port() -> Result<u16> {
    Ok(TcpListener::bind((Ipv4Addr::LOCALHOST, 0))?.local_addr()?.port())
}

/// Reads an address, or the one it sends on to, and says the status of the answer.
fn ask(port: u16, path: &str) -> Result<u16> {
    let head = head(port, path)?;
    match location(&head) {
        Some(place) => status(&self::head(port, place)?),
        None => status(&head),
    }
}

fn head(port: u16, path: &str) -> Result<String> {
    let address = SocketAddr::from((Ipv4Addr::LOCALHOST, port));
    let mut stream = TcpStream::connect_timeout(&address, Duration::from_secs(5))?;
    stream.set_read_timeout(Some(PATIENCE))?;
    write!(stream, "GET {path} HTTP/1.1\r\nHost: {address}\r\nConnection: close\r\n\r\n")?;
    let mut answer = Vec::new();
    stream.read_to_end(&mut answer)?;
    let answer = String::from_utf8_lossy(&answer);
    Ok(answer.split("\r\n\r\n").next().unwrap_or_default().to_owned())
}

fn status(head: &str) -> Result<u16> {
    head.split_whitespace().nth(1).and_then(|status| status.parse().ok()).context("no answer in HTTP")
}

/// Where an answer sends on to.
fn location(head: &str) -> Option<&str> {
    head.lines().find_map(|line| line.strip_prefix("location: "))
}

#[cfg(test)]
mod tests {
    use super::{location, status};

    #[test]
    fn an_answer_says_its_status_and_where_it_sends_on_to() {
        let sent_on = "HTTP/1.1 303 See Other\r\nlocation: /hive/7\r\ncontent-length: 0";
        assert_eq!((status(sent_on).unwrap(), location(sent_on)), (303, Some("/hive/7")));
        assert_eq!(location("HTTP/1.1 200 OK\r\ncontent-length: 3"), None);
        assert!(status("").is_err());
    }
}
