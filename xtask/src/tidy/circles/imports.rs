//! Which file of a crate stands on which: the names in its code, followed through `use` to the files that define them.

use crate::tidy::files::File;
use crate::tidy::scrub;
use std::collections::BTreeSet;

/// By file, the files it stands on.
pub(super) type Arrows = Vec<BTreeSet<usize>>;

/// A name as it is written, part by part.
type Path = Vec<String>;

/// Words that a definition begins with.
const DEFINES: [&str; 8] = ["struct", "enum", "union", "trait", "fn", "const", "static", "type"];
/// Hands through which a name is followed: more are a ring of `use` lines.
const HANDS: usize = 8;

/// The arrows between the files of one crate.
pub(super) fn arrows(files: &[&File]) -> Arrows {
    let modules = Modules(files.iter().map(|file| Module::of(file)).collect());
    (0..files.len()).map(|at| modules.below(at)).collect()
}

/// A file as a module.
#[derive(Default)]
struct Module {
    /// From the root of its crate.
    place: Path,
    defined: BTreeSet<String>,
    /// What `use` brings in, by the name it has here; `*` for all that a module defines.
    taken: Vec<(String, Path)>,
    /// Names in the rest of the code.
    named: BTreeSet<Path>,
}

impl Module {
    fn of(file: &File) -> Self {
        let inside = file.place.split_once("src/").map_or("", |(_, inside)| inside);
        let parts = inside.trim_end_matches(".rs").split('/').filter(|part| !matches!(*part, "lib" | "main" | "mod"));
        let mut module = Self { place: parts.map(str::to_owned).collect(), ..Self::default() };
        let code = scrub::product_code(&file.text);
        module.read(&words(&code));
        module
    }

    fn read(&mut self, words: &[&str]) {
        let mut rest = words;
        while let [word, after @ ..] = rest {
            rest = match (*word, after) {
                // Who may see a thing is no import.
                ("pub", ["(", "crate" | "super" | "self" | "in", ..]) => past(after, ")"),
                ("use", tree) => {
                    let end = tree.len() - past(tree, ";").len();
                    self.take(&tree[..end.saturating_sub(1)], &[]);
                    &tree[end..]
                }
                (define, [name, after @ ..]) if DEFINES.contains(&define) => {
                    self.defined.insert((*name).to_owned());
                    after
                }
                (word, after) if !is_name(word) => after,
                _ => {
                    let path = path(rest);
                    let length = 2 * path.len() - 1;
                    self.named.insert(path);
                    &rest[length..]
                }
            };
        }
    }

    /// Reads a tree of `use` that hangs on `outer`.
    fn take(&mut self, tree: &[&str], outer: &[String]) {
        let own = path(tree);
        let after = &tree[(2 * own.len()).saturating_sub(1)..];
        let mut full = [outer, &own].concat();
        match after {
            ["::", "{", inside @ .., "}"] => parts(inside).into_iter().for_each(|part| self.take(part, &full)),
            ["::", "*"] | ["*"] => self.taken.push(("*".to_owned(), full)),
            _ => {
                // `outer::{self}` is `outer`.
                full.truncate(full.len() - usize::from(!outer.is_empty() && own == ["self"]));
                let renamed = after.get(1).map(|name| (*name).to_owned());
                let name = renamed.or_else(|| full.last().cloned()).unwrap_or_default();
                self.taken.push((name, full));
            }
        }
    }

    fn takes(&self, name: &str) -> impl Iterator<Item = &Path> {
        self.taken.iter().filter(move |(own, _)| own == name).map(|(_, path)| path)
    }
}

/// All of a crate.
struct Modules(Vec<Module>);

impl Modules {
    /// The files that one stands on.
    fn below(&self, at: usize) -> BTreeSet<usize> {
        let file =
            |path: &Path| if path.len() == 1 { self.handed(at, path, HANDS) } else { self.file(at, path, HANDS) };
        self.0[at].named.iter().filter_map(file).filter(|file| *file != at).collect()
    }

    fn at(&self, place: &[String]) -> Option<usize> {
        self.0.iter().position(|module| module.place == place)
    }

    /// The file that defines what a path within a module names; none where that is of another crate.
    fn file(&self, at: usize, path: &[String], hands: usize) -> Option<usize> {
        let (first, inner) = path.split_first()?;
        let mut place = if first == "crate" { Path::new() } else { self.0[at].place.clone() };
        let mut rest = if matches!(first.as_str(), "crate" | "self") { inner } else { path };
        while let [up, after @ ..] = rest
            && up == "super"
        {
            place.pop();
            rest = after;
        }
        let is_local = rest.len() < path.len();
        while let [child, after @ ..] = rest {
            place.push(child.clone());
            if self.at(&place).is_none() {
                place.pop();
                break;
            }
            rest = after;
        }
        if !is_local && rest.len() == path.len() {
            return self.handed(at, path, hands);
        }
        let file = self.at(&place)?;
        self.handed(file, rest, hands).or(Some(file))
    }

