//! Small networks of chances, answered exactly.
//!
//! Each variable has a table of its chances given its parents'. What is asked is summed out of their product, one
//! variable after the other, smallest table first (variable elimination). Evidence is a likelihood for each state
//! (Pearl's virtual evidence); to know a state is a likelihood of one there and none elsewhere.

use snowhum_draws::{Key, normal_quantile};
use snowhum_units::Same;

use super::factor::Factor;

/// A variable, its states and their chances.
#[derive(Debug, Clone, PartialEq)]
pub struct Variable {
    /// Its name.
    pub name: String,
    /// How many states it has.
    pub states: usize,
    /// Variables it depends on, by their places; all before itself.
    pub parents: Vec<usize>,
    /// Chance of each state, by columns: one for each joint state of the parents, the last parent running fastest.
    pub table: Vec<Vec<f64>>,
}

/// What is known of a variable.
#[derive(Debug, Clone, PartialEq)]
pub struct Evidence {
    /// The variable's place.
    pub variable: usize,
    /// How likely what was seen is in each of its states, up to a common factor.
    pub likelihood: Vec<f64>,
}

/// Why variables make no network.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum NetFault {
    /// A parent that does not stand before its child.
    #[error("{variable}: parents stand before their children")]
    Order {
        /// The child.
        variable: String,
    },
    /// A table of the wrong shape.
    #[error("{variable}: {columns} columns of {states} states are needed")]
    Shape {
        /// The variable.
        variable: String,
        /// Columns its parents ask for.
        columns: usize,
        /// Its states.
        states: usize,
    },
    /// A column that is no distribution.
    #[error("{variable}, column {column}: chances are not negative and sum to 1")]
    Chances {
        /// The variable.
        variable: String,
        /// The column, from 1.
        column: usize,
    },
}

/// A network whose tables fit.
#[derive(Debug, Clone, PartialEq)]
pub struct Net {
    variables: Vec<Variable>,
}

impl Net {
    /// A network of these variables, parents first.
    ///
    /// # Errors
    /// When a parent stands after its child, or a table has the wrong shape or columns that do not sum to 1.
    pub fn new(variables: Vec<Variable>) -> Result<Self, NetFault> {
        for (at, one) in variables.iter().enumerate() {
            if one.parents.iter().any(|parent| *parent >= at) {
                return Err(NetFault::Order { variable: one.name.clone() });
            }
            let columns = one.parents.iter().map(|parent| variables[*parent].states).product();
            if one.states == 0 || one.table.len() != one.states || one.table.iter().any(|row| row.len() != columns) {
                return Err(NetFault::Shape { variable: one.name.clone(), columns, states: one.states });
            }
            let wrong = |column: &usize| {
                let chances = one.table.iter().map(|row| row[*column]);
                chances.clone().any(|chance| chance.is_nan() || chance < 0.0)
                    || (chances.sum::<f64>() - 1.0).abs() > 1e-9
            };
            if let Some(column) = (0..columns).find(wrong) {
                return Err(NetFault::Chances { variable: one.name.clone(), column: column + 1 });
            }
        }
        Ok(Self { variables })
    }

    /// Place of the variable of this name.
    #[must_use]
    pub fn place(&self, name: &str) -> Option<usize> {
        self.variables.iter().position(|one| one.name == name)
    }

    /// Chances of a variable's states given evidence; `None` where the evidence cannot be, or is no likelihood of the
    /// network's variables.
    ///
    /// ```
    /// use snowhum_advice::deadout::net::{Evidence, Net, Variable};
    /// let cause = Variable { name: "cause".into(), states: 2, parents: vec![], table: vec![vec![0.3], vec![0.7]] };
    /// let sign = Variable {
    ///     name: "sign".into(),
    ///     states: 2,
    ///     parents: vec![0],
    ///     table: vec![vec![0.2, 0.9], vec![0.8, 0.1]],
    /// };
    /// let net = Net::new(vec![cause, sign]).unwrap();
    /// let seen = Evidence { variable: 1, likelihood: vec![0.0, 1.0] };
    /// let chances = net.chances(0, &[seen]).unwrap();
    /// assert!((chances[0] - 0.24 / 0.31).abs() < 1e-12);
    /// ```
    #[must_use]
    pub fn chances(&self, asked: usize, evidence: &[Evidence]) -> Option<Vec<f64>> {
        let fits = |one: &Evidence| self.variables.get(one.variable).map(|of| of.states) == Some(one.likelihood.len());
        if asked >= self.variables.len() || !evidence.iter().all(fits) {
            return None;
        }
        let needed = self.needed(asked, evidence);
        let mut factors: Vec<Factor> = needed.iter().map(|at| self.factor(*at)).collect();
        factors.extend(
            evidence.iter().map(|one| Factor::new(vec![(one.variable, one.likelihood.len())], one.likelihood.clone())),
        );
        let mut hidden: Vec<usize> = needed.into_iter().filter(|at| *at != asked).collect();
        while let Some(next) = smallest(&hidden, &factors) {
            hidden.retain(|at| *at != next);
            let (with, rest): (Vec<Factor>, Vec<Factor>) = factors.into_iter().partition(|factor| factor.has(next));
            factors = rest;
            factors.push(product(&with).without(next));
        }
        let weights = product(&factors).into_values();
        let sum: f64 = weights.iter().sum();
        (sum > 0.0 && sum.is_finite()).then(|| weights.iter().map(|weight| weight / sum).collect())
    }

