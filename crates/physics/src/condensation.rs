//! Condensation inside a build-up of several layers, after ISO 13788.

use crate::layers::Layer;
use snowhum_units::{Kelvin, KilogramPerSquareMetreSecond, Metre, Pascal, SquareMetreKelvinPerWatt};

/// Vapour permeability of still air in the standard, kg/(m s Pa).
const DELTA_0: f64 = 2e-10;

/// The air on one side of a build-up.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Side {
    /// Temperature of the air.
    pub temperature: Kelvin,
    /// Its vapour pressure.
    pub vapour: Pascal,
    /// Film on that side.
    pub film: SquareMetreKelvinPerWatt,
}

/// A layer as heat and vapour meet it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sheet {
    /// Thermal resistance, R.
    pub resistance: SquareMetreKelvinPerWatt,
    /// Thickness of still air that holds vapour back as much, s_d.
    pub vapour_thickness: Metre,
}

impl From<&Layer> for Sheet {
    fn from(layer: &Layer) -> Self {
        Self { resistance: layer.resistance(), vapour_thickness: layer.vapour_thickness() }
    }
}

/// A plane between two layers, or a face of the build-up.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Plane {
    /// Temperature.
    pub temperature: Kelvin,
    /// Sum of s_d from the first face.
    pub depth: Metre,
    /// Vapour pressure as if nothing condensed.
    pub dry_vapour: Pascal,
    /// Saturation pressure.
    pub saturation: Pascal,
    /// Condensation in this plane, never negative; none on the two faces.
    pub rate: KilogramPerSquareMetreSecond,
}

/// The planes of a build-up from its first face to its last, with the condensation in each.
///
/// Temperature falls with resistance. Over the sum of s_d the vapour pressure is the greatest curve from p_1 to p_2
/// that is
/// convex and passes no saturation pressure of a plane: straight pieces that touch it where water gathers.
/// There g = δ_0 (Δp/Δs_d one side - Δp/Δs_d the other), δ_0 = 2e-10 kg/(m s Pa).
///
/// Valid for steady conditions, dry at the start, no air through the build-up, no uptake of water; layers of more than
/// 0.25 m² K/W should be handed over in slices. Water on the faces is not looked at. `saturation` is the law to use:
/// [`crate::saturation::over_ice_or_water`], or [`crate::saturation_13788::saturation`] for cases of the standard.
///
/// Source: ISO 13788:2012, clause 6.
///
/// ```
/// use snowhum_physics::condensation::{Sheet, Side, planes};
/// use snowhum_physics::moist_air::vapour_pressure_at;
/// use snowhum_physics::saturation::over_ice_or_water;
/// use snowhum_units::{Fraction, Kelvin, Metre, SquareMetreKelvinPerWatt as R};
/// let side = |t_c, film| {
///     let temperature = Kelvin::from_celsius(t_c);
///     Side { temperature, vapour: vapour_pressure_at(temperature, Fraction::new(0.8)), film: R::new(film) }
/// };
/// let sheet = |r, sd| Sheet { resistance: R::new(r), vapour_thickness: Metre::new(sd) };
/// let lid = [sheet(0.010 / 0.13, 0.7), sheet(0.050 / 0.034, 7.5), sheet(0.0008 / 0.23, 10.0)];
/// let planes = planes(side(10.0, 0.10), &lid, side(-10.0, 0.04), over_ice_or_water);
/// let under_felt_g_m2_day = planes[2].rate.get() * 86_400e3;
/// assert!((under_felt_g_m2_day - 1.3862316).abs() < 1e-6);
/// ```
#[must_use]
pub fn planes(first: Side, sheets: &[Sheet], last: Side, saturation: impl Fn(Kelvin) -> Pascal) -> Vec<Plane> {
    let mut planes = dry_planes(first, sheets, last, saturation);
    let envelope = lower_envelope(&planes, first.vapour, last.vapour);
    for corner in envelope.windows(3) {
        let [before, here, after] = corner else { continue };
        let bend = slope(here, after) - slope(before, here);
        if let Some(plane) = planes.get_mut(here.plane) {
            plane.rate = KilogramPerSquareMetreSecond::new(DELTA_0 * bend);
        }
    }
    planes
}

