//! The table of linear losses as a file.

use super::build_up::{BuildUp, FLOORS, LIDS, WALLS};
use super::junction::{self, SHIPPED};
use anyhow::Result;

/// Where the table lies, from the root of the workspace.
pub(crate) const PLACE: &str = "data/edge_losses.toml";

const HEAD: &str = "\
# Linear losses psi of a hive's edges: heat beyond what the faces lose, for each metre of edge and each kelvin.
# Written by `cargo xtask edges`; do not edit.
#
# psi = L2D - U1 l1 - U2 l2, with l1 and l2 measured along the INNER faces and U = 1/(Rsi + R + Rse), films of
# ISO 6946: Rsi 0.13 on walls, 0.10 under a lid, 0.17 over a floor, Rse 0.04 outside. The loss of a hive, air to air, is
# the sum of U times inside area over its faces plus the sum of psi times inside length over its edges.
#
# wall_r, other_r: resistance of the layers without films, m2 K/W (other: the lid, the floor, or the next wall).
# psi: W/(m K).
#
# Build-ups: softwood 0.12 W/(m K) (dataholz.eu, timber of 450 kg/m3), extruded foam 0.034 and moulded polystyrene
# 0.036 (from memory). Lid and floor lie across the wall out to its outermost face; a wrap stops under the lid and over
# the floor; foam on the lid ends flush with the wrap. No air leaks through a joint; outdoor air touches every outer
# face.
";
const SOURCE: &str = "computed: two-dimensional conduction, passes ISO 10211 cases 1 and 2";

/// One edge of the table.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Row {
    edge: &'static str,
    wall: BuildUp,
    other: BuildUp,
    psi: f64,
}

/// Computes every row.
pub(crate) fn compute() -> Result<Vec<Row>> {
    let mut rows = Vec::new();
    for wall in WALLS {
        rows.push(Row { edge: "wall to wall", wall, other: wall, psi: junction::corner(&wall, SHIPPED)? });
    }
    for wall in WALLS {
        for other in LIDS {
            let psi = junction::under_lid(&wall, &other, SHIPPED)?;
            rows.push(Row { edge: "wall to lid", wall, other, psi });
        }
    }
    for wall in WALLS {
        for other in FLOORS {
            let psi = junction::over_floor(&wall, &other, SHIPPED)?;
            rows.push(Row { edge: "wall to floor", wall, other, psi });
        }
    }
    Ok(rows)
}

/// The file's text.
pub(crate) fn print(rows: &[Row]) -> String {
    let mut text = HEAD.to_owned();
    for row in rows {
        text.push_str(&row.print());
    }
    text
}

impl Row {
    fn print(&self) -> String {
        let Self { edge, wall, other, psi } = self;
        let (wall_r, other_r) = (wall.resistance(), other.resistance());
        format!(
            "\n[[edge]]\nedge = \"{edge}\"\nwall = \"{}\"\nother = \"{}\"\nwall_r = {wall_r:.3}\nother_r = {other_r:.3}\n\
             psi = {psi:.4}\nsource = \"{SOURCE}\"\n",
            wall.name, other.name
        )
    }
}

#[cfg(test)]
mod tests {
    use super::{HEAD, LIDS, PLACE, Row, SHIPPED, WALLS, junction};

    fn committed() -> String {
        std::fs::read_to_string(crate::house::root().join(PLACE)).unwrap()
    }

    #[test]
    fn the_committed_table_is_what_the_solver_finds() {
        let (bare, wrapped) = (WALLS[0], WALLS[4]);
        let corner = junction::corner(&bare, SHIPPED).unwrap();
        let lid = junction::under_lid(&wrapped, &LIDS[1], SHIPPED).unwrap();
        let text = committed();
        for row in [
            Row { edge: "wall to wall", wall: bare, other: bare, psi: corner },
            Row { edge: "wall to lid", wall: wrapped, other: LIDS[1], psi: lid },
        ] {
            assert!(text.contains(&row.print()), "{PLACE} is out of date (cargo xtask edges): {row:?}");
        }
        assert!(text.starts_with(HEAD), "{PLACE} is out of date (cargo xtask edges): its heading");
    }

    #[test]
    fn the_committed_table_is_whole_and_reads_as_toml() {
        let table: toml::Table = committed().parse().unwrap();
        let rows = table["edge"].as_array().unwrap();
        assert_eq!(rows.len(), 5 + 10 + 10);
        for row in rows {
            let psi = row["psi"].as_float().unwrap();
            assert!(psi > 0.0 && psi < 0.3, "an inside length misses part of the wall, so psi is a small loss: {row}");
        }
    }
}
