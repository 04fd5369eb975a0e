//! What the program is made of, as a CycloneDX list that other tools read.

use super::release::{Release, below};
use crate::house;
use anyhow::Result;
use serde_json::{Value, json};

/// The list: everything linked into the program, where it comes from and on what it stands.
pub(super) fn of(release: &Release) -> Result<String> {
    let packages = below(&release.metadata, "snowhum");
    let lock: toml::Table = std::fs::read_to_string(house::root().join("Cargo.lock"))?.parse()?;
    let parts: Vec<Value> = packages[1..].iter().map(|package| part(package, "library", &lock)).collect();
    let is_listed = |id: &Value| packages.iter().any(|package| package["id"] == *id);
    let edges: Vec<Value> = packages.iter().map(|package| edges(package, release, is_listed)).collect();
    let moment = jiff::Timestamp::from_second(release.moment.parse()?)?.to_string();
    let list = json!({
        "$schema": "http://cyclonedx.org/schema/bom-1.5.schema.json",
        "bomFormat": "CycloneDX",
        "specVersion": "1.5",
        "version": 1,
        "metadata": { "timestamp": moment, "component": part(packages[0], "application", &lock) },
        "components": parts,
        "dependencies": edges,
    });
    Ok(format!("{}\n", serde_json::to_string_pretty(&list)?))
}

fn part(package: &Value, kind: &str, lock: &toml::Table) -> Value {
    let mut part = json!({
        "type": kind,
        "bom-ref": reference(package),
        "name": package["name"],
        "version": package["version"],
    });
    if let Some(license) = package["license"].as_str() {
        // Older manifests write a stroke for "or".
        part["licenses"] = json!([{ "expression": license.replace('/', " OR ").replace("  OR  ", " OR ") }]);
    }
    if package["source"].is_string() {
        part["purl"] = json!(reference(package));
    }
    if let Some(sum) = checksum(package, lock) {
        part["hashes"] = json!([{ "alg": "SHA-256", "content": sum }]);
    }
    if let Some(from) = package["repository"].as_str() {
        part["externalReferences"] = json!([{ "type": "vcs", "url": from }]);
    }
    part
}

/// What `Cargo.lock` holds a package from outside to.
fn checksum<'a>(package: &Value, lock: &'a toml::Table) -> Option<&'a str> {
    let word = |of: &'a toml::Value, key: &str| of.get(key).and_then(toml::Value::as_str);
    let is_it = |one: &&'a toml::Value| ["name", "version"].iter().all(|key| word(one, key) == package[*key].as_str());
    word(lock.get("package")?.as_array()?.iter().find(is_it)?, "checksum")
}

fn edges(package: &Value, release: &Release, is_listed: impl Fn(&Value) -> bool) -> Value {
    let list = |of: &Value| of.as_array().cloned().unwrap_or_default();
    let node = list(&release.metadata["resolve"]["nodes"]).into_iter().find(|node| node["id"] == package["id"]);
    let on = node.map(|node| list(&node["dependencies"])).unwrap_or_default();
    let all = list(&release.metadata["packages"]);
    let named = |id: &Value| all.iter().find(|package| package["id"] == *id).map(reference);
    let mut on: Vec<String> = on.iter().filter(|id| is_listed(id)).filter_map(named).collect();
    on.sort();
    json!({ "ref": reference(package), "dependsOn": on })
}

/// A package by name and version; the folder it lies in is no part of it.
fn reference(package: &Value) -> String {
    let word = |key: &str| package[key].as_str().unwrap_or_default();
    format!("pkg:cargo/{}@{}", word("name"), word("version"))
}

#[cfg(test)]
mod tests {
    use super::{Release, of};
    use serde_json::{Value, json};

    #[test]
    fn the_list_names_what_is_linked_and_no_folder_of_the_machine() {
        let package = |name: &str, source: Option<&str>| {
            json!({"id": format!("path+file:///somewhere/{name}"), "name": name, "version": "1.0.0", "source": source,
                "license": "MIT/Apache-2.0"})
        };
        let metadata = json!({
            "packages": [package("snowhum", None), package("ice", Some("registry")), package("moon", Some("registry"))],
            "resolve": {"nodes": [{
                "id": "path+file:///somewhere/snowhum",
                "dependencies": ["path+file:///somewhere/ice"],
                "deps": [{"pkg": "path+file:///somewhere/ice", "dep_kinds": [{"kind": null}]}],
            }]},
        });
        let release = Release { version: "1.0.0".into(), moment: "1795957278".into(), out: "out".into(), metadata };
        let text = of(&release).unwrap();
        assert!(!text.contains("somewhere"), "{text}");
        let list: Value = serde_json::from_str(&text).unwrap();
        assert_eq!(list["metadata"]["timestamp"], "2026-11-29T13:01:18Z");
        assert_eq!(list["components"].as_array().unwrap().len(), 1);
        assert_eq!(list["components"][0]["purl"], "pkg:cargo/ice@1.0.0");
        assert_eq!(list["components"][0]["licenses"][0]["expression"], "MIT OR Apache-2.0");
        assert_eq!(list["dependencies"][0]["dependsOn"], json!(["pkg:cargo/ice@1.0.0"]));
    }
}
