//! `export`, `backup`, `restore`, `doctor`: everything out and back again, nothing lost.

use std::io::{BufWriter, Write};
use std::path::{Path, PathBuf};

use clap::Args;
use jiff::Timestamp;
use serde_json::json;
use snowhum_say::{Message, records_terminal as own, shared_terminal as shared, store_found};
use snowhum_store::{Access, Check, Found, Report, Store};
use snowhum_web::NotKept;

use crate::args::Common;
use crate::text::voice::in_words;
use crate::{exit, keep, new_file, text};

/// Writes everything out: a JSON file, or a folder of CSV sheets.
pub(super) fn export(to: &Path, common: &Common) -> anyhow::Result<()> {
    let path = existing(common)?;
    if to.extension().is_some_and(|ending| ending.eq_ignore_ascii_case("json")) {
        let file = new_file::create_private(to)?;
        let mut out = BufWriter::new(file);
        keep::with(async { Store::open(&path).await?.export_json(&mut out).await })?;
        out.flush().map_err(|error| new_file::failed(to, &error))?;
        return say(common, own::written(vec![shown(to)]), &json!({ "written": [to] }));
    }
    let written = keep::with(async { Store::open(&path).await?.export_csv(to).await })?;
    let names: Vec<Message> = written.iter().map(|file| shown(file)).collect();
    say(common, own::written(names), &json!({ "written": written }))
}

/// Copies the store while it may be in use.
pub(super) fn backup(to: &Path, common: &Common) -> anyhow::Result<()> {
    let path = existing(common)?;
    let report = keep::with(async { Store::open(&path).await?.backup(to).await })?;
    told(common, own::backed_up(shown(to)), &report)
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
    let left = (done.access_left > 0).then(own::access_left);
    let head = [own::restored(shown(&path))].into_iter().chain(aside(done.kept_aside.as_deref())).chain(left);
    told(common, Message::lines(head), &done.report)
}

/// Puts back what of the records was changed or is missing.
fn mend(from: &Path, common: &Common) -> anyhow::Result<()> {
    let path = existing(common)?;
    let done = keep::with(Store::mend(&path, from, Timestamp::now()))?;
    let (back, lost) = (done.put_back.iter().map(own::put_back), done.lost.iter().map(own::lost));
    let head = [own::mended(shown(&path))].into_iter().chain(aside(done.kept_aside.as_deref())).chain(back).chain(lost);
    told(common, Message::lines(head), &done.report)?;
    if done.lost.is_empty() { Ok(()) } else { Err(exit::needs_keeper(own::some_lost())) }
}

fn aside(kept: Option<&Path>) -> Option<Message> {
    kept.map(|old| own::aside(shown(old)))
}

/// A file as it is named.
pub(super) fn shown(file: &Path) -> Message {
    file.display().to_string().into()
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
    say(common, own::code(&code), &json!({ "code": code }))
}

/// Looks whether everything is in order.
pub(super) fn doctor(common: &Common) -> anyhow::Result<()> {
    let path = existing(common)?;
    let report = keep::with(Store::doctor_of(&path))?;
    told(common, shown(&path), &report)
}

fn told(common: &Common, head: Message, report: &Report) -> anyhow::Result<()> {
    let found = |found: &Found| match found {
        Found::Well => (own::well(), Message::NONE),
        Found::Odd(what) => (own::odd(), what.clone()),
        Found::Ill(what) => (own::ill(), what.clone()),
    };
    let checks: Vec<_> = report
        .checks
        .iter()
        .map(|check| {
            let (state, says) = found(&check.found);
            json!({ "what": check.what, "found": state, "says": says })
        })
        .collect();
    let entry = |check: &Check| {
        let (state, says) = found(&check.found);
        text::entry(store_found::check(check.what), if says.is_none() { state } else { shared::of(state, says) })
    };
    let page = in_words(&head) + "\n" + &report.checks.iter().map(entry).collect::<String>();
    say(common, page.into(), &json!({ "well": report.is_well(), "checks": checks }))?;
    if report.is_well() { Ok(()) } else { Err(exit::failed(own::not_in_order())) }
}

pub(super) fn say(common: &Common, words: Message, answer: &serde_json::Value) -> anyhow::Result<()> {
    text::say(&if common.json { serde_json::to_string_pretty(answer)? } else { in_words(&words) })
}

/// The store, which must be there.
fn existing(common: &Common) -> anyhow::Result<PathBuf> {
    let path = keep::place(common.store.as_deref())?;
    if path.exists() { Ok(path) } else { Err(exit::refused(shared::no_records(shown(&path)))) }
}
