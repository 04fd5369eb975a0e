//! Building materials, from `data/materials.toml`.

use crate::Material;
use crate::shipped::{same_name, table};
use serde::Deserialize;
use snowhum_figures::files;
use snowhum_units::{Fraction, JoulePerKilogramKelvin, KilogramPerCubicMetre, Metre, WattPerMetreKelvin};
use std::sync::LazyLock;

/// A material with what the trade needs to know beside its physics.
#[derive(Debug, Clone, PartialEq)]
pub struct StockMaterial {
    /// The material.
    pub material: Material,
    /// Other ways keepers write it.
    pub aliases: Vec<String>,
    /// Thickness taken when none is written.
    pub usual_thickness: Option<Metre>,
    /// Absorptance of its bare face for sun.
    pub absorptance: Fraction,
    /// Whether it takes up water and lets it pass.
    pub breathes: bool,
    /// Whether it serves as an inner cover by itself.
    pub is_board: bool,
    /// Where the figures come from.
    pub source: String,
    /// How well they are founded.
    pub status: String,
}

/// Every material known.
#[must_use]
pub fn materials() -> &'static [StockMaterial] {
    &SHIPPED
}

/// The material of this name or alias.
///
/// ```
/// assert_eq!(snowhum_apiary::material("tar paper").unwrap().material.name, "felt paper");
/// ```
#[must_use]
pub fn material(name: &str) -> Option<&'static StockMaterial> {
    let named = |stock: &&StockMaterial| {
        same_name(&stock.material.name, name) || stock.aliases.iter().any(|alias| same_name(alias, name))
    };
    SHIPPED.iter().find(named)
}

#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    material: Vec<Row>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Row {
    name: String,
    #[serde(default)]
    aliases: Vec<String>,
    usual_mm: Option<f64>,
    conductivity: f64,
    density: f64,
    specific_heat: f64,
    vapour_resistance: f64,
    absorptance: f64,
    #[serde(default)]
    breathes: bool,
    #[serde(default)]
    board: bool,
    source: String,
    status: String,
}

static SHIPPED: LazyLock<Vec<StockMaterial>> = LazyLock::new(|| {
    let rows = table::<File>(files::MATERIALS).material;
    rows.into_iter().map(stock).collect()
});

fn stock(row: Row) -> StockMaterial {
    StockMaterial {
        material: Material {
            name: row.name,
            conductivity: WattPerMetreKelvin::new(row.conductivity),
            density: KilogramPerCubicMetre::new(row.density),
            specific_heat: JoulePerKilogramKelvin::new(row.specific_heat),
            vapour_resistance: row.vapour_resistance,
        },
        aliases: row.aliases,
        usual_thickness: row.usual_mm.map(|millimetres| Metre::new(millimetres / 1_000.0)),
        absorptance: Fraction::new(row.absorptance),
        breathes: row.breathes,
        is_board: row.board,
        source: row.source,
        status: row.status,
    }
}
