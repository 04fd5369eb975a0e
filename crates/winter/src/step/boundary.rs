//! The outside as one hive feels it: films by wind, snow as a blanket, sun on lid and walls, a warm neighbour.

use crate::block::{Boundary, FLOOR, LID, LOW_WALL, WALL};
use crate::environment::Hour;
use crate::lanes::{LANES, Lanes, clamp, gate, inverses4, min};
use crate::shell::Shell;

/// Radiative part of the outside film at emissivity 0.9 and 0 °C, W/(m² K): ISO 6946.
const RADIATIVE: f64 = 4.16;
/// Conductivity of settled snow, W/(m K): Sturm et al. 1997, logarithmic form at 200 kg/m³.
const SNOW_CONDUCTIVITY: f64 = 0.0755;
/// Most snow that stays on a roof, m, and the share of lying snow that does (judgement: wind clears roofs).
const ROOF_SNOW_MOST: f64 = 0.3;
const ROOF_SNOW_SHARE: f64 = 0.6;
/// Resistance of snow banked against a wall, m² K/W (judgement: some 4 cm that really touch).
const BANKED_SNOW: f64 = 0.5;
/// Share of sun that a snowy roof takes up.
const SNOW_ABSORPTANCE: f64 = 0.2;
/// Share of the entrance's area that stays open to air under snow: snow is porous (judgement).
const ENTRANCE_UNDER_SNOW: f64 = 0.35;

/// Fills the boundary for an hour; `neighbour` is what a touching hive's wall has, °C, if there is one.
#[inline(always)]
pub(crate) fn fill(shell: &Shell, hour: &Hour, neighbour: Option<&[f32; LANES]>, boundary: &mut Boundary) {
    let share = if neighbour.is_some() { shell.neighbour_share } else { 0.0 };
    let beside = neighbour.unwrap_or(&hour.air);
    let per_height = 1.0 / (shell.cold_height + 0.05);
    let (area, resistance, edge) = (&shell.faces.area, &shell.faces.resistance, &shell.faces.edge);
    for i in 0..LANES {
        let air = f64::from(hour.air[i]);
        let wind = f64::from(hour.wind[i]);
        let snow = f64::from(hour.snow[i]);
        let film = 1.0 / (4.0 + 4.0 * wind + RADIATIVE);
        let on_roof = min(ROOF_SNOW_SHARE * snow, ROOF_SNOW_MOST);
        let snowy = gate(on_roof > 0.02);
        let roof_sun =
            f64::from(hour.roof_sun[i]) * (shell.faces.lid_absorptance * (1.0 - snowy) + SNOW_ABSORPTANCE * snowy);
        let wall_sun = f64::from(hour.wall_sun[i]) * shell.faces.wall_absorptance;
        let buried = clamp((snow - shell.stand) * per_height, 0.0, 1.0);
        boundary.air[i] = air;
        boundary.ratio[i] = f64::from(hour.ratio[i]);
        boundary.wind[i] = wind;
        boundary.flight[i] = f64::from(hour.flight[i]);
        let layers = inverses4([
            resistance[LID] + on_roof * (1.0 / SNOW_CONDUCTIVITY) + film,
            resistance[WALL] + film,
            resistance[LOW_WALL] + film + buried * BANKED_SNOW,
            resistance[FLOOR] + film,
        ]);
        boundary.lid[i] = area[LID] * layers[LID] + edge[LID];
        boundary.lid_sees[i] = air + roof_sun * film;
        boundary.wall[i] = area[WALL] * layers[WALL] + edge[WALL];
        boundary.low_wall[i] = area[LOW_WALL] * layers[LOW_WALL] + edge[LOW_WALL];
        let sunny = air + wall_sun * film;
        boundary.wall_sees[i] = sunny + share * (f64::from(beside[i]) - sunny);
        boundary.floor[i] = area[FLOOR] * layers[FLOOR] + edge[FLOOR];
        boundary.entrance_snow_free[i] = 1.0 - (1.0 - ENTRANCE_UNDER_SNOW) * gate(snow > shell.stand + 0.03);
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
