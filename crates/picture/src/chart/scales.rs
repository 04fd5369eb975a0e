//! Figures on their scales: what is usual hatched, the figure with its error on it.

use super::{LINE, MARGIN, MOST, SIZE, WIDTH, headline};
use crate::geometry::{Path, Point, Rect};
use crate::plate::{Plate, Table};
use crate::scene::{Anchor, Ink, Pen, Scene, Type};
use crate::tint::Tint;
use crate::words::{fitted, lines, width};
use snowhum_say::{Message, Tongue, chart_picture as text};

/// Height of a bar.
const BAR: f64 = 18.0;

/// Scales one under the other.
///
/// ```
/// use snowhum_picture::{FigureScale, FigureScales};
/// let bees = FigureScale {
///     name: "Bees".into(),
///     stands: "usual".into(),
///     words: "about 20,000 bees".into(),
///     usual: Some([16_000.0, 24_000.0]),
///     usual_words: "16,000 to 24,000".into(),
///     figure: Some([16_000.0, 20_000.0, 25_000.0]),
///     end: 30_000.0,
/// };
/// let tongue = snowhum_say::Tongue::BRITISH;
/// let plate = FigureScales { title: "Alder".into(), scales: vec![bees], tongue }.plate();
/// assert_eq!(plate.table.rows[0][1], "about 20,000 bees");
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct FigureScales {
    /// What they are of.
    pub title: String,
    /// The scales, from above.
    pub scales: Vec<FigureScale>,
    /// Language and units of its words.
    pub tongue: Tongue,
}

/// One scale, from nought.
#[derive(Debug, Clone, PartialEq)]
pub struct FigureScale {
    /// What is measured.
    pub name: String,
    /// Where the figure stands, in words.
    pub stands: String,
    /// The figure in words.
    pub words: String,
    /// From where to where is usual; none where nobody says.
    pub usual: Option<[f64; 2]>,
    /// The same in words.
    pub usual_words: String,
    /// Least, likeliest and most; none where it is not known.
    pub figure: Option<[f64; 3]>,
    /// The end of the scale.
    pub end: f64,
}

impl FigureScales {
    /// The chart.
    #[must_use]
    pub fn plate(&self) -> Plate {
        let mut scene = Scene::new(WIDTH, 0.0);
        let mut y = headline(&mut scene, &self.title) + 4.0;
        for scale in self.scales.iter().take(MOST) {
            y = scale.draw(&mut scene, y, self.tongue);
        }
        y = key(&mut scene, y + 6.0, self.tongue);
        scene.set_height(y + 8.0);
        Plate { title: self.title.clone(), description: self.description(), scene, table: self.table() }
    }

    fn description(&self) -> String {
        let said = self.scales.iter().map(|scale| text::scale(&scale.name, &scale.words, &scale.stands));
        self.tongue.say(&Message::sentences(said))
    }

    fn table(&self) -> Table {
        let heads = [text::what, text::head_figure, text::head_usual, text::head_where];
        let mut table = Table::with_head(self.tongue, heads);
        for scale in &self.scales {
            let cells = [&scale.name, &scale.words, &scale.usual_words, &scale.stands];
            table.row(cells.map(Clone::clone));
        }
        table
    }
}

impl FigureScale {
    /// Draws the scale below `top`; says where it ends.
    fn draw(&self, scene: &mut Scene, top: f64, tongue: Tongue) -> f64 {
        let mut y = top + 20.0;
        let name = fitted(&self.name, SIZE, WIDTH / 3.0);
        // What does not fit beside the name stands under it.
        let beside = WIDTH - 3.0 * MARGIN - width(&name, SIZE);
        scene.words(Point::new(MARGIN, y), name, Type::heavy(SIZE));
        let mut down = if width(&self.stands, SIZE) > beside { LINE } else { 0.0 };
        for line in lines(&self.stands, SIZE, WIDTH - 2.0 * MARGIN).into_iter().take(3) {
            y += down;
            scene.words(Point::new(WIDTH - MARGIN, y), line, Type::regular(SIZE).anchored(Anchor::End));
            down = LINE;
        }
        y += 7.0;
        self.bar(scene, y, tongue);
        y += BAR;
        for line in lines(&self.usual_words, SIZE, WIDTH - 2.0 * MARGIN).into_iter().take(2) {
            y += LINE;
            scene.words(Point::new(MARGIN, y - 2.0), line, Type::regular(SIZE));
        }
        y + 4.0
    }

    fn bar(&self, scene: &mut Scene, top: f64, tongue: Tongue) {
        let (left, right) = (MARGIN, WIDTH - MARGIN);
        let span = if self.end > 0.0 { self.end } else { 1.0 };
        let x = |value: f64| left + (right - left) * (value / span).clamp(0.0, 1.0);
        scene.part("scale", Path::rect(Rect::between(left, right, top, top + BAR)), Some(Tint::Paper), Pen::THIN);
        if let Some([low, high]) = self.usual {
            let usual = Rect::between(x(low), x(high).max(x(low) + 2.0), top, top + BAR);
            scene.part("usual", Path::rect(usual), Some(Tint::NarrowBand), Pen::THIN);
        }
        let middle = top + BAR / 2.0;
        let Some([least, likely, most]) = self.figure else {
            let words = Type::regular(SIZE).anchored(Anchor::Middle);
            scene.words(Point::new(WIDTH / 2.0, middle + 5.0), tongue.say(&text::not_known()), words);
            return;
        };
        whisker(scene, [x(least), x(likely), x(most)], middle);
    }
}

/// A line from least to most with a mark at the likeliest.
fn whisker(scene: &mut Scene, [least, likely, most]: [f64; 3], y: f64) {
    let along = Path::line(Point::new(least, y), Point::new(most, y));
    let end = |x: f64| Path::line(Point::new(x, y - 5.0), Point::new(x, y + 5.0));
    let whole = along.and(end(least)).and(end(most));
    scene.shape(whole.clone(), None, Pen::new(Ink::Page, 5.0));
    scene.part("error", whole, None, Pen::new(Ink::Full, 2.0));
    let at = Point::new(likely, y);
    let mark = [at.moved(0.0, -8.0), at.moved(6.5, 0.0), at.moved(0.0, 8.0), at.moved(-6.5, 0.0)];
    scene.part("figure", Path::closed(&mark), Some(Tint::Solid), Pen::new(Ink::Page, 1.4));
}

fn key(scene: &mut Scene, top: f64, tongue: Tongue) -> f64 {
    let usual = Rect::between(MARGIN, MARGIN + 30.0, top + 4.0, top + 4.0 + BAR);
    scene.shape(Path::rect(usual), Some(Tint::NarrowBand), Pen::THIN);
    scene.words(Point::new(MARGIN + 38.0, top + 18.0), tongue.say(&text::usual()), Type::regular(SIZE));
    whisker(scene, [MARGIN + 110.0, MARGIN + 130.0, MARGIN + 156.0], top + 13.0);
    scene.words(Point::new(MARGIN + 164.0, top + 18.0), tongue.say(&text::with_error()), Type::regular(SIZE));
    top + 28.0
}
