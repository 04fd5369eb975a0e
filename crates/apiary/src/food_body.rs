//! Food on a hive as a body: a slab, a board of candy, a feeder hung in place of a frame. What its food is worth and how
//! dense it is stands in `data/feeds.toml`.

use crate::nearest::instead;
use crate::shipped::{same_name, table};
use crate::wrong::Wrong;
use serde::{Deserialize, Serialize};
use snowhum_figures::files;
use snowhum_say::{Message, dress_fault as say, fault, hive_word};
use snowhum_units::{Bare, Kilogram, KilogramPerCubicMetre, Measured, Metre};
use std::collections::BTreeMap;
use std::sync::LazyLock;

/// A body of food as it was put on.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct FoodBody {
    /// What it is.
    pub kind: FoodBodyKind,
    /// Its food, as weighed out, without frame or board.
    pub mass_kg: Kilogram,
    /// Whether pollen is in it.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub pollen: bool,
    /// Where it lies.
    pub place: FoodPlace,
    /// Height of the rim it lies in.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rim_m: Option<Metre>,
    /// Width of a hole through it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hole_m: Option<Metre>,
}

/// Kinds of bodies of food.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum FoodBodyKind {
    /// A slab of fondant.
    Fondant,
    /// Damp sugar set hard in a rim.
    SugarBoard,
    /// A board of cooked candy.
    Candy,
    /// Fondant in a feeder that hangs as a frame does.
    FrameFeeder,
}

/// Where a body of food lies to the cluster.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum FoodPlace {
    /// On the top bars over the cluster.
    OverCluster,
    /// Over or in the combs next to those it covers.
    ToOneSide,
}

const KINDS: [(&str, FoodBodyKind); 5] = [
    ("fondant", FoodBodyKind::Fondant),
    ("sugar board", FoodBodyKind::SugarBoard),
    ("candy", FoodBodyKind::Candy),
    ("frame feeder", FoodBodyKind::FrameFeeder),
    ("candy board", FoodBodyKind::Candy),
];
const PLACES: [(&str, FoodPlace); 2] =
    [("over the cluster", FoodPlace::OverCluster), ("to one side", FoodPlace::ToOneSide)];
const POLLEN: &str = " with pollen";
/// Most food that is put on at once.
const MOST: Kilogram = Kilogram::new(20.0);
/// Rims and holes, m.
const LEAST_M: f64 = 0.005;
const MOST_M: f64 = 0.2;

impl FoodBody {
    /// Reads `3 kg candy with pollen, rim 50 mm, over the cluster, hole 40 mm`.
    ///
    /// ```
    /// use snowhum_apiary::{FoodBody, FoodPlace};
    /// use snowhum_units::Bare;
    /// let board = FoodBody::read("2,5 kg candy with pollen, rim 50 mm, hole 40 mm", Bare::Refused).unwrap();
    /// assert!(board.pollen && board.place == FoodPlace::OverCluster);
    /// assert_eq!(board.written(), "2.5 kg candy with pollen, rim 50 mm, over the cluster, hole 40 mm");
    /// assert!(FoodBody::read("3 kg honey", Bare::Refused).unwrap_err().to_string().contains("fondant"));
    /// ```
    ///
    /// # Errors
    /// When it is no such body, with what would be right.
    pub fn read(text: &str, bare: Bare) -> Result<Self, Wrong> {
        let mut parts = parts(text).into_iter();
        let mut body = Self::what(parts.next().unwrap_or_default(), bare)?;
        for part in parts {
            body.take(part, bare)?;
        }
        if body.kind == FoodBodyKind::FrameFeeder {
            let fits = body.rim_m.is_none() && body.hole_m.is_none();
            body.place = FoodPlace::ToOneSide;
            return if fits { Ok(body) } else { Err(Wrong::new(say::frame_feeder(), say::food_right())) };
        }
        Ok(body)
    }