/// All the condensation in a build-up.
///
/// ```
/// # use snowhum_physics::condensation::total;
/// assert_eq!(total(&[]).get(), 0.0);
/// ```
#[must_use]
pub fn total(planes: &[Plane]) -> KilogramPerSquareMetreSecond {
    planes.iter().fold(KilogramPerSquareMetreSecond::ZERO, |sum, plane| sum + plane.rate)
}

/// A corner that the vapour pressure may have: depth, pressure, and which plane it is.
struct Corner {
    depth_m: f64,
    pressure_pa: f64,
    plane: usize,
}

fn slope(from: &Corner, to: &Corner) -> f64 {
    (to.pressure_pa - from.pressure_pa) / (to.depth_m - from.depth_m)
}

/// The planes with temperature and saturation, and the straight vapour pressure.
fn dry_planes(first: Side, sheets: &[Sheet], last: Side, saturation: impl Fn(Kelvin) -> Pascal) -> Vec<Plane> {
    let layers: SquareMetreKelvinPerWatt = sheets.iter().map(|sheet| sheet.resistance).sum();
    let resistance = first.film + layers + last.film;
    let thickness: Metre = sheets.iter().map(|sheet| sheet.vapour_thickness).sum();
    let (mut passed, mut depth) = (first.film, Metre::ZERO);
    let mut planes = Vec::with_capacity(sheets.len() + 1);
    for next in sheets.iter().map(Some).chain([None]) {
        let temperature = first.temperature + (last.temperature - first.temperature) * (passed / resistance);
        let share = if thickness > Metre::ZERO { depth / thickness } else { 0.0 };
        planes.push(Plane {
            temperature,
            depth,
            dry_vapour: first.vapour + (last.vapour - first.vapour) * share,
            saturation: saturation(temperature),
            rate: KilogramPerSquareMetreSecond::ZERO,
        });
        if let Some(sheet) = next {
            passed += sheet.resistance;
            depth += sheet.vapour_thickness;
        }
    }
    planes
}

/// The corners of the greatest convex curve under the saturation pressures, ends included (a lower convex hull).
fn lower_envelope(planes: &[Plane], first: Pascal, last: Pascal) -> Vec<Corner> {
    let end = planes.len().saturating_sub(1);
    let depth_end_m = planes.get(end).map_or(0.0, |plane| plane.depth.get());
    let mut hull: Vec<Corner> = vec![Corner { depth_m: 0.0, pressure_pa: first.get(), plane: 0 }];
    for (at, plane) in planes.iter().enumerate() {
        let depth_m = plane.depth.get();
        // Planes that no vapour resistance parts from a face have the face's own pressure.
        let inside = depth_m > 0.0 && depth_m < depth_end_m;
        if inside {
            push(&mut hull, Corner { depth_m, pressure_pa: plane.saturation.get(), plane: at });
        }
    }
    if depth_end_m > 0.0 {
        push(&mut hull, Corner { depth_m: depth_end_m, pressure_pa: last.get(), plane: end });
    }
    hull
}

/// Adds a corner and drops those that it leaves above the curve. Of two at one depth the lower stays.
fn push(hull: &mut Vec<Corner>, corner: Corner) {
    if hull.last().is_some_and(|top| top.depth_m >= corner.depth_m && top.pressure_pa <= corner.pressure_pa) {
        return;
    }
    while let [.., before, top] = hull.as_slice() {
        let above = top.depth_m >= corner.depth_m || slope(before, top) >= slope(top, &corner);
        if !above {
            break;
        }
        hull.pop();
    }
    hull.push(corner);
}
