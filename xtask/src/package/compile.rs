//! The program for one kind of machine, the same bytes wherever it is built by the same compilers.

use super::musl::Musl;
use super::release::Release;
use crate::{house, needs};
use anyhow::Result;
use std::path::{Path, PathBuf};
use std::process::Command;

/// A kind of machine.
#[derive(Debug)]
pub(super) struct Target {
    pub(super) triple: &'static str,
    /// As in the names of archives.
    pub(super) machine: &'static str,
    /// How the C library comes to the program.
    pub(super) linking: Linking,
    /// Runs its programs on this machine, where that is not of its kind.
    pub(super) runner: Option<&'static str>,
    /// The C compiler, which links as well.
    pub(super) compiler: &'static str,
    /// What installs the C compiler.
    pub(super) installed_by: &'static str,
}

/// How the C library comes to a program.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Linking {
    /// GNU's, loaded as the program starts.
    Loaded,
    /// musl's, linked in: the program loads nothing.
    WithMusl,
    /// GNU's, linked in: names of hosts alone are looked up by what the system has of it.
    WithGnu,
}

impl Linking {
    /// Whether the program starts on any Linux.
    pub(super) fn is_static(self) -> bool {
        self != Self::Loaded
    }
}

/// First the machine that packages are made on. Of two for one kind of machine and as archives, the later is made where
/// the earlier cannot be.
pub(super) const TARGETS: [Target; 4] = [
    Target {
        triple: "x86_64-unknown-linux-gnu",
        machine: "x86_64",
        linking: Linking::Loaded,
        runner: None,
        compiler: "gcc",
        installed_by: "apt-get install gcc",
    },
    Target {
        triple: "x86_64-unknown-linux-musl",
        machine: "x86_64",
        linking: Linking::WithMusl,
        runner: None,
        compiler: "musl-gcc",
        installed_by: "apt-get install musl-tools",
    },
    Target {
        triple: "x86_64-unknown-linux-gnu",
        machine: "x86_64",
        linking: Linking::WithGnu,
        runner: None,
        compiler: "gcc",
        installed_by: "apt-get install gcc",
    },
    Target {
        triple: "aarch64-unknown-linux-musl",
        machine: "aarch64",
        linking: Linking::WithMusl,
        runner: Some("qemu-aarch64-static"),
        compiler: "aarch64-linux-gnu-gcc",
        installed_by: "apt-get install gcc-aarch64-linux-gnu",
    },
];

/// What came of a build.
#[derive(Debug)]
pub(super) enum Outcome {
    Built(PathBuf),
    /// What is not here, and how to get it.
    Missing(String),
}

/// A Rust compiler and what it has of the standard library for a target.
#[derive(Debug)]
struct Rust {
    cargo: PathBuf,
    rustc: PathBuf,
    /// Whether its library is there as source alone and is built along.
    from_source: bool,
    sysroot: PathBuf,
}

/// Builds the program.
///
/// # Errors
/// When it does not build; a missing compiler or library is no error.
pub(super) fn build(target: &Target, release: &Release) -> Result<Outcome> {
    if Command::new(target.compiler).arg("--version").output().is_err() {
        return Ok(Outcome::Missing(format!("{} is not here: {}", target.compiler, target.installed_by)));
    }
    let Some(rust) = Rust::for_target(target) else {
        let triple = target.triple;
        return Ok(Outcome::Missing(format!(
            "no Rust library for it is here: rustup target add {triple}, or rustup component add rust-src, or Debian's \
             rustc-web, cargo-web and rust-web-src"
        )));
    };
    let musl = match (target.linking == Linking::WithMusl).then(|| Musl::of(target, release)).transpose()? {
        Some(Err(missing)) => return Ok(Outcome::Missing(missing)),
        Some(Ok(musl)) => Some(musl),
        None => None,
    };
    let mut cargo = rust.cargo(target, release);
    if let Some(musl) = musl {
        cargo.env(format!("CFLAGS_{}", target.triple.replace('-', "_")), rust.c_words(&musl.headers()?));
        if rust.from_source {
            cargo.arg("--").args(musl.linking(release)?);
        }
    }
    house::pass(&mut cargo)?;
    Ok(Outcome::Built(release.build_of(target).join(target.triple).join("release").join("snowhum")))
}

