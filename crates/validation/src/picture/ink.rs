//! How things are drawn. Every pair differs in lightness or shape as well as in colour.

/// Inside of a band.
#[derive(Debug, Clone, Copy)]
pub(crate) enum Fill {
    /// What is expected from outside.
    Expected,
    /// A wide spread.
    Light,
    /// A narrow spread within it.
    Dark,
}

/// A line.
#[derive(Debug, Clone, Copy)]
pub(crate) enum Stroke {
    Solid,
    Dashed,
    Dotted,
}

/// A mark at a point.
#[derive(Debug, Clone, Copy)]
pub(crate) enum Mark {
    /// Computed.
    Disc,
    /// Expected.
    Square,
    /// Expected, of another kind.
    Diamond,
}

pub(super) const INK: &str = "#1b1b1b";
pub(super) const FAINT: &str = "#d4d4d4";
pub(super) const BLUE: &str = "#0b4f8a";
pub(super) const RUST: &str = "#a3420a";

impl Fill {
    pub(super) fn attributes(self) -> &'static str {
        match self {
            Self::Expected => "fill=\"#f6dcc4\" stroke=\"#a3420a\" stroke-width=\"1\" stroke-dasharray=\"2 2\"",
            Self::Light => "fill=\"#d3e2f0\"",
            Self::Dark => "fill=\"#7fa9cf\"",
        }
    }
}

impl Stroke {
    pub(super) fn attributes(self) -> &'static str {
        match self {
            Self::Solid => "stroke-width=\"2.5\"",
            Self::Dashed => "stroke-width=\"2.5\" stroke-dasharray=\"9 5\"",
            Self::Dotted => "stroke-width=\"2.5\" stroke-dasharray=\"1 5\" stroke-linecap=\"round\"",
        }
    }
}
