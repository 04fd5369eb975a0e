//! `demo`: the invented yard's plan.

use crate::args::{Common, DemoArguments};
use crate::{commands::plan, sources};

pub(super) fn run(arguments: &DemoArguments, common: &Common) -> anyhow::Result<()> {
    plan::tell(&sources::demo()?, &arguments.run, common)
}
