//! A PostgreSQL of the tests' own: started by them as an ordinary user, in a scratch folder that goes with it.

#![expect(clippy::unwrap_used, clippy::expect_used, reason = "a test fails by panicking")]

use std::os::unix::fs::{MetadataExt, PermissionsExt};
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::{Arc, Mutex, PoisonError, Weak};
use std::time::{Duration, Instant};

static SHARED: Mutex<Weak<Server>> = Mutex::new(Weak::new());
static NUMBER: AtomicUsize = AtomicUsize::new(0);

/// A server in a folder of its own.
#[derive(Debug)]
pub struct Server {
    folder: PathBuf,
    programs: PathBuf,
}

/// A database of its own on a server.
#[derive(Debug)]
pub struct Database {
    /// Where it is.
    pub server: Arc<Server>,
    /// Its address, as DATABASE_URL has it.
    pub address: String,
}

impl Database {
    /// On a server that other tests use too.
    #[must_use]
    pub fn shared() -> Self {
        let mut shared = SHARED.lock().unwrap_or_else(PoisonError::into_inner);
        let server = shared.upgrade().unwrap_or_else(|| {
            let server = Arc::new(Server::start());
            *shared = Arc::downgrade(&server);
            server
        });
        Self::on(server)
    }

    /// On a server that may be killed.
    #[must_use]
    pub fn alone() -> Self {
        Self::on(Arc::new(Server::start()))
    }

    /// Another one beside it.
    #[must_use]
    pub fn beside(&self) -> Self {
        Self::on(self.server.clone())
    }

    fn on(server: Arc<Server>) -> Self {
        let name = format!("club_{}", NUMBER.fetch_add(1, Ordering::Relaxed));
        let mut create = server.program("createdb");
        passes(create.arg("--host").arg(&server.folder).args(["--username", "snowhum", &name]));
        let address = format!("postgres://snowhum@localhost/{name}?host={}", server.folder.display());
        Self { server, address }
    }
}

impl Server {
    fn start() -> Self {
        let number = NUMBER.fetch_add(1, Ordering::Relaxed);
        let folder = std::env::temp_dir().join(format!("snowhum-club-{}-{number}", std::process::id()));
        std::fs::create_dir_all(&folder).unwrap();
        if is_root() {
            passes(Command::new("chown").arg("postgres:postgres").arg(&folder));
        }
        std::fs::set_permissions(&folder, std::fs::Permissions::from_mode(0o700)).unwrap();
        let server = Self { folder, programs: programs() };
        let mut init = server.program("initdb");
        passes(
            init.args([
                "--username",
                "snowhum",
                "--auth",
                "trust",
                "--no-sync",
                "--encoding",
                "UTF8",
                "--locale",
                "C",
                "--pgdata",
            ])
            .arg(server.data()),
        );
        server.up();
        server
    }

    /// Starts it, also after it was killed.
    ///
    /// # Panics
    /// When it does not come up within a minute.
    pub fn up(&self) {
        // Not synchronised to the disk: processes are killed here, not the machine.
        let options =
            format!("-c listen_addresses='' -c unix_socket_directories='{}' -c fsync=off", self.folder.display());
        let patience = Instant::now() + Duration::from_secs(60);
        loop {
            let mut start = self.program("pg_ctl");
            start.args(["start", "--wait", "--silent", "--options", &options, "--log"]).arg(self.folder.join("log"));
            let status = start.arg("--pgdata").arg(self.data()).stdout(Stdio::null()).status().unwrap();
            // Children of a killed server hold its memory until they notice.
            if status.success() {
                return;
            }
            let log = || std::fs::read_to_string(self.folder.join("log")).unwrap_or_default();
            assert!(Instant::now() < patience, "PostgreSQL does not start:\n{}", log());
            std::thread::sleep(Duration::from_millis(100));
        }
    }

    /// Kills it outright.
    ///
    /// # Panics
    /// When it does not run.
    pub fn kill(&self) {
        let file = std::fs::read_to_string(self.data().join("postmaster.pid")).unwrap();
        passes(Command::new("kill").args(["-9", file.lines().next().unwrap()]));
    }

    fn data(&self) -> PathBuf {
        self.folder.join("data")
    }

    /// One of its programs, as an ordinary user: a server refuses to be run by root.
    fn program(&self, name: &str) -> Command {
        let program = self.programs.join(name);
        let mut command = if is_root() {
            let mut command = Command::new("setpriv");
            command.args(["--reuid=postgres", "--regid=postgres", "--clear-groups"]).arg(program);
            command
        } else {
            Command::new(program)
        };
        command.current_dir("/");
        command
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        let mut stop = self.program("pg_ctl");
        let _ = stop.args(["stop", "--mode", "immediate", "--silent", "--pgdata"]).arg(self.data()).status();
        let _ = std::fs::remove_dir_all(&self.folder);
    }
}

/// Where Debian keeps the programs of the newest version it has.
fn programs() -> PathBuf {
    let versions = std::fs::read_dir("/usr/lib/postgresql").into_iter().flatten().flatten();
    let newest =
        versions.map(|version| version.path().join("bin")).filter(|place| place.join("initdb").is_file()).max();
    newest.expect("PostgreSQL is missing; get it with: apt-get install -y postgresql")
}

fn is_root() -> bool {
    std::fs::metadata(Path::new("/proc/self")).is_ok_and(|own| own.uid() == 0)
}

fn passes(command: &mut Command) {
    let output = command.output().unwrap();
    assert!(output.status.success(), "{command:?}: {}", String::from_utf8_lossy(&output.stderr));
}
