//! The model: notes with their versions in one list, settings, which colonies stand. No file, no hash, no statement.

use super::Do;
use snowhum_apiary::Note;
use std::collections::BTreeMap;

/// What became of something that was done.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(super) enum Done {
    #[default]
    Nothing,
    Stored,
    Edited,
    Withdrawn,
    Restored,
    Refused,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Kind {
    Made,
    Edited,
    Withdrawn,
    Restored,
}

#[derive(Debug, Clone, Copy)]
struct Version {
    note: u8,
    words: u8,
    colony: u8,
    kind: Kind,
    /// Place in the list of the one taken back.
    undoes: Option<usize>,
}

#[derive(Debug, Clone, Default)]
pub(super) struct Paper {
    versions: Vec<Version>,
    pub(super) settings: BTreeMap<u8, u8>,
    /// A bit for each colony that stands, and of which year; none before a yard was brought in.
    pub(super) yard: Option<(u8, u8)>,
    /// Whether a winter of the yard is over: what was noted in it is history then.
    pub(super) has_past: bool,
    backup: Option<Box<Paper>>,
    export: Option<Box<Paper>>,
    pub(super) done: Done,
}

/// A note of a number, words and a colony.
type Noted = fn(u8, u8, u8) -> Note;

impl Paper {
    /// The versions of a note, as the store would give them.
    pub(super) fn versions(&self, note: u8, noted: Noted) -> Vec<(Kind, Note)> {
        let own = self.versions.iter().filter(|one| one.note == note);
        own.map(|one| (one.kind, noted(one.note, one.words, one.colony))).collect()
    }

    /// The notes of this winter that stand at colonies that stand; all of them are of the first one.
    pub(super) fn standing(&self, noted: Noted) -> Vec<Note> {
        if self.has_past {
            return Vec::new();
        }
        let stands = |one: &Version| self.yard.is_some_and(|(colonies, _)| colonies & (1 << one.colony) != 0);
        let last = (0..5).filter_map(|note| self.last(note).map(|at| self.versions[at]));
        last.filter(|one| one.kind != Kind::Withdrawn && stands(one))
            .map(|one| noted(one.note, one.words, one.colony))
            .collect()
    }

    pub(super) fn act(&mut self, what: &Do) -> Done {
        match *what {
            Do::Put { note, words, colony } => return self.put(note, words, colony),
            Do::Withdraw { note } => return self.withdraw(note),
            Do::UndoNote { note } => return self.undo(|one| one.note == note),
            Do::UndoColony { colony } => return self.undo(|one| one.colony == colony),
            Do::Import { colonies, notes } => {
                if !self.bring(colonies, 0) {
                    return Done::Refused;
                }
                let new: Vec<u8> = (0..notes).filter(|note| self.last(*note).is_none()).collect();
                for note in new {
                    self.put(note, 7, 0);
                }
            }
            Do::Season { colonies, year } => {
                return if self.bring(colonies, year) { Done::Nothing } else { Done::Refused };
            }
            Do::Set { name, value } => drop(self.settings.insert(name, value)),
            Do::Unset { name } => drop(self.settings.remove(&name)),
            Do::Backup => self.backup = Some(Box::new(self.clone())),
            Do::Export => self.export = Some(Box::new(self.clone())),
            Do::Restore => self.put_back(self.backup.clone()),
            Do::RestoreExport => self.put_back(self.export.clone()),
            Do::Mend | Do::ImportExport | Do::Reopen => {}
        }
        Done::Nothing
    }

    /// Sets up the yard for a winter, unless it is an earlier one than that it stands in.
    fn bring(&mut self, colonies: u8, year: u8) -> bool {
        let before = self.yard.map(|(_, year)| year);
        if before.is_some_and(|before| year < before) {
            return false;
        }
        self.has_past |= before.is_some_and(|before| year > before);
        self.yard = Some((colonies, year));
        true
    }

    fn last(&self, note: u8) -> Option<usize> {
        self.versions.iter().rposition(|one| one.note == note)
    }

    fn put(&mut self, note: u8, words: u8, colony: u8) -> Done {
        let last = self.last(note).map(|at| self.versions[at]);
        let kind = match last {
            Some(last) if (last.words, last.colony) == (words, colony) => return Done::Nothing,
            Some(_) => Kind::Edited,
            None => Kind::Made,
        };
        self.versions.push(Version { note, words, colony, kind, undoes: None });
        if kind == Kind::Made { Done::Stored } else { Done::Edited }
    }

    fn withdraw(&mut self, note: u8) -> Done {
        let Some(last) = self.last(note).map(|at| self.versions[at]) else { return Done::Refused };
        if last.kind == Kind::Withdrawn {
            return Done::Nothing;
        }
        self.versions.push(Version { kind: Kind::Withdrawn, undoes: None, ..last });
        Done::Withdrawn
    }

    /// Takes back the newest that is no undo and was not taken back.
    fn undo(&mut self, is_meant: impl Fn(&Version) -> bool) -> Done {
        let is_undone = |at: usize| self.versions.iter().any(|one| one.undoes == Some(at));
        let found = (0..self.versions.len()).rev().find(|at| {
            let one = &self.versions[*at];
            is_meant(one) && one.undoes.is_none() && !is_undone(*at)
        });
        let Some(at) = found else { return Done::Nothing };
        let one = self.versions[at];
        let before = self.versions[..at].iter().rev().find(|earlier| earlier.note == one.note).copied();
        match before.filter(|before| before.kind != Kind::Withdrawn) {
            Some(before) => {
                self.versions.push(Version { kind: Kind::Restored, undoes: Some(at), ..before });
                Done::Restored
            }
            None => {
                self.versions.push(Version { kind: Kind::Withdrawn, undoes: Some(at), ..one });
                Done::Withdrawn
            }
        }
    }

    fn put_back(&mut self, copy: Option<Box<Self>>) {
        let Some(copy) = copy else { return };
        let (backup, export) = (self.backup.take(), self.export.take());
        *self = Self { backup, export, ..*copy };
    }
}
