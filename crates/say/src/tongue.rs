//! A keeper's language and units.

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use snowhum_units::System;
use std::sync::OnceLock;
use unic_langid::LanguageIdentifier;

use crate::message::Content;
use crate::{Fact, Language, Message, TEXTS, TOPICS, functions};

/// What a keeper reads in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Tongue {
    language: Language,
    system: System,
}

type Bundle = FluentBundle<FluentResource>;
type Topics = [OnceLock<Bundle>; TOPICS];
static BUNDLES: [Topics; Language::ALL.len()] = [const { [const { OnceLock::new() }; TOPICS] }; Language::ALL.len()];

impl Tongue {
    /// British English in metric units: what programs read.
    pub const BRITISH: Self = Self { language: Language::British, system: System::Metric };

    /// British English in these units.
    #[must_use]
    pub const fn new(system: System) -> Self {
        Self { language: Language::British, system }
    }

    /// The same units in another language.
    #[must_use]
    pub const fn in_language(self, language: Language) -> Self {
        Self { language, ..self }
    }

    /// The units that are read.
    #[must_use]
    pub const fn system(self) -> System {
        self.system
    }

    /// The language that is read.
    #[must_use]
    pub const fn language(self) -> Language {
        self.language
    }

    /// A message in words, as it stands inside a sentence.
    #[must_use]
    pub fn say(self, message: &Message) -> String {
        match &message.0 {
            Content::Own(text) => text.clone().into_owned(),
            Content::Sentences(parts) => self.say_all(parts).join(" "),
            Content::Named { topic, id, facts } => self.put(bundle(self.language, *topic), id, facts),
        }
    }

    /// A message with a capital and a full stop.
    #[must_use]
    pub fn sentence(self, message: &Message) -> String {
        sentence(&self.say(message))
    }

    /// A message with a capital.
    #[must_use]
    pub fn capital(self, message: &Message) -> String {
        capital(&self.say(message))
    }

    /// Messages, each in words.
    pub fn say_all<'m>(self, messages: impl IntoIterator<Item = &'m Message>) -> Vec<String> {
        messages.into_iter().map(|message| self.say(message)).collect()
    }

    /// A fault of a text is found by the tests that say every message; a keeper sees what can be said.
    fn put(self, bundle: &Bundle, id: &'static str, facts: &[(&'static str, Fact)]) -> String {
        let Some(pattern) = bundle.get_message(id).and_then(|message| message.value()) else { return id.to_owned() };
        let arguments: FluentArgs<'_> = facts.iter().map(|(name, fact)| (*name, self.value(fact))).collect();
        bundle.format_pattern(pattern, Some(&arguments), &mut Vec::new()).into_owned()
    }

    fn value(self, fact: &Fact) -> FluentValue<'_> {
        match fact {
            Fact::Said(message) => FluentValue::String(self.say(message).into()),
            Fact::Number(number) => FluentValue::from(*number),
            Fact::Case(name) => FluentValue::String((*name).into()),
            fact => functions::held(fact, self),
        }
    }
}

/// The texts of a topic, read when it is first spoken of; what a language lacks is said in British English.
fn bundle(language: Language, topic: usize) -> &'static Bundle {
    BUNDLES[language as usize][topic].get_or_init(|| {
        let tag: LanguageIdentifier = language.tag().parse().unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![tag]);
        bundle.set_use_isolating(false);
        functions::add(&mut bundle, language);
        for spoken in [Language::British, language] {
            // The build has read it without a fault; of a faulty one what can be read is kept.
            let texts =
                FluentResource::try_new(TEXTS[spoken as usize][topic].to_owned()).unwrap_or_else(|(texts, _)| texts);
            bundle.add_resource_overriding(texts);
        }
        bundle
    })
}

/// A text that begins with a capital and ends with a full stop.
///
/// ```
/// assert_eq!(snowhum_say::sentence("by 4 May"), "By 4 May.");
/// ```
#[must_use]
pub fn sentence(text: &str) -> String {
    let end = if text.ends_with(['.', '!', '?']) { "" } else { "." };
    capital(text) + end
}

/// A text that begins with a capital.
#[must_use]
pub fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}
