//! Arguments: one source for parsing, help and completions.

#[cfg(test)]
mod every;
mod shared;
mod written;

pub(crate) use shared::{Common, LiveArguments, LiveService, RunArguments, ServeArguments, YardArguments};
pub(crate) use written::{Written, any_month, in_range, parse_date, plain};

use clap::{Args, Parser, Subcommand, ValueEnum};
use snowhum_units::{Kelvin, MetrePerSecond};
use std::path::PathBuf;

use crate::commands::deadout::DeadoutArguments;
use crate::commands::feed::FeedArguments;
use crate::commands::import::BringArguments;
use crate::commands::jobs::JobsArguments;
use crate::commands::losses::LossesArguments;
use crate::commands::mites::MitesArguments;
use crate::commands::note::{NoteArguments, UndoArguments};
use crate::commands::now::NowArguments;
use crate::commands::plan::PlanArguments;
use crate::commands::print::PrintArguments;
use crate::commands::records::RestoreArguments;
use crate::commands::season::SeasonArguments;
use crate::commands::tell::TellArguments;
use crate::commands::treatments::TreatmentsArguments;
use crate::commands::weigh::WeighArguments;

/// Computes the winter of a beekeeper's colonies, from the first hard frost to the first flowers.
#[derive(Debug, Parser)]
#[command(name = "snowhum", version, max_term_width = 80, subcommand_required = true, arg_required_else_help = true)]
pub(crate) struct Arguments {
    #[command(subcommand)]
    pub(crate) command: Command,
    #[command(flatten)]
    pub(crate) common: Common,
}

