//! Arguments: one source for parsing, help and completions.

#[cfg(test)]
mod every;
pub(crate) mod help;
pub(crate) mod refused;
mod shared;
mod written;

pub(crate) use shared::{Common, LiveArguments, LiveService, RunArguments, ServeArguments, YardArguments};
pub(crate) use written::{Written, any_month, in_range, parse_date, plain};

use clap::{Args, Parser, Subcommand, ValueEnum};
use snowhum_say::arguments_terminal as text;
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
use crate::text::voice::in_words;

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
    /// snowhum demo
    Demo(DemoArguments),
    /// snowhum new my-yard.toml
    New {
        file: PathBuf,
    },
    /// snowhum check my-yard.toml
    Check {
        file: PathBuf,
    },
    /// snowhum plan --apiary my-yard.toml
    ///
    /// snowhum plan Alder
    Plan(PlanArguments),
    /// snowhum now --apiary my-yard.toml --as-of 2026-02-07
    Now(NowArguments),
    /// snowhum season --colony "Alder=8 frames; 14 kg; 3/300; laying" --gone Birch
    Season(SeasonArguments),
    /// snowhum note Alder "hum=heard by ear" "dead=30 on snow" --air -24
    Note(NoteArguments),
    /// snowhum undo Alder
    Undo(UndoArguments),
    /// snowhum import my-yard.toml
    ///
    /// snowhum import diary.xlsx --columns "date=Datum, hive=Volk"
    Import(BringArguments),
    /// snowhum export everything.json
    Export {
        to: PathBuf,
    },
    /// snowhum backup records-2026-01.db
    Backup {
        to: PathBuf,
    },
    /// snowhum restore records-2026-01.db
    Restore(RestoreArguments),
    SignInCode,
    /// snowhum doctor
    Doctor,
    /// snowhum hive Alder --outside -20
    Hive(HiveArguments),
    /// snowhum setup Larch --try "lid=50 mm foam" --try "upper hole=off"
    Setup(SetupArguments),
    /// snowhum dead-bees --found 30 --days 14 --snow
    DeadBees(DeadBeesArguments),
    /// snowhum mites Alder 14/300 --keep
    ///
    /// snowhum mites --found 9 --bees 300 --month 2026-08
    Mites(MitesArguments),
    /// snowhum feed Alder
    ///
    /// snowhum feed --short "8 kg" --syrup-by 2026-09-10 --as-of 2026-08-20
    Feed(FeedArguments),
    /// snowhum weigh Alder 19 16 --keep
    ///
    /// snowhum weigh --left "19 kg" --right "16 kg" --inset "2 cm" --hive "Langstroth 10"
    Weigh(WeighArguments),
    /// snowhum losses --season 2025
    ///
    /// snowhum losses --before 8 --dead 1 --queen-failed 1
    Losses(LossesArguments),
    /// snowhum deadout Larch --keep --sign small-cluster=yes --sign food-near=yes --sign spotty-brood=fairly-sure
    Deadout(DeadoutArguments),
    /// snowhum jobs --ics jobs.ics
    Jobs(JobsArguments),
    /// snowhum spring --as-of 2026-04-10
    Spring(YardArguments),
    /// snowhum treatments --csv
    Treatments(TreatmentsArguments),
    /// snowhum print --out papers
    Print(PrintArguments),
    /// snowhum tell Alder --out winter.html
    Tell(TellArguments),
    /// snowhum words crownboard
    Words {
        term: Option<String>,
    },
    /// snowhum serve --apiary my-yard.toml
    Serve(ServeArguments),
    #[command(subcommand)]
    Weather(WeatherCommand),
    #[cfg(feature = "club")]
    #[command(subcommand)]
    Club(crate::commands::club::ClubCommand),
    #[command(hide = true)]
    Generate(crate::commands::generate::GenerateArguments),
}