impl Rust {
    /// The compiler of this chore, else Debian's.
    fn for_target(target: &Target) -> Option<Self> {
        let own = (PathBuf::from(house::cargo(&[]).get_program()), PathBuf::from("rustc"));
        let debian = (PathBuf::from("/usr/bin/cargo"), PathBuf::from("/usr/bin/rustc"));
        [own, debian].into_iter().find_map(|(cargo, rustc)| Self::with_library(target, cargo, rustc))
    }

    fn with_library(target: &Target, cargo: PathBuf, rustc: PathBuf) -> Option<Self> {
        let ask = |words: &[&str]| {
            let told = house::capture(Command::new(&rustc).env_remove("LD_LIBRARY_PATH").args(words)).ok()?;
            Some(PathBuf::from(String::from_utf8(told).ok()?.trim()))
        };
        let built = ask(&["--print", "target-libdir", "--target", target.triple])?;
        let sysroot = ask(&["--print", "sysroot"])?;
        let is_built = std::fs::read_dir(built).is_ok_and(|entries| {
            entries.flatten().any(|entry| entry.file_name().to_string_lossy().starts_with("libstd-"))
        });
        let is_source = library(&sysroot).join("library").join("std").is_dir();
        (is_built || is_source).then_some(Self { cargo, rustc, from_source: !is_built, sysroot })
    }

    fn cargo(&self, target: &Target, release: &Release) -> Command {
        let words = ["auditable", "rustc", "--locked", "--release", "--package", "snowhum", "--bin", "snowhum"];
        // The program carries the list of its parts, so that known faults can be looked up from it alone.
        let mut cargo = house::cargo_of(&needs::place_of("cargo-auditable"), &words);
        if self.cargo.is_absolute() && self.rustc.is_absolute() {
            // What the other toolchain left in the surroundings is none of this one's.
            cargo.env("RUSTC", &self.rustc).env("PATH", "/usr/bin:/bin");
            ["LD_LIBRARY_PATH", "RUSTUP_TOOLCHAIN"].iter().for_each(|name| {
                cargo.env_remove(name);
            });
        }
        cargo.env("CARGO", &self.cargo);
        cargo.args(["--target", target.triple, "--target-dir"]).arg(release.build_of(target));
        if self.from_source {
            cargo.arg("-Zbuild-std=std,panic_unwind").env("RUSTC_BOOTSTRAP", "1");
        }
        let mut flags = told(&self.places(), "--remap-path-prefix=");
        if target.linking == Linking::WithGnu {
            flags.push("-Ctarget-feature=+crt-static".to_owned());
        }
        let names = target.triple.replace('-', "_");
        cargo
            .env("CARGO_ENCODED_RUSTFLAGS", flags.join("\x1f"))
            .env("CFLAGS", self.c_words(&[]))
            .env(format!("CC_{names}"), target.compiler)
            .env(format!("CARGO_TARGET_{}_LINKER", names.to_uppercase()), target.compiler)
            .env("CARGO_PROFILE_RELEASE_STRIP", "symbols")
            .env("CARGO_INCREMENTAL", "0")
            .env("SOURCE_DATE_EPOCH", &release.moment);
        cargo
    }

    /// Words for the C compiler: names for folders of this machine, and more.
    fn c_words(&self, more: &[String]) -> String {
        [told(&self.places(), "-ffile-prefix-map="), more.to_vec()].concat().join(" ")
    }

    /// Folders of this machine, and what they are called in the program.
    fn places(&self) -> [(PathBuf, &'static str); 3] {
        let home = || std::env::var_os("HOME").map(|home| PathBuf::from(home).join(".cargo")).unwrap_or_default();
        let crates = std::env::var_os("CARGO_HOME").map_or_else(home, PathBuf::from);
        [(house::root(), "/snowhum"), (crates, "/crates"), (library(&self.sysroot), "/rust")]
    }
}

fn library(sysroot: &Path) -> PathBuf {
    sysroot.join("lib").join("rustlib").join("src").join("rust")
}

fn told(places: &[(PathBuf, &str)], flag: &str) -> Vec<String> {
    places.iter().map(|(from, to)| format!("{flag}{}={to}", from.display())).collect()
}
