//! Conjugate gradients on a five-point network.

use super::network::Network;
use anyhow::{Result, ensure};

/// Residual, as a share of the right-hand side, at which the answer counts as found.
const SETTLED: f64 = 1e-12;
/// More than ten times what the largest mesh in use takes.
const MOST_STEPS: usize = 5_000;
/// Share of dropped fill-in that goes back onto the diagonal; 1 would keep row sums but can break down.
const GIVEN_BACK: f64 = 0.95;

/// Temperatures at which every crossing's heat balances.
///
/// The preconditioner is an incomplete factorisation without fill-in, modified as by I. Gustafsson, "A class of first
/// order factorization methods", BIT 18 (1978).
pub(super) fn conjugate_gradients(network: &Network) -> Result<Vec<f64>> {
    let pivots = pivots(network);
    let nodes = network.source.len();
    let mut answer = vec![0.0; nodes];
    let mut residual = network.source.clone();
    let target = SETTLED * dot(&residual, &residual).sqrt();
    let mut pulled = precondition(network, &pivots, &residual);
    let mut direction = pulled.clone();
    let mut weight = dot(&residual, &pulled);
    for _ in 0..MOST_STEPS {
        if dot(&residual, &residual).sqrt() <= target {
            return Ok(answer);
        }
        let image = multiply(network, &direction);
        let step = weight / dot(&direction, &image);
        add(&mut answer, step, &direction);
        add(&mut residual, -step, &image);
        pulled = precondition(network, &pivots, &residual);
        let next = dot(&residual, &pulled);
        let turn = next / weight;
        direction.iter_mut().zip(&pulled).for_each(|(d, z)| *d = z + turn * *d);
        weight = next;
    }
    ensure!(dot(&residual, &residual).sqrt() <= target, "the conduction solver did not settle in {MOST_STEPS} steps");
    Ok(answer)
}

fn pivots(network: &Network) -> Vec<f64> {
    let Network { columns, diagonal, east, north, .. } = network;
    let mut pivots = diagonal.clone();
    for node in 0..pivots.len() {
        if node >= 1 {
            let (west, before) = (east[node - 1], node - 1);
            pivots[node] -= west * (west + GIVEN_BACK * north[before]) / pivots[before];
        }
        if node >= *columns {
            let (south, below) = (north[node - columns], node - columns);
            pivots[node] -= south * (south + GIVEN_BACK * east[below]) / pivots[below];
        }
    }
    pivots
}

fn precondition(network: &Network, pivots: &[f64], residual: &[f64]) -> Vec<f64> {
    let Network { columns, east, north, .. } = network;
    let nodes = residual.len();
    let mut answer = residual.to_vec();
    for node in 0..nodes {
        let west = if node >= 1 { east[node - 1] * answer[node - 1] } else { 0.0 };
        let south = if node >= *columns { north[node - columns] * answer[node - columns] } else { 0.0 };
        answer[node] = (answer[node] + west + south) / pivots[node];
    }
    for node in (0..nodes).rev() {
        let from_east = if node + 1 < nodes { east[node] * answer[node + 1] } else { 0.0 };
        let from_north = if node + columns < nodes { north[node] * answer[node + columns] } else { 0.0 };
        answer[node] += (from_east + from_north) / pivots[node];
    }
    answer
}

fn multiply(network: &Network, vector: &[f64]) -> Vec<f64> {
    let Network { columns, diagonal, east, north, .. } = network;
    let mut image: Vec<f64> = diagonal.iter().zip(vector).map(|(d, v)| d * v).collect();
    for node in 0..vector.len() {
        if east[node] > 0.0 {
            image[node] -= east[node] * vector[node + 1];
            image[node + 1] -= east[node] * vector[node];
        }
        if north[node] > 0.0 {
            image[node] -= north[node] * vector[node + columns];
            image[node + columns] -= north[node] * vector[node];
        }
    }
    image
}

fn dot(one: &[f64], other: &[f64]) -> f64 {
    one.iter().zip(other).map(|(a, b)| a * b).sum()
}

fn add(to: &mut [f64], times: f64, what: &[f64]) {
    to.iter_mut().zip(what).for_each(|(t, w)| *t += times * w);
}
