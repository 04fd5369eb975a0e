//! `deadout`: why did it die, and what can be used again?

use std::io::{self, BufRead, IsTerminal, Write};

use clap::Args;
use snowhum_advice::deadout::{Question, Seen, SeenSign, deadout, questions};

use crate::args::Common;
use crate::commands::sum;
use crate::{exit, text};

/// What was seen.
#[derive(Debug, Args)]
pub(crate) struct DeadoutArguments {
    /// A sign: NAME=yes, no, fairly-sure (there), fairly-no, or unseen.
    #[arg(long = "sign", value_name = "NAME=SEEN")]
    signs: Vec<String>,
    /// List the signs and what each asks.
    #[arg(long)]
    list: bool,
    /// Seed of the redrawn tables behind the ranges.
    #[arg(long, value_name = "N", default_value_t = 1)]
    seed: u64,
}

pub(crate) fn run(arguments: &DeadoutArguments, common: &Common) -> anyhow::Result<()> {
    let questions = questions().map_err(sum::fault)?;
    if arguments.list {
        return text::say(&text::deadout::list(&questions));
    }
    let signs = if arguments.signs.is_empty() && io::stdin().is_terminal() {
        asked(&questions, io::stdin().lock(), io::stderr().lock()).map_err(exit::environment)?
    } else {
        arguments.signs.iter().map(|text| sign(text)).collect::<anyhow::Result<_>>()?
    };
    let answer = deadout(&signs, arguments.seed).map_err(sum::fault)?;
    sum::say(&answer, common, text::deadout::words)
}

/// A sign as `NAME=SEEN`.
fn sign(text: &str) -> anyhow::Result<SeenSign> {
    let wrong = || {
        let words = "write NAME=yes, no, fairly-sure, fairly-no or unseen, such as small-cluster=yes";
        exit::input(format!("--sign \"{text}\": {words}"))
    };
    let (name, seen) = text.split_once('=').ok_or_else(wrong)?;
    let seen = Seen::read(seen).ok_or_else(wrong)?;
    Ok(SeenSign { name: name.trim().to_owned(), seen })
}

/// Asks each question in turn, until one of foulbrood is answered with yes or the input ends.
fn asked(questions: &[Question], mut input: impl BufRead, mut out: impl Write) -> io::Result<Vec<SeenSign>> {
    let mut signs = Vec::new();
    writeln!(out, "Answer y (yes), f (fairly sure), n (no), or Enter for not looked at.")?;
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
        write!(out, "{} ", question.ask)?;
        out.flush()?;
        let mut line = String::new();
        if input.read_line(&mut line)? == 0 {
            return Ok(None);
        }
        if let Some(seen) = Seen::read(&line) {
            return Ok(Some(seen));
        }
        writeln!(out, "Write y, f, n, or nothing.")?;
    }
}

#[cfg(test)]
mod tests {
    use super::{Question, Seen, asked};

    fn question(name: &str, stops: bool) -> Question {
        Question { name: name.to_owned(), ask: format!("{name}?"), stops }
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
