//! Food of a hive over the days of a film: foretold, as it stood, what may come.

use super::{FilmHive, FilmHiveDay, WIDTH, WinterFilm, cell, line, number};
use snowhum_say::film_picture as text;
use snowhum_units::{Kilogram, Range};
use std::fmt::Write;

/// Height of the chart's plot, and where it begins and ends.
const PLOT: (f64, f64) = (14.0, 124.0);
pub(super) const LEFT: f64 = 44.0;
const RIGHT: f64 = 352.0;

/// Where days and kilograms lie.
struct Axes {
    step: f64,
    most: f64,
}

impl Axes {
    fn x(&self, day: usize) -> f64 {
        LEFT + self.step * day as f64
    }

    fn y(&self, mass: Kilogram) -> f64 {
        PLOT.1 - (PLOT.1 - PLOT.0) * (mass.get() / self.most).clamp(0.0, 1.0)
    }

    /// A range over some days as an outline, and its middle as a line.
    fn band(
        &self,
        hive: &FilmHive,
        pick: impl Fn(&FilmHiveDay) -> Option<Range<Kilogram>>,
        days: std::ops::Range<usize>,
    ) -> [String; 2] {
        let known: Vec<(usize, Range<Kilogram>)> =
            days.filter_map(|day| Some((day, pick(hive.days.get(day)?)?))).collect();
        let point = |day: usize, mass: Kilogram| format!("{} {}", number(self.x(day)), number(self.y(mass)));
        let there = known.iter().map(|(day, food)| point(*day, food.p90));
        let back = known.iter().rev().map(|(day, food)| point(*day, food.p10));
        let middle = known.iter().map(|(day, food)| point(*day, food.p50));
        [there.chain(back).collect::<Vec<_>>().join("L"), middle.collect::<Vec<_>>().join("L")]
    }
}

impl WinterFilm {
    /// The chart under a hive that is told alone.
    pub(super) fn chart(&self, out: &mut String, hive: &FilmHive) {
        let food = hive.days.iter().flat_map(|day| [day.food, day.foretold]).flatten();
        let axes = Axes { step: self.step(), most: food.map(|food| food.p90.get()).fold(1.0, f64::max) };
        let _ = write!(
            out,
            "<svg class=\"sn\" viewBox=\"0 0 {WIDTH} 146\" role=\"img\" aria-label=\"{}\">",
            self.cell(&text::chart(&hive.name))
        );
        self.bands(out, hive, &axes);
        self.scales(out, &axes);
        self.marks(out, hive, &axes);
        let _ = write!(out, "</svg><p>{}</p>", self.cell(&text::chart_key()));
    }

    fn bands(&self, out: &mut String, hive: &FilmHive, axes: &Axes) {
        let [foretold, foretold_middle] = axes.band(hive, |day| day.foretold, 0..hive.days.len());
        let [_, came] = axes.band(hive, |day| day.food, 0..self.today + 1);
        let [ahead, ahead_middle] = axes.band(hive, |day| day.food, self.today..hive.days.len());
        let line = "fill=\"none\" stroke-width";
        for (attributes, d) in [
            ("class=\"sn-wide\"".to_owned(), foretold),
            (format!("class=\"sn-l-soft\" {line}=\"1.2\" stroke-dasharray=\"3 3\""), foretold_middle),
            ("class=\"sn-reach\" fill-opacity=\".6\"".to_owned(), ahead),
            (format!("class=\"sn-l-full\" {line}=\"1.2\" stroke-dasharray=\"6 3\""), ahead_middle),
            (format!("class=\"sn-l-full\" {line}=\"2.4\""), came),
        ] {
            if !d.is_empty() {
                let _ = write!(out, "<path {attributes} d=\"M{d}\"/>");
            }
        }
    }

    fn scales(&self, out: &mut String, axes: &Axes) {
        let (top, bottom) = PLOT;
        line(out, "", [LEFT, bottom, RIGHT, bottom]);
        for (mass, at) in [(0.0, bottom), (axes.most, top)] {
            let words = self.cell(&text::end_of_scale(Kilogram::new(mass)));
            written(out, [LEFT - 4.0, at + 4.0], "end", &words);
        }
        for (day, month) in self.days.iter().enumerate().filter_map(|(day, one)| Some((day, one.month.as_ref()?))) {
            let x = axes.x(day);
            line(out, "", [x, bottom, x, bottom + 5.0]);
            written(out, [x, bottom + 18.0], "middle", &cell(month));
        }
    }

    /// Notes, and the day that is shown.
    fn marks(&self, out: &mut String, hive: &FilmHive, axes: &Axes) {
        let (top, bottom) = PLOT;
        for note in &hive.notes {
            let x = axes.x(note.day.min(self.days.len().saturating_sub(1)));
            let _ = write!(out, "<path class=\"sn-solid\" d=\"M{} {}l4 8h-8z\"/>", number(x), number(bottom - 9.0));
        }
        let _ = write!(
            out,
            "<line class=\"sn-l-cold\" stroke-width=\"2\" data-p=\"cursor\" x1=\"{0}\" x2=\"{0}\" y1=\"{top}\" y2=\"{bottom}\"/>",
            number(axes.x(self.today))
        );
    }

    /// Units of the view from day to day.
    pub(super) fn step(&self) -> f64 {
        (RIGHT - LEFT) / self.days.len().saturating_sub(1).max(1) as f64
    }
}

fn written(out: &mut String, [x, y]: [f64; 2], anchor: &str, words: &str) {
    let (x, y) = (number(x), number(y));
    let _ = write!(out, "<text x=\"{x}\" y=\"{y}\" font-size=\"14.5\" text-anchor=\"{anchor}\">{words}</text>");
}
