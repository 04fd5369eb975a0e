//! Arguments that several commands take.

use clap::{Args, ValueEnum};
use jiff::civil::Date;
use snowhum_advice::MEMBERS;
use snowhum_say::Language;
use std::path::PathBuf;

use super::written::parse_date;
use crate::commands::serve::lan::LanArguments;

/// Options of every command that answers.
#[derive(Debug, Clone, Args)]
pub(crate) struct Common {
    /// Print JSON on stdout instead of words.
    #[arg(long, global = true)]
    pub(crate) json: bool,
    /// Units of answers, and of numbers written without one; as chosen for the pages of the records, else metric.
    #[arg(long = "units", id = "units", global = true, value_enum, value_name = "UNITS")]
    pub(crate) asked_units: Option<Units>,
    /// The units that hold, once the records were asked.
    #[arg(skip)]
    pub(crate) units: Units,
    /// Language of answers; as chosen for the pages of the records, else British English. Pages are in it until another is
    /// chosen on them; without it in the browser's. German and French have not been read by a keeper of the tongue yet:
    /// cautions have their English text beside them. Help stands in English.
    #[arg(long, global = true, value_enum, value_name = "LANGUAGE")]
    pub(crate) language: Option<Tag>,
    /// Words of the trade in English; as chosen for the pages of the records, else British.
    #[arg(long, global = true, value_enum, value_name = "WORDS")]
    pub(crate) words: Option<Words>,
    /// The file the keeper's records are in; in the user's data folder if not given.
    #[arg(long, global = true, value_name = "FILE")]
    pub(crate) store: Option<PathBuf>,
    /// Threads to use; all cores if not given.
    #[arg(long, global = true, value_name = "N")]
    pub(crate) threads: Option<usize>,
}

impl Common {
    /// The language that was asked for, by its tag or by its words.
    pub(crate) fn asked_language(&self) -> Option<Language> {
        self.language.map(Language::from).or(self.words.map(Language::from))
    }
}

/// Units in words.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, ValueEnum)]
pub(crate) enum Units {
    /// Kilograms, litres, degrees Celsius.
    #[default]
    Metric,
    /// Pounds, US gallons, degrees Fahrenheit.
    Us,
}

impl From<Units> for snowhum_units::System {
    fn from(units: Units) -> Self {
        match units {
            Units::Metric => Self::Metric,
            Units::Us => Self::Us,
        }
    }
}

impl From<snowhum_units::System> for Units {
    fn from(system: snowhum_units::System) -> Self {
        match system {
            snowhum_units::System::Metric => Self::Metric,
            snowhum_units::System::Us => Self::Us,
        }
    }
}

/// Words of the trade.
#[derive(Debug, Clone, Copy, ValueEnum)]
pub(crate) enum Words {
    /// Floor, crownboard, roof.
    British,
    /// Bottom board, inner cover, outer cover.
    NorthAmerican,
}

impl From<Words> for Language {
    fn from(words: Words) -> Self {
        match words {
            Words::British => Self::British,
            Words::NorthAmerican => Self::NorthAmerican,
        }
    }
}

/// Languages by their tags.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(crate) enum Tag {
    /// English, as in Britain.
    #[value(name = "en-GB", alias = "en")]
    British,
    /// English, as in North America.
    #[value(name = "en-US")]
    NorthAmerican,
    /// German.
    #[value(name = "de")]
    German,
    /// French.
    #[value(name = "fr")]
    French,
}

impl From<Tag> for Language {
    fn from(tag: Tag) -> Self {
        match tag {
            Tag::British => Self::British,
            Tag::NorthAmerican => Self::NorthAmerican,
            Tag::German => Self::German,
            Tag::French => Self::French,
        }
    }
}

/// Which yard is served, and where its notes are kept.
#[derive(Debug, Args)]
pub(crate) struct ServeArguments {
    /// The port; 8462 or the next that is free if not given.
    #[arg(long, value_name = "PORT")]
    pub(crate) port: Option<u16>,
    #[command(flatten)]
    pub(crate) lan: LanArguments,
    #[command(flatten)]
    pub(crate) yard: YardArguments,
}

/// Live weather; nothing is asked of anybody unless a service is named.
#[derive(Debug, Clone, Args)]
pub(crate) struct LiveArguments {
    /// Ask this service for a forecast of the yard's place, kept in a cache; off if not given.
    #[arg(long, value_name = "SERVICE", value_enum)]
    pub(crate) live: Option<LiveService>,
    /// A mail address or site at which the service can reach you; MET Norway and the NWS ask for it.
    #[arg(long, value_name = "ADDRESS")]
    pub(crate) contact: Option<String>,
    /// Say that your use of Open-Meteo is not commercial, as its terms ask.
    #[arg(long)]
    pub(crate) open_meteo_not_commercial: bool,
}

/// Services that foretell weather.
#[derive(Debug, Clone, Copy, ValueEnum)]
pub(crate) enum LiveService {
    /// MET Norway: the whole world, about nine days.
    MetNorway,
    /// The National Weather Service: the United States.
    Nws,
    /// Open-Meteo.
    OpenMeteo,
}

/// Which yard, and how its winter is computed.
#[derive(Debug, Clone, Args)]
pub(crate) struct YardArguments {
    /// A yard file; else the yard of the records, else the invented demo yard.
    #[arg(long, value_name = "FILE")]
    pub(crate) apiary: Option<PathBuf>,
    #[command(flatten)]
    pub(crate) run: RunArguments,
}

/// How a winter is computed.
#[derive(Debug, Clone, Args)]
pub(crate) struct RunArguments {
    /// A weather file (EPW, ISD-lite, GHCN-Daily, or a station's CSV with --columns); more than one for more years.
    #[arg(long, value_name = "FILE")]
    pub(crate) weather: Vec<PathBuf>,
    /// What the columns of a station's CSV are, such as "time=Date,temperature=Temp:F"; where they stand apart
    /// "year=Y,month=M,day=D,hour=H,minute=Min" in place of the time. Its place: latitude, longitude and elevation.
    #[arg(long, value_name = "MAPPING")]
    pub(crate) columns: Option<String>,
    /// The day asked about. If not given, a plan is of the yard file's own day; where things stand now is of today, of an
    /// invented yard of its own day.
    #[arg(long, value_name = "DATE", value_parser = parse_date)]
    pub(crate) as_of: Option<Date>,
    /// Seed of all random numbers.
    #[arg(long, value_name = "N", default_value_t = 1)]
    pub(crate) seed: u64,
    /// Members of the ensemble for each colony.
    #[arg(long, value_name = "N", default_value_t = MEMBERS as u32, value_parser = clap::value_parser!(u32).range(8..=10_000))]
    pub(crate) members: u32,
    /// End with code 1 if a colony needs the keeper now: where its word is today or this week.
    #[arg(long)]
    pub(crate) check: bool,
}

impl RunArguments {
    /// As it is computed where nothing else is said, for a day.
    pub(crate) fn usual(as_of: Option<Date>) -> Self {
        Self { weather: Vec::new(), columns: None, as_of, seed: 1, members: MEMBERS as u32, check: false }
    }
}
