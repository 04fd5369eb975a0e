//! Packages tried: made twice in two folders, installed into a bare system without a compiler, run, and taken away.

use super::compile::TARGETS;
use crate::{house, needs};
use anyhow::{Context, Result, ensure};
use std::path::{Path, PathBuf};
use std::process::Command;

const SUMS: &str = "SHA256SUMS";
/// The file of the public key that belongs to the one that signed.
const PUBLIC_KEY: &str = "SNOWHUM_PUBLIC_KEY";

/// What every package is asked: each must give the same bytes, whichever C library stands below it.
const ASKED: [&str; 10] = [
    "plan --json",
    "plan --json --seed 7 --members 64 --threads 1",
    "now --json",
    "now --json --as-of 2025-11-20 --seed 3",
    "now --json --as-of 2026-01-04 --seed 11 --threads 1",
    "now --json --as-of 2026-03-20 --seed 5 --units us",
    "hive Alder --outside -20 --json",
    "hive Larch --outside 3 --wind 4 --bees 9000 --start warm --json",
    "mites --found 9 --bees 300 --month 2026-08 --json",
    "losses --before 8 --dead 1 --queen-failed 1 --json",
];

/// Tries what the house as last committed packs.
///
/// # Errors
/// Names the promise that is not kept.
pub(super) fn run(make: impl FnOnce() -> Result<PathBuf>) -> Result<()> {
    needs::meet(needs::BARE)?;
    let changed = house::capture(Command::new("git").current_dir(house::root()).args(["status", "--porcelain"]))?;
    ensure!(changed.is_empty(), "commit first: what is tried is what a fresh copy of the last commit packs");
    let folder = std::env::temp_dir().join(format!("snowhum-try-{}", std::process::id()));
    std::fs::create_dir_all(&folder)?;
    let outcome = make().and_then(|packages| all(&folder, &packages));
    std::fs::remove_dir_all(&folder).with_context(|| format!("could not take away {}", folder.display()))?;
    outcome
}

fn all(folder: &Path, packages: &Path) -> Result<()> {
    let bare = Bare::make(&folder.join("bare"))?;
    tries_the_seal(packages)?;
    let answers = bare.tries_the_debian_package(packages)?;
    let mut tried: Vec<&str> = Vec::new();
    for target in TARGETS.iter().filter(|target| target.linking.is_static()) {
        if tried.contains(&target.machine) {
            continue;
        }
        tried.push(target.machine);
        match (found(packages, &format!("-{}-linux-static.tar.gz", target.machine))?, target.runner) {
            (Some(archive), None) => tries_the_archive(&archive, &bare, folder, &answers)?,
            (Some(archive), Some(runner)) => tries_elsewhere(&archive, runner, folder, &answers)?,
            (None, _) => println!("no archive was made for {}, and none is tried", target.triple),
        }
    }
    is_the_same_elsewhere(packages, &folder.join("elsewhere").join("snowhum"))
}

/// Whether the sums hold, and the signature where there is one, by the programs that a keeper would ask.
fn tries_the_seal(packages: &Path) -> Result<()> {
    println!("== sums and signature");
    house::pass(Command::new("sha256sum").current_dir(packages).args(["--check", "--strict", "--quiet", SUMS]))?;
    match std::env::var_os(PUBLIC_KEY) {
        Some(key) => {
            house::pass(Command::new("minisign").current_dir(packages).arg("-Vm").arg(SUMS).arg("-p").arg(key))
        }
        None => {
            println!("the sums hold; no signature was checked: name the file of the public key in {PUBLIC_KEY}");
            Ok(())
        }
    }
}

/// Packs a fresh copy in a folder of another name and depth.
fn is_the_same_elsewhere(packages: &Path, copy: &Path) -> Result<()> {
    println!("== the same from another folder");
    let root = house::root();
    house::pass(Command::new("git").args(["clone", "--quiet", "--no-hardlinks"]).arg(&root).arg(copy))?;
    let chore = std::env::current_exe()?;
    house::pass(Command::new(chore).arg("package").env("CARGO_MANIFEST_DIR", copy.join("xtask")))?;
    let sums = |folder: &Path| std::fs::read_to_string(folder.join(SUMS)).context("no sums");
    let (here, there) = (sums(packages)?, sums(&copy.join("target").join("package"))?);
    ensure!(here == there, "the packages differ by the folder they were made in:\n{here}\n{there}");
    println!("the same sums from {} and from another folder", root.display());
    Ok(())
}

