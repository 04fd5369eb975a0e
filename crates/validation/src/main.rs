//! Writes the validation page to the file named as its only argument, and the page of parameters beside it.

use std::path::Path;
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
    let parameters = Parameters::shipped()?;
    put(path.as_ref(), &report::page(&all()?, &parameters))?;
    put(&Path::new(&path).with_file_name("PARAMETERS.md"), &report::figures(&parameters))
}

fn put(path: &Path, page: &str) -> Result<(), Box<dyn std::error::Error>> {
    std::fs::write(path, page).map_err(|why| format!("{} cannot be written: {why}", path.display()).into())
}
