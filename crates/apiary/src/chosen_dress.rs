//! How a hive is dressed, as it was chosen: what was said becomes keys of `[[hive]]`, and what was not is taken as usual.

use crate::quick_start::{quoted, say};

/// A hive's dress as chosen. Whatever is empty was not said.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct ChosenDress {
    /// Sizes of its boxes from below, with commas between.
    pub boxes: String,
    /// What lies over it.
    pub lid: String,
    /// What is round it.
    pub wrap: String,
    /// Its floor.
    pub floor: String,
    /// Its flight entrance.
    pub entrance: String,
    /// What keeps mice out.
    pub guard: String,
    /// Its upper hole.
    pub upper_hole: String,
    /// A candy board, slab or feeder on it.
    pub board: String,
}

impl ChosenDress {
    /// Every key of a yard file, with what was chosen for it.
    #[must_use]
    pub fn keys(&self) -> [(&'static str, &str); 8] {
        [
            ("boxes", &self.boxes),
            ("lid", &self.lid),
            ("wrap", &self.wrap),
            ("floor", &self.floor),
            ("entrance", &self.entrance),
            ("guard", &self.guard),
            ("upper_hole", &self.upper_hole),
            ("board", &self.board),
        ]
    }

    /// What `chosen` says of each key.
    #[must_use]
    pub fn of(chosen: impl Fn(&str) -> String) -> Self {
        Self {
            boxes: chosen("boxes"),
            lid: chosen("lid"),
            wrap: chosen("wrap"),
            floor: chosen("floor"),
            entrance: chosen("entrance"),
            guard: chosen("guard"),
            upper_hole: chosen("upper_hole"),
            board: chosen("board"),
        }
    }

    /// Whether anything was said.
    #[must_use]
    pub fn is_said(&self) -> bool {
        self.keys().iter().any(|(_, chosen)| !chosen.trim().is_empty())
    }

    /// Lines of `[[hive]]`.
    pub(crate) fn write(&self, text: &mut String) {
        for (key, chosen) in self.keys() {
            say(text, key, chosen, |chosen| if key == "boxes" { list(chosen) } else { quoted(chosen) });
        }
    }
}

fn list(chosen: &str) -> String {
    format!("[{}]", chosen.split(',').map(quoted).collect::<Vec<_>>().join(", "))
}
