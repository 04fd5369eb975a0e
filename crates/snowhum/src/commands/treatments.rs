//! `treatments`: the keeper's record of treatments. It advises nothing.

use clap::Args;
use jiff::civil::Date;
use snowhum_advice::treatments::{TreatmentRecord, columns, treatments};
use snowhum_apiary::Apiary;
use snowhum_say::treatments as say;
use snowhum_store::Store;
use std::path::PathBuf;

use super::serve::yard::beside;
use crate::args::Common;
use crate::text::voice::{in_words, tongue};
use crate::text::{entry, wrapped};
use crate::{keep, sources, text};

#[derive(Debug, Args)]
pub(crate) struct TreatmentsArguments {
    /// A yard file; else the yard of the records, else the invented demo yard.
    #[arg(long, value_name = "FILE")]
    apiary: Option<PathBuf>,
    /// Print the record as CSV.
    #[arg(long, conflicts_with = "json")]
    csv: bool,
    /// The last day of the record; the whole of it if not given.
    #[arg(long, value_name = "DATE")]
    as_of: Option<Date>,
}

pub(super) fn run(arguments: &TreatmentsArguments, common: &Common) -> anyhow::Result<()> {
    let apiary = yard(arguments, common)?;
    let record = treatments(&apiary, arguments.as_of.unwrap_or(Date::MAX));
    if arguments.csv {
        return text::say(&record.csv(tongue()));
    }
    if common.json {
        return text::say(&serde_json::to_string_pretty(&record)?);
    }
    text::say(&words(&record))
}

/// The yard with every colony that ever stood in it where it is in the records, else as its file has it.
fn yard(arguments: &TreatmentsArguments, common: &Common) -> anyhow::Result<Apiary> {
    let file = arguments.apiary.as_deref();
    let named = common.store.clone().or_else(|| file.map(beside)).or_else(keep::usual_place);
    let apiary = sources::apiary(file, common)?;
    let Some(path) = named.filter(|path| path.exists()) else { return Ok(apiary) };
    let ever = keep::with(async {
        let store = Store::open(&path).await?;
        let ever = store.yard_ever(apiary.id).await;
        store.close().await;
        ever
    })?;
    Ok(ever.unwrap_or(apiary))
}

fn words(record: &TreatmentRecord) -> String {
    let invented = if record.invented { " (an invented yard)" } else { "" };
    let mut page = format!("Treatments given at {}{invented}\n", record.apiary);
    page += &entry("Number", record.registration.as_deref().unwrap_or("not noted"));
    page += "\n";
    if record.rows.is_empty() {
        page += "  No treatment is noted.\n";
    }
    for row in &record.rows {
        let heads = columns().map(|head| in_words(&head).to_lowercase());
        let details = || heads.iter().zip(row.cells()).skip(3);
        let told = details().filter_map(|(head, cell)| Some(format!("{head}: {}", in_words(&cell?))));
        let mut parts: Vec<String> = told.collect();
        let missing: Vec<&str> = details().filter(|(_, cell)| cell.is_none()).map(|(head, _)| head.as_str()).collect();
        if !missing.is_empty() {
            parts.push(format!("{}: {}", in_words(&say::not_noted()), missing.join(", ")));
        }
        let of = format!("{}: {}", row.colony, in_words(&row.class));
        page += &format!("{}  {}\n", row.on, wrapped(&of, 12));
        page += &entry("", &parts.join("; "));
    }
    page += "\n";
    page + &wrapped(&in_words(&say::kept()), 0)
}