/// Names this machine's own Debian, the folder to lay it out in, and where it comes from.
pub(super) fn of_this_debian<'c>(command: &'c mut Command, root: &Path) -> Result<&'c mut Command> {
    let release = std::fs::read_to_string("/etc/os-release").context("what system is this?")?;
    let name = release.lines().find_map(|line| line.strip_prefix("VERSION_CODENAME="));
    command.arg(name.unwrap_or("stable")).arg(root);
    let from = Path::new("/etc/apt/sources.list.d/debian.sources");
    Ok(if from.exists() { command.arg(from) } else { command })
}

/// A bare system in a folder.
struct Bare {
    root: PathBuf,
}

impl Bare {
    /// Of the same Debian as this machine, from the same places.
    fn make(root: &Path) -> Result<Self> {
        println!("== a bare system");
        let mut command = Command::new("mmdebstrap");
        command.args(["--quiet", "--mode=root", "--variant=apt"]);
        house::pass(of_this_debian(&mut command, root)?)?;
        let bare = Self { root: root.to_owned() };
        let compilers = bare.run(&["sh", "-c", "command -v cc gcc rustc cargo || true"])?;
        ensure!(compilers.is_empty(), "there is a compiler in it");
        Ok(bare)
    }

    /// Runs a program in it, with nothing of this machine's surroundings.
    fn run(&self, words: &[&str]) -> Result<Vec<u8>> {
        let mut command = Command::new("chroot");
        command.arg(&self.root).args(words).env_clear().env("PATH", "/usr/sbin:/usr/bin:/sbin:/bin");
        house::capture(command.env("HOME", "/tmp/home"))
    }

    /// Everything in it, by path.
    fn listing(&self) -> Result<String> {
        let skipped = ["-path", "/tmp", "-o", "-path", "/var/log", "-o", "-path", "/var/cache", "-o", "-path"];
        let mut words = vec!["find", "/", "-xdev", "("];
        words.extend(skipped);
        words.extend(["/var/lib/dpkg", ")", "-prune", "-o", "-print"]);
        let told = String::from_utf8(self.run(&words)?)?;
        let mut lines: Vec<&str> = told.lines().collect();
        lines.sort_unstable();
        Ok(lines.join("\n"))
    }

    /// What a program in it answers to everything that is asked.
    fn answers_of(&self, program: &str) -> Result<Vec<Vec<u8>>> {
        let ask = |asked: &&str| self.run(&[program].into_iter().chain(asked.split(' ')).collect::<Vec<_>>());
        ASKED.iter().map(ask).collect()
    }

    /// Installs it, asks it, upgrades it to itself, takes it away; returns what it answered.
    fn tries_the_debian_package(&self, packages: &Path) -> Result<Vec<Vec<u8>>> {
        println!("== the Debian package in it");
        let package = found(packages, "amd64.deb")?.context("no Debian package was made")?;
        std::fs::copy(&package, self.root.join("snowhum.deb"))?;
        let before = self.listing()?;
        self.run(&["dpkg", "-i", "/snowhum.deb"])?;
        for file in [
            "usr/share/man/man1/snowhum-plan.1.gz",
            "usr/share/bash-completion/completions/snowhum",
            "usr/share/zsh/vendor-completions/_snowhum",
            "usr/share/fish/vendor_completions.d/snowhum.fish",
            "usr/share/doc/snowhum/THIRD-PARTY.txt",
            "usr/share/doc/snowhum/snowhum.cdx.json",
            "usr/lib/systemd/system/snowhum.service",
        ] {
            ensure!(self.root.join(file).exists(), "the package holds no {file}");
        }
        let demo = self.run(&["snowhum", "demo", "--no-serve"])?;
        ensure!(!demo.trim_ascii().is_empty(), "the demo says nothing");
        let answers = self.answers_of("snowhum")?;
        self.run(&["dpkg", "-i", "/snowhum.deb"])?;
        self.run(&["dpkg", "--purge", "snowhum"])?;
        let after = self.listing()?;
        ensure!(before == after, "the package leaves something behind:\n{}", differing(&before, &after));
        let bytes: usize = answers.iter().map(Vec::len).sum();
        println!("installed, ran, upgraded, taken away with nothing left; {} answers, {bytes} bytes", answers.len());
        Ok(answers)
    }
}

