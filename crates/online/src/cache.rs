//! Answers kept on disk: one small JSON file a page, never half written.

use crate::fault::CacheFault;
use jiff::Timestamp;
use serde::{Deserialize, Serialize};
use std::fs::{self, File};
use std::io::{self, Read, Write};
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicU64, Ordering};

/// Version of the file's form; one of another version is left out in silence.
const FORM: u32 = 1;
/// Largest file that is read: a body at its limit, every character escaped, still fits.
const LARGEST: u64 = 32 << 20;

/// A folder of kept answers.
#[derive(Debug, Clone)]
pub(crate) struct Cache {
    folder: PathBuf,
}

/// What is kept of one page.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
pub(crate) struct Entry {
    /// The service wants to be left alone until then.
    pub(crate) not_before: Option<Timestamp>,
    /// The last good answer.
    pub(crate) answer: Option<Kept>,
}

/// A kept answer.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub(crate) struct Kept {
    /// When the service gave or confirmed it.
    pub(crate) fetched: Timestamp,
    /// Not to be asked again before.
    pub(crate) fresh_until: Timestamp,
    /// The service's own words, sent back to it as they are.
    pub(crate) last_modified: Option<String>,
    /// As received.
    pub(crate) body: String,
}

#[derive(Serialize, Deserialize)]
struct Form {
    form: u32,
    url: String,
    #[serde(flatten)]
    entry: Entry,
}

impl Cache {
    pub(crate) fn new(folder: PathBuf) -> Self {
        Self { folder }
    }

    /// The file of a page.
    pub(crate) fn file(&self, name: &str) -> PathBuf {
        self.folder.join(format!("{name}.json"))
    }

    /// What is kept under a name for an address; `None` if nothing is.
    pub(crate) fn load(&self, name: &str, url: &str) -> Result<Option<Entry>, CacheFault> {
        let file = self.file(name);
        let damaged = |wrong: String| CacheFault::Damaged { file: file.clone(), wrong };
        let text = match read(&file) {
            Ok(text) => text,
            // The folder may not be there yet, or be no folder; saving will say so.
            Err(error) if matches!(error.kind(), io::ErrorKind::NotFound | io::ErrorKind::NotADirectory) => {
                return Ok(None);
            }
            Err(error) => return Err(damaged(error.to_string())),
        };
        let form: Form = serde_json::from_str(&text).map_err(|error| damaged(error.to_string()))?;
        Ok((form.form == FORM && form.url == url).then_some(form.entry))
    }

    /// Keeps an entry: written beside, then renamed, so that a file is whole or not there.
    pub(crate) fn save(&self, name: &str, url: &str, entry: &Entry) -> Result<(), CacheFault> {
        static COUNT: AtomicU64 = AtomicU64::new(0);
        let file = self.file(name);
        let form = Form { form: FORM, url: url.to_owned(), entry: entry.clone() };
        let part = format!("{name}.{}-{}.part", std::process::id(), COUNT.fetch_add(1, Ordering::Relaxed));
        let part = self.folder.join(part);
        let kept = serde_json::to_vec(&form).map_err(io::Error::other).and_then(|bytes| {
            fs::create_dir_all(&self.folder)?;
            write(&part, &bytes)?;
            fs::rename(&part, &file)
        });
        kept.map_err(|error| {
            // The part is of no use; if it cannot be removed either, that is the same fault.
            let _ = fs::remove_file(&part);
            CacheFault::Unwritable { file: self.folder.clone(), wrong: error.to_string() }
        })
    }
}

fn read(file: &Path) -> io::Result<String> {
    let mut text = String::new();
    File::open(file)?.take(LARGEST).read_to_string(&mut text)?;
    Ok(text)
}

fn write(file: &Path, bytes: &[u8]) -> io::Result<()> {
    let mut part = File::create_new(file)?;
    part.write_all(bytes)?;
    part.sync_all()
}
