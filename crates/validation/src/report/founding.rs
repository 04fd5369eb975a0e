//! What each parameter rests on, and which checks are independent of the figures that set it.

use snowhum_winter::{Parameter, Parameters, Status};

use super::line;
use crate::check::{Check, Class};

/// Checks that compare with a figure which also set a parameter: they show that the model holds what it was given, not
/// that it foretells it.
pub const NOT_INDEPENDENT: &[(&str, &[&str])] = &[
    ("brood_food", &["P-food-2"]),
    ("conductance_core_air", &["C-cluster-3", "F-cluster-3"]),
    ("conductance_core_mantle", &["F-cluster-3"]),
    ("core_brood", &["C-hive-2", "C-hive-5"]),
    ("core_broodless", &["F-cluster-4"]),
    ("honey_water", &["A-honey-1", "A-honey-4"]),
    ("loosest_at", &["B-cluster-1"]),
    ("mantle_floor", &["C-hive-1", "C-hive-4"]),
    ("load_threshold", &["B-season-2"]),
    ("mites_half_damage", &["F-loss-2", "F-loss-3"]),
    ("rest_power", &["B-cluster-1"]),
    ("summer_bee_share", &["C-season-1"]),
    ("tightest_at", &["B-cluster-6"]),
    ("volume_ratio", &["C-cluster-1", "F-cluster-1"]),
    ("winter_bee_ageing", &["C-season-1", "C-season-2", "C-season-3"]),
    ("winter_bee_ageing_from", &["C-season-1", "C-season-3"]),
    ("winter_bee_hazard", &["C-season-1", "C-season-2", "C-season-3"]),
    ("zone_share", &["C-cavity-1"]),
];

/// Checks that look at a figure which set the weather generator.
const SET_THE_GENERATOR: &[&str] = &["F-cold-1", "F-cold-2"];

/// The figures that set parameters, and those that were only checked.
pub(super) fn set_and_checked(page: &mut String, checks: &[Check], parameters: &Parameters) {
    line(
        page,
        format_args!(
            "## Which figures set a parameter, and which were only checked\n\n\
             Parameters with a published source, common practice or a fit to real winters (class D) behind them. The last column names checks that look at the \
             same figure and so prove little.\n\n\
             | parameter | value | set by | not independent |\n|---|---|---|---|"
        ),
    );
    for (name, parameter) in parameters.iter().filter(|(_, parameter)| is_founded(parameter)) {
        let same = NOT_INDEPENDENT.iter().filter(|(of, _)| *of == name).map(|(_, ids)| ids.join(", "));
        let same: String = same.collect();
        let Parameter { unit, source, .. } = parameter;
        line(page, format_args!("| `{name}` | {} {unit} | {source} | {} |", parameter.value, same));
    }
    let judged = NOT_INDEPENDENT
        .iter()
        .filter(|(name, _)| parameters.iter().any(|(of, parameter)| of == *name && !is_founded(parameter)));
    let judged: Vec<String> = judged.map(|(name, ids)| format!("`{name}` ({})", ids.join(", "))).collect();
    line(page, format_args!("\nSet by judgement with such a figure in view: {}.\n", judged.join(", ")));
    let mut only = String::new();
    for check in checks.iter().filter(|check| is_measured(check.class) && is_independent(check.id)) {
        only.push_str(if only.is_empty() { "" } else { ", " });
        only.push_str(check.id);
    }
    line(page, format_args!("Only checked, no parameter's source names them: {only}.\n"));
}

/// Everything that rests on judgement or memory.
pub(super) fn open(page: &mut String, parameters: &Parameters) {
    let all = parameters.iter().count();
    let open = || parameters.iter().filter(|(_, parameter)| !is_founded(parameter));
    line(
        page,
        format_args!(
            "## Open: parameters that rest on judgement or memory\n\n\
             {} of {all}. Whoever knows a measurement for one of these can better the model most.\n\n\
             | parameter | value | one in ten below, above | status | what is known |\n|---|---|---|---|---|",
            open().count()
        ),
    );
    for (name, parameter) in open() {
        let Parameter { unit, source, .. } = parameter;
        let range = match (parameter.low, parameter.high) {
            (Some(low), Some(high)) => format!("{low}, {high}"),
            _ => "fixed".to_owned(),
        };
        let status = if parameter.status == Status::FromMemory { "from memory" } else { "judgement" };
        line(page, format_args!("| `{name}` | {} {unit} | {range} | {status} | {source} |", parameter.value));
    }
}

fn is_founded(parameter: &Parameter) -> bool {
    matches!(parameter.status, Status::Published | Status::CommonPractice | Status::Calibrated)
}

fn is_measured(class: Class) -> bool {
    class != Class::Exact
}

fn is_independent(id: &str) -> bool {
    !SET_THE_GENERATOR.contains(&id) && !NOT_INDEPENDENT.iter().any(|(_, ids)| ids.contains(&id))
}
