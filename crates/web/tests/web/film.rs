//! The winter told, in the browser and as a file to take along.

use axum::http::StatusCode;
use serde_json::Value;

use crate::support::{Served, run, well_formed};

fn data(page: &str) -> Value {
    let from = page.find(r#"<script type="application/json">"#).unwrap();
    let text = page[from..].split_once('>').unwrap().1.split_once("</script>").unwrap().0;
    serde_json::from_str(text).unwrap()
}

#[test]
fn page_and_file_tell_the_same_winter_and_the_file_needs_no_network_and_names_no_place() {
    run(|served: Served| async move {
        let now = served.settled().await["now"].clone();
        let address = format!("/hive/{}/tell", served.colony("Alder"));
        let page = served.whole(&address).await;
        assert_eq!(well_formed(&page.body), Ok(()));
        assert!(page.body.contains("The winter of Alder") && page.body.contains("Foretold, and what came"));
        let file = served.get(&format!("{address}?file=1")).await;
        assert_eq!(file.status, StatusCode::OK);
        let name = file.headers["content-disposition"].to_str().unwrap();
        assert_eq!(name, "attachment; filename=\"winter-of-a-hive.html\"");
        assert!(file.body.len() < 400_000, "{} bytes", file.body.len());
        let strange = ["http://", "https://", "src=", "@import", &served.yard.name, &served.yard.site.zone];
        for strange in strange {
            assert!(!file.body.contains(strange), "the file holds {strange}");
        }
        let (shown, taken) = (data(&page.body), data(&file.body));
        assert_eq!(shown, taken);
        let today = taken["today"].as_u64().unwrap() as usize;
        let alder = now["colonies"].as_array().unwrap().iter().find(|one| one["name"] == "Alder").unwrap();
        let hive = &taken["hives"][0];
        assert_eq!(hive["food"][today], alder["stores_kg"]["total"]["p50"]);
        let thousandths = (alder["alive"].as_f64().unwrap() * 1_000.0).round();
        assert_eq!(hive["alive"][today].as_f64(), Some(thousandths));
        let plan: Value = serde_json::from_str(&served.get("/api/plan").await.body).unwrap();
        let foretold = plan["colonies"][0]["alive_in_spring"].as_f64().unwrap();
        let says = format!("alive in spring in {} of 100", snowhum_say::hives(foretold));
        assert!(file.body.contains(&says), "{says}");
    });
}

#[test]
fn a_yards_film_holds_every_hive_and_reads_without_scripts() {
    run(|served: Served| async move {
        served.settled().await;
        let page = served.whole("/tell").await.body;
        assert_eq!(well_formed(&page), Ok(()));
        for colony in &served.yard.colonies {
            assert!(page.contains(&format!("aria-label=\"{}, cut open\"", colony.name)), "{}", colony.name);
        }
        assert!(page.contains("The same as a table") && page.contains(r#"data-c="controls" hidden"#));
        assert_eq!(data(&page)["hives"].as_array().unwrap().len(), served.yard.colonies.len());
    });
}
