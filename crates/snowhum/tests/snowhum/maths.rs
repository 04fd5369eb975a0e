//! The same bytes, whichever C library stands below.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use std::path::{Path, PathBuf};
use std::process::Command;

/// What is asked of the program: the model, the filter, the sums, units, weather and a drawing.
const ASKED: [&str; 7] = [
    "plan --json --members 64",
    "now --json --members 64 --as-of 2026-01-04 --units us",
    "hive Larch --outside 3 --wind 4 --bees 9000 --start warm --json",
    "mites --found 9 --bees 300 --month 2026-08 --json",
    "losses --before 8 --dead 1 --queen-failed 1 --json",
    "jobs --json --members 64",
    "weather show --json",
];

/// Names the one test below that is run again over the other library.
const TELL: &str = "maths::what_this_machines_own_maths_say";

/// The other library, compiled beside the test's own scratch files.
fn other_maths(folder: &Path) -> PathBuf {
    let library = folder.join("other_maths.so");
    let source = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/snowhum/other_maths.c");
    let mut compiler = Command::new("cc");
    compiler.args(["-O1", "-fno-builtin", "-shared", "-fPIC", "-o"]).arg(&library).args([source, "-ldl", "-lm"]);
    assert!(compiler.status().unwrap().success(), "no C compiler");
    library
}

/// Over this machine's own C library, or over another.
fn told(program: impl AsRef<Path>, words: &[&str], over: Option<&Path>) -> Vec<u8> {
    let mut command = Command::new(program.as_ref());
    if let Some(library) = over {
        command.env("LD_PRELOAD", library);
    }
    let output = command.args(words).output().unwrap();
    assert!(output.status.success(), "{words:?}: {}", String::from_utf8_lossy(&output.stderr));
    output.stdout
}

#[test]
#[cfg(target_os = "linux")]
fn answers_are_the_same_bytes_over_another_librarys_maths() {
    let folder = std::env::temp_dir().join(format!("snowhum-maths-{}", std::process::id()));
    std::fs::create_dir_all(&folder).unwrap();
    let other = other_maths(&folder);
    let itself = std::env::current_exe().unwrap();
    let tell = ["--exact", TELL, "--ignored", "--nocapture", "--test-threads", "1"];
    assert_ne!(bits(&told(&itself, &tell, None)), bits(&told(&itself, &tell, Some(&other))), "the other is not asked");
    for asked in ASKED {
        let words: Vec<&str> = asked.split(' ').collect();
        let ask = |over| told(env!("CARGO_BIN_EXE_snowhum"), &words, over);
        let own = ask(None);
        assert!(!own.is_empty(), "{asked} says nothing");
        assert!(own == ask(Some(&other)), "`{asked}` asks the C library for mathematics");
    }
    std::fs::remove_dir_all(&folder).unwrap();
}

#[test]
#[ignore = "run by the test above, over either library"]
fn what_this_machines_own_maths_say() {
    let x = std::hint::black_box(2.5_f64);
    // What the test's own runner has begun to say stands on this line.
    println!();
    for value in [x.exp(), x.ln(), x.powf(1.7), x.sin(), x.cbrt(), x.tanh(), x.log10()] {
        println!("bits {:x}", value.to_bits());
    }
}

/// The lines that tell bits; times of the test's own runner stand beside them.
fn bits(output: &[u8]) -> Vec<String> {
    let lines: Vec<String> =
        String::from_utf8_lossy(output).lines().filter(|line| line.starts_with("bits ")).map(str::to_owned).collect();
    assert_eq!(lines.len(), 7);
    lines
}
