//! Notices: the program's own, and those of everything linked into it.

use super::release::{Release, below};
use crate::house;
use anyhow::{Context, Result};
use serde_json::Value;
use std::collections::BTreeMap;
use std::fmt::Write;
use std::path::Path;

/// What a file with a licence's text is called, whatever comes after.
const NAMES: [&str; 5] = ["license", "licence", "copying", "notice", "unlicense"];

/// The program's own notice as Debian writes it.
pub(super) fn own() -> Result<String> {
    let mit = std::fs::read_to_string(house::root().join("LICENSE-MIT"))?;
    let (holder, terms) =
        mit.split_once("\n\n").and_then(|(_, rest)| rest.split_once("\n\n")).context("LICENSE-MIT")?;
    let terms: String = terms.lines().map(|line| format!(" {}\n", if line.is_empty() { "." } else { line })).collect();
    Ok(format!(
        "Format: https://www.debian.org/doc/packaging-manuals/copyright-format/1.0/\nUpstream-Name: snowhum\n\n\
         Files: *\nCopyright: {}\nLicense: Expat or Apache-2.0\nComment: Notices of what is linked into the program \
         are in THIRD-PARTY.txt.\n\nLicense: Expat\n{terms}\nLicense: Apache-2.0\n On Debian systems the text is in \
         /usr/share/common-licenses/Apache-2.0.\n",
        holder.trim_start_matches("Copyright ")
    ))
}

/// Each text once, under the names of those who ask for it; then who brings none.
pub(super) fn third_parties(release: &Release) -> Result<String> {
    let packages = below(&release.metadata, "snowhum");
    let mut texts: BTreeMap<String, Vec<String>> = BTreeMap::new();
    let mut page = String::from("What is linked into Snowhum, by whom, under which terms\n\n");
    for package in packages.iter().filter(|package| package["source"].is_string()) {
        let word = |key: &str| package[key].as_str().unwrap_or("-");
        writeln!(page, "{} {}: {} ({})", word("name"), word("version"), word("license"), word("repository"))?;
        for text in texts_of(package)? {
            texts.entry(text).or_default().push(format!("{} {}", word("name"), word("version")));
        }
    }
    page.push_str(
        "Rust's standard library: MIT OR Apache-2.0 (https://github.com/rust-lang/rust)\n\
         In the static program also musl: MIT (https://musl.libc.org), and GNU's unwinder: GPL-3.0-or-later WITH \
         GCC-exception-3.1\n",
    );
    let mut texts: Vec<(String, Vec<String>)> = texts.into_iter().collect();
    texts.sort_by(|one, other| one.1.cmp(&other.1));
    for (text, names) in texts {
        write!(page, "\n{}\n{}\n\n{}\n", "=".repeat(80), names.join(", "), text)?;
    }
    let embedded = std::fs::read_to_string(house::root().join("data/climatology/README.md"))?;
    let attribution = embedded.split("\n\n").find(|part| part.starts_with("**Attribution.**"));
    write!(page, "\n{}\nThe embedded climate\n\n{}\n", "=".repeat(80), attribution.context("no attribution")?)?;
    Ok(page)
}

/// Texts of licences that lie at the root of a package, by name.
fn texts_of(package: &Value) -> Result<Vec<String>> {
    let manifest = Path::new(package["manifest_path"].as_str().unwrap_or_default());
    let folder = manifest.parent().context("a manifest without a folder")?;
    let mut files = Vec::new();
    for entry in std::fs::read_dir(folder).with_context(|| format!("could not list {}", folder.display()))? {
        let entry = entry?;
        let name = entry.file_name().to_string_lossy().to_lowercase();
        if entry.file_type()?.is_file() && NAMES.iter().any(|start| name.starts_with(start)) {
            files.push(entry.path());
        }
    }
    files.sort();
    let read = |path: &std::path::PathBuf| std::fs::read(path).map(|text| String::from_utf8_lossy(&text).into_owned());
    Ok(files.iter().map(read).collect::<Result<Vec<_>, _>>()?.into_iter().map(|text| text.trim().to_owned()).collect())
}
