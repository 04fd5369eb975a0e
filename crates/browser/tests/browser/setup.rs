//! A set-up is changed and compared.

use anyhow::{Result, ensure};

use crate::browser::{Form, walk};
use crate::server::Server;

#[test]
fn a_changed_set_up_stands_beside_the_hive_as_it_is() -> Result<()> {
    let server = Server::demo()?;
    walk("setup", &server, Form::DeskLight, async |browser| {
        browser.go_settled("/setup").await?;
        browser.choose("#hive", "Larch").await?;
        browser.choose("#part0", "50 mm foam").await?;
        browser.choose("#part2", "shut").await?;
        browser.follow("form[action='/setup'] button.main").await?;
        browser.reads("as it is").await?;
        let told = browser.find("section.kept").await?.text().await?;
        ensure!(told.contains("lid: 50 mm foam") && told.contains("upper hole: off"), "names what was tried: {told}");
        ensure!(told.contains("hives in 100") || told.contains("No real difference"), "gives a verdict: {told}");
        ensure!(told.contains("Food eaten to spring"), "stands side by side: {told}");
        let chosen = browser.run("return document.querySelector('#hive').selectedOptions[0].text", Vec::new()).await?;
        ensure!(chosen == "Larch", "the hive stays chosen: {chosen}");
        Ok(())
    })
}

/// Where the cells of the first row begin, pixels from the left and from the top.
const CELLS: &str = "return [...document.querySelector('.beside tbody tr').querySelectorAll('td')] \
    .map((one) => { const box = one.getBoundingClientRect(); return [box.left, box.top, box.width]; })";

#[test]
fn set_ups_stand_side_by_side_on_a_phone() -> Result<()> {
    let server = Server::demo()?;
    walk("setup-phone", &server, Form::NarrowPhone, async |browser| {
        browser.go_settled("/setup?part=lid%3D50+mm+foam&part=wrap%3Dfelt+paper&try=upper+hole%3Doff").await?;
        let cells = browser.run(CELLS, Vec::new()).await?;
        let cells: Vec<Vec<f64>> = serde_json::from_value(cells)?;
        ensure!(cells.len() == 3, "as it is and two others: {cells:?}");
        for pair in cells.windows(2) {
            ensure!(pair[0][1] == pair[1][1] && pair[0][0] + pair[0][2] <= pair[1][0], "beside one another: {cells:?}");
        }
        Ok(())
    })
}
