//! `losses`: a winter's losses, and what they say.

use std::path::{Path, PathBuf};

use clap::Args;
use jiff::Timestamp;
use snowhum_advice::lessons::{Forecast, LessonsQuestion, foretold, lessons};
use snowhum_advice::sums::losses::{Counted, LossesQuestion, Operation, OwnWinter, YardCount, losses};
use snowhum_say::{losses_terminal as own, shared_terminal as shared};

use crate::args::{Common, RunArguments, YardArguments, plain};
use crate::commands::records::shown;
use crate::commands::sum;
use crate::weather_source::Weather;
use crate::{exit, progress, sources, text, weather_source};

/// Largest club file that is read.
const LARGEST_FILE: u64 = 10_000_000;

/// Most colonies counted of one yard, beyond any that there is.
const MOST: i64 = 10_000;

/// Reads a number of colonies.
fn colonies() -> clap::builder::RangedI64ValueParser<u32> {
    clap::value_parser!(u32).range(0..=MOST)
}

/// Who counted what.
#[derive(Debug, Args)]
pub(crate) struct LossesArguments {
    #[arg(long, value_name = "YEAR", conflicts_with_all = ["before", "member", "club"])]
    season: Option<i16>,
    #[command(flatten)]
    yard: YardArguments,
    #[arg(long, value_name = "N", value_parser = colonies(), conflicts_with_all = ["member", "club"])]
    before: Option<u32>,
    #[arg(long, value_name = "N", value_parser = colonies(), default_value_t = 0)]
    added: u32,
    #[arg(long, value_name = "N", value_parser = colonies(), default_value_t = 0)]
    removed: u32,
    #[arg(long, value_name = "N", value_parser = colonies(), default_value_t = 0, requires = "before")]
    dead: u32,
    #[arg(long, value_name = "N", value_parser = colonies(), default_value_t = 0, requires = "before")]
    queen_failed: u32,
    #[arg(long, value_name = "N", value_parser = colonies(), default_value_t = 0, requires = "before")]
    disaster: u32,
    #[arg(long, value_name = "N", value_parser = colonies(), default_value_t = 0, requires = "before")]
    weak: u32,
    #[arg(long, value_name = "WINTER", requires = "before")]
    earlier: Vec<String>,
    #[arg(long, value_name = "MEMBER")]
    member: Vec<String>,
    #[arg(long, value_name = "FILE")]
    club: Option<PathBuf>,
    #[arg(long, value_name = "MONEY", value_parser = plain)]
    colony_price: Option<f64>,
    #[arg(long, value_name = "MONEY", requires = "colony_price", value_parser = plain)]
    season_worth: Option<f64>,
    #[arg(long, value_name = "CODE", default_value = "EUR")]
    currency: String,
}

impl LossesArguments {
    /// Whether the records are asked, since nobody's counts are given.
    fn asks_records(&self) -> bool {
        self.before.is_none() && self.member.is_empty() && self.club.is_none()
    }
}

pub(crate) fn run(arguments: &LossesArguments, common: &Common) -> anyhow::Result<()> {
    if arguments.asks_records() {
        return of_records(arguments, common);
    }
    let (counted, winters) = match arguments.before {
        Some(before) => {
            let count = yard(arguments, before);
            let mut winters = earlier(arguments)?;
            winters.push(count.own_winter());
            (Counted::Yard(count), winters)
        }
        None => (Counted::Club(members(arguments)?), Vec::new()),
    };
    let question = LossesQuestion {
        counted,
        winters,
        colony_price: arguments.colony_price,
        season_worth: arguments.season_worth,
        currency: arguments.currency.clone(),
    };
    let answer = losses(&question).map_err(sum::fault)?;
    sum::say(&answer, common, text::losses::words)
}

/// A winter's losses and lessons, out of the records.
fn of_records(arguments: &LossesArguments, common: &Common) -> anyhow::Result<()> {
    let apiary = sources::apiary(arguments.yard.apiary.as_deref(), common)?;
    // A winter that is over is told, and its forecast made, of the yard as it was then.
    let apiary = match arguments.season {
        Some(year) => apiary.in_winter(year).into_owned(),
        None => apiary,
    };
    let run = &arguments.yard.run;
    let as_of = match run.as_of {
        Some(day) => day,
        // An invented yard stands where its log ends.
        None => {
            let last = apiary.notes.iter().map(|note| note.at).max().filter(|_| apiary.invented);
            weather_source::zone(&apiary.site)?.to_datetime(last.unwrap_or_else(Timestamp::now)).date()
        }
    };
    let from_count = RunArguments { as_of: Some(apiary.as_of), ..run.clone() };
    let (weather, _) = progress::during(shared::reading_weather(), || Weather::resolve(&apiary, &from_count))?;
    weather.tell_far();
    let mut question = LessonsQuestion {
        apiary: &apiary,
        as_of,
        season: arguments.season,
        spring: weather.spring,
        added: arguments.added,
        removed: arguments.removed,
        forecasts: &[],
    };
    let mut answer = lessons(&question).map_err(sum::fault)?;
    let forecasts: Vec<Forecast>;
    if answer.can_be_scored() {
        let parameters = snowhum_winter::Parameters::shipped()?;
        let moved = weather.moved(&apiary);
        let plan = weather.question(&moved, &parameters, &from_count);
        forecasts = progress::during(shared::computing_expected(), || foretold(&plan));
        question.forecasts = &forecasts;
        answer = lessons(&question).map_err(sum::fault)?;
    }
    sum::say(&answer, common, text::lessons::words)
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

/// Earlier winters, of which no cause is told.
fn earlier(arguments: &LossesArguments) -> anyhow::Result<Vec<OwnWinter>> {
    let one = |text: &String| {
        let read = text.split_once('/').and_then(|(lost, colonies)| operation("earlier", colonies, lost));
        let read = read.filter(|one| one.lost <= one.colonies && i64::from(one.colonies) <= MOST);
        let wrong = || exit::refused(shared::wrong_option("--earlier", own::earlier_right(MOST), text));
        read.map(|one| OwnWinter { at_risk: one.colonies, lost: one.lost, cause_not_told: one.lost }).ok_or_else(wrong)
    };
    arguments.earlier.iter().map(one).collect()
}

fn members(arguments: &LossesArguments) -> anyhow::Result<Vec<Operation>> {
    let mut members = match &arguments.club {
        Some(path) => club(path)?,
        None => Vec::new(),
    };
    for text in &arguments.member {
        let wrong = || exit::refused(shared::wrong_option("--member", own::member_right(), text));
        let (name, counts) = text.rsplit_once('=').ok_or_else(wrong)?;
        let (lost, colonies) = counts.split_once('/').ok_or_else(wrong)?;
        members.push(operation(name, colonies, lost).ok_or_else(wrong)?);
    }
    Ok(members)
}

/// Reads a club's file; a first line that is no member is a heading.
fn club(path: &Path) -> anyhow::Result<Vec<Operation>> {
    let unread = |error: std::io::Error| sources::unreadable(path, &error);
    if std::fs::metadata(path).map_err(unread)?.len() > LARGEST_FILE {
        return Err(exit::refused(own::too_large(shown(path))));
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
            None => return Err(exit::refused(own::line(shown(path), at + 1, line))),
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
