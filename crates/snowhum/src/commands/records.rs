//! `export`, `backup`, `restore`, `doctor`: everything out and back again, nothing lost.

use std::io::{BufWriter, Write};
use std::path::{Path, PathBuf};

use clap::Args;
use jiff::Timestamp;
use serde_json::json;
use snowhum_store::{Access, Found, Report, Store};
use snowhum_web::NotKept;

use crate::args::Common;
use crate::{exit, keep, new_file, text};

/// Writes everything out: a JSON file, or a folder of CSV sheets.
pub(super) fn export(to: &Path, common: &Common) -> anyhow::Result<()> {
    let path = existing(common)?;
    if to.extension().is_some_and(|ending| ending.eq_ignore_ascii_case("json")) {
        let file = new_file::create_private(to)?;
        let mut out = BufWriter::new(file);
        keep::with(async { Store::open(&path).await?.export_json(&mut out).await })?;
        out.flush().map_err(|error| new_file::failed(to, &error))?;
        return say(common, &format!("written to {}", to.display()), &json!({ "written": [to] }));
    }
    let written = keep::with(async { Store::open(&path).await?.export_csv(to).await })?;
    let names: Vec<String> = written.iter().map(|file| file.display().to_string()).collect();
    say(common, &format!("written: {}", names.join(", ")), &json!({ "written": names }))
}

/// Copies the store while it may be in use.
pub(super) fn backup(to: &Path, common: &Common) -> anyhow::Result<()> {
    let path = existing(common)?;
    let report = keep::with(async { Store::open(&path).await?.backup(to).await })?;
    told(common, &format!("backed up to {}", to.display()), &report)
}

/// What is put in the place of the records, and how much of it.
#[derive(Debug, Clone, Args)]
pub(crate) struct RestoreArguments {
    from: PathBuf,
    #[arg(long)]
    with_access: bool,
    #[arg(long, conflicts_with = "with_access")]
    mend: bool,
}

/// Puts a backup or an export in the place of the store; what was there is kept aside.
pub(super) fn restore(arguments: &RestoreArguments, common: &Common) -> anyhow::Result<()> {
    let from = &arguments.from;
    if arguments.mend {
        return mend(from, common);
    }
    let path = keep::place(common.store.as_deref())?;
    let access = if arguments.with_access { Access::Taken } else { Access::Left };
    let done = keep::with(Store::restore(from, &path, access, Timestamp::now()))?;
    let aside = aside(done.kept_aside.as_deref());
    let left = match done.access_left {
        0 => "",
        _ => "\nThe pass phrase, sessions and links stayed behind; --with-access brings them along",
    };
    told(common, &format!("restored into {}{aside}{left}", path.display()), &done.report)
}

/// Puts back what of the records was changed or is missing.
fn mend(from: &Path, common: &Common) -> anyhow::Result<()> {
    let path = existing(common)?;
    let done = keep::with(Store::mend(&path, from, Timestamp::now()))?;
    let list = |head: &str, rows: &[String]| rows.iter().map(|row| format!("\n{head}: {row}")).collect::<String>();
    let (back, lost) = (list("put back", &done.put_back), list("lost", &done.lost));
    let head = format!("mended {}{}{back}{lost}", path.display(), aside(done.kept_aside.as_deref()));
    told(common, &head, &done.report)?;
    if done.lost.is_empty() {
        Ok(())
    } else {
        Err(exit::needs_keeper("some of the records are lost; write them anew".into()))
    }
}

fn aside(kept: Option<&Path>) -> String {
    kept.map_or_else(String::new, |old| format!("; what was there is now {}", old.display()))
}

/// Tells a code that is taken in place of the pass phrase.
pub(super) fn sign_in_code(common: &Common) -> anyhow::Result<()> {
    let path = existing(common)?;
    let code = keep::with_store(&path, async |store| {
        let made = snowhum_web::sign_in_code(store, Timestamp::now()).await;
        made.map_err(|fault| match fault {
            NotKept::Store(fault) => keep::failure(fault),
            machine @ NotKept::Machine(_) => exit::environment(machine),
        })
    })?;
    say(common, &format!("{code}  (in place of the pass phrase, once, within ten minutes)"), &json!({ "code": code }))
}

/// Looks whether everything is in order.
pub(super) fn doctor(common: &Common) -> anyhow::Result<()> {
    let path = existing(common)?;
    let report = keep::with(Store::doctor_of(&path))?;
    told(common, &path.display().to_string(), &report)
}

fn told(common: &Common, head: &str, report: &Report) -> anyhow::Result<()> {
    let found = |found: &Found| match found {
        Found::Well => ("in order", String::new()),
        Found::Odd(what) => ("worth knowing", what.clone()),
        Found::Ill(what) => ("not in order", what.clone()),
    };
    let checks: Vec<_> = report
        .checks
        .iter()
        .map(|check| {
            let (state, says) = found(&check.found);
            json!({ "what": check.what, "found": state, "says": says })
        })
        .collect();
    let mut page = format!("{head}\n");
    for check in &report.checks {
        let (state, says) = found(&check.found);
        page += &text::entry(check.what, &if says.is_empty() { state.to_owned() } else { format!("{state}: {says}") });
    }
    say(common, &page, &json!({ "well": report.is_well(), "checks": checks }))?;
    if report.is_well() {
        Ok(())
    } else {
        Err(exit::environment("the records are not in order; mend them with: snowhum restore BACKUP --mend"))
    }
}

pub(super) fn say(common: &Common, words: &str, answer: &serde_json::Value) -> anyhow::Result<()> {
    if common.json { text::say(&serde_json::to_string_pretty(answer)?) } else { text::say(words) }
}

/// The store, which must be there.
fn existing(common: &Common) -> anyhow::Result<PathBuf> {
    let path = keep::place(common.store.as_deref())?;
    if path.exists() {
        return Ok(path);
    }
    let shown = path.display();
    Err(exit::input(format!("{shown}: nothing is kept here yet; bring a yard in with: snowhum import my-yard.toml")))
}

pub(super) fn unreadable(file: &Path, error: &std::io::Error) -> anyhow::Error {
    exit::input(format!("{}: cannot be read: {error}", file.display()))
}
