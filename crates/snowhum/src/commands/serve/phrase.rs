//! Where the pass phrase comes from.

use snowhum_say::{Message, serve_terminal as say};
use snowhum_store::Store;
use snowhum_web::{NotKept, PassPhrase};
use std::io::IsTerminal;

use super::lan::LanArguments;
use crate::text::voice::in_words;
use crate::{exit, keep, progress};

const VARIABLE: &str = "SNOWHUM_PASS_PHRASE";

/// Sees to it that the store has one: the kept one, else the one given, else the one typed.
pub(super) async fn settle(arguments: &LanArguments, store: &Store) -> anyhow::Result<()> {
    let given = given(arguments)?;
    let is_kept = PassPhrase::is_kept(store).await.map_err(keep::failure)?;
    if is_kept && !arguments.new_pass_phrase {
        if given.is_some() {
            progress::note(say::phrase_holds());
        }
        return Ok(());
    }
    let text = given.map_or_else(asked, Ok)?;
    let phrase = PassPhrase::new(&text).map_err(exit::refused)?;
    phrase.keep(store).await.map_err(|fault| match fault {
        NotKept::Store(fault) => keep::failure(fault),
        machine => exit::environment(machine),
    })?;
    progress::note(say::phrase_kept());
    Ok(())
}

/// From a file or the environment.
fn given(arguments: &LanArguments) -> anyhow::Result<Option<String>> {
    if let Some(file) = &arguments.pass_phrase_file {
        let shown = || file.display().to_string();
        let wrong = |error: std::io::Error| exit::refused(say::phrase_file(shown(), error.to_string()));
        let text = std::fs::read_to_string(file).map_err(wrong)?;
        return Ok(Some(text.lines().next().unwrap_or_default().to_owned()));
    }
    Ok(std::env::var(VARIABLE).ok().filter(|text| !text.is_empty()))
}

/// Typed twice, unseen.
fn asked() -> anyhow::Result<String> {
    if !std::io::stdin().is_terminal() {
        return Err(exit::refused(say::phrase_wanted(VARIABLE)));
    }
    progress::note(say::choose());
    let ask = |asks: &Message| rpassword::prompt_password(in_words(asks) + " ").map_err(exit::environment);
    let first = ask(&say::phrase())?;
    PassPhrase::new(&first).map_err(exit::refused)?;
    if ask(&say::once_more())? != first {
        return Err(exit::refused(say::not_same()));
    }
    Ok(first)
}
