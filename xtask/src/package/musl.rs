//! Linking against Debian's musl where the Rust library is built from source and brings no musl of its own.

use super::release::Release;
use crate::house;
use anyhow::Result;
use std::path::{Path, PathBuf};
use std::process::Command;

/// Debian's musl, from `musl-dev`.
const MUSL: &str = "/usr/lib/x86_64-linux-musl";
/// GNU's compiler, whose start files and unwinder are linked beside musl.
const GCC: &str = "gcc";

/// Words for rustc that link a program which loads nothing, at whatever address it is put; or what is missing.
///
/// # Errors
/// When the small library beside the unwinder cannot be made.
pub(super) fn linking(release: &Release) -> Result<Result<Vec<String>, String>> {
    let start = Path::new(MUSL).join("rcrt1.o");
    if !start.exists() {
        return Ok(Err(format!("{} is not here: apt-get install musl-dev", start.display())));
    }
    let unwinder = unwinder(&release.build().join("unwind"))?;
    let (begin, end) = (of_gcc("crtbeginS.o")?, of_gcc("crtendS.o")?);
    Ok(Ok(vec![
        "-Clink-self-contained=no".to_owned(),
        format!("-Clinker={GCC}"),
        format!("-Zpre-link-args=-nostartfiles -nostdlib -L{MUSL} {MUSL}/rcrt1.o {MUSL}/crti.o {begin}"),
        // As seen from the root: the words of a build are part of its names, and a folder's place must not be.
        format!("-L{}", unwinder.strip_prefix(house::root()).unwrap_or(&unwinder).display()),
        format!("-Clink-args=-lunwind -lc {end} {MUSL}/crtn.o"),
    ]))
}

/// GNU's unwinder with what it asks of musl, under the name that Rust's library links; returns its folder.
fn unwinder(folder: &Path) -> Result<PathBuf> {
    std::fs::create_dir_all(folder)?;
    let source = house::root().join("xtask").join("src").join("package").join("unwind.c");
    let (object, library) = (folder.join("unwind.o"), folder.join("libunwind.a"));
    house::pass(Command::new("musl-gcc").args(["-O2", "-fPIC", "-g0", "-c", "-o"]).arg(&object).arg(source))?;
    std::fs::copy(of_gcc("libgcc_eh.a")?, &library)?;
    house::pass(Command::new("ar").arg("rD").arg(&library).arg(&object))?;
    Ok(folder.to_owned())
}

fn of_gcc(file: &str) -> Result<String> {
    let told = house::capture(Command::new(GCC).arg(format!("-print-file-name={file}")))?;
    Ok(String::from_utf8(told)?.trim().to_owned())
}
