//! What is said to a keeper stands in `crates/say/messages`: a text that nothing says, and a sentence written elsewhere.

use super::files::File;
use super::finding::Finding;
use super::scrub;

/// The crate of messages, whose own code says none but those of chances, thirds of a month and what the units find.
const OF_TEXTS: &str = "crates/say/";
const SAID_THERE: (&[&str], &str) = (&["words", "quantity"], "crates/say/src/");
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
        Some((file, topic))
    });
    let mut findings = Vec::new();
    for (file, topic) in texts {
        let module = topic.replace('-', "_");
        let says = |file: &&File| {
            let is_speaker = !file.place.starts_with(OF_TEXTS)
                || (SAID_THERE.0.contains(&topic) && file.place.starts_with(SAID_THERE.1));
            is_speaker && file.is_rust() && file.holds(&module)
        };
        let speakers: Vec<&File> = files.iter().filter(says).collect();
        let unsaid = ids(&file.text, topic).filter(|id| !speakers.iter().any(|file| file.holds(id)));
        findings.extend(unsaid.map(|id| Finding::fault(&file.place, format!("nothing says {id}"))));
    }
    let silent = files.iter().filter(|file| SILENT.iter().any(|place| file.place.starts_with(place)));
    findings.extend(silent.filter(|file| file.is_rust() && !file.is_of_tests()).flat_map(sentences));
    findings
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
    fn a_sentence_in_the_core_is_a_fault_and_one_of_a_test_or_a_fault_of_the_program_is_none() {
        let said = "use snowhum_say::queen as say;\nfn a() { say::none(); say::old_one(\"Alder\"); }\n";
        let told = found(&format!("{said}const A: &str = \"put its bees to a strong colony\";\n"));
        assert!(told.len() == 1 && told[0].contains("queen.rs:3"), "{told:?}");
        let error = "#[error(\"a table of ours cannot be read\")]\nstruct A;\n";
        let test = "#[cfg(test)]\nmod tests {\n    const A: &str = \"put its bees to a strong colony\";\n}\n";
        assert_eq!(found(&format!("{said}{error}{test}")), Vec::<String>::new());
    }
}
