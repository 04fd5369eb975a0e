//! `feed`: sugar for a shortage.

use clap::{Args, ValueEnum};
use jiff::civil::Date;
use snowhum_advice::sums::SumFault;
use snowhum_advice::sums::boxes::{box_named, standard_named, usual_box};
use snowhum_advice::sums::feed::{FeedQuestion, Season, feed};
use snowhum_apiary::{Apiary, HiveBox};
use snowhum_say::{feed_terminal as say, shared_terminal as shared};
use snowhum_units::{Bare, CubicMetre, Kilogram, Metre};

use crate::args::{Common, RunArguments, Written, parse_date};
use crate::commands::keeping::{self, OfYard};
use crate::commands::{note, plan, sum};
use crate::{exit, sources, text};

/// The usual hive where none is named.
const USUAL: &str = "Langstroth, 10 frames";

/// What is short.
#[derive(Debug, Args)]
pub(crate) struct FeedArguments {
    #[arg(value_name = "COLONY", required_unless_present = "short")]
    colony: Option<String>,
    #[arg(long, value_name = "MASS")]
    short: Option<Written<Kilogram>>,
    #[arg(long, value_enum)]
    season: Option<When>,
    #[arg(long, value_name = "DATE", value_parser = parse_date)]
    syrup_by: Option<Date>,
    #[arg(long, value_name = "DATE", value_parser = parse_date)]
    as_of: Option<Date>,
    #[arg(long, value_name = "VOLUME")]
    feeder: Option<Written<CubicMetre>>,
    #[arg(long, value_name = "HIVE", conflicts_with = "colony")]
    hive: Option<String>,
    #[arg(long = "box", value_name = "SIZE")]
    size: Option<String>,
    #[arg(long, value_name = "THICK")]
    slab: Option<Written<Metre>>,
    #[arg(long, value_name = "GIVEN", requires = "colony")]
    keep: Option<String>,
    #[command(flatten)]
    of: OfYard,
}

/// When it is fed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
enum When {
    Autumn,
    Winter,
    Spring,
}

pub(crate) fn run(arguments: &FeedArguments, common: &Common) -> anyhow::Result<()> {
    let given = arguments.keep.as_deref().map(|given| entries(given, arguments, common)).transpose()?;
    let question = match &arguments.colony {
        Some(name) => of_colony(name, arguments, common)?,
        None => of_hive(arguments, common)?,
    };
    let dates = [question.as_of, question.syrup_by];
    let answer = feed(&question).map_err(sum::fault)?;
    sum::say(&answer, common, |answer| text::feed::words(answer, dates))?;
    match (&arguments.colony, given) {
        (Some(name), Some(given)) => keeping::note_of(name, given, &arguments.of, common),
        _ => Ok(()),
    }
}

/// What was given, read before anything is computed.
fn entries(given: &str, arguments: &FeedArguments, common: &Common) -> anyhow::Result<Vec<snowhum_apiary::Entry>> {
    let (_, apiary) = keeping::yard(arguments.of.apiary.as_deref(), common)?;
    let name = arguments.colony.as_deref().unwrap_or_default();
    let colony = apiary.colonies[sources::place_of(&apiary, name)?].id;
    note::entries(&[format!("fed={given}")], &apiary, colony, Bare::In(common.units.into()))
}

/// A shortage as told, on a hive as named.
fn of_hive(arguments: &FeedArguments, common: &Common) -> anyhow::Result<FeedQuestion> {
    let system = common.units;
    let standard = standard_named(arguments.hive.as_deref().unwrap_or(USUAL)).map_err(sum::fault)?;
    let short = arguments.short.ok_or_else(|| exit::refused(say::short_wanted()))?;
    Ok(FeedQuestion {
        short: short.read(system),
        season: arguments.season.unwrap_or(When::Autumn).into(),
        as_of: arguments.as_of,
        syrup_by: arguments.syrup_by,
        feeder: arguments.feeder.map(|feeder| feeder.read(system)),
        hive: standard.name.clone(),
        hive_box: box_of(standard, arguments).map_err(sum::fault)?,
        slab: arguments.slab.map(|slab| slab.read(system)),
    })
}

fn box_of(standard: &snowhum_apiary::Standard, arguments: &FeedArguments) -> Result<HiveBox, SumFault> {
    match &arguments.size {
        Some(size) => box_named(standard, size),
        None => usual_box(standard),
    }
}

/// What a colony of the yard is short of by its plan, with its own hive and its site's dates.
fn of_colony(name: &str, arguments: &FeedArguments, common: &Common) -> anyhow::Result<FeedQuestion> {
    let apiary = sources::apiary(arguments.of.apiary.as_deref(), common)?;
    let at = sources::place_of(&apiary, name)?;
    let run = RunArguments::usual(arguments.as_of);
    let plan = plan::answer(&apiary, &run, common)?;
    let planned = plan.first.colonies.get(at).map(|first| first.short_kg);
    let short = arguments.short.map(|short| short.read(common.units)).or(planned.map(Kilogram::new));
    let short = short.filter(|short| short.get() > 0.0).ok_or_else(|| enough(name, &plan.as_of))?;
    let last = plan.colonies.get(at).map(|colony| colony.finish_syrup_by.p50);
    let hive = apiary.colonies.get(at).and_then(|colony| apiary.hive_of(colony));
    let hive = hive.ok_or_else(|| exit::refused(shared::no_hive(name)))?;
    let system = common.units;
    Ok(FeedQuestion {
        short,
        season: arguments.season.map_or_else(|| season(&apiary, plan.as_of, last), Season::from),
        as_of: Some(plan.as_of),
        syrup_by: arguments.syrup_by.or(last),
        feeder: arguments.feeder.map(|feeder| feeder.read(system)),
        hive: hive.standard.clone(),
        hive_box: match &arguments.size {
            Some(size) => standard_named(&hive.standard).and_then(|one| box_named(one, size)).map_err(sum::fault)?,
            None => hive.boxes.last().cloned().ok_or_else(|| exit::refused(say::no_box(name)))?,
        },
        slab: arguments.slab.map(|slab| slab.read(system)),
    })
}

/// A colony that nothing is short of is an answer, not a question.
fn enough(name: &str, as_of: &Date) -> anyhow::Error {
    exit::refused(say::enough(name, as_of.to_string()))
}

/// Syrup until its last day, solid feed through the cold, any feed once the year has turned to spring.
fn season(apiary: &Apiary, day: Date, last: Option<Date>) -> Season {
    let month = snowhum_advice::season_month(day, apiary.site.latitude.get());
    match month {
        4..=6 => Season::Spring,
        7..=12 if last.is_none_or(|last| day <= last) => Season::Autumn,
        _ => Season::Winter,
    }
}

impl From<When> for Season {
    fn from(when: When) -> Self {
        match when {
            When::Autumn => Self::Autumn,
            When::Winter => Self::Winter,
            When::Spring => Self::Spring,
        }
    }
}
