//! Panics that wait in a `Result` or `Option`.

use super::files::File;
use super::finding::Finding;
use super::scrub;

/// Faults `unwrap()` and `expect(…)` outside tests, `main.rs` and chores.
pub(crate) fn check(file: &File) -> Vec<Finding> {
    if file.is_beside_the_product() || file.place.ends_with("/src/main.rs") {
        return Vec::new();
    }
    let code = scrub::product_code(&file.text);
    let mut findings = Vec::new();
    for (line, text) in code.lines().enumerate() {
        for call in [".unwrap()", ".expect("] {
            if text.contains(call) {
                let place = format!("{}:{}", file.place, line + 1);
                findings.push(Finding::fault(place, format!("`{call}` in the product: return an error instead")));
            }
        }
    }
    findings
}

#[cfg(test)]
mod tests {
    use super::super::File;
    use super::check;

    fn count(place: &str, text: &str) -> usize {
        check(&File::new(place, text)).len()
    }

    #[test]
    fn the_product_returns_errors() {
        assert_eq!(count("crates/x/src/a.rs", "fn a() {\n    b().unwrap();\n    c().expect(\"d\");\n}"), 2);
    }

    #[test]
    fn tests_examples_attributes_and_words_are_let_be() {
        let text = "/// a.unwrap()\n#[expect(dead_code, reason = \".unwrap()\")]\nfn a() { b.unwrap_or(1) }\n\
                    #[cfg(test)]\nmod tests { fn c() { d.unwrap() } }";
        assert_eq!(count("crates/x/src/a.rs", text), 0);
        for place in ["crates/x/src/main.rs", "crates/x/tests/a.rs", "crates/testkit/src/a.rs", "xtask/src/a.rs"] {
            assert_eq!(count(place, "fn a() { b().unwrap() }"), 0, "{place}");
        }
    }
}
