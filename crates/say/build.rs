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
/// Topics of the entries of tables in `data/`, and of commands, which are looked up by a name.
const OF_TABLES: [&str; 9] =
    ["deadout-table", "feed-never", "fit-class", "glossary", "help", "losses-survey", "questions", "regions", "usual"];

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
    /// A function for each message, or of a topic of tables one that looks them up; and each made once.
    fn module(&self, samples: &mut String) -> Outcome<String> {
        let (name, module) = (self.name, self.name.replace('-', "_"));
        let read = fluent_syntax::parser::parse(self.text).map_err(|(_, faults)| format!("{faults:?}"))?;
        let (mut functions, mut cases) = (String::new(), String::new());
        for entry in &read.body {
            let Entry::Message(message) = entry else { continue };
            let id = message.id.name;
            let short = id.strip_prefix(name).and_then(|id| id.strip_prefix('-'));
            let short = short.ok_or_else(|| format!("{id}: begin with {name}-"))?;
            let pattern = message.value.as_ref().ok_or_else(|| format!("{id} says nothing"))?;
            let facts = facts(pattern, self.terms).map_err(|fault| format!("{id}: {fault}"))?;
            let made = format!("Message::named({}, {id:?}, vec![{}])", self.number, filled(&facts));
            if !OF_TABLES.contains(&name) {
                let function = short.replace('-', "_");
                writeln!(functions, "    #[doc = {:?}]\n    #[must_use]", plain(pattern))?;
                writeln!(
                    functions,
                    "    pub fn {function}({}) -> Message {{\n        {made}\n    }}",
                    arguments(&facts)
                )?;
                let made_up: Vec<String> = facts.values().map(Kind::made_up).collect();
                writeln!(samples, "        {module}::{function}({}),", made_up.join(", "))?;
            } else if facts.is_empty() {
                writeln!(cases, "            {short:?} => {made},")?;
                writeln!(samples, "        {made},")?;
            } else {
                return Err(format!("{id}: what is looked up tells of no fact").into());
            }
        }
        let body = if cases.is_empty() { functions } else { looked_up(&cases) };
        let about = format!("/// What `messages/en-GB/{name}.ftl` says.");
        Ok(format!("{about}\npub mod {module} {{\n    use super::Message;\n{body}}}\n"))
    }
}

fn looked_up(cases: &str) -> String {
    let about = "    /// What is said of an entry by its name; none where nothing is.\n    #[must_use]";
    let head = "    pub fn named(name: &str) -> Option<Message> {\n        Some(match name {";
    format!("{about}\n{head}\n{cases}            _ => return None,\n        }})\n    }}\n")
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
