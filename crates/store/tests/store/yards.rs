//! Yards: what goes in comes out, by id.

use crate::house::{demo, note_of, now, run};
use jiff::{SignedDuration, Timestamp};
use snowhum_apiary::{ApiaryId, Entry, template_text};
use snowhum_store::{Alert, Imported, Put, Store, Taken, Wrong};
use uuid::Uuid;

#[test]
fn a_yard_comes_out_as_it_went_in() {
    run(async {
        let store = Store::in_memory().await.unwrap();
        let template = snowhum_apiary::read(template_text(), "template.toml").unwrap().0;
        for yard in [demo(), template] {
            store.import_yard(&yard, now()).await.unwrap();
            assert_eq!(store.yard(yard.id).await.unwrap(), Some(yard));
        }
        assert_eq!(store.yards().await.unwrap().len(), 2);
        assert_eq!(store.yard(ApiaryId(Uuid::from_u128(1))).await.unwrap(), None);
    });
}

#[test]
fn importing_again_changes_nothing_and_does_not_touch_what_was_edited_since() {
    run(async {
        let store = Store::in_memory().await.unwrap();
        let yard = demo();
        let all = yard.notes.len();
        let first = store.import_yard(&yard, now()).await.unwrap();
        assert_eq!(first.notes, Taken { stored: all, known: 0, differing: 0 });
        let mut edited = yard.notes[0].clone();
        edited.entries.push(Entry::Words("looked again".to_owned()));
        assert_eq!(store.put_note(&edited, now()).await.unwrap(), Put::Edited);
        let second = store.import_yard(&yard, now()).await.unwrap();
        assert_eq!(second, Imported { notes: Taken { stored: 0, known: all - 1, differing: 1 }, colonies_left: 0 });
        assert_eq!(store.yard(yard.id).await.unwrap().unwrap().notes[0], edited);
    });
}

#[test]
fn a_colony_that_left_is_in_the_yard_no_more_its_notes_stay_and_it_may_come_back() {
    run(async {
        let store = Store::in_memory().await.unwrap();
        let yard = demo();
        store.import_yard(&yard, now()).await.unwrap();
        let gone = yard.notes[0].colony;
        let mut smaller = yard.clone();
        smaller.colonies.retain(|colony| colony.id != gone);
        smaller.notes.retain(|note| note.colony != gone);
        smaller.name = "Renamed".to_owned();
        assert_eq!(store.import_yard(&smaller, now()).await.unwrap().colonies_left, 1);
        assert_eq!(store.yard(yard.id).await.unwrap(), Some(smaller));
        assert_eq!(store.versions(yard.notes[0].id).await.unwrap().len(), 1);
        let ever = store.yard_ever(yard.id).await.unwrap().unwrap();
        assert!(ever.colonies.iter().any(|colony| colony.id == gone), "its record outlasts it");
        assert_eq!((ever.notes.len(), ever.name.as_str()), (yard.notes.len(), "Renamed"));
        store.import_yard(&yard, now()).await.unwrap();
        assert_eq!(store.yard(yard.id).await.unwrap(), Some(yard));
    });
}

#[test]
fn a_hive_cannot_stand_in_two_yards_and_the_refused_yard_leaves_no_trace() {
    run(async {
        let store = Store::in_memory().await.unwrap();
        let yard = demo();
        store.import_yard(&yard, now()).await.unwrap();
        let mut thief = yard.clone();
        thief.id = ApiaryId(Uuid::from_u128(99));
        let fault = store.import_yard(&thief, now()).await.unwrap_err();
        assert!(matches!(fault.wrong, Wrong::InAnotherYard { .. }), "{fault}");
        assert_eq!(store.yards().await.unwrap().len(), 1);
        assert_eq!(store.yard(yard.id).await.unwrap(), Some(yard));
    });
}

#[test]
fn a_note_that_comes_before_its_yard_is_kept_and_then_shown() {
    run(async {
        let store = Store::in_memory().await.unwrap();
        let mut yard = demo();
        let early = note_of(yard.colonies[0].id, 1, "written on the way");
        store.put_note(&early, now()).await.unwrap();
        let report = store.doctor().await.unwrap();
        assert!(report.is_well() && format!("{report:?}").contains("store-found-orphans"), "{report:?}");
        yard.notes.clear();
        store.import_yard(&yard, now()).await.unwrap();
        assert_eq!(store.notes(yard.id, Timestamp::MAX).await.unwrap(), [early]);
    });
}

#[test]
fn the_last_alert_of_each_colony_is_known() {
    run(async {
        let store = Store::in_memory().await.unwrap();
        let yard = demo();
        let alert = |colony: Option<usize>, word: &str, hours: i64| Alert {
            yard: yard.id,
            colony: colony.map(|at| yard.colonies[at].id),
            word: word.to_owned(),
            at: Timestamp::UNIX_EPOCH + SignedDuration::from_hours(hours),
        };
        for one in
            [alert(Some(0), "feed", 1), alert(None, "gale", 2), alert(Some(1), "feed", 3), alert(Some(0), "look", 4)]
        {
            store.put_alert(&one).await.unwrap();
        }
        let expected = [alert(None, "gale", 2), alert(Some(1), "feed", 3), alert(Some(0), "look", 4)];
        assert_eq!(store.alert_last(yard.id).await.unwrap(), expected);
        assert_eq!(store.alert_last(ApiaryId(Uuid::from_u128(1))).await.unwrap(), []);
    });
}

#[test]
fn a_setting_is_what_it_was_set_to_last() {
    run(async {
        let store = Store::in_memory().await.unwrap();
        store.set("units", "us").await.unwrap();
        store.set("units", "metric").await.unwrap();
        store.set("empty", "").await.unwrap();
        assert_eq!(store.setting("units").await.unwrap().as_deref(), Some("metric"));
        store.unset("units").await.unwrap();
        assert_eq!(store.setting("units").await.unwrap(), None);
        assert_eq!(
            store.settings().await.unwrap().into_iter().collect::<Vec<_>>(),
            [("empty".to_owned(), String::new())]
        );
    });
}
