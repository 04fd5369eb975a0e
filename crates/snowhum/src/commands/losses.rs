//! `losses`: a winter's losses, and what they say.

use std::path::{Path, PathBuf};

use clap::{ArgGroup, Args};
use snowhum_advice::sums::losses::{Counted, LossesQuestion, Operation, YardCount, losses};

use crate::args::Common;
use crate::commands::sum;
use crate::{exit, text};

/// Largest club file that is read.
const LARGEST_FILE: u64 = 10_000_000;

/// Who counted what.
#[derive(Debug, Args)]
#[command(group(ArgGroup::new("who").required(true).args(["before", "member", "club"]).multiple(true)))]
pub(crate) struct LossesArguments {
    /// Colonies that went into winter, of one yard.
    #[arg(long, value_name = "N", conflicts_with_all = ["member", "club"])]
    before: Option<u32>,
    /// Bought or split since.
    #[arg(long, value_name = "N", default_value_t = 0)]
    added: u32,
    /// Sold or united since.
    #[arg(long, value_name = "N", default_value_t = 0)]
    removed: u32,
    /// Dead, empty, or too small to be a colony.
    #[arg(long, value_name = "N", default_value_t = 0)]
    dead: u32,
    /// Alive with a queen problem that cannot be mended.
    #[arg(long, value_name = "N", default_value_t = 0)]
    queen_failed: u32,
    /// Taken by fire, flood, fall, bear, theft.
    #[arg(long, value_name = "N", default_value_t = 0)]
    disaster: u32,
    /// Alive but weak: not lost.
    #[arg(long, value_name = "N", default_value_t = 0)]
    weak: u32,
    /// One member of a club: NAME=LOST/COLONIES.
    #[arg(long, value_name = "MEMBER")]
    member: Vec<String>,
    /// A club's winter as CSV: name, colonies at risk, colonies lost.
    #[arg(long, value_name = "FILE")]
    club: Option<PathBuf>,
    /// What a colony costs to replace.
    #[arg(long, value_name = "MONEY")]
    colony_price: Option<f64>,
    /// What a colony would have earned this season.
    #[arg(long, value_name = "MONEY", requires = "colony_price")]
    season_worth: Option<f64>,
    /// Your money.
    #[arg(long, value_name = "CODE", default_value = "EUR")]
    currency: String,
}

pub(crate) fn run(arguments: &LossesArguments, common: &Common) -> anyhow::Result<()> {
    let counted = match arguments.before {
        Some(before) => Counted::Yard(yard(arguments, before)),
        None => Counted::Club(members(arguments)?),
    };
    let question = LossesQuestion {
        counted,
        colony_price: arguments.colony_price,
        season_worth: arguments.season_worth,
        currency: arguments.currency.clone(),
    };
    let answer = losses(&question).map_err(sum::fault)?;
    sum::say(&answer, common, text::losses::words)
}

fn yard(arguments: &LossesArguments, before: u32) -> YardCount {
    YardCount {
        before,
        added: arguments.added,
        removed: arguments.removed,
        dead: arguments.dead,
        queen_failed: arguments.queen_failed,
        disaster: arguments.disaster,
        weak: arguments.weak,
    }
}

fn members(arguments: &LossesArguments) -> anyhow::Result<Vec<Operation>> {
    let mut members = match &arguments.club {
        Some(path) => club(path)?,
        None => Vec::new(),
    };
    for text in &arguments.member {
        let wrong = || exit::input(format!("--member \"{text}\": write NAME=LOST/COLONIES, such as Ann=1/5"));
        let (name, counts) = text.rsplit_once('=').ok_or_else(wrong)?;
        let (lost, colonies) = counts.split_once('/').ok_or_else(wrong)?;
        members.push(operation(name, colonies, lost).ok_or_else(wrong)?);
    }
    Ok(members)
}

/// Reads a club's file; a first line that is no member is a heading.
fn club(path: &Path) -> anyhow::Result<Vec<Operation>> {
    let unread = |error: std::io::Error| exit::input(format!("{}: {error}", path.display()));
    if std::fs::metadata(path).map_err(unread)?.len() > LARGEST_FILE {
        return Err(exit::input(format!("{}: larger than any club's list", path.display())));
    }
    let text = std::fs::read_to_string(path).map_err(unread)?;
    let mut members = Vec::new();
    for (at, line) in text.trim_start_matches('\u{feff}').lines().enumerate() {
        if line.trim().is_empty() {
            continue;
        }
        let cells: Vec<&str> = line.split([',', ';', '\t']).map(|cell| cell.trim().trim_matches('"')).collect();
        let read = if let [name, colonies, lost] = cells[..] { operation(name, colonies, lost) } else { None };
        match read {
            Some(member) => members.push(member),
            None if at == 0 => {}
            None => {
                let words = "write name, colonies at risk, colonies lost, such as Ann,5,1";
                return Err(exit::input(format!("{}, line {}: \"{line}\": {words}", path.display(), at + 1)));
            }
        }
    }
    Ok(members)
}

fn operation(name: &str, colonies: &str, lost: &str) -> Option<Operation> {
    let count = |text: &str| text.trim().parse::<u32>().ok();
    let name = name.trim();
    (!name.is_empty()).then_some(())?;
    Some(Operation { name: name.to_owned(), colonies: count(colonies)?, lost: count(lost)? })
}
