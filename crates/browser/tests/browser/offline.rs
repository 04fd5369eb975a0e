//! The round out of reach: installed, it opens without a server, keeps what is noted, and delivers it later.

use anyhow::{Context, Result, ensure};
use serde_json::json;
use std::time::Duration;

use crate::browser::{Browser, Form, walk};
use crate::server::Server;

/// Longer than the round waits before its kept copy stands in.
const SLOW: Duration = Duration::from_secs(6);

#[test]
fn a_round_made_out_of_reach_is_kept_and_sent_later() -> Result<()> {
    let server = Server::demo()?;
    walk("offline", &server, Form::PhoneDark, async |browser| {
        let before = server.notes()?.len();
        visit_twice(browser).await?;
        server.kill()?;
        browser.go("/round").await?;
        note_first_hive(browser).await?;
        browser.reads("Kept in this phone and waiting: Alder").await?;
        browser.go("/flight").await?;
        browser.reads("1 waiting to be sent: Alder").await?;
        server.restart()?;
        browser.run("dispatchEvent(new Event('online'))", Vec::new()).await?;
        nothing_waits(browser).await?;
        ensure!(server.notes()?.len() == before + 1, "the note has arrived once");
        Ok(())
    })
}

#[test]
fn a_server_that_is_only_slow_is_waited_for() -> Result<()> {
    let server = Server::demo()?;
    walk("slow", &server, Form::PhoneLight, async |browser| {
        visit_twice(browser).await?;
        let pause = server.stands_still_for(SLOW)?;
        browser.go("/words").await?;
        let title = browser.find("h1").await?.text().await?;
        ensure!(title == "Words", "asked for the words, shown {title}");
        pause.join().ok().context("the server still stands still")?
    })
}

#[test]
fn the_round_can_be_installed() -> Result<()> {
    let server = Server::demo()?;
    walk("install", &server, Form::PhoneLight, async |browser| {
        visit_twice(browser).await?;
        let manifest = browser.command("Page.getAppManifest", json!({})).await?;
        ensure!(manifest["errors"].as_array().is_some_and(Vec::is_empty), "{manifest}");
        let answer = browser.command("Page.getInstallabilityErrors", json!({})).await?;
        let errors = answer["installabilityErrors"].as_array().context("no answer")?;
        // A browser for tests alone runs as a guest, which may install nothing.
        let ours: Vec<_> = errors.iter().filter(|error| error["errorId"] != "in-incognito").collect();
        ensure!(ours.is_empty(), "{ours:?}");
        Ok(())
    })
}

/// The second visit is the first under the worker that keeps pages.
pub(crate) async fn visit_twice(browser: &Browser<'_>) -> Result<()> {
    browser.go_settled("/round").await?;
    browser
        .driver
        .execute_async("navigator.serviceWorker.ready.then(() => arguments[0]())", Vec::new())
        .await
        .context("the worker is not ready")?;
    browser.go("/round").await?;
    let is_controlled = browser.run("return navigator.serviceWorker.controller !== null", Vec::new()).await?;
    ensure!(is_controlled == true, "the second visit is not under the worker");
    Ok(())
}

async fn note_first_hive(browser: &Browser<'_>) -> Result<()> {
    browser.tap("label:has([name='0.dead'][value='dead=1-5'])").await?;
    browser.tap("label:has([name='0.hum'][value='hum=heard by ear'])").await?;
    browser.tap("#round button.main").await
}

/// Waits until everything is delivered.
pub(crate) async fn nothing_waits(browser: &Browser<'_>) -> Result<()> {
    browser.find("#waiting[hidden]").await.context("something still waits")?;
    Ok(())
}
