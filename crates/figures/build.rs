//! Writes the figures that no run varies as constants of Rust, one module a file.

#[path = "src/figure.rs"]
#[expect(unreachable_pub, reason = "public where the crate has it")]
mod figure;
#[path = "src/reader.rs"]
#[expect(unreachable_pub, reason = "public where the crate has it")]
mod reader;

use figure::Status;
use reader::FigureFile;
use std::error::Error;
use std::fmt::Write;
use std::path::Path;
use std::{env, fs};

/// Files of `data/` all of whose figures are constants.
const CONSTANTS: [&str; 12] = [
    "calibration",
    "club",
    "drawing",
    "empty_hive",
    "looking_ahead",
    "watch_looks",
    "weather_files",
    "weather_generator",
    "weather_limits",
    "wind",
    "winter_hour",
    "winter_start",
];

fn main() -> Result<(), Box<dyn Error>> {
    let data = Path::new(&env::var("CARGO_MANIFEST_DIR")?).join("../../data");
    let mut rust = String::new();
    for name in CONSTANTS {
        let path = data.join(name).with_extension("toml");
        println!("cargo::rerun-if-changed={}", path.display());
        let module = fs::read_to_string(&path).map_err(Box::from).and_then(|text| module(name, &text));
        rust += &module.map_err(|fault| format!("{}: {fault}", path.display()))?;
    }
    writeln!(rust, "/// Files all of whose figures are constants.\npub const CONSTANTS: &[&str] = &{CONSTANTS:?};")?;
    Ok(fs::write(Path::new(&env::var("OUT_DIR")?).join("constants.rs"), rust)?)
}

fn module(name: &str, text: &str) -> Result<String, Box<dyn Error>> {
    let mut file = FigureFile::read(text)?;
    let rows = file.take_rows();
    let mut rust = format!("/// Figures of `data/{name}.toml`.\npub mod {name} {{\n");
    for (name, one) in file.take_all()? {
        if one.varies || one.prior.is_some() {
            return Err(format!("figure {name} varies, so it is no constant").into());
        }
        let about = about(&one.unit, &one.source, one.status);
        writeln!(rust, "#[doc = {about:?}]\npub const {}: f64 = {:?};", name.to_uppercase(), one.value)?;
    }
    for (name, row) in rows {
        let (about, count) = (about(&row.unit, &row.source, row.status), row.values.len());
        writeln!(rust, "#[doc = {about:?}]\npub const {}: [f64; {count}] = {:?};", name.to_uppercase(), row.values)?;
    }
    Ok(rust + "}\n")
}

fn about(unit: &str, source: &str, status: Status) -> String {
    format!("{unit}. Source: {source} ({}).", status.words())
}
