//! Functions of mathematics that come out in another last bit by another C library.

use super::files::File;
use super::finding::Finding;
use super::scrub;

/// The crates whose answers are the same bytes on every machine.
const CRATES: [&str; 8] = ["units", "draws", "physics", "weather", "winter", "watch", "advice", "picture"];
/// What the standard library asks the C library for.
const ASKED: [&str; 24] = [
    "exp", "exp2", "exp_m1", "ln", "ln_1p", "log", "log2", "log10", "powf", "cbrt", "hypot", "sin", "cos", "tan",
    "sin_cos", "asin", "acos", "atan", "atan2", "sinh", "cosh", "tanh", "gamma", "ln_gamma",
];

/// Faults each such call in the product's code.
pub(crate) fn check(file: &File) -> Vec<Finding> {
    let is_core = CRATES.iter().any(|name| file.place.starts_with(&format!("crates/{name}/src/")));
    if !is_core || file.is_beside_the_product() {
        return Vec::new();
    }
    let code = scrub::product_code(&file.text);
    let mut findings = Vec::new();
    for (line, text) in code.lines().enumerate() {
        for name in ASKED {
            if text.contains(&format!(".{name}(")) || text.contains(&format!("f64::{name}")) && ends(text, name) {
                let words = format!("`{name}` differs by machine: `same_{name}` of `snowhum_units::Same` does not");
                findings.push(Finding::fault(format!("{}:{}", file.place, line + 1), words));
            }
        }
    }
    findings
}

/// Whether `f64::` and the name stand there as a word of their own.
fn ends(text: &str, name: &str) -> bool {
    let word = format!("f64::{name}");
    text.match_indices(&word).any(|(at, _)| {
        let next = text[at + word.len()..].chars().next();
        next.is_none_or(|letter| !letter.is_alphanumeric() && letter != '_')
    })
}

#[cfg(test)]
mod tests {
    use super::super::File;
    use super::check;

    fn count(place: &str, text: &str) -> usize {
        check(&File::new(place, text)).len()
    }

    #[test]
    fn what_differs_by_machine_is_a_fault_in_the_core() {
        let text = "fn a(x: f64) -> f64 { x.exp() }\nfn b(x: f64) -> f64 { [x].map(f64::ln)[0] }";
        assert_eq!(count("crates/winter/src/a.rs", text), 2);
        assert_eq!(count("crates/web/src/a.rs", text), 0);
        assert_eq!(count("crates/winter/tests/a.rs", text), 0);
    }

    #[test]
    fn what_is_exact_or_the_same_everywhere_is_let_be() {
        let text = "/// x.exp()\nfn a(x: f64) -> f64 { x.sqrt().same_exp() + x.powi(2) + exp(x) + f64::exponent(x) }\n\
                    #[cfg(test)]\nmod tests { fn c() { 2.0_f64.ln(); } }";
        assert_eq!(count("crates/winter/src/a.rs", text), 0);
    }
}
