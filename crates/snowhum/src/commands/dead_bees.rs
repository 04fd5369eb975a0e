//! `dead-bees`: is this many normal?

use snowhum_advice::dead_bees::{DeadBeesQuestion, Ground, dead_bees};
use snowhum_winter::Parameters;

use crate::args::{Common, DeadBeesArguments};
use crate::text;

pub(super) fn run(arguments: &DeadBeesArguments, common: &Common) -> anyhow::Result<()> {
    let question = DeadBeesQuestion {
        found: arguments.found,
        days: arguments.days,
        bees: arguments.bees,
        month: arguments.month,
        ground: if arguments.snow { Ground::Snow } else { Ground::Bare },
    };
    let answer = dead_bees(&question, &Parameters::shipped()?, &snowhum_watch::Parameters::shipped()?);
    if common.json {
        text::say(&serde_json::to_string_pretty(&answer)?)?;
    } else {
        text::say(&text::dead_bees::words(&answer, question.days))?;
    }
    Ok(())
}
