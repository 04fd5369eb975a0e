//! After all that changes an answer the page says so at once, and soon the new verdict stands.

use anyhow::{Context, Result, ensure};
use std::time::{Duration, Instant};

use crate::browser::{Browser, Form, walk};
use crate::server::Server;

/// Within so long the page says what was done.
const SAID: Duration = Duration::from_secs(1);
/// Within so long the new verdict stands.
const STANDS: Duration = Duration::from_secs(5);

/// Fails today: the estimate of another day takes longer than that on two cores.
#[test]
#[ignore = "timed to the second: by hand, on a machine that does nothing else"]
fn the_new_verdict_stands_within_five_seconds_of_a_day_a_note_an_edit_and_an_undo() -> Result<()> {
    let server = Server::demo_in_full()?;
    let hive = format!("/hive/{}", server.colonies()?[0].1);
    walk("promptly", &server, Form::PhoneLight, async |browser| {
        browser.go_settled(&hive).await?;
        changes(browser, "another day", "form[action='/day'] button[value='2026-04-10']", "10 April 2026 is looked at")
            .await?;
        changes(browser, "and back", "form[action='/day'] button[value='2026-02-07']", "7 February 2026 is looked at")
            .await?;
        browser.go(&hive).await?;
        open(browser, "#line").await?;
        browser.fill("#line", "hum=heard by ear; dead=41 on snow").await?;
        changes(browser, "a note", "#note button.main", "Noted at ").await?;
        browser.follow("#notes a[href^='/note/']").await?;
        browser.fill("#line", "hum=heard by ear; dead=4 on snow").await?;
        changes(browser, "an edit", "form:not([action$=withdraw]) button.main", "Changed at ").await?;
        changes(browser, "an undo", &format!("form[action='{hive}/undo'] button"), "Taken back").await
    })
}

/// Opens whatever is folded over an element.
pub(crate) async fn open(browser: &Browser<'_>, selector: &str) -> Result<()> {
    let script = "for (let one = document.querySelector(arguments[0]); one; one = one.parentElement) \
                  if (one.tagName === 'DETAILS') one.open = true";
    browser.run(script, vec![selector.into()]).await.map(drop)
}

/// Taps, and waits until the page says so and an estimate later than the one before stands on it.
async fn changes(browser: &Browser<'_>, what: &str, selector: &str, says: &str) -> Result<()> {
    let before = computed(browser).await?;
    open(browser, selector).await?;
    let begun = Instant::now();
    browser.follow(selector).await?;
    browser.reads(says).await?;
    let said = begun.elapsed();
    while !stands(browser, &before).await? && begun.elapsed() < 4 * STANDS {
        tokio::time::sleep(Duration::from_millis(50)).await;
    }
    let stood = begun.elapsed();
    ensure!(said < SAID, "{what} is said after {said:?}");
    ensure!(stood < STANDS, "after {what} the new verdict stands after {stood:?}");
    Ok(())
}

/// When the estimate was computed that stands on the server, as the page would tell it.
async fn computed(browser: &Browser<'_>) -> Result<String> {
    browser.server.settle()?;
    let (_, _, page) = browser.server.ask("/")?;
    computed_on(&page).context("a page that does not say when its estimate was computed")
}

fn computed_on(page: &str) -> Option<String> {
    let (_, after) = page.split_once("computed at <time datetime=\"")?;
    after.split_once('"').map(|(at, _)| at.to_owned())
}

/// Whether the page in the browser shows an estimate later than that one, and is not old.
async fn stands(browser: &Browser<'_>, before: &str) -> Result<bool> {
    let script = "const at = document.querySelector('.age time')?.getAttribute('datetime'); \
                  return !!at && at > arguments[0] && !document.querySelector('main.old, main[data-waits]')";
    // A page that is just being left says nothing.
    Ok(browser.run(script, vec![before.into()]).await.is_ok_and(|said| said == true))
}
