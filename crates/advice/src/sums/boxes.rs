//! Boxes of a hive standard, by the trade's names.

use snowhum_apiary::{HiveBox, Layer, Standard, standard, standards};
use snowhum_say::sums as say;

use super::SumFault;

/// The standard of this name.
///
/// # Errors
/// When no standard has the name.
pub fn standard_named(name: &str) -> Result<&'static Standard, SumFault> {
    standard(name).ok_or_else(|| {
        let known: Vec<&str> = standards().iter().map(|one| one.name.as_str()).collect();
        SumFault::Unknown { what: say::hive(), name: name.to_owned(), known: known.join("; ") }
    })
}

/// The box of this size in a standard, in the standard's usual wall.
///
/// ```
/// use snowhum_advice::sums::boxes::{box_named, standard_named};
/// let deep = box_named(standard_named("Langstroth 10").unwrap(), "deep").unwrap();
/// assert_eq!(deep.frames, 10);
/// ```
///
/// # Errors
/// When the standard has no such size.
pub fn box_named(standard: &Standard, size: &str) -> Result<HiveBox, SumFault> {
    let Some(found) = standard.size(size) else {
        let known: Vec<&str> = standard.sizes.iter().map(|one| one.size.as_str()).collect();
        return Err(SumFault::Unknown { what: say::hive_box(), name: size.to_owned(), known: known.join(", ") });
    };
    let wall: Layer = standard
        .wall
        .parse()
        .map_err(|_| SumFault::Table { table: "hive_standards.toml", fault: format!("wall \"{}\"", standard.wall) })?;
    Ok(found.build(&wall))
}

/// The lowest box a standard usually winters in.
///
/// # Errors
/// When the standard names none.
pub fn usual_box(standard: &Standard) -> Result<HiveBox, SumFault> {
    let size = standard.usual_boxes.first().map_or("brood", String::as_str);
    box_named(standard, size)
}
