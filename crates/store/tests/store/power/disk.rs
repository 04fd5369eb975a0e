//! A disk that forgets what nobody waited for.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

const SECTOR: usize = 512;

/// One thing a program asked of the disk.
#[derive(Debug, Clone)]
pub(super) enum Event {
    Made(PathBuf),
    Written {
        file: PathBuf,
        place: usize,
        bytes: Vec<u8>,
    },
    Cut {
        file: PathBuf,
        length: usize,
    },
    /// A file, or a folder and with it its names.
    Sync {
        file: PathBuf,
    },
    Removed(PathBuf),
    Renamed {
        from: PathBuf,
        to: PathBuf,
    },
    Linked {
        from: PathBuf,
        to: PathBuf,
    },
}

/// The events of a recorder's log.
pub(super) fn events(mut log: &[u8]) -> Vec<Event> {
    let mut events = Vec::new();
    while !log.is_empty() {
        let number = |at: usize| u64::from_le_bytes(log[at..at + 8].try_into().unwrap()) as usize;
        let (what, name) = (log[0], usize::from(u16::from_le_bytes([log[1], log[2]])));
        let (place, count) = (number(3), number(11));
        let path = |bytes: &[u8]| PathBuf::from(String::from_utf8(bytes.to_vec()).unwrap());
        let file = path(&log[19..19 + name]);
        let rest = &log[19 + name..];
        let has_bytes = matches!(what, b'w' | b'r' | b'l');
        let bytes = if has_bytes { &rest[..count] } else { &[] };
        events.push(match what {
            b'c' => Event::Made(file),
            b'w' => Event::Written { file, place, bytes: bytes.to_vec() },
            b't' => Event::Cut { file, length: place },
            b's' => Event::Sync { file },
            b'u' => Event::Removed(file),
            b'r' => Event::Renamed { from: file, to: path(bytes) },
            b'l' => Event::Linked { from: file, to: path(bytes) },
            other => unreachable!("no such event: {other}"),
        });
        log = &rest[bytes.len()..];
    }
    events
}

/// What a file holds: on the disk for good, and asked for since.
#[derive(Debug, Clone, Default)]
struct Content {
    lasting: Vec<u8>,
    asked: Vec<Change>,
}

#[derive(Debug, Clone)]
enum Change {
    Written { place: usize, bytes: Vec<u8> },
    Cut(usize),
}

/// Names of files, by the number of their content.
type Names = BTreeMap<PathBuf, usize>;

/// The disk.
pub(super) struct Disk {
    contents: Vec<Content>,
    names: Names,
    /// Names for good, and every state of them since.
    lasting: Names,
    since: Vec<Names>,
    draws: u64,
}

impl Disk {
    pub(super) fn new(seed: u64) -> Self {
        let (contents, names, lasting, since) = Default::default();
        Self { contents, names, lasting, since, draws: seed }
    }

    pub(super) fn take(&mut self, event: &Event) {
        match event {
            Event::Made(file) => {
                self.contents.push(Content::default());
                self.names.insert(file.clone(), self.contents.len() - 1);
            }
            Event::Removed(file) => drop(self.names.remove(file)),
            Event::Renamed { from, to } => {
                if let Some(content) = self.names.remove(from) {
                    self.names.insert(to.clone(), content);
                }
            }
            Event::Linked { from, to } => {
                let content = self.names[from];
                self.names.insert(to.clone(), content);
            }
            Event::Written { file, place, bytes } => {
                return self.ask(file, Change::Written { place: *place, bytes: bytes.clone() });
            }
            Event::Cut { file, length } => return self.ask(file, Change::Cut(*length)),
            Event::Sync { file } => return self.sync(file),
        }
        self.since.push(self.names.clone());
    }

    fn ask(&mut self, file: &Path, change: Change) {
        if let Some(content) = self.names.get(file) {
            self.contents[*content].asked.push(change);
        }
    }

    fn sync(&mut self, file: &Path) {
        match self.names.get(file) {
            Some(content) => {
                let content = &mut self.contents[*content];
                let asked = std::mem::take(&mut content.asked);
                asked.iter().for_each(|change| change.all(&mut content.lasting));
            }
            None => {
                self.lasting = self.names.clone();
                self.since.clear();
            }
        }
    }

    /// How many notes were answered for, by the file in which that was written: it is the world's memory, not the disk's.
    pub(super) fn answered(&self, file: &Path) -> u128 {
        let Some(content) = self.names.get(file) else { return 0 };
        let mut bytes = Vec::new();
        self.contents[*content].asked.iter().for_each(|change| change.all(&mut bytes));
        String::from_utf8(bytes).unwrap().lines().count() as u128
    }

    /// Writes what is left after a power cut into another folder; gives how many sectors were lost.
    pub(super) fn after_the_cut(&mut self, folder: &Path, into: &Path) -> usize {
        let states = self.since.len() as u64 + 1;
        let names = match self.draw() % states {
            0 => self.lasting.clone(),
            kept => self.since[kept as usize - 1].clone(),
        };
        // How much of what was not waited for is kept: none, some, or all.
        let kept = [0, 1, 3, 7, 8][(self.draw() % 5) as usize];
        let mut lost = 0;
        for (name, content) in names {
            let Content { lasting: mut bytes, asked } = self.contents[content].clone();
            for change in &asked {
                lost += change.some(&mut bytes, || self.draw() % 8 < kept);
            }
            // The memory that processes share is gone with them.
            if !name.to_string_lossy().ends_with("-shm") {
                std::fs::write(into.join(name.strip_prefix(folder).unwrap()), bytes).unwrap();
            }
        }
        lost
    }

    /// Numbers that look like none in particular (splitmix64).
    fn draw(&mut self) -> u64 {
        self.draws = self.draws.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut mixed = self.draws;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        mixed ^ (mixed >> 31)
    }
}

impl Change {
    fn all(&self, bytes: &mut Vec<u8>) {
        self.some(bytes, || true);
    }

    /// Does those sectors of it that are kept; gives how many were not.
    fn some(&self, bytes: &mut Vec<u8>, mut is_kept: impl FnMut() -> bool) -> usize {
        match self {
            Self::Cut(length) => {
                let is_kept = is_kept();
                if is_kept {
                    bytes.resize(*length, 0);
                }
                usize::from(!is_kept)
            }
            Self::Written { place, bytes: new } => {
                let (mut at, mut lost) = (0, 0);
                while at < new.len() {
                    let end = new.len().min((place + at) / SECTOR * SECTOR + SECTOR - place);
                    if is_kept() {
                        bytes.resize(bytes.len().max(place + end), 0);
                        bytes[place + at..place + end].copy_from_slice(&new[at..end]);
                    } else {
                        lost += 1;
                    }
                    at = end;
                }
                lost
            }
        }
    }
}
