//! The lines the trade draws, by region and month.

use serde::{Deserialize, Serialize};
use snowhum_say::{Message, regions, usual};
use snowhum_winter::Status;

use crate::sums::{SumFault, same_name};

const ANYWHERE: &str = "anywhere";

/// A line: think at the lower figure, act at the upper.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Line {
    #[serde(default, skip_serializing)]
    name: String,
    /// Whose line it is.
    pub region: String,
    /// Other names of the region.
    #[serde(default, skip_serializing)]
    pub aliases: Vec<String>,
    /// Months it is for, 1 to 12; none for the whole year.
    #[serde(default)]
    pub months: Vec<i8>,
    /// Think at the first, act at the second, in `unit`.
    pub value: [f64; 2],
    /// Whether it is for a board under the hive.
    #[serde(skip_serializing)]
    pub board: bool,
    /// Unit of the figures.
    pub unit: String,
    /// The line in words.
    #[serde(default)]
    pub says: Message,
    /// Who draws it.
    pub source: String,
    /// How well it is founded.
    pub status: Status,
}

/// The line for a region and month, and what others say: the region's own before the general one, one for the month
/// before one for the year.
pub(super) fn chosen(
    lines: &[Line],
    region: Option<&str>,
    month: Option<i8>,
    board: bool,
) -> Result<(Line, Vec<Line>), SumFault> {
    let region = region.unwrap_or(ANYWHERE);
    if !lines.iter().any(|line| line.is_of(region)) {
        return Err(unknown(lines, region));
    }
    let fits = |line: &&Line| {
        line.board == board && (line.months.is_empty() || month.is_some_and(|m| line.months.contains(&m)))
    };
    let rank = |line: &Line| (line.is_of(region), !line.months.is_empty());
    let general = |line: &&Line| line.is_of(region) || line.is_of(ANYWHERE);
    let best = lines.iter().filter(fits).filter(general).max_by_key(|line| rank(line));
    let Some(best) = best else { return Err(unknown(lines, region)) };
    let others = lines.iter().filter(fits).filter(|line| *line != best && line.region != best.region);
    Ok((best.told(), others.filter(|line| !line.is_of(ANYWHERE)).map(Line::told).collect()))
}

impl Line {
    /// Whose line it is, in words; a test finds them for each.
    #[must_use]
    pub fn region(&self) -> Message {
        regions::named(&self.region.to_lowercase().replace(' ', "-")).unwrap_or_default()
    }

    fn told(&self) -> Self {
        Self { says: usual::named(&self.name).unwrap_or_default(), ..self.clone() }
    }

    fn is_of(&self, region: &str) -> bool {
        same_name(&self.region, region) || self.aliases.iter().any(|alias| same_name(alias, region))
    }
}

fn unknown(lines: &[Line], region: &str) -> SumFault {
    let mut known: Vec<String> = lines.iter().map(|line| line.region.to_lowercase()).collect();
    known.sort_unstable();
    known.dedup();
    SumFault::Unknown { what: snowhum_say::mites::region(), name: region.to_owned(), known: known.join(", ") }
}

#[cfg(test)]
mod tests {
    use super::super::{Figures, SHIPPED, shipped};

    #[test]
    fn every_line_has_its_texts() {
        for line in shipped::<Figures>("mites.toml", SHIPPED).unwrap().line {
            assert!(!line.told().says.is_none() && !line.region().is_none(), "{line:?}");
        }
    }
}
