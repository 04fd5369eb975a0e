//! The three edges of a hive as sections, and what each loses beyond its faces.
//!
//! Convention. psi = L2D - U1 l1 - U2 l2, W/(m K): L2D is the heat through the section for each kelvin between the
//! airs and each metre of edge; l1 and l2 are lengths along the **inner** faces; U = 1/(Rsi + R + Rse) is the loss of a
//! plain face with the films of ISO 6946: Rsi 0.13 on walls, 0.10 under a lid, 0.17 over a floor, Rse 0.04 outside. So
//! the loss of a hive, air to air, is the sum of U times inside area over the faces, plus psi times inside length over
//! the edges. Films are the same right into the corner.
//!
//! Drawn: layers of a wall go round a corner whole. Lid and floor lie across the wall out to its outermost face; a wrap
//! on the wall stops under the lid and over the floor, foam on the lid ends flush with the wrap. Outdoor air touches
//! every outer face, the ends of the boards among them. No air leaks through a joint.

use super::build_up::BuildUp;
use crate::conduction::{Air, Axis, Fill, Rectangle, Section};
use anyhow::Result;

const WALL_FILM: f64 = 0.13;
const LID_FILM: f64 = 0.10;
const FLOOR_FILM: f64 = 0.17;
const OUTER_FILM: f64 = 0.04;

const OUTDOORS: usize = 0;
const INDOORS: usize = 1;
/// Width of the strip of outdoor air drawn round the section, m.
const STRIP: f64 = 0.01;
/// Each cell is this much wider than the one before, away from the edge.
const GROWTH: f64 = 1.15;

/// How finely and how far a section is drawn.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Drawing {
    /// Widest cell in the walls, m.
    pub(crate) cell_m: f64,
    /// Length of inner face on either side of the edge, m.
    pub(crate) length_m: f64,
}

/// As the table is computed.
pub(crate) const SHIPPED: Drawing = Drawing { cell_m: 0.001, length_m: 0.4 };

/// Upright edge between two like walls.
pub(crate) fn corner(wall: &BuildUp, drawing: Drawing) -> Result<f64> {
    let axis = || inwards(outwards(wall, drawing).into_iter().rev(), drawing);
    let reach = |from: f64| Rectangle { x: [from, drawing.length_m], y: [from, drawing.length_m] };
    let mut section = Section::new(axis(), axis(), airs(WALL_FILM), Fill::Air(OUTDOORS));
    for (depth_m, layer) in wall.depths().into_iter().rev() {
        section = section.draw(reach(-depth_m), Fill::Solid(layer.conductivity));
    }
    let section = section.draw(reach(0.0), Fill::Air(INDOORS));
    let face = loss(wall, WALL_FILM) * drawing.length_m;
    Ok(section.solve()?.heat_from(INDOORS) - 2.0 * face)
}

/// Edge between a wall and the lid over it.
pub(crate) fn under_lid(wall: &BuildUp, lid: &BuildUp, drawing: Drawing) -> Result<f64> {
    across(wall, lid, LID_FILM, drawing)
}

/// Edge between a wall and the solid floor under it.
pub(crate) fn over_floor(wall: &BuildUp, floor: &BuildUp, drawing: Drawing) -> Result<f64> {
    across(wall, floor, FLOOR_FILM, drawing)
}

/// A wall, and a deck that lies across its end. Drawn with the wall upright and the deck below it; only the film on
/// the deck knows whether that is up or down in the hive.
fn across(wall: &BuildUp, deck: &BuildUp, deck_film: f64, drawing: Drawing) -> Result<f64> {
    let x = inwards(outwards(wall, drawing).into_iter().rev(), drawing);
    let y = inwards(outwards(deck, drawing).into_iter().rev(), drawing);
    let (far, outer) = (drawing.length_m, -wall.thickness_m());
    let mut section = Section::new(x, y, airs(deck_film), Fill::Air(OUTDOORS));
    for (depth_m, layer) in deck.depths().into_iter().rev() {
        section = section.draw(Rectangle { x: [outer, far], y: [-depth_m, far] }, Fill::Solid(layer.conductivity));
    }
    for (depth_m, layer) in wall.depths().into_iter().rev() {
        section = section.draw(Rectangle { x: [-depth_m, far], y: [0.0, far] }, Fill::Solid(layer.conductivity));
    }
    let section = section.draw(Rectangle { x: [0.0, far], y: [0.0, far] }, Fill::Air(INDOORS));
    let faces = (loss(wall, WALL_FILM) + loss(deck, deck_film)) * far;
    Ok(section.solve()?.heat_from(INDOORS) - faces)
}

/// Loss of a plain face, W/(m2 K).
fn loss(build_up: &BuildUp, inner_film: f64) -> f64 {
    1.0 / (inner_film + build_up.resistance() + OUTER_FILM)
}

/// One kelvin between indoors and outdoors.
fn airs(inner_level_film: f64) -> Vec<Air> {
    vec![
        Air { temperature_c: 0.0, level_film: OUTER_FILM, upright_film: OUTER_FILM },
        Air { temperature_c: 1.0, level_film: inner_level_film, upright_film: WALL_FILM },
    ]
}

/// Where the layers end, counted outwards from the inner face, each with the widest cell before it; the strip last.
fn outwards(build_up: &BuildUp, drawing: Drawing) -> Vec<(f64, f64)> {
    let mut ends: Vec<_> = build_up.depths().into_iter().map(|(depth_m, _)| (depth_m, drawing.cell_m)).collect();
    ends.push((build_up.thickness_m() + STRIP, STRIP));
    ends
}

/// Mesh lines from the strip of outdoor air (first of `ends`) in to the inner face and along the cavity.
fn inwards(ends: impl Iterator<Item = (f64, f64)>, drawing: Drawing) -> Axis {
    let ends: Vec<_> = ends.chain(std::iter::once((0.0, 0.0))).collect();
    ends.windows(2).fold(Axis::from(-ends[0].0), |axis, pair| axis.even(-pair[1].0, pair[0].1)).growing(
        drawing.length_m,
        drawing.cell_m,
        GROWTH,
    )
}

#[cfg(test)]
mod tests {
    use super::super::build_up::{FLOORS, LIDS, WALLS};
    use super::{Drawing, SHIPPED, corner, over_floor, under_lid};

    fn all(drawing: Drawing) -> [f64; 3] {
        let wall = &WALLS[4];
        [
            corner(wall, drawing).unwrap(),
            under_lid(wall, &LIDS[1], drawing).unwrap(),
            over_floor(wall, &FLOORS[1], drawing).unwrap(),
        ]
    }

    fn assert_alike(one: [f64; 3], other: [f64; 3], within: f64) {
        for (a, b) in one.into_iter().zip(other) {
            assert!((a - b).abs() < within, "{one:?} against {other:?}");
        }
    }

    #[test]
    fn cells_of_half_the_width_change_nothing_the_table_shows() {
        assert_alike(all(SHIPPED), all(Drawing { cell_m: 0.0005, ..SHIPPED }), 1.5e-4);
    }

    #[test]
    fn longer_faces_change_nothing_the_table_shows() {
        assert_alike(all(SHIPPED), all(Drawing { length_m: 0.8, ..SHIPPED }), 5e-5);
    }
}
