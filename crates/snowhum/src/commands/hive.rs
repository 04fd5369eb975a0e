//! `hive`: one hive at steady weather.

use snowhum_advice::{hive, yard};
use snowhum_picture::{IdPrefix, PlateWidth};
use snowhum_say::{hive_terminal as say, shared_terminal as shared};
use snowhum_units::{Fraction, System, Watt};
use snowhum_web::steady_section;
use snowhum_winter::{Parameters, StartFrom, SteadyQuestion};
use std::io::Write;

use crate::args::{Common, HiveArguments, Start};
use crate::{exit, new_file, sources, text};

pub(super) fn run(arguments: &HiveArguments, common: &Common) -> anyhow::Result<()> {
    let apiary = sources::apiary(arguments.apiary.as_deref(), common)?;
    let at = sources::place_of(&apiary, &arguments.colony)?;
    let housed = yard::housed(&apiary);
    let Some(housed) = housed.get(at) else {
        return Err(exit::refused(shared::no_hive(&arguments.colony)));
    };
    let question = question(arguments, housed.colony.bees.p50, common.units.into())?;
    let parameters = Parameters::shipped()?;
    let answer = hive(housed, &parameters, question);
    if let Some(file) = &arguments.svg {
        let section = steady_section(housed, &answer, &question, text::voice::tongue());
        let svg = section.cutaway(PlateWidth::Desk).standalone(&IdPrefix::new("hive"));
        new_file::create(file)?.write_all(svg.as_bytes()).map_err(|error| new_file::failed(file, &error))?;
        crate::progress::note(say::picture(file.display().to_string()));
    }
    if common.json {
        text::say(&serde_json::to_string_pretty(&answer)?)?;
    } else {
        text::say(&text::hive::words(&housed.colony.name, &housed.hive, &question, &answer))?;
    }
    Ok(())
}

fn question(arguments: &HiveArguments, own_bees: f64, system: System) -> anyhow::Result<SteadyQuestion> {
    let (outside, wind) = (arguments.outside.read(system), arguments.wind.read(system));
    let bees = arguments.bees.unwrap_or(own_bees);
    for (option, value, low, high) in [
        (say::cluster_alone(), outside.celsius(), -60.0, 15.0),
        ("--humidity".into(), arguments.humidity, 0.0, 100.0),
        ("--wind (m/s)".into(), wind.get(), 0.0, 60.0),
        ("--bees".into(), bees, 0.0, 100_000.0),
        ("--brood-cells".into(), arguments.brood_cells, 0.0, 100_000.0),
        ("--heater-w".into(), arguments.heater_w.unwrap_or(0.0), 0.0, 1_000.0),
    ] {
        if !(low..=high).contains(&value) {
            return Err(exit::refused(say::outside(high, low, option, value)));
        }
    }
    Ok(SteadyQuestion {
        outside,
        humidity: Fraction::new(arguments.humidity / 100.0),
        wind,
        bees,
        brood_cells: arguments.brood_cells,
        heater: arguments.heater_w.map(Watt::new),
        start: match arguments.start {
            Start::Cold => StartFrom::Cold,
            Start::Warm => StartFrom::Warm,
        },
    })
}
