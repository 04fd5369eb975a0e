//! Packages tried: made twice in two folders, installed into a bare system without a compiler, run, and taken away.

use crate::{house, needs};
use anyhow::{Context, Result, ensure};
use std::path::{Path, PathBuf};
use std::process::Command;

const SUMS: &str = "SHA256SUMS";

/// Tries what the house as last committed packs.
///
/// # Errors
/// Names the promise that is not kept.
pub(super) fn run() -> Result<()> {
    needs::meet(needs::BARE)?;
    let changed = house::capture(Command::new("git").current_dir(house::root()).args(["status", "--porcelain"]))?;
    ensure!(changed.is_empty(), "commit first: what is tried is what a fresh copy of the last commit packs");
    let folder = std::env::temp_dir().join(format!("snowhum-try-{}", std::process::id()));
    std::fs::create_dir_all(&folder)?;
    let outcome = all(&folder);
    std::fs::remove_dir_all(&folder).with_context(|| format!("could not take away {}", folder.display()))?;
    outcome
}

fn all(folder: &Path) -> Result<()> {
    let packages = super::make()?;
    let bare = Bare::make(&folder.join("bare"))?;
    let plan = bare.tries_the_debian_package(&packages)?;
    match found(&packages, "static.tar.gz")? {
        Some(archive) => tries_the_archive(&archive, &bare, folder, &plan)?,
        None => println!("no static archive was made, and none is tried"),
    }
    is_the_same_elsewhere(&packages, &folder.join("elsewhere").join("snowhum"))
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

/// A bare system in a folder.
struct Bare {
    root: PathBuf,
}

impl Bare {
    /// Of the same Debian as this machine, from the same places.
    fn make(root: &Path) -> Result<Self> {
        println!("== a bare system");
        let release = std::fs::read_to_string("/etc/os-release").context("what system is this?")?;
        let name = release.lines().find_map(|line| line.strip_prefix("VERSION_CODENAME="));
        let mut command = Command::new("mmdebstrap");
        command.args(["--quiet", "--mode=root", "--variant=apt", name.unwrap_or("stable")]).arg(root);
        let from = Path::new("/etc/apt/sources.list.d/debian.sources");
        if from.exists() {
            command.arg(from);
        }
        house::pass(&mut command)?;
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

    /// Installs it, asks it, upgrades it to itself, takes it away; returns the plan it made.
    fn tries_the_debian_package(&self, packages: &Path) -> Result<Vec<u8>> {
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
        let plan = self.run(&["snowhum", "plan", "--json", "--threads", "2"])?;
        self.run(&["dpkg", "-i", "/snowhum.deb"])?;
        self.run(&["dpkg", "--purge", "snowhum"])?;
        let after = self.listing()?;
        ensure!(before == after, "the package leaves something behind:\n{}", differing(&before, &after));
        println!("installed, ran, upgraded, taken away with nothing left; a plan of {} bytes", plan.len());
        Ok(plan)
    }
}

/// Runs the program of the archive in the bare system, and where there is nothing but itself.
fn tries_the_archive(archive: &Path, bare: &Bare, folder: &Path, plan: &[u8]) -> Result<()> {
    println!("== the static archive");
    house::pass(
        Command::new("tar").args(["--no-same-owner", "-C"]).arg(bare.root.join("opt")).arg("-xzf").arg(archive),
    )?;
    let name = archive.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
    let program = format!("/opt/{}/snowhum", name.trim_end_matches(".tar.gz"));
    let asked = ["plan", "--json", "--threads", "2"];
    let there = bare.run(&[&[program.as_str()][..], &asked].concat())?;
    let nothing = Bare { root: folder.join("nothing") };
    std::fs::create_dir_all(&nothing.root)?;
    std::fs::copy(bare.root.join(program.trim_start_matches('/')), nothing.root.join("snowhum"))?;
    let alone = nothing.run(&[&["/snowhum"][..], &asked].concat())?;
    ensure!(alone == there, "the program makes another plan where nothing else is");
    // Exponentials and their like are the C library's, and each has last bits of its own.
    let likeness = if there == plan { "is" } else { "is not" };
    println!("it runs in the bare system and in an empty folder; its plan {likeness} the Debian package's to the byte");
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
