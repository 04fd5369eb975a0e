//! A hundred hives like this one.

use super::{MARGIN, SIZE, WIDTH, headline};
use crate::geometry::{Path, Point, Rect};
use crate::plate::{Plate, Table};
use crate::scene::{Pen, Scene, Type};
use crate::tint::Tint;
use crate::words::lines;
use snowhum_say::{Message, Tongue, chart_picture as text};
use snowhum_units::Fraction;

/// Room of one hive.
const CELL: f64 = 27.0;
/// Most parts drawn.
const MOST_PARTS: usize = 8;

/// What becomes of a hundred hives, ten by ten.
///
/// ```
/// use snowhum_picture::{Fate, Hundred, HundredPart};
/// use snowhum_say::Tongue;
/// use snowhum_units::Fraction;
/// let part = |fate, words: &str, share| HundredPart { fate, words: words.into(), share: Fraction::new(share) };
/// let chart = Hundred {
///     title: "Of 100 hives like this".into(),
///     parts: vec![part(Fate::Lives, "live to the first flowers", 0.918), part(Fate::Lost, "are lost", 0.082)],
///     tongue: Tongue::BRITISH,
/// };
/// assert_eq!(chart.counts(), [92, 8]);
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Hundred {
    /// What it shows.
    pub title: String,
    /// The parts, which are taken to make one whole.
    pub parts: Vec<HundredPart>,
    /// Language and units of its words.
    pub tongue: Tongue,
}

/// Hives that fare alike.
#[derive(Debug, Clone, PartialEq)]
pub struct HundredPart {
    /// How they are drawn.
    pub fate: Fate,
    /// How they fare, as the end of "92 of 100 …".
    pub words: String,
    /// Share of all.
    pub share: Fraction,
}

/// How a hive fares.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fate {
    /// A whole hive.
    Lives,
    /// A hive half full.
    Hungry,
    /// A hive without its roof.
    Queenless,
    /// An outline, struck through once.
    Starved,
    /// An outline, struck out.
    Lost,
}

impl Fate {
    /// From the best to the worst.
    const ALL: [Self; 5] = [Self::Lives, Self::Hungry, Self::Queenless, Self::Starved, Self::Lost];

    const fn tint(self) -> Tint {
        match self {
            Self::Lives => Tint::Lives,
            Self::Hungry => Tint::Hungry,
            Self::Queenless => Tint::Queenless,
            Self::Starved => Tint::Starved,
            Self::Lost => Tint::Lost,
        }
    }
}

impl Hundred {
    /// Whole hives of each part, a hundred in all if any part has a share: largest remainders are rounded up.
    #[must_use]
    pub fn counts(&self) -> Vec<u32> {
        let share =
            |part: &HundredPart| if part.share.get().is_finite() { part.share.get().clamp(0.0, 1.0) } else { 0.0 };
        let shares: Vec<f64> = self.parts.iter().take(MOST_PARTS).map(share).collect();
        let whole: f64 = shares.iter().sum();
        if whole <= 0.0 {
            return vec![0; shares.len()];
        }
        let exact: Vec<f64> = shares.iter().map(|share| 100.0 * share / whole).collect();
        let mut counts: Vec<u32> = exact.iter().map(|count| count.floor() as u32).collect();
        let mut order: Vec<usize> = (0..counts.len()).collect();
        order.sort_by(|a, b| exact[*b].fract().total_cmp(&exact[*a].fract()));
        let missing = 100_u32.saturating_sub(counts.iter().sum());
        order.into_iter().take(missing as usize).for_each(|at| counts[at] += 1);
        counts
    }

    /// The chart.
    #[must_use]
    pub fn plate(&self) -> Plate {
        let mut scene = Scene::new(WIDTH, 0.0);
        let top = headline(&mut scene, &self.title) + 8.0;
        let counts = self.counts();
        let fates =
            self.parts.iter().zip(&counts).flat_map(|(part, count)| std::iter::repeat_n(part.fate, *count as usize));
        let left = (WIDTH - 10.0 * CELL) / 2.0;
        let places: Vec<(Fate, Point)> = fates
            .take(100)
            .enumerate()
            .map(|(at, fate)| (fate, Point::new(left + CELL * (at % 10) as f64, top + CELL * (at / 10) as f64)))
            .collect();
        for fate in Fate::ALL {
            let of_fate = places.iter().filter(|(other, _)| *other == fate).map(|(_, at)| *at);
            hives(&mut scene, fate, &of_fate.collect::<Vec<_>>());
        }
        let bottom = self.key(&mut scene, &counts, top + 10.0 * CELL + 6.0);
        scene.set_height(bottom + 6.0);
        Plate { title: self.title.clone(), description: self.description(&counts), scene, table: self.table(&counts) }
    }

