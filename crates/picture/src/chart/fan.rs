//! Food left over time, as a fan of what may come.

use super::axis::{Days, Tick, round_step};
use super::{LINE, MARGIN, MOST, SIZE, WIDTH, headline};
use crate::geometry::{Path, Point};
use crate::legend;
use crate::plate::{Plate, Table};
use crate::scene::{Anchor, Ink, Pen, Scene, Type};
use crate::tint::Tint;
use crate::words::{lines, width};
use snowhum_say::{Message, Tongue, chart_picture as text};
use snowhum_units::{Kilogram, System};

/// Height of the plot.
const HIGH: f64 = 210.0;
/// Left edge of the plot.
const LEFT: f64 = 44.0;
/// Rows of the table at most, the last day among them.
const ROWS: usize = 12;

/// Food left in a hive, day by day.
///
/// ```
/// use snowhum_picture::{FoodDay, FoodFan};
/// use snowhum_say::Tongue;
/// use snowhum_units::Kilogram;
/// let day = |day: i32, kg: [f64; 5]| FoodDay { day, when: format!("day {day}"), left: kg.map(Kilogram::new) };
/// let fan = FoodFan {
///     title: "Food left, Juniper".into(),
///     days: vec![day(0, [12.0, 12.5, 13.0, 13.5, 14.0]), day(90, [3.0, 5.0, 6.0, 7.5, 9.0])],
///     ticks: Vec::new(),
///     horizon: None,
///     deadline: None,
///     reserve: Some(Kilogram::new(4.0)),
///     weighings: Vec::new(),
///     tongue: Tongue::BRITISH,
/// };
/// assert_eq!(fan.plate().table.rows.len(), 2);
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct FoodFan {
    /// What it shows.
    pub title: String,
    /// Days in order; one with a number that is not finite is left out.
    pub days: Vec<FoodDay>,
    /// Days named below, such as the first of each month.
    pub ticks: Vec<Tick>,
    /// A day to reach, such as the first flowers.
    pub horizon: Option<Tick>,
    /// The last day for something, such as feeding.
    pub deadline: Option<Tick>,
    /// Food that should be left on the day to reach.
    pub reserve: Option<Kilogram>,
    /// What was weighed.
    pub weighings: Vec<Weighing>,
    /// Language and units of its words.
    pub tongue: Tongue,
}

/// What may be left on a day.
#[derive(Debug, Clone, PartialEq)]
pub struct FoodDay {
    /// Day.
    pub day: i32,
    /// The day in words.
    pub when: String,
    /// Quantiles: one in ten leave less than the first, then one in four, half, three in four, nine in ten.
    pub left: [Kilogram; 5],
}

/// Food as weighed.
#[derive(Debug, Clone, PartialEq)]
pub struct Weighing {
    /// Day.
    pub day: i32,
    /// The day in words.
    pub when: String,
    /// Food, hive and bees taken off.
    pub left: Kilogram,
    /// How far off it may be, each way.
    pub give_or_take: Kilogram,
}

/// Where days and kilograms lie.
struct Plot {
    days: Days,
    top: f64,
    bottom: f64,
    most_kg: f64,
}

impl Plot {
    fn at(&self, day: i32, kilograms: f64) -> Point {
        let share = (kilograms / self.most_kg).clamp(0.0, 1.0);
        Point::new(self.days.x(day), self.bottom - share * (self.bottom - self.top))
    }
}

impl FoodFan {
    /// The chart.
    #[must_use]
    pub fn plate(&self) -> Plate {
        let days = self.sound_days();
        let mut scene = Scene::new(WIDTH, 0.0);
        let top = headline(&mut scene, &self.title);
        let top = self.days_words(&mut scene, &days, top);
        let plot = self.plot(&days, top + 8.0);
        self.amounts(&mut scene, &plot);
        plot.days.draw(&mut scene, &self.ticks, &[(plot.top, plot.bottom)], plot.bottom);
        bands(&mut scene, &days, &plot);
        self.named_days(&mut scene, &plot);
        self.reserve(&mut scene, &plot);
        self.weighed(&mut scene, &plot);
        let bottom = self.key(&mut scene, plot.bottom + 30.0);
        scene.set_height(bottom + 6.0);
        Plate { title: self.title.clone(), description: self.description(&days), scene, table: self.table(&days) }
    }

    fn say(&self, message: &Message) -> String {
        self.tongue.drawn().say(message)
    }

