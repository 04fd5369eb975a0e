//! A scene: a few kinds of mark, from the back to the front.

use crate::geometry::{Path, Point, Rect};
use crate::tint::Tint;
use snowhum_units::Same;

/// Marks on a view of fixed size.
///
/// ```
/// use snowhum_picture::{Path, Pen, Rect, Scene, Tint};
/// let mut scene = Scene::new(360.0, 120.0);
/// scene.shape(Path::rect(Rect::new(10.0, 10.0, 80.0, 40.0)), Some(Tint::Wood), Pen::THIN);
/// assert_eq!(scene.width(), 360.0);
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Scene {
    width: f64,
    height: f64,
    pub(crate) clips: Vec<Rect>,
    pub(crate) marks: Vec<Mark>,
}

#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Mark {
    Shape { path: Path, tint: Option<Tint>, pen: Pen, part: Option<&'static str>, clip: Option<usize> },
    Words { at: Point, lead: String, words: String, type_: Type },
}

/// How an outline is drawn.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pen {
    /// Which ink.
    pub ink: Ink,
    /// Width of the line in units of the view; nought draws none.
    pub width: f64,
    /// Lengths of dash and gap, if broken.
    pub dash: Option<(f64, f64)>,
}

/// Inks of lines.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Ink {
    /// Lines and words.
    Full,
    /// Lines that stand back: leaders, grids.
    Soft,
    /// The page's own colour, to part a line from what lies under it.
    Page,
    /// Water and frost.
    Cold,
}

/// How words are set.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Type {
    /// Height of the letters' body in units of the view.
    pub size: f64,
    /// Regular or heavy.
    pub weight: Weight,
    /// Which part of the line stands at the given place.
    pub anchor: Anchor,
}

/// Weights of type.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Weight {
    /// Of running words.
    Regular,
    /// Of names and figures.
    Heavy,
}

/// Which part of a line of words stands at its place.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Anchor {
    /// Its first letter.
    Start,
    /// Its middle.
    Middle,
    /// Its last letter.
    End,
}

impl Ink {
    /// Every ink.
    pub const ALL: [Self; 4] = [Self::Full, Self::Soft, Self::Page, Self::Cold];

    /// Name in classes and custom properties: `full` gives `.sn-l-full` and `--sn-full`.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Full => "full",
            Self::Soft => "soft",
            Self::Page => "page",
            Self::Cold => "cold",
        }
    }

    /// Colour on a light page.
    #[must_use]
    pub const fn light(self) -> &'static str {
        match self {
            Self::Full => "#23262b",
            Self::Soft => "#6b6f75",
            Self::Page => "#fdfcf8",
            Self::Cold => "#1f5f8b",
        }
    }

    /// Colour on a dark page.
    #[must_use]
    pub const fn dark(self) -> &'static str {
        match self {
            Self::Full => "#e9e6dd",
            Self::Soft => "#9aa0a8",
            Self::Page => "#15181c",
            Self::Cold => "#9fd0f2",
        }
    }
}

impl Pen {
    /// No line.
    pub const NONE: Self = Self { ink: Ink::Full, width: 0.0, dash: None };
    /// A thin line of full ink.
    pub const THIN: Self = Self { ink: Ink::Full, width: 0.8, dash: None };
    /// A firm line of full ink.
    pub const FIRM: Self = Self { ink: Ink::Full, width: 1.4, dash: None };

    /// A whole line of this ink and width.
    #[must_use]
    pub const fn new(ink: Ink, width: f64) -> Self {
        Self { ink, width, dash: None }
    }

    /// The same pen, its line broken into dashes.
    #[must_use]
    pub const fn dashed(self, dash: f64, gap: f64) -> Self {
        Self { dash: Some((dash, gap)), ..self }
    }
}

impl Type {
    /// Running words of this size.
    #[must_use]
    pub const fn regular(size: f64) -> Self {
        Self { size, weight: Weight::Regular, anchor: Anchor::Start }
    }

    /// Names and figures of this size.
    #[must_use]
    pub const fn heavy(size: f64) -> Self {
        Self { size, weight: Weight::Heavy, anchor: Anchor::Start }
    }

    /// The same, standing elsewhere on its place.
    #[must_use]
    pub const fn anchored(self, anchor: Anchor) -> Self {
        Self { anchor, ..self }
    }
}

impl Scene {
    /// An empty view of this size.
    #[must_use]
    pub const fn new(width: f64, height: f64) -> Self {
        Self { width, height, clips: Vec::new(), marks: Vec::new() }
    }

    /// Width of the view.
    #[must_use]
    pub const fn width(&self) -> f64 {
        self.width
    }

    /// Height of the view.
    #[must_use]
    pub const fn height(&self) -> f64 {
        self.height
    }

    /// The same marks on a view of another height.
    pub(crate) fn set_height(&mut self, height: f64) {
        self.height = height;
    }

    /// An outline, filled or not. Nothing is drawn where a place is not a finite number.
    pub fn shape(&mut self, path: Path, tint: Option<Tint>, pen: Pen) {
        self.mark(path, tint, pen, None, None);
    }

    /// An outline that can be found again by its name.
    pub fn part(&mut self, part: &'static str, path: Path, tint: Option<Tint>, pen: Pen) {
        self.mark(path, tint, pen, Some(part), None);
    }

    /// An outline of which only what lies inside a box is seen.
    pub fn clipped(&mut self, inside: Rect, path: Path, tint: Option<Tint>, pen: Pen) {
        let known = self.clips.iter().position(|clip| *clip == inside);
        let clip = known.unwrap_or(self.clips.len());
        if known.is_none() {
            self.clips.push(inside);
        }
        self.mark(path, tint, pen, None, Some(clip));
    }

    /// Words on one line, standing on their baseline.
    pub fn words(&mut self, at: Point, words: impl Into<String>, type_: Type) {
        self.led_words(at, "", words, type_);
    }

    /// Words on one line after a heavier lead.
    pub fn led_words(&mut self, at: Point, lead: impl Into<String>, words: impl Into<String>, type_: Type) {
        if at.is_finite() {
            self.marks.push(Mark::Words { at, lead: lead.into(), words: words.into(), type_ });
        }
    }

    /// A bow with a head at its end, parted from what lies under it.
    pub fn arrow(&mut self, from: Point, bend: Point, to: Point, width: f64) {
        let (along_x, along_y) = (to.x - bend.x, to.y - bend.y);
        let length = along_x.same_hypot(along_y).max(1e-6);
        let (ux, uy) = (along_x / length, along_y / length);
        let head = 3.0 + 2.0 * width;
        let neck = to.moved(-ux * head, -uy * head);
        let side = head * 0.55;
        let point = Path::closed(&[to, neck.moved(-uy * side, ux * side), neck.moved(uy * side, -ux * side)]);
        let shaft = Path::bow(from, bend, neck);
        self.shape(shaft.clone().and(point.clone()), None, Pen::new(Ink::Page, width + 3.0));
        self.shape(shaft, None, Pen::new(Ink::Full, width));
        self.shape(point, Some(Tint::Solid), Pen::NONE);
    }

    fn mark(&mut self, path: Path, tint: Option<Tint>, pen: Pen, part: Option<&'static str>, clip: Option<usize>) {
        if path.is_finite() && !path.is_empty() {
            self.marks.push(Mark::Shape { path, tint, pen, part, clip });
        }
    }
}
