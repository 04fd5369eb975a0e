//! The page of parameters, generated from `data/winter_parameters.toml`.

use snowhum_winter::{Parameter, Parameters, Status};

/// Every parameter with value, range, unit, source and status, in the order of the model.
pub(crate) fn figures(parameters: &Parameters) -> String {
    let mut page = String::from(
        "# Parameters of the winter model\n\nWritten by `cargo xtask validate` from `data/winter_parameters.toml`; do not edit. The equations they stand in:\n[MODEL.md](MODEL.md). A range is one in ten below to one in ten above; each member of an ensemble draws its own from it.\n\n| parameter | value | range | unit | status | source |\n|---|---|---|---|---|---|\n",
    );
    for (name, parameter) in parameters.iter() {
        page += &row(name, parameter);
    }
    page
}

fn row(name: &str, parameter: &Parameter) -> String {
    let range = match (parameter.low, parameter.high) {
        (Some(low), Some(high)) if parameter.varies => format!("{low} to {high}"),
        _ => String::new(),
    };
    let status = match parameter.status {
        Status::Published => "published",
        Status::CommonPractice => "common practice",
        Status::FromMemory => "from memory",
        Status::Judgement => "judgement",
    };
    format!("| `{name}` | {} | {range} | {} | {status} | {} |\n", parameter.value, parameter.unit, parameter.source)
}