    fn key(&self, scene: &mut Scene, counts: &[u32], top: f64) -> f64 {
        let mut y = top;
        for (part, count) in self.parts.iter().zip(counts) {
            hives(scene, part.fate, &[Point::new(MARGIN, y)]);
            for line in lines(&self.tongue.say(&said(part, *count)), SIZE, WIDTH - MARGIN - 52.0) {
                scene.words(Point::new(MARGIN + 34.0, y + 17.0), line, Type::regular(SIZE));
                y += 18.0;
            }
            y += 10.0;
        }
        y
    }

    fn description(&self, counts: &[u32]) -> String {
        let said = |(part, count): (&HundredPart, &u32)| format!("{}.", self.tongue.say(&said(part, *count)));
        let said = self.parts.iter().zip(counts).map(said);
        said.collect::<Vec<_>>().join(" ")
    }

    fn table(&self, counts: &[u32]) -> Table {
        let mut table = Table::with_head(self.tongue, [text::head_hundred, text::head_fare]);
        for (part, count) in self.parts.iter().zip(counts) {
            table.row([self.tongue.say(&number(part, *count)), part.words.clone()]);
        }
        table
    }
}

/// A count as words: what is rare is not called never.
fn number(part: &HundredPart, count: u32) -> Message {
    match (count, part.share.get() > 0.0, part.share.get() < 1.0) {
        (0, true, _) => text::fewest(),
        (100, _, true) => text::most(),
        (count, ..) => count.to_string().into(),
    }
}

fn said(part: &HundredPart, count: u32) -> Message {
    text::of_hundred(&part.words, number(part, count))
}

/// What a dead hive is struck with: once if hunger ended it, else both ways.
fn struck(at: Point, fate: Fate) -> Path {
    let (a, b) = (Point::new(at.x + 2.5, at.y + 3.0), Point::new(at.x + 24.5, at.y + 24.0));
    let rising = Path::line(Point::new(a.x, b.y), Point::new(b.x, a.y));
    if fate == Fate::Lost { rising.and(Path::line(a, b)) } else { rising }
}

/// Small hives, each at the upper left corner of its room.
fn hives(scene: &mut Scene, fate: Fate, places: &[Point]) {
    let mut bodies = Path::new();
    let mut fills = Path::new();
    let mut strokes = Path::new();
    for at in places {
        let body = Rect::new(at.x + 4.5, at.y + 8.0, 18.0, 15.0);
        bodies.push(Path::rect(body));
        let roof = Rect::new(at.x + 2.5, at.y + 4.0, 22.0, 4.0);
        match fate {
            Fate::Lives => fills.push(Path::rect(roof).and(Path::rect(Rect::new(at.x + 10.0, at.y + 20.0, 7.0, 3.0)))),
            Fate::Hungry => {
                bodies.push(Path::rect(roof));
                fills.push(Path::rect(Rect::new(body.x, body.y + 9.0, body.width, 6.0)));
            }
            Fate::Queenless => fills.push(Path::rect(Rect::new(at.x + 10.0, at.y + 20.0, 7.0, 3.0))),
            Fate::Starved | Fate::Lost => {
                bodies.push(Path::rect(roof));
                strokes.push(struck(*at, fate));
            }
        }
    }
    let pen = if matches!(fate, Fate::Starved | Fate::Lost) { Pen::THIN } else { Pen::FIRM };
    scene.part("hives", bodies, Some(fate.tint()), pen);
    scene.shape(fills, Some(Tint::Solid), Pen::NONE);
    scene.shape(strokes, None, Pen::FIRM);
}

#[cfg(test)]
mod tests {
    use super::*;

    fn chart(shares: &[f64]) -> Hundred {
        let part = |share: &f64| HundredPart { fate: Fate::Lives, words: "do".into(), share: Fraction::new(*share) };
        Hundred { title: "Hives".into(), parts: shares.iter().map(part).collect(), tongue: Tongue::BRITISH }
    }

    #[test]
    fn a_hundred_hives_are_always_a_hundred() {
        for shares in [&[1.0 / 3.0, 1.0 / 3.0, 1.0 / 3.0][..], &[0.005, 0.995], &[0.2, 0.1], &[f64::NAN, 0.4], &[1e-12]]
        {
            assert_eq!(chart(shares).counts().iter().sum::<u32>(), 100, "{shares:?}");
        }
        assert_eq!(chart(&[f64::NAN]).counts(), [0]);
    }

    #[test]
    fn what_is_rare_is_not_called_never() {
        let rare = chart(&[0.998, 0.002]);
        assert_eq!(rare.plate().description, "more than 99 of 100 do. fewer than 1 of 100 do.");
    }
}