#[derive(Debug, Args)]
pub(crate) struct DemoArguments {
    #[arg(long)]
    pub(crate) no_serve: bool,
    #[arg(long, value_name = "PORT")]
    pub(crate) port: Option<u16>,
    #[command(flatten)]
    pub(crate) run: RunArguments,
}

#[derive(Debug, Args)]
pub(crate) struct HiveArguments {
    pub(crate) colony: String,
    #[arg(long, allow_hyphen_values = true, value_name = "T")]
    pub(crate) outside: Written<Kelvin>,
    #[arg(long, default_value_t = 80.0, value_parser = plain)]
    pub(crate) humidity: f64,
    #[arg(long, default_value = "1 m/s")]
    pub(crate) wind: Written<MetrePerSecond>,
    #[arg(long, value_name = "N", value_parser = plain)]
    pub(crate) bees: Option<f64>,
    #[arg(long, value_name = "N", default_value_t = 0.0, value_parser = plain)]
    pub(crate) brood_cells: f64,
    #[arg(long, value_enum, default_value_t = Start::Cold)]
    pub(crate) start: Start,
    #[arg(long, value_name = "W", value_parser = plain)]
    pub(crate) heater_w: Option<f64>,
    #[arg(long, value_name = "FILE")]
    pub(crate) svg: Option<PathBuf>,
    #[arg(long, value_name = "FILE")]
    pub(crate) apiary: Option<PathBuf>,
}

/// Which side a hive settles from.
#[derive(Debug, Clone, Copy, ValueEnum)]
pub(crate) enum Start {
    Cold,
    Warm,
}

#[derive(Debug, Args)]
pub(crate) struct SetupArguments {
    pub(crate) colony: String,
    #[arg(long = "try", value_name = "CHANGE", required = true)]
    pub(crate) tries: Vec<String>,
    #[command(flatten)]
    pub(crate) yard: YardArguments,
}

#[derive(Debug, Args)]
pub(crate) struct DeadBeesArguments {
    #[arg(long, value_name = "N")]
    pub(crate) found: u32,
    #[arg(long, value_name = "D", value_parser = parse_days)]
    pub(crate) days: f64,
    #[arg(long, value_name = "N", value_parser = parse_bees)]
    pub(crate) bees: Option<f64>,
    #[arg(long, value_name = "MONTH", default_value = "2026-01", value_parser = parse_month)]
    pub(crate) month: i8,
    #[arg(long)]
    pub(crate) snow: bool,
}

#[derive(Debug, Subcommand)]
pub(crate) enum WeatherCommand {
    /// snowhum weather show --apiary my-yard.toml
    Show(YardArguments),
    /// snowhum weather import station.csv --columns "time=Date,temperature=Temp:F", or "year=Year,month=Month,day=Day,hour=Hour,temperature=Temp:C"
    Import(ImportArguments),
    /// snowhum weather fetch --live met-norway --contact me@example.org
    Fetch(FetchArguments),
}

#[derive(Debug, Args)]
pub(crate) struct FetchArguments {
    #[arg(long, value_name = "FILE")]
    pub(crate) apiary: Option<PathBuf>,
    #[command(flatten)]
    pub(crate) live: LiveArguments,
}

#[derive(Debug, Args)]
pub(crate) struct ImportArguments {
    pub(crate) file: PathBuf,
    #[arg(long, value_name = "MAPPING")]
    pub(crate) columns: Option<String>,
    #[arg(long, value_name = "FILE")]
    pub(crate) out: Option<PathBuf>,
    #[arg(long, value_name = "FILE")]
    pub(crate) apiary: Option<PathBuf>,
}

fn parse_days(text: &str) -> Result<f64, String> {
    in_range(text, 0.04, 400.0, "days")
}

fn parse_bees(text: &str) -> Result<f64, String> {
    in_range(text, 50.0, 100_000.0, "bees")
}

fn parse_month(text: &str) -> Result<i8, String> {
    let month = any_month(text)?;
    if (5..=9).contains(&month) {
        return Err(in_words(&text::winter_alone()));
    }
    Ok(month)
}
