//! The tints a plate is coloured with. Each has its own hatch and is told in words, so that no tint speaks alone.

use crate::hatch::Hatch;

/// A fill: colour on a light and on a dark page, hatch.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Tint {
    /// The page itself.
    Paper,
    /// The empty room inside a hive.
    Room,
    /// Ink, filling a symbol.
    Solid,
    /// The dark of a hole.
    Hole,
    /// Boards.
    Wood,
    /// Foam sheets.
    Foam,
    /// Expanded polystyrene boxes.
    Poly,
    /// Straw, shavings, wool and other loose fill.
    Straw,
    /// Felt, cloth, paper.
    Cloth,
    /// Sheet metal.
    Metal,
    /// Plastic sheets.
    Plastic,
    /// Drawn comb without food.
    EmptyComb,
    /// Food the cluster touches.
    Touched,
    /// Food the cluster can move to.
    InReach,
    /// Food it cannot come to while it is this cold.
    OutOfReach,
    /// Bees of the mantle.
    Bees,
    /// The warm core.
    Core,
    /// Dead bees.
    DeadBees,
    /// Snow.
    Snow,
    /// The ground.
    Ground,
    /// Eight in ten of what may come.
    WideBand,
    /// Five in ten of what may come.
    NarrowBand,
    /// A hive that lives.
    Lives,
    /// A hive that lives and has too little to eat.
    Hungry,
    /// A hive that lives and has no queen.
    Queenless,
    /// A hive that hunger ended.
    Starved,
    /// A hive that is lost otherwise.
    Lost,
}

impl Tint {
    /// Every tint.
    pub const ALL: [Self; 27] = [
        Self::Paper,
        Self::Room,
        Self::Solid,
        Self::Hole,
        Self::Wood,
        Self::Foam,
        Self::Poly,
        Self::Straw,
        Self::Cloth,
        Self::Metal,
        Self::Plastic,
        Self::EmptyComb,
        Self::Touched,
        Self::InReach,
        Self::OutOfReach,
        Self::Bees,
        Self::Core,
        Self::DeadBees,
        Self::Snow,
        Self::Ground,
        Self::WideBand,
        Self::NarrowBand,
        Self::Lives,
        Self::Hungry,
        Self::Queenless,
        Self::Starved,
        Self::Lost,
    ];

    /// Name in classes and custom properties: `wood` gives `.sn-wood` and `--sn-wood`.
    #[must_use]
    pub const fn name(self) -> &'static str {
        self.look().name
    }

    /// Colour on a light page.
    #[must_use]
    pub const fn light(self) -> &'static str {
        self.look().light
    }

    /// Colour on a dark page.
    #[must_use]
    pub const fn dark(self) -> &'static str {
        self.look().dark
    }

    /// How it reads without colour; the neutral tints have none.
    #[must_use]
    pub const fn hatch(self) -> Option<Hatch> {
        self.look().hatch
    }

    /// Whether it is page, room or ink and so carries no meaning.
    #[must_use]
    pub const fn is_neutral(self) -> bool {
        matches!(self, Self::Paper | Self::Room | Self::Solid | Self::Hole)
    }

    const fn look(self) -> Look {
        use Hatch as H;
        match self {
            Self::Paper => look("paper", "#fdfcf8", "#15181c", None),
            Self::Room => look("room", "#f6f3ea", "#1d2126", None),
            Self::Solid => look("solid", "#23262b", "#e9e6dd", None),
            Self::Hole => look("hole", "#23262b", "#050607", None),
            Self::Wood => look("wood", "#e6d2ae", "#5b4b33", Some(H::Grain)),
            Self::Foam => look("foam", "#dde8ee", "#33434d", Some(H::Rings)),
            Self::Poly => look("poly", "#e9ebec", "#3b4045", Some(H::Beads)),
            Self::Straw => look("straw", "#eedc9c", "#5f5426", Some(H::Stalks)),
            Self::Cloth => look("cloth", "#a9a69f", "#4a4945", Some(H::Weave)),
            Self::Metal => look("metal", "#bcc4ca", "#59636b", Some(H::Brushed)),
            Self::Plastic => look("plastic", "#d5dfda", "#3e4b45", Some(H::Posts)),
            Self::EmptyComb => look("comb", "#f4e8c9", "#3f3727", Some(H::Ribs)),
            Self::Touched => look("touched", "#d98a1f", "#b8721a", Some(H::Steep)),
            Self::InReach => look("reach", "#f0c45c", "#7d6022", Some(H::Slant)),
            Self::OutOfReach => look("beyond", "#b9c6d3", "#465766", Some(H::Crossed)),
            Self::Bees => look("bees", "#b48a55", "#8a6638", Some(H::Bees)),
            Self::Core => look("core", "#e0754a", "#b4532c", Some(H::DenseBees)),
            Self::DeadBees => look("deadbees", "#b9b2a6", "#5d584f", Some(H::Crosses)),
            Self::Snow => look("snow", "#e8f1f7", "#566673", Some(H::Flakes)),
            Self::Ground => look("ground", "#cfc6b4", "#35312a", Some(H::Back)),
            Self::WideBand => look("wide", "#dbe5ea", "#2f3d46", Some(H::Dots)),
            Self::NarrowBand => look("narrow", "#a9c3d0", "#466273", Some(H::Slant)),
            Self::Lives => look("lives", "#8fb58a", "#4b7346", Some(H::Bees)),
            Self::Hungry => look("hungry", "#efd27a", "#75612a", Some(H::Slant)),
            Self::Queenless => look("queenless", "#c9bfdc", "#574a72", Some(H::Rings)),
            Self::Starved => look("starved", "#eceae5", "#2c2b29", Some(H::Back)),
            Self::Lost => look("lost", "#d9d5cf", "#45423e", Some(H::Crosses)),
        }
    }
}

struct Look {
    name: &'static str,
    light: &'static str,
    dark: &'static str,
    hatch: Option<Hatch>,
}

const fn look(name: &'static str, light: &'static str, dark: &'static str, hatch: Option<Hatch>) -> Look {
    Look { name, light, dark, hatch }
}
