//! What holds of the texts.

#![expect(clippy::unwrap_used, clippy::panic, reason = "a test fails by panicking")]

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use jiff::civil::date;
use snowhum_say::{
    Language, Message, Tongue, both_ways, dead_bees, deadout, dress_page, every, indoors, lessons, now, sums, words,
};
use snowhum_units::{Kelvin, Kilogram, System};
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

#[test]
fn units_are_those_of_the_reader() {
    let food = now::moved_food(Kilogram::new(11.0), Kilogram::new(13.0));
    assert_eq!(Tongue::new(System::Metric).say(&food), "food from 13.0 kg to 11.0 kg");
    assert_eq!(Tongue::new(System::Us).say(&food), "food from 28.7 lb to 24.3 lb");
}

#[test]
fn a_list_and_a_message_are_facts_like_any_other() {
    let places = vec![dead_bees::floor(40), dead_bees::snow(7)];
    let lie = dead_bees::lie(50, places);
    assert_eq!(Tongue::BRITISH.say(&lie), "of some 50 dead about 40 on its floor, 7 there under snow");
    let several = Message::sentences([words::by(date(2026, 2, 7)), Message::NONE, Message::own("Alder")]);
    assert_eq!(Tongue::BRITISH.say(&several), "by 7 February Alder");
}

#[test]
fn what_reads_alike_is_said_once() {
    let ends = [3.8, 4.2].map(|celsius| indoors::degrees(Kelvin::from_celsius(celsius)));
    let air = indoors::air(ends.into());
    assert_eq!(Tongue::new(System::Metric).say(&air), "4 °C");
    assert_eq!(Tongue::new(System::Us).say(&air), "39 °F to 40 °F");
}

#[test]
fn a_limit_is_said_with_the_digits_it_has() {
    let fault = sums::out_of_range(100.0, 0.1, 0.05, "stores");
    assert_eq!(Tongue::BRITISH.say(&fault), "stores: 0.05 is outside 0.1 to 100");
}

#[test]
fn a_unit_that_both_ends_of_a_range_share_is_said_once() {
    let rule = deadout::stores_range(Kilogram::new(16.0), Kilogram::new(18.0), Kilogram::new(6.5));
    assert_eq!(Tongue::BRITISH.say(&rule), "6.5 kg of stores; the rule here asks for 16 to 18 kg");
    assert_eq!(Tongue::new(System::Us).say(&rule), "14.3 lb of stores; the rule here asks for 35 to 40 lb");
}

#[test]
fn one_is_not_many() {
    let said = |hives: usize| Tongue::BRITISH.say(&lessons::forecast_hives(hives));
    assert_eq!([said(1), said(12), said(13)], ["One hive", "Twelve hives", "13 hives"]);
    assert_eq!(Tongue::BRITISH.say(&both_ways(0.99)), "of 100 hives like this about 99 are, 1 is not");
}

#[test]
fn json_is_british_and_metric_and_is_read_as_it_stands() {
    let food = now::moved_food(Kilogram::new(11.0), Kilogram::new(13.0));
    let json = serde_json::to_string(&food).unwrap();
    assert_eq!(json, "\"food from 13.0 kg to 11.0 kg\"");
    let read: Message = serde_json::from_str(&json).unwrap();
    assert_eq!(Tongue::new(System::Us).say(&read), "food from 13.0 kg to 11.0 kg");
}

/// The ids of a language's texts, each with the facts and the functions it names.
fn texts(language: Language) -> BTreeMap<String, BTreeSet<String>> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("messages").join(language.tag());
    let mut texts = BTreeMap::new();
    for file in folder.read_dir().unwrap() {
        let path = file.unwrap().path();
        let text = std::fs::read_to_string(&path).unwrap();
        let read = fluent_syntax::parser::parse(text.as_str()).map_err(|(_, faults)| faults);
        for entry in read.unwrap_or_else(|faults| panic!("{}: {faults:?}", path.display())).body {
            let Entry::Message(message) = entry else { continue };
            let mut facts = BTreeSet::new();
            of_pattern(&message.value.unwrap(), &mut facts);
            let twice = texts.insert(message.id.name.to_owned(), facts);
            assert!(twice.is_none(), "{}: {} stands twice", path.display(), message.id.name);
        }
    }
    texts
}

fn of_pattern(pattern: &Pattern<&str>, facts: &mut BTreeSet<String>) {
    for element in &pattern.elements {
        match element {
            PatternElement::TextElement { .. } => {}
            PatternElement::Placeable { expression: Expression::Inline(inline) } => of_inline("", inline, facts),
            PatternElement::Placeable { expression: Expression::Select { selector, variants } } => {
                of_inline("", selector, facts);
                variants.iter().for_each(|variant| of_pattern(&variant.value, facts));
            }
        }
    }
}

