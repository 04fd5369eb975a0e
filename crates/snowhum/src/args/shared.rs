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
    #[arg(long, global = true)]
    pub(crate) json: bool,
    #[arg(long = "units", id = "units", global = true, value_enum, value_name = "UNITS")]
    pub(crate) asked_units: Option<Units>,
    /// The units that hold, once the records were asked.
    #[arg(skip)]
    pub(crate) units: Units,
    #[arg(long, global = true, value_enum, value_name = "LANGUAGE")]
    pub(crate) language: Option<Tag>,
    #[arg(long, global = true, value_enum, value_name = "WORDS")]
    pub(crate) words: Option<Words>,
    #[arg(long, global = true, value_name = "FILE")]
    pub(crate) store: Option<PathBuf>,
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
    #[default]
    Metric,
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
    British,
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
    #[value(name = "en-GB", alias = "en")]
    British,
    #[value(name = "en-US")]
    NorthAmerican,
    #[value(name = "de")]
    German,
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
    #[arg(long, value_name = "SERVICE", value_enum)]
    pub(crate) live: Option<LiveService>,
    #[arg(long, value_name = "ADDRESS")]
    pub(crate) contact: Option<String>,
    #[arg(long)]
    pub(crate) open_meteo_not_commercial: bool,
}

/// Services that foretell weather.
#[derive(Debug, Clone, Copy, ValueEnum)]
pub(crate) enum LiveService {
    MetNorway,
    Nws,
    OpenMeteo,
}

/// Which yard, and how its winter is computed.
#[derive(Debug, Clone, Args)]
pub(crate) struct YardArguments {
    #[arg(long, value_name = "FILE")]
    pub(crate) apiary: Option<PathBuf>,
    #[command(flatten)]
    pub(crate) run: RunArguments,
}

/// How a winter is computed.
#[derive(Debug, Clone, Args)]
pub(crate) struct RunArguments {
    #[arg(long, value_name = "FILE")]
    pub(crate) weather: Vec<PathBuf>,
    #[arg(long, value_name = "MAPPING")]
    pub(crate) columns: Option<String>,
    #[arg(long, value_name = "DATE", value_parser = parse_date)]
    pub(crate) as_of: Option<Date>,
    #[arg(long, value_name = "N", default_value_t = 1)]
    pub(crate) seed: u64,
    #[arg(long, value_name = "N", default_value_t = MEMBERS as u32, value_parser = clap::value_parser!(u32).range(8..=10_000))]
    pub(crate) members: u32,
    #[arg(long)]
    pub(crate) check: bool,
}

impl RunArguments {
    /// As it is computed where nothing else is said, for a day.
    pub(crate) fn usual(as_of: Option<Date>) -> Self {
        Self { weather: Vec::new(), columns: None, as_of, seed: 1, members: MEMBERS as u32, check: false }
    }
}
