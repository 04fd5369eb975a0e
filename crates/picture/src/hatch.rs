//! Hatches: what a tint looks like without colour.

/// A repeated mark over a tint.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Hatch {
    /// Long broken lines, as of a sawn board.
    Grain,
    /// Open rings.
    Rings,
    /// Small rings, packed.
    Beads,
    /// Short strokes this way and that.
    Stalks,
    /// A close weave.
    Weave,
    /// Close level lines.
    Brushed,
    /// Upright lines, wide apart.
    Posts,
    /// Sparse level lines.
    Ribs,
    /// Close slanted lines.
    Steep,
    /// Slanted lines.
    Slant,
    /// Slanted lines the other way.
    Back,
    /// Slanted lines both ways.
    Crossed,
    /// Small ovals.
    Bees,
    /// Small ovals, packed.
    DenseBees,
    /// Small crosses.
    Crosses,
    /// Sparse dots of two sizes.
    Flakes,
    /// Even dots.
    Dots,
}

impl Hatch {
    /// Width and height of the tile, and its outline.
    pub(crate) const fn tile(self) -> (u32, u32, &'static str) {
        match self {
            Self::Grain => (22, 7, "M0 1.5h9m4 0h9M3 5h13"),
            Self::Rings => (9, 9, "M2.5 1.2a1.3 1.3 0 1 0 .01 0zM7 5.7a1.3 1.3 0 1 0 .01 0z"),
            Self::Beads => (5, 5, "M1.4.5a.9.9 0 1 0 .01 0zM3.9 3a.9.9 0 1 0 .01 0z"),
            Self::Stalks => (12, 10, "M1 8l4-6M6 3l5 2M7 9l4-2M3 4l-2-2"),
            Self::Weave => (4, 4, "M0 1h2M2 3h2M1 2v2M3 0v2"),
            Self::Brushed => (6, 2, "M0 1h6"),
            Self::Posts => (5, 6, "M2.5 0v6"),
            Self::Ribs => (6, 6, "M1 3h4"),
            Self::Steep => (3, 3, "M-1 1l2-2M0 3l3-3M2 4l2-2"),
            Self::Slant => (6, 6, "M-1 1l2-2M0 6l6-6M5 7l2-2"),
            Self::Back => (7, 7, "M-1 6l2 2M0 0l7 7M6-1l2 2"),
            Self::Crossed => (6, 6, "M0 6l6-6M0 0l6 6"),
            Self::Bees => {
                (8, 6, "M1 1.5a1.3.8 0 1 0 2.6 0a1.3.8 0 1 0-2.6 0zM5 4.5a1.3.8 0 1 0 2.6 0a1.3.8 0 1 0-2.6 0z")
            }
            Self::DenseBees => {
                (5, 4, "M.3 1a.95.6 0 1 0 1.9 0a.95.6 0 1 0-1.9 0zM2.8 3a.95.6 0 1 0 1.9 0a.95.6 0 1 0-1.9 0z")
            }
            Self::Crosses => (8, 8, "M1 1l2 2m0-2l-2 2M5 5l2 2m0-2l-2 2"),
            Self::Flakes => (16, 12, "M3 3v.01M11 9v.01"),
            Self::Dots => (5, 5, "M1.2 1.2v.01M3.7 3.7v.01"),
        }
    }

    /// Width of its strokes.
    pub(crate) const fn stroke(self) -> &'static str {
        match self {
            Self::Flakes => "1.5",
            Self::Dots => "1.1",
            Self::Steep | Self::Weave => ".7",
            _ => ".6",
        }
    }

    /// Whether its outlines are filled with ink rather than stroked alone.
    pub(crate) const fn is_filled(self) -> bool {
        matches!(self, Self::Bees | Self::DenseBees)
    }
}
