//! Files the program makes: never over one that is there already.

use std::fs::File;
use std::io::{Error, ErrorKind, Write};
use std::path::Path;

use snowhum_say::shared_terminal as shared;

use crate::exit;

/// A new, empty file.
///
/// # Errors
/// When there is one of that name already, or none can be made.
pub(crate) fn create(path: &Path) -> anyhow::Result<File> {
    File::create_new(path).map_err(|error| failed(path, &error))
}

/// The same, for its owner's eyes alone.
///
/// # Errors
/// See [`create`].
pub(crate) fn create_private(path: &Path) -> anyhow::Result<File> {
    let mut options = File::options();
    options.write(true).create_new(true);
    #[cfg(unix)]
    std::os::unix::fs::OpenOptionsExt::mode(&mut options, 0o600);
    options.open(path).map_err(|error| failed(path, &error))
}

/// Puts these bytes in the place of a file, whole or not at all: they are written beside it first.
///
/// # Errors
/// When they cannot be written; the file is then as it was.
pub(crate) fn replace(path: &Path, bytes: &[u8]) -> anyhow::Result<()> {
    let mut beside = path.as_os_str().to_owned();
    beside.push(".new");
    let beside = Path::new(&beside);
    let wrong = |error: Error| failed(beside, &error);
    let mut file = create(beside)?;
    let done = file.write_all(bytes).and_then(|()| file.sync_all());
    let done = done.and_then(|()| std::fs::set_permissions(beside, std::fs::metadata(path)?.permissions()));
    let done = done.and_then(|()| std::fs::rename(beside, path));
    if done.is_err() {
        // What was begun is taken away again; that it cannot be is no news beside the fault itself.
        let _ = std::fs::remove_file(beside);
    }
    done.map_err(wrong)
}

/// A file that could not be made or filled, in words for the keeper.
pub(crate) fn failed(path: &Path, error: &Error) -> anyhow::Error {
    let shown = path.display().to_string();
    match error.kind() {
        ErrorKind::AlreadyExists => exit::refused(shared::there_already(shown)),
        _ => exit::failed(shared::unwritable(shown, error.to_string())),
    }
}

#[cfg(test)]
mod tests {
    use super::create;

    #[test]
    fn a_file_that_is_there_is_left_as_it_is() {
        let told = create(std::path::Path::new(env!("CARGO_MANIFEST_PATH"))).unwrap_err().to_string();
        assert!(told.contains("exists already"), "{told}");
    }
}
