//! What a release is of: a version, the moment of its last commit, and where its files come to lie.

use super::compile::{Linking, Target};
use crate::house;
use anyhow::{Context, Result};
use serde_json::Value;
use std::path::PathBuf;
use std::process::Command;

/// One release.
#[derive(Debug)]
pub(super) struct Release {
    pub(super) version: String,
    /// Seconds since 1970 of the last commit: every time in a package is this one.
    pub(super) moment: String,
    /// Where packages come to lie.
    pub(super) out: PathBuf,
    /// What `cargo metadata` says of the program and everything below it.
    pub(super) metadata: Value,
}

impl Release {
    /// The house as it stands.
    pub(super) fn of_the_house() -> Result<Self> {
        let arguments = ["metadata", "--format-version", "1", "--locked", "--filter-platform"];
        let text = house::capture(house::cargo(&arguments).arg("x86_64-unknown-linux-gnu"))?;
        let metadata: Value = serde_json::from_slice(&text).context("`cargo metadata` did not print JSON")?;
        let version =
            below(&metadata, "snowhum").first().map(|package| package["version"].as_str().unwrap_or_default());
        let version = version.context("`cargo metadata` names no snowhum")?.to_owned();
        let log = house::capture(Command::new("git").current_dir(house::root()).args(["log", "-1", "--format=%ct"]));
        let given = std::env::var("SOURCE_DATE_EPOCH").ok();
        let moment = match given {
            Some(moment) => moment,
            None => String::from_utf8(log.context("neither git nor SOURCE_DATE_EPOCH tells a moment")?)?,
        };
        let out = house::root().join("target").join("package");
        Ok(Self { version, moment: moment.trim().to_owned(), out, metadata })
    }

    /// Where the contents of packages are laid out.
    pub(super) fn stage(&self) -> PathBuf {
        self.out.join("stage")
    }

    /// Where cargo builds for packages.
    pub(super) fn build(&self) -> PathBuf {
        self.out.join("build")
    }

    /// Where cargo builds for one of them: what is linked in another way lies apart.
    pub(super) fn build_of(&self, target: &Target) -> PathBuf {
        match target.linking {
            Linking::Loaded | Linking::WithMusl => self.build(),
            Linking::WithGnu => self.build().join("static"),
        }
    }

    /// Takes away what an earlier run left, but for what cargo built.
    pub(super) fn clear(&self) -> Result<()> {
        std::fs::create_dir_all(&self.out)?;
        for entry in std::fs::read_dir(&self.out)? {
            let path = entry?.path();
            if path == self.build() {
                continue;
            }
            if path.is_dir() { std::fs::remove_dir_all(&path) } else { std::fs::remove_file(&path) }
                .with_context(|| format!("could not take away {}", path.display()))?;
        }
        Ok(())
    }
}

/// A package and all that is linked into it, itself first, then by name and version.
pub(super) fn below<'a>(metadata: &'a Value, name: &str) -> Vec<&'a Value> {
    let list = |of: &'a Value| of.as_array().into_iter().flatten();
    let Some(first) = list(&metadata["packages"]).find(|package| package["name"] == name) else { return Vec::new() };
    let mut found = vec![&first["id"]];
    let mut at = 0;
    while let Some(id) = found.get(at).copied() {
        let node = list(&metadata["resolve"]["nodes"]).find(|node| node["id"] == *id);
        let linked = node.into_iter().flat_map(|node| list(&node["deps"])).filter(|edge| is_linked(edge));
        for id in linked.map(|edge| &edge["pkg"]) {
            if !found.contains(&id) {
                found.push(id);
            }
        }
        at += 1;
    }
    let mut packages: Vec<&Value> =
        list(&metadata["packages"]).filter(|one| found[1..].contains(&&one["id"])).collect();
    packages.sort_by_key(|one| (one["name"].as_str(), one["version"].as_str()));
    packages.insert(0, first);
    packages
}

/// Neither for tests nor for build scripts alone.
fn is_linked(edge: &Value) -> bool {
    edge["dep_kinds"].as_array().into_iter().flatten().any(|kind| kind["kind"].is_null())
}

#[cfg(test)]
mod tests {
    use super::below;
    use serde_json::json;

    #[test]
    fn what_is_linked_is_found_however_deep_and_what_only_tests_or_builds_is_not() {
        let edge = |to: &str, kind: Option<&str>| json!({"pkg": to, "dep_kinds": [{"kind": kind}]});
        let packages = ["d", "c", "b", "a"].map(|name| json!({"id": name, "name": name, "version": "1"}));
        let metadata = json!({
            "packages": packages,
            "resolve": {"nodes": [
                {"id": "a", "deps": [edge("c", None), edge("d", Some("dev"))]},
                {"id": "c", "deps": [edge("b", None), edge("d", Some("build")), edge("a", None)]},
            ]},
        });
        let names: Vec<_> = below(&metadata, "a").iter().map(|one| one["name"].as_str().unwrap()).collect();
        assert_eq!(names, ["a", "b", "c"]);
    }
}
