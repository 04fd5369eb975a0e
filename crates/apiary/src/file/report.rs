//! Faults and advisories as they are found.

use crate::wrong::Wrong;
use crate::{Advisory, Apiary, Colony, Fault, Faults, Hive, SealedHive};
use snowhum_say::{Message, yard_fault as say};

/// Most faults that are written out; the rest are counted.
const MOST_FAULTS: usize = 500;

/// Where something stands in the file.
#[derive(Debug, Clone)]
pub(crate) struct Spot {
    pub(crate) line: usize,
    pub(crate) field: String,
}

/// What has been found so far.
pub(crate) struct Report {
    line_starts: Vec<usize>,
    faults: Vec<Fault>,
    left_off: usize,
    advisories: Vec<Advisory>,
    sealed: Vec<SealedHive>,
    /// Whether the file is broken as TOML, so that what seems missing may only be unreadable.
    broken: bool,
}

impl Report {
    pub(crate) fn of(text: &str) -> Self {
        let line_starts = std::iter::once(0).chain(text.match_indices('\n').map(|(at, _)| at + 1)).collect();
        Self { line_starts, faults: Vec::new(), left_off: 0, advisories: Vec::new(), sealed: Vec::new(), broken: false }
    }

    /// One fault that stands for the whole file.
    pub(crate) fn single(file: &str, line: usize, problem: Message, remedy: Message) -> Faults {
        let fault = Fault { line, field: "file".to_owned(), problem, remedy };
        Faults { file: file.to_owned(), faults: vec![fault], sealed: Vec::new() }
    }

    /// Whether nothing has been found wrong so far.
    pub(crate) fn is_clean(&self) -> bool {
        self.faults.is_empty() && !self.broken
    }

    /// The line of a byte, from 1.
    pub(crate) fn line_at(&self, byte: usize) -> usize {
        self.line_starts.partition_point(|start| *start <= byte).max(1)
    }

    pub(crate) fn fault(&mut self, spot: &Spot, problem: Message, remedy: Message) {
        if self.faults.len() >= MOST_FAULTS {
            self.left_off += 1;
            return;
        }
        self.faults.push(Fault { line: spot.line, field: spot.field.clone(), problem, remedy });
    }

    /// Keeps a hive that bees cannot leave, with its colony and the line of its fault.
    pub(crate) fn sealed(&mut self, line: usize, hive: &Hive, colony: &Colony) {
        self.sealed.push(SealedHive { line, hive: hive.clone(), colony: colony.clone() });
    }

    pub(crate) fn wrong(&mut self, spot: &Spot, wrong: Wrong) {
        self.fault(spot, wrong.problem, wrong.remedy);
    }

    /// Something that should stand in a section and does not.
    pub(crate) fn missing(&mut self, section: &Spot, key: &str, remedy: Message) {
        if self.broken {
            return;
        }
        let field = if section.field.is_empty() { key.to_owned() } else { format!("{}.{key}", section.field) };
        self.fault(&Spot { line: section.line, field }, say::missing(), remedy);
    }

    pub(crate) fn syntax(&mut self, byte: usize, message: &str) {
        self.broken = true;
        let spot = Spot { line: self.line_at(byte), field: "file".to_owned() };
        self.fault(&spot, say::no_toml(message), say::no_toml_right());
    }

    pub(crate) fn advise(&mut self, spot: &Spot, text: Message) {
        self.advisories.push(Advisory { line: spot.line, field: spot.field.clone(), text });
    }

    /// The yard if nothing was wrong, otherwise all that was.
    pub(crate) fn close(mut self, yard: Option<Apiary>, file: &str) -> Result<(Apiary, Vec<Advisory>), Faults> {
        if let (true, Some(yard)) = (self.faults.is_empty(), yard) {
            return Ok((yard, self.advisories));
        }
        self.faults.sort_by_key(|fault| fault.line);
        if self.left_off > 0 {
            let line = self.line_starts.len();
            let (problem, remedy) = (say::more(self.left_off), say::more_right());
            self.faults.push(Fault { line, field: "file".to_owned(), problem, remedy });
        }
        if self.faults.is_empty() {
            return Err(Self::single(file, 1, say::no_yard(), say::template_right()));
        }
        Err(Faults { file: file.to_owned(), faults: self.faults, sealed: self.sealed })
    }
}