    /// Mass and kind.
    fn what(text: &str, bare: Bare) -> Result<Self, Wrong> {
        let lower = text.trim().to_lowercase();
        let (rest, pollen) = lower.strip_suffix(POLLEN).map_or((lower.as_str(), false), |rest| (rest, true));
        let found = KINDS.iter().filter(|(words, _)| rest.ends_with(words)).max_by_key(|(words, _)| words.len());
        let Some((words, kind)) = found else {
            return Err(Wrong::new(say::no_food(text.trim()), say::food_right()));
        };
        let mass =
            rest[..rest.len() - words.len()].trim_end().trim_end_matches(" fondant in a").trim_end_matches(" of");
        let mass_kg = Kilogram::read(mass.trim(), bare)?;
        if !(mass_kg > Kilogram::ZERO && mass_kg <= MOST) {
            return Err(Wrong::new(fault::cannot_be(text.trim()), say::food_mass_right(MOST)));
        }
        Ok(Self { kind: *kind, mass_kg, pollen, place: FoodPlace::OverCluster, rim_m: None, hole_m: None })
    }

    /// One more thing said of it.
    fn take(&mut self, part: &str, bare: Bare) -> Result<(), Wrong> {
        if let Some(rim) = part.strip_prefix("rim ") {
            self.rim_m = Some(length(rim, bare)?);
        } else if same_name(part, "no hole") {
            self.hole_m = None;
        } else if let Some(hole) = part.strip_prefix("hole ") {
            self.hole_m = Some(length(hole, bare)?);
        } else if let Some((_, place)) = PLACES.iter().find(|(words, _)| same_name(words, part)) {
            self.place = *place;
        } else {
            let known = PLACES.map(|(words, _)| words).into_iter().chain(["rim 50 mm", "hole 40 mm", "no hole"]);
            return Err(Wrong::new(say::not_of_food(part), instead(part, known)));
        }
        Ok(())
    }

    /// As it would be written.
    #[must_use]
    pub fn written(&self) -> String {
        let millimetres = |length: Metre| format!("{} mm", (length.get() * 1e4).round() / 10.0);
        let mass = (self.mass_kg.get() * 1e3).round() / 1e3;
        let mut written = format!("{mass} kg {}{}", self.kind.written(), if self.pollen { POLLEN } else { "" });
        if self.kind == FoodBodyKind::FrameFeeder {
            return written;
        }
        written.extend(self.rim_m.map(|rim| format!(", rim {}", millimetres(rim))));
        let place = PLACES.iter().find(|(_, place)| *place == self.place).map_or("", |(words, _)| words);
        written += &format!(", {place}");
        written.extend(self.hole_m.map(|hole| format!(", hole {}", millimetres(hole))));
        written
    }

    /// Kilograms of honey that it feeds as much as: by its sugar.
    ///
    /// ```
    /// use snowhum_apiary::FoodBody;
    /// use snowhum_units::Bare;
    /// let slab = FoodBody::read("2 kg fondant", Bare::Refused).unwrap();
    /// assert!((slab.worth().get() - 2.0 * 0.90 / 0.824).abs() < 1e-9, "fondant is nine parts sugar of ten");
    /// ```
    #[must_use]
    pub fn worth(&self) -> Kilogram {
        self.mass_kg * self.worth_of_kg()
    }

    /// What is left of it where so much of its worth is.
    #[must_use]
    pub fn mass_of(&self, worth: Kilogram) -> Kilogram {
        worth * (1.0 / self.worth_of_kg().max(f64::MIN_POSITIVE))
    }

    fn worth_of_kg(&self) -> f64 {
        self.kind.figures().map_or(1.0, |solid| solid.sugar / FEEDS.honey_sugar.value.max(f64::MIN_POSITIVE))
    }

    /// How dense its food is.
    #[must_use]
    pub fn density(&self) -> KilogramPerCubicMetre {
        KilogramPerCubicMetre::new(self.kind.figures().map_or(1e3, |solid| solid.value))
    }
}

impl FoodBodyKind {
    /// Its name.
    #[must_use]
    pub fn message(self) -> Message {
        match self {
            Self::Fondant => hive_word::fondant(),
            Self::SugarBoard => hive_word::sugar_board(),
            Self::Candy => hive_word::candy(),
            Self::FrameFeeder => hive_word::frame_feeder(),
        }
    }

