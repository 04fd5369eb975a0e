//! Sheets in the file, and the keeper's own materials.

use super::report::Report;
use super::scalar::Limits;
use super::section::{Entry, Section};
use crate::{Layer, Material, layer};
use snowhum_say::{hive_fault as say, yard_fault};
use snowhum_units::{JoulePerKilogramKelvin, KilogramPerCubicMetre, WattPerMetreKelvin};
use toml::de::DeValue;

const KEYS: [&str; 5] =
    ["name", "conductivity_w_per_m_k", "density_kg_per_m3", "specific_heat_j_per_kg_k", "vapour_resistance"];
const MOST_OWN: usize = 100;

/// Sheets one over another, from the bees outwards.
pub(crate) fn sheets(entry: &Entry<'_>, own: &[Material], report: &mut Report) -> Option<Vec<Layer>> {
    const MOST: usize = 12;
    let items = match entry.value {
        DeValue::String(_) => {
            let text = entry.text(report)?.trim();
            if matches!(text, "none" | "off" | "bare") {
                return Some(Vec::new());
            }
            return sheet(entry, own, report).map(|sheet| vec![sheet]);
        }
        _ => entry.list(report)?,
    };
    if items.len() > MOST {
        report.fault(&entry.spot, say::sheets(items.len()), say::sheets_right(MOST));
        return None;
    }
    let read: Vec<Option<Layer>> = items.iter().map(|item| sheet(item, own, report)).collect();
    read.into_iter().collect()
}

/// One sheet.
pub(crate) fn sheet(entry: &Entry<'_>, own: &[Material], report: &mut Report) -> Option<Layer> {
    let text = entry.text(report)?;
    layer::read(text, own).map_err(|wrong| report.wrong(&entry.spot, wrong)).ok()
}

/// `[[material]]`: what the shelf does not have.
pub(crate) fn own_materials(root: &Section<'_>, report: &mut Report) -> Vec<Material> {
    let mut sections = root.tables("material", report);
    if let Some(beyond) = sections.get(MOST_OWN) {
        let spot = beyond.spot.clone();
        report.fault(&spot, say::materials(sections.len()), say::materials_right(MOST_OWN));
        sections.truncate(MOST_OWN);
    }
    sections.iter().filter_map(|section| own_material(section, report)).collect()
}

fn own_material(section: &Section<'_>, report: &mut Report) -> Option<Material> {
    section.only(&KEYS, report);
    let name = section.need("name", say::needs_material_name, report);
    let name = name.and_then(|entry| entry.name(report));
    let mut figure = |key: &str, limits: Limits| {
        let entry = section.need(key, limits.said, report)?;
        entry.number(&limits, report)
    };
    let conductivity = figure(KEYS[1], Limits::new(0.005, 500.0, || yard_fault::from_in("0.005", "500", "W/(m K)")));
    let density = figure(KEYS[2], Limits::new(1.0, 12_000.0, || yard_fault::from_in("1", "12000", "kg/m3")));
    let heat = figure(KEYS[3], Limits::new(100.0, 5_000.0, || yard_fault::from_in("100", "5000", "J/(kg K)")));
    let vapour = figure(KEYS[4], Limits::new(1.0, 1e7, || say::still_air("1", "10000000")));
    Some(Material {
        name: name?,
        conductivity: WattPerMetreKelvin::new(conductivity?),
        density: KilogramPerCubicMetre::new(density?),
        specific_heat: JoulePerKilogramKelvin::new(heat?),
        vapour_resistance: vapour?,
    })
}
