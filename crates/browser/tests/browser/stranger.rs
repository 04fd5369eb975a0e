//! What a stranger is asked to do, from the first page of a phone, each with few taps.

use anyhow::{Result, ensure};

use crate::browser::{Browser, Form, walk};
use crate::server::Server;

/// Taps made on the way.
struct Taps<'a, 'b> {
    browser: &'a Browser<'b>,
    made: usize,
}

impl Taps<'_, '_> {
    async fn tap(&mut self, selector: &str) -> Result<()> {
        self.made += 1;
        self.browser.tap(selector).await
    }

    async fn follow(&mut self, selector: &str) -> Result<()> {
        self.made += 1;
        self.browser.follow(selector).await
    }

    async fn fill(&mut self, selector: &str, text: &str) -> Result<()> {
        self.made += 1;
        self.browser.fill(selector, text).await
    }

    fn within(&self, most: usize, task: &str) -> Result<()> {
        ensure!(self.made <= most, "{task} takes {} taps", self.made);
        Ok(())
    }
}

#[test]
fn who_needs_the_keeper_a_live_bee_food_given_and_a_winter_shown_take_few_taps() -> Result<()> {
    let server = Server::demo()?;
    let (name, id) = server.colonies()?.into_iter().next().unwrap_or_default();
    walk("stranger", &server, Form::PhoneLight, async |browser| {
        browser.go_settled("/").await?;
        let lede =
            browser.run("return document.querySelector('.lede').getBoundingClientRect().bottom", Vec::new()).await?;
        ensure!(lede.as_f64().is_some_and(|bottom| bottom < 844.0), "who needs the keeper lies at {lede}");
        let hive = format!("main li a[href='/hive/{id}']:not(.small-hive)");

        let mut bee = Taps { browser, made: 0 };
        bee.follow(&hive).await?;
        bee.tap(".walk a[href='#note']").await?;
        bee.tap("label:has([value='poke=answered'])").await?;
        bee.follow("#note button.main").await?;
        browser.reads(&format!("Noted at {name}")).await?;
        bee.within(4, "note a live bee")?;

        browser.go_settled("/").await?;
        let mut fed = Taps { browser, made: 0 };
        fed.follow(&hive).await?;
        fed.tap(".walk a[href='#note']").await?;
        fed.fill("#fed", "7.5").await?;
        fed.tap("label:has([name='feed'][value='fondant'])").await?;
        fed.follow("#note button.main").await?;
        browser.reads("7.5 kg fondant").await?;
        fed.within(5, "say that 7.5 kg were fed")?;

        browser.go_settled("/").await?;
        let mut shown = Taps { browser, made: 0 };
        shown.follow("main a[href='/tell']").await?;
        while browser.run("return !document.querySelector('.film')", Vec::new()).await? == true {
            tokio::time::sleep(std::time::Duration::from_millis(100)).await;
        }
        browser.go_settled("/tell").await?;
        let before = browser.run("return document.querySelector('[data-c=date]').textContent", Vec::new()).await?;
        shown.tap("[data-c=play]").await?;
        tokio::time::sleep(std::time::Duration::from_millis(1_500)).await;
        let after = browser.run("return document.querySelector('[data-c=date]').textContent", Vec::new()).await?;
        ensure!(before != after, "the film stands still at {before}");
        shown.within(3, "show a friend the winter")
    })
}

#[test]
fn a_caller_without_a_yard_hears_in_four_taps_whether_dead_bees_are_usual() -> Result<()> {
    let server = Server::first_run()?;
    walk("stranger-calls", &server, Form::PhoneLight, async |browser| {
        browser.go("/").await?;
        ensure!(browser.text().await?.contains("The lid is shut until spring."), "it says what it is");
        let mut taps = Taps { browser, made: 0 };
        taps.follow("main a[href='/normal']").await?;
        taps.tap("label:has([name=about][value='20'])").await?;
        taps.follow("form.question button.main").await?;
        taps.within(4, "whether dead bees are usual")?;
        let answer = browser.find("section.kept h2").await?;
        let bottom = answer.rect().await?;
        ensure!(bottom.y + bottom.height < 844.0, "the answer lies at {}", bottom.y);
        browser.reads("Up to 20 found").await
    })
}