/// Runs the program of the archive in the bare system, and where there is nothing but itself.
fn tries_the_archive(archive: &Path, bare: &Bare, folder: &Path, answers: &[Vec<u8>]) -> Result<()> {
    println!("== the static archive");
    house::pass(
        Command::new("tar").args(["--no-same-owner", "-C"]).arg(bare.root.join("opt")).arg("-xzf").arg(archive),
    )?;
    let program = format!("/opt/{}/snowhum", folder_in(archive));
    let demo = bare.run(&[&program, "demo", "--no-serve"])?;
    ensure!(!demo.trim_ascii().is_empty(), "the demo says nothing");
    are_alike("the bare system", &bare.answers_of(&program)?, answers)?;
    let nothing = Bare { root: folder.join("nothing") };
    std::fs::create_dir_all(&nothing.root)?;
    std::fs::copy(bare.root.join(program.trim_start_matches('/')), nothing.root.join("snowhum"))?;
    are_alike("an empty folder", &nothing.answers_of("/snowhum")?, answers)?;
    println!("it runs in the bare system and in an empty folder, and answers as the Debian package does, to the byte");
    Ok(())
}

/// Runs the program of another kind of machine, where something here runs such programs.
fn tries_elsewhere(archive: &Path, runner: &str, folder: &Path, answers: &[Vec<u8>]) -> Result<()> {
    println!("== the archive of another machine");
    if Command::new(runner).arg("--version").output().is_err() {
        println!("{runner} is not here, and the program is not tried: apt-get install qemu-user-static");
        return Ok(());
    }
    house::pass(Command::new("tar").arg("-C").arg(folder).arg("-xzf").arg(archive))?;
    let program = folder.join(folder_in(archive)).join("snowhum");
    let ask = |words: &str| {
        let mut command = Command::new(runner);
        command.arg(&program).args(words.split(' ')).env_clear().env("HOME", folder.join("home"));
        house::capture(&mut command)
    };
    ensure!(!ask("demo --no-serve")?.trim_ascii().is_empty(), "the demo says nothing");
    let own = ASKED.iter().map(|asked| ask(asked)).collect::<Result<Vec<_>>>()?;
    are_alike(runner, &own, answers)?;
    println!("it runs by {runner}, and answers as the Debian package does, to the byte");
    Ok(())
}

/// The one folder of an archive.
fn folder_in(archive: &Path) -> String {
    let name = archive.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
    name.trim_end_matches(".tar.gz").to_owned()
}

/// Whether the static program answers as the Debian package's did.
fn are_alike(place: &str, own: &[Vec<u8>], packaged: &[Vec<u8>]) -> Result<()> {
    for ((asked, own), packaged) in ASKED.iter().zip(own).zip(packaged) {
        ensure!(own == packaged, "in {place} the static program answers otherwise than the package to `{asked}`");
    }
    Ok(())
}

/// The package whose name ends so.
fn found(packages: &Path, ending: &str) -> Result<Option<PathBuf>> {
    let mut files: Vec<PathBuf> = std::fs::read_dir(packages)?.flatten().map(|entry| entry.path()).collect();
    files.sort();
    Ok(files.into_iter().find(|file| file.to_string_lossy().ends_with(ending)))
}

fn differing(before: &str, after: &str) -> String {
    let there: Vec<&str> = before.lines().collect();
    after.lines().filter(|line| !there.contains(line)).collect::<Vec<_>>().join("\n")
}
