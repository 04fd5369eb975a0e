//! Hive standards, from `data/hive_standards.toml`.

use crate::shipped::{same_name, table};
use crate::{HiveBox, Layer};
use serde::Deserialize;
use snowhum_units::{Metre, SquareMetre};
use std::sync::LazyLock;

/// A standard a hive is built to.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Standard {
    /// Its name in the trade.
    pub name: String,
    /// Other ways keepers write it.
    #[serde(default)]
    pub aliases: Vec<String>,
    #[serde(default)]
    boxes_of: Option<String>,
    /// The usual wall, such as `pine 19 mm`.
    pub wall: String,
    /// The usual lid, from the bees outwards.
    pub lid: Vec<String>,
    /// Boxes it usually winters in, from below.
    pub usual_boxes: Vec<String>,
    /// The sizes of its boxes.
    #[serde(default, rename = "box")]
    pub sizes: Vec<BoxSize>,
}

/// One size of box.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct BoxSize {
    /// The trade's name of it, such as `deep`.
    pub size: String,
    #[serde(default)]
    aliases: Vec<String>,
    length: f64,
    width: f64,
    depth: f64,
    frames: u32,
    comb: [f64; 2],
    /// Where the sizes come from.
    pub source: String,
    /// How well they are founded.
    pub status: String,
}

impl BoxSize {
    /// A box of this size.
    #[must_use]
    pub fn build(&self, wall: &Layer) -> HiveBox {
        let metres = |millimetres: f64| Metre::new(millimetres / 1_000.0);
        HiveBox {
            size: self.size.clone(),
            length: metres(self.length),
            width: metres(self.width),
            depth: metres(self.depth),
            wall: wall.clone(),
            frames: self.frames,
            comb_side: SquareMetre::new(self.comb[0] * self.comb[1] * 1e-6),
        }
    }
}

impl Standard {
    /// The size of this name.
    #[must_use]
    pub fn size(&self, name: &str) -> Option<&BoxSize> {
        let named = |size: &&BoxSize| same_name(&size.size, name) || size.aliases.iter().any(|a| same_name(a, name));
        self.sizes.iter().find(named)
    }

    /// Whether it is a nucleus, whose entrance is small by itself.
    #[must_use]
    pub fn is_nucleus(&self) -> bool {
        self.sizes.iter().all(|size| size.frames <= 6)
    }
}

/// Every standard known.
#[must_use]
pub fn standards() -> &'static [Standard] {
    &SHIPPED
}

/// The standard of this name or alias.
///
/// ```
/// assert_eq!(snowhum_apiary::standard("dnm").unwrap().name, "Deutsch Normal");
/// ```
#[must_use]
pub fn standard(name: &str) -> Option<&'static Standard> {
    let named = |standard: &&Standard| {
        same_name(&standard.name, name) || standard.aliases.iter().any(|alias| same_name(alias, name))
    };
    SHIPPED.iter().find(named)
}

#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    standard: Vec<Standard>,
}

static SHIPPED: LazyLock<Vec<Standard>> = LazyLock::new(|| {
    let mut all = table::<File>(include_str!("../../../data/hive_standards.toml")).standard;
    let sizes: Vec<_> = all.iter().map(|standard| (standard.name.clone(), standard.sizes.clone())).collect();
    for standard in &mut all {
        let of = sizes.iter().find(|(name, _)| Some(name) == standard.boxes_of.as_ref());
        if let Some((_, boxes)) = of {
            standard.sizes.clone_from(boxes);
        }
    }
    all
});