#[test]
fn a_hive_with_a_foam_lid_and_an_upper_hole_is_added_with_few_taps() -> Result<()> {
    let server = Server::demo()?;
    walk("stranger-adds", &server, Form::PhoneLight, async |browser| {
        browser.go_settled("/").await?;
        let mut taps = Taps { browser, made: 0 };
        taps.follow("main a[href='/hives']").await?;
        taps.fill("#name", "Maple").await?;
        for choice in [
            "[name=strength][value=middling]",
            "[name=food][value=fair]",
            "[value='foam 50 mm']",
            "[name=upper_hole][value='20 mm']",
        ] {
            taps.tap(&format!("label:has({choice})")).await?;
        }
        taps.follow("form button.main").await?;
        browser.reads("Maple stands in the yard now.").await?;
        taps.within(12, "add a hive")?;
        server.settle()?;
        ensure!(server.colonies()?.iter().any(|(name, _)| name == "Maple"), "it is in the yard");
        Ok(())
    })
}

/// What reaches past the edge.
const WIDE: &str = "return [...document.querySelectorAll('body *')].filter((one) => one.getBoundingClientRect().right > 361 \
    && !one.closest('.wide, svg')).slice(0, 6).map((one) => one.outerHTML.slice(0, 120)).join(' | ')";

/// Hives whose names are long, of signs and of letters written from the right.
const STRANGE: &str = "[apiary]\nname = \"Yard\"\ninvented = true\nas_of = 2025-10-05\n[site]\nlatitude = 61.7\nlongitude = 27.3\n\
     elevation = \"105 m\"\nzone = \"Europe/Helsinki\"\n[[colony]]\nname = \"Donaudampfschifffahrtsgesellschaftskapitänswitwenbienenvolk\"\n\
     kind = \"Langstroth 10\"\nstrength = \"middling\"\nfood = \"fair\"\nmites = \"not counted\"\n[[colony]]\nname = \"🐝❄️🐝\"\n\
     kind = \"Langstroth 10\"\nstrength = \"weak\"\nfood = \"light\"\nmites = \"not counted\"\n[[colony]]\nname = \"כוורת הצפון\"\n\
     kind = \"Langstroth 10\"\nstrength = \"strong\"\nfood = \"heavy\"\nmites = \"not counted\"\n";

#[test]
fn long_words_signs_and_letters_from_the_right_scroll_no_page_sideways() -> Result<()> {
    let mut yard = STRANGE.to_owned();
    for at in 0..200 {
        yard += &format!(
            "[[visit]]\nat = 2025-{:02}-{:02}T{:02}:{:02}:00\n[visit.seen]\n\"🐝❄️🐝\" = \"dead=1-5\"\n",
            10 + at / 100,
            6 + at % 20,
            8 + at / 20 % 5,
            at / 100,
        );
    }
    let server = Server::of(&yard, "2026-01-20")?;
    walk("strange-names", &server, Form::PhoneLight, async |browser| {
        let metrics = serde_json::json!({ "width": 360, "height": 780, "deviceScaleFactor": 1, "mobile": true });
        browser.command("Emulation.setDeviceMetricsOverride", metrics).await?;
        for (name, id) in server.colonies()? {
            for page in [
                "/".to_owned(),
                format!("/hive/{id}"),
                format!("/hive/{id}/tell"),
                "/hives".to_owned(),
                "/jobs".to_owned(),
                "/fit".to_owned(),
            ] {
                browser.go_settled(&page).await?;
                let wide = browser.run("return document.documentElement.scrollWidth", Vec::new()).await?;
                ensure!(
                    wide.as_u64().is_some_and(|wide| wide <= 360),
                    "{page} of {name} is {wide} wide: {}",
                    browser.run(WIDE, Vec::new()).await?
                );
            }
        }
        Ok(())
    })
}
