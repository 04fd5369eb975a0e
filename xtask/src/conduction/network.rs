//! The section as conductances between mesh crossings, and the temperatures found.

use super::section::{Fill, Section};
use super::solve;
use anyhow::Result;

/// Conductances of a five-point network, row by row from below.
#[derive(Debug)]
pub(crate) struct Network {
    pub(super) columns: usize,
    /// Sum of all conductances at a crossing.
    pub(super) diagonal: Vec<f64>,
    /// To the next crossing along x.
    pub(super) east: Vec<f64>,
    /// To the next crossing along y.
    pub(super) north: Vec<f64>,
    /// Heat brought by the airs' own temperature.
    pub(super) source: Vec<f64>,
    films: Vec<Film>,
    air_c: Vec<f64>,
}

/// Temperatures at the crossings.
#[derive(Debug)]
pub(crate) struct Field {
    network: Network,
    temperature_c: Vec<f64>,
}

#[derive(Debug)]
struct Film {
    air: usize,
    node: usize,
    conductance: f64,
}

impl Network {
    /// Gathers the conductances of a section.
    pub(super) fn of(section: &Section) -> Self {
        let columns = section.x.lines().len();
        let nodes = columns * section.y.lines().len();
        let mut network = Self {
            columns,
            diagonal: vec![0.0; nodes],
            east: vec![0.0; nodes],
            north: vec![0.0; nodes],
            source: vec![0.0; nodes],
            films: Vec::new(),
            air_c: section.airs.iter().map(|air| air.temperature_c).collect(),
        };
        network.join_solids(section);
        network.join_upright_films(section);
        network.join_level_films(section);
        network.close();
        network
    }

    pub(super) fn solve(self) -> Result<Field> {
        let temperature_c = solve::conjugate_gradients(&self)?;
        Ok(Field { network: self, temperature_c })
    }

    /// Each solid cell lends half of its width to the conductance along each of its four sides.
    fn join_solids(&mut self, section: &Section) {
        let (widths, heights) = (section.x.widths(), section.y.widths());
        for (row, height) in heights.iter().enumerate() {
            for (column, width) in widths.iter().enumerate() {
                let Fill::Solid(conductivity) = section.at(column, row) else { continue };
                let node = row * self.columns + column;
                let (along_x, along_y) = (conductivity * height / 2.0 / width, conductivity * width / 2.0 / height);
                self.east[node] += along_x;
                self.east[node + self.columns] += along_x;
                self.north[node] += along_y;
                self.north[node + 1] += along_y;
            }
        }
    }

    fn join_upright_films(&mut self, section: &Section) {
        let columns = section.x.widths().len();
        for (row, height) in section.y.widths().into_iter().enumerate() {
            for column in 1..columns {
                let Some(air) = air_between(section.at(column - 1, row), section.at(column, row)) else { continue };
                let conductance = height / 2.0 / section.airs[air].upright_film;
                let node = row * self.columns + column;
                self.join_film(air, conductance, [node, node + self.columns]);
            }
        }
    }

    fn join_level_films(&mut self, section: &Section) {
        let rows = section.y.widths().len();
        for row in 1..rows {
            for (column, width) in section.x.widths().into_iter().enumerate() {
                let Some(air) = air_between(section.at(column, row - 1), section.at(column, row)) else { continue };
                let conductance = width / 2.0 / section.airs[air].level_film;
                let node = row * self.columns + column;
                self.join_film(air, conductance, [node, node + 1]);
            }
        }
    }

    fn join_film(&mut self, air: usize, conductance: f64, nodes: [usize; 2]) {
        for node in nodes {
            self.diagonal[node] += conductance;
            self.source[node] += conductance * self.air_c[air];
            self.films.push(Film { air, node, conductance });
        }
    }

    /// Adds each conductance to the sums at both of its ends; a crossing in mid-air is left at 0 C on its own.
    fn close(&mut self) {
        for node in 0..self.diagonal.len() {
            if self.east[node] > 0.0 {
                self.diagonal[node] += self.east[node];
                self.diagonal[node + 1] += self.east[node];
            }
            if self.north[node] > 0.0 {
                self.diagonal[node] += self.north[node];
                self.diagonal[node + self.columns] += self.north[node];
            }
        }
        for sum in self.diagonal.iter_mut().filter(|sum| **sum == 0.0) {
            *sum = 1.0;
        }
    }
}

impl Field {
    /// Heat that the air gives to the section, W for each metre of the edge.
    pub(crate) fn heat_from(&self, air: usize) -> f64 {
        let given = |film: &Film| film.conductance * (self.network.air_c[air] - self.temperature_c[film.node]);
        self.network.films.iter().filter(|film| film.air == air).map(given).sum()
    }

    /// Temperature at a mesh crossing, C; none where no two mesh lines cross.
    #[cfg(test)]
    pub(crate) fn at(&self, section: &Section, x_m: f64, y_m: f64) -> Option<f64> {
        let line = |lines: &[f64], at: f64| lines.iter().position(|line| (line - at).abs() < 1e-9);
        let (column, row) = (line(section.x.lines(), x_m)?, line(section.y.lines(), y_m)?);
        Some(self.temperature_c[row * self.network.columns + column])
    }

    /// How many crossings there are.
    #[cfg(test)]
    pub(crate) fn crossings(&self) -> usize {
        self.temperature_c.len()
    }
}

/// The air of a pair of cells of which the other is solid.
fn air_between(one: Fill, other: Fill) -> Option<usize> {
    match (one, other) {
        (Fill::Air(air), Fill::Solid(_)) | (Fill::Solid(_), Fill::Air(air)) => Some(air),
        _ => None,
    }
}
