//! Linking against Debian's musl where the Rust library is built from source and brings no musl of its own.

use super::compile::Target;
use super::release::Release;
use crate::house;
use anyhow::Result;
use std::path::{Path, PathBuf};
use std::process::Command;

/// Debian's musl for one kind of machine.
#[derive(Debug)]
pub(super) struct Musl {
    /// Its library, as seen from the root where it lies in the house: the words of a build are part of its names, and a
    /// folder's place must not be.
    library: PathBuf,
    /// Its headers, where the compiler does not find them itself.
    headers: Option<PathBuf>,
    /// The compiler that compiles against it.
    compiler: &'static str,
    /// GNU's compiler, whose start files and unwinder are linked beside it.
    gcc: &'static str,
}

impl Musl {
    /// This machine's from `musl-dev`; another's is fetched from the same Debian. Else what is missing.
    ///
    /// # Errors
    /// When it cannot be looked for.
    pub(super) fn of(target: &Target, release: &Release) -> Result<Result<Self, String>> {
        let folder = format!("{}-linux-musl", target.machine);
        let musl = if target.runner.is_none() {
            let library = Path::new("/usr/lib").join(folder);
            Self { library, headers: None, compiler: target.compiler, gcc: "gcc" }
        } else {
            let root = release.build().join("musl").join(target.machine);
            if !root.join("usr/lib").join(&folder).exists() && fetch(&root, target).is_err() {
                return Ok(Err("Debian's musl-dev for it cannot be fetched: apt-get install mmdebstrap".to_owned()));
            }
            let within = root.strip_prefix(house::root()).unwrap_or(&root).join("usr");
            let headers = root.join("usr/include").join(&folder);
            let library = within.join("lib").join(folder);
            Self { library, headers: Some(headers), compiler: target.compiler, gcc: target.compiler }
        };
        let start = house::root().join(&musl.library).join("rcrt1.o");
        Ok(if start.exists() {
            Ok(musl)
        } else {
            Err(format!("{} is not here: apt-get install musl-dev", start.display()))
        })
    }

    /// Words for the C compiler that name the headers.
    ///
    /// # Errors
    /// When the compiler does not say where its own are.
    pub(super) fn headers(&self) -> Result<Vec<String>> {
        let Some(headers) = &self.headers else { return Ok(Vec::new()) };
        let own = self.of_gcc("include")?;
        // GNU's own atomics ask GNU's C library what the machine can.
        Ok(["-nostdinc", "-isystem", &headers.to_string_lossy(), "-isystem", &own, "-mno-outline-atomics"]
            .map(str::to_owned)
            .to_vec())
    }

    /// Words for rustc that link a program which loads nothing, at whatever address it is put.
    ///
    /// # Errors
    /// When the small library beside the unwinder cannot be made.
    pub(super) fn linking(&self, release: &Release) -> Result<Vec<String>> {
        let unwinder = self.unwinder(&release.build().join("unwind").join(self.gcc))?;
        let (begin, end) = (self.of_gcc("crtbeginS.o")?, self.of_gcc("crtendS.o")?);
        let musl = self.library.display();
        Ok(vec![
            "-Clink-self-contained=no".to_owned(),
            format!("-Clinker={}", self.gcc),
            format!("-Zpre-link-args=-nostartfiles -nostdlib -L{musl} {musl}/rcrt1.o {musl}/crti.o {begin}"),
            format!("-L{}", unwinder.strip_prefix(house::root()).unwrap_or(&unwinder).display()),
            format!("-Clink-args=-lunwind -lc -lgcc {end} {musl}/crtn.o"),
        ])
    }

    /// GNU's unwinder with what it asks of musl, under the name that Rust's library links; returns its folder.
    fn unwinder(&self, folder: &Path) -> Result<PathBuf> {
        std::fs::create_dir_all(folder)?;
        let source = house::root().join("xtask").join("src").join("package").join("unwind.c");
        let (object, library) = (folder.join("unwind.o"), folder.join("libunwind.a"));
        let mut compiler = Command::new(self.compiler);
        compiler.args(["-O2", "-fPIC", "-g0"]).args(self.headers()?).args(["-c", "-o"]).arg(&object);
        house::pass(compiler.arg(source))?;
        std::fs::copy(self.of_gcc("libgcc_eh.a")?, &library)?;
        house::pass(Command::new("ar").arg("rD").arg(&library).arg(&object))?;
        Ok(folder.to_owned())
    }

    fn of_gcc(&self, file: &str) -> Result<String> {
        let told = house::capture(Command::new(self.gcc).arg(format!("-print-file-name={file}")))?;
        Ok(String::from_utf8(told)?.trim().to_owned())
    }
}

/// Lays another machine's musl out in a folder.
fn fetch(root: &Path, target: &Target) -> Result<()> {
    let architecture = if target.machine == "aarch64" { "arm64" } else { target.machine };
    let mut command = Command::new("mmdebstrap");
    command.args(["--quiet", "--mode=root", "--variant=extract", "--include=musl-dev"]);
    command.args(["--aptopt=APT::Install-Recommends \"false\"", &format!("--architectures={architecture}")]);
    house::pass(super::trial::of_this_debian(&mut command, root)?)
}
