//! The cluster alone: its power, core and mantle when the air round it has a given temperature.

use snowhum_units::Same;
use snowhum_units::{Kelvin, Kilogram, Metre, Watt, WattPerKelvin};

use crate::Parameters;
use crate::laws::Laws;

/// A cluster settled in still air of one temperature.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ClusterAnswer {
    /// Metabolic heat.
    pub heat: Watt,
    /// Core.
    pub core: Kelvin,
    /// Mantle.
    pub mantle: Kelvin,
    /// Core to air.
    pub conductance: WattPerKelvin,
    /// Volume over that of the tightest cluster.
    pub volume_ratio: f64,
    /// Radius, as a sphere.
    pub radius: Metre,
}

/// A broodless cluster of `mass` of bees with air of `air` round it, every parameter at its middle.
///
/// `heat = max[G_ca (core - T), G_ma (mantle - T), rest(T)]` under the ceiling: the law of the hourly step, written out
/// for one temperature. A test holds the two against each other.
///
/// ```
/// use snowhum_units::{Kelvin, Kilogram};
/// use snowhum_winter::{Parameters, cluster_at};
/// let p = Parameters::shipped().unwrap();
/// let at = |t| cluster_at(&p, Kilogram::new(2.0), Kelvin::from_celsius(t)).heat.get() / 2.0;
/// // 3.0, 4.6 and 6.3 W/kg at -10, -20 and -30 °C.
/// assert!((at(-10.0) - 3.0).abs() < 0.08 && (at(-20.0) - 4.6).abs() < 0.08 && (at(-30.0) - 6.3).abs() < 0.08);
/// ```
#[must_use]
pub fn cluster_at(p: &Parameters, mass: Kilogram, air: Kelvin) -> ClusterAnswer {
    cluster_in(p, mass, air, air)
}

/// The same in a hive whose air is another than the outdoors, with which rest goes.
#[must_use]
pub fn cluster_in(p: &Parameters, mass: Kilogram, air: Kelvin, outdoors: Kelvin) -> ClusterAnswer {
    let laws = Laws::of(p);
    let t = air.celsius();
    let loose = ((t - laws.tightest_at) * laws.per_kelvin).clamp(0.0, 1.0);
    let size = (mass.get() / laws.reference_mass).same_powf(2.0 / 3.0) * (laws.log_area_ratio * loose).same_exp();
    let specific = |conductance: f64| conductance * laws.reference_mass * size;
    let core_air = specific(p.conductance_core_air.value);
    let core_mantle = specific(p.conductance_core_mantle.value);
    let mantle_air = 1.0 / (1.0 / core_air - 1.0 / core_mantle);
    let rest_at = outdoors.celsius().clamp(10.0, 20.0);
    let rest = mass.get() * p.rest_power.value * (laws.rest_per_kelvin * (rest_at - 20.0)).same_exp();
    let wanted = (core_air * (laws.core_broodless - t)).max(mantle_air * (laws.mantle_floor - t)).max(rest);
    let heat = wanted.min(p.power_ceiling.value * mass.get());
    let mantle = t + heat / mantle_air;
    ClusterAnswer {
        heat: Watt::new(heat),
        core: Kelvin::from_celsius(mantle + heat / core_mantle),
        mantle: Kelvin::from_celsius(mantle),
        conductance: WattPerKelvin::new(core_air),
        volume_ratio: p.volume_ratio.value.same_powf(loose),
        radius: radius(mass.get(), loose, p),
    }
}

/// Radius of a cluster of `mass` kg, `loose` of the way from tightest to loosest.
pub(crate) fn radius(mass: f64, loose: f64, p: &Parameters) -> Metre {
    let volume = mass / p.tightest_density.value * p.volume_ratio.value.same_powf(loose);
    Metre::new((3.0 * volume / (4.0 * std::f64::consts::PI)).same_cbrt())
}
