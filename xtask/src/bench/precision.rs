//! How sure answers are for the work they take: two binaries beside one another, over seeds, on the demo and on made-up yards.

use crate::house;
use anyhow::{Context, Result};
use serde_json::Value;
use std::collections::BTreeMap;
use std::path::Path;
use std::process::Command;
use toml::Table;

const DEMO: &str = "data/demo/rowan-bank.toml";
/// Invented: latitude, longitude and height of a site, its zone, and food and bees over the demo's.
const YARDS: [(f64, f64, f64, &str, f64, f64); 10] = [
    (60.2, 24.9, 20.0, "Europe/Helsinki", 0.8, 1.0),
    (65.0, 25.5, 15.0, "Europe/Helsinki", 1.3, 0.9),
    (59.9, 10.8, 90.0, "Europe/Oslo", 0.6, 1.1),
    (57.7, 12.0, 40.0, "Europe/Stockholm", 0.7, 0.8),
    (53.5, 10.0, 10.0, "Europe/Berlin", 0.5, 0.9),
    (47.0, 8.3, 460.0, "Europe/Zurich", 0.8, 0.7),
    (50.5, -104.6, 580.0, "America/Regina", 1.4, 1.2),
    (45.4, -75.7, 70.0, "America/Toronto", 1.0, 1.0),
    (44.3, -72.6, 160.0, "America/New_York", 0.7, 1.2),
    (43.1, 141.4, 20.0, "Asia/Tokyo", 0.9, 0.8),
];
/// What is read of each colony; its actions besides.
const CHANCES: [&str; 3] = ["alive_in_spring", "alive_fed_queenright", "alive_queenright_if_fed"];

