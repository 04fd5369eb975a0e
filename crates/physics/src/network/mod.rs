//! Thermal networks: bodies with heat capacity, linked by conductances to each other and to temperatures that are
//! given.
//!
//! C dT/dt = q - G T + G_b T_b. Dense, for tens of nodes: an exact steady state and a second-order step, meant as a
//! yardstick for
//! faster models and as a solver for small ones.
//!
//! ```
//! use snowhum_physics::network::{Conditions, End, Network, Stepper};
//! use snowhum_units::{JoulePerKelvin, Kelvin, Second, Watt, WattPerKelvin};
//! let mut network = Network::default();
//! let box_of_bees = network.node(JoulePerKelvin::new(5000.0));
//! let outside = network.boundary();
//! network.link(box_of_bees, outside, WattPerKelvin::new(2.0)).unwrap();
//! let night = Conditions { heat: vec![Watt::new(10.0)], boundary: vec![Kelvin::from_celsius(-10.0)] };
//! let steady = network.steady(&night).unwrap();
//! assert!((steady[0].celsius() + 5.0).abs() < 1e-9);
//!
//! let stepper = Stepper::new(&network, Second::new(60.0)).unwrap();
//! let mut now = vec![Kelvin::from_celsius(-10.0)];
//! for _ in 0..600 {
//!     stepper.step(&mut now, &night, &night).unwrap();
//! }
//! assert!((now[0] - steady[0]).get().abs() < 1e-5);
//! ```

mod stepper;

pub use stepper::Stepper;

use crate::dense::Factors;
use snowhum_units::{JoulePerKelvin, Kelvin, Watt, WattPerKelvin};

/// Where a link ends.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum End {
    /// A body of this number.
    Node(usize),
    /// A given temperature of this number.
    Boundary(usize),
}

/// What acts on a network at one time.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Conditions {
    /// Heat set free in each node.
    pub heat: Vec<Watt>,
    /// Temperature of each boundary.
    pub boundary: Vec<Kelvin>,
}

/// Why a network gives no answer.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum NetworkError {
    /// A link ends where nothing is.
    #[error("a link ends at {0:?}, which is not part of the network; add it first")]
    UnknownEnd(End),
    /// A conductance, capacity or step that cannot be.
    #[error("{0} is negative or not a number; it must be zero or more")]
    NotPhysical(&'static str),
    /// Nothing fixes a temperature.
    #[error("the temperature of node {0} is fixed by nothing; link it, perhaps by way of others, to a boundary")]
    Floating(usize),
    /// A list of the wrong length.
    #[error("{found} values of {what} were given where the network has {expected}")]
    WrongCount {
        /// What was counted.
        what: &'static str,
        /// How many the network has.
        expected: usize,
        /// How many were given.
        found: usize,
    },
}

/// A network.
#[derive(Debug, Clone, Default)]
pub struct Network {
    capacities: Vec<JoulePerKelvin>,
    boundaries: usize,
    links: Vec<(End, End, WattPerKelvin)>,
}

impl Network {
    /// Adds a body; without capacity it follows at once.
    pub fn node(&mut self, capacity: JoulePerKelvin) -> End {
        self.capacities.push(capacity);
        End::Node(self.capacities.len() - 1)
    }

    /// Adds a given temperature.
    pub fn boundary(&mut self) -> End {
        self.boundaries += 1;
        End::Boundary(self.boundaries - 1)
    }

    /// Links two ends; several links between the same two add up, one between two boundaries does nothing.
    ///
    /// # Errors
    /// [`NetworkError::UnknownEnd`] for an end that was not added, [`NetworkError::NotPhysical`] for a negative
    /// conductance.
    pub fn link(&mut self, one: End, other: End, conductance: WattPerKelvin) -> Result<(), NetworkError> {
        for end in [one, other] {
            let known = match end {
                End::Node(at) => at < self.capacities.len(),
                End::Boundary(at) => at < self.boundaries,
            };
            if !known {
                return Err(NetworkError::UnknownEnd(end));
            }
        }
        if !is_zero_or_more(conductance.get()) {
            return Err(NetworkError::NotPhysical("a conductance"));
        }
        self.links.push((one, other, conductance));
        Ok(())
    }

    /// The temperatures that no longer change: G T = q + G_b T_b.
    ///
    /// # Errors
    /// [`NetworkError::WrongCount`] or [`NetworkError::Floating`].
    pub fn steady(&self, conditions: &Conditions) -> Result<Vec<Kelvin>, NetworkError> {
        self.check(conditions)?;
        let size = self.capacities.len();
        let factors = Factors::new(size, self.conductances()).map_err(NetworkError::Floating)?;
        let mut right = vec![0.0; size];
        self.gains(&conditions.as_numbers(), &mut right);
        let mut solution = vec![0.0; size];
        factors.solve(&right, &mut solution);
        Ok(solution.into_iter().map(Kelvin::new).collect())
    }

    fn check(&self, conditions: &Conditions) -> Result<(), NetworkError> {
        count("heat", self.capacities.len(), conditions.heat.len())?;
        count("boundary temperature", self.boundaries, conditions.boundary.len())
    }

    /// G, row after row, W/K.
    fn conductances(&self) -> Vec<f64> {
        let size = self.capacities.len();
        let mut cells = vec![0.0; size * size];
        for &(one, other, conductance) in &self.links {
            for (here, there) in [(one, other), (other, one)] {
                let End::Node(row) = here else { continue };
                cells[row * size + row] += conductance.get();
                if let End::Node(column) = there {
                    cells[row * size + column] -= conductance.get();
                }
            }
        }
        cells
    }

    /// q + G_b T_b for each node, W.
    fn gains(&self, conditions: &Numbers, gains_w: &mut [f64]) {
        gains_w.copy_from_slice(&conditions.heat_w);
        for &(one, other, conductance) in &self.links {
            for ends in [(one, other), (other, one)] {
                if let (End::Node(node), End::Boundary(boundary)) = ends {
                    gains_w[node] += conductance.get() * conditions.boundary_k[boundary];
                }
            }
        }
    }
}

/// Conditions without their units.
#[derive(Debug, Clone)]
struct Numbers {
    heat_w: Vec<f64>,
    boundary_k: Vec<f64>,
}

impl Conditions {
    fn as_numbers(&self) -> Numbers {
        Numbers {
            heat_w: self.heat.iter().map(|heat| heat.get()).collect(),
            boundary_k: self.boundary.iter().map(|t| t.get()).collect(),
        }
    }
}

impl Numbers {
    /// A straight line from these (0) to others (1).
    fn toward(&self, other: &Self, part: f64) -> Self {
        let mix = |a: &[f64], b: &[f64]| a.iter().zip(b).map(|(a, b)| a + part * (b - a)).collect();
        Self { heat_w: mix(&self.heat_w, &other.heat_w), boundary_k: mix(&self.boundary_k, &other.boundary_k) }
    }
}

fn count(what: &'static str, expected: usize, found: usize) -> Result<(), NetworkError> {
    if expected == found { Ok(()) } else { Err(NetworkError::WrongCount { what, expected, found }) }
}

fn is_zero_or_more(value: f64) -> bool {
    value.is_finite() && value >= 0.0
}
