//! A colony asked for by its name, and by one that no colony has.

use axum::http::StatusCode;

use crate::support::{Answer, Served, run, well_formed};

fn leads_to(answer: &Answer) -> &str {
    assert_eq!(answer.status, StatusCode::SEE_OTHER, "{}", answer.body);
    answer.headers["location"].to_str().unwrap()
}

#[test]
fn a_name_in_any_case_leads_to_the_address_with_the_id() {
    run(|served: Served| async move {
        let larch = served.colony("Larch");
        for (asked, found) in [
            ("/hive/larch", format!("/hive/{larch}")),
            ("/hive/LARCH/weigh?left=14&right=12", format!("/hive/{larch}/weigh?left=14&right=12")),
            ("/dead/Larch", format!("/dead/{larch}")),
            ("/hive/Larch/notes", format!("/hive/{larch}#notes")),
            ("/hive/larch/note", format!("/hive/{larch}#note")),
        ] {
            assert_eq!(leads_to(&served.get(asked).await), found, "{asked}");
        }
        assert_eq!(served.get(&format!("/hive/{larch}")).await.status, StatusCode::OK);
        assert_eq!(served.get("/setup?hive=larch").await.status, StatusCode::OK);
        let kept = served.post("/hive/larch/note", &[("line", "hum=heard by ear")]).await;
        assert!(leads_to(&kept).starts_with(&format!("/hive/{larch}?said=noted.")), "{}", leads_to(&kept));
    });
}

#[test]
fn a_name_that_no_colony_has_is_answered_with_those_that_there_are() {
    run(|served: Served| async move {
        for asked in
            ["/hive/Sycamore", "/hive/Sycamore/weigh", "/hive/Sycamore/notes", "/dead/Sycamore", "/setup?hive=Sycamore"]
        {
            let answer = served.get(asked).await;
            assert_eq!(answer.status, StatusCode::NOT_FOUND, "{asked}");
            assert_eq!(well_formed(&answer.body), Ok(()), "{asked}");
            assert!(answer.body.contains("There is no colony “Sycamore” in this yard."), "{asked}");
            for colony in &served.yard.colonies {
                let way = format!("href=\"/hive/{}\">{}</a>", colony.id.0, colony.name);
                assert!(answer.body.contains(&way), "{asked} does not lead to {}", colony.name);
            }
        }
        let hostile = served.get("/hive/%3Cscript%3Ealert(1)%3C%2Fscript%3E").await;
        assert!(hostile.status == StatusCode::NOT_FOUND && !hostile.body.contains("<script>"));
    });
}
