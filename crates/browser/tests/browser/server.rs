//! The built program, serving on a free port as a keeper would start it.

use anyhow::{Context, Result, bail, ensure};
use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpStream;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::sync::atomic::{AtomicU32, Ordering};
use std::sync::{Mutex, MutexGuard, PoisonError};
use std::thread::JoinHandle;
use std::time::{Duration, Instant};

const PATIENCE: Duration = Duration::from_secs(120);
const DEMO: [&str; 5] = ["--store", "records.db", "demo", "--as-of", "2026-02-07"];
const FEW_MEMBERS: [&str; 2] = ["--members", "64"];

/// A server with a folder of its own, both gone at the end.
pub(crate) struct Server {
    child: Mutex<Child>,
    pub(crate) port: u16,
    folder: PathBuf,
    words: Vec<String>,
}

impl Server {
    /// The invented yard, its notes in a file, in the middle of its winter, computed with few members: what is walked is the
    /// pages, not the figures on them.
    pub(crate) fn demo() -> Result<Self> {
        Self::start(own_folder()?, &[&DEMO[..], &FEW_MEMBERS].concat())
    }

    /// The same, computed as a keeper has it.
    pub(crate) fn demo_in_full() -> Result<Self> {
        Self::start(own_folder()?, &DEMO)
    }

    /// The pages where nothing is kept yet.
    pub(crate) fn first_run() -> Result<Self> {
        Self::start(own_folder()?, &["serve"])
    }

    /// A yard of this file.
    pub(crate) fn of(yard: &str, day: &str) -> Result<Self> {
        let folder = own_folder()?;
        std::fs::write(folder.join("yard.toml"), yard)?;
        Self::start(folder, &[&["serve", "--apiary", "yard.toml", "--as-of", day], &FEW_MEMBERS[..]].concat())
    }

    fn start(folder: PathBuf, words: &[&str]) -> Result<Self> {
        let (child, port) = run(&folder, words, 0)?;
        Ok(Self {
            child: Mutex::new(child),
            port,
            folder,
            words: words.iter().map(|word| (*word).to_owned()).collect(),
        })
    }

    /// Ends it as a power cut would.
    pub(crate) fn kill(&self) -> Result<()> {
        let mut child = self.child();
        child.kill()?;
        child.wait()?;
        Ok(())
    }

    /// Starts it again where it was.
    pub(crate) fn restart(&self) -> Result<()> {
        let words: Vec<&str> = self.words.iter().map(String::as_str).collect();
        let (child, port) = run(&self.folder, &words, self.port)?;
        ensure!(port == self.port, "started on port {port}");
        *self.child() = child;
        Ok(())
    }

    /// Lets it answer nobody for a while, as on a small and busy machine.
    pub(crate) fn stands_still_for(&self, pause: Duration) -> Result<JoinHandle<Result<()>>> {
        let id = self.child().id();
        signal(id, "-STOP")?;
        Ok(std::thread::spawn(move || {
            std::thread::sleep(pause);
            signal(id, "-CONT")
        }))
    }

