//! US units on every page.

use snowhum_testkit::metric_figure;

use crate::pages::every_page;
use crate::support::{run, said};

/// Asked for: where a figure comes from is told in the unit of its source, and the round's sheet is typed in as written.
const ON_REQUEST: [&str; 1] = ["/source"];

#[test]
fn no_page_tells_a_metric_figure_under_us_units() {
    run(|served| async move {
        let pairs = [("units", "us"), ("language", "en-US"), ("currency", "USD"), ("colony", "150")];
        served.post("/settings", &pairs).await;
        served.settled().await;
        let asked = |page: &String| ON_REQUEST.iter().any(|start| page.starts_with(start));
        let mut told = Vec::new();
        for page in every_page(&served).into_iter().filter(|page| !asked(page)) {
            let found = metric_figure(&said(&served.get(&page).await.body));
            told.extend(found.map(|figure| format!("{page}: {figure}")));
        }
        assert!(told.is_empty(), "{}", told.join("\n"));
    });
}
