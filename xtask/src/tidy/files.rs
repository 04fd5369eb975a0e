//! The house's own text files.

use super::scrub;
use anyhow::{Context, Result};
use std::collections::BTreeSet;
use std::path::Path;

/// Larger files are data, not text to be read.
const LARGEST: u64 = 2_000_000;

/// A text file and its place from the root, with forward strokes.
#[derive(Debug, Clone)]
pub(crate) struct File {
    pub(crate) place: String,
    pub(crate) text: String,
    /// Declared `#[cfg(test)] mod …;` by the file above it.
    is_test_module: bool,
}

/// All text files under the root but what git and cargo leave there.
pub(crate) fn of(root: &Path) -> Result<Vec<File>> {
    let mut files = Vec::new();
    gather(root, root, &mut files)?;
    files.sort_by(|one, other| one.place.cmp(&other.place));
    mark_test_modules(&mut files);
    Ok(files)
}

impl File {
    /// A file by its place and text.
    pub(crate) fn new(place: impl Into<String>, text: impl Into<String>) -> Self {
        Self { place: place.into(), text: text.into(), is_test_module: false }
    }

    /// Whether a name stands in it as a word of its own.
    pub(crate) fn holds(&self, name: &str) -> bool {
        self.text.split(|letter: char| !letter.is_alphanumeric() && letter != '_').any(|word| word == name)
    }

    /// Whether it is Rust.
    pub(crate) fn is_rust(&self) -> bool {
        self.place.ends_with(".rs")
    }

    /// Whether the whole file is there for tests, benches or chores.
    pub(crate) fn is_beside_the_product(&self) -> bool {
        let beside = [
            "xtask/",
            "crates/browser/",
            "crates/fuzzed/",
            "crates/testkit/",
            "crates/validation/",
            "crates/calibration/",
            "fuzz/",
        ]
        .iter()
        .any(|start| self.place.starts_with(start));
        let folder = ["/tests/", "/benches/", "/examples/"].iter().any(|part| self.place.contains(part));
        beside || folder || self.is_test_module
    }

    /// Whether it is a module of a crate's own tests.
    pub(crate) fn is_of_tests(&self) -> bool {
        self.is_test_module || self.place.contains("/tests/")
    }
}

fn gather(root: &Path, folder: &Path, files: &mut Vec<File>) -> Result<()> {
    for entry in std::fs::read_dir(folder).with_context(|| format!("could not list {}", folder.display()))? {
        let entry = entry?;
        let (path, name) = (entry.path(), entry.file_name().to_string_lossy().into_owned());
        let kind = entry.file_type()?;
        if kind.is_dir() && !is_left_over(&name) {
            gather(root, &path, files)?;
        }
        if !kind.is_file() || entry.metadata()?.len() > LARGEST {
            continue;
        }
        let Ok(text) = std::fs::read_to_string(&path) else { continue };
        let place = path.strip_prefix(root)?.to_string_lossy().replace('\\', "/");
        files.push(File::new(place, text));
    }
    Ok(())
}

fn mark_test_modules(files: &mut [File]) {
    let places: BTreeSet<String> = files.iter().filter(|file| file.is_rust()).flat_map(test_modules).collect();
    files.iter_mut().filter(|file| places.contains(&file.place)).for_each(|file| file.is_test_module = true);
}

/// Where the modules may lie that a file declares for tests alone.
fn test_modules(file: &File) -> Vec<String> {
    let code = scrub::code(&file.text);
    let (folder, name) = file.place.rsplit_once('/').unwrap_or(("", &file.place));
    let folder = match name {
        "lib.rs" | "main.rs" | "mod.rs" => folder.to_owned(),
        name => format!("{folder}/{}", name.trim_end_matches(".rs")),
    };
    code.split("#[cfg(test)]")
        .skip(1)
        .filter_map(|after| after.trim_start().strip_prefix("mod ")?.split_once([';', '{']))
        .map(|(module, _)| format!("{folder}/{}.rs", module.trim()))
        .collect()
}

fn is_left_over(folder: &str) -> bool {
    folder == ".git" || folder == "node_modules" || folder == "target" || folder.starts_with("target-")
}

#[cfg(test)]
mod tests {
    use super::{File, mark_test_modules};

    #[test]
    fn a_module_declared_for_tests_lies_beside_the_product() {
        let declaration = "#[cfg(test)]\nmod audit;\nmod step;\n// #[cfg(test)] mod walk;";
        let mut files = ["lib.rs", "step.rs", "step/audit.rs", "audit.rs", "walk.rs"]
            .map(|name| File::new(format!("crates/x/src/{name}"), if name == "lib.rs" { declaration } else { "" }));
        mark_test_modules(&mut files);
        let beside: Vec<_> = files.iter().filter(|f| f.is_beside_the_product()).map(|f| f.place.as_str()).collect();
        assert_eq!(beside, ["crates/x/src/audit.rs"]);

        files[1].text = declaration.to_owned();
        mark_test_modules(&mut files);
        assert!(files[2].is_beside_the_product());
    }
}
