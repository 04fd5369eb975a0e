//! What every page knows: the yard, the settings, the last estimate and how old it is.

use axum::extract::FromRequestParts;
use axum::http::Uri;
use axum::http::request::Parts;
use jiff::ZonedDateTime;
use jiff::civil::Date;
use snowhum_advice::indoors::IndoorsAnswer;
use snowhum_advice::now::ColonyNow;
use snowhum_apiary::{Apiary, Colony, ColonyId, Note};
use snowhum_say::{Message, Tongue, note_page};
use std::convert::Infallible;
use std::sync::Arc;
use uuid::Uuid;

use crate::app::App;
use crate::fault::Fault;
use crate::gate::Visitor;
use crate::lasting::Last;
use crate::reckon::Standing;
use crate::sent::shortened;
use crate::settings::Settings;

/// One look at the yard.
pub(crate) struct View {
    pub(crate) apiary: Apiary,
    pub(crate) settings: Settings,
    pub(crate) now: ZonedDateTime,
    pub(crate) standing: Option<Arc<Standing>>,
    pub(crate) trouble: Option<Message>,
    /// Whether something has changed since the estimate was begun.
    pub(crate) is_behind: bool,
    /// Whether a long answer that the page shows is on its way.
    pub(crate) awaits: bool,
    pub(crate) visitor: Visitor,
}

impl View {
    pub(crate) async fn of(app: &App) -> Result<Self, Fault> {
        let settings = app.settings().await?;
        let apiary = settings.priced(app.apiary().await?);
        app.turn_to(app.day(&apiary));
        let standing = app.standing();
        let revision = app.revision();
        Ok(Self {
            now: app.now(&apiary),
            is_behind: standing.as_ref().is_none_or(|standing| standing.revision != revision),
            trouble: app.trouble(),
            awaits: false,
            visitor: Visitor::now(),
            apiary,
            settings,
            standing,
        })
    }

    /// What the keeper reads in.
    pub(crate) fn tongue(&self) -> Tongue {
        self.settings.tongue()
    }

    /// Whether the page will have more to say soon.
    pub(crate) fn waits(&self) -> bool {
        self.awaits || (self.is_behind && self.trouble.is_none())
    }

    /// The page renews itself until this answer is of now.
    pub(crate) fn await_for<T>(&mut self, last: &Last<T>) {
        self.awaits |= last.is_behind;
    }

    /// The day of what is shown: an old answer stands under its own date.
    pub(crate) fn shown_day(&self) -> Date {
        self.standing.as_ref().map_or_else(|| self.now.date(), |standing| standing.present.now.as_of)
    }

    /// A colony by its id, with its place.
    pub(crate) fn colony(&self, id: Uuid) -> Result<(usize, &Colony), Fault> {
        let found = self.apiary.colonies.iter().enumerate().find(|(_, colony)| colony.id == ColonyId(id));
        found.ok_or(Fault::Missing("colony"))
    }

    /// A colony as somebody may write it: by its id, or by its name in any case.
    pub(crate) fn meant(&self, text: &str) -> Result<(usize, &Colony), Fault> {
        if let Ok(id) = text.parse() {
            return self.colony(id).map_err(|_| self.no_colony(text));
        }
        let text = text.trim();
        let colonies = || self.apiary.colonies.iter().enumerate();
        let exact = colonies().find(|(_, colony)| colony.name == text);
        let in_any_case = || colonies().find(|(_, colony)| colony.name.to_lowercase() == text.to_lowercase());
        exact.or_else(in_any_case).ok_or_else(|| self.no_colony(text))
    }

    /// The colony an address such as `/hive/{colony}/weigh` means; a name leads on to the address with the id.
    pub(crate) fn addressed(&self, text: &str, uri: &Uri) -> Result<(usize, &Colony), Fault> {
        let (at, colony) = self.meant(text)?;
        if text.parse() == Ok(colony.id.0) {
            return Ok((at, colony));
        }
        let id = colony.id.0.to_string();
        let mut parts: Vec<&str> = uri.path().split('/').collect();
        if let Some(part) = parts.get_mut(2) {
            *part = &id;
        }
        let asked = uri.query().map_or_else(String::new, |asked| format!("?{asked}"));
        Err(Fault::Elsewhere(parts.join("/") + &asked))
    }

    fn no_colony(&self, text: &str) -> Fault {
        let colonies = self.apiary.colonies.iter().map(|colony| (colony.name.clone(), colony.id)).collect();
        Fault::NoColony { asked: shortened(text), colonies }
    }

