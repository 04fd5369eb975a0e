//! `print`: the sheets for paper, as files to open and print.

use std::path::PathBuf;

use clap::Args;
use jiff::Timestamp;
use snowhum_apiary::Apiary;
use snowhum_say::{Tongue, arguments_terminal, shared_terminal as shared};
use snowhum_store::Store;
use snowhum_web::{App, Opened, Paper, Reach};

use super::serve::Model;
use super::serve::yard::beside;
use crate::args::{Common, YardArguments};
use crate::text::voice::in_words;
use crate::{exit, keep, new_file, progress, sources, text};

#[derive(Debug, Args)]
pub(crate) struct PrintArguments {
    #[arg(long, value_name = "FOLDER")]
    out: PathBuf,
    #[arg(long, value_name = "ADDRESS", value_parser = address)]
    address: Option<String>,
    #[command(flatten)]
    yard: YardArguments,
}

fn address(text: &str) -> Result<String, String> {
    let fits = ["http://", "https://"].iter().any(|start| text.len() > start.len() && text.starts_with(start));
    let fits = fits && text.chars().all(|letter| letter.is_ascii_graphic());
    if fits { Ok(text.trim_end_matches('/').to_owned()) } else { Err(in_words(&arguments_terminal::no_address())) }
}

pub(super) fn run(arguments: &PrintArguments, common: &Common, tongue: Tongue) -> anyhow::Result<()> {
    let apiary = yard(arguments, common)?;
    let runtime = tokio::runtime::Builder::new_multi_thread().enable_all().build().map_err(exit::environment)?;
    let papers = progress::during(shared::watching(), || runtime.block_on(papers(&apiary, arguments, tongue)))?;
    std::fs::create_dir_all(&arguments.out).map_err(|error| new_file::failed(&arguments.out, &error))?;
    for paper in &papers {
        let file = arguments.out.join(paper.file);
        std::fs::write(&file, &paper.html).map_err(|error| new_file::failed(&file, &error))?;
    }
    let files: Vec<&str> = papers.iter().map(|paper| paper.file).collect();
    text::say(&text::wrapped(format!("Wrote {} to {}", files.join(", "), arguments.out.display()), 2))
}

/// The yard with its notes: of the records named, of those beside the file, or as any other command finds it.
fn yard(arguments: &PrintArguments, common: &Common) -> anyhow::Result<Apiary> {
    let file = arguments.yard.apiary.as_deref();
    let kept = file.map(beside).filter(|path| common.store.is_none() && path.exists());
    match kept.map(|path| keep::first_yard(&path)).transpose()?.flatten() {
        Some(yard) => Ok(yard),
        None => sources::apiary(file, common),
    }
}

async fn papers(apiary: &Apiary, arguments: &PrintArguments, tongue: Tongue) -> anyhow::Result<Vec<Paper>> {
    let store = Store::in_memory().await.map_err(keep::of_machine)?;
    store.import_yard(apiary, Timestamp::now()).await.map_err(keep::of_machine)?;
    let day = arguments.yard.run.as_of.or(apiary.invented.then_some(apiary.as_of));
    let reckon = Box::new(Model { arguments: arguments.yard.run.clone() });
    let app = App::new(Opened {
        store,
        yard: apiary.id,
        reckon,
        day,
        system: tongue.system(),
        language: Some(tongue.language()),
        reach: Reach::this_machine(),
        home: None,
        file: None,
    });
    let work = tokio::spawn(app.clone().work());
    let papers = app.papers(arguments.address.as_deref()).await.map_err(exit::refused);
    work.abort();
    papers
}
