//! Makes a function of every message: its arguments are the facts that its British text names, each of the type that the
//! function round it asks for. A message that is not written does not compile, nor one without its facts.

#[path = "build/facts.rs"]
mod facts;

use facts::{Facts, Kind, facts, plain};
use fluent_syntax::ast::Entry;
use std::error::Error;
use std::fmt::Write;
use std::path::Path;
use std::{env, fs};

type Outcome<T> = Result<T, Box<dyn Error>>;

/// The languages, as `Language::ALL` has them; of the first the functions are made.
const LANGUAGES: [&str; 4] = ["en-GB", "en-US", "de", "fr"];
/// The file of words that texts share.
const TERMS: &str = "terms";

fn main() -> Outcome<()> {
    let folder = Path::new(&env::var("CARGO_MANIFEST_DIR")?).join("messages");
    println!("cargo::rerun-if-changed={}", folder.display());
    let topics = topics(&folder.join(LANGUAGES[0]))?;
    let mut rust = String::new();
    let mut samples = String::new();
    let terms = terms(&folder.join(LANGUAGES[0]).join(TERMS).with_extension("ftl"))?;
    for (number, name) in topics.iter().enumerate() {
        let path = folder.join(LANGUAGES[0]).join(name).with_extension("ftl");
        let topic = Topic { number, name, text: &fs::read_to_string(&path)?, terms: &terms };
        rust += &topic.module(&mut samples).map_err(|fault| format!("{}: {fault}", path.display()))?;
    }
    writeln!(rust, "/// Every message once, with made-up facts, for whoever looks at texts.\n#[must_use]")?;
    writeln!(rust, "pub fn every() -> Vec<Message> {{\n    vec![\n{samples}    ]\n}}")?;
    writeln!(rust, "pub(crate) const TOPICS: usize = {};", topics.len())?;
    rust += &texts(&folder, "TEXTS", &topics)?;
    rust += &texts(&folder, "TERMS", &[TERMS.to_owned()])?;
    Ok(fs::write(Path::new(&env::var("OUT_DIR")?).join("messages.rs"), rust)?)
}

/// The names of the words that texts share.
fn terms(path: &Path) -> Outcome<Vec<String>> {
    let text = fs::read_to_string(path)?;
    let read = fluent_syntax::parser::parse(text.as_str()).map_err(|(_, faults)| format!("{faults:?}"))?;
    let name = |entry: &Entry<&str>| if let Entry::Term(term) = entry { Some(term.id.name.to_owned()) } else { None };
    Ok(read.body.iter().filter_map(name).collect())
}

/// The names of the topics: the files of a language.
fn topics(folder: &Path) -> Outcome<Vec<String>> {
    let mut topics = Vec::new();
    for file in fs::read_dir(folder)? {
        let path = file?.path();
        topics.push(path.file_stem().and_then(|name| name.to_str()).ok_or("a file without a name")?.to_owned());
    }
    topics.retain(|topic| topic != TERMS);
    topics.sort();
    Ok(topics)
}

/// The texts of all languages; empty where one has no such file.
fn texts(folder: &Path, called: &str, topics: &[String]) -> Outcome<String> {
    let mut rust = format!("static {called}: [[&str; {}]; {}] = [\n", topics.len(), LANGUAGES.len());
    for language in LANGUAGES {
        let path = |topic: &String| folder.join(language).join(topic).with_extension("ftl");
        let included = |topic| {
            let path = path(topic);
            if path.exists() { format!("include_str!({path:?})") } else { "\"\"".to_owned() }
        };
        writeln!(rust, "    [{}],", topics.iter().map(included).collect::<Vec<_>>().join(", "))?;
    }
    Ok(rust + "];\n")
}

/// A file of British texts.
struct Topic<'t> {
    number: usize,
    name: &'t str,
    text: &'t str,
    terms: &'t [String],
}

impl Topic<'_> {
    /// A function for each message, and a call of each.
    fn module(&self, samples: &mut String) -> Outcome<String> {
        let (name, module) = (self.name, self.name.replace('-', "_"));
        let mut rust = format!("/// What `messages/en-GB/{name}.ftl` says.\npub mod {module} {{\n");
        rust += "    use super::Message;\n";
        let read = fluent_syntax::parser::parse(self.text).map_err(|(_, faults)| format!("{faults:?}"))?;
        for entry in &read.body {
            let Entry::Message(message) = entry else { continue };
            let id = message.id.name;
            let short = id.strip_prefix(name).and_then(|id| id.strip_prefix('-'));
            let short = short.ok_or_else(|| format!("{id}: begin with {name}-"))?.replace('-', "_");
            let pattern = message.value.as_ref().ok_or_else(|| format!("{id} says nothing"))?;
            let facts = facts(pattern, self.terms).map_err(|fault| format!("{id}: {fault}"))?;
            let number = self.number;
            writeln!(rust, "    #[doc = {:?}]\n    #[must_use]", plain(pattern))?;
            writeln!(rust, "    pub fn {short}({}) -> Message {{", arguments(&facts))?;
            writeln!(rust, "        Message::named({number}, {id:?}, vec![{}])\n    }}", filled(&facts))?;
            let made_up: Vec<String> = facts.values().map(Kind::made_up).collect();
            writeln!(samples, "        {module}::{short}({}),", made_up.join(", "))?;
        }
        Ok(rust + "}\n")
    }
}

fn arguments(facts: &Facts<'_>) -> String {
    let argument = |(name, kind): (&&str, &Kind)| format!("{}: {}", name.replace('-', "_"), kind.argument());
    facts.iter().map(argument).collect::<Vec<_>>().join(", ")
}

fn filled(facts: &Facts<'_>) -> String {
    let fact = |(name, kind): (&&str, &Kind)| {
        let into = if kind.argument().starts_with("impl") { ".into()" } else { "" };
        format!("({name:?}, super::Fact::from({}{into}))", name.replace('-', "_"))
    };
    facts.iter().map(fact).collect::<Vec<_>>().join(", ")
}
