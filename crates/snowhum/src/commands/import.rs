//! `import`: yards, exports and sheets of notes into the records. Notes of a sheet are shown before any is kept.

use std::fs::File;
use std::io::BufReader;
use std::path::{Path, PathBuf};

use clap::Args;
use jiff::Timestamp;
use serde_json::json;
use snowhum_apiary::{Apiary, AskedRows, Incoming};
use snowhum_say::{Message, fault, import_terminal as own, shared_terminal as shared};
use snowhum_store::Taken;
use snowhum_web::{SheetFile, bring_in, last_columns};

use super::records::{say, shown};
use crate::args::Common;
use crate::text::voice::tongue;
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
    let from = File::open(file).map(BufReader::new).map_err(|error| sources::unreadable(file, &error))?;
    keep::bring(&path, file, async |store| store.import_json(from).await)?;
    say(common, own::export(shown(&path)), &json!({ "imported": "json" }))
}

fn yard(file: &Path, common: &Common) -> anyhow::Result<()> {
    let path = keep::place(common.store.as_deref())?;
    let apiary = sources::yard_file(file)?;
    let done = keep::bring(&path, file, async |store| store.import_yard(&apiary, Timestamp::now()).await)?;
    let (name, colonies) = (&apiary.name, apiary.colonies.len());
    let (stored, known) = (done.notes.stored, done.notes.known);
    let said = own::yard(colonies, shown(&path), known, stored, name);
    say(common, said, &json!({ "imported": "yard", "yard": name, "stored": stored, "known": known }))
}

fn sheet(file: &Path, arguments: &BringArguments, common: &Common) -> anyhow::Result<()> {
    let bytes = sources::read(file)?;
    let (path, apiary) = keep::yard(common.store.as_deref()).map_err(|_| no_yard(file))?;
    let last = keep::with_store(&path, async |store| last_columns(store).await.map_err(keep::failure))?;
    let name = file.display().to_string();
    let given = SheetFile {
        bytes: &bytes,
        file: &name,
        sheet: arguments.sheet.as_deref(),
        columns: arguments.columns.as_deref(),
        last_columns: last.as_deref(),
    };
    let incoming = given
        .read(&apiary, common.units.into(), Timestamp::now())
        .map_err(|wrong| exit::input(wrong.said(tongue())))?;
    if !arguments.keep {
        return tell(&incoming, &apiary, None, own::shown(name), common);
    }
    let asked = match (arguments.sure, arguments.leave_asked) {
        (true, _) => AskedRows::Kept,
        (_, true) => AskedRows::LeftOut,
        _ => AskedRows::Open,
    };
    let notes = incoming.kept(asked).map_err(|rows| asked_about(name, rows, asked))?;
    let columns = arguments.columns.as_deref();
    let taken = keep::bring(&path, file, async |store| bring_in(store, &notes, columns, Timestamp::now()).await)?;
    tell(&incoming, &apiary, Some(taken), own::kept(shown(&path)), common)
}

fn no_yard(file: &Path) -> anyhow::Error {
    exit::refused(own::no_yard(shown(file)))
}

fn asked_about(file: String, rows: Vec<Message>, asked: AskedRows) -> anyhow::Error {
    let mend = if matches!(asked, AskedRows::Open) { own::mend_open() } else { own::mend_sure() };
    exit::refused(Message::lines([own::asked_about(file)].into_iter().chain(rows).chain([fault::hint(mend)])))
}

fn undo(common: &Common) -> anyhow::Result<()> {
    let (path, _) = keep::yard(common.store.as_deref())?;
    let done = keep::with_store(&path, async |store| store.undo_import(Timestamp::now()).await.map_err(keep::failure))?;
    let done = done.ok_or_else(|| exit::refused(own::nothing_back()))?;
    let said = match done.changed {
        0 => own::back(done.withdrawn),
        changed => own::back_changed(changed, done.withdrawn),
    };
    say(common, said, &json!({ "withdrawn": done.withdrawn, "changed": done.changed }))
}

fn tell(
    incoming: &Incoming,
    apiary: &Apiary,
    taken: Option<Taken>,
    next: Message,
    common: &Common,
) -> anyhow::Result<()> {
    if common.json {
        let kept =
            taken.map(|taken| json!({ "stored": taken.stored, "known": taken.known, "differing": taken.differing }));
        return text::say(&serde_json::to_string_pretty(&json!({ "read": incoming, "kept": kept }))?);
    }
    let mut page = text::wrapped(head(incoming, apiary, taken), 0) + "\n";
    if !incoming.columns.is_empty() {
        page += &text::entry(own::columns(), &incoming.columns);
    }
    for said in &incoming.said {
        page += &text::entry(shared::note(), said);
    }
    let rows = incoming.asked().chain(incoming.rows.iter().filter(|row| row.asks.is_none()));
    for row in rows.take(SHOWN) {
        let label = match (&row.asks, row.known) {
            (Some(_), _) => own::row_asked(),
            (None, true) => own::row_known(),
            (None, false) => own::row_read(),
        };
        page += &text::entry(label, row.message());
    }
    if incoming.rows.len() > SHOWN {
        page += &text::entry("", own::more(incoming.rows.len() - SHOWN));
    }
    text::say(&(page + &text::wrapped(next, 0)))
}

fn head(incoming: &Incoming, apiary: &Apiary, taken: Option<Taken>) -> Message {
    let asked = Some(incoming.asked().count()).filter(|asked| *asked > 0).map(own::asked);
    let taken = taken.map(|Taken { stored, known, differing }| own::taken(differing, known, stored));
    let read = own::notes(incoming.rows.len(), &apiary.name);
    shared::stop(shared::parts([Some(read), asked, taken].into_iter().flatten().collect()))
}
