//! Writes every kind of plate, drawn of invented hives, into a folder: `cargo run -p snowhum-picture --example plates -- out`.

mod samples;

use anyhow::{Context, Result};
use snowhum_picture::{IdPrefix, Plate, PlateWidth};
use snowhum_say::Tongue;
use std::path::{Path, PathBuf};

fn main() -> Result<()> {
    let folder = PathBuf::from(std::env::args().nth(1).context("name a folder to write into")?);
    std::fs::create_dir_all(&folder)?;
    for (name, hive) in samples::hives::all() {
        write(&folder, &format!("desk-{name}"), &hive.cutaway(PlateWidth::Desk))?;
        write(&folder, &format!("phone-{name}"), &hive.cutaway(PlateWidth::Phone))?;
        write(&folder, &format!("small-{name}"), &hive.thumbnail())?;
    }
    for (name, plate) in samples::charts::all(Tongue::BRITISH) {
        write(&folder, &format!("chart-{name}"), &plate)?;
    }
    Ok(())
}

fn write(folder: &Path, name: &str, plate: &Plate) -> Result<()> {
    let path = folder.join(format!("{name}.svg"));
    std::fs::write(&path, plate.standalone(&IdPrefix::new(name))).with_context(|| path.display().to_string())
}
