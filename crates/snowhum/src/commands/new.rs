//! `new`: a commented yard file to fill in.

use std::fs::OpenOptions;
use std::io::{ErrorKind, Write};
use std::path::Path;

use crate::{exit, text};

pub(super) fn run(file: &Path) -> anyhow::Result<()> {
    let shown = file.display();
    let created = OpenOptions::new().write(true).create_new(true).open(file);
    let mut created = created.map_err(|error| match error.kind() {
        ErrorKind::AlreadyExists => {
            exit::input(format!("{shown} exists already and was left as it is; choose another name"))
        }
        _ => exit::environment(format!("{shown} cannot be written: {error}")),
    })?;
    created
        .write_all(snowhum_apiary::template_text().as_bytes())
        .map_err(|error| exit::environment(format!("{shown} cannot be written: {error}")))?;
    text::say(&format!("Wrote {shown}. Fill it in, then: snowhum check {shown}"))?;
    Ok(())
}
