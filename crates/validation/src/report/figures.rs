//! The page of parameters, generated from the data files that ship.

use snowhum_advice::indoors::IndoorFigures;
use snowhum_advice::jobs::Triggers;
use snowhum_advice::now::Thresholds;
use snowhum_figures::{CONSTANTS, FigureFile, FigureRow, files};
use snowhum_say::{Tongue, source_page};
use snowhum_winter::{Parameter, ParameterError, Parameters};

const HEAD: &str = "# Parameters\n\nWritten by `cargo xtask validate` from the files named below; do not edit. A range is \
    one in ten below to one in ten above.\n";
const TABLE: &str =
    "\n| parameter | value | range | before | unit | status | source |\n|---|---|---|---|---|---|---|\n";

/// Every parameter with value, range, unit, source and status, in the order of its model.
///
/// # Errors
/// Never with the shipped files.
pub(crate) fn figures(winter: &Parameters) -> Result<String, ParameterError> {
    let mut page = HEAD.to_owned();
    page += "\n## The winter model: `data/winter_parameters.toml`\n\nThe equations they stand in: [MODEL.md](MODEL.md). Each \
        member of an ensemble draws its own from a range. *Calibrated* ones are drawn together \
        (`data/winter_joint_draws.toml`); *before* is their range before any winter was read.\n\nStudies that set them: ";
    page += &winter.joint.studies.join(", ");
    page += " ([VALIDATION.md](VALIDATION.md), class D).\n";
    table(&mut page, winter.iter());
    page += "\n## The watch: `data/watch_parameters.toml`\n\nWhat signs are worth: [WATCH.md](WATCH.md). Values are used; \
        ranges say how wide the judgement is.\n";
    table(&mut page, snowhum_watch::Parameters::shipped()?.iter());
    page += "\n## Words and lids: `data/now.toml`\n";
    table(&mut page, Thresholds::shipped()?.iter());
    page += "\n## Jobs and dates: `data/jobs.toml`\n";
    table(&mut page, Triggers::shipped()?.iter());
    page += "\n## Rooms that hives winter in: `data/indoors.toml`\n";
    table(&mut page, IndoorFigures::shipped()?.iter());
    page += "\n## Figures that no run varies\n";
    for (name, text) in files::ALL.iter().filter(|(name, _)| CONSTANTS.contains(name)) {
        let title = Tongue::BRITISH.say(&source_page::title(name));
        page += &format!("\n### {title}: `data/{name}.toml`\n");
        let mut file = FigureFile::read(text)?;
        let rows = file.take_rows();
        table(&mut page, file.take_all()?.iter().map(|(name, figure)| (name.as_str(), figure)));
        for (name, FigureRow { values, unit, source, status }) in rows {
            let status = status.words();
            page += &format!("| `{name}` | {values:?} | | | {unit} | {status} | {source} |\n");
        }
    }
    Ok(page)
}

fn table<'name, 'a>(page: &mut String, parameters: impl Iterator<Item = (&'name str, &'a Parameter)>) {
    page.push_str(TABLE);
    for (name, parameter) in parameters {
        page.push_str(&row(name, parameter));
    }
}

fn row(name: &str, parameter: &Parameter) -> String {
    let range = match (parameter.low, parameter.high) {
        (Some(low), Some(high)) => format!("{low} to {high}"),
        _ => String::new(),
    };
    let before = parameter.prior.map_or(String::new(), |[low, _, high]| format!("{low} to {high}"));
    let Parameter { value, unit, source, .. } = parameter;
    format!("| `{name}` | {value} | {range} | {before} | {unit} | {} | {source} |\n", parameter.status.words())
}
