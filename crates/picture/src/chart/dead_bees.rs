//! Dead bees found, against what is to be expected.

use super::{LINE, MARGIN, SIZE, WIDTH, headline};
use crate::figures::{about, count};
use crate::geometry::{Path, Point, Rect};
use crate::plate::{Plate, Table};
use crate::scene::{Anchor, Ink, Pen, Scene, Type};
use crate::tint::Tint;
use crate::words::{clean, lines, width};
use snowhum_say::{Message, Tongue, against, chart_picture as text};
use snowhum_units::{Against, Usual};

/// Most counts drawn.
const MOST_ROWS: usize = 24;
/// Height of a count's bar with the room about it.
const ROW: f64 = 38.0;
/// Heavy words are this much wider.
const HEAVIER: f64 = 1.08;
/// From a count's words to the middle of its bar, and half the height of the strip the bar lies in.
const BAR_MIDDLE: f64 = 20.0;
const STRIP: f64 = 12.0;

/// Counts of dead bees, each with its expected band. The scale is of square roots: small counts and large ones can both
/// be read.
///
/// ```
/// use snowhum_picture::{DeadBeesCount, DeadBeesFound};
/// use snowhum_say::Tongue;
/// use snowhum_units::{Against, Usual};
/// let expected = Usual { least: 60, middle: 140, most: 320 };
/// let one = DeadBeesCount { when: "3 to 12 Jan".into(), found: 180, expected, verdict: Against::Expected };
/// let chart = DeadBeesFound { title: "Dead bees, Alder".into(), counts: vec![one], tongue: Tongue::BRITISH };
/// assert!(chart.plate().description.contains("180 found"));
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct DeadBeesFound {
    /// What it shows.
    pub title: String,
    /// Counts in order.
    pub counts: Vec<DeadBeesCount>,
    /// Language and units of its words.
    pub tongue: Tongue,
}

/// One count.
#[derive(Debug, Clone, PartialEq)]
pub struct DeadBeesCount {
    /// The days it covers, in words.
    pub when: String,
    /// Bees found.
    pub found: u32,
    /// What was to be expected.
    pub expected: Usual,
    /// How the count stands to it.
    pub verdict: Against,
}

/// Counts from left to right.
struct Roots {
    most: f64,
}

impl Roots {
    fn x(&self, bees: u32) -> f64 {
        MARGIN + 6.0 + (WIDTH - 2.0 * MARGIN - 12.0) * (f64::from(bees) / self.most).sqrt().clamp(0.0, 1.0)
    }
}

impl DeadBeesFound {
    /// The chart.
    #[must_use]
    pub fn plate(&self) -> Plate {
        let mut scene = Scene::new(WIDTH, 0.0);
        let mut bottom = headline(&mut scene, &self.title) + 6.0;
        let roots = self.roots();
        let mut middles = Vec::new();
        for one in self.counts.iter().take(MOST_ROWS) {
            bottom = self.words_over(&mut scene, one, bottom);
            middles.push(bottom + BAR_MIDDLE);
            bottom += ROW;
        }
        self.scale(&mut scene, &roots, &middles, bottom);
        self.counts.iter().zip(&middles).for_each(|(one, middle)| bar(&mut scene, one, &roots, *middle));
        let bottom = self.key(&mut scene, bottom + 24.0);
        scene.set_height(bottom + 6.0);
        Plate { title: self.title.clone(), description: self.description(), scene, table: self.table() }
    }

    fn say(&self, message: &Message) -> String {
        self.tongue.drawn().say(message)
    }

    /// When and how many, on one line if they fit; says where they end.
    fn words_over(&self, scene: &mut Scene, one: &DeadBeesCount, top: f64) -> f64 {
        let room = WIDTH - 2.0 * MARGIN;
        let said = self.say(&text::found(count(one.found), against(one.verdict)));
        let right = Type::regular(SIZE).anchored(Anchor::End);
        let mut y = top + 16.0;
        if width(&clean(&one.when), SIZE) * HEAVIER + 12.0 + width(&said, SIZE) <= room {
            scene.words(Point::new(MARGIN, y), one.when.clone(), Type::heavy(SIZE));
            scene.words(Point::new(WIDTH - MARGIN, y), said, right);
            return y;
        }
        for line in lines(&one.when, SIZE * HEAVIER, room).into_iter().take(3) {
            scene.words(Point::new(MARGIN, y), line, Type::heavy(SIZE));
            y += LINE;
        }
        scene.words(Point::new(MARGIN, y), said, Type::regular(SIZE));
        y
    }

