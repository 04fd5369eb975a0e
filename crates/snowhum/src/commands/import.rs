//! `import`: yards, exports and sheets of notes into the records. Notes of a sheet are shown before any is kept.

use std::fs::File;
use std::io::BufReader;
use std::path::{Path, PathBuf};

use clap::Args;
use jiff::Timestamp;
use serde_json::json;
use snowhum_apiary::{Apiary, AskedRows, Incoming};
use snowhum_say::Message;
use snowhum_store::Taken;
use snowhum_web::{SheetFile, bring_in, last_columns};

use super::records::{say, unreadable};
use crate::args::Common;
use crate::text::voice::in_words;
use crate::{exit, keep, sources, text};

/// Rows that are shown; --json has all of them.
const SHOWN: usize = 30;

/// What is brought in.
#[derive(Debug, Clone, Args)]
pub(crate) struct BringArguments {
    #[arg(required_unless_present = "undo", conflicts_with = "undo")]
    file: Option<PathBuf>,
    #[arg(long, value_name = "MAPPING")]
    columns: Option<String>,
    #[arg(long, value_name = "NAME")]
    sheet: Option<String>,
    #[arg(long)]
    keep: bool,
    #[arg(long, requires = "keep", conflicts_with = "leave_asked")]
    sure: bool,
    #[arg(long, requires = "keep")]
    leave_asked: bool,
    #[arg(long)]
    undo: bool,
}

/// Brings a yard file, an export or a sheet of notes into the store.
pub(super) fn run(arguments: &BringArguments, common: &Common) -> anyhow::Result<()> {
    let Some(file) = &arguments.file else { return undo(common) };
    let ending = file.extension().and_then(|ending| ending.to_str()).unwrap_or_default().to_ascii_lowercase();
    match ending.as_str() {
        "json" => export(file, common),
        "csv" | "tsv" | "tab" | "txt" | "xlsx" | "xlsm" | "xls" | "ods" => sheet(file, arguments, common),
        _ => yard(file, common),
    }
}

fn export(file: &Path, common: &Common) -> anyhow::Result<()> {
    let path = keep::place(common.store.as_deref())?;
    let from = File::open(file).map(BufReader::new).map_err(|error| unreadable(file, &error))?;
    keep::bring(&path, file, async |store| store.import_json(from).await)?;
    let said = format!("brought in: everything of the export. Kept in {}", path.display());
    say(common, &said, &json!({ "imported": "json" }))
}

fn yard(file: &Path, common: &Common) -> anyhow::Result<()> {
    let path = keep::place(common.store.as_deref())?;
    let apiary = sources::yard_file(file)?;
    let done = keep::bring(&path, file, async |store| store.import_yard(&apiary, Timestamp::now()).await)?;
    let (name, colonies) = (&apiary.name, apiary.colonies.len());
    let (stored, known) = (done.notes.stored, done.notes.known);
    let said = format!(
        "brought in: {name} with {colonies} colonies; {stored} notes, {known} known already. Kept in {}",
        path.display()
    );
    say(common, &said, &json!({ "imported": "yard", "yard": name, "stored": stored, "known": known }))
}

fn sheet(file: &Path, arguments: &BringArguments, common: &Common) -> anyhow::Result<()> {
    let bytes = sources::read(file)?;
    let (path, apiary) = keep::yard(common.store.as_deref()).map_err(|_| no_yard(file))?;
    let last = keep::with_store(&path, async |store| last_columns(store).await.map_err(keep::failure))?;
    let shown = file.display().to_string();
    let given = SheetFile {
        bytes: &bytes,
        file: &shown,
        sheet: arguments.sheet.as_deref(),
        columns: arguments.columns.as_deref(),
        last_columns: last.as_deref(),
    };
    let incoming = given.read(&apiary, common.units.into(), Timestamp::now()).map_err(exit::input)?;
    if !arguments.keep {
        let next = format!("Nothing is kept yet. To keep it: snowhum import {shown} --keep");
        return tell(&incoming, &apiary, None, &next, common);
    }
    let asked = match (arguments.sure, arguments.leave_asked) {
        (true, _) => AskedRows::Kept,
        (_, true) => AskedRows::LeftOut,
        _ => AskedRows::Open,
    };
    let notes = incoming.kept(asked).map_err(|rows| asked_about(&shown, rows, asked))?;
    let columns = arguments.columns.as_deref();
    let taken = keep::bring(&path, file, async |store| bring_in(store, &notes, columns, Timestamp::now()).await)?;
    let next = format!("Kept in {}. To take it back: snowhum import --undo", path.display());
    tell(&incoming, &apiary, Some(taken), &next, common)
}

