//! A keeper's language and units.

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use jiff::civil::Date;
use snowhum_units::System;
use std::sync::OnceLock;
use unic_langid::LanguageIdentifier;

use crate::language::{ALL_KINDS, widened};
use crate::message::Content;
use crate::{Fact, Language, Message, TERMS, TEXTS, TOPICS, functions};

/// What a keeper reads in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Tongue {
    language: Language,
    system: System,
    is_drawn: bool,
}

type Bundle = FluentBundle<FluentResource>;
type Topics = [OnceLock<Bundle>; TOPICS];
/// Of each language one in metric and one in US units.
static BUNDLES: [[Topics; 2]; ALL_KINDS] = [const { [const { [const { OnceLock::new() }; TOPICS] }; 2] }; ALL_KINDS];

impl Tongue {
    /// British English in metric units: what programs read.
    pub const BRITISH: Self = Self::new(System::Metric);

    /// British English in these units.
    #[must_use]
    pub const fn new(system: System) -> Self {
        Self { language: Language::British, system, is_drawn: false }
    }

    /// The same units in another language.
    #[must_use]
    pub const fn in_language(self, language: Language) -> Self {
        Self { language, ..self }
    }

    /// The same in a picture: a figure and its unit stay on one line, and a minus is no hyphen.
    #[must_use]
    pub const fn drawn(self) -> Self {
        Self { is_drawn: true, ..self }
    }

    /// A figure with its unit as it stands in what is said.
    pub(crate) fn figure(self, plain: String) -> String {
        if self.is_drawn { plain.replace('-', "−").replace(' ', "\u{a0}") } else { plain }
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

    /// What the cautions of a message say in British English, in a language that no keeper of it has read yet; none where it
    /// holds no caution.
    ///
    /// ```
    /// use snowhum_say::{Language, Tongue, cautions, words};
    /// let french = Tongue::BRITISH.in_language(Language::French);
    /// assert!(french.beside(&cautions::sentence(cautions::acids())).is_some_and(|said| said.contains("goggles")));
    /// assert_eq!((french.beside(&words::fewest()), Tongue::BRITISH.beside(&cautions::acids())), (None, None));
    /// ```
    #[must_use]
    pub fn beside(self, message: &Message) -> Option<String> {
        let british = self.in_language(Language::British);
        let said = if self.language.is_read() { Vec::new() } else { british.say_all(message.cautions()) };
        (!said.is_empty()).then(|| said.join(" "))
    }

    /// A message in words, as it stands inside a sentence.
    #[must_use]
    pub fn say(self, message: &Message) -> String {
        self.say_around(message, str::to_owned)
    }

    /// A message in words, where what is said as it stands is first changed, such as escaped for a page that lets a text's own
    /// marks stand.
    ///
    /// ```
    /// use snowhum_say::{Message, Tongue, now};
    /// let moved = now::moved_several(vec![Message::own("<b>")]);
    /// assert_eq!(Tongue::BRITISH.say_around(&moved, |own| own.replace('<', "&lt;")), "&lt;b>");
    /// ```
    #[must_use]
    pub fn say_around(self, message: &Message, own: fn(&str) -> String) -> String {
        match &message.0 {
            Content::Own(text) => own(text),
            Content::Several(parts, between) => {
                parts.iter().map(|part| self.say_around(part, own)).collect::<Vec<_>>().join(between)
            }
            Content::Named { topic, id, facts } => {
                let facts = facts.iter().map(|(name, fact)| (*name, self.value(fact, own))).collect();
                put(self.bundle(*topic), id, &facts)
            }
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

    /// A day and month, such as `15 April`.
    #[must_use]
    pub fn day(self, day: Date) -> String {
        self.language.day(day, "long")
    }

    /// A month by its number, 1 to 12; a number past the year's end counts on into the next.
    #[must_use]
    pub fn month(self, number: i8) -> String {
        let month = (number - 1).rem_euclid(12) + 1;
        Date::new(2000, month, 1).map_or_else(|_| number.to_string(), |day| self.language.day(day, "month"))
    }

    /// Messages, each in words.
    pub fn say_all<'m>(self, messages: impl IntoIterator<Item = &'m Message>) -> Vec<String> {
        messages.into_iter().map(|message| self.say(message)).collect()
    }

    fn value(self, fact: &Fact, own: fn(&str) -> String) -> FluentValue<'_> {
        match fact {
            Fact::Said(message) => FluentValue::String(self.say_around(message, own).into()),
            Fact::Number(number) => FluentValue::from(*number),
            // A name that a text selects by holds no space.
            Fact::Case(name) => FluentValue::String(name.replace(' ', "-").into()),
            Fact::List(parts) => {
                let said = parts.iter().map(|part| Message::own(self.say_around(part, own))).collect();
                functions::held(Fact::List(said), self)
            }
            fact => functions::held(fact.clone(), self),
        }
    }

    /// The texts of a topic, read when it is first spoken of; what a language lacks is said in British English.
    fn bundle(self, topic: usize) -> &'static Bundle {
        let Self { language, system, .. } = self;
        BUNDLES[language as usize][usize::from(system == System::Us)][topic].get_or_init(|| {
            let tag: LanguageIdentifier = language.tag().parse().unwrap_or_default();
            let mut bundle = FluentBundle::new_concurrent(vec![tag]);
            bundle.set_use_isolating(false);
            functions::add(&mut bundle, Self { is_drawn: false, ..self });
            if language == Language::Marked {
                bundle.set_transform(Some(widened));
            }
            let own = Some(language).filter(|own| Language::ALL[1..].contains(own));
            for spoken in [Some(Language::British), own].into_iter().flatten() {
                for text in [TERMS[spoken as usize][0], TEXTS[spoken as usize][topic]] {
                    // The build has read it without a fault; of a faulty one what can be read is kept.
                    let texts = FluentResource::try_new(text.to_owned()).unwrap_or_else(|(texts, _)| texts);
                    bundle.add_resource_overriding(texts);
                }
            }
            bundle
        })
    }
}

/// A fault of a text is found by the tests that say every message; a keeper sees what can be said.
fn put(bundle: &Bundle, id: &'static str, facts: &FluentArgs<'_>) -> String {
    let Some(pattern) = bundle.get_message(id).and_then(|message| message.value()) else { return id.to_owned() };
    bundle.format_pattern(pattern, Some(facts), &mut Vec::new()).into_owned()
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