    /// The file from which a module has a name by `use`; none where it has it from no file of the crate.
    fn handed(&self, at: usize, path: &[String], hands: usize) -> Option<usize> {
        let (first, inner) = path.split_first()?;
        let (module, hands) = (&self.0[at], hands.checked_sub(1)?);
        let of_glob = |glob: &Path| {
            let from = self.file(at, glob, hands).filter(|from| *from != at)?;
            self.0[from].defined.contains(first).then_some(from).or_else(|| self.handed(from, path, hands))
        };
        match module.takes(first).next() {
            Some(taken) => self.file(at, &[taken, inner].concat(), hands),
            None if module.defined.contains(first) => None,
            None => module.takes("*").find_map(of_glob),
        }
    }
}

/// Names, double colons, and every other letter by itself.
fn words(code: &str) -> Vec<&str> {
    let is_of_name = |letter: char| letter.is_alphanumeric() || letter == '_';
    let mut words = Vec::new();
    let mut rest = code.trim_start();
    while let Some(first) = rest.chars().next() {
        let length = match rest.find(|letter| !is_of_name(letter)) {
            _ if rest.starts_with("::") => 2,
            Some(0) => first.len_utf8(),
            end => end.unwrap_or(rest.len()),
        };
        let (word, after) = rest.split_at(length);
        words.push(word);
        rest = after.trim_start();
    }
    words
}

fn is_name(word: &str) -> bool {
    word.starts_with(|first: char| first.is_alphabetic() || first == '_')
}

/// The path that words begin with.
fn path(words: &[&str]) -> Path {
    let mut path = Path::new();
    let mut rest = words;
    while let [name, after @ ..] = rest
        && is_name(name)
    {
        path.push((*name).to_owned());
        let ["::", after @ ..] = after else { break };
        rest = after;
    }
    path
}

/// What follows the first of a word.
fn past<'a, 'b>(words: &'a [&'b str], word: &str) -> &'a [&'b str] {
    words.iter().position(|one| *one == word).map_or(&[], |at| &words[at + 1..])
}

/// The parts between commas, those within braces left whole.
fn parts<'a, 'b>(words: &'a [&'b str]) -> Vec<&'a [&'b str]> {
    let mut depth = 0_usize;
    let is_between = |word: &&str| {
        match *word {
            "{" => depth += 1,
            "}" => depth = depth.saturating_sub(1),
            _ => {}
        }
        depth == 0 && *word == ","
    };
    words.split(is_between).filter(|part| !part.is_empty()).collect()
}

#[cfg(test)]
mod tests {
    use super::{File, arrows};

    /// The files that `a.rs` stands on, with `lib.rs`, `b.rs` and `b/c.rs` beside it, both of which define a `Thing`.
    fn below(a: &str, lib: &str, b: &str) -> Vec<&'static str> {
        let places = ["lib.rs", "a.rs", "b.rs", "b/c.rs"];
        let texts = [lib, a, b, "pub struct Thing;"];
        let files: Vec<File> =
            places.iter().zip(texts).map(|(place, text)| File::new(format!("crates/x/src/{place}"), text)).collect();
        let all = arrows(&files.iter().collect::<Vec<_>>());
        all[1].iter().map(|at| places[*at]).collect()
    }

    #[test]
    fn a_name_is_of_the_file_that_defines_it_through_whatever_hands_it_went() {
        let own = "mod c;\npub struct Thing;";
        let handed = "mod c;\npub use c::{self, Thing as Other};\npub use c::*;";
        assert_eq!(below("use crate::b::Thing;\nfn f(_: Thing) {}", "", own), ["b.rs"]);
        assert_eq!(below("use super::b::{c::Thing};\nfn f(_: Thing) {}", "", own), ["b/c.rs"]);
        assert_eq!(below("fn f(_: crate::b::Other) {}", "", handed), ["b/c.rs"]);
        assert_eq!(below("use crate::b;\nfn f(_: b::Thing) {}", "", handed), ["b/c.rs"]);
        assert_eq!(below("use crate::Thing;\nfn f(_: Thing) {}", "pub use b::Thing;", handed), ["b/c.rs"]);
    }

    #[test]
    fn a_parent_stands_on_the_child_it_calls_and_not_on_one_it_only_hands_on() {
        let parent = |b: &str| {
            let files = [File::new("crates/x/src/b.rs", b), File::new("crates/x/src/b/c.rs", "pub fn go() {}")];
            arrows(&files.iter().collect::<Vec<_>>())[0].len()
        };
        assert_eq!((parent("mod c;\nfn f() { c::go() }"), parent("mod c;\npub(crate) use c::go;")), (1, 0));
    }

    #[test]
    fn tests_comments_visibility_and_other_crates_are_no_imports() {
        let quiet = "// crate::b::Thing\npub(in crate::b) fn f() {}\nuse other::b::Thing;\nfn g(_: Thing) {}";
        assert!(below(quiet, "", "").is_empty());
        assert!(below("#[cfg(test)]\nmod tests { use crate::b::Thing; fn f(_: Thing) {} }", "", "").is_empty());
    }
}
