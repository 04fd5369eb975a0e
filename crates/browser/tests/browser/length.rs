//! How long the pages are on a phone.

use anyhow::{Context, Result, ensure};

use crate::browser::{Form, walk};
use crate::every_page::all_pages;
use crate::server::Server;

/// Height of a phone's screen, pixels.
const SCREEN: f64 = 844.0;
/// Screens that a page of five hives may take.
const SCREENS: f64 = 4.0;
/// Sheets of paper, and words to be looked up.
const TO_LOOK_UP_OR_PRINT: [&str; 3] = ["/words", "/round/sheet", "/paper"];
/// The days the invented yard can be looked at.
const DAYS: [&str; 3] = ["2025-10-05", "2026-02-07", "2026-04-10"];
/// The languages that pages are read in; that of North America is as long as that of Britain.
const LANGUAGES: [&str; 3] = ["en-GB", "de", "fr"];

#[test]
fn no_page_of_five_hives_takes_more_than_four_screens_of_a_phone() -> Result<()> {
    let server = Server::demo()?;
    walk("length", &server, Form::PhoneLight, async |browser| {
        server.settle()?;
        let is_read = |page: &String| !TO_LOOK_UP_OR_PRINT.iter().any(|one| page.starts_with(one));
        let pages: Vec<String> = all_pages(browser).await?.into_iter().filter(is_read).collect();
        let mut long = Vec::new();
        for (language, day) in LANGUAGES.into_iter().flat_map(|language| DAYS.map(|day| (language, day))) {
            browser.go_settled("/settings").await?;
            browser.tap(&format!("label:has([value=\"{language}\"])")).await?;
            browser.follow("form[action='/settings'] button.main").await?;
            browser.go_settled("/").await?;
            browser.follow(&format!("button[value=\"{day}\"]")).await?;
            server.settle()?;
            // Until the answer of that day is there the last one stands, under its own date and a line longer.
            ensure!(server.json("/api/now")?["now"]["as_of"] == day, "{day} is not looked at");
            for page in &pages {
                browser.go_settled(page).await?;
                let height = browser.run("return document.documentElement.scrollHeight", Vec::new()).await?;
                let screens = height.as_f64().context("no height")? / SCREEN;
                if screens > SCREENS {
                    long.push(format!("{language} {day} {page}: {screens:.2} screens"));
                }
            }
        }
        ensure!(long.is_empty(), "{}", long.join("\n"));
        Ok(())
    })
}
