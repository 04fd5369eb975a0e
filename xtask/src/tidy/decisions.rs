//! Each crate taken in from outside has a record of why.

use super::files::File;
use super::finding::Finding;
use toml::Value;

/// Faults each outside dependency of the workspace that no record in `docs/decisions` names between backticks.
pub(crate) fn check(files: &[File]) -> Vec<Finding> {
    let manifest = files.iter().find(|file| file.place == "Cargo.toml");
    let Some(Ok(manifest)) = manifest.map(|file| file.text.parse::<toml::Table>()) else {
        return vec![Finding::fault("Cargo.toml", "missing or not TOML")];
    };
    let dependencies = manifest.get("workspace").and_then(|workspace| workspace.get("dependencies"));
    let Some(dependencies) = dependencies.and_then(Value::as_table) else {
        return vec![Finding::fault("Cargo.toml", "no [workspace.dependencies]")];
    };
    let outside = dependencies.iter().filter(|(_, dependency)| dependency.get("path").is_none());
    let is_named = |name: &str| {
        let mark = format!("`{name}`");
        files.iter().any(|file| file.place.starts_with("docs/decisions/") && file.text.contains(&mark))
    };
    outside
        .filter(|(name, _)| !is_named(name))
        .map(|(name, _)| Finding::fault("Cargo.toml", format!("no record in docs/decisions names `{name}`")))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::super::File;
    use super::check;

    #[test]
    fn each_outside_crate_needs_a_record() {
        let manifest = "[workspace.dependencies]\nown = { path = \"own\" }\nice = \"1\"\nsnow = { version = \"2\" }";
        let files = [
            File::new("Cargo.toml", manifest),
            File::new("docs/decisions/0001-ice.md", "`ice` because it is cold"),
            File::new("docs/other.md", "`snow`"),
        ];
        let found = check(&files);
        assert_eq!(found.len(), 1);
        assert!(found[0].words.contains("`snow`"));
    }
}
