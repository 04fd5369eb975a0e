//! No more than a handful of files of a crate import one another in a circle.
//!
//! A file stands on the file that defines what it names: a name that is only handed on (`pub use`) makes no arrow to or from
//! the file that hands it on.

mod imports;

use super::files::File;
use super::finding::Finding;
use imports::{Arrows, arrows};
use std::collections::BTreeMap;

/// Most files in a circle.
const MOST: usize = 5;

/// Faults each circle of too many files within a crate.
pub(crate) fn check(files: &[File]) -> Vec<Finding> {
    let mut crates: BTreeMap<&str, Vec<&File>> = BTreeMap::new();
    for file in files.iter().filter(|file| file.is_rust() && !file.is_of_tests()) {
        if let Some((place, _)) = file.place.split_once("src/") {
            crates.entry(place).or_default().push(file);
        }
    }
    crates.into_iter().flat_map(|(place, files)| of_crate(place, &files)).collect()
}

fn of_crate(place: &str, files: &[&File]) -> Vec<Finding> {
    let too_many = circles(&arrows(files)).into_iter().filter(|circle| circle.len() > MOST);
    let fault = |circle: Vec<usize>| {
        let names: Vec<&str> = circle.iter().map(|at| files[*at].place.as_str()).collect();
        let words =
            format!("{} files import one another in a circle; at most {MOST} may: {}", names.len(), names.join(", "));
        Finding::fault(place, words)
    };
    too_many.map(fault).collect()
}

/// Files that each reach all others of the same list.
fn circles(arrows: &Arrows) -> Vec<Vec<usize>> {
    let reached: Vec<Vec<bool>> = (0..arrows.len()).map(|from| reached(arrows, from)).collect();
    let mut circles: Vec<Vec<usize>> = Vec::new();
    for at in 0..arrows.len() {
        let is_tied = |other: usize| reached[at][other] && reached[other][at];
        if circles.iter().any(|circle| circle.contains(&at)) || !is_tied(at) {
            continue;
        }
        circles.push((at..arrows.len()).filter(|other| is_tied(*other)).collect());
    }
    circles
}

/// Which files are reached from one by an arrow or more.
fn reached(arrows: &Arrows, from: usize) -> Vec<bool> {
    let mut reached = vec![false; arrows.len()];
    let mut ahead: Vec<usize> = arrows[from].iter().copied().collect();
    while let Some(at) = ahead.pop() {
        if !std::mem::replace(&mut reached[at], true) {
            ahead.extend(&arrows[at]);
        }
    }
    reached
}

#[cfg(test)]
mod tests {
    use super::{File, MOST, check};

    /// Files of a crate, each importing the next and the last the first.
    fn ring(files: usize) -> Vec<File> {
        let next = |at: usize| format!("pub struct Thing(crate::m{}::Thing);", (at + 1) % files);
        let mut all: Vec<File> = (0..files).map(|at| File::new(format!("crates/x/src/m{at}.rs"), next(at))).collect();
        all.push(File::new("crates/x/src/lib.rs", (0..files).map(|at| format!("mod m{at};\n")).collect::<String>()));
        all
    }

    #[test]
    fn a_circle_of_more_files_than_the_rule_says_is_a_fault_that_names_them() {
        assert_eq!(check(&ring(MOST)), []);
        let found = check(&ring(MOST + 1));
        assert_eq!(found.len(), 1);
        assert!((0..=MOST).all(|at| found[0].words.contains(&format!("src/m{at}.rs"))), "{}", found[0]);
        assert!(!found[0].words.contains("lib.rs"), "{}", found[0]);
    }
}
