//! A new autumn: what lives is counted, what died is left out, what is new is taken in. The yard is invented.

use anyhow::{Result, ensure};

use crate::browser::{Form, walk};
use crate::server::Server;

/// Two hives of a winter that is over.
const YARD: &str = "[apiary]\nname = \"Two by the wood\"\nas_of = 2025-10-05\n[site]\nlatitude = 61.7\nlongitude = 27.3\n\
     elevation = \"105 m\"\nzone = \"Europe/Helsinki\"\n[[colony]]\nname = \"Rowan\"\nkind = \"Langstroth 10\"\n\
     strength = \"middling\"\nfood = \"fair\"\nmites = \"not counted\"\n[[colony]]\nname = \"Willow\"\n\
     kind = \"Langstroth 10\"\nstrength = \"weak\"\nfood = \"light\"\nmites = \"not counted\"\n";

#[test]
fn an_autumn_is_begun_in_the_browser_with_one_hive_counted_one_lost_and_one_new() -> Result<()> {
    let server = Server::of(YARD, "2026-09-10")?;
    walk("season", &server, Form::PhoneLight, async |browser| {
        browser.go("/").await?;
        browser.follow("a[href='/season']").await?;
        browser.fill("[id='0.bees']", "eight").await?;
        browser.fill("[id='0.food']", "14").await?;
        browser.tap("[name='1.gone']").await?;
        browser.tap("summary:has(+ label[for=name])").await?;
        browser.fill("#name", "Maple").await?;
        for choice in ["[name=strength][value=middling]", "[name=food][value=fair]", "[value='foam 50 mm']"] {
            browser.tap(&format!("label:has({choice})")).await?;
        }
        browser.follow("form[action='/season'] button.main").await?;
        browser.reads("To be mended").await?;
        let kept = browser.find("#name").await?.prop("value").await?;
        ensure!(kept.as_deref() == Some("Maple"), "what was typed stays: {kept:?}");
        browser.fill("[id='0.bees']", "8").await?;
        browser.follow("form[action='/season'] button.main").await?;
        browser.reads("The new autumn is begun.").await?;
        let hives = browser.run(NAMES, Vec::new()).await?;
        ensure!(hives == serde_json::json!(["Maple", "Rowan"]), "{hives}");
        Ok(())
    })
}

/// Hives that the page leads to.
const NAMES: &str = "return [...new Set([...document.querySelectorAll('main li a[href^=\"/hive/\"]')] \
    .map((one) => one.innerText.trim()).filter((one) => one !== ''))].sort()";
