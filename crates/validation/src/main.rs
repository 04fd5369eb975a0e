//! Writes the validation page to the file named as its only argument.

use std::process::ExitCode;

use snowhum_validation::{all, report};
use snowhum_winter::Parameters;

fn main() -> ExitCode {
    match write() {
        Ok(()) => ExitCode::SUCCESS,
        Err(why) => {
            let _ = std::io::Write::write_fmt(&mut std::io::stderr(), format_args!("{why}\n"));
            ExitCode::FAILURE
        }
    }
}

fn write() -> Result<(), Box<dyn std::error::Error>> {
    let path = std::env::args_os().nth(1).ok_or("name the file to write, such as docs/VALIDATION.md")?;
    let page = report::page(&all()?, &Parameters::shipped()?);
    std::fs::write(&path, page).map_err(|why| format!("{} cannot be written: {why}", path.to_string_lossy()))?;
    Ok(())
}
