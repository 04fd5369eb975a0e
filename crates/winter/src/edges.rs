//! Heat lost at edges and corners beyond what the faces lose.

use crate::block::SURFACES;
use crate::shell::Plan;
use snowhum_apiary::Hive;

/// Edge losses by surface, W/K.
pub(crate) fn losses(_hive: &Hive, _wall_r: f64, _lid_r: f64, _floor_r: f64, _plan: &Plan) -> [f64; SURFACES] {
    [0.0; SURFACES]
}
