//! The file that a yard came from, added to.

use snowhum_apiary::{AnotherHive, Apiary};
use snowhum_say::{Message, fault_page as text};
use std::path::Path;

/// Writes a hive at the end of the yard's file, whole or not at all; a file of another autumn is left as it is.
pub(crate) fn written(file: &Path, another: &AnotherHive, yard: &Apiary) -> Result<(), Message> {
    let wrong = |error: std::io::Error| text::file(file.display().to_string(), error.to_string());
    let text = std::fs::read_to_string(file).map_err(wrong)?;
    let with_it = another.appended_to(&text);
    let (read, _) = snowhum_apiary::read(&with_it, &file.display().to_string()).map_err(|faults| faults.message())?;
    if read.as_of != yard.as_of {
        return Ok(());
    }
    let mut beside = file.as_os_str().to_owned();
    beside.push(".new");
    std::fs::write(&beside, with_it).and_then(|()| std::fs::rename(&beside, file)).map_err(wrong)
}
