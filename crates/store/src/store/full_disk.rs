//! A disk that fills up while notes are written.

use super::{Room, Store};
use crate::fault::Wrong;
use jiff::Timestamp;
use snowhum_apiary::{ColonyId, Conditions, Entry, Note, NoteId, VisitId};
use uuid::Uuid;

fn note(n: u128) -> Note {
    Note {
        id: NoteId(Uuid::from_u128(n)),
        visit: VisitId(Uuid::from_u128(1)),
        colony: ColonyId(Uuid::from_u128(2)),
        at: Timestamp::UNIX_EPOCH,
        conditions: Conditions::default(),
        entries: vec![Entry::Words("many words ".repeat(100))],
    }
}

#[test]
fn a_full_disk_refuses_a_note_with_a_remedy_and_keeps_all_before_it() {
    let folder = std::env::temp_dir().join(format!("snowhum-store-{}-full", std::process::id()));
    let path = folder.join("snowhum.db");
    tokio::runtime::Builder::new_current_thread().enable_time().build().unwrap().block_on(async {
        let store = Store::open_with(&path, Room::Pages(60)).await.unwrap();
        let (mut stored, mut fault) = (0, None);
        for n in 0..1000 {
            match store.put_note(&note(n), Timestamp::UNIX_EPOCH).await {
                Ok(_) => stored += 1,
                Err(told) => {
                    fault = Some(told);
                    break;
                }
            }
        }
        let fault = fault.unwrap();
        assert!(matches!(fault.wrong, Wrong::Full) && fault.to_string().contains("free some space"), "{fault}");
        assert!(stored > 10, "{stored}");
        for n in 0..=stored {
            let versions = store.versions(NoteId(Uuid::from_u128(n))).await.unwrap();
            assert_eq!(versions.len(), usize::from(n < stored), "note {n} of {stored}");
        }
        assert!(store.doctor().await.unwrap().is_well());
        store.close().await;
        // With room again it goes on.
        let store = Store::open(&path).await.unwrap();
        store.put_note(&note(stored), Timestamp::UNIX_EPOCH).await.unwrap();
        store.close().await;
    });
    std::fs::remove_dir_all(&folder).unwrap();
}
