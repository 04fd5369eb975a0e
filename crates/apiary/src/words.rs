//! What the keeper's words stand for until something is counted, from `data/quick_start.toml`.

use crate::shipped::{same_name, table};
use crate::{Hive, KnownBy, Money, StoresPlace};
use serde::Deserialize;
use snowhum_figures::files;
use snowhum_say::{Message, hive_word as say};
use snowhum_units::{Kilogram, Range};
use std::sync::LazyLock;

/// How much comb a hive has, as far as a word's meaning hangs on it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
pub enum Combs {
    /// Less than 55 dm² of comb, one face counted.
    #[serde(rename = "nucleus")]
    Nucleus,
    /// Up to 130 dm².
    #[serde(rename = "one box")]
    OneBox,
    /// More.
    #[serde(rename = "two boxes")]
    TwoBoxes,
}

impl Combs {
    /// The class of a hive.
    #[must_use]
    pub fn of(hive: &Hive) -> Self {
        match hive.comb_face().get() * 100.0 {
            face_dm2 if face_dm2 < 55.0 => Self::Nucleus,
            face_dm2 if face_dm2 < 130.0 => Self::OneBox,
            _ => Self::TwoBoxes,
        }
    }
}

/// A word for strength or food, with what it stands for in a hive of a class.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SizedWord {
    /// The word.
    pub word: String,
    /// The class of hive.
    pub combs: Combs,
    range: [f64; 3],
    /// Where the range comes from.
    pub source: String,
    /// How well it is founded.
    pub status: String,
}

/// A word with a range that holds in any hive.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PlainWord {
    /// The word.
    pub word: String,
    range: Option<[f64; 3]>,
    /// Where the range comes from.
    pub source: String,
    /// How well it is founded.
    pub status: String,
}

/// What a weight of stores is worth by how it was found.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Finding {
    /// The way it was found.
    pub word: String,
    share: f64,
    least_kg: f64,
    /// Where the error comes from.
    pub source: String,
    /// How well it is founded.
    pub status: String,
}

/// A word for where the food sits.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Sitting {
    /// The word.
    pub word: String,
    touched: f64,
    above: f64,
    beside: f64,
    far: f64,
    /// Where the shares come from.
    pub source: String,
    /// How well they are founded.
    pub status: String,
}

/// Words for the number of bees.
#[must_use]
pub fn strength_words() -> &'static [SizedWord] {
    &SHIPPED.strength
}

/// Words for the weight of food.
#[must_use]
pub fn food_words() -> &'static [SizedWord] {
    &SHIPPED.food
}

/// Grown bees that a word stands for in a hive of this class.
#[must_use]
pub fn strength_range(word: &str, combs: Combs) -> Option<Range<f64>> {
    sized(&SHIPPED.strength, word, combs).map(SizedWord::range)
}

/// Food that a word stands for in a hive of this class.
///
/// ```
/// use snowhum_apiary::{Combs, food_range};
/// assert_eq!(food_range("fair", Combs::OneBox).unwrap().p50.get(), 13.0);
/// ```
#[must_use]
pub fn food_range(word: &str, combs: Combs) -> Option<Range<Kilogram>> {
    sized(&SHIPPED.food, word, combs).map(|row| row.range().map(Kilogram::new))
}

/// Words for sealed brood.
#[must_use]
pub fn brood_words() -> &'static [PlainWord] {
    &SHIPPED.brood
}

/// Words for where the food sits.
#[must_use]
pub fn sitting_words() -> &'static [Sitting] {
    &SHIPPED.food_sits
}

/// Ways a weight is found.
#[must_use]
pub fn findings() -> &'static [Finding] {
    &SHIPPED.known_by
}

/// Prices taken when the keeper gives none, with where they come from.
#[must_use]
pub fn usual_money() -> (Money, &'static str) {
    let money = &SHIPPED.money;
    let prices = Money {
        currency: money.currency.clone(),
        colony: money.colony,
        sugar_per_kg: money.sugar_per_kg,
        fondant_per_kg: money.fondant_per_kg,
        lid: money.lid,
        wrap: money.wrap,
        hour: money.hour,
    };
    (prices, &money.source)
}

impl SizedWord {
    /// The word for a reader of any language.
    #[must_use]
    pub fn message(&self) -> Message {
        match self.word.as_str() {
            "weak" => say::weak(),
            "middling" => say::middling(),
            "strong" => say::strong(),
            "light" => say::light(),
            "fair" => say::fair(),
            "heavy" => say::heavy(),
            "not looked at" => say::not_looked_at(),
            other => other.into(),
        }
    }

