//! The outside as one hive feels it: films by wind, snow as a blanket, sun on lid and walls, a warm neighbour.

use crate::block::{Block, Boundary, FLOOR, LID, LOW_WALL, WALL};
use crate::environment::Hour;
use crate::lanes::{LANES, Lanes, clamp, gate, inverses2, inverses4, max, min};
use crate::laws::{FUSION, HOUR};
use crate::shell::Shell;
use snowhum_figures::winter_hour::{BANKED_SNOW, ENTRANCE_UNDER_SNOW};

/// Radiative part of the outside film at emissivity 0.9 and 0 °C, W/(m² K): ISO 6946.
const RADIATIVE: f64 = 4.16;
/// Snow on a roof that makes it a snowy one, kg/m²: a few millimetres.
const SNOWY: f64 = 0.5;
/// Outdoor air above which snow is wet, and wind no longer carries it off, °C.
const WET_SNOW: f64 = -0.5;

/// Fills the boundary for an hour; `neighbour` is what a touching hive's wall has, °C, if there is one.
#[inline(always)]
pub(crate) fn fill(
    shell: &Shell,
    hour: &Hour,
    neighbour: Option<&[f32; LANES]>,
    block: &mut Block,
    boundary: &mut Boundary,
) {
    let share = if neighbour.is_some() { shell.neighbour_share } else { 0.0 };
    let beside = neighbour.unwrap_or(&hour.air);
    let per_height = 1.0 / (shell.cold_height + 0.05);
    let (area, resistance, edge) = (&shell.faces.area, &shell.faces.resistance, &shell.faces.edge);
    for i in 0..LANES {
        let air = f64::from(hour.air[i]);
        let wind = f64::from(hour.wind[i]);
        let snow = f64::from(hour.snow[i]);
        let film = 1.0 / (4.0 + 4.0 * wind + RADIATIVE);
        let wall_sun = f64::from(hour.wall_sun[i]) * shell.faces.wall_absorptance;
        let buried = clamp((snow - shell.stand) * per_height, 0.0, 1.0);
        boundary.air[i] = air;
        boundary.ratio[i] = f64::from(hour.ratio[i]);
        boundary.wind[i] = wind;
        boundary.flight[i] = f64::from(hour.flight[i]);
        let layers = inverses4([
            resistance[WALL] + film,
            resistance[LOW_WALL] + film + buried * BANKED_SNOW,
            resistance[FLOOR] + film,
            film,
        ]);
        let [per_wall, per_low_wall, per_floor, per_film] = layers;
        let roof = snow_roof(shell, hour, i, (air, film, per_film), block);
        boundary.lid[i] = area[LID] * roof.conductance + edge[LID];
        boundary.lid_sees[i] = roof.sees;
        boundary.wall[i] = area[WALL] * per_wall + edge[WALL];
        boundary.low_wall[i] = area[LOW_WALL] * per_low_wall + edge[LOW_WALL];
        let sunny = air + wall_sun * film;
        boundary.wall_sees[i] = sunny + share * (f64::from(beside[i]) - sunny);
        boundary.floor[i] = area[FLOOR] * per_floor + edge[FLOOR];
        boundary.entrance_snow_free[i] = 1.0 - (1.0 - ENTRANCE_UNDER_SNOW) * gate(snow > shell.stand + 0.03);
    }
}

/// The roof as the lid's inside meets it.
struct SeenRoof {
    /// Layers, snow and film, W/(m² K).
    conductance: f64,
    /// What lies beyond, °C.
    sees: f64,
}

/// An hour of snow on the roof of lane `i`: it falls, is carried off by wind, melts from above by sun and mild air and from
/// below by the hive's own heat.
///
/// Where snow melts it is at 0 °C: its top lets no more than that through, and a lid under melting snow sees 0 °C without
/// a blanket between. What arrives there less what goes on upwards melts it.
#[inline(always)]
fn snow_roof(
    shell: &Shell,
    hour: &Hour,
    i: usize,
    (air, film, per_film): (f64, f64, f64),
    block: &mut Block,
) -> SeenRoof {
    let roof = &shell.roof;
    let lying = block.heat.roof_snow[i];
    let snowy = gate(lying > SNOWY);
    let sun = f64::from(hour.roof_sun[i]);
    let bare_sees = air + sun * shell.faces.lid_absorptance * film;
    let snow_sees = air + sun * roof.absorptance * film;
    let over = lying * roof.resistance + film;
    let (per_over, per_all) = inverses2(over, shell.faces.resistance[LID] + snowy * lying * roof.resistance + film);
    let top = min(snow_sees, 0.0);
    let lid = block.surfaces[LID].temperature[i];
    let melts = snowy * gate(top + (lid - top) * over * per_all > 0.0);
    let melted_above = max(snow_sees, 0.0) * per_film;
    let melted_below = melts * max(lid * roof.lid + top * per_over, 0.0);
    let wind = f64::from(hour.wind[i]);
    let carried = roof.drift_share * gate(wind > roof.drift_from) * gate(air < WET_SNOW);
    let fallen = roof.catch * f64::from(hour.snowfall[i]) * (1.0 - gate(wind > roof.drift_from));
    let melted = (melted_above + melted_below) * (HOUR / FUSION);
    block.heat.roof_snow[i] = max(lying * (1.0 - carried) - melted, 0.0) + fallen;
    SeenRoof {
        conductance: per_all + melts * (roof.lid - per_all),
        sees: (1.0 - snowy) * bare_sees + snowy * (1.0 - melts) * top,
    }
}

/// Outer face of the upper walls, °C: where a touching hive meets this one.
#[inline(always)]
pub(crate) fn outer_face(shell: &Shell, boundary: &Boundary, inner_face: &Lanes, face: &mut [f32; LANES]) {
    for i in 0..LANES {
        let film = 1.0 / (4.0 + 4.0 * boundary.wind[i] + RADIATIVE);
        let share = film / (shell.faces.resistance[WALL] + film);
        face[i] = (boundary.wall_sees[i] + share * (inner_face[i] - boundary.wall_sees[i])) as f32;
    }
}
