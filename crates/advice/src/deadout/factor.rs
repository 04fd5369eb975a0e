//! Tables over a few variables: products and sums.

/// A table over variables, the last of which runs fastest.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Factor {
    /// Variable and how many states it has.
    scope: Vec<(usize, usize)>,
    values: Vec<f64>,
}

impl Factor {
    pub(super) fn new(scope: Vec<(usize, usize)>, values: Vec<f64>) -> Self {
        Self { scope, values }
    }

    /// The table that changes nothing.
    pub(super) fn one() -> Self {
        Self { scope: Vec::new(), values: vec![1.0] }
    }

    pub(super) fn has(&self, variable: usize) -> bool {
        self.scope.iter().any(|(of, _)| *of == variable)
    }

    pub(super) fn variables(&self) -> impl Iterator<Item = usize> {
        self.scope.iter().map(|(variable, _)| *variable)
    }

    pub(super) fn into_values(self) -> Vec<f64> {
        self.values
    }

    /// Values that fit together, multiplied.
    pub(super) fn times(&self, other: &Self) -> Self {
        let mut scope = self.scope.clone();
        scope.extend(other.scope.iter().filter(|(variable, _)| !self.has(*variable)));
        let (ours, theirs) = (self.strides(&scope), other.strides(&scope));
        let size: usize = scope.iter().map(|(_, states)| states).product();
        let value = |flat: usize| {
            let (mut rest, mut our, mut their) = (flat, 0, 0);
            for (at, (_, states)) in scope.iter().enumerate().rev() {
                our += rest % states * ours[at];
                their += rest % states * theirs[at];
                rest /= states;
            }
            self.values[our] * other.values[their]
        };
        let values = (0..size).map(value).collect();
        Self { scope, values }
    }

    /// Summed over the states of a variable it has.
    pub(super) fn without(&self, variable: usize) -> Self {
        let Some(at) = self.scope.iter().position(|(of, _)| *of == variable) else { return self.clone() };
        let states = self.scope[at].1;
        let inner: usize = self.scope[at + 1..].iter().map(|(_, states)| states).product();
        let mut scope = self.scope.clone();
        scope.remove(at);
        let mut values = vec![0.0; self.values.len() / states];
        for (flat, value) in self.values.iter().enumerate() {
            values[flat / (inner * states) * inner + flat % inner] += value;
        }
        Self { scope, values }
    }

    /// Steps in our values for each variable of a wider scope; none for those we lack.
    fn strides(&self, scope: &[(usize, usize)]) -> Vec<usize> {
        let stride = |(variable, _): &(usize, usize)| {
            self.scope
                .iter()
                .position(|(of, _)| of == variable)
                .map_or(0, |at| self.scope[at + 1..].iter().map(|(_, states)| states).product())
        };
        scope.iter().map(stride).collect()
    }
}