    /// A colony's part of the estimate, by its place in the yard.
    pub(crate) fn colony_now(&self, at: usize) -> Option<&ColonyNow> {
        self.standing.as_ref()?.present.now.colonies.get(at)
    }

    /// Colonies that are watched still, with their places in the yard: all of them until there is an estimate.
    pub(crate) fn watched(&self) -> impl Iterator<Item = (usize, &Colony)> {
        self.apiary.colonies.iter().enumerate().filter(|(at, _)| !self.is_gone(*at))
    }

    /// Colonies that are watched no more.
    pub(crate) fn gone(&self) -> impl Iterator<Item = &Colony> {
        self.apiary.colonies.iter().enumerate().filter(|(at, _)| self.is_gone(*at)).map(|(_, colony)| colony)
    }

    fn is_gone(&self, at: usize) -> bool {
        self.colony_now(at).is_some_and(ColonyNow::is_gone)
    }

    /// A colony's notes up to the day asked about, latest first.
    pub(crate) fn notes_of(&self, colony: ColonyId) -> Vec<&Note> {
        let until = self.now.date();
        let zone = self.now.time_zone();
        let is_shown = |note: &&Note| note.colony == colony && note.at.to_zoned_datetime(zone.clone()).date() <= until;
        let mut notes: Vec<&Note> = self.apiary.notes.iter().filter(is_shown).collect();
        notes.sort_by_key(|note| std::cmp::Reverse((note.at, note.id)));
        notes
    }

    /// Whether a colony's hive stands indoors on the day asked about.
    pub(crate) fn is_indoors(&self, colony: &Colony) -> bool {
        let today = self.now.date();
        self.apiary.stays(colony, today).iter().any(|stay| stay.holds(today))
    }

    /// Where a colony's hive winters, if indoors, by its place in the yard.
    pub(crate) fn indoors(&self, at: usize) -> Option<&IndoorsAnswer> {
        self.standing.as_ref()?.present.now.first.colonies.get(at)?.indoors.as_ref()
    }

    /// Whether a colony's hive has an upper hole.
    pub(crate) fn has_upper_hole(&self, colony: &Colony) -> bool {
        self.apiary.has_upper_hole(colony.id)
    }

    /// A note's entries as the keeper would write them.
    pub(crate) fn written(&self, note: &Note) -> Vec<String> {
        note.entries.iter().map(|entry| entry.written(&|id| self.name_of(id))).collect()
    }

    pub(crate) fn name_of(&self, id: ColonyId) -> String {
        let found = self.apiary.colonies.iter().find(|colony| colony.id == id);
        found.map_or_else(|| self.tongue().say(&note_page::other_yard()), |colony| colony.name.clone())
    }

    /// A colony by the name a keeper writes.
    pub(crate) fn named(&self, name: &str) -> Option<ColonyId> {
        let name = name.trim().to_lowercase();
        let found = self.apiary.colonies.iter().find(|colony| colony.name.to_lowercase() == name);
        found.map(|colony| colony.id)
    }
}

/// The question behind a `?`, as written; hostile or broken ones are just text.
pub(crate) struct Asked(pub(crate) Vec<(String, String)>);

impl Asked {
    /// The first value under a name that says something.
    pub(crate) fn get(&self, name: &str) -> Option<&str> {
        let named = self.0.iter().find(|(key, value)| key == name && !value.trim().is_empty());
        named.map(|(_, value)| value.trim())
    }

    /// Everything said under a name, or under one that begins with it and a dot.
    pub(crate) fn every<'a>(&'a self, name: &'a str) -> impl Iterator<Item = &'a str> {
        let is_of =
            move |key: &str| key.strip_prefix(name).is_some_and(|rest| rest.is_empty() || rest.starts_with('.'));
        self.0
            .iter()
            .filter(move |(key, _)| is_of(key))
            .map(|(_, value)| value.trim())
            .filter(|value| !value.is_empty())
    }

    pub(crate) fn all<'a>(&'a self, name: &'a str) -> impl Iterator<Item = &'a str> {
        let named = self.0.iter().filter(move |(key, _)| key == name);
        named.map(|(_, value)| value.trim()).filter(|value| !value.is_empty())
    }
}

impl<S: Send + Sync> FromRequestParts<S> for Asked {
    type Rejection = Infallible;

    async fn from_request_parts(parts: &mut Parts, state: &S) -> Result<Self, Self::Rejection> {
        let read = axum::extract::Query::<Vec<(String, String)>>::from_request_parts(parts, state).await;
        Ok(Self(read.map(|axum::extract::Query(pairs)| pairs).unwrap_or_default()))
    }
}
