//! Thirty hives on a phone: the neediest first, and all of them in few screens. Yards are invented.

use anyhow::{Context, Result, ensure};
use std::fmt::Write;

use crate::browser::{Form, walk};
use crate::server::Server;

const HIVES: usize = 30;
/// Height of a phone's screen, pixels.
const SCREEN: f64 = 844.0;
/// Screens that thirty hives may take.
const SCREENS: f64 = 5.0;

/// Where the first hive that needs the keeper ends, and where the last of all hives does, pixels down the page.
const PLACES: &str = "const end = (one) => one.getBoundingClientRect().bottom + scrollY; \
    const hives = [...document.querySelectorAll('main li:has(a[href^=\"/hive/\"])')]; \
    return [hives.length, end(hives[0]), Math.max(...hives.map(end))]";

#[test]
fn thirty_hives_of_every_kind_take_five_screens_of_a_phone() -> Result<()> {
    takes_five_screens(
        "thirty",
        &yard(|at| (["weak", "middling", "strong"][at % 3], ["light", "fair", "heavy"][at % 4 % 3])),
    )
}

#[test]
fn thirty_hives_that_all_need_the_keeper_take_five_screens_of_a_phone() -> Result<()> {
    takes_five_screens("thirty-needy", &yard(|_| ("middling", "light")))
}

fn takes_five_screens(name: &str, yard: &str) -> Result<()> {
    let server = Server::of(yard, "2025-10-20")?;
    walk(name, &server, Form::PhoneLight, async |browser| {
        browser.go_settled("/").await?;
        let places = browser.run(PLACES, Vec::new()).await?;
        let place = |at: usize| places[at].as_f64().context("no place");
        let (hives, first, last) = (place(0)?, place(1)?, place(2)?);
        ensure!(hives == HIVES as f64, "{hives} hives are told, each once");
        ensure!(first < SCREEN, "whom to see first ends {first} px down");
        ensure!(last < SCREENS * SCREEN, "thirty hives take {:.1} screens", last / SCREEN);
        Ok(())
    })
}

/// An invented yard whose hives are of such strength and food.
fn yard(facts: impl Fn(usize) -> (&'static str, &'static str)) -> String {
    let mut yard = "[apiary]\nname = \"Long row\"\ninvented = true\nas_of = 2025-10-05\n[site]\nlatitude = 61.7\n\
                    longitude = 27.3\nelevation = \"105 m\"\nzone = \"Europe/Helsinki\"\n"
        .to_owned();
    for at in 1..=HIVES {
        let (strength, food) = facts(at);
        let _ = write!(
            yard,
            "[[colony]]\nname = \"Hive {at}\"\nkind = \"Langstroth 10\"\nstrength = \"{strength}\"\nfood = \"{food}\"\n\
             mites = \"not counted\"\n"
        );
    }
    yard
}
