//! `demo`: the invented yard's plan, then its pages.

use crate::args::{Common, DemoArguments, ServeArguments, YardArguments};
use crate::commands::plan::ToldArguments;
use crate::commands::serve::lan::LanArguments;
use crate::commands::{plan, serve};
use crate::sources;

pub(super) fn run(arguments: &DemoArguments, common: &Common) -> anyhow::Result<()> {
    plan::tell(&sources::demo()?, &arguments.run, &ToldArguments::default(), common)?;
    if arguments.no_serve || common.json {
        return Ok(());
    }
    let yard = YardArguments { apiary: None, run: arguments.run.clone() };
    serve::run_demo(&ServeArguments { port: arguments.port, lan: LanArguments::default(), yard }, common)
}
