//! The coming days: flying weather, hard cold, wind.

use super::{MARGIN, SIZE, WIDTH, headline};
use crate::geometry::{Path, Point, Step};
use crate::plate::{Plate, Table};
use crate::scene::{Anchor, Ink, Pen, Scene, Type};
use crate::tint::Tint;
use crate::words::fitted;
use snowhum_say::{Message, Tongue, chart_picture as text};
use snowhum_units::{Kelvin, MetrePerSecond};

/// Days in one row, and most days drawn.
const ACROSS: usize = 7;
const MOST_DAYS: usize = 14;
/// Height of a row of days.
const ROW: f64 = 280.0;
/// Room between two rows of days.
const BETWEEN: f64 = 16.0;

/// Coming days, side by side.
///
/// ```
/// use snowhum_picture::{Cold, DayOutlook, DayStrip, Flying, Windy};
/// use snowhum_say::Tongue;
/// use snowhum_units::{Kelvin, MetrePerSecond};
/// let thursday = DayOutlook {
///     day: "Thu".into(),
///     date: "26".into(),
///     when: "Thursday 26 November".into(),
///     low: Kelvin::from_celsius(-4.0),
///     high: Kelvin::from_celsius(11.0),
///     wind: MetrePerSecond::new(2.0),
///     flying: Flying::Yes,
///     cold: Cold::Frost,
///     windy: Windy::Calm,
/// };
/// let strip = DayStrip { title: "The coming days".into(), days: vec![thursday], tongue: Tongue::BRITISH };
/// assert_eq!(strip.plate().table.rows[0][3], "good flying weather");
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct DayStrip {
    /// What it shows.
    pub title: String,
    /// Days in order; at most fourteen are drawn.
    pub days: Vec<DayOutlook>,
    /// Language and units of its words.
    pub tongue: Tongue,
}

/// One coming day.
#[derive(Debug, Clone, PartialEq)]
pub struct DayOutlook {
    /// Its name, short.
    pub day: String,
    /// Its number in the month.
    pub date: String,
    /// The day in full, for the table.
    pub when: String,
    /// Coldest air.
    pub low: Kelvin,
    /// Warmest air.
    pub high: Kelvin,
    /// Wind.
    pub wind: MetrePerSecond,
    /// Whether bees can fly.
    pub flying: Flying,
    /// How cold it gets.
    pub cold: Cold,
    /// How windy it is.
    pub windy: Windy,
}

/// Whether bees can fly.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Flying {
    /// They can.
    Yes,
    /// Some may, for an hour.
    Perhaps,
    /// They cannot.
    No,
}

/// How cold a day gets.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Cold {
    /// No frost.
    Mild,
    /// Frost.
    Frost,
    /// Hard cold.
    Hard,
}

/// How windy a day is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Windy {
    /// Little wind.
    Calm,
    /// Some.
    Breezy,
    /// Enough to take a roof.
    Strong,
}

impl Flying {
    const fn case(self) -> &'static str {
        match self {
            Self::Yes => "yes",
            Self::Perhaps => "perhaps",
            Self::No => "not",
        }
    }
}

impl Cold {
    const fn case(self) -> &'static str {
        match self {
            Self::Mild => "mild",
            Self::Frost => "frost",
            Self::Hard => "hard",
        }
    }
}

impl Windy {
    const fn case(self) -> &'static str {
        match self {
            Self::Calm => "calm",
            Self::Breezy => "breezy",
            Self::Strong => "strong",
        }
    }
}

impl DayStrip {
    /// The chart.
    #[must_use]
    pub fn plate(&self) -> Plate {
        let mut scene = Scene::new(WIDTH, 0.0);
        let mut top = headline(&mut scene, &self.title) + 4.0;
        let days: Vec<&DayOutlook> = self.days.iter().take(MOST_DAYS).collect();
        for row in days.chunks(ACROSS) {
            self.row(&mut scene, row, top);
            top += ROW + BETWEEN;
        }
        scene.set_height(top - if days.is_empty() { 0.0 } else { BETWEEN } + 6.0);
        Plate { title: self.title.clone(), description: self.description(), scene, table: self.table() }
    }

    fn say(&self, message: &Message) -> String {
        self.tongue.drawn().say(message)
    }

    fn row(&self, scene: &mut Scene, days: &[&DayOutlook], top: f64) {
        for (words, y) in [(text::flying_weather(), 40.0), (text::head_cold(), 110.0), (text::head_wind(), 215.0)] {
            scene.words(Point::new(MARGIN, top + y + 12.0), self.say(&words), Type::heavy(SIZE));
            let line = Path::line(Point::new(MARGIN, top + y - 3.0), Point::new(WIDTH - MARGIN, top + y - 3.0));
            scene.shape(line, None, Pen::new(Ink::Soft, 0.6));
        }
        let wide = (WIDTH - 2.0 * MARGIN) / ACROSS as f64;
        for (at, day) in days.iter().enumerate() {
            self.day(scene, day, Point::new(MARGIN + wide * (at as f64 + 0.5), top), wide);
        }
    }

