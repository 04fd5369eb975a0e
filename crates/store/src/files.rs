//! Files that are whole or not there.

use std::ffi::OsString;
use std::fs::{self, File, OpenOptions};
use std::io;
use std::path::{Path, PathBuf};

/// The name with an ending after it: `a.db` and `-wal` give `a.db-wal`.
pub(crate) fn beside(path: &Path, ending: &str) -> PathBuf {
    let mut name = OsString::from(path);
    name.push(ending);
    PathBuf::from(name)
}

/// Waits until a file is on the disk.
pub(crate) fn settle(file: &Path) -> io::Result<()> {
    OpenOptions::new().read(true).write(true).open(file)?.sync_all()
}

/// Waits until a folder's names are on the disk. Where a folder cannot be opened as a file the system sees to it.
pub(crate) fn settle_folder_of(file: &Path) -> io::Result<()> {
    match file.parent().map(File::open) {
        Some(Ok(folder)) if cfg!(unix) => folder.sync_all(),
        _ => Ok(()),
    }
}

/// Removes a file if it is there.
pub(crate) fn remove(file: &Path) -> io::Result<()> {
    match fs::remove_file(file) {
        Err(error) if error.kind() != io::ErrorKind::NotFound => Err(error),
        _ => Ok(()),
    }
}

/// Gives a file a second name; where that cannot be done, copies it.
pub(crate) fn also_as(file: &Path, name: &Path) -> io::Result<()> {
    if fs::hard_link(file, name).is_ok() {
        return Ok(());
    }
    if name.try_exists()? {
        return Err(io::ErrorKind::AlreadyExists.into());
    }
    fs::copy(file, name)?;
    settle(name)
}
