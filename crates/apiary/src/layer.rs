//! Sheets as keepers write them: `pine 19 mm`, `50 mm foam`, `felt paper`.

use crate::materials::{StockMaterial, material, materials};
use crate::nearest::{instead, nearest};
use crate::shipped::same_name;
use crate::wrong::Wrong;
use crate::{HiveBox, Layer, Material};
use snowhum_say::{dress_fault as say, fault};
use snowhum_units::{Fraction, Metre, SquareMetreKelvinPerWatt};
use std::str::FromStr;

/// Thinnest and thickest sheet, m.
const THINNEST_M: f64 = 0.000_05;
const THICKEST_M: f64 = 1.0;

impl FromStr for Layer {
    type Err = Wrong;

    /// Reads a material and its thickness in either order.
    ///
    /// ```
    /// use snowhum_apiary::Layer;
    /// let lid: Layer = "2 in foam".parse().unwrap();
    /// assert_eq!(lid.material.name, "xps foam");
    /// assert!((lid.thickness.get() - 0.0508).abs() < 1e-12);
    /// assert!("foam".parse::<Layer>().is_err());
    /// ```
    fn from_str(text: &str) -> Result<Self, Wrong> {
        read(text, &[])
    }
}

impl Layer {
    /// Thermal resistance of the sheet, films left out.
    #[must_use]
    pub fn resistance(&self) -> SquareMetreKelvinPerWatt {
        SquareMetreKelvinPerWatt::new(self.thickness.get() / self.material.conductivity.get())
    }

    /// The shelf the material stands on, unless it is the keeper's own.
    #[must_use]
    pub fn stock(&self) -> Option<&'static StockMaterial> {
        material(&self.material.name)
    }

    /// Whether it takes up water and lets it pass.
    #[must_use]
    pub fn breathes(&self) -> bool {
        self.stock().map_or(self.material.vapour_resistance <= 10.0, |stock| stock.breathes)
    }

    /// Whether it serves as an inner cover by itself.
    #[must_use]
    pub fn is_board(&self) -> bool {
        self.stock().is_some_and(|stock| stock.is_board)
    }
}

/// A sheet of a stock material or of one of the keeper's `own`.
pub(crate) fn read(text: &str, own: &[Material]) -> Result<Layer, Wrong> {
    let (name, thickness) = split(text);
    if name.is_empty() {
        return Err(Wrong::new(say::no_material(text), say::no_material_right()));
    }
    let stock = material(name);
    let own = own.iter().find(|mine| same_name(&mine.name, name));
    let Some(found) = own.or(stock.map(|stock| &stock.material)) else {
        return Err(unknown(name));
    };
    let usual = stock.and_then(|stock| stock.usual_thickness);
    let thickness = match (thickness, usual) {
        ("", Some(usual)) => usual,
        ("", None) => {
            return Err(Wrong::new(say::no_thickness(text), say::no_thickness_right(&found.name)));
        }
        (written, _) if snowhum_units::number(written).is_ok() => {
            return Err(Wrong::new(say::no_unit(written), say::no_unit_right(written)));
        }
        (written, _) => Metre::from_str(written)?,
    };
    if !(THINNEST_M..=THICKEST_M).contains(&thickness.get()) {
        return Err(Wrong::new(say::thickness(text), say::thickness_right()));
    }
    Ok(Layer { material: found.clone(), thickness })
}

/// Absorptance of the outermost sheet of the walls.
pub(crate) fn wall_absorptance(wrap: &[Layer], boxes: &[HiveBox]) -> Fraction {
    face(wrap.last().or(boxes.last().map(|top| &top.wall)))
}

/// Absorptance of a sheet's bare face; that of weathered wood for an own material.
pub(crate) fn face(sheet: Option<&Layer>) -> Fraction {
    sheet.and_then(Layer::stock).map_or(Fraction::new(0.6), |stock| stock.absorptance)
}

/// The name and the thickness, whichever comes first.
fn split(text: &str) -> (&str, &str) {
    let text = text.trim();
    let numeric = |c: char| c.is_ascii_digit() || matches!(c, '.' | '-' | '+');
    let goes_on = |c: char| numeric(c) || c == ',';
    let begins = |(at, c): &(usize, char)| {
        c.is_ascii_digit() || (numeric(*c) && text[at + 1..].starts_with(|next: char| next.is_ascii_digit()))
    };
    let Some((start, _)) = text.char_indices().find(begins) else { return (text, "") };
    if start > 0 {
        let name = text[..start].trim().trim_end_matches(',').trim();
        return (name, text[start..].trim());
    }
    let after_number = text.find(|c: char| !goes_on(c)).unwrap_or(text.len());
    let unit_start = after_number + (text[after_number..].len() - text[after_number..].trim_start().len());
    let unit_end = text[unit_start..].find(char::is_whitespace).map_or(text.len(), |at| unit_start + at);
    let name = text[unit_end..].trim();
    (name.strip_prefix("of ").unwrap_or(name), &text[..unit_end])
}

fn unknown(name: &str) -> Wrong {
    let names = || materials().iter().map(|stock| stock.material.name.as_str());
    let aliases = materials().iter().flat_map(|stock| stock.aliases.iter().map(String::as_str));
    let remedy = match nearest(name, names().chain(aliases)) {
        Some(near) => fault::did_you_mean(near),
        None => say::or_own_material(instead(name, names())),
    };
    Wrong::new(say::unknown_material(name), remedy)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn name_and_thickness_come_in_either_order() {
        assert_eq!(split("pine 19 mm"), ("pine", "19 mm"));
        assert_eq!(split("50mm foam"), ("foam", "50mm"));
        assert_eq!(split("50 mm of straw"), ("straw", "50 mm"));
        assert_eq!(split("felt paper"), ("felt paper", ""));
        assert_eq!(split("19 mm"), ("", "19 mm"));
    }

    #[test]
    fn a_hyphen_in_a_name_is_not_a_number() {
        assert_eq!(split("twin-wall plastic 4 mm"), ("twin-wall plastic", "4 mm"));
    }
}