    /// One day in a column about `at`.
    fn day(&self, scene: &mut Scene, day: &DayOutlook, at: Point, wide: f64) {
        let mut middle = |down: f64, words: &str, type_: Type| {
            scene.words(at.moved(0.0, down), fitted(words, SIZE, wide), type_.anchored(Anchor::Middle));
        };
        middle(14.0, &day.day, Type::heavy(SIZE));
        middle(31.0, &day.date, Type::regular(SIZE));
        for (down, words) in [
            (98.0, text::flying_short(day.flying.case())),
            (168.0, text::cold_short(day.cold.case())),
            (186.0, degrees(day.high)),
            (203.0, degrees(day.low)),
            (274.0, text::wind_short(day.windy.case())),
        ] {
            middle(down, &self.say(&words), Type::regular(SIZE));
        }
        flying(scene, day.flying, at.moved(0.0, 71.0));
        cold(scene, day.cold, at.moved(0.0, 139.0));
        windy(scene, day.windy, at.moved(0.0, 246.0));
    }

    fn description(&self) -> String {
        let said = self.days.iter().take(MOST_DAYS).map(|day| {
            let [flying, cold, wind] = day.words();
            text::outlook(cold, &day.when, flying, wind)
        });
        self.say(&Message::sentences(said))
    }

    fn table(&self) -> Table {
        let heads = [text::day, text::coldest, text::warmest, text::head_flying, text::head_cold, text::head_wind];
        let mut table = Table::with_head(self.tongue, heads);
        for day in self.days.iter().take(MOST_DAYS) {
            let [flying, cold, wind] = day.words();
            let [low, high] = [day.low, day.high].map(text::temperature);
            let cells = [(&day.when).into(), low, high, flying, cold, text::blows(day.wind, wind)];
            table.row(cells.map(|cell| self.say(&cell)));
        }
        table
    }
}

impl DayOutlook {
    fn words(&self) -> [Message; 3] {
        [text::flying(self.flying.case()), text::cold(self.cold.case()), text::wind(self.windy.case())]
    }
}

/// Degrees without their letter.
fn degrees(air: Kelvin) -> Message {
    if air.get().is_finite() { text::degrees(air) } else { Message::own("?") }
}

/// A bee from above; half of one; a dash.
fn flying(scene: &mut Scene, flying: Flying, at: Point) {
    if flying == Flying::No {
        return scene.shape(Path::line(at.moved(-8.0, 0.0), at.moved(8.0, 0.0)), None, Pen::new(Ink::Soft, 1.6));
    }
    let wing = |side: f64| {
        let (root, tip) = (at.moved(side, -2.0), at.moved(side * 12.0, -9.0));
        let steps = vec![
            Step::Move(root),
            Step::Curve(at.moved(side * 5.0, -14.0), tip),
            Step::Curve(at.moved(side * 13.0, 1.0), root),
            Step::Close,
        ];
        Path { steps }
    };
    scene.shape(wing(-1.0).and(wing(1.0)), Some(Tint::Paper), Pen::THIN);
    let body = Path {
        steps: vec![
            Step::Move(at.moved(0.0, -7.0)),
            Step::Curve(at.moved(7.5, 0.0), at.moved(0.0, 12.0)),
            Step::Curve(at.moved(-7.5, 0.0), at.moved(0.0, -7.0)),
            Step::Close,
        ],
    };
    let fill = if flying == Flying::Yes { Tint::Solid } else { Tint::Paper };
    scene.shape(body, Some(fill), Pen::FIRM);
}

/// One star of frost; three for hard cold; an open ring for none.
fn cold(scene: &mut Scene, cold: Cold, at: Point) {
    let star = |centre: Point, size: f64| {
        [(1.0, 0.0), (0.5, 0.866), (0.5, -0.866)]
            .map(|(x, y)| (x * size, y * size))
            .map(|(x, y)| Path::line(centre.moved(-x, -y), centre.moved(x, y)))
            .into_iter()
            .fold(Path::new(), Path::and)
    };
    let (path, pen) = match cold {
        Cold::Mild => (Path::circle(at, 4.0), Pen::new(Ink::Soft, 1.4)),
        Cold::Frost => (star(at, 6.5), Pen::new(Ink::Cold, 1.6)),
        Cold::Hard => {
            let three = star(at.moved(0.0, -6.0), 6.0).and(star(at.moved(-8.5, 6.5), 6.0));
            (three.and(star(at.moved(8.5, 6.5), 6.0)), Pen::new(Ink::Cold, 2.0))
        }
    };
    scene.shape(path, None, pen);
}

/// A flag on its pole: hanging, lifted, torn straight.
fn windy(scene: &mut Scene, windy: Windy, at: Point) {
    let foot = at.moved(-8.0, 11.0);
    let top = at.moved(-8.0, -11.0);
    scene.shape(Path::line(foot, top), None, Pen::FIRM);
    let flag = match windy {
        Windy::Calm => Path::closed(&[top, top.moved(4.0, 12.0), top.moved(0.0, 11.0)]),
        Windy::Breezy => Path::closed(&[top, top.moved(13.0, 9.0), top.moved(0.0, 10.0)]),
        Windy::Strong => {
            Path::closed(&[top, top.moved(20.0, 3.0), top.moved(14.0, 5.0), top.moved(20.0, 8.0), top.moved(0.0, 10.0)])
        }
    };
    let fill = if windy == Windy::Strong { Tint::Solid } else { Tint::Paper };
    scene.shape(flag, Some(fill), Pen::FIRM);
}
