//! Two hundred entries made out of reach on three days arrive exactly once, though the server is killed twice meanwhile.

use anyhow::{Result, ensure};
use serde_json::json;
use std::collections::BTreeSet;
use std::time::Duration;

use crate::browser::{Browser, Form, walk};
use crate::offline::{nothing_waits, visit_twice};
use crate::server::Server;

const DAYS: [(&str, usize); 3] = [("2026-02-05", 14), ("2026-02-06", 13), ("2026-02-07", 13)];
const HIVES: usize = 5;
const ENTRIES: usize = 200;
/// After so many have arrived the server is killed.
const KILLED_AFTER: [usize; 2] = [40, 120];

#[test]
fn two_hundred_entries_arrive_once_though_the_server_is_killed_twice() -> Result<()> {
    let server = Server::demo()?;
    walk("delivery", &server, Form::PhoneLight, async |browser| {
        let before: BTreeSet<String> = server.notes()?.into_iter().collect();
        visit_twice(browser).await?;
        server.kill()?;
        browser.go("/round").await?;
        for (day, rounds) in DAYS {
            for _ in 0..rounds {
                make_round(browser, day).await?;
            }
        }
        let made: BTreeSet<String> = waiting(browser).await?.into_iter().collect();
        ensure!(made.len() == ENTRIES, "{} entries wait", made.len());
        slow_network(browser).await?;
        for arrived in KILLED_AFTER {
            server.restart()?;
            ask_to_send(browser).await?;
            arrives(&server, before.len() + arrived).await?;
            server.kill()?;
        }
        server.restart()?;
        ask_to_send(browser).await?;
        nothing_waits(browser).await?;
        every_entry_once(&server, &before, &made)
    })
}

/// Notes every hive, on the day that the page bears.
async fn make_round(browser: &Browser<'_>, day: &str) -> Result<()> {
    let filled = "const form = document.getElementById('round'); form.dataset.day = arguments[0]; \
                  form.querySelectorAll(\"input[value='hum=heard by ear']\").forEach((one) => one.checked = true);";
    browser.run(filled, vec![json!(day)]).await?;
    let before = waiting(browser).await?.len();
    browser.tap("[data-go='999']").await?;
    browser.tap("#round button.main").await?;
    while waiting(browser).await?.len() < before + HIVES {
        tokio::time::sleep(Duration::from_millis(10)).await;
    }
    Ok(())
}

/// Ids of what waits in the browser.
async fn waiting(browser: &Browser<'_>) -> Result<Vec<String>> {
    let script = "const done = arguments[0]; const asked = indexedDB.open('snowhum', 1); \
                  asked.onsuccess = () => { const base = asked.result; \
                  const keys = base.transaction('waiting').objectStore('waiting').getAllKeys(); \
                  keys.onsuccess = () => { base.close(); done(keys.result); }; };";
    Ok(browser.driver.execute_async(script, Vec::new()).await?.convert()?)
}

/// A phone's network at the edge of its reach.
async fn slow_network(browser: &Browser<'_>) -> Result<()> {
    let slow = json!({ "offline": false, "latency": 15, "downloadThroughput": -1, "uploadThroughput": -1 });
    browser.command("Network.enable", json!({})).await?;
    browser.command("Network.emulateNetworkConditions", slow).await?;
    Ok(())
}

async fn ask_to_send(browser: &Browser<'_>) -> Result<()> {
    browser.run("dispatchEvent(new Event('online'))", Vec::new()).await?;
    Ok(())
}

/// Waits until so many notes are stored.
async fn arrives(server: &Server, count: usize) -> Result<()> {
    while server.notes()?.len() < count {
        tokio::time::sleep(Duration::from_millis(10)).await;
    }
    Ok(())
}

fn every_entry_once(server: &Server, before: &BTreeSet<String>, made: &BTreeSet<String>) -> Result<()> {
    let stored = server.notes()?;
    let new: BTreeSet<String> = stored.iter().filter(|id| !before.contains(*id)).cloned().collect();
    ensure!(stored.len() == before.len() + ENTRIES, "{} notes are stored", stored.len() - before.len());
    ensure!(new == *made, "the entries stored are those made");
    for id in &new {
        let versions = server.json(&format!("/api/notes/{id}"))?;
        ensure!(versions["versions"].as_array().is_some_and(|all| all.len() == 1), "{id} is stored more than once");
    }
    Ok(())
}
