//! `season`: a new autumn, from a yard of last year to this winter's plan.

use std::io::{self, BufRead, IsTerminal, Write};
use std::path::PathBuf;

use clap::Args;
use jiff::Timestamp;
use jiff::civil::Date;
use snowhum_advice::lessons::Fate;
use snowhum_apiary::{Apiary, AutumnCount, Wrong, season_text, winter_year};
use snowhum_say::{Message, fault, season_terminal as say};
use snowhum_units::Bare;

use super::keeping::Book;
use super::plan::{self, ToldArguments};
use crate::args::{Common, RunArguments, parse_date};
use crate::text::voice::in_words;
use crate::{exit, keep, new_file, progress, sources, weather_source};

/// What was found in the new autumn.
#[derive(Debug, Args)]
pub(crate) struct SeasonArguments {
    #[arg(long = "colony", value_name = "COUNT")]
    look: Vec<String>,
    #[arg(long, value_name = "NAME")]
    gone: Vec<String>,
    #[arg(long, value_name = "DATE", value_parser = parse_date)]
    as_of: Option<Date>,
    #[arg(long, value_name = "FILE", requires = "out")]
    apiary: Option<PathBuf>,
    #[arg(long, value_name = "FILE", requires = "apiary")]
    out: Option<PathBuf>,
}

pub(super) fn run(arguments: &SeasonArguments, common: &Common) -> anyhow::Result<()> {
    let (book, apiary) = super::keeping::yard(arguments.apiary.as_deref(), common)?;
    let as_of = match arguments.as_of {
        Some(day) => day,
        None => weather_source::zone(&apiary.site)?.to_datetime(Timestamp::now()).date(),
    };
    let standing = standing(&apiary, arguments)?;
    let counts = counts(&apiary, arguments, &standing)?;
    let next = apiary
        .next_autumn(as_of, &counts, Bare::In(common.units.into()))
        .map_err(|faults| exit::refused(Message::lines(faults.iter().map(|fault| fault.message()))))?;
    match &book {
        Book::Records(path) => {
            keep::with_store(path, async |store| {
                store.import_yard(&next, Timestamp::now()).await.map(drop).map_err(keep::failure)
            })?;
        }
        Book::File(last) => write(last, arguments, &next, &counts)?,
    }
    let left = left(&apiary, &next);
    let history = say::history(winter_year(apiary.as_of, apiary.site.latitude).to_string());
    let left = if left.is_empty() { Message::NONE } else { say::left(left) };
    progress::note(Message::sentences([history, left]));
    plan::tell(&next, &RunArguments::usual(None), &ToldArguments::default(), common)
}

fn left(apiary: &Apiary, next: &Apiary) -> Vec<Message> {
    let stays = |id| next.colonies.iter().any(|colony| colony.id == id);
    apiary.colonies.iter().filter(|colony| !stays(colony.id)).map(|colony| Message::from(&colony.name)).collect()
}

/// The colonies that may stand in the new autumn: those that are not told dead, sold, united or taken.
fn standing<'a>(apiary: &'a Apiary, arguments: &SeasonArguments) -> anyhow::Result<Vec<&'a str>> {
    let gone: Vec<usize> =
        arguments.gone.iter().map(|name| sources::place_of(apiary, name)).collect::<anyhow::Result<_>>()?;
    let fates = snowhum_advice::lessons::fates(apiary);
    let lives = |at: &usize| {
        !gone.contains(at)
            && fates
                .get(*at)
                .is_none_or(|fate| matches!(fate, Fate::Alive | Fate::Weak | Fate::QueenFailed | Fate::NotTold))
    };
    let places = 0..apiary.colonies.len();
    Ok(places.filter(lives).map(|at| apiary.colonies[at].name.as_str()).collect())
}

/// The counts given; of a colony that none is given of, asked for at a terminal.
fn counts(apiary: &Apiary, arguments: &SeasonArguments, standing: &[&str]) -> anyhow::Result<Vec<AutumnCount>> {
    let read = |line: &String| {
        let wrong = |wrong: Wrong| exit::refused(fault::at("--colony", wrong.message()));
        AutumnCount::of_line(line).map_err(wrong)
    };
    let mut counts = arguments.look.iter().map(read).collect::<anyhow::Result<Vec<_>>>()?;
    let same = |count: &AutumnCount, name: &str| count.name.to_lowercase() == name.to_lowercase();
    let missing: Vec<&str> =
        standing.iter().copied().filter(|name| !counts.iter().any(|count| same(count, name))).collect();
    if missing.is_empty() {
        return Ok(counts);
    }
    if !io::stdin().is_terminal() {
        return Err(exit::refused(asks(apiary, &missing)));
    }
    for name in missing {
        counts.extend(asked(name).map_err(exit::environment)?);
    }
    Ok(counts)
}

/// What is missing, and the one step.
fn asks(apiary: &Apiary, missing: &[&str]) -> Message {
    let lines = missing.iter().map(|name| format!("  --colony \"{name}=8 frames; 14 kg; 3/300; laying\"").into());
    Message::lines([say::asks(apiary.as_of.to_string(), &apiary.name)].into_iter().chain(lines))
}

/// One colony, asked at the terminal; nothing where it is gone.
fn asked(name: &str) -> io::Result<Option<AutumnCount>> {
    let ask = |what: Message| -> io::Result<String> {
        write!(io::stderr(), "{} ", in_words(&say::ask(name, what)))?;
        io::stderr().flush()?;
        let mut line = String::new();
        io::stdin().lock().read_line(&mut line)?;
        Ok(line.trim().to_owned())
    };
    let bees = ask(say::bees())?;
    if bees.is_empty() {
        return Ok(None);
    }
    let food = ask(say::food())?;
    let mites = ask(say::mites())?;
    let queen = ask(say::queen())?;
    Ok(Some(AutumnCount { name: name.to_owned(), bees, food, mites, queen }))
}

/// Writes the new yard file beside the last one, and reads it as a check.
fn write(
    last: &std::path::Path,
    arguments: &SeasonArguments,
    next: &Apiary,
    counts: &[AutumnCount],
) -> anyhow::Result<()> {
    let Some(out) = &arguments.out else { return Ok(()) };
    let name = last.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
    let beside = |path: &std::path::Path| path.parent().map(std::path::Path::to_owned).unwrap_or_default();
    if beside(out) != beside(last) {
        return Err(exit::refused(say::beside(last.display().to_string())));
    }
    let text = String::from_utf8_lossy(&sources::read(last)?).into_owned();
    let text = season_text(&text, &name, next, counts).map_err(exit::input)?;
    snowhum_apiary::read(&text, &out.display().to_string()).map_err(exit::input)?;
    new_file::create(out)?.write_all(text.as_bytes()).map_err(|error| new_file::failed(out, &error))?;
    progress::note(say::wrote(out.display().to_string(), last.display().to_string()));
    Ok(())
}
