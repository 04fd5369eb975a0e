//! Steps of a thermal network in time.

use super::{Conditions, Network, NetworkError, count, is_zero_or_more};
use crate::dense::Factors;
use snowhum_units::{Kelvin, Second};

/// The part of the step that the trapezoidal stage covers: with it both stages share one matrix.
const GAMMA: f64 = 2.0 - std::f64::consts::SQRT_2;

/// Steps of one length over one network; the matrix is factored once.
///
/// TR-BDF2: (C + γh/2 G) T_γ = (C - γh/2 G) T_0 + γh/2 (b_0 + b_γ), then
/// (C + γh/2 G) T_1 = C (T_γ - (1 - γ)² T_0) / (γ (2 - γ)) + γh/2 b_1, with γ = 2 - √2 and b = q + G_b T_b.
///
/// Second order, and steady for any step: fast bodies settle instead of ringing.
///
/// Source: Bank et al. 1985, IEEE Transactions on Electron Devices 32:1992; Hosea and Shampine 1996 (from memory).
#[derive(Debug, Clone)]
pub struct Stepper {
    network: Network,
    half_s: f64,
    capacities_j_k: Vec<f64>,
    conductances_w_k: Vec<f64>,
    factors: Factors,
}

impl Stepper {
    /// A stepper of a step's length.
    ///
    /// # Errors
    /// [`NetworkError::NotPhysical`] for a negative step or capacity, [`NetworkError::Floating`] for a node without
    /// capacity
    /// that nothing fixes.
    pub fn new(network: &Network, step: Second) -> Result<Self, NetworkError> {
        if !is_zero_or_more(step.get()) {
            return Err(NetworkError::NotPhysical("a time step"));
        }
        let capacities_j_k: Vec<f64> = network.capacities.iter().map(|capacity| capacity.get()).collect();
        if !capacities_j_k.iter().all(|&capacity| is_zero_or_more(capacity)) {
            return Err(NetworkError::NotPhysical("a heat capacity"));
        }
        let size = capacities_j_k.len();
        let half_s = 0.5 * GAMMA * step.get();
        let conductances_w_k = network.conductances();
        let mut cells: Vec<f64> = conductances_w_k.iter().map(|conductance| half_s * conductance).collect();
        for (node, capacity) in capacities_j_k.iter().enumerate() {
            cells[node * size + node] += capacity;
        }
        let factors = Factors::new(size, cells).map_err(NetworkError::Floating)?;
        Ok(Self { network: network.clone(), half_s, capacities_j_k, conductances_w_k, factors })
    }

    /// One step. Conditions run in a straight line from `from` to `to`; hand over the same twice to hold them.
    ///
    /// # Errors
    /// [`NetworkError::WrongCount`] if a list does not fit the network; the temperatures are then left as they were.
    pub fn step(&self, nodes: &mut [Kelvin], from: &Conditions, to: &Conditions) -> Result<(), NetworkError> {
        count("node temperature", self.capacities_j_k.len(), nodes.len())?;
        self.network.check(from)?;
        self.network.check(to)?;
        let (from, to) = (from.as_numbers(), to.as_numbers());
        let size = nodes.len();
        let start: Vec<f64> = nodes.iter().map(|t| t.get()).collect();
        let (mut gains, mut right, mut middle) = (vec![0.0; size], vec![0.0; size], vec![0.0; size]);

        self.network.gains(&from, &mut gains);
        for node in 0..size {
            right[node] =
                self.capacities_j_k[node] * start[node] + self.half_s * (gains[node] - self.loss(node, &start));
        }
        self.network.gains(&from.toward(&to, GAMMA), &mut gains);
        right.iter_mut().zip(&gains).for_each(|(right, gain)| *right += self.half_s * gain);
        self.factors.solve(&right, &mut middle);

        self.network.gains(&to, &mut gains);
        let weight = 1.0 / (GAMMA * (2.0 - GAMMA));
        let old = (1.0 - GAMMA).powi(2);
        for node in 0..size {
            let kept = weight * (middle[node] - old * start[node]);
            right[node] = self.capacities_j_k[node] * kept + self.half_s * gains[node];
        }
        self.factors.solve(&right, &mut middle);
        nodes.iter_mut().zip(&middle).for_each(|(node, &t_k)| *node = Kelvin::new(t_k));
        Ok(())
    }

    /// (G T) of a node, W.
    fn loss(&self, node: usize, t_k: &[f64]) -> f64 {
        let row = &self.conductances_w_k[node * t_k.len()..(node + 1) * t_k.len()];
        row.iter().zip(t_k).map(|(conductance, t)| conductance * t).sum()
    }
}
