//! A plate: a scene with its title, its description and the same facts as rows.

use crate::prefix::IdPrefix;
use crate::scene::Scene;
use crate::svg;
use snowhum_say::{Text, Tongue};

/// A picture and the words that stand for it where it cannot be seen.
#[derive(Debug, Clone, PartialEq)]
pub struct Plate {
    /// What it shows, in a few words.
    pub title: String,
    /// What can be seen on it, in sentences.
    pub description: String,
    /// The picture.
    pub scene: Scene,
    /// Its figures as a table.
    pub table: Table,
}

/// Rows of words, each as long as the head.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Table {
    /// What each column holds.
    pub head: Vec<String>,
    /// The rows.
    pub rows: Vec<Vec<String>>,
}

impl Plate {
    /// The plate for a page that has [`crate::stylesheet`]: no style of its own, no attribute a strict content policy
    /// would refuse.
    ///
    /// ```
    /// use snowhum_picture::{IdPrefix, Plate, Scene, Table};
    /// let plate = Plate {
    ///     title: "Birch & co".into(),
    ///     description: "Nothing yet.".into(),
    ///     scene: Scene::new(360.0, 100.0),
    ///     table: Table::default(),
    /// };
    /// let svg = plate.inline(&IdPrefix::new("birch"));
    /// assert!(svg.contains("<title id=\"birch-t\">Birch &amp; co</title>"));
    /// ```
    #[must_use]
    pub fn inline(&self, prefix: &IdPrefix) -> String {
        svg::write(self, prefix, svg::Dress::Bare)
    }

    /// The plate as a file of its own, light or dark as the reader prefers.
    #[must_use]
    pub fn standalone(&self, prefix: &IdPrefix) -> String {
        svg::write(self, prefix, svg::Dress::Dressed)
    }
}

impl Table {
    pub(crate) fn with_head<const N: usize>(tongue: Tongue, head: [Text; N]) -> Self {
        Self { head: head.map(|of_column| tongue.say(&of_column())).to_vec(), rows: Vec::new() }
    }

    pub(crate) fn row<const N: usize>(&mut self, cells: [String; N]) {
        self.rows.push(cells.map(|cell| crate::words::clean(&cell)).to_vec());
    }
}
