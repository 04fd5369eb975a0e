//! What is printed is complete.

use anyhow::{Context, Result, ensure};
use std::io::Write;
use std::process::{Command, Stdio};
use thirtyfour::common::print::PrintParameters;

use crate::browser::{Browser, Form, walk};
use crate::server::Server;

#[test]
fn printed_pages_name_every_hive_and_take_few_sheets() -> Result<()> {
    let server = Server::demo()?;
    let hives = server.colonies()?;
    walk("paper", &server, Form::DeskDark, async |browser| {
        for (path, most_sheets) in [("/", 3), ("/round/sheet", 3)] {
            browser.go_settled(path).await?;
            let (text, sheets) = printed(browser).await?;
            for (name, _) in &hives {
                ensure!(text.contains(name.as_str()), "{path} on paper does not name {name}: {text}");
            }
            ensure!(sheets <= most_sheets, "{path} takes {sheets} sheets");
        }
        browser.go_settled(&format!("/hive/{}", hives[0].1)).await?;
        let (text, sheets) = printed(browser).await?;
        for words in [hives[0].0.as_str(), "what each did", "Estimate for 7 February 2026"] {
            ensure!(text.contains(words), "the printed hive does not say \"{words}\": {text}");
        }
        ensure!(sheets <= 5, "a hive takes {sheets} sheets");
        Ok(())
    })
}

/// The page's text on paper, and how many sheets it takes.
async fn printed(browser: &Browser<'_>) -> Result<(String, usize)> {
    let sheets = browser.driver.print_page(PrintParameters::default()).await?;
    let mut reader = Command::new("pdftotext")
        .args(["-layout", "-", "-"])
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .context("could not start pdftotext")?;
    let mut input = reader.stdin.take().context("no stdin")?;
    let writing = std::thread::spawn(move || input.write_all(&sheets));
    let read = reader.wait_with_output()?;
    writing.join().ok().context("the pages were not read")??;
    ensure!(read.status.success(), "pdftotext ended with {}", read.status);
    let text = String::from_utf8(read.stdout)?;
    let sheets = text.matches('\u{c}').count();
    Ok((text.replace('\u{c}', "\n"), sheets))
}
