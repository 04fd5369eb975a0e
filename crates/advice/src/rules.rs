//! Rules of thumb of the trade, by region and hive, from `data/rules_of_thumb.toml`.

use serde::Deserialize;
use snowhum_apiary::{Hive, Site};
use snowhum_say::{Message, regions, site as say, usual};

use snowhum_winter::Status;

use crate::answer::RuleOfThumb;
use crate::site::figures::smallest;

const SHIPPED: &str = include_str!("../../../data/rules_of_thumb.toml");

#[derive(Debug, Clone, Deserialize)]
struct File {
    rule: Vec<Rule>,
    feeding: Vec<Feeding>,
}

/// Until when the trade of a region feeds syrup.
#[derive(Debug, Clone, Deserialize)]
struct Feeding {
    name: String,
    region: String,
    /// Least and most latitude, least and most longitude.
    r#box: [f64; 4],
}

#[derive(Debug, Clone, Deserialize)]
struct Rule {
    name: String,
    region: String,
    /// Least and most latitude, least and most longitude.
    r#box: [f64; 4],
    /// Brood boxes it is for; 0 for any.
    boxes: usize,
    value: Option<(f64, f64)>,
    source: String,
    status: Status,
}

/// The rule for this site and hive, if the trade has one: that of the smallest region that holds the site.
///
/// ```
/// # let apiary = snowhum_apiary::read(snowhum_apiary::demo_text(), "demo").unwrap().0;
/// let rule = snowhum_advice::rules::stores_rule(&apiary.site, &apiary.hives[0]).unwrap();
/// assert_eq!(rule.region.id(), Some("regions-sweden-finland-and-norway"));
/// ```
#[must_use]
pub fn stores_rule(site: &Site, hive: &Hive) -> Option<RuleOfThumb> {
    found(site, hive).map(|(rule, _)| rule)
}

/// Until when syrup is fed by custom at a site, and why that may differ from a day reckoned here; none where no custom is known.
#[must_use]
pub fn feeding_custom(site: &Site) -> Option<Message> {
    let customs = toml::from_str::<File>(SHIPPED).ok()?.feeding;
    let custom = smallest(&customs, site, |custom| custom.r#box)?;
    Some(say::feeding_custom(regions::named(&custom.region)?, usual::named(&custom.name)?))
}

/// [`stores_rule`], with how well it is founded.
pub(crate) fn found(site: &Site, hive: &Hive) -> Option<(RuleOfThumb, Status)> {
    let boxes = hive.boxes.len().min(2);
    let rules = toml::from_str::<File>(SHIPPED).ok()?.rule.into_iter();
    let rule = smallest(rules.filter(|rule| [0, boxes].contains(&rule.boxes)), site, |rule| rule.r#box)?;
    let (region, says) = (regions::named(&rule.region)?, usual::named(&rule.name)?);
    let answer = RuleOfThumb { region, says, stores_kg: rule.value, source: rule.source };
    Some((answer, rule.status))
}

#[cfg(test)]
mod tests {
    use super::{File, SHIPPED, regions, usual};

    #[test]
    fn every_entry_has_its_texts() {
        let File { rule, feeding } = toml::from_str(SHIPPED).unwrap();
        let rules = rule.iter().map(|rule| (&rule.name, &rule.region));
        for (name, region) in rules.chain(feeding.iter().map(|custom| (&custom.name, &custom.region))) {
            assert!(usual::named(name).is_some() && regions::named(region).is_some(), "{name}");
        }
    }
}
