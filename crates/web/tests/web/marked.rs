//! Nothing is said that comes from no message. Under a tongue that writes every text in wide letters, what stands in plain ones
//! was put on a page in another way, and no language will ever reach it.

use roxmltree::{Document, Node};
use snowhum_apiary::{Act, Apiary, Entry};
use snowhum_say::Language;

use crate::pages::every_page;
use crate::support::{Served, run, run_bare, strict};

/// What may stand in plain letters: on which pages, within which element, and why.
const SPARED: [(&str, &str, &str); 26] = [
    ("", "svg", PICTURE),
    ("", "figure", PICTURE),
    ("", "table", PICTURE),
    ("", ".sources", SOURCE),
    ("", ".evidence", SOURCE),
    ("", ".age", SOURCE),
    ("/source", "html", SOURCE),
    ("", ".caution", DATA),
    ("", ".cautions", DATA),
    ("", ".stop", DATA),
    ("/begin", "form", DATA),
    ("/dead", "main", DATA),
    ("/feed", "details", DATA),
    ("/feed", ".folded", DATA),
    ("/fit", "main", DATA),
    ("/hive", "details", DATA),
    ("/jobs", ".job", DATA),
    ("/losses", "details", DATA),
    ("/mites", "details", DATA),
    ("", "details.no-print", DATA),
    ("/normal", "main", DATA),
    ("/paper/cards", ".card", DATA),
    ("/spring", "em", DATA),
    ("", ".notes", TYPED),
    ("/hive/nobody", ".lede", TYPED),
    ("/settings", ".choices", "languages by their own names"),
];
const PICTURE: &str = "said by pictures, and by the tables beside them";
const SOURCE: &str = "sources and the names of figures";
const DATA: &str = "words of tables of data";
const TYPED: &str = "as it is typed";

/// What may stand in plain letters anywhere: a name, units and money, and what stands between the parts of a list.
const WORDS: [&str; 6] = ["Snowhum", "kg", "cm", "EUR", "and", "to"];

fn is_within(node: Node<'_, '_>, element: &str) -> bool {
    let (tag, class) = element.split_once('.').unwrap_or((element, ""));
    let is_it = |up: Node<'_, '_>| {
        let classes = up.attribute("class").unwrap_or_default();
        (tag.is_empty() || up.has_tag_name(tag)) && (class.is_empty() || classes.split(' ').any(|one| one == class))
    };
    node.ancestors().any(is_it)
}

fn is_spared(page: &str, node: Node<'_, '_>) -> bool {
    const NO_TEXT: [&str; 4] = ["code", "style", "script", "textarea"];
    let is_own = |up: Node<'_, '_>| NO_TEXT.contains(&up.tag_name().name()) || up.attribute("translate") == Some("no");
    node.ancestors().any(is_own)
        || SPARED.iter().any(|(pages, element, _)| page.starts_with(pages) && is_within(node, element))
}

/// What of a text stands in plain letters, but for somebody's own words and for facts in braces that a script fills in.
fn in_plain_letters<'t>(text: &'t str, own: &[String]) -> Option<&'t str> {
    let outside = text.split('{').map(|part| part.split_once('}').map_or(part, |(_, after)| after)).collect::<String>();
    let rest = own.iter().fold(outside, |rest, own| rest.replace(own, ""));
    let mut words = rest.split(|letter: char| !letter.is_ascii_alphabetic());
    words.any(|word| word.len() > 1 && !WORDS.contains(&word)).then_some(text)
}

/// Texts of a page, and what is read aloud, that came from no message, with where they stand.
fn of_no_message(page: &str, body: &str, own: &[String]) -> Vec<String> {
    let strict = strict(body).unwrap();
    let document = Document::parse(&strict).unwrap();
    let mut found = Vec::new();
    for node in document.descendants().filter(|node| !is_spared(page, *node)) {
        let said = [node.text().filter(|_| node.is_text()), node.attribute("aria-label"), node.attribute("title")];
        for text in said.into_iter().flatten().filter_map(|text| in_plain_letters(text, own)) {
            let place = node.ancestors().filter(Node::is_element).take(4);
            let place = place.map(|up| [up.tag_name().name(), up.attribute("class").unwrap_or_default()].join("."));
            found.push(format!("{page} <{}> {}", place.collect::<Vec<_>>().join(" < "), text.trim()));
        }
    }
    found
}

/// Every text that the keeper wrote: names, free words, what was noted of treatments.
fn own_texts(yard: &Apiary) -> impl Iterator<Item = &str> {
    let names = yard.colonies.iter().map(|colony| &colony.name).chain(yard.hives.iter().map(|hive| &hive.name));
    let layers = yard.hives.iter().flat_map(|hive| hive.lid.iter().chain(&hive.wrap));
    let noted = yard.notes.iter().flat_map(|note| &note.entries).flat_map(|entry| match entry {
        Entry::Words(words) => vec![words],
        Entry::Act(Act::Treated(given)) => given.details.values().collect(),
        Entry::Act(Act::CarriedIn(room)) => vec![room],
        Entry::Act(_) | Entry::Sign(_) => Vec::new(),
    });
    let rooms = yard.rooms.iter().map(|room| &room.name);
    let own = std::iter::once(&yard.name).chain(&yard.registration).chain(names).chain(rooms).chain(noted);
    own.chain(layers.map(|layer| &layer.material.name)).map(String::as_str)
}

#[test]
fn every_word_of_every_page_comes_from_a_message_or_is_somebodys_own() {
    run_bare(async {
        let served = Served::in_language(Language::Marked).await;
        served.settled().await;
        let own: Vec<String> = own_texts(&served.yard).filter(|text| text.len() > 2).map(str::to_owned).collect();
        let asked = ["/nowhere", "/hive/nobody"].map(str::to_owned);
        let mut found = Vec::new();
        for page in every_page(&served).into_iter().chain(asked) {
            found.extend(of_no_message(&page, &served.get(&page).await.body, &own));
        }
        assert!(found.is_empty(), "{} texts come from no message:\n{}", found.len(), found.join("\n"));
    });
}

#[test]
fn whatever_the_script_of_the_round_says_comes_with_its_page() {
    run(|served| async move {
        let page = served.get("/round").await.body;
        let script = include_str!("../../assets/round.js");
        let named =
            script.split("say(").skip(1).flat_map(|call| call.split(')').next().unwrap().split('"').skip(1).step_by(2));
        let is_name = |name: &&str| name.bytes().all(|letter| letter == b'-' || letter.is_ascii_lowercase());
        let named: Vec<&str> = named.filter(is_name).collect();
        assert!(named.len() > 20, "{named:?}");
        for name in named {
            assert!(page.contains(&format!("data-name=\"{name}\"")), "{name} does not come with the page");
        }
    });
}
