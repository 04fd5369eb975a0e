//! A note is made, changed and taken back at a hive.

use anyhow::{Result, ensure};

use crate::browser::{Form, walk};
use crate::server::Server;

#[test]
fn a_note_is_changed_and_taken_back_and_every_version_stays() -> Result<()> {
    let server = Server::demo()?;
    let before = server.notes()?;
    let hive = format!("/hive/{}", server.colonies()?[0].1);
    walk("notes", &server, Form::DeskLight, async |browser| {
        browser.go_settled(&hive).await?;
        browser.tap(".walk a[href='#note']").await?;
        browser.fill("#line", "dead=41 on snow; hum=heard by ear").await?;
        browser.follow(&format!("form[action='{hive}/note'] button.main")).await?;
        browser.reads("41 on snow").await?;
        let id = added(&before, &server.notes()?)?;
        browser.follow(&format!("a[href='/note/{id}']")).await?;
        browser.fill("#line", "dead=4 on sno").await?;
        browser.follow("form:not([action$=withdraw]) button.main").await?;
        let wrong = browser.find("#line[aria-invalid=true]").await?;
        ensure!(wrong.prop("value").await?.as_deref() == Some("dead=4 on sno"), "what was typed stays");
        browser.reads("snow").await?;
        browser.fill("#line", "dead=4 on snow").await?;
        browser.follow("form:not([action$=withdraw]) button.main").await?;
        browser.reads("dead bees: 4 on snow").await?;
        browser.follow(&format!("form[action='{hive}/undo'] button")).await?;
        browser.reads("41 on snow").await?;
        browser.go(&format!("/note/{id}")).await?;
        let versions = browser.find("ol.notes").await?.text().await?;
        ensure!(versions.lines().count() >= 3, "every version is told: {versions}");
        ensure!(server.notes()?.len() == before.len() + 1, "one note more");
        Ok(())
    })
}

/// The note that was not there before.
fn added(before: &[String], after: &[String]) -> Result<String> {
    let new: Vec<&String> = after.iter().filter(|id| !before.contains(id)).collect();
    ensure!(new.len() == 1, "{} notes are new", new.len());
    Ok(new[0].clone())
}

#[test]
fn the_line_for_a_note_is_under_three_screens_down_on_a_phone() -> Result<()> {
    let server = Server::demo()?;
    let colonies = server.colonies()?;
    walk("note-line", &server, Form::PhoneLight, async |browser| {
        for (name, id) in &colonies {
            browser.go_settled(&format!("/hive/{id}")).await?;
            let screens =
                "return (document.getElementById('line').getBoundingClientRect().top + scrollY) / innerHeight";
            let down = browser.run(screens, Vec::new()).await?.as_f64().unwrap_or(f64::MAX);
            ensure!(down < 3.0, "{name}: {down:.1} screens down");
        }
        Ok(())
    })
}
