//! Hives added, changed, moved and retired in the browser.

use axum::http::StatusCode;

use crate::support::{Served, run, run_bare, well_formed};

const MAPLE: [(&str, &str); 6] = [
    ("name", "Maple"),
    ("kind", "Langstroth, 10 frames"),
    ("strength", "middling"),
    ("food", "fair"),
    ("lid", "foam 50 mm"),
    ("upper_hole", "20 mm"),
];

#[test]
fn a_hive_added_stands_in_the_yard_with_its_estimate() {
    run(|served: Served| async move {
        served.settled().await;
        let added = served.post("/hives", &MAPLE).await;
        assert_eq!(added.status, StatusCode::SEE_OTHER, "{}", added.body);
        let now = served.settled().await;
        let names: Vec<&str> =
            now["now"]["colonies"].as_array().unwrap().iter().filter_map(|colony| colony["name"].as_str()).collect();
        assert_eq!((names.len(), names.last()), (served.yard.colonies.len() + 1, Some(&"Maple")));
        let kept = served.store.yard(served.yard.id).await.unwrap().unwrap();
        assert_eq!(kept.notes.len(), served.yard.notes.len(), "its notes stay");
        assert!(!kept.hives.last().unwrap().lid.is_empty());
        let page = served.get(added.headers["location"].to_str().unwrap()).await.body;
        assert!(page.contains("<strong>Maple</strong> stands in the yard now."));
        let again = served.post("/hives", &MAPLE).await;
        assert_eq!(again.status, StatusCode::UNPROCESSABLE_ENTITY);
        assert!(again.body.contains("Another hive has this name") && again.body.contains("value=\"Maple\""));
    });
}

#[test]
fn a_yard_files_remarks_stay_when_a_hive_is_added() {
    run_bare(async {
        let folder = std::env::temp_dir().join(format!("snowhum-hives-{}", std::process::id()));
        std::fs::create_dir_all(&folder).unwrap();
        let file = folder.join("yard.toml");
        let before = format!("# My remark\n{}", snowhum_apiary::demo_text());
        std::fs::write(&file, &before).unwrap();
        let served = Served::of_file(file.clone()).await;
        assert_eq!(served.post("/hives", &MAPLE).await.status, StatusCode::SEE_OTHER);
        let after = std::fs::read_to_string(&file).unwrap();
        assert!(after.starts_with(before.trim_end()) && after.contains("name = \"Maple\""));
        let (yard, _) = snowhum_apiary::read(&after, "yard").unwrap();
        let kept = served.store.yard(yard.id).await.unwrap().unwrap();
        assert_eq!(kept.colonies, yard.colonies);
        std::fs::remove_dir_all(folder).unwrap();
    });
}

#[test]
fn a_hive_is_dressed_otherwise_moved_and_retired_by_taps() {
    run(|served: Served| async move {
        served.settled().await;
        let hive = format!("/hive/{}", served.colony("Alder"));
        assert_eq!(well_formed(&served.get(&format!("{hive}/change")).await.body), Ok(()));
        let changed =
            [("entry.Lid", "changed=lid=25 mm foam"), ("entry.Wrap", "changed=wrap=off"), ("entry.fate", "did=moved")];
        let kept = served.post(&format!("{hive}/note"), &changed).await;
        assert_eq!(kept.status, StatusCode::SEE_OTHER, "{}", kept.body);
        served.settled().await;
        let page = served.get(&hive).await.body;
        assert!(page.contains("xps foam 25 mm") && page.contains("done: moved"), "{page}");
        let sold = served.post(&format!("{hive}/note"), &[("entry.fate", "counted=sold")]).await;
        assert_eq!(sold.status, StatusCode::SEE_OTHER, "{}", sold.body);
        served.settled().await;
        assert!(served.get(&hive).await.body.contains("sold"));
    });
}

#[test]
fn food_given_is_tapped_and_typed() {
    run(|served: Served| async move {
        served.settled().await;
        let note = format!("/hive/{}/note", served.colony("Alder"));
        let kept = served.post(&note, &[("fed", "7,5"), ("feed", "fondant")]).await;
        assert_eq!(kept.status, StatusCode::SEE_OTHER, "{}", kept.body);
        let page = served.get(kept.headers["location"].to_str().unwrap()).await.body;
        assert!(page.contains("7.5 kg fondant") || page.contains("7,5 kg fondant"), "{page}");
        let untold = served.post(&note, &[("fed", "7.5")]).await;
        assert_eq!(untold.status, StatusCode::UNPROCESSABLE_ENTITY);
        assert!(untold.body.contains("tap what was fed"));
    });
}
