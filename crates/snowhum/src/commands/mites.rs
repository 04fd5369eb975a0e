//! `mites`: how many mites, and how sure.

use clap::{Args, ValueEnum};
use jiff::civil::Date;
use snowhum_advice::season_month;
use snowhum_advice::site::mite_region;
use snowhum_advice::sums::mites::{Counted, MitesQuestion, Sample, mites, of_yard};
use snowhum_apiary::{Act, Entry};
use snowhum_say::{Message, mites_terminal as say, shared_terminal as shared};
use snowhum_units::Bare;

use crate::args::{Common, any_month, in_range};
use crate::commands::keeping::{self, OfYard};
use crate::commands::{note, sum};
use crate::text::voice::in_words;
use crate::{exit, progress, sources, text};

/// What was counted.
#[derive(Debug, Args)]
pub(crate) struct MitesArguments {
    #[arg(value_name = "COLONY", conflicts_with_all = ["found", "sample"])]
    colony: Option<String>,
    #[arg(value_name = "MITES/BEES")]
    count: Option<String>,
    #[arg(long, value_name = "N", conflicts_with = "sample")]
    found: Option<u32>,
    #[arg(long, value_name = "N", default_value_t = 300)]
    bees: u32,
    #[arg(long, value_enum, default_value_t = Method::Wash)]
    method: Method,
    #[arg(long, value_name = "D", value_parser = days)]
    days: Option<f64>,
    #[arg(long, value_name = "SAMPLE")]
    sample: Vec<String>,
    #[arg(long, value_name = "REGION")]
    region: Option<String>,
    #[arg(long, value_name = "MONTH", value_parser = any_month)]
    month: Option<i8>,
    #[arg(long, requires = "count")]
    keep: bool,
    #[command(flatten)]
    of: OfYard,
}

/// How mites are counted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
enum Method {
    Wash,
    Roll,
    Board,
}

pub(crate) fn run(arguments: &MitesArguments, common: &Common) -> anyhow::Result<()> {
    let mut samples: Vec<Sample> =
        arguments.sample.iter().map(|text| named(text, arguments)).collect::<anyhow::Result<_>>()?;
    if let Some(found) = arguments.found {
        let colony = in_words(&say::the_colony());
        samples.push(Sample { colony, found, by: counted(arguments, arguments.bees, arguments.days)? });
    }
    match (&arguments.colony, &arguments.count) {
        (Some(name), Some(count)) => return of_colony(name, count, arguments, common),
        (Some(name), None) => {
            return Err(exit::refused(say::what_counted(name)));
        }
        _ if samples.is_empty() => return yard(arguments, common),
        _ => {}
    }
    let question = MitesQuestion { samples, region: arguments.region.clone(), month: arguments.month };
    let answer = mites(&question).map_err(sum::fault)?;
    sum::say(&answer, common, text::mites::words)
}

/// A count at a colony of the yard, against the line of its region and month.
fn of_colony(name: &str, count: &str, arguments: &MitesArguments, common: &Common) -> anyhow::Result<()> {
    let apiary = sources::apiary(arguments.of.apiary.as_deref(), common)?;
    let colony = &apiary.colonies[sources::place_of(&apiary, name)?];
    let entries = note::entries(&[format!("mites={count}")], &apiary, colony.id, Bare::In(common.units.into()))?;
    let [Entry::Act(Act::MitesCounted { found, bees })] = entries[..] else {
        return Err(exit::refused(say::wrong_count(count)));
    };
    let at = arguments.of.at.as_deref().map(|written| note::moment(written, &apiary)).transpose()?;
    let day = note::day_of(&apiary, at)?;
    let by = counted(arguments, bees, arguments.days)?;
    let question = MitesQuestion {
        samples: vec![Sample { colony: colony.name.clone(), found, by }],
        region: arguments.region.clone().or_else(|| mite_region(&apiary.site)),
        month: arguments.month.or(Some(season_month(day, apiary.site.latitude.get()))),
    };
    let answer = mites(&question).map_err(sum::fault)?;
    sum::say(&answer, common, text::mites::words)?;
    if arguments.keep { keeping::note_of(name, entries, &arguments.of, common) } else { Ok(()) }
}

/// The counts of a yard file, the worst first, and who was not counted.
fn yard(arguments: &MitesArguments, common: &Common) -> anyhow::Result<()> {
    let apiary = sources::apiary(arguments.of.apiary.as_deref(), common)?;
    let none = || exit::refused(say::nobody_counted(&apiary.name));
    let counted = of_yard(&apiary, arguments.region.clone(), arguments.month, None).ok_or_else(none)?;
    let answer = counted.map_err(sum::fault)?;
    let uncounted = apiary.colonies.iter().filter(|colony| apiary.last_mite_count(colony, Date::MAX).is_none());
    let uncounted: Vec<Message> = uncounted.map(|colony| Message::from(&colony.name)).collect();
    if !uncounted.is_empty() {
        progress::note(say::not_counted(uncounted));
    }
    sum::say(&answer, common, text::mites::words)
}

fn counted(arguments: &MitesArguments, bees: u32, days: Option<f64>) -> anyhow::Result<Counted> {
    let missing = || exit::refused(say::days_wanted());
    Ok(match arguments.method {
        Method::Wash => Counted::Wash { bees },
        Method::Roll => Counted::Roll { bees },
        Method::Board => Counted::Board { days: days.ok_or_else(missing)? },
    })
}

/// A sample as `NAME=MITES/BEES`, or `NAME=MITES` with the sample size of all.
fn named(text: &str, arguments: &MitesArguments) -> anyhow::Result<Sample> {
    let wrong = || exit::refused(shared::wrong_option("--sample", say::sample_right(), text));
    let (name, counts) = text.rsplit_once('=').ok_or_else(wrong)?;
    let (found, of) = counts.split_once('/').map_or((counts, None), |(found, of)| (found, Some(of)));
    let found = found.trim().parse().map_err(|_| wrong())?;
    if name.trim().is_empty() {
        return Err(wrong());
    }
    let by = match (arguments.method, of) {
        (Method::Board, Some(of)) => counted(arguments, 0, Some(days(of.trim()).map_err(exit::input)?))?,
        (_, Some(of)) => counted(arguments, of.trim().parse().map_err(|_| wrong())?, None)?,
        (_, None) => counted(arguments, arguments.bees, arguments.days)?,
    };
    Ok(Sample { colony: name.trim().to_owned(), found, by })
}

fn days(text: &str) -> Result<f64, String> {
    in_range(text, 0.2, 60.0, "days")
}
