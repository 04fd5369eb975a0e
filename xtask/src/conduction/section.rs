//! A plane section drawn on a mesh: solids, and air behind a surface film.

use super::Axis;
use super::network::{Field, Network};

/// What fills a cell.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Fill {
    /// A solid of this conductivity, W/(m K).
    Solid(f64),
    /// Air, by its place in the section's list.
    Air(usize),
}

/// Air at one temperature behind a film on every face it touches.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Air {
    /// Its temperature, C.
    pub(crate) temperature_c: f64,
    /// Film resistance on level faces (lid, floor), m2 K/W.
    pub(crate) level_film: f64,
    /// Film resistance on upright faces (walls), m2 K/W.
    pub(crate) upright_film: f64,
}

/// A rectangle, m: from and to along x, then along y.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Rectangle {
    /// From and to along x.
    pub(crate) x: [f64; 2],
    /// From and to along y.
    pub(crate) y: [f64; 2],
}

/// A section: no heat crosses its outer rim.
#[derive(Debug)]
pub(crate) struct Section {
    pub(super) x: Axis,
    pub(super) y: Axis,
    pub(super) airs: Vec<Air>,
    fills: Vec<Fill>,
}

impl Section {
    /// A section filled with `fill` all over.
    pub(crate) fn new(x: Axis, y: Axis, airs: Vec<Air>, fill: Fill) -> Self {
        let cells = x.widths().len() * y.widths().len();
        Self { x, y, airs, fills: vec![fill; cells] }
    }

    /// Draws over all cells whose middle lies in the rectangle. Its sides must be mesh lines to be drawn true.
    pub(crate) fn draw(mut self, rectangle: Rectangle, fill: Fill) -> Self {
        let inside = |at: f64, span: [f64; 2]| span[0] < at && at < span[1];
        let columns = self.x.widths().len();
        for (row, y) in self.y.middles().into_iter().enumerate() {
            for (column, x) in self.x.middles().into_iter().enumerate() {
                if inside(x, rectangle.x) && inside(y, rectangle.y) {
                    self.fills[row * columns + column] = fill;
                }
            }
        }
        self
    }

    /// Solves for the temperatures.
    ///
    /// # Errors
    /// When the solver does not settle.
    pub(crate) fn solve(&self) -> anyhow::Result<Field> {
        Network::of(self).solve()
    }

    /// What fills the cell, counted from the lower left.
    pub(super) fn at(&self, column: usize, row: usize) -> Fill {
        self.fills[row * self.x.widths().len() + column]
    }
}
