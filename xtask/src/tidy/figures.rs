//! Figures in `data/` that do not say where they come from, or that nothing reads; figures that stand in code instead.

use super::files::File;
use super::finding::Finding;
use toml::Value;

/// How a figure may stand.
const STATUSES: [&str; 5] = ["published", "calibrated", "common practice", "from memory", "judgement"];

/// The one crate whose code may still hold figures that call themselves judgement: they move to `data/` when its answers are
/// parted from their words.
const MAY_JUDGE: &str = "advice";

/// Faults each constant of a data file that no crate names, and each judgement in code.
pub(crate) fn of_house(files: &[File]) -> Vec<Finding> {
    let build = files.iter().find(|file| file.place == "crates/figures/build.rs");
    let is_constant = |stem: &str| build.is_some_and(|build| build.text.contains(&format!("\"{stem}\",")));
    let code: Vec<&File> = files.iter().filter(|file| file.is_rust() && file.place.starts_with("crates/")).collect();
    let mut findings: Vec<Finding> = code.iter().flat_map(|file| judged(file)).collect();
    for file in files {
        let stem = file.place.strip_prefix("data/").and_then(|name| name.strip_suffix(".toml"));
        if stem.is_some_and(is_constant) {
            let unread = names(&file.text).filter(|name| !code.iter().any(|file| file.holds(name)));
            findings.extend(unread.map(|name| Finding::fault(&file.place, format!("nothing reads the figure {name}"))));
        }
    }
    findings
}

fn judged(file: &File) -> Vec<Finding> {
    let mut parts = file.place.split('/').skip(1);
    let (name, folder) = (parts.next().unwrap_or_default(), parts.next());
    if folder != Some("src") || name == MAY_JUDGE {
        return Vec::new();
    }
    let lines = file.text.lines().enumerate().filter(|(_, line)| line.contains("(judgement"));
    let words =
        "a judgement stands in `data/`, with unit and source; what is no figure about the world says why it is so";
    lines.map(|(at, _)| Finding::fault(format!("{}:{}", file.place, at + 1), words)).collect()
}

/// The constants that a file becomes.
fn names(text: &str) -> impl Iterator<Item = String> {
    let entry = |line: &str| Some(line.strip_prefix('[')?.strip_suffix(']')?.split_once('.')?.1.to_uppercase());
    text.lines().filter_map(entry)
}

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
            if ["value", "values"].iter().any(|key| table.get(*key).is_some_and(|value| !value.is_table())) {
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
    use super::{check, of_house};

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
    fn a_judgement_in_code_is_a_fault_and_in_advice_not_yet() {
        let house =
            |place: &str| of_house(&[File::new(place, "\n/// Snow that hides (judgement).\nconst DEEP: f64 = 1.0;")]);
        assert_eq!(house("crates/winter/src/a.rs")[0].place, "crates/winter/src/a.rs:2");
        assert!(house("crates/advice/src/a.rs").is_empty() && house("crates/winter/tests/a.rs").is_empty());
    }

    #[test]
    fn a_constant_that_nothing_reads_is_a_fault() {
        let data = File::new("data/snow.toml", "[parameter.deep]\nvalue = 1\n[row.month]\nvalues = [1]");
        let build = File::new("crates/figures/build.rs", "[\"snow\",]");
        let told =
            |code: &str| of_house(&[data.clone(), build.clone(), File::new("crates/winter/src/a.rs", code)]).len();
        assert_eq!((told("DEEP + MONTH[0]"), told("DEEPER + MONTH[0]"), told("")), (0, 1, 2));
    }

    #[test]
    fn a_file_that_is_not_toml_is_a_fault() {
        assert_eq!(told("[").len(), 1);
    }
}
