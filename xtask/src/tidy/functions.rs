//! Functions that grew too long.

use super::files::File;
use super::finding::Finding;
use super::scrub;

/// Lines a function should stay under, and those it must.
const LONG: usize = 40;
const TOO_LONG: usize = 60;

/// Warns of long functions, faults those too long; tests are exempt.
pub(crate) fn check(file: &File) -> Vec<Finding> {
    if file.is_beside_the_product() && !file.place.starts_with("xtask/") {
        return Vec::new();
    }
    let lines: Vec<&str> = file.text.lines().collect();
    let measured = functions(&scrub::product_code(&file.text));
    measured.into_iter().filter_map(|function| function.judged(file, &lines)).collect()
}

#[derive(Debug, PartialEq)]
struct Function {
    name: String,
    /// First and last line, from 0.
    first: usize,
    last: usize,
}

impl Function {
    fn judged(&self, file: &File, lines: &[&str]) -> Option<Finding> {
        let filled = lines[self.first..=self.last].iter().filter(|line| !line.trim().is_empty()).count();
        let place = format!("{}:{}", file.place, self.first + 1);
        let words = |most: usize| format!("`{}` has {filled} lines; a function has at most {most}", self.name);
        match filled {
            lines if lines > TOO_LONG => Some(Finding::fault(place, words(TOO_LONG))),
            lines if lines > LONG => Some(Finding::warning(place, words(LONG))),
            _ => None,
        }
    }
}

/// Functions with a body.
fn functions(code: &str) -> Vec<Function> {
    let letters: Vec<char> = code.chars().collect();
    (0..letters.len()).filter_map(|at| function_at(&letters, at)).collect()
}

fn function_at(letters: &[char], at: usize) -> Option<Function> {
    let rest = &letters[at..];
    let starts_word = at == 0 || !is_word(letters[at - 1]);
    if !starts_word || !rest.starts_with(&['f', 'n']) || !rest.get(2)?.is_whitespace() {
        return None;
    }
    let name: String = rest[3..].iter().skip_while(|l| l.is_whitespace()).take_while(|l| is_word(**l)).collect();
    if name.is_empty() {
        return None;
    }
    let open = at + body(rest)?;
    let close = scrub::closing(letters, open)?;
    let line = |place: usize| letters[..place].iter().filter(|letter| **letter == '\n').count();
    Some(Function { name, first: line(at), last: line(close) })
}

/// Steps to the brace that opens the body; none for a declaration without one.
fn body(rest: &[char]) -> Option<usize> {
    let mut depth = 0_i32;
    for (step, letter) in rest.iter().enumerate() {
        match letter {
            '(' | '[' => depth += 1,
            ')' | ']' => depth -= 1,
            '{' if depth == 0 => return Some(step),
            ';' if depth == 0 => return None,
            _ => {}
        }
    }
    None
}

fn is_word(letter: char) -> bool {
    letter.is_alphanumeric() || letter == '_'
}

#[cfg(test)]
mod tests {
    use super::super::{File, Weight};
    use super::{check, functions};
    use crate::tidy::scrub;

    fn of_length(lines: usize) -> File {
        let body = "    step();\n\n".repeat(lines - 2);
        File::new("crates/x/src/lib.rs", format!("fn walk(a: [f64; 2]) -> u8 {{\n{body}}}\n"))
    }

    #[test]
    fn blank_lines_do_not_count_and_the_limits_are_where_the_rule_says() {
        assert_eq!(check(&of_length(40)), []);
        assert_eq!(check(&of_length(41))[0].weight, Weight::Warning);
        assert_eq!(check(&of_length(60))[0].weight, Weight::Warning);
        let fault = &check(&of_length(61))[0];
        assert_eq!(fault.weight, Weight::Fault);
        assert_eq!(fault.to_string(), "fault: crates/x/src/lib.rs:1: `walk` has 61 lines; a function has at most 60");
    }

    #[test]
    fn only_functions_with_a_body_are_measured() {
        let text = "trait A {\n fn b(c: fn(u8) -> u8);\n fn d() { let e = || 1; }\n}\n// fn f() {}\nfn\n g() {\n}\n";
        let found: Vec<_> = functions(&scrub::code(text)).into_iter().map(|f| (f.name, f.first, f.last)).collect();
        assert_eq!(found, [("d".to_owned(), 2, 2), ("g".to_owned(), 5, 7)]);
    }

    #[test]
    fn tests_may_be_long() {
        let mut file = of_length(61);
        file.text = format!("#[cfg(test)]\nmod tests {{\n{}}}\n", file.text);
        assert_eq!(check(&file), []);
    }
}