/// What one binary told, seed by seed, by kind of answer and the answer's name; and the processor time it took.
#[derive(Default)]
struct Told {
    answers: BTreeMap<(&'static str, String), Vec<f64>>,
    seconds: f64,
}

/// Prints, by yard and kind of answer, how many times surer a second of processor makes the second binary than the first, and the
/// farthest that a mean over the seeds has moved, in its standard errors.
///
/// # Errors
/// When a binary cannot be asked.
pub(crate) fn run(before: &str, after: &str, seeds: u32) -> Result<()> {
    let place = std::env::temp_dir().join(format!("snowhum-precision-{}", std::process::id()));
    std::fs::create_dir_all(&place)?;
    let demo: Table = toml::from_str(&std::fs::read_to_string(house::root().join(DEMO))?)?;
    let made_up = |yard: &(f64, f64, f64, &'static str, f64, f64)| Ok((yard.3, moved(demo.clone(), yard)?));
    let yards: Result<Vec<(&str, Table)>> =
        std::iter::once(Ok(("demo", demo.clone()))).chain(YARDS.iter().map(made_up)).collect();
    for (name, yard) in yards? {
        std::fs::write(place.join("yard.toml"), toml::to_string(&yard)?)?;
        let mut told = [Told::default(), Told::default()];
        for seed in 1..=seeds {
            for (binary, told) in [before, after].into_iter().zip(&mut told) {
                ask(binary, &place, seed, told)?;
            }
        }
        print(name, &told);
    }
    Ok(std::fs::remove_dir_all(&place)?)
}

/// The demo's yard on another site, without its log.
fn moved(
    mut yard: Table,
    (latitude, longitude, height, zone, food, bees): &(f64, f64, f64, &str, f64, f64),
) -> Result<Table> {
    yard.remove("visit");
    let site = yard.get_mut("site").and_then(|site| site.as_table_mut()).context("the demo has no site")?;
    site.insert("latitude".to_owned(), (*latitude).into());
    site.insert("longitude".to_owned(), (*longitude).into());
    site.insert("elevation".to_owned(), format!("{height} m").into());
    site.insert("zone".to_owned(), (*zone).into());
    let colonies = yard.get_mut("colony").and_then(|all| all.as_array_mut()).context("the demo has no colonies")?;
    for colony in colonies.iter_mut().filter_map(|colony| colony.as_table_mut()) {
        let kg = colony["stores"].as_str().and_then(|text| text.strip_suffix(" kg")?.parse::<f64>().ok());
        let count = colony["bees"].as_integer().context("the demo's bees are no number")?;
        colony
            .insert("stores".to_owned(), format!("{:.1} kg", food * kg.context("the demo's food is no mass")?).into());
        colony.insert("bees".to_owned(), ((bees * count as f64) as i64).into());
    }
    Ok(yard)
}

fn ask(binary: &str, place: &Path, seed: u32, told: &mut Told) -> Result<()> {
    let mut command = Command::new(binary);
    command.args(["plan", "--json", "--apiary", "yard.toml", "--threads", "1", "--seed", &seed.to_string()]);
    let since = processor_seconds()?;
    let answer = house::capture(command.current_dir(place).env("HOME", place).env("XDG_DATA_HOME", place))?;
    told.seconds += processor_seconds()? - since;
    let answer: Value = serde_json::from_slice(&answer).context("`plan` did not print JSON")?;
    for colony in answer["colonies"].as_array().context("no colonies are told")? {
        let mut tell = |kind, name: &str, value: &Value| {
            let name = format!("{} {name}", colony["name"]);
            told.answers.entry((kind, name)).or_default().extend(value.as_f64());
        };
        CHANCES.iter().for_each(|chance| tell("chance", chance, &colony[*chance]));
        tell("food p10", "stores", &colony["stores_kg"]["spring"]["p10"]);
        tell("short of food", "shortage", &colony["shortage_kg"]);
        for action in colony["actions"].as_array().into_iter().flatten() {
            tell("worth", action["kind"].as_str().unwrap_or_default(), &action["worth_hives_in_100"]);
        }
    }
    Ok(())
}

/// Of all programs that were asked so far; Linux tells it in hundredths.
fn processor_seconds() -> Result<f64> {
    let stat = std::fs::read_to_string("/proc/self/stat")?;
    let after_name = stat.rsplit(')').next().unwrap_or_default();
    let of_children = after_name.split_whitespace().skip(13).take(2).filter_map(|ticks| ticks.parse::<f64>().ok());
    Ok(of_children.sum::<f64>() / 100.0)
}

fn print(yard: &str, [before, after]: &[Told; 2]) {
    let dearer = after.seconds / before.seconds;
    println!("{yard}: {dearer:.2} times the processor's time");
    let mut kinds: BTreeMap<&str, Vec<(f64, f64)>> = BTreeMap::new();
    for ((kind, name), was) in &before.answers {
        // An action that some seeds do not find worth telling is left out.
        let Some(is) = after.answers.get(&(*kind, name.clone())).filter(|is| is.len() == was.len()) else { continue };
        let ((was_mean, was_variance), (mean, variance)) = (spread(was), spread(is));
        let error = ((was_variance + variance) / was.len() as f64).sqrt();
        if was_variance > 0.0 && variance > 0.0 {
            kinds.entry(kind).or_default().push((was_variance / variance, (mean - was_mean) / error));
        }
    }
    for (kind, told) in kinds {
        let surer = (told.iter().map(|(ratio, _)| ratio.ln()).sum::<f64>() / told.len() as f64).exp();
        let farthest =
            told.iter().fold(0.0, |most: f64, (_, moved)| if moved.abs() > most.abs() { *moved } else { most });
        let squares = told.iter().map(|(_, moved)| moved * moved).sum::<f64>() / told.len() as f64;
        println!(
            "  {kind:<14} {:>3} answers: variance {surer:5.2} times less, {:5.2} a second; means moved by {:.2} errors, at most {farthest:+.1}",
            told.len(),
            surer / dearer,
            squares.sqrt()
        );
    }
}

fn spread(values: &[f64]) -> (f64, f64) {
    let n = values.len() as f64;
    let mean = values.iter().sum::<f64>() / n;
    (mean, values.iter().map(|value| (value - mean).powi(2)).sum::<f64>() / (n - 1.0))
}
