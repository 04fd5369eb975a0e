//! Every page there is a way to: read aloud, at arm's length, in the snow, by day and by night.

use anyhow::{Context, Result, ensure};
use serde_json::Value;
use std::collections::BTreeSet;
use std::path::PathBuf;

use crate::browser::{Browser, Form, walk};
use crate::server::{Server, target};

/// Pages that a form leads to, beside those that links lead to.
const ASKED: [&str; 6] = [
    "/normal?found=30&days=14&bees=12000&month=2&ground=bare",
    "/normal?found=many",
    "/setup?part=lid%3D50+mm+foam",
    "/setup?try=colour%3Dred",
    "/source?find=hum",
    "/round?kept=3",
];
/// Most bytes of the first page with what it needs.
const HEAVIEST: usize = 150_000;

#[test]
fn every_page_is_sound_on_phone_and_desk_by_day_and_by_night() -> Result<()> {
    let server = Server::demo()?;
    walk("every-page", &server, Form::DeskLight, async |browser| {
        server.settle()?;
        load_checker(browser).await?;
        let pages = all_pages(browser).await?;
        let mut wrong = Vec::new();
        for form in Form::ALL {
            browser.look_as(form).await?;
            for page in &pages {
                let lasting = lasting_faults(browser, page).await?;
                wrong.extend(lasting.into_iter().map(|fault| format!("{page} {form:?}: {fault}")));
            }
        }
        ensure!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
        Ok(())
    })
}

#[test]
fn the_first_page_is_light() -> Result<()> {
    let server = Server::demo()?;
    walk("weight", &server, Form::PhoneLight, async |browser| {
        browser.go_settled("/").await?;
        let script = "return performance.getEntries().filter((one) => 'encodedBodySize' in one) \
                      .reduce((sum, one) => sum + one.encodedBodySize, 0)";
        let bytes = browser.run(script, Vec::new()).await?.as_u64().context("no sizes")?;
        ensure!((1_000..HEAVIEST as u64).contains(&bytes), "the first page weighs {bytes} bytes");
        Ok(())
    })
}

/// Follows every link from the first page; of pages that differ by an id alone, the first.
pub(crate) async fn all_pages(browser: &Browser<'_>) -> Result<Vec<String>> {
    let mut waiting: Vec<String> = ["/"].iter().chain(&ASKED).rev().map(|page| (*page).to_owned()).collect();
    let (mut seen, mut pages) = (BTreeSet::new(), Vec::new());
    while let Some(page) = waiting.pop() {
        if !seen.insert(kind_of(&page)) || !is_page(browser, &page)? {
            continue;
        }
        browser.go_settled(&page).await?;
        let links = browser
            .run(
                "return [...document.links].filter((one) => one.origin === location.origin && !one.download) \
                 .map((one) => one.pathname)",
                Vec::new(),
            )
            .await?;
        let links: BTreeSet<&str> = links.as_array().into_iter().flatten().filter_map(Value::as_str).collect();
        waiting.extend(links.into_iter().map(str::to_owned));
        pages.push(page);
    }
    ensure!(pages.len() > 12, "only {pages:?}");
    Ok(pages)
}

/// An address with its ids taken out.
pub(crate) fn kind_of(page: &str) -> String {
    let (path, asked) = page.split_once('?').unwrap_or((page, ""));
    let is_id = |part: &str| part.len() == 36 && part.matches('-').count() == 4;
    let parts = path.split('/').map(|part| if is_id(part) { "{id}" } else { part });
    let path = parts.collect::<Vec<_>>().join("/");
    let path = if path.starts_with("/source/") { "/source/{figure}".to_owned() } else { path };
    format!("{path}?{asked}")
}

fn is_page(browser: &Browser<'_>, page: &str) -> Result<bool> {
    let (status, head, _) = browser.server.ask(page)?;
    ensure!(status == 200, "{page} answers {status}");
    Ok(head.contains("content-type: text/html"))
}

/// Puts the checker of accessibility into every page that is opened from now on.
async fn load_checker(browser: &Browser<'_>) -> Result<()> {
    let named = std::env::var_os("SNOWHUM_AXE").map(PathBuf::from);
    let path = named.unwrap_or_else(|| target().join("browser/node_modules/axe-core/axe.min.js"));
    let source = std::fs::read_to_string(&path)
        .with_context(|| format!("{} is not there: cargo xtask test fetches it", path.display()))?;
    browser.command("Page.addScriptToEvaluateOnNewDocument", serde_json::json!({ "source": source })).await?;
    Ok(())
}

/// What is wrong with a page, and is so again when it is opened anew: in one opening of some hundreds the browser gives
/// the colours of a page whose style sheet has not taken hold yet, each time of another page.
async fn lasting_faults(browser: &Browser<'_>, page: &str) -> Result<Vec<String>> {
    browser.go_settled(page).await?;
    let first = faults(browser, page).await?;
    if first.is_empty() {
        return Ok(first);
    }
    browser.go_settled(page).await?;
    let again = faults(browser, page).await?;
    Ok(again.into_iter().filter(|fault| first.contains(fault)).collect())
}

/// What is wrong with the page as it stands.
async fn faults(browser: &Browser<'_>, page: &str) -> Result<Vec<String>> {
    let mut found = texts(browser.driver.execute_async(AXE, Vec::new()).await.context("axe")?.json());
    found.extend(texts(&browser.run(LAYOUT, vec![page.into()]).await?));
    Ok(found)
}

fn texts(list: &Value) -> Vec<String> {
    list.as_array().into_iter().flatten().filter_map(Value::as_str).map(str::to_owned).collect()
}

/// Serious and critical findings, each with the first element it is about.
const AXE: &str = "const done = arguments[0]; \
    axe.run(document, { resultTypes: ['violations'] }).then((all) => done(all.violations \
        .filter((one) => one.impact === 'serious' || one.impact === 'critical') \
        .map((one) => `${one.id}: ${one.help}: ${one.nodes.slice(0, 3).map((node) => node.html.slice(0, 160)).join(' | ')}`)), \
        (error) => done([`the checker failed: ${error}`]));";

/// Sideways scrolling, small targets, small type, words over words in pictures.
const LAYOUT: &str = include_str!("layout.js");
