//! What is usual where, from `data/fit.toml`.

use serde::Deserialize;
use snowhum_apiary::Site;
use snowhum_say::{Message, site as say};
use snowhum_winter::{Parameter, Status};

const SHIPPED: &str = include_str!("../../../../data/fit.toml");

/// How long and hard winters are at a place.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "lowercase")]
pub(crate) enum Country {
    Cold,
    Cool,
    Mild,
    Any,
}

impl Country {
    pub(crate) fn words(self) -> Message {
        match self {
            Self::Cold => say::cold_country(),
            Self::Cool | Self::Any => say::cool_country(),
            Self::Mild => say::mild_country(),
        }
    }
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "lowercase")]
pub(crate) enum CombsFor {
    Nucleus,
    Full,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Figures {
    cold: Parameter,
    mild: Parameter,
    bees: Vec<BeesHere>,
    pub(crate) company: Company,
    pub(crate) bees_other_school: Stated,
    pub(crate) brood: Brood,
    pub(crate) nucleus_stores: Spread,
    pub(crate) queen: Spread,
    pub(crate) lid: Spread,
    pub(crate) mouse: Parameter,
    pub(crate) virus: Parameter,
    pub(crate) requeen_days: Parameter,
    pub(crate) cluster: Parameter,
    pub(crate) newspaper_days: Parameter,
    pub(crate) capped_days: Parameter,
    pub(crate) unite_below: Parameter,
    mite_region: Vec<Region>,
    pub(crate) class: Vec<Class>,
    pub(crate) broodless: Vec<Broodless>,
}

/// Bees that are usual in a region.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct BeesHere {
    pub(crate) name: String,
    pub(crate) region: String,
    r#box: [f64; 4],
    combs: CombsFor,
    cold: Country,
    pub(crate) value: [f64; 2],
    #[serde(rename = "unit")]
    _unit: String,
    pub(crate) source: String,
    pub(crate) status: Status,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Company {
    cold: f64,
    cool: f64,
    mild: f64,
    #[serde(rename = "unit")]
    _unit: String,
    #[serde(rename = "source")]
    _source: String,
    #[serde(rename = "status")]
    _status: Status,
}

impl Company {
    pub(crate) fn of(&self, cold: Country) -> f64 {
        match cold {
            Country::Cold => self.cold,
            Country::Cool | Country::Any => self.cool,
            Country::Mild => self.mild,
        }
    }
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Stated {
    pub(crate) source: String,
    #[serde(rename = "status")]
    _status: Status,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Brood {
    warm_from_c: f64,
    warm: [f64; 2],
    cool_from_c: f64,
    cool: [f64; 2],
    cold: [f64; 2],
    pub(crate) unit: String,
    pub(crate) source: String,
    pub(crate) status: Status,
}

impl Brood {
    pub(crate) fn at(&self, warmth_c: f64) -> [f64; 2] {
        if warmth_c >= self.warm_from_c {
            self.warm
        } else if warmth_c >= self.cool_from_c {
            self.cool
        } else {
            self.cold
        }
    }
}

/// A range.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Spread {
    pub(crate) value: [f64; 2],
    #[serde(rename = "unit")]
    _unit: String,
    pub(crate) source: String,
    pub(crate) status: Status,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
struct Region {
    region: String,
    r#box: [f64; 4],
}

/// A class of treatment that warmth limits.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Class {
    pub(crate) name: String,
    pub(crate) from_c: f64,
    pub(crate) hot_c: Option<f64>,
    pub(crate) days: i64,
    pub(crate) source: String,
    pub(crate) status: Status,
}

/// A class of treatment that brood limits.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Broodless {
    pub(crate) name: String,
    pub(crate) low_c: f64,
    pub(crate) high_c: f64,
    pub(crate) source: String,
    pub(crate) status: Status,
}

impl Figures {
    pub(crate) fn shipped() -> Option<Self> {
        toml::from_str(SHIPPED).ok()
    }

    pub(crate) fn cold_of(&self, coldest_month_c: f64) -> Country {
        if coldest_month_c < self.cold.value {
            Country::Cold
        } else if coldest_month_c < self.mild.value {
            Country::Cool
        } else {
            Country::Mild
        }
    }

    /// Bees that are usual at a site: of the smallest region that holds it.
    pub(crate) fn bees_at(&self, site: &Site, combs: CombsFor, cold: Country) -> Option<&BeesHere> {
        let fits = |row: &&BeesHere| row.combs == combs && (row.cold == Country::Any || row.cold == cold);
        smallest(self.bees.iter().filter(fits), site, |row| row.r#box)
    }
}

/// The region with a line of its own for mites in a wash, if a site lies in one.
///
/// ```
/// let apiary = snowhum_apiary::read(snowhum_apiary::demo_text(), "demo").unwrap().0;
/// assert_eq!(snowhum_advice::site::mite_region(&apiary.site), None);
/// ```
#[must_use]
pub fn mite_region(site: &Site) -> Option<String> {
    smallest(Figures::shipped()?.mite_region, site, |region| region.r#box).map(|region| region.region)
}

/// What is for the smallest region that holds a site, of all that are for one; a region is its least and most latitude, then
/// longitude.
pub(crate) fn smallest<T>(all: impl IntoIterator<Item = T>, site: &Site, region: impl Fn(&T) -> [f64; 4]) -> Option<T> {
    let holds = |[south, north, west, east]: [f64; 4]| {
        (south..=north).contains(&site.latitude.get()) && (west..=east).contains(&site.longitude.get())
    };
    let area = |[south, north, west, east]: [f64; 4]| (north - south) * (east - west);
    let holding = all.into_iter().filter(|one| holds(region(one)));
    holding.min_by(|a, b| area(region(a)).total_cmp(&area(region(b))))
}

#[cfg(test)]
mod tests {
    use super::{Country, Figures};
    use snowhum_say::{fit_class, regions, usual};

    #[test]
    fn every_entry_has_its_texts() {
        let figures = Figures::shipped().unwrap();
        for row in figures.bees {
            assert!(usual::named(&row.name).is_some() && regions::named(&row.region).is_some(), "{}", row.name);
        }
        let cold = figures.broodless.into_iter().map(|class| class.name);
        for class in figures.class.into_iter().map(|class| class.name).chain(cold) {
            let said = |text: &&str| fit_class::named(&format!("{class}{text}")).is_some();
            assert!(["", "-weather", "-brood", "-supers"].iter().all(said), "{class}");
        }
    }

    #[test]
    fn the_table_can_be_read_and_a_cold_month_makes_a_cold_country() {
        let figures = Figures::shipped().unwrap();
        assert_eq!(
            [-12.0, -3.0, 4.0].map(|month| figures.cold_of(month)),
            [Country::Cold, Country::Cool, Country::Mild]
        );
    }
}