    /// Its name as it is typed.
    fn written(self) -> &'static str {
        KINDS.iter().find(|(_, kind)| *kind == self).map_or("", |(words, _)| words)
    }

    fn figures(self) -> Option<&'static Solid> {
        FEEDS.solid.get(match self {
            Self::Fondant | Self::FrameFeeder => "fondant",
            Self::SugarBoard => "damp",
            Self::Candy => "cooked",
        })
    }
}

/// Parts at their commas, but for decimal ones.
fn parts(text: &str) -> Vec<&str> {
    let digit = |letter: Option<char>| letter.is_some_and(|letter| letter.is_ascii_digit());
    let mut from = 0;
    let mut parts = Vec::new();
    for (at, _) in text.match_indices(',') {
        let is_decimal = digit(text[..at].chars().next_back()) && digit(text[at + 1..].chars().next());
        if !is_decimal {
            parts.push(text[from..at].trim());
            from = at + 1;
        }
    }
    parts.push(text[from..].trim());
    parts
}

fn length(text: &str, bare: Bare) -> Result<Metre, Wrong> {
    let length = Metre::read(text.trim(), bare)?;
    let fits = (LEAST_M..=MOST_M).contains(&length.get());
    fits.then_some(length).ok_or_else(|| Wrong::new(fault::cannot_be(text), say::rim_right()))
}

#[derive(Debug, Default, Deserialize)]
struct Feeds {
    honey_sugar: Share,
    solid: BTreeMap<String, Solid>,
}

#[derive(Debug, Default, Deserialize)]
struct Share {
    value: f64,
}

/// A kind of solid feed.
#[derive(Debug, Deserialize)]
struct Solid {
    /// Density, kg/m³.
    value: f64,
    /// Share of sugar.
    sugar: f64,
}

static FEEDS: LazyLock<Feeds> = LazyLock::new(|| table(files::FEEDS));

#[cfg(test)]
mod tests {
    use super::*;

    fn read(text: &str) -> Result<FoodBody, Wrong> {
        FoodBody::read(text, Bare::Refused)
    }

    #[test]
    fn what_is_read_is_written_again_as_it_was() {
        for text in [
            "3 kg fondant, over the cluster",
            "2.5 kg candy with pollen, rim 50 mm, over the cluster, hole 40 mm",
            "4 kg sugar board, rim 60 mm, to one side",
            "1.5 kg frame feeder",
        ] {
            let body = read(text).unwrap();
            assert_eq!(body.written(), text);
            assert_eq!(read(&body.written()).unwrap(), body);
        }
        assert_eq!(read("2 kg fondant in a frame feeder").unwrap(), read("2 kg frame feeder").unwrap());
        assert_eq!(read("6 lb candy board,hole 2 in").unwrap().kind, FoodBodyKind::Candy);
    }

    #[test]
    fn what_cannot_be_is_refused_with_what_would_be_right() {
        for (text, right) in [
            ("", "3 kg candy"),
            ("3 kg", "fondant"),
            ("candy", "kg"),
            ("0 kg candy", "up to 20 kg"),
            ("400 kg candy", "up to 20 kg"),
            ("3 kg candy, rim 9 m", "200 mm"),
            ("3 kg candy, over the clustr", "over the cluster"),
            ("2 kg frame feeder, rim 50 mm", "3 kg candy"),
            ("3 candy", "kg"),
        ] {
            let wrong = read(text).unwrap_err();
            assert!(wrong.to_string().contains(right), "{text}: {wrong}");
        }
    }

    #[test]
    fn every_kind_has_its_figures() {
        for (_, kind) in KINDS {
            let solid = kind.figures().unwrap();
            assert!((0.8..=1.0).contains(&solid.sugar) && (800.0..1_500.0).contains(&solid.value), "{kind:?}");
        }
        let body = read("3 kg sugar board").unwrap();
        assert!((body.mass_of(body.worth()).get() - 3.0).abs() < 1e-12);
    }
}
