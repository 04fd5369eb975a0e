//! Where the pass phrase comes from.

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
            progress::note("A pass phrase is kept already and holds; --new-pass-phrase puts another in its place.");
        }
        return Ok(());
    }
    let text = given.map_or_else(asked, Ok)?;
    let phrase = PassPhrase::new(&text).map_err(|wrong| exit::input(in_words(&wrong)))?;
    phrase.keep(store).await.map_err(|fault| match fault {
        NotKept::Store(fault) => keep::failure(fault),
        machine => exit::environment(machine),
    })?;
    progress::note("The pass phrase is kept, sealed; nobody can read it back.");
    Ok(())
}

/// From a file or the environment.
fn given(arguments: &LanArguments) -> anyhow::Result<Option<String>> {
    if let Some(file) = &arguments.pass_phrase_file {
        let wrong = |error| exit::input(format!("{}: {error}; name a file with the pass phrase", file.display()));
        let text = std::fs::read_to_string(file).map_err(wrong)?;
        return Ok(Some(text.lines().next().unwrap_or_default().to_owned()));
    }
    Ok(std::env::var(VARIABLE).ok().filter(|text| !text.is_empty()))
}

/// Typed twice, unseen.
fn asked() -> anyhow::Result<String> {
    if !std::io::stdin().is_terminal() {
        return Err(exit::input(format!(
            "--lan needs a pass phrase: give it with --pass-phrase-file FILE or {VARIABLE}, or start it in a terminal to be asked"
        )));
    }
    progress::note("Choose a pass phrase of at least 12 letters; who knows it can read and write your yard.");
    let ask = |words: &str| rpassword::prompt_password(words).map_err(exit::environment);
    let first = ask("Pass phrase: ")?;
    PassPhrase::new(&first).map_err(|wrong| exit::input(in_words(&wrong)))?;
    if ask("Once more: ")? != first {
        return Err(exit::input("the two are not the same; start again"));
    }
    Ok(first)
}