    /// What the word stands for: bees, or kilograms of food.
    pub(crate) fn range(&self) -> Range<f64> {
        ordered(self.range)
    }
}

impl PlainWord {
    /// What the word stands for; none where it says that nobody looked.
    #[must_use]
    pub fn range(&self) -> Option<Range<f64>> {
        self.range.map(ordered)
    }
}

impl Sitting {
    /// The shares.
    #[must_use]
    pub fn place(&self) -> StoresPlace {
        StoresPlace { touched: self.touched, above: self.above, beside: self.beside, far: self.far }
    }
}

/// The word in a hive of this class.
pub(crate) fn sized<'a>(words: &'a [SizedWord], word: &str, combs: Combs) -> Option<&'a SizedWord> {
    words.iter().find(|row| row.combs == combs && same_name(&row.word, word))
}

/// Weighs how a figure was found, or the keeper's own plus-minus, into a range.
#[must_use]
pub fn weighed(figure: Kilogram, by: KnownBy, plus_minus: Option<Kilogram>) -> Range<Kilogram> {
    let usual = SHIPPED.known_by.iter().find(|row| same_name(&row.word, by.word()));
    let usual_kg = usual.map_or(0.0, |row| (row.share * figure.get()).max(row.least_kg));
    let error_kg = plus_minus.map_or(usual_kg, Kilogram::get);
    // A weight is never below nothing: a quarter of the figure stands for "hardly any".
    let low_kg = (figure.get() - error_kg).max(0.25 * figure.get());
    ordered([low_kg, figure.get(), figure.get() + error_kg]).map(Kilogram::new)
}

impl KnownBy {
    /// The keeper's word for it.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Frames => "frames",
            Self::Scale => "scale",
            Self::TwoSidedLift => "two-sided lift",
            Self::Heft => "heft",
            Self::Stated => "stated",
        }
    }
}

/// Where the figures for bees, brood and food on combs come from: what, source, status.
#[must_use]
pub fn comb_sources() -> [(&'static str, &'static str, &'static str); 6] {
    let comb = &SHIPPED.comb;
    [
        ("bees on comb", &comb.bees_source, &comb.bees_status),
        ("most bees in a hive", &comb.crowding_source, &comb.crowding_status),
        ("cells in comb", &comb.cells_source, &comb.cells_status),
        ("brood in a comb", &comb.brood_source, &comb.brood_status),
        ("food in comb", &comb.food_source, &comb.food_status),
        ("a keeper's own number of bees", &comb.bees_stated_source, &comb.bees_stated_status),
    ]
}

pub(crate) fn comb_figures() -> &'static CombFigures {
    &SHIPPED.comb
}

/// Bees on combs and food in combs, as the file has them.
#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct CombFigures {
    pub(crate) bees_per_cm2: [f64; 3],
    bees_source: String,
    bees_status: String,
    pub(crate) crowding: f64,
    crowding_source: String,
    crowding_status: String,
    pub(crate) cells_per_cm2: f64,
    cells_source: String,
    cells_status: String,
    pub(crate) brood_filled: [f64; 3],
    brood_source: String,
    brood_status: String,
    pub(crate) food_kg_per_dm2: [f64; 3],
    food_source: String,
    food_status: String,
    pub(crate) bees_stated: [f64; 3],
    bees_stated_source: String,
    bees_stated_status: String,
}

/// A range from three figures of a shipped table, put in order.
pub(crate) fn ordered(figures: [f64; 3]) -> Range<f64> {
    let [p10, p50, p90] = figures;
    Range { p10: p10.min(p50), p50, p90: p90.max(p50) }
}

#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    strength: Vec<SizedWord>,
    food: Vec<SizedWord>,
    brood: Vec<PlainWord>,
    known_by: Vec<Finding>,
    food_sits: Vec<Sitting>,
    comb: CombFigures,
    money: MoneyRow,
}

#[derive(Debug, Default, Deserialize)]
struct MoneyRow {
    currency: String,
    colony: f64,
    sugar_per_kg: f64,
    fondant_per_kg: f64,
    lid: f64,
    wrap: f64,
    hour: f64,
    source: String,
}

static SHIPPED: LazyLock<File> = LazyLock::new(|| table(files::QUICK_START));
