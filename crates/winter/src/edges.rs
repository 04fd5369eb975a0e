//! Heat lost at edges and corners beyond what the faces lose, from the table of a two-dimensional solver.

use serde::Deserialize;
use snowhum_figures::files::EDGE_LOSSES;
use snowhum_units::Same;

use crate::block::{FLOOR, LID, LOW_WALL, SURFACES, WALL};
use crate::shell::Plan;

/// Outside film of the nominal conductance that edges are booked against, m² K/W: ISO 6946.
const OUTER_FILM: f64 = 0.04;

#[derive(Debug, Clone, Deserialize)]
struct File {
    edge: Vec<Edge>,
}

#[derive(Debug, Clone, Deserialize)]
struct Edge {
    edge: String,
    wall_r: f64,
    other_r: f64,
    psi: f64,
}

/// What meets at an edge.
#[derive(Debug, Clone, Copy)]
struct Meeting {
    kind: &'static str,
    wall_r: f64,
    other_r: f64,
}

/// Extra conductance from each inside surface to outdoors, W/K, for faces of these resistances without films.
///
/// The table's losses are from air to air; a surface lies between, so each is scaled by `((g_i + g_o) / g_i)²`, which to
/// first order gives the same loss from air to air. `inner` are the conductances from zone to surface, W/K. A hive
/// without a closed floor has no edge there.
pub(crate) fn losses(
    resistance: [f64; SURFACES],
    area: [f64; SURFACES],
    inner: [f64; SURFACES],
    plan: &Plan,
) -> [f64; SURFACES] {
    let Ok(File { edge: table }) = toml::from_str::<File>(EDGE_LOSSES) else { return [0.0; SURFACES] };
    let wall_r = resistance[WALL];
    let psi = |kind, other_r| linear_loss(&table, Meeting { kind, wall_r, other_r });
    let corner = 4.0 * psi("wall to wall", wall_r);
    let mut loss = [0.0; SURFACES];
    loss[LID] = plan.perimeter * psi("wall to lid", resistance[LID]);
    loss[WALL] = corner * plan.warm_height;
    loss[LOW_WALL] = corner * plan.cold_height;
    if resistance[FLOOR] > 0.0 {
        loss[FLOOR] = plan.perimeter * psi("wall to floor", resistance[FLOOR]);
    }
    std::array::from_fn(|at| {
        let outer = area[at] / (resistance[at] + OUTER_FILM);
        loss[at] * ((inner[at] + outer) / inner[at]).powi(2)
    })
}

/// psi between the table's build-ups, weighted by closeness of the logarithms of both resistances.
fn linear_loss(table: &[Edge], meeting: Meeting) -> f64 {
    const NEAR: f64 = 1e-4;
    let logarithm = |r: f64| r.max(0.05).same_ln();
    let mut sum = 0.0;
    let mut weights = 0.0;
    for edge in table.iter().filter(|edge| edge.edge == meeting.kind) {
        let walls = logarithm(edge.wall_r) - logarithm(meeting.wall_r);
        let others = logarithm(edge.other_r) - logarithm(meeting.other_r);
        let weight = 1.0 / (walls * walls + others * others + NEAR).powi(2);
        sum += weight * edge.psi;
        weights += weight;
    }
    if weights > 0.0 { sum / weights } else { 0.0 }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_build_up_of_the_table_gets_its_own_figure() {
        let table = toml::from_str::<File>(EDGE_LOSSES).unwrap().edge;
        assert!(table.iter().any(|e| e.edge == "wall to lid") && table.iter().any(|e| e.edge == "wall to floor"));
        let wall = &table[0];
        let psi = linear_loss(&table, Meeting { kind: "wall to wall", wall_r: wall.wall_r, other_r: wall.other_r });
        assert!((psi - wall.psi).abs() < 0.05 * wall.psi);
    }
}
