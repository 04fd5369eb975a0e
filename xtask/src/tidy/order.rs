//! The order of the crates: each may stand on earlier ones alone.

use super::finding::Finding;
use serde_json::Value;

/// The product's crates, each standing only on those before it.
const ORDER: [&str; 17] = [
    "snowhum-units",
    "snowhum-say",
    "snowhum-figures",
    "snowhum-draws",
    "snowhum-physics",
    "snowhum-apiary",
    "snowhum-weather",
    "snowhum-winter",
    "snowhum-watch",
    "snowhum-advice",
    "snowhum-picture",
    "snowhum-store",
    "snowhum-club",
    "snowhum-online",
    "snowhum-web",
    "snowhum-clubhouse",
    "snowhum",
];
/// May stand on anything, and no product crate may stand on them.
const BESIDE: [&str; 6] =
    ["snowhum-browser", "snowhum-fuzzed", "snowhum-testkit", "snowhum-validation", "snowhum-calibration", "xtask"];

/// Faults each edge that points down the order. `metadata` is `cargo metadata --no-deps`.
pub(crate) fn check(metadata: &Value) -> Vec<Finding> {
    let packages = list(&metadata["packages"]);
    let mut findings = Vec::new();
    for package in packages.filter(|package| !BESIDE.contains(&name(package))) {
        let Some(own) = rank(name(package)) else {
            findings
                .push(Finding::fault(name(package), "has no place in the order of crates (xtask/src/tidy/order.rs)"));
            continue;
        };
        let inner = list(&package["dependencies"]).filter(|edge| edge["path"].is_string() && edge["kind"] != "dev");
        let down = inner.filter(|edge| rank(name(edge)).is_none_or(|other| other >= own));
        findings.extend(down.map(|edge| {
            Finding::fault(name(package), format!("stands on {}, which does not come before it", name(edge)))
        }));
    }
    findings
}

fn rank(name: &str) -> Option<usize> {
    ORDER.iter().position(|one| *one == name)
}

fn name(of: &Value) -> &str {
    of["name"].as_str().unwrap_or_default()
}

fn list(of: &Value) -> impl Iterator<Item = &Value> {
    of.as_array().into_iter().flatten()
}

#[cfg(test)]
mod tests {
    use super::check;
    use serde_json::{Value, json};

    fn house(from: &str, to: &str, kind: Value) -> Value {
        json!({"packages": [{"name": from, "dependencies": [{"name": to, "kind": kind, "path": "somewhere"}]}]})
    }

    #[test]
    fn an_edge_up_the_order_passes() {
        assert_eq!(check(&house("snowhum-winter", "snowhum-units", Value::Null)), []);
    }

    #[test]
    fn an_edge_down_the_order_is_a_fault() {
        assert_eq!(check(&house("snowhum-units", "snowhum-winter", Value::Null)).len(), 1);
        assert_eq!(check(&house("snowhum-units", "snowhum-winter", json!("build"))).len(), 1);
        assert_eq!(check(&house("snowhum-winter", "snowhum-testkit", Value::Null)).len(), 1);
    }

    #[test]
    fn tests_and_chores_may_stand_on_anything() {
        assert_eq!(check(&house("snowhum-units", "snowhum-winter", json!("dev"))), []);
        assert_eq!(check(&house("xtask", "snowhum-web", Value::Null)), []);
    }

    #[test]
    fn a_crate_without_a_place_is_a_fault() {
        assert_eq!(check(&house("snowhum-cellar", "snowhum-units", Value::Null)).len(), 1);
    }

    #[test]
    fn crates_from_outside_are_not_ranked() {
        let outside =
            json!({"packages": [{"name": "snowhum-units", "dependencies": [{"name": "serde", "kind": null}]}]});
        assert_eq!(check(&outside), []);
    }
}