    fn child(&self) -> MutexGuard<'_, Child> {
        self.child.lock().unwrap_or_else(PoisonError::into_inner)
    }

    pub(crate) fn address(&self, path: &str) -> String {
        format!("http://127.0.0.1:{}{path}", self.port)
    }

    /// Status, head and body of an address asked outside the browser.
    pub(crate) fn ask(&self, path: &str) -> Result<(u16, String, String)> {
        let mut stream = TcpStream::connect(("127.0.0.1", self.port))?;
        write!(stream, "GET {path} HTTP/1.0\r\nHost: 127.0.0.1:{}\r\n\r\n", self.port)?;
        let mut text = Vec::new();
        stream.read_to_end(&mut text)?;
        let text = String::from_utf8_lossy(&text).into_owned();
        let (head, body) = text.split_once("\r\n\r\n").context("an answer without a body")?;
        let status = head.split(' ').nth(1).and_then(|code| code.parse().ok()).context("an answer without a status")?;
        Ok((status, head.to_ascii_lowercase(), body.to_owned()))
    }

    pub(crate) fn json(&self, path: &str) -> Result<serde_json::Value> {
        let (status, _, body) = self.ask(path)?;
        ensure!(status == 200, "{path} answered {status}: {body}");
        Ok(serde_json::from_str(&body)?)
    }

    /// Waits until the estimate is there and follows everything stored.
    pub(crate) fn settle(&self) -> Result<()> {
        let begun = Instant::now();
        while begun.elapsed() < PATIENCE {
            if self.json("/api/now").is_ok_and(|now| now["something_newer_is_stored"] == false) {
                return Ok(());
            }
            std::thread::sleep(Duration::from_millis(50));
        }
        bail!("no estimate after {PATIENCE:?}")
    }

    /// Waits until nothing that a page shows is on its way any more.
    pub(crate) fn ready(&self, path: &str) -> Result<()> {
        let (path, begun) = (path.split('#').next().unwrap_or_default(), Instant::now());
        while begun.elapsed() < PATIENCE {
            if !self.ask(path)?.2.contains(" data-waits") {
                return Ok(());
            }
            std::thread::sleep(Duration::from_millis(50));
        }
        bail!("{path} waits still after {PATIENCE:?}")
    }

    /// The ids of all notes as they stand.
    pub(crate) fn notes(&self) -> Result<Vec<String>> {
        let notes = self.json("/api/notes")?;
        let ids = notes["notes"].as_array().context("no notes")?.iter();
        Ok(ids.filter_map(|note| note["id"].as_str()).map(str::to_owned).collect())
    }

    /// Colonies in walking order: name and id.
    pub(crate) fn colonies(&self) -> Result<Vec<(String, String)>> {
        let (_, _, page) = self.ask("/round")?;
        let hives = page.split("data-colony=\"").skip(1);
        let read = hives.filter_map(|part| {
            let (id, rest) = part.split_once('"')?;
            let name = rest.split_once("<legend>")?.1.split_once('<')?.0;
            Some((name.to_owned(), id.to_owned()))
        });
        Ok(read.collect())
    }

    /// Memory held, in megabytes; none where the system does not tell.
    pub(crate) fn memory_mb(&self) -> Option<u64> {
        let status = std::fs::read_to_string(format!("/proc/{}/status", self.child().id())).ok()?;
        let line = status.lines().find_map(|line| line.strip_prefix("VmRSS:"))?;
        line.trim().split(' ').next()?.parse::<u64>().ok().map(|kilobytes| kilobytes / 1_024)
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        let _ = self.kill();
        let _ = std::fs::remove_dir_all(&self.folder);
    }
}

fn signal(id: u32, name: &str) -> Result<()> {
    let status = Command::new("kill").args([name, &id.to_string()]).status().context("could not start kill")?;
    ensure!(status.success(), "kill {name} ended with {status}");
    Ok(())
}

fn run(folder: &Path, words: &[&str], port: u16) -> Result<(Child, u16)> {
    let program = program()?;
    let mut child = Command::new(&program)
        .args(words)
        .args(["--port", &port.to_string()])
        .current_dir(folder)
        .env("HOME", folder)
        .env("XDG_DATA_HOME", folder)
        .stdout(Stdio::null())
        .stderr(Stdio::piped())
        .spawn()
        .with_context(|| format!("could not start {}", program.display()))?;
    let told = child.stderr.take().context("no stderr")?;
    let mut lines = BufReader::new(told).lines();
    let mut said = Vec::new();
    for line in lines.by_ref() {
        let line = line?;
        let port = line.split_once("http://127.0.0.1:").and_then(|(_, rest)| rest.split('/').next()?.parse().ok());
        if let Some(port) = port {
            // Read on, so that the program never waits for its words to be read.
            std::thread::spawn(move || lines.for_each(drop));
            return Ok((child, port));
        }
        said.push(line);
    }
    child.wait()?;
    bail!("{} {} ended early: {}", program.display(), words.join(" "), said.join("; "))
}

/// The program built beside these tests, or the one that is named.
fn program() -> Result<PathBuf> {
    let named = std::env::var_os("SNOWHUM_PROGRAM").map(PathBuf::from);
    let tests = std::env::current_exe()?;
    let beside = tests.ancestors().nth(2).unwrap_or(&tests).join(format!("snowhum{}", std::env::consts::EXE_SUFFIX));
    let path = named.unwrap_or(beside);
    ensure!(path.exists(), "{} is not there: build it with the features and the profile of the tests", path.display());
    Ok(path.canonicalize()?)
}

/// Cargo's target folder.
pub(crate) fn target() -> PathBuf {
    Path::new(env!("CARGO_TARGET_TMPDIR")).join("..")
}

/// An empty folder.
pub(crate) fn own_folder() -> Result<PathBuf> {
    static COUNT: AtomicU32 = AtomicU32::new(0);
    let at = COUNT.fetch_add(1, Ordering::Relaxed);
    let folder = std::env::temp_dir().join(format!("snowhum-browser-{}-{at}", std::process::id()));
    std::fs::create_dir_all(&folder)?;
    Ok(folder)
}