#[derive(Debug, Subcommand)]
pub(crate) enum Command {
    /// Show the winter plan of an invented yard, then serve its pages.
    ///
    /// Example: snowhum demo
    Demo(DemoArguments),
    /// Write a commented yard file to fill in.
    ///
    /// Example: snowhum new my-yard.toml
    New {
        /// The file to write; it must not exist yet.
        file: PathBuf,
    },
    /// Read a yard file and list every fault at once.
    ///
    /// Example: snowhum check my-yard.toml
    Check {
        /// The yard file.
        file: PathBuf,
    },
    /// The winter ahead for each colony.
    ///
    /// Example: snowhum plan --apiary my-yard.toml
    ///
    /// Example: snowhum plan Alder
    Plan(PlanArguments),
    /// Where each colony stands now, from weather and notes, and what to do next.
    ///
    /// Example: snowhum now --apiary my-yard.toml --as-of 2026-02-07
    Now(NowArguments),
    /// A new autumn: last winter becomes history, the colonies that live are counted anew, and their winter is planned.
    ///
    /// Example: snowhum season --colony "Alder=8 frames; 14 kg; 3/300; laying" --gone Birch
    Season(SeasonArguments),
    /// Note what was seen or done at a colony.
    ///
    /// Example: snowhum note Alder "hum=heard by ear" "dead=30 on snow" --air -24
    Note(NoteArguments),
    /// Take back the last note, edit or undo at a colony.
    ///
    /// Example: snowhum undo Alder
    Undo(UndoArguments),
    /// Bring a yard file, an export or a sheet of notes into the records.
    ///
    /// Notes of a sheet are shown first, and kept with --keep.
    ///
    /// Example: snowhum import my-yard.toml
    ///
    /// Example: snowhum import diary.xlsx --columns "date=Datum, hive=Volk"
    Import(BringArguments),
    /// Write all records out: a JSON file, or a folder of CSV sheets.
    ///
    /// Example: snowhum export everything.json
    Export {
        /// A new file ending in .json, or a folder.
        to: PathBuf,
    },
    /// Copy the records, even while they are in use.
    ///
    /// Example: snowhum backup records-2026-01.db
    Backup {
        /// The copy; it must not exist yet.
        to: PathBuf,
    },
    /// Put a backup or an export in the place of the records; what was there is kept beside.
    ///
    /// Example: snowhum restore records-2026-01.db
    Restore(RestoreArguments),
    /// Tell a code that signs one browser in to `serve --lan`, once, within ten minutes.
    SignInCode,
    /// Look whether the records are in order.
    ///
    /// Example: snowhum doctor
    Doctor,
    /// One hive at steady weather: heat, air, water.
    ///
    /// Example: snowhum hive Alder --outside -20
    Hive(HiveArguments),
    /// Compare winter set-ups of a hive under the same weather.
    ///
    /// Example: snowhum setup Larch --try "lid=50 mm foam" --try "upper hole=off"
    Setup(SetupArguments),
    /// Is this many dead bees normal?
    ///
    /// Example: snowhum dead-bees --found 30 --days 14 --snow
    DeadBees(DeadBeesArguments),
    /// Mites in a sample: how many per 100 bees, how sure, against which line.
    ///
    /// Example: snowhum mites Alder 14/300 --keep
    ///
    /// Example: snowhum mites --found 9 --bees 300 --month 2026-08
    Mites(MitesArguments),
    /// Sugar for a shortage: litres of syrup, kilograms of solid feed, frames of stores.
    ///
    /// Example: snowhum feed Alder
    ///
    /// Example: snowhum feed --short "8 kg" --syrup-by 2026-09-10 --as-of 2026-08-20
    Feed(FeedArguments),
    /// A hive weighed: two sides lifted, one side as a trend, frames counted, or a scale.
    ///
    /// Example: snowhum weigh Alder 19 16 --keep
    ///
    /// Example: snowhum weigh --left "19 kg" --right "16 kg" --inset "2 cm" --hive "Langstroth 10"
    Weigh(WeighArguments),
    /// A winter's losses and lessons from the records; or one yard's counts, or the members of a club pooled.
    ///
    /// Example: snowhum losses --season 2025
    ///
    /// Example: snowhum losses --before 8 --dead 1 --queen-failed 1
    Losses(LossesArguments),
    /// Examine a dead colony: foulbrood first, then the likeliest causes and what can be used again.
    ///
    /// Asks at a terminal, or takes signs; with a colony's name its records answer too, and --keep puts it in them.
    /// Example: snowhum deadout Larch --keep --sign small-cluster=yes --sign food-near=yes --sign spotty-brood=fairly-sure
    Deadout(DeadoutArguments),
    /// What is due at this site, and when: the year's windows, and a calendar file of them.
    ///
    /// Example: snowhum jobs --ics jobs.ics
    Jobs(JobsArguments),
    /// Spring: which hive to lift first, when to open, what to look for, what to feed.
    ///
    /// Example: snowhum spring --as-of 2026-04-10
    Spring(YardArguments),
    /// The record of treatments given, as an inspector asks for it.
    /// Example: snowhum treatments --csv
    Treatments(TreatmentsArguments),
    /// Write the sheets for paper as files: yard sheet, round sheet, hive cards, treatments, season.
    /// Example: snowhum print --out papers
    Print(PrintArguments),
    /// Tell the winter of a hive or of the yard as a film: one file that needs no network and names no place.
    /// Example: snowhum tell Alder --out winter.html
    Tell(TellArguments),
    /// The words of the trade, British and North American, with what they mean.
    /// Example: snowhum words crownboard
    Words {
        /// A word to look for; all of them if not given.
        term: Option<String>,
    },
    /// Serve the pages of a yard: look, note, plan in a browser, here or with --lan on a phone in the yard.
    ///
    /// Example: snowhum serve --apiary my-yard.toml
    Serve(ServeArguments),
    /// The weather the answers stand on.
    #[command(subcommand)]
    Weather(WeatherCommand),
    /// The yards of a club on PostgreSQL, and their nights, computed on any number of machines.
    #[cfg(feature = "club")]
    #[command(subcommand)]
    Club(crate::commands::club::ClubCommand),
    #[command(hide = true)]
    Generate(crate::commands::generate::GenerateArguments),
}

#[derive(Debug, Args)]
pub(crate) struct DemoArguments {
    /// Stop after printing the plan.
    #[arg(long)]
    pub(crate) no_serve: bool,
    /// The port of the pages; 8462 or the next that is free if not given.
    #[arg(long, value_name = "PORT")]
    pub(crate) port: Option<u16>,
    #[command(flatten)]
    pub(crate) run: RunArguments,
}

