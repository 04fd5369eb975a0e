//! The winter told, for those who wish for no motion.

use anyhow::{Result, ensure};
use serde_json::json;
use std::time::Duration;

use crate::browser::{Browser, Form, walk};
use crate::server::Server;

#[test]
fn where_no_motion_is_wished_for_the_film_steps_by_the_week_and_stands_still_between() -> Result<()> {
    let server = Server::demo()?;
    let film = format!("/hive/{}/tell", server.colonies()?[0].1);
    walk("told", &server, Form::PhoneLight, async |browser| {
        wish(browser, "reduce").await?;
        browser.go_settled(&film).await?;
        ensure!(browser.find("[data-c=play]").await?.text().await? == "A week on", "the button says what it does");
        play_from(browser, 20).await?;
        let stepped = day(browser).await?;
        tokio::time::sleep(Duration::from_millis(1_500)).await;
        ensure!((stepped, day(browser).await?) == (27, 27), "a tap is a week, and then nothing moves: {stepped}");
        let moves = browser.run("return document.getAnimations().length", Vec::new()).await?;
        ensure!(moves == 0, "{moves} parts of the page move");

        wish(browser, "no-preference").await?;
        browser.go(&film).await?;
        play_from(browser, 20).await?;
        tokio::time::sleep(Duration::from_millis(1_500)).await;
        ensure!(day(browser).await? > 20, "without the wish it plays");
        Ok(())
    })
}

/// Puts the film at a day and taps its button.
async fn play_from(browser: &Browser<'_>, day: u32) -> Result<()> {
    let script = "const slider = document.querySelector('[data-c=slider]'); slider.value = arguments[0]; \
                  slider.dispatchEvent(new Event('input'))";
    browser.run(script, vec![day.into()]).await?;
    browser.tap("[data-c=play]").await
}

async fn wish(browser: &Browser<'_>, motion: &str) -> Result<()> {
    let features = json!({ "features": [{ "name": "prefers-reduced-motion", "value": motion }] });
    browser.command("Emulation.setEmulatedMedia", features).await.map(drop)
}

/// The day that the film shows, counted from its first.
async fn day(browser: &Browser<'_>) -> Result<i64> {
    let shown = browser.run("return Number(document.querySelector('[data-c=slider]').value)", Vec::new()).await?;
    Ok(shown.as_i64().unwrap_or(-1))
}
