//! `deadout`: why did it die, and what can be used again?

use std::io::{self, BufRead, IsTerminal, Write};

use clap::Args;
use jiff::Timestamp;
use snowhum_advice::deadout::{
    DeadoutAnswer, FromRecords, Question, Seen, SeenSign, deadout, from_records, questions, to_keep,
};
use snowhum_apiary::{Act, Apiary, Conditions, Entry, Note, NoteId, Sign};
use snowhum_say::{deadout_terminal as own, note_terminal, shared_terminal as shared};
use snowhum_store::Store;
use std::path::{Path, PathBuf};
use uuid::Uuid;

use crate::args::Common;
use crate::commands::{note, sum};
use crate::text::voice::in_words;
use crate::{exit, keep, progress, sources, text, weather_source};

/// What was seen.
#[derive(Debug, Args)]
pub(crate) struct DeadoutArguments {
    colony: Option<String>,
    #[arg(long, requires = "colony", conflicts_with = "apiary")]
    keep: bool,
    #[arg(long, value_name = "TIME", requires = "colony")]
    at: Option<String>,
    #[arg(long, value_name = "FILE", requires = "colony")]
    apiary: Option<PathBuf>,
    #[arg(long = "sign", value_name = "NAME=SEEN")]
    signs: Vec<String>,
    #[arg(long)]
    list: bool,
    #[arg(long, value_name = "N", default_value_t = 1)]
    seed: u64,
}

pub(crate) fn run(arguments: &DeadoutArguments, common: &Common) -> anyhow::Result<()> {
    let questions = questions().map_err(sum::fault)?;
    if arguments.list {
        return text::say(&text::deadout::list(&questions));
    }
    let dead = arguments.colony.as_deref().map(|name| Dead::of(name, arguments, common)).transpose()?;
    let signs = if arguments.signs.is_empty() && io::stdin().is_terminal() {
        asked(&questions, io::stdin().lock(), io::stderr().lock()).map_err(exit::environment)?
    } else {
        arguments.signs.iter().map(|text| sign(text)).collect::<anyhow::Result<_>>()?
    };
    let records = dead.as_ref().map_or(&[][..], |dead| &dead.records);
    let answer = deadout(&signs, records, arguments.seed).map_err(sum::fault)?;
    if let Some(dead) = dead.filter(|_| arguments.keep) {
        dead.keep(&answer)?;
    }
    sum::say(&answer, common, text::deadout::words)
}

/// A dead colony of a yard.
struct Dead {
    apiary: Apiary,
    place: usize,
    at: Timestamp,
    records: Vec<FromRecords>,
    /// Where the records lie, if the examination is to be kept.
    path: Option<PathBuf>,
}

impl Dead {
    fn of(name: &str, arguments: &DeadoutArguments, common: &Common) -> anyhow::Result<Self> {
        let (path, apiary) = if arguments.keep {
            let (path, apiary) = keep::yard(common.store.as_deref())?;
            (Some(path), apiary)
        } else {
            (None, sources::apiary(arguments.apiary.as_deref(), common)?)
        };
        let place = sources::place_of(&apiary, name)?;
        let at = match &arguments.at {
            Some(written) => note::moment(written, &apiary)?,
            // An invented yard stands where its log ends.
            None if apiary.invented => apiary.notes.iter().map(|note| note.at).max().unwrap_or_else(Timestamp::now),
            None => Timestamp::now(),
        };
        let day = weather_source::zone(&apiary.site)?.to_datetime(at).date();
        let records = from_records(&apiary, &apiary.colonies[place], day).map_err(sum::fault)?;
        Ok(Self { apiary, place, at, records, path })
    }

    /// Keeps the examination: the colony is dead, and this is what was found.
    fn keep(&self, answer: &DeadoutAnswer) -> anyhow::Result<()> {
        let examined = to_keep(answer).ok_or_else(|| exit::refused(note_terminal::no_sign()))?;
        let note = Note {
            id: NoteId(Uuid::now_v7()),
            visit: note::visit(&self.apiary, self.at),
            colony: self.apiary.colonies[self.place].id,
            at: self.at,
            conditions: Conditions::default(),
            entries: vec![Entry::Sign(Sign::SeenDead), Entry::Act(Act::Examined(examined))],
        };
        put(self.path.as_deref(), &note)?;
        progress::note(note_terminal::examined(&self.apiary.colonies[self.place].name));
        Ok(())
    }
}

fn put(path: Option<&Path>, note: &Note) -> anyhow::Result<()> {
    let Some(path) = path else { return Ok(()) };
    keep::with(async {
        let store = Store::open(path).await?;
        store.put_note(note, Timestamp::now()).await?;
        store.close().await;
        Ok(())
    })
}

/// A sign as `NAME=SEEN`.
fn sign(text: &str) -> anyhow::Result<SeenSign> {
    let wrong = || exit::refused(shared::wrong_option("--sign", own::sign_right(), text));
    let (name, seen) = text.split_once('=').ok_or_else(wrong)?;
    let seen = Seen::read(seen).ok_or_else(wrong)?;
    Ok(SeenSign { name: name.trim().to_owned(), seen })
}

/// Asks each question in turn, until one of foulbrood is answered with yes or the input ends.
fn asked(questions: &[Question], mut input: impl BufRead, mut out: impl Write) -> io::Result<Vec<SeenSign>> {
    let mut signs = Vec::new();
    writeln!(out, "{}", in_words(&own::how()))?;
    for question in questions {
        let Some(seen) = answered(question, &mut input, &mut out)? else { break };
        signs.push(SeenSign { name: question.name.clone(), seen });
        if question.stops && matches!(seen, Seen::Yes | Seen::FairlyYes) {
            break;
        }
    }
    Ok(signs)
}

/// One answer, asked again until it is one; `None` where the input ends.
fn answered(question: &Question, input: &mut impl BufRead, out: &mut impl Write) -> io::Result<Option<Seen>> {
    loop {
        write!(out, "{} ", in_words(&question.ask))?;
        out.flush()?;
        let mut line = String::new();
        if input.read_line(&mut line)? == 0 {
            return Ok(None);
        }
        if let Some(seen) = Seen::read(&line) {
            return Ok(Some(seen));
        }
        writeln!(out, "{}", in_words(&own::again()))?;
    }
}

#[cfg(test)]
mod tests {
    use super::{Question, Seen, asked};

    fn question(name: &str, stops: bool) -> Question {
        Question { name: name.to_owned(), ask: format!("{name}?").into(), stops }
    }

    fn seen(input: &str) -> Vec<Seen> {
        let questions = [question("smell", true), question("small", false), question("mould", false)];
        let signs = asked(&questions, input.as_bytes(), Vec::new()).unwrap_or_default();
        signs.into_iter().map(|sign| sign.seen).collect()
    }

    #[test]
    fn it_asks_again_until_it_is_answered_and_ends_with_the_input() {
        assert_eq!(seen("n\nperhaps\nf\n\n"), [Seen::No, Seen::FairlyYes, Seen::Unseen]);
        assert_eq!(seen("n\n"), [Seen::No]);
    }

    #[test]
    fn it_asks_no_more_once_foulbrood_may_be_in_it() {
        assert_eq!(seen("y\nn\nn\n"), [Seen::Yes]);
    }
}