#[derive(Debug, Args)]
pub(crate) struct HiveArguments {
    /// The colony's name.
    pub(crate) colony: String,
    /// Outdoor air, such as "-20 C" or "5 F"; a bare number is in your --units.
    #[arg(long, allow_hyphen_values = true, value_name = "T")]
    pub(crate) outside: Written<Kelvin>,
    /// Outdoor relative humidity in percent, over ice below 0 °C.
    #[arg(long, default_value_t = 80.0, value_parser = plain)]
    pub(crate) humidity: f64,
    /// Wind at the hive, such as "3 m/s" or "7 mph"; a bare number is in your --units.
    #[arg(long, default_value = "1 m/s")]
    pub(crate) wind: Written<MetrePerSecond>,
    /// Grown bees; the colony's own number if not given.
    #[arg(long, value_name = "N", value_parser = plain)]
    pub(crate) bees: Option<f64>,
    /// Cells of brood.
    #[arg(long, value_name = "N", default_value_t = 0.0, value_parser = plain)]
    pub(crate) brood_cells: f64,
    /// Which side the hive settles from.
    #[arg(long, value_enum, default_value_t = Start::Cold)]
    pub(crate) start: Start,
    /// A plain heater of so many watts in place of the colony.
    #[arg(long, value_name = "W", value_parser = plain)]
    pub(crate) heater_w: Option<f64>,
    /// Draw the hive cut open into this file, as SVG; it must not exist yet.
    #[arg(long, value_name = "FILE")]
    pub(crate) svg: Option<PathBuf>,
    /// A yard file; else the yard of the records, else the invented demo yard.
    #[arg(long, value_name = "FILE")]
    pub(crate) apiary: Option<PathBuf>,
}

/// Which side a hive settles from.
#[derive(Debug, Clone, Copy, ValueEnum)]
pub(crate) enum Start {
    /// The hive as cold as outdoors.
    Cold,
    /// The hive at 20 °C.
    Warm,
}

#[derive(Debug, Args)]
pub(crate) struct SetupArguments {
    /// The colony's name.
    pub(crate) colony: String,
    /// A change to try, such as "lid=50 mm foam", "upper hole=off", "wrap=felt paper"; several joined by ";".
    #[arg(long = "try", value_name = "CHANGE", required = true)]
    pub(crate) tries: Vec<String>,
    #[command(flatten)]
    pub(crate) yard: YardArguments,
}

#[derive(Debug, Args)]
pub(crate) struct DeadBeesArguments {
    /// Dead bees counted outside.
    #[arg(long, value_name = "N")]
    pub(crate) found: u32,
    /// Days since the last look, or since snow covered the old ones.
    #[arg(long, value_name = "D", value_parser = parse_days)]
    pub(crate) days: f64,
    /// Bees of the colony, if known.
    #[arg(long, value_name = "N", value_parser = parse_bees)]
    pub(crate) bees: Option<f64>,
    /// The month, such as 2026-01.
    #[arg(long, value_name = "MONTH", default_value = "2026-01", value_parser = parse_month)]
    pub(crate) month: i8,
    /// They lie on snow.
    #[arg(long)]
    pub(crate) snow: bool,
}

#[derive(Debug, Subcommand)]
pub(crate) enum WeatherCommand {
    /// What weather the answers for a yard stand on, month by month.
    ///
    /// Example: snowhum weather show --apiary my-yard.toml
    Show(YardArguments),
    /// Read a weather file, say what is in it and what had to be filled, and write it out as plain hours.
    ///
    /// Examples: snowhum weather import station.csv --columns "time=Date,temperature=Temp:F", or
    /// "year=Year,month=Month,day=Day,hour=Hour,temperature=Temp:C"
    Import(ImportArguments),
    /// Ask a service for a forecast of the yard's place now, and keep it.
    ///
    /// Example: snowhum weather fetch --live met-norway --contact me@example.org
    Fetch(FetchArguments),
}

#[derive(Debug, Args)]
pub(crate) struct FetchArguments {
    /// A yard file for the place; else the yard of the records, else the invented demo yard.
    #[arg(long, value_name = "FILE")]
    pub(crate) apiary: Option<PathBuf>,
    #[command(flatten)]
    pub(crate) live: LiveArguments,
}

#[derive(Debug, Args)]
pub(crate) struct ImportArguments {
    /// The file.
    pub(crate) file: PathBuf,
    /// What the columns of a station's CSV are, as for --weather.
    #[arg(long, value_name = "MAPPING")]
    pub(crate) columns: Option<String>,
    /// Where to write the completed hours as CSV.
    #[arg(long, value_name = "FILE")]
    pub(crate) out: Option<PathBuf>,
    /// A yard file for the place and time zone; the invented demo yard if not given.
    #[arg(long, value_name = "FILE")]
    pub(crate) apiary: Option<PathBuf>,
}

fn parse_days(text: &str) -> Result<f64, String> {
    in_range(text, 0.04, 400.0, "a number of days, such as 14")
}

fn parse_bees(text: &str) -> Result<f64, String> {
    in_range(text, 50.0, 100_000.0, "a number of bees, such as 12000")
}

fn parse_month(text: &str) -> Result<i8, String> {
    let month = any_month(text)?;
    if (5..=9).contains(&month) {
        return Err("only winter is answered, October to April; in the south give the month six months away".to_owned());
    }
    Ok(month)
}
