//! Figures in `data/` that do not say where they come from.

use super::files::File;
use super::finding::Finding;
use toml::Value;

/// How a figure may stand.
const STATUSES: [&str; 5] = ["published", "calibrated", "common practice", "from memory", "judgement"];

/// Faults each entry of a `data/*.toml` with a `value` but without unit, source or a known status.
pub(crate) fn check(file: &File) -> Vec<Finding> {
    if !file.place.starts_with("data/") || !file.place.ends_with(".toml") {
        return Vec::new();
    }
    let mut findings = Vec::new();
    match file.text.parse::<toml::Table>() {
        Ok(table) => walk(file, "", &Value::Table(table), &mut findings),
        Err(error) => findings.push(Finding::fault(&file.place, error.to_string())),
    }
    findings
}

fn walk(file: &File, name: &str, value: &Value, findings: &mut Vec<Finding>) {
    match value {
        Value::Table(table) => {
            if table.get("value").is_some_and(|value| !value.is_table()) {
                findings.extend(faults(name, table).map(|words| Finding::fault(&file.place, words)));
            }
            for (key, inner) in table {
                walk(file, &format!("{name}.{key}"), inner, findings);
            }
        }
        Value::Array(list) => {
            for (at, inner) in list.iter().enumerate() {
                walk(file, &format!("{name}[{}]", at + 1), inner, findings);
            }
        }
        _ => {}
    }
}

fn faults<'a>(name: &'a str, entry: &'a toml::Table) -> impl Iterator<Item = String> {
    let text = |key: &str| entry.get(key).and_then(Value::as_str).map(str::trim).filter(|text| !text.is_empty());
    let name = name.trim_start_matches('.');
    let missing = ["unit", "source", "status"].into_iter().filter(move |key| text(key).is_none());
    let missing = missing.map(move |key| format!("`{name}` has a value but no {key}"));
    let unknown = text("status").filter(|status| !STATUSES.contains(status));
    missing.chain(unknown.map(move |status| format!("`{name}` has status `{status}`; known: {}", STATUSES.join(", "))))
}

#[cfg(test)]
mod tests {
    use super::super::File;
    use super::check;

    fn told(text: &str) -> Vec<String> {
        check(&File::new("data/a.toml", text)).into_iter().map(|finding| finding.words).collect()
    }

    #[test]
    fn a_figure_with_unit_source_and_status_passes() {
        assert!(told("[frost.depth]\nvalue = 1\nunit = \"m\"\nsource = \"a book\"\nstatus = \"published\"").is_empty());
        assert!(told("[frost]\nwords = \"no figure\"").is_empty());
    }

    #[test]
    fn a_figure_without_them_is_named_wherever_it_lies() {
        let found = told("[[frost]]\nvalue = [1, 2]\nunit = \" \"\nsource = \"a book\"\nstatus = \"guess\"");
        assert_eq!(
            found,
            [
                "`frost[1]` has a value but no unit",
                "`frost[1]` has status `guess`; known: published, calibrated, common practice, from memory, judgement"
            ]
        );
        assert_eq!(told("[a.b]\nvalue = 1").len(), 3);
    }

    #[test]
    fn a_file_that_is_not_toml_is_a_fault() {
        assert_eq!(told("[").len(), 1);
    }
}
