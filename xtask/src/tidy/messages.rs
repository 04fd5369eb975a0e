//! What is said to a keeper stands in `crates/say/messages`: a text that nothing says, and a sentence written elsewhere.

use super::files::File;
use super::finding::Finding;
use super::scrub;
use std::collections::BTreeSet;

/// The crate of messages, whose own code says none but those of chances, thirds of a month and what the units find.
const OF_TEXTS: &str = "crates/say/";
const OF_ITS_CODE: &str = "crates/say/src/";
const SAID_THERE: [&str; 2] = ["words", "quantity"];
/// Where the topics are listed whose texts are looked up by the names of a table's entries.
const LOOKED_UP: &str = "crates/say/build.rs";
/// Texts of commands, of which a test of the commands finds the idle ones.
const OF_COMMANDS: &str = "help";
/// Crates whose code holds no sentence for a reader.
const SILENT: [&str; 5] = [
    "crates/advice/src/",
    "crates/watch/src/",
    "crates/weather/src/complete/",
    "crates/weather/src/generator/",
    "crates/weather/src/readers/",
];
/// Words that make a sentence of a string.
const SENTENCE: usize = 5;
/// What programs read and a maintainer's faults of the house's own tables, each on a line of an attribute.
const NO_SENTENCE: [&str; 3] = ["#[", "///", "//!"];

/// Faults each British text that no crate says, and each sentence in a crate that is to hold none.
pub(crate) fn of_house(files: &[File]) -> Vec<Finding> {
    let texts = files.iter().filter_map(|file| {
        let topic = file.place.strip_prefix("crates/say/messages/en-GB/")?.strip_suffix(".ftl")?;
        (topic != OF_COMMANDS).then_some((file, topic))
    });
    let entries = entries(files);
    let is_looked_up =
        |topic: &str| files.iter().any(|file| file.place == LOOKED_UP && file.text.contains(&format!("{topic:?}")));
    let mut findings = Vec::new();
    for (file, topic) in texts {
        let module = topic.replace('-', "_");
        let says = |file: &&File| {
            let is_speaker = !file.place.starts_with(OF_TEXTS)
                || (SAID_THERE.contains(&topic) && file.place.starts_with(OF_ITS_CODE));
            is_speaker && file.is_rust() && file.holds(&module)
        };
        let speakers: Vec<&File> = files.iter().filter(says).collect();
        let is_said = |id: &str| match is_looked_up(topic) {
            true => {
                entries.iter().any(|name| id.strip_prefix(name).is_some_and(|of| of.is_empty() || of.starts_with('_')))
            }
            false => speakers.iter().any(|file| file.holds(id)),
        };
        let unsaid = ids(&file.text, topic).filter(|id| !is_said(id));
        findings.extend(unsaid.map(|id| Finding::fault(&file.place, format!("nothing says {id}"))));
    }
    let silent = files.iter().filter(|file| SILENT.iter().any(|place| file.place.starts_with(place)));
    findings.extend(silent.filter(|file| file.is_rust() && !file.is_of_tests()).flat_map(sentences));
    findings
}

/// The names of entries of tables, written as those of functions.
fn entries(files: &[File]) -> BTreeSet<String> {
    let tables = files.iter().filter(|file| file.place.starts_with("data/") && file.place.ends_with(".toml"));
    let name = |line: &str| {
        let (_, name) = line.strip_suffix('"')?.split_once(" = \"")?;
        let parts = name.split(|letter: char| !letter.is_alphanumeric()).filter(|part| !part.is_empty());
        Some(parts.collect::<Vec<_>>().join("_").to_lowercase())
    };
    tables.flat_map(|file| file.text.lines().filter_map(name)).filter(|name| !name.is_empty()).collect()
}

/// The functions that the texts of a topic become.
fn ids(text: &str, topic: &str) -> impl Iterator<Item = String> {
    let id = move |line: &str| {
        let (id, _) = line.split_once(" =")?;
        Some(id.strip_prefix(topic)?.strip_prefix('-')?.replace('-', "_"))
    };
    text.lines().filter_map(id).collect::<Vec<_>>().into_iter()
}

fn sentences(file: &File) -> Vec<Finding> {
    let product = scrub::product_code(&file.text);
    let lines = file.text.lines().zip(product.lines()).enumerate();
    let told = lines.filter(|(_, (line, code))| {
        !code.trim().is_empty()
            && !NO_SENTENCE.iter().any(|mark| line.trim_start().starts_with(mark))
            && is_sentence(line)
    });
    let words = "a sentence: it stands in crates/say/messages and is said by its name";
    told.map(|(at, _)| Finding::fault(format!("{}:{}", file.place, at + 1), words)).collect()
}

/// Whether a string of the line has as many words as a sentence.
fn is_sentence(line: &str) -> bool {
    let is_word = |word: &&str| {
        word.len() > 1 && word.chars().all(|letter| letter.is_ascii_alphabetic() || ",.;:'".contains(letter))
    };
    line.split('"').skip(1).step_by(2).any(|string| string.split(' ').filter(is_word).count() >= SENTENCE)
}

#[cfg(test)]
mod tests {
    use super::{File, of_house};

    const TEXTS: &str = "## Queens.\n\nqueen-none = no queen\nqueen-old-one = { $hive }: an old one\n";

    fn found(code: &str) -> Vec<String> {
        let files =
            [File::new("crates/say/messages/en-GB/queen.ftl", TEXTS), File::new("crates/advice/src/queen.rs", code)];
        of_house(&files).iter().map(ToString::to_string).collect()
    }

    #[test]
    fn a_text_that_nothing_says_is_a_fault() {
        let said = "use snowhum_say::queen as say;\nfn a() { say::none(); say::old_one(\"Alder\"); }\n";
        assert_eq!(found(said), Vec::<String>::new());
        let one = found("use snowhum_say::queen;\nfn a() { queen::none(); }\n");
        assert!(one.len() == 1 && one[0].contains("nothing says old_one"), "{one:?}");
    }

    #[test]
    fn a_text_that_is_looked_up_is_said_where_a_table_has_its_entry() {
        let table = |name: &str| {
            let files = [
                File::new("crates/say/messages/en-GB/queen.ftl", TEXTS),
                File::new("crates/say/build.rs", "const OF_TABLES: [&str; 1] = [\"queen\"];\n"),
                File::new("data/queens.toml", format!("[[queen]]\nname = \"{name}\"\n[[queen]]\nname = \"None\"\n")),
            ];
            of_house(&files).iter().map(ToString::to_string).collect::<Vec<_>>()
        };
        assert_eq!(table("old"), Vec::<String>::new());
        assert!(matches!(&*table("young"), [one] if one.contains("nothing says old_one")), "{:?}", table("young"));
    }

    #[test]
    fn a_sentence_in_the_core_is_a_fault_and_one_of_a_test_or_a_fault_of_the_program_is_none() {
        let said = "use snowhum_say::queen as say;\nfn a() { say::none(); say::old_one(\"Alder\"); }\n";
        let told = found(&format!("{said}const A: &str = \"put its bees to a strong colony\";\n"));
        assert!(told.len() == 1 && told[0].contains("queen.rs:3"), "{told:?}");
        let error = "#[error(\"a table of ours cannot be read\")]\nstruct A;\n";
        let test = "#[cfg(test)]\nmod tests {\n    const A: &str = \"put its bees to a strong colony\";\n}\n";
        assert_eq!(found(&format!("{said}{error}{test}")), Vec::<String>::new());
    }
}
