//! The pages a keeper looks at, the round that works out of reach, and the JSON API.
//!
//! An [`App`] holds one yard's store and the last estimate. A write is answered when it is on the disk; the estimate is
//! computed anew behind it, and every page says from when its estimate is. The pages render answers and compute none:
//! what is asked of the model goes through [`Reckon`], and everything asked comes back as plain values.

mod addresses;
mod api;
mod app;
mod aside;
mod assets;
mod bare;
mod draw;
mod fault;
mod film;
mod frame;
mod gate;
mod guard;
mod ids;
mod labels;
mod lasting;
mod listen;
mod network;
mod page;
mod pages;
mod papers;
mod phone_table;
mod reader;
mod reckon;
mod routes;
mod said;
mod section;
mod sent;
mod settings;
mod sheet_file;
mod told;
mod turns;
mod view;
mod weather_ahead;
mod words;
mod yard_file;

/// What the pages of a club share with a keeper's: the look, and what stands before every request.
pub mod house {
    pub use crate::assets::{ICON, STYLE};
    pub use crate::gate::cookie::{given, named};
    pub use crate::guard::{dressed, is_foreign};
    pub use crate::labels::labelled;
    pub use crate::routes::whole;
    pub use crate::words::marked;
}

pub use app::{App, Opened};
pub use film::told_winter;
pub use gate::certificate::{Certificate, certificate_router};
pub use gate::{NotKept, PassPhrase, Reach, sign_in_code};
pub use listen::serve;
pub use network::{NETWORKS, is_own_network};
pub use papers::Paper;
pub use reckon::{Ask, Present, Reckon};
pub use routes::{paths, router};
pub use section::steady_section;
pub use settings::Chosen;
pub use sheet_file::{SheetFile, SheetRefused, bring_in, last_columns};
pub use told::{keep as keep_told, last as last_told};
pub use weather_ahead::{Day, Today};
