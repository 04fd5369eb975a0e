//! The header of an EPW file: where it is, what its clock is, and the known cold.

use super::text::shown;
use crate::{Place, WeatherFaults, fault};
use jiff::tz::Offset;
use snowhum_say::weather_fault as say;
use snowhum_units::{Degree, Kelvin, Metre};

/// What the header of an EPW file tells.
#[derive(Debug, Clone, PartialEq)]
pub struct EpwHeader {
    /// City as written.
    pub city: String,
    /// Where.
    pub place: Place,
    /// Standard time of the file.
    pub offset: Offset,
    /// 99 % heating dry bulb, if the header holds design conditions.
    pub design_cold: Option<Kelvin>,
    /// Mean and standard deviation of the coldest hour of each year, if the header holds them.
    pub yearly_cold: Option<(Kelvin, f64)>,
}

/// Reads the header lines (in whatever order they come).
pub(super) fn read(file: &str, lines: &[(usize, &str)]) -> Result<EpwHeader, WeatherFaults> {
    let named = |name: &str| {
        lines.iter().find(|(_, line)| line.get(..name.len()).is_some_and(|l| l.eq_ignore_ascii_case(name)))
    };
    let Some((number, location)) = named("LOCATION") else {
        return Err(fault::line(file, 1, say::epw_location()));
    };
    let fields: Vec<&str> = location.split(',').map(str::trim).collect();
    let number_at =
        |index: usize, what: &'static str, lowest: f64, highest: f64| {
            let found = fields.get(index).copied().unwrap_or("");
            found.parse::<f64>().ok().filter(|value| (lowest..=highest).contains(value)).ok_or_else(|| {
                fault::line(file, *number, say::epw_number(index + 1, highest, lowest, shown(found), what))
            })
        };
    let latitude = number_at(6, "latitude", -90.0, 90.0)?;
    let longitude = number_at(7, "longitude", -180.0, 180.0)?;
    let zone_h = number_at(8, "zone", -14.0, 14.0)?;
    let elevation_m = number_at(9, "elevation", -500.0, 9000.0)?;
    let offset = Offset::from_seconds((zone_h * 3600.0).round() as i32)
        .map_err(|error| fault::line(file, *number, say::epw_zone(error.to_string())))?;
    let design = named("DESIGN CONDITIONS").map(|(_, line)| Design::read(line)).unwrap_or_default();
    Ok(EpwHeader {
        city: fields.get(1).map(|city| shown(city)).unwrap_or_default(),
        place: Place {
            latitude: Degree::new(latitude),
            longitude: Degree::new(longitude),
            elevation: Metre::new(elevation_m),
        },
        offset,
        design_cold: design.cold,
        yearly_cold: design.yearly_cold,
    })
}

#[derive(Default)]
struct Design {
    cold: Option<Kelvin>,
    yearly_cold: Option<(Kelvin, f64)>,
}

impl Design {
    /// Design conditions; the group of extremes is laid out by the edition named in the line.
    fn read(line: &str) -> Self {
        let fields: Vec<&str> = line.split(',').map(str::trim).collect();
        let after =
            |name: &str| fields.iter().position(|field| field.eq_ignore_ascii_case(name)).map(|at| &fields[at + 1..]);
        let number = |group: Option<&[&str]>, index: usize| group.and_then(|g| g.get(index)?.parse::<f64>().ok());
        let plausible = |t_c: &f64| (-80.0..=60.0).contains(t_c);
        // Month of the cold, 99.6 %, 99 %.
        let cold = number(after("Heating"), 2).filter(plausible).map(Kelvin::from_celsius);
        let extremes = after("Extremes");
        // Wind at 1, 2.5 and 5 %; the editions up to 2013 then hold the highest wet bulb.
        let old =
            ["2001", "2005", "2009", "2013"].iter().any(|edition| fields.get(2).is_some_and(|f| f.contains(edition)));
        let first = if old { 4 } else { 3 };
        let mean = number(extremes, first).filter(plausible);
        let sd = number(extremes, first + 2).filter(|sd| (0.0..=15.0).contains(sd));
        Self { cold, yearly_cold: mean.zip(sd).map(|(mean_c, sd)| (Kelvin::from_celsius(mean_c), sd)) }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Invented figures in both layouts.
    #[test]
    fn design_conditions_are_read_by_edition() {
        let old = "DESIGN CONDITIONS,1,Climate Design Data 2009 ASHRAE Handbook,,Heating,2,-22.0,-19.0,-25,0.4,-20,Extremes,\
                   10.1,9.0,8.2,23.0,-25.5,28.0,4.5,1.9,-28.7,29.4";
        let new = "DESIGN CONDITIONS,1,2021 ASHRAE Handbook -- Fundamentals,,Heating,1,-45.0,-42.0,-47,0.1,-33,Extremes,\
                   6.1,5.2,4.4,-45.5,28.5,3.5,1.8,-48.0,29.8";
        for (line, cold, mean, sd) in [(old, -19.0, -25.5, 4.5), (new, -42.0, -45.5, 3.5)] {
            let design = Design::read(line);
            assert!((design.cold.unwrap().celsius() - cold).abs() < 1e-9);
            let (found, spread) = design.yearly_cold.unwrap();
            assert!((found.celsius() - mean).abs() < 1e-9 && (spread - sd).abs() < 1e-9, "{found:?} {spread}");
        }
        assert!(Design::read("DESIGN CONDITIONS,0").cold.is_none());
    }
}