    /// The network with each column drawn from the Dirichlet distribution about it, worth `size` cases.
    #[must_use]
    pub fn redrawn(&self, key: Key, draw: u32, size: f64) -> Self {
        let mut variables = self.variables.clone();
        for (at, one) in variables.iter_mut().enumerate() {
            for column in 0..one.table[0].len() {
                let counter = [draw, at as u32, column as u32];
                let shapes: Vec<f64> = one.table.iter().map(|row| size * row[column]).collect();
                for (row, chance) in one.table.iter_mut().zip(dirichlet(key, counter, &shapes)) {
                    row[column] = chance;
                }
            }
        }
        Self { variables }
    }

    /// What is asked, what is seen, and all they depend on: nothing else bears on the answer.
    fn needed(&self, asked: usize, evidence: &[Evidence]) -> Vec<usize> {
        let mut needed = vec![false; self.variables.len()];
        needed[asked] = true;
        evidence.iter().for_each(|one| needed[one.variable] = true);
        for at in (0..self.variables.len()).rev() {
            if needed[at] {
                self.variables[at].parents.iter().for_each(|parent| needed[*parent] = true);
            }
        }
        (0..needed.len()).filter(|at| needed[*at]).collect()
    }

    fn factor(&self, at: usize) -> Factor {
        let one = &self.variables[at];
        let mut scope: Vec<(usize, usize)> =
            one.parents.iter().map(|parent| (*parent, self.variables[*parent].states)).collect();
        scope.push((at, one.states));
        let columns = one.table[0].len();
        let values = (0..columns).flat_map(|column| one.table.iter().map(move |row| row[column])).collect();
        Factor::new(scope, values)
    }
}

/// The hidden variable whose elimination makes the smallest table.
fn smallest(hidden: &[usize], factors: &[Factor]) -> Option<usize> {
    let size = |at: &&usize| {
        let mut touched: Vec<usize> =
            factors.iter().filter(|factor| factor.has(**at)).flat_map(Factor::variables).collect();
        touched.sort_unstable();
        touched.dedup();
        touched.len()
    };
    hidden.iter().min_by_key(size).copied()
}

fn product(factors: &[Factor]) -> Factor {
    factors.iter().fold(Factor::one(), |all, one| all.times(one))
}

/// Chances about `shapes` divided by their sum; the shapes' own chances should every draw vanish.
fn dirichlet(key: Key, [draw, variable, column]: [u32; 3], shapes: &[f64]) -> Vec<f64> {
    let gamma = |(state, shape): (usize, &f64)| {
        let counter = |attempt: u32| [draw, variable, column, (state as u32) << 16 | attempt];
        gamma(*shape, |attempt| key.uniforms(counter(attempt)))
    };
    let draws: Vec<f64> = shapes.iter().enumerate().map(gamma).collect();
    let (sum, whole): (f64, f64) = (draws.iter().sum(), shapes.iter().sum());
    if sum > 0.0 {
        draws.iter().map(|one| one / sum).collect()
    } else {
        shapes.iter().map(|shape| shape / whole).collect()
    }
}

/// A draw from the gamma distribution of scale one: Marsaglia and Tsang 2000, ACM Trans. Math. Softw. 26:363; below
/// shape one through the next shape, by a power of a uniform.
fn gamma(shape: f64, uniforms: impl Fn(u32) -> [f64; 4]) -> f64 {
    /// One draw in twenty needs a second attempt, so this many are never used up.
    const ATTEMPTS: u32 = 64;
    if shape <= 0.0 {
        return 0.0;
    }
    let raised = if shape < 1.0 { shape + 1.0 } else { shape };
    let d = raised - 1.0 / 3.0;
    let c = 1.0 / (9.0 * d).sqrt();
    for attempt in 0..ATTEMPTS {
        let [for_normal, for_test, for_power, _] = uniforms(attempt);
        let x = normal_quantile(for_normal);
        let v = (1.0 + c * x).powi(3);
        if v > 0.0 && for_test.same_ln() < 0.5 * x * x + d - d * v + d * v.same_ln() {
            return if shape < 1.0 { d * v * for_power.same_powf(1.0 / shape) } else { d * v };
        }
    }
    shape
}
