//! Jobs and dates as windows in time.

use super::axis::{Days, Tick};
use super::{LINE, MARGIN, SIZE, WIDTH, headline};
use crate::geometry::{Path, Point, Rect};
use crate::plate::{Plate, Table};
use crate::scene::{Anchor, Ink, Pen, Scene, Type};
use crate::tint::Tint;
use crate::words::{fitted, lines, width};
use snowhum_say::{Message, Tongue, chart_picture as text};

/// Most windows drawn.
const MOST_WINDOWS: usize = 40;

/// Windows in time, one under the other.
///
/// ```
/// use snowhum_picture::{JobWindows, Window};
/// let first_flight = Window {
///     name: "First cleansing flight".into(),
///     days: [60, 74, 95],
///     words: "1 March, usually 15 March, 5 April".into(),
/// };
/// let (title, tongue) = ("Spring".into(), snowhum_say::Tongue::BRITISH);
/// let chart = JobWindows { title, windows: vec![first_flight], ticks: Vec::new(), today: None, tongue };
/// assert_eq!(chart.plate().table.rows[0][0], "First cleansing flight");
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct JobWindows {
    /// What it shows.
    pub title: String,
    /// The windows, from above.
    pub windows: Vec<Window>,
    /// Days named below.
    pub ticks: Vec<Tick>,
    /// Today.
    pub today: Option<Tick>,
    /// Language and units of its words.
    pub tongue: Tongue,
}

/// Something that falls due between two days.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Window {
    /// What.
    pub name: String,
    /// Earliest (1 in 10 before), usual, latest (1 in 10 after).
    pub days: [i32; 3],
    /// The days in words.
    pub words: String,
}

impl JobWindows {
    /// The chart.
    #[must_use]
    pub fn plate(&self) -> Plate {
        let mut scene = Scene::new(WIDTH, 0.0);
        let mut y = headline(&mut scene, &self.title) + 2.0;
        let days = self.axis();
        if let Some(today) = &self.today {
            let words = fitted(&today.words, SIZE, WIDTH - 2.0 * MARGIN);
            let half = width(&words, SIZE) / 2.0;
            let x = days.x(today.day).clamp(MARGIN + half, (WIDTH - MARGIN - half).max(MARGIN + half));
            scene.words(Point::new(x, y + 16.0), words, Type::regular(SIZE).anchored(Anchor::Middle));
            y += LINE + 4.0;
        }
        let rows: Vec<Row<'_>> = self.windows().map(Row::of).collect();
        let bottom = y + rows.iter().map(|row| row.height).sum::<f64>() + 4.0;
        let mut strips = Vec::new();
        for row in &rows {
            y += row.height;
            strips.push((y - 26.0, y - 2.0));
        }
        days.draw(&mut scene, &self.ticks, &strips, bottom);
        self.draw_today(&mut scene, &days, &strips);
        rows.iter().zip(&strips).for_each(|(row, strip)| row.draw(&mut scene, &days, strip.1 + 2.0 - row.height));
        let bottom = key(&mut scene, bottom + 30.0, self.tongue);
        scene.set_height(bottom + 6.0);
        Plate { title: self.title.clone(), description: self.description(), scene, table: self.table() }
    }

    fn draw_today(&self, scene: &mut Scene, days: &Days, strips: &[(f64, f64)]) {
        let Some(today) = &self.today else { return };
        let x = days.x(today.day);
        let mut line = Path::new();
        strips.iter().for_each(|(high, low)| line.push(Path::line(Point::new(x, *high), Point::new(x, *low))));
        scene.part("today", line, None, Pen::new(Ink::Full, 1.8).dashed(5.0, 3.0));
    }

    fn windows(&self) -> impl Iterator<Item = &Window> {
        self.windows.iter().take(MOST_WINDOWS)
    }

    fn axis(&self) -> Days {
        let ends = self.windows().flat_map(|window| window.days);
        Days::over(ends.chain(self.today.iter().map(|tick| tick.day)), MARGIN + 4.0, WIDTH - MARGIN - 4.0)
    }

    fn description(&self) -> String {
        let said = self.windows().map(|window| text::named(&window.words, &window.name));
        self.tongue.say(&Message::sentences(said))
    }

    fn table(&self) -> Table {
        let mut table = Table::with_head(self.tongue, [text::what, text::when]);
        self.windows().for_each(|window| table.row([window.name.clone(), window.words.clone()]));
        table
    }
}

struct Row<'a> {
    window: &'a Window,
    lines: Vec<String>,
    height: f64,
}

impl<'a> Row<'a> {
    fn of(window: &'a Window) -> Self {
        let lines = lines(&window.words, SIZE, WIDTH - 2.0 * MARGIN);
        let height = LINE * (1 + lines.len()) as f64 + 34.0;
        Self { window, lines, height }
    }

    fn draw(&self, scene: &mut Scene, days: &Days, top: f64) {
        let mut y = top + 16.0;
        let name = fitted(&self.window.name, SIZE, WIDTH - 2.0 * MARGIN);
        scene.words(Point::new(MARGIN, y), name, Type::heavy(SIZE));
        for line in &self.lines {
            y += LINE;
            scene.words(Point::new(MARGIN, y), line.clone(), Type::regular(SIZE));
        }
        let mut window = self.window.days;
        window.sort_unstable();
        bar(scene, window.map(|day| days.x(day)), top + self.height - 14.0);
    }
}

/// A hatched bar from earliest to latest with a mark at the usual day.
fn bar(scene: &mut Scene, [earliest, usual, latest]: [f64; 3], y: f64) {
    let span = Rect::between(earliest, latest.max(earliest + 2.0), y - 6.0, y + 6.0);
    scene.part("window", Path::rect(span), Some(Tint::NarrowBand), Pen::THIN);
    let at = Point::new(usual, y);
    let mark = [at.moved(0.0, -8.5), at.moved(7.0, 0.0), at.moved(0.0, 8.5), at.moved(-7.0, 0.0)];
    scene.part("usual", Path::closed(&mark), Some(Tint::Solid), Pen::new(Ink::Page, 1.4));
}

fn key(scene: &mut Scene, top: f64, tongue: Tongue) -> f64 {
    bar(scene, [MARGIN, MARGIN + 30.0, MARGIN + 60.0], top + 12.0);
    scene.words(Point::new(MARGIN + 72.0, top + 17.0), tongue.say(&text::window()), Type::regular(SIZE));
    top + 24.0
}
