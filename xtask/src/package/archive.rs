//! An archive that is unpacked anywhere: the program, its manual, completions, the service, notices.

use super::compile::Target;
use super::release::Release;
use crate::house;
use anyhow::{Context, Result};
use std::fs::{copy, create_dir_all};
use std::path::Path;
use std::process::Command;

/// Files from the house, and where they lie in the archive.
const KEPT: [(&str, &str); 6] = [
    ("README.md", "README.md"),
    ("LICENSE-MIT", "LICENSE-MIT"),
    ("LICENSE-APACHE", "LICENSE-APACHE"),
    ("docs/OPERATIONS.md", "OPERATIONS.md"),
    ("crates/snowhum/packaging/snowhum.service", "service/snowhum.service"),
    ("crates/snowhum/packaging/snowhum.default", "service/snowhum.default"),
];
/// What was laid out, and where it lies in the archive.
const LAID_OUT: [(&str, &str); 5] = [
    ("bin", "."),
    ("man1", "man/man1"),
    ("completions", "completions"),
    ("THIRD-PARTY.txt", "."),
    ("snowhum.cdx.json", "."),
];

/// Packs what is laid out: names in order, one owner, one time, so that the bytes are those of the contents.
pub(super) fn pack(target: &Target, release: &Release) -> Result<()> {
    let name = format!("snowhum-{}-{}-linux-static", release.version, target.machine);
    let folder = release.out.join("archive").join(&name);
    for (from, to) in KEPT {
        place(&house::root().join(from), &folder.join(to))?;
    }
    for (from, to) in LAID_OUT {
        let from = release.stage().join(from);
        let to = folder.join(to);
        if from.is_dir() {
            for entry in std::fs::read_dir(&from)? {
                let entry = entry?;
                place(&entry.path(), &to.join(entry.file_name()))?;
            }
        } else {
            place(&from, &to.join(from.file_name().context("a file without a name")?))?;
        }
    }
    let packed = release.out.join(format!("{name}.tar"));
    let mut tar = Command::new("tar");
    tar.args(["--format=ustar", "--sort=name", "--owner=root:0", "--group=root:0", "--mode=u=rwX,go=rX"]);
    tar.arg(format!("--mtime=@{}", release.moment)).arg("-C").arg(release.out.join("archive"));
    house::pass(tar.arg("-cf").arg(&packed).arg(&name))?;
    house::pass(Command::new("gzip").args(["-9", "--no-name", "--force"]).arg(&packed))?;
    std::fs::remove_dir_all(release.out.join("archive"))?;
    Ok(())
}

fn place(from: &Path, to: &Path) -> Result<()> {
    create_dir_all(to.parent().context("a file without a folder")?)?;
    copy(from, to).with_context(|| format!("could not copy {} to {}", from.display(), to.display()))?;
    Ok(())
}
