//! The head of every page takes little of a phone: one line for the ways, one for the days of an invented yard.

use anyhow::{Result, ensure};

use crate::browser::{Form, walk};
use crate::every_page::all_pages;
use crate::server::Server;

/// Where the first heading ends at most, pixels.
const LOWEST: f64 = 110.0;
/// Heights of the header and of the line of days, pixels; a rule under each counts beside.
const LINES: [(&str, f64); 2] = [("header", 48.0), (".invented", 40.0)];
/// A double rule.
const RULE: f64 = 3.0;

#[test]
fn the_first_heading_of_every_page_ends_near_the_top_of_a_phone() -> Result<()> {
    let server = Server::demo()?;
    walk("headings", &server, Form::PhoneLight, async |browser| {
        let mut wrong = Vec::new();
        for page in all_pages(browser).await? {
            browser.go_settled(&page).await?;
            let bottom = "return document.querySelector('h1')?.getBoundingClientRect().bottom ?? -1";
            let bottom = browser.run(bottom, Vec::new()).await?.as_f64().unwrap_or(-1.0);
            if !(1.0..=LOWEST).contains(&bottom) {
                wrong.push(format!("{page}: the heading ends {bottom:.0} px down"));
            }
            for (line, most) in LINES {
                let height = "return document.querySelector(arguments[0])?.getBoundingClientRect().height ?? 0";
                let height = browser.run(height, vec![line.into()]).await?.as_f64().unwrap_or(f64::MAX);
                if height > most + RULE {
                    wrong.push(format!("{page}: {line} is {height:.0} px high"));
                }
            }
        }
        ensure!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
        Ok(())
    })
}
