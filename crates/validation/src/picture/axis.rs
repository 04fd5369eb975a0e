//! An axis: where its values lie on the sheet, and what stands beside it.

/// Values from one end to the other, with words at some of them.
#[derive(Debug, Clone)]
pub(crate) struct Axis {
    from: f64,
    to: f64,
    /// Ends on the sheet.
    ends: [f64; 2],
    pub(super) ticks: Vec<(f64, String)>,
    pub(super) label: &'static str,
}

impl Axis {
    /// Numbers from end to end, one at every step.
    pub(crate) fn numbers(label: &'static str, from: i32, to: i32, step: usize) -> Self {
        let ticks = (from..=to).step_by(step.max(1)).map(|at| (f64::from(at), at.to_string().replace('-', "−")));
        Self { from: f64::from(from), to: f64::from(to), ends: [0.0; 2], ticks: ticks.collect(), label }
    }

    /// Names side by side, the first at 0.
    pub(crate) fn names<'a>(label: &'static str, names: impl IntoIterator<Item = &'a str>) -> Self {
        let ticks: Vec<(f64, String)> =
            names.into_iter().enumerate().map(|(at, name)| (at as f64, name.to_owned())).collect();
        let to = ticks.len() as f64 - 0.5;
        Self { from: -0.5, to, ends: [0.0; 2], ticks, label }
    }

    /// Laid on the sheet between two places.
    pub(super) fn between(self, start: f64, end: f64) -> Self {
        Self { ends: [start, end], ..self }
    }

    pub(super) fn at(&self, value: f64) -> f64 {
        let [start, end] = self.ends;
        start + (end - start) * (value - self.from) / (self.to - self.from)
    }

    pub(super) fn ends(&self) -> [f64; 2] {
        self.ends
    }
}

#[cfg(test)]
mod tests {
    use super::Axis;

    #[test]
    fn ends_and_middle_lie_where_they_should() {
        let axis = Axis::numbers("°C", -30, 10, 10).between(100.0, 500.0);
        assert_eq!([axis.at(-30.0), axis.at(-10.0), axis.at(10.0)], [100.0, 300.0, 500.0]);
        assert_eq!(axis.ticks.len(), 5);
        assert_eq!(axis.ticks[0].1, "−30");
    }

    #[test]
    fn names_stand_half_a_place_from_the_ends() {
        let axis = Axis::names("", ["one", "two"]).between(0.0, 200.0);
        assert_eq!([axis.at(0.0), axis.at(1.0)], [50.0, 150.0]);
    }
}
