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
fn with_the_radio_off_no_tap_is_lost_and_the_verdict_is_shown_after_the_last() -> Result<()> {
    let server = Server::demo()?;
    walk("radio-off", &server, Form::PhoneLight, async |browser| {
        let before = server.notes()?.len();
        server.settle()?;
        visit_twice(browser).await?;
        table_is_kept(browser).await?;
        server.kill()?;
        browser.go("/round").await?;
        browser.tap("label:has([name='0.hole'][value='hole=new rime'])").await?;
        browser.reads("in 100 such hives live").await?;
        browser.reads("until synced").await?;
        browser.tap("[data-go='1']").await?;
        browser.tap("label:has([name='1.poke'][value='poke=answered'])").await?;
        browser.reads("Alive: a bee answered.").await?;
        // A reload, and a browser that crashed, find every tap as it was, on the hive it was made at.
        browser.go("/round").await?;
        browser.reads("Alive: a bee answered.").await?;
        let held = "return [...document.querySelectorAll('#round input:checked')].map((one) => one.value).filter(Boolean).sort()";
        let taps = browser.run(held, Vec::new()).await?;
        ensure!(taps == json!(["hole=new rime", "poke=answered"]), "{taps}");
        keep(browser).await?;
        browser.reads("Kept in this phone and waiting").await?;
        browser.go("/round").await?;
        let taps = browser.run(held, Vec::new()).await?;
        ensure!(taps == json!([]), "what is kept is no draft any more: {taps}");
        server.restart()?;
        browser.run("dispatchEvent(new Event('online'))", Vec::new()).await?;
        nothing_waits(browser).await?;
        ensure!(server.notes()?.len() == before + 2, "both notes have arrived once");
        Ok(())
    })
}

/// Waits until the table of today is kept in the phone.
async fn table_is_kept(browser: &Browser<'_>) -> Result<()> {
    let kept = "const done = arguments[0]; (async () => { for (let turn = 0; turn < 100; turn += 1) { \
                if (await caches.match('/api/round')) return true; \
                await new Promise((after) => setTimeout(after, 100)); } return false; })().then(done)";
    let is_kept = browser.driver.execute_async(kept, Vec::new()).await?.json().clone();
    ensure!(is_kept == true, "the table is not kept");
    Ok(())
}

#[test]
fn the_phones_arithmetic_is_the_servers_to_one_in_a_hundred() -> Result<()> {
    // What is tapped at the first hives, one after the other; each is then noted at one o'clock of the day shown.
    const LOOKS: [&[&str]; 3] = [
        &["hum=silent by ear", "dead=0", "hole=dry"],
        &["hole=new rime", "hum=heard by ear"],
        &["poke=silent", "dead=6-20", "entrance=clear"],
    ];
    let server = Server::demo()?;
    walk("arithmetic", &server, Form::PhoneLight, async |browser| {
        browser.go_settled("/round").await?;
        for (at, looks) in LOOKS.into_iter().enumerate() {
            let asked = "const [at, seen, done] = arguments; (async () => { \
                 const [{ alive, opened }, table] = [await import('/verdict.js'), await (await fetch('/api/round')).json()]; \
                 const hive = table.hives[at]; \
                 const phone = [alive(opened(hive), []), alive(opened(hive), seen)]; \
                 const visit = crypto.randomUUID(), id = crypto.randomUUID(); \
                 const note = { visit, colony: hive.colony, at: hive.at, seen }; \
                 const sent = await fetch(`/api/notes/${id}`, { method: 'PUT', headers: { 'content-type': 'application/json' }, \
                   body: JSON.stringify(note) }); \
                 return { phone, name: hive.name, status: sent.status, said: await sent.text() }; })().then(done, (e) => done(String(e)))";
            let told = browser.driver.execute_async(asked, vec![json!(at), json!(looks)]).await?.json().clone();
            ensure!(told["status"] == 201, "{told}");
            server.settle()?;
            let now = server.json("/api/now")?;
            let colony =
                now["now"]["colonies"].as_array().and_then(|all| all.iter().find(|one| one["name"] == told["name"]));
            let evidence = &colony.context("no such colony")?["evidence"][0];
            let (before, after) = (evidence["alive_before"].as_f64(), evidence["alive_after"].as_f64());
            let phone = |which: usize| told["phone"][which].as_f64();
            for (server, phone) in [(before, phone(0)), (after, phone(1))] {
                let (server, phone) = (server.context("no chance")?, phone.context("no chance")?);
                ensure!(
                    (server - phone).abs() < 0.01,
                    "{looks:?}: {phone} in the phone, {server} at the server: {told}"
                );
            }
        }
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
    keep(browser).await
}

/// To the end of the round, and kept.
async fn keep(browser: &Browser<'_>) -> Result<()> {
    browser.tap("[data-go='999']").await?;
    browser.tap("#round button.main").await
}

/// Waits until everything is delivered.
pub(crate) async fn nothing_waits(browser: &Browser<'_>) -> Result<()> {
    browser.find("#waiting[hidden]").await.context("something still waits")?;
    Ok(())
}