    /// Days fit to draw, in order, their quantiles in order and none below nought.
    fn sound_days(&self) -> Vec<FoodDay> {
        let is_sound = |day: &&FoodDay| day.left.iter().all(|left| left.get().is_finite());
        let mut days: Vec<FoodDay> = self.days.iter().filter(is_sound).take(MOST).cloned().collect();
        days.sort_by_key(|day| day.day);
        for day in &mut days {
            day.left = day.left.map(|left| left.max(Kilogram::ZERO));
            day.left.sort_by(|a, b| a.get().total_cmp(&b.get()));
        }
        days
    }

    fn sound_weighings(&self) -> impl Iterator<Item = &Weighing> {
        let is_sound = |one: &&Weighing| one.left.get().is_finite() && one.give_or_take.get().is_finite();
        self.weighings.iter().filter(is_sound).take(MOST)
    }

    fn axis(&self, days: &[FoodDay]) -> Days {
        let weighed = self.sound_weighings().map(|one| one.day);
        let all = days.iter().map(|day| day.day).chain(weighed).chain(self.named().map(|(tick, _)| tick.day));
        Days::over(all, LEFT, WIDTH - MARGIN)
    }

    fn plot(&self, days: &[FoodDay], top: f64) -> Plot {
        let highest = days.iter().map(|day| day.left[4].get());
        let weighed = self.sound_weighings().map(|one| one.left.get() + one.give_or_take.get().abs());
        let reserve = self.sound_reserve().map(Kilogram::get);
        let most = highest.chain(weighed).chain(reserve).fold(0.1, f64::max).min(1e6);
        Plot { days: self.axis(days), top, bottom: top + HIGH, most_kg: most * 1.04 }
    }

    fn amounts(&self, scene: &mut Scene, plot: &Plot) {
        // Steps are round in the keeper's units.
        let unit_kg = if self.tongue.system() == System::Us { 0.453_592_37 } else { 1.0 };
        let step = round_step(plot.most_kg / unit_kg, 5.0);
        let amount_of = if step < 1.0 { text::fine_amount } else { text::amount };
        let type_ = Type::regular(SIZE).anchored(Anchor::End);
        let mut grid = Path::new();
        let mut highest = plot.bottom;
        for at in 0..=5 {
            let amount = step * f64::from(at);
            if amount > plot.most_kg / unit_kg {
                break;
            }
            let place = plot.at(plot.days.first, amount * unit_kg);
            grid.push(Path::line(place, Point::new(plot.days.right, place.y)));
            scene.words(place.moved(-6.0, 5.0), self.say(&amount_of(Kilogram::new(amount * unit_kg))), type_);
            highest = place.y + 5.0;
        }
        scene.shape(grid, None, Pen::new(Ink::Soft, 0.4));
        // A line clear of the highest figure.
        let unit = self.say(&text::unit(Kilogram::ZERO));
        scene.words(Point::new(LEFT - 6.0, (plot.top - 2.0).min(highest - LINE)), unit, type_);
    }

    /// The days that are named, each with the dashes of its line.
    fn named(&self) -> impl Iterator<Item = (&Tick, (f64, f64))> {
        let deadline = self.deadline.iter().map(|tick| (tick, (2.0, 3.0)));
        self.horizon.iter().map(|tick| (tick, (6.0, 3.0))).chain(deadline)
    }

    fn sound_reserve(&self) -> Option<Kilogram> {
        self.reserve.filter(|reserve| reserve.get().is_finite() && *reserve > Kilogram::ZERO)
    }

    /// What each named day is above the plot; its line ends under it. The unit stands in the last line.
    fn days_words(&self, scene: &mut Scene, days: &[FoodDay], top: f64) -> f64 {
        let axis = self.axis(days);
        let mut y = top;
        for (tick, _) in self.named() {
            for line in lines(&tick.words, SIZE, WIDTH - LEFT - MARGIN).into_iter().take(2) {
                y += LINE;
                let half = width(&line, SIZE) / 2.0;
                let middle = axis.x(tick.day).clamp(LEFT + half, (WIDTH - MARGIN - half).max(LEFT + half));
                scene.words(Point::new(middle, y), line, Type::regular(SIZE).anchored(Anchor::Middle));
            }
        }
        y.max(top + LINE)
    }

    fn named_days(&self, scene: &mut Scene, plot: &Plot) {
        for (tick, (dash, gap)) in self.named() {
            let x = plot.days.x(tick.day);
            let line = Path::line(Point::new(x, plot.top - 3.0), Point::new(x, plot.bottom));
            scene.part("horizon", line, None, Pen::FIRM.dashed(dash, gap));
        }
    }

    fn reserve(&self, scene: &mut Scene, plot: &Plot) {
        let Some(reserve) = self.sound_reserve() else { return };
        let from = plot.at(plot.days.first, reserve.get());
        let line = Path::line(from, Point::new(plot.days.right, from.y));
        scene.shape(line.clone(), None, Pen::new(Ink::Page, 3.6));
        scene.part("reserve", line, None, Pen::new(Ink::Cold, 1.6).dashed(10.0, 3.0));
    }

