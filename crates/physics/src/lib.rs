//! Laws without state: moist air, wall layers, air flow, snow, sun; one law a file.
//!
//! Every law gives its formula in the symbols of its source, the range it holds in, the source and an example that
//! runs.
//! Numbers go in and out as [`snowhum_units`] types; nothing here keeps a state, reads a clock or draws at random.
//! The letters used inside end in their unit (`t_air_k`, `p_pa`).
//!
//! | question | module |
//! |---|---|
//! | how much vapour air can hold | [`saturation`], [`saturation_13788`] |
//! | what moist air weighs, carries, where it condenses | [`moist_air`], [`wet_surface`] |
//! | how well a wall or lid holds heat | [`films`], [`air_layer`], [`layers`], [`wood`], [`snow`] |
//! | whether water gathers inside a build-up or on its face | [`condensation`], [`temperature_factor`] |
//! | how much air moves | [`orifice`], [`stack`], [`two_way`], [`wind`], [`wind_pressure`] |
//! | what the sun brings | [`sun`] |
//! | what a kilogram of honey turns into | [`honey`] |
//! | what a set of linked bodies does in time | [`network`] |

pub mod air_layer;
pub mod condensation;
pub mod dense;
pub mod films;
pub mod honey;
pub mod layers;
pub mod moist_air;
pub mod network;
pub mod orifice;
pub mod saturation;
pub mod saturation_13788;
pub mod snow;
pub mod stack;
pub mod sun;
pub mod temperature_factor;
pub mod two_way;
pub mod wet_surface;
pub mod wind;
pub mod wind_pressure;
pub mod wood;

use snowhum_units::Pascal;

/// Standard atmosphere at sea level, 101 325 Pa (ISO 2533).
pub const STANDARD_PRESSURE: Pascal = Pascal::new(101_325.0);

/// Standard acceleration of free fall, m/s² (CGPM 1901).
const GRAVITY: f64 = 9.806_65;
