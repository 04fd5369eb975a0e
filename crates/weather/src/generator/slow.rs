//! The slow term: what makes one winter milder than the next.

use snowhum_draws::Key;

/// A standard deviate a month, correlated with the month before, straight between mid-months.
pub(crate) struct Slow {
    key: Key,
    path: u32,
    lag: f64,
    month: Option<(u32, f64, f64)>,
}

impl Slow {
    pub(crate) fn new(key: Key, path: u32, lag: f64) -> Self {
        Self { key, path, lag, month: None }
    }

    /// The deviate on a day between the middles of `month` and the next; days must come in order.
    pub(crate) fn on(&mut self, (month, part): (u32, f64)) -> f64 {
        let (_, this, next) = match self.month {
            Some(known) if known.0 == month => known,
            Some((_, _, this)) => (month, this, self.after(this, month + 1)),
            None => {
                let first = self.fresh(month);
                (month, first, self.after(first, month + 1))
            }
        };
        self.month = Some((month, this, next));
        let left = 1.0 - part;
        // Between two middles the variance would sag.
        let sd = (left * left + part * part + 2.0 * self.lag * left * part).sqrt();
        (left * this + part * next) / sd
    }

    /// The months from July on are a sequence's first dimensions, where few paths are the most even.
    fn fresh(&self, month: u32) -> f64 {
        let since_july = month + 6;
        let [years, at] = [since_july / 12, since_july % 12];
        self.key.even_normals([self.path, years, at / 4])[at as usize % 4]
    }

    fn after(&self, before: f64, month: u32) -> f64 {
        self.lag * before + (1.0 - self.lag * self.lag).sqrt() * self.fresh(month)
    }
}
