//! The laws against published and independently computed values; each table names where its numbers come from.

mod air_flow;
mod build_ups;
mod condensation;
mod coupled_moisture;
mod honey;
mod moist_air;
mod network;
mod saturation;
mod sun;
mod table;
