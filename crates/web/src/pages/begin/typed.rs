//! What was typed into the form.

use snowhum_apiary::{
    AnotherHive, Apiary, ChosenDress, Colony, MOST_HIVES, QuickHive, QuickStart, Town, standards, towns,
};
use snowhum_say::{Tongue, begin_page as text};
use snowhum_winter::Housed;

use crate::pages::dress::{self, NOT_LOOKED_AT};
use crate::view::{Asked, View};

/// The field of the nearest town.
pub(super) const TOWN: &str = "town";

/// The form as it was sent. Words are chosen, figures typed; a figure goes before the word.
pub(super) struct Typed {
    /// A shipped town's place in the list.
    pub(super) town: String,
    /// The yard with its own place, before the town is asked.
    pub(super) own: QuickStart,
    /// Words and figures of bees and food apart, a hive each.
    pub(super) hives: Vec<TypedHive>,
}

/// A hive as it was sent.
#[derive(Clone, Default)]
pub(super) struct TypedHive {
    pub(super) name: String,
    pub(super) kind: String,
    pub(super) strength: String,
    pub(super) frames: String,
    pub(super) food: String,
    pub(super) weight: String,
    pub(super) mites: String,
    pub(super) mites_of: String,
    pub(super) mites_on: String,
    pub(super) dress: ChosenDress,
}

impl TypedHive {
    /// One that nobody has looked into.
    fn unknown(name: String, kind: String) -> Self {
        let unknown = || NOT_LOOKED_AT.to_owned();
        Self { name, kind, strength: unknown(), food: unknown(), ..Self::default() }
    }
}

impl Typed {
    /// One hive, of which nothing is said but a name.
    pub(super) fn blank(view: &View) -> Self {
        let say = |message| view.tongue().say(&message);
        let as_of = jiff::Timestamp::now().to_zoned_datetime(view.now.time_zone().clone()).date().to_string();
        let own = QuickStart { name: say(text::my_yard()), as_of, ..QuickStart::default() };
        let kind = standards().first().map(|standard| standard.name.clone()).unwrap_or_default();
        Self { town: String::new(), own, hives: vec![TypedHive::unknown(say(text::hive(1)), kind)] }
    }

    pub(super) fn of(form: &Asked) -> Self {
        let said = |name: &str| form.get(name).unwrap_or_default().to_owned();
        let own = QuickStart {
            name: said("name"),
            as_of: said("as_of"),
            latitude: said("latitude"),
            longitude: said("longitude"),
            elevation: said("elevation"),
            zone: said("zone"),
            hives: Vec::new(),
        };
        let count = form.get("hives").and_then(|text| text.parse::<usize>().ok()).unwrap_or(1).clamp(1, MOST_HIVES);
        let hive = |at: usize| {
            let said = |field: &str| said(&format!("{at}.{field}"));
            TypedHive {
                name: said("name"),
                kind: said("kind"),
                strength: said("strength"),
                frames: said("frames"),
                food: said("food"),
                weight: said("weight"),
                mites: said("mites"),
                mites_of: said("mites_of"),
                mites_on: said("mites_on"),
                dress: dress::typed(form, &format!("{at}.")),
            }
        };
        Self { town: said(TOWN), own, hives: (0..count).map(hive).collect() }
    }

    /// Another hive, of the same kind and dressed as the last.
    pub(super) fn add_hive(&mut self, tongue: Tongue) {
        let last = self.hives.last().cloned().unwrap_or_default();
        let name = tongue.say(&text::hive(self.hives.len() + 1));
        if self.hives.len() < MOST_HIVES {
            self.hives.push(TypedHive { dress: last.dress, ..TypedHive::unknown(name, last.kind) });
        }
    }

    /// The hive at a place as it is dressed so far, nobody having looked into it; none where it cannot be built.
    pub(super) fn dressed(&self, at: usize, beside: &Apiary) -> Option<Housed> {
        let typed = self.hives.get(at)?;
        let another = AnotherHive {
            // No keeper writes it, so that it is no hive's of the yard beside.
            name: "\u{2060}drawn".to_owned(),
            kind: typed.kind.clone(),
            strength: NOT_LOOKED_AT.to_owned(),
            food: if typed.food.is_empty() { NOT_LOOKED_AT.to_owned() } else { typed.food.clone() },
            dress: typed.dress.clone(),
        };
        let mut yard = beside.with_another(&another).ok()?;
        let (hive, colony) = (yard.hives.pop()?, yard.colonies.pop()?);
        Some(Housed { colony: Colony { name: typed.name.clone(), ..colony }, hive, neighbour: None, stays: Vec::new() })
    }

    /// Takes the last hive away; one stays.
    pub(super) fn drop_hive(&mut self) {
        if self.hives.len() > 1 {
            self.hives.pop();
        }
    }

    /// Whether anything is said of where the hives stand.
    pub(super) fn says_place(&self) -> bool {
        let own = [&self.own.latitude, &self.own.longitude, &self.own.elevation, &self.own.zone];
        self.chosen_town().is_some() || own.iter().any(|text| !text.is_empty())
    }

    fn chosen_town(&self) -> Option<&'static Town> {
        towns().get(self.town.parse::<usize>().ok()?)
    }

    /// The facts: the own place before the town, the figure before the word.
    pub(super) fn facts(&self) -> QuickStart {
        let town = self.chosen_town();
        let of_town =
            |own: &str, town: Option<String>| if own.is_empty() { town.unwrap_or_default() } else { own.to_owned() };
        let before = |figure: &str, word: &str| if figure.is_empty() { word.to_owned() } else { figure.to_owned() };
        let hive = |typed: &TypedHive| QuickHive {
            name: typed.name.clone(),
            kind: typed.kind.clone(),
            strength: before(&typed.frames, &typed.strength),
            food: before(&typed.weight, &typed.food),
            mites: typed.mites.clone(),
            mites_of: typed.mites_of.clone(),
            mites_on: typed.mites_on.clone(),
            dress: typed.dress.clone(),
        };
        QuickStart {
            latitude: of_town(&self.own.latitude, town.map(|town| town.latitude.to_string())),
            longitude: of_town(&self.own.longitude, town.map(|town| town.longitude.to_string())),
            elevation: of_town(&self.own.elevation, town.map(|town| format!("{} m", town.elevation))),
            zone: of_town(&self.own.zone, town.map(|town| town.zone.clone())),
            hives: self.hives.iter().map(hive).collect(),
            ..self.own.clone()
        }
    }
}
