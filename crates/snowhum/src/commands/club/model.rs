//! What a club's night asks of the model, and how it answers: as `plan --json` does.

use std::path::Path;
use std::sync::Arc;

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_advice::MEMBERS;
use snowhum_advice::lessons::{LessonsQuestion, WinterRecord, lessons};
use snowhum_advice::verdict::LastVerdict;
use snowhum_apiary::{Apiary, Site};
use snowhum_club::{Asked, Cell, Handed, Reckon, Winter, Yard};
use snowhum_clubhouse::Read;
use snowhum_figures::club::{CELL_LATITUDE, CELL_LONGITUDE};
use snowhum_store::{Fault, Store};

use crate::args::RunArguments;
use crate::commands::now::Asking;
use crate::commands::plan;
use crate::keep;
use crate::weather_source::spring_of;

/// What a night asks; what is not in it, the build decides.
#[derive(Debug, Clone, clap::Args, Serialize, Deserialize)]
pub(crate) struct Question {
    #[arg(long, value_name = "DATE", value_parser = crate::args::parse_date)]
    as_of: Option<Date>,
    #[arg(long, value_name = "N", default_value_t = 1)]
    seed: u64,
    #[arg(long, value_name = "N", default_value_t = MEMBERS as u32, value_parser = clap::value_parser!(u32).range(8..=10_000))]
    members: u32,
}

/// A yard as a club keeps it.
#[derive(Serialize, Deserialize)]
struct Kept {
    yard: Apiary,
    told: Vec<LastVerdict>,
}

/// The model, for a worker.
pub(super) fn reckon() -> Reckon {
    Arc::new(|asked: &Asked<'_>| answer(asked).map_err(|error| error.to_string()))
}

fn answer(asked: &Asked<'_>) -> anyhow::Result<String> {
    let question: Question = serde_json::from_str(asked.question)?;
    let kept: Kept = serde_json::from_str(asked.yard)?;
    let usual = RunArguments::usual(question.as_of);
    let run = &RunArguments { seed: question.seed, members: question.members, ..usual };
    let asking = Asking { run, last: &kept.told };
    Ok(serde_json::to_string_pretty(&plan::answer_of(&kept.yard, &asking)?)?)
}

/// The same for the pages, to which it is sent.
pub(super) fn read() -> Read {
    Arc::new(|export| {
        Box::pin(async { handed(Path::new("the export"), export).await.map_err(|error| error.to_string()) })
    })
}

/// What a member hands in: the file, and the yards that the records in it hold.
pub(super) async fn handed(file: &Path, export: String) -> anyhow::Result<Handed> {
    let yards = yards(&export).await.map_err(|fault| keep::failure_of(file, fault))?;
    Ok(Handed { yards: yards.iter().map(Kept::yard_as_handed).collect::<anyhow::Result<_>>()?, export })
}

impl Kept {
    fn yard_as_handed(&self) -> anyhow::Result<Yard> {
        let today = jiff::tz::TimeZone::system().to_datetime(jiff::Timestamp::now()).date();
        Ok(Yard {
            id: self.yard.id.0,
            name: self.yard.name.clone(),
            body: serde_json::to_string(self)?,
            cell: Some(cell(&self.yard.site)),
            winters: winters(&self.yard, today),
        })
    }
}

/// A yard of which nothing was told yet, as it is handed in.
pub(super) fn untold(yard: Apiary) -> anyhow::Result<Yard> {
    Kept { yard, told: Vec::new() }.yard_as_handed()
}

fn cell(site: &Site) -> Cell {
    let index = |degrees: f64, size: f64| (degrees / size).floor() as i32;
    Cell { north: index(site.latitude.get(), CELL_LATITUDE), east: index(site.longitude.get(), CELL_LONGITUDE) }
}

/// Winters of a yard that the club may count: over, and every colony told. An invented yard lost nothing.
fn winters(yard: &Apiary, today: Date) -> Vec<Winter> {
    let Some(spring) = spring_of(&yard.site, yard.as_of).filter(|_| !yard.invented) else { return Vec::new() };
    let question =
        LessonsQuestion { apiary: yard, as_of: today, season: None, spring, added: 0, removed: 0, forecasts: &[] };
    let told = lessons(&question).map(|answer| answer.winters).unwrap_or_default();
    let is_told = |winter: &&WinterRecord| winter.season.end <= today && winter.not_told == 0 && winter.at_risk > 0;
    let one = |winter: &WinterRecord| Winter { year: winter.season.year, colonies: winter.at_risk, lost: winter.lost };
    told.iter().filter(is_told).map(one).collect()
}

async fn yards(export: &str) -> Result<Vec<Kept>, Fault> {
    let store = Store::in_memory().await?;
    store.import_json(export.as_bytes()).await?;
    let mut yards = Vec::new();
    for name in store.yards().await? {
        if let Some(yard) = store.yard(name.id).await? {
            yards.push(Kept { yard, told: snowhum_web::last_told(&store, name.id).await? });
        }
    }
    store.close().await;
    Ok(yards)
}
