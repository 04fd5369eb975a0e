//! Notes: once by id, every version kept, each step taken back.

use crate::house::{Folder, demo, note, note_of, now, run};
use jiff::{SignedDuration, Timestamp};
use snowhum_apiary::{Entry, Note};
use snowhum_store::{Fault, LastOf, Put, Recorded, Store, Undone, VersionKind, Wrong};

const KINDS: fn(&[snowhum_store::Version]) -> Vec<VersionKind> = |all| all.iter().map(|one| one.kind).collect();

#[test]
fn a_note_put_twice_is_stored_once() {
    run(async {
        let store = Store::in_memory().await.unwrap();
        assert_eq!(store.put_note(&note(1), now()).await.unwrap(), Put::Stored);
        assert_eq!(store.put_note(&note(1), now()).await.unwrap(), Put::AlreadyThere);
        assert_eq!(store.versions(note(1).id).await.unwrap().len(), 1);
    });
}

#[test]
fn an_edit_keeps_the_old_version_with_its_author_and_time() {
    run(async {
        let store = Store::in_memory().await.unwrap();
        let (old, mut new) = (note(1), note(1));
        new.entries.push(Entry::Words("and one more".to_owned()));
        let later = now() + SignedDuration::from_secs(60);
        store.put_note(&old, Recorded::by(now(), "Aino")).await.unwrap();
        assert_eq!(store.put_note(&new, Recorded::by(later, "Eero")).await.unwrap(), Put::Edited);
        let versions = store.versions(old.id).await.unwrap();
        assert_eq!((&versions[0].note, &versions[1].note), (&old, &new));
        assert_eq!((versions[0].recorded.author.as_str(), versions[1].recorded.author.as_str()), ("Aino", "Eero"));
        let whole_ms = |at: Timestamp| Timestamp::from_millisecond(at.as_millisecond()).unwrap();
        assert_eq!((versions[0].recorded.at, versions[1].recorded.at), (whole_ms(now()), whole_ms(later)));
        assert_eq!(versions[0].id.get_version_num(), 7);
    });
}

#[test]
fn undo_steps_back_until_nothing_is_left_and_removes_no_version() {
    run(async {
        let store = Store::in_memory().await.unwrap();
        let (first, mut second) = (note(1), note(1));
        second.entries = vec![Entry::Words("changed".to_owned())];
        store.put_note(&first, now()).await.unwrap();
        store.put_note(&second, now()).await.unwrap();
        assert!(store.withdraw_note(first.id, now()).await.unwrap());
        let undo = || store.undo_last(LastOf::Note(first.id), now());
        assert_eq!(undo().await.unwrap(), Undone::Restored(second.clone()), "the withdrawal");
        assert_eq!(undo().await.unwrap(), Undone::Restored(first.clone()), "the edit");
        assert_eq!(undo().await.unwrap(), Undone::Withdrawn(first.clone()), "the making");
        assert_eq!(undo().await.unwrap(), Undone::Nothing);
        let kinds = KINDS(&store.versions(first.id).await.unwrap());
        use VersionKind::{Edited, Made, Restored, Withdrawn};
        assert_eq!(kinds, [Made, Edited, Withdrawn, Restored, Restored, Withdrawn]);
    });
}

#[test]
fn something_new_after_an_undo_is_what_the_next_undo_takes_back() {
    run(async {
        let store = Store::in_memory().await.unwrap();
        let words = |words: &str| note_of(note(1).colony, 1, words);
        let of = LastOf::Colony(note(1).colony);
        store.put_note(&words("a"), now()).await.unwrap();
        store.put_note(&words("b"), now()).await.unwrap();
        store.undo_last(of, now()).await.unwrap();
        store.put_note(&words("c"), now()).await.unwrap();
        store.put_note(&note(2), now()).await.unwrap();
        assert_eq!(store.undo_last(of, now()).await.unwrap(), Undone::Withdrawn(note(2)));
        assert_eq!(store.undo_last(of, now()).await.unwrap(), Undone::Restored(words("a")));
        assert_eq!(store.undo_last(of, now()).await.unwrap(), Undone::Withdrawn(words("a")));
    });
}

#[test]
fn a_withdrawn_note_is_in_no_answer_and_comes_back_by_an_undo_alone_or_a_new_body() {
    run(async {
        let store = Store::in_memory().await.unwrap();
        let yard = demo();
        store.import_yard(&yard, now()).await.unwrap();
        let note = yard.notes[0].clone();
        let count = async || store.notes(yard.id, Timestamp::MAX).await.unwrap().len();
        assert!(store.withdraw_note(note.id, now()).await.unwrap());
        assert!(!store.withdraw_note(note.id, now()).await.unwrap(), "twice is once");
        assert_eq!(count().await, yard.notes.len() - 1);
        assert_eq!(store.put_note(&note, now()).await.unwrap(), Put::AlreadyThere, "a sender repeats itself");
        assert_eq!(count().await, yard.notes.len() - 1);
        store.undo_last(LastOf::Note(note.id), now()).await.unwrap();
        assert_eq!(store.yard(yard.id).await.unwrap().unwrap(), yard);
        store.withdraw_note(note.id, now()).await.unwrap();
        let mut new = note.clone();
        new.entries.push(Entry::Words("seen again".to_owned()));
        assert_eq!(store.put_note(&new, now()).await.unwrap(), Put::Edited);
        assert!(store.notes(yard.id, Timestamp::MAX).await.unwrap().contains(&new));
    });
}