fn of_inline(function: &str, inline: &InlineExpression<&str>, facts: &mut BTreeSet<String>) {
    match inline {
        InlineExpression::VariableReference { id } => drop(facts.insert(format!("{function}({})", id.name))),
        InlineExpression::FunctionReference { id, arguments } => {
            // Where a language writes a capital and by what it selects is its own.
            let function = if ["CAPITAL", "SENTENCE", "NUMBER"].contains(&id.name) { "" } else { id.name };
            arguments.positional.iter().for_each(|argument| of_inline(function, argument, facts));
        }
        _ => {}
    }
}

#[test]
fn every_language_says_every_message_and_names_its_facts() {
    let british = texts(Language::British);
    for language in [Language::British, Language::German, Language::French] {
        let own = texts(language);
        let missing: Vec<_> = british.keys().filter(|id| !own.contains_key(*id)).collect();
        let unknown: Vec<_> = own.keys().filter(|id| !british.contains_key(*id)).collect();
        assert!(missing.is_empty() && unknown.is_empty(), "{language:?} lacks {missing:?}, has besides {unknown:?}");
        for (id, facts) in own {
            assert_eq!(facts, british[&id], "{language:?} {id}");
        }
    }
}

#[test]
fn nothing_is_left_unsaid() {
    for message in every() {
        for language in Language::ALL {
            for system in [System::Metric, System::Us] {
                let said = Tongue::new(system).in_language(language).say(&message);
                let id = message.id().unwrap();
                assert!(!said.is_empty() && !said.contains(['{', '}', '\n']), "{language:?} {id}: {said:?}");
            }
        }
    }
}

#[test]
fn numbers_and_days_are_written_as_each_language_writes_them() {
    let food = now::moved_food(Kilogram::new(11.0), Kilogram::new(13.5));
    let said = |language| Tongue::BRITISH.in_language(language).say(&food);
    assert_eq!(said(Language::German), "Futter von 13,5 kg auf 11,0 kg");
    assert_eq!(said(Language::French), "nourriture de 13,5 kg à 11,0 kg");
    let about = |language| Tongue::BRITISH.in_language(language).say(&words::mid(date(2026, 3, 1)));
    assert_eq!(Language::ALL.map(about), ["mid-March", "mid-March", "Mitte März", "mi-mars"]);
}

/// The words that a language's texts share, by their names.
fn terms(language: Language) -> BTreeMap<String, String> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("messages").join(language.tag()).join("terms.ftl");
    let text = std::fs::read_to_string(path).unwrap();
    let read = fluent_syntax::parser::parse(text.as_str()).unwrap();
    let words = read.body.iter().filter_map(|entry| match entry {
        Entry::Term(term) => match term.value.elements.as_slice() {
            [PatternElement::TextElement { value }] => Some((term.id.name.to_owned(), (*value).to_owned())),
            _ => panic!("{}: more than a word", term.id.name),
        },
        _ => None,
    });
    words.collect()
}

#[test]
fn each_side_of_the_ocean_has_its_words_of_the_trade() {
    let said = |language| Tongue::BRITISH.in_language(language).say(&dress_page::floor());
    assert_eq!([Language::British, Language::NorthAmerican].map(said), ["Floor", "Bottom board"]);
    assert!(terms(Language::British).keys().eq(terms(Language::NorthAmerican).keys()));
}

/// A word that is another across the ocean is never written out, or it would be read there.
#[test]
fn british_texts_name_such_words_by_their_terms() {
    let foreign = |text: &str| {
        let text = text.replace("United Kingdom", "").replace("United States", "").to_lowercase();
        let is_word = |at: usize, word: &str| {
            let joins = |byte: Option<&u8>| byte.is_some_and(|byte| byte.is_ascii_alphanumeric() || *byte == b'-');
            !joins(at.checked_sub(1).and_then(|at| text.as_bytes().get(at)))
                && !joins(text.as_bytes().get(at + word.len()))
        };
        terms(Language::British).into_values().find(|word| text.match_indices(word).any(|(at, _)| is_word(at, word)))
    };
    for message in every() {
        // What is written of terms is North American here, so what is British stands in the text itself.
        let said = Tongue::BRITISH.in_language(Language::NorthAmerican).say(&message);
        let typed = said.contains("<code>");
        assert!(typed || foreign(&said).is_none(), "{:?}: {:?} in {said:?}", message.id(), foreign(&said));
    }
}
