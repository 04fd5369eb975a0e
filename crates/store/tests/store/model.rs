//! The store beside a model of it that a child could keep on paper: whatever is done, in whatever order, they agree.

mod paper;

use crate::house::{Folder, demo, note_of, now};
use jiff::ToSpan;
use paper::{Done, Kind, Paper};
use proptest::prelude::*;
use proptest::test_runner::Config;
use proptest_state_machine::{ReferenceStateMachine, StateMachineTest, prop_state_machine};
use snowhum_apiary::{Apiary, Note};
use snowhum_store::{Access, LastOf, Put, Store, Undone, VersionKind, Wrong};
use std::future::Future;
use std::path::PathBuf;
use tokio::runtime::Runtime;

/// What is done to both.
#[derive(Debug, Clone)]
pub(super) enum Do {
    Put {
        note: u8,
        words: u8,
        colony: u8,
    },
    Withdraw {
        note: u8,
    },
    UndoNote {
        note: u8,
    },
    UndoColony {
        colony: u8,
    },
    Import {
        colonies: u8,
        notes: u8,
    },
    /// The yard is set up for a later winter: other colonies stand, as of another day, and what was noted stays.
    Season {
        colonies: u8,
        year: u8,
    },
    Set {
        name: u8,
        value: u8,
    },
    Unset {
        name: u8,
    },
    Backup,
    Restore,
    Mend,
    Export,
    RestoreExport,
    ImportExport,
    Reopen,
}

struct Model;

impl ReferenceStateMachine for Model {
    type State = Paper;
    type Transition = Do;

    fn init_state() -> BoxedStrategy<Paper> {
        Just(Paper::default()).boxed()
    }

    fn transitions(_: &Paper) -> BoxedStrategy<Do> {
        let (note, colony) = (0..5_u8, 0..3_u8);
        prop_oneof![
            8 => (note.clone(), 0..3_u8, colony.clone()).prop_map(|(note, words, colony)| Do::Put { note, words, colony }),
            3 => note.clone().prop_map(|note| Do::Withdraw { note }),
            4 => note.clone().prop_map(|note| Do::UndoNote { note }),
            2 => colony.prop_map(|colony| Do::UndoColony { colony }),
            2 => (1..8_u8, 0..3_u8).prop_map(|(colonies, notes)| Do::Import { colonies, notes }),
            2 => (1..8_u8, 1..4_u8).prop_map(|(colonies, year)| Do::Season { colonies, year }),
            2 => (0..3_u8, 0..3_u8).prop_map(|(name, value)| Do::Set { name, value }),
            1 => (0..3_u8).prop_map(|name| Do::Unset { name }),
            1 => Just(Do::Backup),
            1 => Just(Do::Restore),
            1 => Just(Do::Mend),
            1 => Just(Do::Export),
            1 => Just(Do::RestoreExport),
            1 => Just(Do::ImportExport),
            1 => Just(Do::Reopen),
        ]
        .boxed()
    }

    fn apply(mut paper: Paper, what: &Do) -> Paper {
        paper.done = paper.act(what);
        paper
    }
}

/// The store in its folder, and where its last backup and export lie.
struct Kept {
    runtime: Runtime,
    folder: Folder,
    store: Option<Store>,
    copies: usize,
    backup: Option<PathBuf>,
    export: Option<PathBuf>,
}

/// The demo yard so many years on, with its first three colonies as `colonies` has bits, and so many notes.
fn yard(colonies: u8, notes: u8, year: u8) -> Apiary {
    let mut yard = demo();
    yard.as_of = yard.as_of.checked_add(i64::from(year).years()).unwrap();
    let notes = (0..notes).map(|note| noted(note, 7, 0)).collect();
    let stays = |place: usize| place < 3 && colonies & (1 << place) != 0;
    yard.colonies = yard.colonies.iter().enumerate().filter(|(at, _)| stays(*at)).map(|(_, one)| one.clone()).collect();
    Apiary { notes, ..yard }
}

fn noted(note: u8, words: u8, colony: u8) -> Note {
    note_of(demo().colonies[usize::from(colony)].id, u128::from(note), &format!("words {words}"))
}

impl Kept {
    fn run<T>(&self, work: impl Future<Output = T>) -> T {
        self.runtime.block_on(work)
    }

    fn store(&self) -> &Store {
        self.store.as_ref().unwrap()
    }

    fn close(&mut self) {
        let store = self.store.take().unwrap();
        self.run(store.close());
    }

    fn open(&mut self) {
        self.store = Some(self.run(Store::open(&self.folder.store())).unwrap());
    }

    fn fresh_name(&mut self, ending: &str) -> PathBuf {
        self.copies += 1;
        self.folder.path().join(format!("copy-{}.{ending}", self.copies))
    }

    fn put(&self, note: &Note) -> Done {
        match self.run(self.store().put_note(note, now())).unwrap() {
            Put::Stored => Done::Stored,
            Put::AlreadyThere => Done::Nothing,
            Put::Edited => Done::Edited,
        }
    }

    fn undo(&self, last: LastOf) -> Done {
        match self.run(self.store().undo_last(last, now())).unwrap() {
            Undone::Nothing => Done::Nothing,
            Undone::Withdrawn(_) => Done::Withdrawn,
            Undone::Restored(_) => Done::Restored,
        }
    }

