//! Ten hives, logged with gloves on: taps alone, and not many of them.

use anyhow::{Result, ensure};
use std::fmt::Write;

use crate::browser::{Form, walk};
use crate::server::Server;

const HIVES: usize = 10;
/// A generous time for one tap with a glove, seconds (judgement).
const TAP_S: f64 = 1.2;
const MOST_TAPS: usize = 8;

/// What is looked at on the usual visit.
const USUAL: [(&str, &str); 5] = [
    ("dead", "dead=1-5"),
    ("entrance", "entrance=clear"),
    ("hole", "hole=dry"),
    ("hum", "hum=heard by ear"),
    ("flight", "flight=none"),
];

#[test]
fn ten_hives_are_logged_with_few_taps_in_two_minutes() -> Result<()> {
    let server = Server::of(&ten_hives(), "2026-01-20")?;
    walk("taps", &server, Form::PhoneLight, async |browser| {
        browser.go_settled("/round").await?;
        let mut taps = 0;
        for at in 0..HIVES {
            let before = taps;
            for (field, written) in USUAL {
                browser.tap(&format!("label:has([name='{at}.{field}'][value='{written}'])")).await?;
                taps += 1;
            }
            // Behind the last hive comes all of it, with the one button.
            browser.tap("[data-go='1']").await?;
            taps += 1;
            ensure!(taps - before <= MOST_TAPS, "a hive took {} taps", taps - before);
        }
        browser.tap("#round button.main").await?;
        taps += 1;
        browser.reads("10 noted and stored").await?;
        let seconds = taps as f64 * TAP_S;
        ensure!(seconds < 120.0, "{taps} taps take {seconds} s");
        ensure!(server.notes()?.len() == HIVES, "each hive has its note");
        Ok(())
    })
}

#[test]
fn as_expected_is_one_tap_and_stores_what_stands_beside_it_alone() -> Result<()> {
    let server = Server::of(&ten_hives(), "2026-01-20")?;
    walk("expected", &server, Form::PhoneLight, async |browser| {
        browser.go_settled("/round").await?;
        let says = browser.find("label:has([name='0.expected'])").await?.text().await?;
        ensure!(says.contains("dead bees, entrance clear"), "{says}");
        browser.tap("label:has([name='0.expected'])").await?;
        browser.tap("[data-go='999']").await?;
        browser.tap("#round button.main").await?;
        browser.reads("1 noted and stored").await?;
        let notes = server.json("/api/notes")?["notes"].clone();
        let entries = notes[0]["entries"].as_array().map_or(0, Vec::len);
        ensure!(
            notes.as_array().is_some_and(|all| all.len() == 1) && entries == 2,
            "what was not said is stored: {notes}"
        );
        let written = notes.to_string();
        ensure!(written.contains("dead") && written.contains("entrance"), "{written}");
        Ok(())
    })
}

/// An invented yard of ten hives, each with an upper hole.
fn ten_hives() -> String {
    let mut yard = "[apiary]\nname = \"Ten in a row\"\ninvented = true\nas_of = 2025-10-05\n[site]\nlatitude = 61.7\n\
                    longitude = 27.3\nelevation = \"105 m\"\nzone = \"Europe/Helsinki\"\n"
        .to_owned();
    for at in 1..=HIVES {
        let _ = write!(
            yard,
            "[[hive]]\nname = \"{at}\"\nkind = \"Langstroth 10\"\nupper_hole = \"20 mm\"\n[[colony]]\nname = \"Hive {at}\"\n\
             hive = \"{at}\"\nstrength = \"middling\"\nfood = \"fair\"\nmites = \"not counted\"\n"
        );
    }
    yard
}
