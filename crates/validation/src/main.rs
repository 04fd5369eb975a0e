//! Writes the validation page to the file named as its only argument, the page of parameters and the pictures beside it.

use std::path::Path;
use std::process::ExitCode;

use snowhum_validation::Validation;

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
    let path: &Path = path.as_ref();
    let validation = Validation::compute()?;
    put(path, &validation.page())?;
    put(&path.with_file_name("PARAMETERS.md"), &validation.parameters_page()?)?;
    let folder = path.with_file_name("pictures");
    std::fs::create_dir_all(&folder)?;
    validation.pictures().iter().try_for_each(|picture| put(&folder.join(picture.file), &picture.svg))
}

fn put(path: &Path, page: &str) -> Result<(), Box<dyn std::error::Error>> {
    std::fs::write(path, page).map_err(|why| format!("{} cannot be written: {why}", path.display()).into())
}
