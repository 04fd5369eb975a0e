//! The embedded grid: unpacking and bilinear means. The layout stands in `data/climatology/README.md`.

use std::sync::OnceLock;

const PACKED: &[u8] = include_bytes!("../../../../data/climatology/climate.bin.z");
const COLUMNS: usize = 720;
const NORTH_ROWS: usize = 91;
const SOUTH_ROWS: usize = 53;
const CELLS: usize = COLUMNS * (NORTH_ROWS + SOUTH_ROWS);
const MASK_BYTES: usize = CELLS / 8;
const PLANES: usize = 25;

/// What a cell, or a mean of cells, holds.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub(super) struct Cell {
    pub(super) elevation_m: f64,
    pub(super) temperature_c: [f64; 12],
    pub(super) precipitation_mm: [f64; 12],
}

/// Four cells and the weight of each.
pub(super) type Corners = [(usize, f64); 4];

pub(super) struct Grid {
    held: Vec<bool>,
    heights: Vec<u8>,
    half_kelvins: Vec<i8>,
    root_rain: Vec<i8>,
}

/// The grid, unpacked once.
pub(super) fn grid() -> Option<&'static Grid> {
    static GRID: OnceLock<Option<Grid>> = OnceLock::new();
    GRID.get_or_init(|| unpack(PACKED)).as_ref()
}

/// The cells round a place, weighted; `None` outside both bands.
pub(super) fn corners(latitude: f64, longitude: f64) -> Option<Corners> {
    let (top, first_row, rows) = match latitude {
        30.0..=75.0 => (75.0, 0, NORTH_ROWS),
        -56.0..=-30.0 => (-30.0, NORTH_ROWS, SOUTH_ROWS),
        _ => return None,
    };
    let down = (top - latitude) * 2.0;
    let across = longitude.rem_euclid(360.0) * 2.0;
    let row = (down as usize).min(rows - 2);
    let column = across as usize % COLUMNS;
    let (south, east) = (down - row as f64, across - across.floor());
    let at = |r: usize, c: usize| (first_row + r) * COLUMNS + c % COLUMNS;
    Some([
        (at(row, column), (1.0 - south) * (1.0 - east)),
        (at(row, column + 1), (1.0 - south) * east),
        (at(row + 1, column), south * (1.0 - east)),
        (at(row + 1, column + 1), south * east),
    ])
}

impl Grid {
    /// Weighted mean over the corners that are held; `None` if none is.
    pub(super) fn mean(&self, corners: &Corners) -> Option<Cell> {
        let held = |index: usize| self.held.get(index).copied().unwrap_or(false);
        let known = corners.iter().filter(|(index, _)| held(*index));
        let weight: f64 = known.clone().map(|(_, weight)| weight).sum();
        if weight <= 0.0 {
            return None;
        }
        let mut mean = Cell::default();
        for (index, part) in known {
            let cell = self.cell(*index);
            let share = part / weight;
            mean.elevation_m += share * cell.elevation_m;
            for month in 0..12 {
                mean.temperature_c[month] += share * cell.temperature_c[month];
                mean.precipitation_mm[month] += share * cell.precipitation_mm[month];
            }
        }
        Some(mean)
    }

    fn cell(&self, index: usize) -> Cell {
        let root = |month: usize| f64::from(self.root_rain[month * CELLS + index]) / 3.0;
        Cell {
            elevation_m: (f64::from(self.heights[index]) - 8.0) * 25.0,
            temperature_c: std::array::from_fn(|month| f64::from(self.half_kelvins[month * CELLS + index]) / 2.0),
            precipitation_mm: std::array::from_fn(|month| root(month) * root(month)),
        }
    }
}

fn unpack(packed: &[u8]) -> Option<Grid> {
    let whole = MASK_BYTES + PLANES * CELLS;
    let bytes = miniz_oxide::inflate::decompress_to_vec_zlib_with_limit(packed, whole).ok()?;
    if bytes.len() != whole {
        return None;
    }
    let (mask, planes) = bytes.split_at(MASK_BYTES);
    let held = (0..CELLS).map(|cell| mask[cell / 8] & (0x80 >> (cell % 8)) != 0).collect();
    let mut decoded = planes.chunks_exact(CELLS);
    let heights = predicted(decoded.next()?, i16::from).iter().map(|value| *value as u8).collect();
    let months: Vec<Vec<i16>> = decoded.map(|plane| predicted(plane, |byte| i16::from(byte as i8))).collect();
    let (warmth, rain) = months.split_at(12);
    Some(Grid { held, heights, half_kelvins: summed(warmth), root_rain: summed(rain) })
}

/// Adds each month to the one before.
fn summed(months: &[Vec<i16>]) -> Vec<i8> {
    let mut level = vec![0_i16; CELLS];
    let mut all = Vec::with_capacity(months.len() * CELLS);
    for month in months {
        for (cell, change) in level.iter_mut().zip(month) {
            *cell += change;
            all.push(*cell as i8);
        }
    }
    all
}

/// Undoes the median edge predictor: a cell is guessed as the middle one of west, north, and both less the one between.
fn predicted(residual: &[u8], widen: fn(u8) -> i16) -> Vec<i16> {
    let mut plane: Vec<i16> = Vec::with_capacity(residual.len());
    let mut above = vec![0_i16; COLUMNS];
    for row in residual.chunks_exact(COLUMNS) {
        let (mut west, mut corner) = (0, 0);
        for (north, residual) in above.iter_mut().zip(row) {
            let guess = (west + *north - corner).clamp(west.min(*north), west.max(*north));
            west = widen((guess as u8).wrapping_add(*residual));
            corner = std::mem::replace(north, west);
        }
        plane.extend_from_slice(&above);
    }
    plane
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_damaged_grid_is_refused() {
        assert!(unpack(&PACKED[..PACKED.len() / 2]).is_none());
        assert!(unpack(b"").is_none());
    }

    #[test]
    fn corner_weights_add_up_to_one_everywhere() {
        for (latitude, longitude) in [(75.0, 0.0), (30.0, 359.9), (61.7, 27.3), (-56.0, -70.1), (-30.0, 180.0)] {
            let sum: f64 = corners(latitude, longitude).unwrap().iter().map(|(_, weight)| weight).sum();
            assert!((sum - 1.0).abs() < 1e-12, "{latitude} {longitude}: {sum}");
        }
        assert!(corners(29.9, 0.0).is_none() && corners(-29.9, 0.0).is_none() && corners(75.1, 0.0).is_none());
    }
}
