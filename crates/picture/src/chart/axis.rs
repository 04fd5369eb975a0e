//! Days along, amounts up.

use super::SIZE;
use crate::geometry::{Path, Point};
use crate::scene::{Anchor, Ink, Pen, Scene, Type};
use crate::words::{fitted, width};
use snowhum_units::Same;

/// Room between the words of two ticks.
const APART: f64 = 8.0;

/// A day with the words it is known by; days count from any day the caller likes.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Tick {
    /// Day.
    pub day: i32,
    /// Such as `Dec` or `1 Jan`.
    pub words: String,
}

/// Days from left to right.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Days {
    pub(crate) first: i32,
    pub(crate) last: i32,
    pub(crate) left: f64,
    pub(crate) right: f64,
}

impl Days {
    /// An axis that holds all these days.
    pub(crate) fn over(days: impl Iterator<Item = i32>, left: f64, right: f64) -> Self {
        let (first, last) = days.fold((i32::MAX, i32::MIN), |(low, high), day| (low.min(day), high.max(day)));
        if first > last { Self { first: 0, last: 1, left, right } } else { Self { first, last, left, right } }
    }

    pub(crate) fn x(&self, day: i32) -> f64 {
        let span = (f64::from(self.last) - f64::from(self.first)).max(1.0);
        self.left + (self.right - self.left) * ((f64::from(day) - f64::from(self.first)) / span).clamp(0.0, 1.0)
    }

    pub(crate) fn holds(&self, day: i32) -> bool {
        (self.first..=self.last).contains(&day)
    }

    /// Lines at the ticks across each strip, and below `bottom` as many of their words as there is room for.
    pub(crate) fn draw(&self, scene: &mut Scene, ticks: &[Tick], strips: &[(f64, f64)], bottom: f64) {
        let mut grid = Path::new();
        let mut free_from = f64::MIN;
        for tick in ticks.iter().filter(|tick| self.holds(tick.day)).take(super::MOST) {
            let x = self.x(tick.day);
            strips.iter().for_each(|(high, low)| grid.push(Path::line(Point::new(x, *high), Point::new(x, *low))));
            grid.push(Path::line(Point::new(x, bottom), Point::new(x, bottom + 4.0)));
            let words = fitted(&tick.words, SIZE, 90.0);
            let half = width(&words, SIZE) / 2.0;
            let middle = x.clamp(half + 2.0, (super::WIDTH - half - 2.0).max(half + 2.0));
            if middle - half >= free_from {
                let type_ = Type::regular(SIZE).anchored(Anchor::Middle);
                scene.words(Point::new(middle, bottom + 19.0), words, type_);
                free_from = middle + half + APART;
            }
        }
        scene.shape(grid, None, Pen::new(Ink::Soft, 0.5));
        scene.shape(Path::line(Point::new(self.left, bottom), Point::new(self.right, bottom)), None, Pen::THIN);
    }
}

/// A round step that cuts nought to `most` into at most `parts`.
pub(crate) fn round_step(most: f64, parts: f64) -> f64 {
    if !most.is_finite() || most <= 0.0 {
        return 1.0;
    }
    let rough = most / parts;
    let decade = 10f64.same_powf(rough.same_log10().floor());
    let step = [1.0, 2.0, 5.0, 10.0].into_iter().find(|step| step * decade >= rough * (1.0 - 1e-9));
    step.unwrap_or(10.0) * decade
}

#[cfg(test)]
mod tests {
    use super::{Days, round_step};

    #[test]
    fn steps_are_round_and_few() {
        assert_eq!([18.0, 4.1, 100.0, 0.7].map(|most| round_step(most, 5.0)), [5.0, 1.0, 20.0, 0.2]);
        assert_eq!([0.0, f64::NAN, f64::INFINITY].map(|most| round_step(most, 5.0)), [1.0; 3]);
    }

    #[test]
    fn days_beyond_the_axis_stay_at_its_ends() {
        let days = Days::over([10, 20].into_iter(), 100.0, 200.0);
        assert_eq!([i32::MIN, 10, 15, 20, i32::MAX].map(|day| days.x(day)), [100.0, 100.0, 150.0, 200.0, 200.0]);
        assert!(Days::over(std::iter::empty(), 0.0, 1.0).x(5).is_finite());
    }
}