fn no_yard(file: &Path) -> anyhow::Error {
    let shown = file.display();
    exit::input(format!(
        "{shown}: no yard is kept yet to which its notes belong; bring yours in first: snowhum import my-yard.toml"
    ))
}

fn asked_about(file: &str, rows: Vec<Message>, asked: AskedRows) -> anyhow::Error {
    let rows = rows.iter().map(in_words).collect::<Vec<_>>().join("\n");
    let mend = match asked {
        AskedRows::Open => "if they are right all the same, add --sure; to keep the others alone, add --leave-asked",
        _ => "mend them in the sheet; or to keep the others alone, --leave-asked in place of --sure",
    };
    exit::input(format!("{file}: these are asked about, and nothing was kept:\n{rows}\n  hint: {mend}"))
}

fn undo(common: &Common) -> anyhow::Result<()> {
    let (path, _) = keep::yard(common.store.as_deref())?;
    let done = keep::with_store(&path, async |store| store.undo_import(Timestamp::now()).await.map_err(keep::failure))?;
    let done = done.ok_or_else(|| exit::input("no sheet came in that could be taken back"))?;
    let changed = match done.changed {
        0 => String::new(),
        changed => format!("; {changed} stay, since they were changed later"),
    };
    let said = format!("taken back: {} notes{changed}", done.withdrawn);
    say(common, &said, &json!({ "withdrawn": done.withdrawn, "changed": done.changed }))
}

fn tell(incoming: &Incoming, apiary: &Apiary, taken: Option<Taken>, next: &str, common: &Common) -> anyhow::Result<()> {
    if common.json {
        let kept =
            taken.map(|taken| json!({ "stored": taken.stored, "known": taken.known, "differing": taken.differing }));
        return text::say(&serde_json::to_string_pretty(&json!({ "read": incoming, "kept": kept }))?);
    }
    let mut page = text::wrapped(head(incoming, apiary, taken), 0) + "\n";
    if !incoming.columns.is_empty() {
        page += &text::entry("Columns", &incoming.columns);
    }
    for said in &incoming.said {
        page += &text::entry("Note", said);
    }
    let rows = incoming.asked().chain(incoming.rows.iter().filter(|row| row.asks.is_none()));
    for row in rows.take(SHOWN) {
        let label = if row.asks.is_some() {
            "Asked"
        } else if row.known {
            "Known"
        } else {
            "Read"
        };
        page += &text::entry(label, row.message());
    }
    if incoming.rows.len() > SHOWN {
        page += &text::entry("", format!("and {} more rows; --json has all of them", incoming.rows.len() - SHOWN));
    }
    text::say(&(page + &text::wrapped(next, 0)))
}

fn head(incoming: &Incoming, apiary: &Apiary, taken: Option<Taken>) -> String {
    let asked = match incoming.asked().count() {
        0 => String::new(),
        asked => format!(", {asked} of them asked about"),
    };
    let read = format!("{} notes of {}{asked}", incoming.rows.len(), apiary.name);
    match taken {
        None => format!("Read: {read}."),
        Some(Taken { stored, known, differing }) => {
            format!("Brought in: {stored} of {read}; {known} known already, {differing} that differ from what is kept.")
        }
    }
}
