//! The keyboard alone: from the yard to a hive to a note kept, the focus always in sight.

use anyhow::{Result, bail, ensure};
use serde_json::Value;
use thirtyfour::Key;

use crate::browser::{Browser, Form, walk};
use crate::server::Server;

/// Steps after which a way is held to lead nowhere.
const MOST_STEPS: usize = 120;

#[test]
fn a_note_is_kept_with_the_keyboard_alone() -> Result<()> {
    let server = Server::demo()?;
    let before = server.notes()?.len();
    let (name, id) = server.colonies()?.into_iter().nth(1).unwrap();
    walk("keyboard", &server, Form::DeskDark, async |browser| {
        browser.go_settled("/").await?;
        press(browser, Key::Tab).await?;
        ensure!(focused(browser).await?["text"] == "To the page itself", "the first stop leads past the head");
        press(browser, Key::Enter).await?;
        tab_to(browser, &format!("main li a[href='/hive/{id}']:not(.small-hive)")).await?;
        browser.arrives(async || press(browser, Key::Enter).await).await?;
        browser.reads(&name).await?;
        tab_to(browser, ".walk a[href='#note']").await?;
        press(browser, Key::Enter).await?;
        tab_to(browser, "#line").await?;
        browser.driver.action_chain().send_keys("hum=heard by ear").perform().await?;
        browser.arrives(async || press(browser, Key::Enter).await).await?;
        browser.reads("hum: heard by ear").await?;
        ensure!(server.notes()?.len() == before + 1, "one note is kept");
        Ok(())
    })
}

#[test]
fn a_round_is_kept_with_the_keyboard_alone() -> Result<()> {
    let server = Server::demo()?;
    let before = server.notes()?.len();
    walk("keyboard-round", &server, Form::DeskLight, async |browser| {
        browser.go_settled("/round").await?;
        tab_to(browser, "[name='0.dead']").await?;
        press(browser, Key::Right).await?;
        let chosen =
            browser.run("return document.querySelector(\"[name='0.dead']:checked\").value", Vec::new()).await?;
        ensure!(chosen == "dead=0", "an arrow chooses: {chosen}");
        tab_to(browser, "[data-go='999']").await?;
        press(browser, Key::Enter).await?;
        tab_to(browser, "#round button.main").await?;
        press(browser, Key::Enter).await?;
        browser.reads("noted and stored").await?;
        ensure!(server.notes()?.len() == before + 1, "one note is kept");
        Ok(())
    })
}

/// Tabs from the top of a page within which its main action is reached.
const TO_THE_MAIN_ACTION: usize = 12;

#[test]
fn the_main_action_of_a_page_is_twelve_tabs_from_its_top_at_most() -> Result<()> {
    let server = Server::demo()?;
    let hives = server.colonies()?;
    let (_, hungry) = hives.into_iter().find(|(name, _)| name == "Juniper").unwrap_or_default();
    walk("keyboard-main", &server, Form::DeskLight, async |browser| {
        let hive = format!("/hive/{hungry}");
        let round = "[name='0.dead']";
        for (page, action) in
            [("/", "button.main"), (hive.as_str(), "button.main"), ("/round", round), ("/begin", "form input")]
        {
            browser.go_settled(page).await?;
            press(browser, Key::Tab).await?;
            press(browser, Key::Enter).await?;
            let tabs = 2 + tab_to(browser, &format!("main {action}")).await?;
            ensure!(tabs <= TO_THE_MAIN_ACTION, "{page}: {action} is {tabs} tabs away");
        }
        Ok(())
    })
}

async fn press(browser: &Browser<'_>, key: Key) -> Result<()> {
    Ok(browser.driver.action_chain().send_keys(key).perform().await?)
}

/// Tabs on until an element has the focus, and tells how often; each stop on the way must be seen to have it.
async fn tab_to(browser: &Browser<'_>, selector: &str) -> Result<usize> {
    for step in 1..=MOST_STEPS {
        press(browser, Key::Tab).await?;
        let stop = focused(browser).await?;
        ensure!(stop["seen"] == true, "the focus is not to be seen at {stop}");
        let is_there =
            browser.run("return document.activeElement.matches(arguments[0])", vec![selector.into()]).await?;
        if is_there == true {
            return Ok(step);
        }
    }
    bail!("{selector} is not reached in {MOST_STEPS} steps")
}

/// What has the focus, and whether a keeper sees that: an outline of its own or on what stands for it, within the window.
async fn focused(browser: &Browser<'_>) -> Result<Value> {
    let script = "const one = document.activeElement; const outlined = (of) => { \
                  const style = of && getComputedStyle(of); \
                  return !!style && style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2; }; \
                  const box = one.getBoundingClientRect(); \
                  const there = box.bottom > 0 && box.top < innerHeight && box.right > 0 && box.left < innerWidth; \
                  return { tag: one.tagName, text: one.innerText?.trim() ?? '', \
                           seen: there && (outlined(one) || outlined(one.nextElementSibling)) };";
    browser.run(script, Vec::new()).await
}
