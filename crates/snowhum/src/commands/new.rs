//! `new`: a commented yard file to fill in.

use std::io::Write;
use std::path::Path;

use crate::{new_file, text};

pub(super) fn run(file: &Path) -> anyhow::Result<()> {
    let template = snowhum_apiary::template_text();
    new_file::create(file)?.write_all(template.as_bytes()).map_err(|error| new_file::failed(file, &error))?;
    text::say(&format!("Wrote {0}. Fill it in, then: snowhum check {0}", file.display()))
}
