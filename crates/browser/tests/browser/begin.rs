//! First run: nothing is kept, four facts a hive make a yard.

use anyhow::{Result, ensure};

use crate::browser::{Form, walk};
use crate::server::Server;

#[test]
fn a_newcomer_begins_a_yard_with_four_facts_a_hive() -> Result<()> {
    let server = Server::first_run()?;
    walk("begin", &server, Form::PhoneLight, async |browser| {
        browser.go_settled("/").await?;
        browser.follow("a[href='/begin']").await?;
        browser.fill("#name", "Alder's \"Row\" <b>").await?;
        browser.choose("#town", "Kuopio").await?;
        browser.tap("fieldset details:has([name='0.lid']) > summary").await?;
        let lid = "label:has([name='0.lid'][value='foam 50 mm'])";
        browser.tap(lid).await?;
        browser.becomes("return document.querySelector('.dressed').textContent.includes('foam 50\u{a0}mm')").await?;
        browser.follow("button[value=more]").await?;
        browser.find("[id='1.name']").await?;
        for (at, strength, food) in [(0, "strong", "fair"), (1, "weak", "light")] {
            browser.tap(&format!("label:has([name='{at}.strength'][value={strength}])")).await?;
            browser.tap(&format!("label:has([name='{at}.food'][value={food}])")).await?;
        }
        browser.fill("[id='1.mites']", "9").await?;
        browser.fill("[id='1.mites_of']", "three hundred").await?;
        browser.follow("button.main").await?;
        browser.reads("One thing is to be mended").await?;
        let wrong = browser.find("[id='1.mites_of'][aria-invalid=true]").await?;
        ensure!(wrong.prop("value").await?.as_deref() == Some("three hundred"), "what was typed stays");
        browser.fill("[id='1.mites_of']", "300").await?;
        browser.follow("button.main").await?;
        browser.reads("Your yard is begun.").await?;
        browser.go_settled("/").await?;
        let page = browser.text().await?;
        ensure!(page.contains("Alder's \"Row\" <b>"), "the keeper's words are text");
        ensure!(page.contains("Hive 1") && page.contains("Hive 2"), "both hives are there");
        ensure!(!page.contains("An invented yard"), "the yard is the keeper's own");
        Ok(())
    })?;
    ends_and_opens_again(&server)
}

/// What was begun in the browser is there at the next start.
fn ends_and_opens_again(server: &Server) -> Result<()> {
    server.kill()?;
    server.restart()?;
    server.settle()?;
    let names: Vec<String> = server.colonies()?.into_iter().map(|(name, _)| name).collect();
    ensure!(names == ["Hive 1", "Hive 2"], "kept: {names:?}");
    Ok(())
}
