//! What the validation promises: strict classes hold, the committed page is fresh, ids are unique and explained.
#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};
use std::sync::LazyLock;

use snowhum_validation::{Check, Class, PROMISES, Validation};
use snowhum_winter::Parameters;

static COMPUTED: LazyLock<Validation> = LazyLock::new(|| Validation::compute().unwrap());

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

fn of(class: Class) -> Vec<Check> {
    COMPUTED.checks().iter().filter(|check| check.class == class).cloned().collect()
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
    let checks = COMPUTED.checks();
    let ids: BTreeSet<_> = checks.iter().map(|check| check.id).collect();
    assert_eq!(ids.len(), checks.len());
    for check in checks {
        assert!(!check.source.is_empty() && !check.expected.is_empty() && !check.computed.contains("NaN"), "{check:?}");
        assert!(check.is_inside() || check.explanation.is_some_and(|why| why.len() > 40), "{check:?}");
    }
}

#[test]
fn the_committed_page_is_a_fresh_one() {
    let fresh = COMPUTED.page();
    let committed = include_str!("../../../docs/VALIDATION.md");
    let differs = fresh.lines().zip(committed.lines()).find(|(fresh, committed)| fresh != committed);
    assert!(fresh == committed, "run `cargo xtask validate`; first difference: {differs:?}");
}

#[test]
fn the_committed_parameters_are_those_of_the_data() {
    let committed = include_str!("../../../docs/PARAMETERS.md");
    assert!(COMPUTED.parameters_page().is_ok_and(|page| page == committed), "run `cargo xtask validate`");
}

#[test]
fn checks_and_parameters_named_as_bound_together_exist() {
    let checks = COMPUTED.checks();
    for (parameter, ids) in snowhum_validation::NOT_INDEPENDENT {
        assert!(Parameters::NAMES.contains(parameter), "{parameter}");
        for id in *ids {
            assert!(checks.iter().any(|check| check.id == *id), "{id}");
        }
    }
}

#[test]
fn the_committed_pictures_are_fresh_ones_and_no_others() {
    let folder = root().join("docs/pictures");
    let fresh: BTreeSet<String> = COMPUTED.pictures().iter().map(|picture| picture.file.to_owned()).collect();
    let names = std::fs::read_dir(&folder).unwrap().map(|entry| entry.unwrap().file_name().into_string().unwrap());
    assert_eq!(names.collect::<BTreeSet<_>>(), fresh);
    for picture in COMPUTED.pictures() {
        let committed = std::fs::read_to_string(folder.join(picture.file)).unwrap();
        assert!(committed == picture.svg, "{}: run `cargo xtask validate`", picture.file);
    }
}

#[test]
fn every_picture_has_words_for_those_who_do_not_see_it_and_no_lost_figure() {
    assert!(COMPUTED.pictures().len() >= 3);
    for picture in COMPUTED.pictures() {
        let svg = &picture.svg;
        assert!(svg.contains("role=\"img\"") && svg.contains("<title") && svg.contains("viewBox"), "{}", picture.file);
        assert!(picture.description.len() > 80 && svg.contains("<desc"), "{}", picture.file);
        assert!(
            !svg.contains("NaN") && !picture.description.contains("NaN") && !svg.contains("inf"),
            "{}",
            picture.file
        );
    }
}

#[test]
fn every_test_named_on_the_page_is_there() {
    for promise in PROMISES {
        let text = std::fs::read_to_string(root().join(promise.file)).unwrap();
        let lines: Vec<&str> = text.lines().map(str::trim).collect();
        let start = format!("fn {}(", promise.test);
        let at = lines.iter().position(|line| line.starts_with(&start)).unwrap_or_else(|| panic!("{}", promise.test));
        assert_eq!(lines[at - 1], "#[test]", "{}", promise.test);
    }
}

#[test]
fn four_fifths_of_what_real_winters_showed_lie_in_the_computed_ranges() {
    let rows = &COMPUTED.real_winters().rows;
    let outside: Vec<_> =
        rows.iter().filter(|row| !row.is_inside()).map(|row| (&row.study, &row.row.what, row.computed)).collect();
    assert!(rows.len() >= 40 && 5 * outside.len() <= rows.len(), "{outside:?}");
}

#[test]
fn no_ordering_of_real_winters_is_reversed() {
    let real = COMPUTED.real_winters();
    for (study, worse, better) in snowhum_validation::ORDERINGS {
        let [worse, better] = [worse, better].map(|what| real.middle(study, what).unwrap());
        assert!(worse > better, "{study}: {worse} {better}");
    }
}

#[test]
fn food_of_two_weighed_hives_together_goes_from_month_to_month_as_found_within_a_fifth() {
    let ratios = COMPUTED.real_winters().ratios();
    let together: Vec<_> = ratios.iter().filter(|ratio| ratio.what.ends_with("both hives")).collect();
    assert!(together.len() == 2 && together.iter().all(|ratio| ratio.is_within_a_fifth()), "{ratios:?}");
}
