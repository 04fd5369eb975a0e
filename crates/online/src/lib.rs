//! Clients of live weather with a cache on disk; nothing is asked unless the keeper says so.
//!
//! | question | answer |
//! |---|---|
//! | whom may I ask for this place? | [`Service::for_place`] |
//! | what is the forecast? | [`Client::fetch`] |
//! | is it live, still current, or old? | [`Standing`] |
//! | why is there none, and what to do? | [`Fault`] |
//! | how do the rest of the house read it? | [`Forecast::to_reading`] |
//!
//! A service is asked as its terms ask for: with the keeper's contact where that is required, for a place rounded to
//! two decimals, not again before the answer runs out, and after that only for what has changed. The time is an
//! argument; the network and one folder are the only things touched. A failure falls back to the cache while the kept
//! forecast still reaches beyond now, and is a [`Fault`] after that; the site's climate needs no forecast at all.

mod body;
mod bridge;
mod cache;
mod client;
mod endpoints;
mod fault;
mod forecast;
mod freshness;
mod met_norway;
mod nws;
mod open_meteo;
mod request;
mod service;
mod transport;

pub use client::Client;
pub use endpoints::Endpoints;
pub use fault::{Fault, Why};
pub use forecast::{Forecast, ForecastHour, Standing};
pub use request::{OpenMeteoTerms, Position, Request};
pub use service::Service;