    fn act(&mut self, what: &Do) -> Done {
        match *what {
            Do::Put { note, words, colony } => return self.put(&noted(note, words, colony)),
            Do::Withdraw { note } => {
                return match self.run(self.store().withdraw_note(noted(note, 0, 0).id, now())) {
                    Ok(true) => Done::Withdrawn,
                    Ok(false) => Done::Nothing,
                    Err(fault) => {
                        assert!(matches!(fault.wrong, Wrong::NoSuchNote { .. }), "{fault}");
                        Done::Refused
                    }
                };
            }
            Do::UndoNote { note } => return self.undo(LastOf::Note(noted(note, 0, 0).id)),
            Do::UndoColony { colony } => return self.undo(LastOf::Colony(noted(0, 0, colony).colony)),
            Do::Import { colonies, notes } => {
                return self.bring(&yard(colonies, notes, 0));
            }
            Do::Season { colonies, year } => {
                return self.bring(&yard(colonies, 0, year));
            }
            Do::Set { name, value } => self.run(self.store().set(&name.to_string(), &value.to_string())).unwrap(),
            Do::Unset { name } => self.run(self.store().unset(&name.to_string())).unwrap(),
            Do::Backup => {
                let to = self.fresh_name("db");
                assert!(self.run(self.store().backup(&to)).unwrap().is_well());
                self.backup = Some(to);
            }
            Do::Export => {
                let to = self.fresh_name("json");
                self.run(self.store().export_json(std::fs::File::create(&to).unwrap())).unwrap();
                self.export = Some(to);
            }
            Do::Restore => self.put_back(self.backup.clone()),
            Do::RestoreExport => self.put_back(self.export.clone()),
            Do::Mend => self.mend(),
            Do::ImportExport => self.import_export(),
            Do::Reopen => {
                self.close();
                self.open();
            }
        }
        Done::Nothing
    }

    /// A yard of an earlier autumn than the records is refused, so that it writes over no history.
    fn bring(&self, yard: &Apiary) -> Done {
        match self.run(self.store().import_yard(yard, now())) {
            Ok(_) => Done::Nothing,
            Err(fault) => {
                assert!(matches!(fault.wrong, Wrong::Unfit { field: "count", .. }), "{fault}");
                Done::Refused
            }
        }
    }

    fn put_back(&mut self, from: Option<PathBuf>) {
        let Some(from) = from else { return };
        self.close();
        self.run(Store::restore(&from, &self.folder.store(), Access::Left, now())).unwrap();
        self.open();
    }

    /// Mending what is whole changes nothing, or is refused where the records went another way since.
    fn mend(&mut self) {
        let Some(from) = self.backup.clone() else { return };
        self.close();
        match self.run(Store::mend(&self.folder.store(), &from, now())) {
            Ok(mended) => assert!(mended.lost.is_empty(), "{:?}", mended.lost),
            Err(fault) => assert!(matches!(fault.wrong, Wrong::NotInOrder { .. }), "{fault}"),
        }
        self.open();
    }

    /// Everything out and into an empty store in its place.
    fn import_export(&mut self) {
        let mut bytes = Vec::new();
        self.run(self.store().export_json(&mut bytes)).unwrap();
        self.close();
        std::fs::remove_file(self.folder.store()).unwrap();
        self.open();
        self.run(self.store().import_json(&bytes[..])).unwrap();
    }
}

struct Beside;

impl StateMachineTest for Beside {
    type SystemUnderTest = Kept;
    type Reference = Model;

    fn init_test(_: &Paper) -> Kept {
        let runtime = tokio::runtime::Builder::new_current_thread().enable_time().build().unwrap();
        let folder = Folder::new("model");
        let mut kept = Kept { runtime, folder, store: None, copies: 0, backup: None, export: None };
        kept.open();
        kept
    }

    fn apply(mut kept: Kept, paper: &Paper, what: Do) -> Kept {
        assert_eq!(kept.act(&what), paper.done, "{what:?}");
        kept
    }

    fn check_invariants(kept: &Kept, paper: &Paper) {
        kept.run(async {
            let store = kept.store();
            assert!(store.doctor().await.unwrap().is_well());
            for note in 0..5 {
                let versions = store.versions(noted(note, 0, 0).id).await.unwrap();
                let kinds: Vec<(Kind, Note)> = versions.into_iter().map(|one| (one.kind.into(), one.note)).collect();
                assert_eq!(kinds, paper.versions(note, noted), "note {note}");
            }
            let standing = store.yard(demo().id).await.unwrap();
            assert_eq!(standing.is_some(), paper.yard.is_some());
            if let (Some(standing), Some((colonies, year))) = (standing, paper.yard) {
                assert_eq!(standing.notes, paper.standing(noted));
                let expected = yard(colonies, 0, year);
                assert_eq!(standing.past.is_empty(), !paper.has_past, "winters that are over");
                assert_eq!((standing.as_of, standing.colonies), (expected.as_of, expected.colonies));
            }
            let settings = store.settings().await.unwrap();
            let expected = paper.settings.iter().map(|(name, value)| (name.to_string(), value.to_string()));
            assert_eq!(settings, expected.collect());
        });
    }
}

impl From<VersionKind> for Kind {
    fn from(kind: VersionKind) -> Self {
        match kind {
            VersionKind::Made => Self::Made,
            VersionKind::Edited => Self::Edited,
            VersionKind::Withdrawn => Self::Withdrawn,
            VersionKind::Restored => Self::Restored,
        }
    }
}

fn config(cases: u32) -> Config {
    Config { cases, failure_persistence: None, ..Config::default() }
}

prop_state_machine! {
    #![proptest_config(config(12))]
    #[test]
    fn whatever_is_done_the_store_and_the_paper_agree(sequential 1..40 => Beside);
}

prop_state_machine! {
    #![proptest_config(config(1000))]
    #[test]
    #[ignore = "takes many minutes: cargo test -p snowhum-store -- --ignored a_thousand_walks"]
    fn a_thousand_walks_and_the_store_and_the_paper_agree(sequential 1..80 => Beside);
}
