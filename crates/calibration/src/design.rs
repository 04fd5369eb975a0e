//! Points spread evenly over the prior.

use snowhum_draws::Key;
use statrs::distribution::{ContinuousCDF, Normal};

/// The stream of the design's draws.
const STREAM: u64 = 0x4445_5349_474e;

/// A Latin hypercube of `points` standard deviates in each of `dimensions`: each of `points` equally likely slices of each
/// dimension holds one point, at a random place within it.
#[must_use]
pub fn latin_hypercube(points: usize, dimensions: usize, seed: u64) -> Vec<Vec<f64>> {
    let key = Key::new(seed, STREAM);
    let normal = Normal::standard();
    let columns: Vec<Vec<f64>> = (0..dimensions)
        .map(|dimension| {
            let order = shuffled(points, key, dimension as u32);
            let within = |at: usize| key.uniforms([at as u32, 1, dimension as u32, 0])[0];
            (0..points).map(|at| normal.inverse_cdf((order[at] as f64 + within(at)) / points as f64)).collect()
        })
        .collect();
    (0..points).map(|at| columns.iter().map(|column| column[at]).collect()).collect()
}

/// The numbers below `count` in an order that hangs on the key: they are sorted by a random number each.
pub(crate) fn shuffled(count: usize, key: Key, stream: u32) -> Vec<usize> {
    let mut order: Vec<(f64, usize)> = (0..count).map(|at| (key.uniforms([at as u32, 0, stream, 0])[0], at)).collect();
    order.sort_by(|a, b| a.0.total_cmp(&b.0).then(a.1.cmp(&b.1)));
    order.into_iter().map(|(_, at)| at).collect()
}

/// `count` places spread evenly over `all`.
pub fn thinned(count: usize, all: usize) -> impl Iterator<Item = usize> {
    (0..count).map(move |at| (2 * at + 1) * all / (2 * count))
}

#[cfg(test)]
mod tests {
    use super::latin_hypercube;
    use statrs::distribution::{ContinuousCDF, Normal};

    #[test]
    fn every_slice_of_every_dimension_holds_one_point() {
        let points = latin_hypercube(50, 3, 4);
        for dimension in 0..3 {
            let mut slices: Vec<usize> =
                points.iter().map(|point| (Normal::standard().cdf(point[dimension]) * 50.0) as usize).collect();
            slices.sort_unstable();
            assert_eq!(slices, (0..50).collect::<Vec<_>>());
        }
    }
}
