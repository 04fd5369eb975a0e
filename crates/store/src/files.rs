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

/// Makes an empty file that its owner alone can read. What SQLite makes beside it is as private as it is.
pub(crate) fn create_private(file: &Path) -> io::Result<File> {
    let mut options = OpenOptions::new();
    options.write(true).create_new(true);
    #[cfg(unix)]
    std::os::unix::fs::OpenOptionsExt::mode(&mut options, 0o600);
    options.open(file)
}

/// The same, where another program may have made it meanwhile.
pub(crate) fn create_private_or_leave(file: &Path) -> io::Result<()> {
    match create_private(file) {
        Err(error) if error.kind() != io::ErrorKind::AlreadyExists => Err(error),
        _ => Ok(()),
    }
}

/// Makes a folder and those above it, if they are not there, that its owner alone can enter, and waits until their names
/// are on the disk.
pub(crate) fn create_private_folder(folder: &Path) -> io::Result<()> {
    if folder.as_os_str().is_empty() || folder.is_dir() {
        return Ok(());
    }
    folder.parent().map_or(Ok(()), create_private_folder)?;
    let mut builder = fs::DirBuilder::new();
    #[cfg(unix)]
    std::os::unix::fs::DirBuilderExt::mode(&mut builder, 0o700);
    match builder.create(folder) {
        Err(error) if error.kind() != io::ErrorKind::AlreadyExists => Err(error),
        _ => settle_folder_of(folder),
    }
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