    fn roots(&self) -> Roots {
        let counts = self.counts.iter().take(MOST_ROWS);
        let most = counts.flat_map(|one| [one.found, one.expected.most]).max().unwrap_or(0);
        Roots { most: f64::from(most.max(10)) * 1.08 }
    }

    /// Grid beside every bar, amounts below the last.
    fn scale(&self, scene: &mut Scene, roots: &Roots, middles: &[f64], bottom: f64) {
        let strips = || middles.iter().map(|y| (y - STRIP, y + STRIP));
        let mut free_from = f64::MIN;
        let mut grid = Path::new();
        for bees in [0, 10, 50, 200, 500, 1_000, 2_000, 5_000, 10_000, 20_000, 50_000, 100_000] {
            let (x, words) = (roots.x(bees), count(bees));
            let half = width(&words, SIZE) / 2.0;
            if f64::from(bees) > roots.most || x - half < free_from || x + half > WIDTH {
                continue;
            }
            free_from = x + half + 10.0;
            strips().for_each(|(high, low)| grid.push(Path::line(Point::new(x, high), Point::new(x, low))));
            scene.words(Point::new(x, bottom + 14.0), words, Type::regular(SIZE).anchored(Anchor::Middle));
        }
        scene.shape(grid, None, Pen::new(Ink::Soft, 0.6));
    }

    fn key(&self, scene: &mut Scene, top: f64) -> f64 {
        let swatch = |scene: &mut Scene, x: f64, y: f64, tint: Tint, words: &str| {
            scene.shape(Path::rect(Rect::new(x, y + 3.0, 22.0, 14.0)), Some(tint), Pen::THIN);
            scene.words(Point::new(x + 28.0, y + 15.0), words, Type::regular(SIZE));
        };
        swatch(scene, MARGIN, top, Tint::NarrowBand, &self.say(&text::nine()));
        let at = Point::new(226.0, top + 10.0);
        let diamond = [at.moved(0.0, -6.5), at.moved(6.5, 0.0), at.moved(0.0, 6.5), at.moved(-6.5, 0.0)];
        scene.shape(Path::closed(&diamond), Some(Tint::Solid), Pen::NONE);
        scene.words(Point::new(240.0, top + 15.0), self.say(&text::is_found()), Type::regular(SIZE));
        top + LINE + 4.0
    }

    fn description(&self) -> String {
        let said = self.counts.iter().take(MOST_ROWS).map(|one| {
            let [low, high] = [one.expected.least, one.expected.most].map(about);
            text::expected(count(one.found), high, low, against(one.verdict), &one.when)
        });
        self.say(&Message::sentences(said))
    }

    fn table(&self) -> Table {
        let heads = [text::days, text::head_found, text::head_expected, text::head_stands];
        let mut table = Table::with_head(self.tongue, heads);
        for one in self.counts.iter().take(MOST_ROWS) {
            let band = text::range(about(one.expected.most), about(one.expected.least));
            let stands = against(one.verdict);
            table.row([one.when.clone(), count(one.found), self.say(&band), self.say(&stands)]);
        }
        table
    }
}

/// The expected band and the count on it.
fn bar(scene: &mut Scene, one: &DeadBeesCount, roots: &Roots, y: f64) {
    let (left, middle, right) = (roots.x(one.expected.least), roots.x(one.expected.middle), roots.x(one.expected.most));
    let band = Rect::between(left, right, y - 8.0, y + 8.0);
    scene.part("expected", Path::rect(band), Some(Tint::NarrowBand), Pen::THIN);
    let median = Path::line(Point::new(middle, y - 8.0), Point::new(middle, y + 8.0));
    scene.shape(median, None, Pen::new(Ink::Full, 2.0));
    let at = Point::new(roots.x(one.found), y);
    let diamond = [at.moved(0.0, -7.5), at.moved(7.5, 0.0), at.moved(0.0, 7.5), at.moved(-7.5, 0.0)];
    scene.part("found", Path::closed(&diamond), Some(Tint::Solid), Pen::new(Ink::Page, 1.6));
}
