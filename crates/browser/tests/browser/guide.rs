//! The pictures of the guide: every page as the invented yard shows it.

use anyhow::{Context, Result, ensure};
use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use serde_json::json;
use snowhum_browser::{Look, PICTURES, Picture};
use std::path::Path;

use crate::browser::{Browser, Form, walk};
use crate::every_page::{all_pages, kind_of};
use crate::server::Server;

/// Pages that need no picture: they are versions of others, or for programs.
const UNPICTURED: [&str; 2] = ["/note/{id}", "/source/{figure}"];
/// A long page is cut here, pixels.
const TALLEST: u64 = 1_700;

#[test]
fn every_page_is_in_the_guide() -> Result<()> {
    let server = Server::demo_in_full()?;
    walk("guide", &server, Form::DeskLight, async |browser| {
        let path = |page: &str| kind_of(page).split('?').next().unwrap_or_default().to_owned();
        let shown: Vec<String> = PICTURES.iter().map(|picture| path(&picture.page.replace(['{', '}'], ""))).collect();
        for page in all_pages(browser).await?.iter().map(|page| path(page)) {
            let is_shown = shown.iter().any(|shown| same_page(shown, &page)) || UNPICTURED.contains(&page.as_str());
            ensure!(is_shown, "{page} has no picture in the guide");
        }
        if let Some(folder) = std::env::var_os("SNOWHUM_GUIDE") {
            for picture in PICTURES {
                take(browser, picture, Path::new(&folder)).await.with_context(|| picture.name.to_owned())?;
            }
        }
        Ok(())
    })
}

/// A page of the list names a colony where an address has its id.
fn same_page(listed: &str, page: &str) -> bool {
    let (mut ours, mut theirs) = (listed.split('/'), page.split('/'));
    loop {
        match (ours.next(), theirs.next()) {
            (None, None) => return true,
            (Some(our), Some(their)) if our == their || their == "{id}" => {}
            _ => return false,
        }
    }
}

async fn take(browser: &Browser<'_>, picture: &Picture, folder: &Path) -> Result<()> {
    let (form, width) = match picture.look {
        Look::Desk => (Form::DeskLight, 960),
        Look::Phone => (Form::PhoneLight, 390),
        Look::PhoneAtNight => (Form::PhoneDark, 390),
    };
    browser.look_as(form).await?;
    let metrics = json!({ "width": width, "height": 844, "deviceScaleFactor": 1, "mobile": form.is_phone() });
    browser.command("Emulation.setDeviceMetricsOverride", metrics).await?;
    let hives = browser.server.colonies()?.into_iter();
    let page = hives.fold(picture.page.to_owned(), |page, (name, id)| page.replace(&format!("{{{name}}}"), &id));
    browser.go_settled(&page).await?;
    let size = browser.run("return [innerWidth, document.documentElement.scrollHeight]", Vec::new()).await?;
    let height = size[1].as_u64().context("no height")?.min(TALLEST);
    let clip = json!({ "x": 0, "y": 0, "width": size[0], "height": height, "scale": 1 });
    let wanted = json!({ "format": "webp", "quality": 55, "captureBeyondViewport": true, "clip": clip });
    let answer = browser.command("Page.captureScreenshot", wanted).await?;
    let bytes = STANDARD.decode(answer["data"].as_str().context("no picture")?)?;
    Ok(std::fs::write(folder.join(format!("{}.webp", picture.name)), bytes)?)
}
