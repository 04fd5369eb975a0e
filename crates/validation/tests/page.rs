//! What the validation promises: strict classes hold, the committed page is fresh, ids are unique and explained.

use std::collections::BTreeSet;

use snowhum_validation::{Check, Class, all, report};
use snowhum_winter::Parameters;

fn of(class: Class) -> Vec<Check> {
    let checks = all().unwrap_or_default();
    checks.into_iter().filter(|check| check.class == class).collect()
}

fn outside(checks: &[Check]) -> Vec<String> {
    let outside = checks.iter().filter(|check| !check.is_inside());
    outside.map(|check| format!("{}: {} not {}", check.id, check.computed, check.expected)).collect()
}

#[test]
fn every_exact_check_is_inside() {
    let checks = of(Class::Exact);
    assert!(checks.len() > 30 && outside(&checks).is_empty(), "{:?}", outside(&checks));
}

#[test]
fn every_shape_is_inside() {
    let checks = of(Class::Shape);
    assert!(checks.len() > 15 && outside(&checks).is_empty(), "{:?}", outside(&checks));
}

#[test]
fn nine_tenths_of_the_measured_numbers_are_inside() {
    let checks = of(Class::Numbers);
    let failed = outside(&checks);
    assert!(checks.len() > 10 && 10 * failed.len() <= checks.len(), "{failed:?}");
}

#[test]
fn every_check_has_its_own_id_and_every_figure_outside_its_reason() {
    let checks = all().unwrap();
    let ids: BTreeSet<_> = checks.iter().map(|check| check.id).collect();
    assert_eq!(ids.len(), checks.len());
    for check in &checks {
        assert!(!check.source.is_empty() && !check.expected.is_empty() && !check.computed.contains("NaN"), "{check:?}");
        assert!(check.is_inside() || check.explanation.is_some_and(|why| why.len() > 40), "{check:?}");
    }
}

#[test]
fn the_committed_page_is_a_fresh_one() {
    let fresh = report::page(&all().unwrap(), &Parameters::shipped().unwrap());
    let committed = include_str!("../../../docs/VALIDATION.md");
    let differs = fresh.lines().zip(committed.lines()).find(|(fresh, committed)| fresh != committed);
    assert!(fresh == committed, "run `cargo xtask validate`; first difference: {differs:?}");
}

#[test]
fn the_committed_parameters_are_those_of_the_data() {
    let committed = include_str!("../../../docs/PARAMETERS.md");
    assert!(report::figures(&Parameters::shipped().unwrap()) == committed, "run `cargo xtask validate`");
}

#[test]
fn checks_and_parameters_named_as_bound_together_exist() {
    let checks = all().unwrap();
    for (parameter, ids) in report::NOT_INDEPENDENT {
        assert!(Parameters::NAMES.contains(parameter), "{parameter}");
        for id in *ids {
            assert!(checks.iter().any(|check| check.id == *id), "{id}");
        }
    }
}
