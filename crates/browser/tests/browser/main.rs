//! The pages in a real browser: what a keeper does, from the first run to the printed sheet. Yards are invented.

mod begin;
mod browser;
mod delivery;
mod every_page;
mod guide;
mod headings;
mod keyboard;
mod length;
mod load;
mod many;
mod notes;
mod offline;
mod paper;
mod promptly;
mod season;
mod server;
mod setup;
mod stranger;
mod taps;
mod told;
mod trace;