    fn weighed(&self, scene: &mut Scene, plot: &Plot) {
        for one in self.sound_weighings() {
            let (left, about) = (one.left.get(), one.give_or_take.get().abs());
            let ends = [left - about, left + about].map(|kg| plot.at(one.day, kg));
            let bars = ends.map(|end| Path::line(end.moved(-4.0, 0.0), end.moved(4.0, 0.0)));
            let [low, high] = bars;
            let whole = Path::line(ends[0], ends[1]).and(low).and(high);
            scene.shape(whole.clone(), None, Pen::new(Ink::Page, 4.0));
            scene.shape(whole, None, Pen::FIRM);
            let dot = Path::circle(plot.at(one.day, left), 4.0);
            scene.part("weighing", dot, Some(Tint::Solid), Pen::new(Ink::Page, 1.2));
        }
    }

    fn key(&self, scene: &mut Scene, top: f64) -> f64 {
        let keys = [(Tint::WideBand, text::eight()), (Tint::NarrowBand, text::five())];
        let keys = keys.map(|(tint, words)| (tint, self.say(&words)));
        let end = legend::draw(scene, &keys, MARGIN, WIDTH - MARGIN, top);
        let line = Point::new(end.x.max(210.0), end.y + 10.0);
        scene.shape(Path::line(line, line.moved(22.0, 0.0)), None, Pen::new(Ink::Full, 2.4));
        scene.words(line.moved(28.0, 5.0), self.say(&text::middle()), Type::regular(SIZE));
        let y = self.reserve_key(scene, end.y + legend::ROW);
        if self.sound_weighings().next().is_none() {
            return y;
        }
        scene.shape(Path::circle(Point::new(23.0, y + 10.0), 4.0), Some(Tint::Solid), Pen::NONE);
        scene.words(Point::new(40.0, y + 15.0), self.say(&text::weighed()), Type::regular(SIZE));
        y + legend::ROW
    }

    fn reserve_key(&self, scene: &mut Scene, y: f64) -> f64 {
        let Some(reserve) = self.sound_reserve() else { return y };
        let line = Path::line(Point::new(MARGIN, y + 10.0), Point::new(MARGIN + 24.0, y + 10.0));
        scene.shape(line, None, Pen::new(Ink::Cold, 1.6).dashed(10.0, 3.0));
        scene.words(Point::new(MARGIN + 30.0, y + 15.0), self.say(&text::reserve(reserve)), Type::regular(SIZE));
        y + legend::ROW
    }

    fn description(&self, days: &[FoodDay]) -> String {
        let Some(last) = days.last() else { return self.say(&text::nothing()) };
        let [low, _, middle, _, high] = last.left;
        let left = [text::left(high, low, middle, &last.when)];
        let named = self.named().map(|(tick, _)| text::marks(&tick.words));
        let reserve = self.sound_reserve().map(text::marks_reserve);
        self.say(&Message::sentences(left.into_iter().chain(named).chain(reserve)))
    }

    fn table(&self, days: &[FoodDay]) -> Table {
        let mut table = Table::with_head(self.tongue, [text::day, text::tenth_below, text::half, text::tenth_above]);
        let stride = days.len().div_ceil(ROWS).max(1);
        let kept = days.iter().rev().step_by(stride).collect::<Vec<_>>();
        for day in kept.into_iter().rev() {
            let mass = |of: usize| self.say(&text::mass(day.left[of]));
            table.row([day.when.clone(), mass(0), mass(2), mass(4)]);
        }
        for one in self.sound_weighings().take(40) {
            let weighed = self.say(&text::weighing(one.give_or_take, one.left));
            table.row([one.when.clone(), String::new(), weighed, String::new()]);
        }
        table
    }
}

fn bands(scene: &mut Scene, days: &[FoodDay], plot: &Plot) {
    let edge = |which: usize| days.iter().map(|day| plot.at(day.day, day.left[which].get())).collect::<Vec<_>>();
    scene.part("wide", Path::band(&edge(4), &edge(0)), Some(Tint::WideBand), Pen::THIN);
    scene.part("narrow", Path::band(&edge(3), &edge(1)), Some(Tint::NarrowBand), Pen::new(Ink::Full, 0.5));
    scene.shape(Path::open(&edge(2)), None, Pen::new(Ink::Page, 4.2));
    scene.part("middle", Path::open(&edge(2)), None, Pen::new(Ink::Full, 2.4));
}
