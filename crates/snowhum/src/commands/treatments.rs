//! `treatments`: the keeper's record of treatments. It advises nothing.

use clap::Args;
use jiff::civil::Date;
use snowhum_advice::treatments::{TreatmentRecord, columns, treatments};
use snowhum_apiary::Apiary;
use snowhum_say::{Message, shared_terminal as shared, treatments as say, treatments_terminal as own};
use snowhum_store::Store;
use std::path::PathBuf;

use super::serve::yard::beside;
use crate::args::{Common, parse_date};
use crate::text::voice::{in_words, tongue};
use crate::text::{entry, paragraph, wrapped};
use crate::{keep, sources, text};

#[derive(Debug, Args)]
pub(crate) struct TreatmentsArguments {
    #[arg(long, value_name = "FILE")]
    apiary: Option<PathBuf>,
    #[arg(long, conflicts_with = "json")]
    csv: bool,
    #[arg(long, value_name = "DATE", value_parser = parse_date)]
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
    let mut page = in_words(&own::title(record.invented, &record.apiary)) + "\n";
    page += &entry(own::number(), record.registration.as_ref().map_or_else(own::not_noted, Message::from));
    page += "\n";
    if record.rows.is_empty() {
        page += &paragraph(own::none());
    }
    for row in &record.rows {
        let heads = columns();
        let details = || heads.iter().zip(row.cells()).skip(3);
        let told = details().filter_map(|(head, cell)| Some(shared::of(head, cell?)));
        let mut parts: Vec<Message> = told.collect();
        let missing = details().filter(|(_, cell)| cell.is_none()).map(|(head, _)| Message::from(head));
        let missing: Vec<Message> = missing.collect();
        if !missing.is_empty() {
            parts.push(shared::of(say::not_noted(), shared::list(missing)));
        }
        page += &format!("{}  {}\n", row.on, wrapped(shared::of(&row.colony, &row.class), 12));
        page += &entry("", shared::parts(parts));
    }
    page += "\n";
    page + &wrapped(say::kept(), 0)
}