#[test]
fn notes_are_given_up_to_a_time_and_in_order() {
    run(async {
        let store = Store::in_memory().await.unwrap();
        let yard = demo();
        store.import_yard(&yard, now()).await.unwrap();
        let middle = yard.notes[yard.notes.len() / 2].at;
        let expected: Vec<_> = yard.notes.iter().filter(|note| note.at <= middle).cloned().collect();
        assert!(!expected.is_empty() && expected.len() < yard.notes.len());
        assert_eq!(store.notes(yard.id, middle).await.unwrap(), expected);
        let mut late = note_of(yard.colonies[0].id, 1, "half a millisecond later");
        late.at = middle + SignedDuration::from_micros(500);
        store.put_note(&late, now()).await.unwrap();
        assert_eq!(store.notes(yard.id, middle).await.unwrap(), expected, "the time counts beyond the millisecond");
        assert!(store.notes(yard.id, late.at).await.unwrap().contains(&late));
    });
}

#[test]
fn a_note_nobody_made_cannot_be_withdrawn() {
    run(async {
        let store = Store::in_memory().await.unwrap();
        let fault = store.withdraw_note(note(9).id, now()).await.unwrap_err();
        assert!(matches!(fault, Fault { wrong: Wrong::NoSuchNote { .. }, .. }), "{fault}");
    });
}

#[test]
fn programs_that_make_a_new_store_at_once_all_get_it() {
    for round in 0..10 {
        let folder = Folder::new("at-once");
        run(async {
            let opening: Vec<_> = (0..4_u128)
                .map(|n| {
                    let path = folder.store();
                    tokio::spawn(async move {
                        let store = Store::open(&path).await.unwrap();
                        assert_eq!(store.put_note(&note(n), now()).await.unwrap(), Put::Stored, "round {round}");
                    })
                })
                .collect();
            for one in opening {
                one.await.unwrap();
            }
            assert!(Store::open(&folder.store()).await.unwrap().doctor().await.unwrap().is_well());
        });
    }
}

#[test]
fn five_writers_at_once_lose_nothing() {
    let folder = Folder::new("writers");
    run(async {
        let (one, two) = (Store::open(&folder.store()).await.unwrap(), Store::open(&folder.store()).await.unwrap());
        let writers: Vec<_> = (0..5_u128)
            .map(|writer| {
                let store = if writer % 2 == 0 { one.clone() } else { two.clone() };
                tokio::spawn(async move {
                    for n in 0..40 {
                        assert_eq!(store.put_note(&note(writer * 1000 + n), now()).await.unwrap(), Put::Stored);
                        // All of them write this one; whoever is first stores it.
                        store.put_note(&note(9000 + n), now()).await.unwrap();
                    }
                })
            })
            .collect();
        for writer in writers {
            writer.await.unwrap();
        }
        for n in (0..5).flat_map(|writer| (0..40).map(move |n| writer * 1000 + n)).chain(9000..9040) {
            assert_eq!(two.versions(note(n).id).await.unwrap().len(), 1, "note {n}");
        }
        assert!(one.doctor().await.unwrap().is_well());
    });
}

#[test]
fn a_day_nobody_can_mean_is_refused_on_every_way_in() {
    run(async {
        let store = Store::in_memory().await.unwrap();
        for at in ["0019-01-09T10:00:00Z", "1949-12-31T00:00:00Z", "2027-01-20T00:00:00Z", "9999-01-01T00:00:00Z"] {
            let mut slip = note(1);
            slip.at = at.parse().unwrap();
            let mut yard = demo();
            yard.notes = vec![Note { colony: yard.colonies[0].id, ..slip.clone() }];
            for fault in [
                store.put_note(&slip, now()).await.unwrap_err(),
                store.import_yard(&yard, now()).await.unwrap_err(),
                store.import_notes(std::slice::from_ref(&slip), now()).await.unwrap_err(),
            ] {
                assert!(matches!(fault.wrong, Wrong::Unfit { .. }) && fault.to_string().contains(at), "{fault}");
            }
        }
        assert!(store.versions(note(1).id).await.unwrap().is_empty());
        let mut plan = note(2);
        plan.at = "2026-12-31T00:00:00Z".parse().unwrap();
        assert_eq!(store.put_note(&plan, now()).await.unwrap(), Put::Stored, "what one means to do");
        let board = Timestamp::UNIX_EPOCH;
        assert_eq!(store.put_note(&note(3), board).await.unwrap(), Put::Stored, "a clock in 1970 is not asked");
    });
}
