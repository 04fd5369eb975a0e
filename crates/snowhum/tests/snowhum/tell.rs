//! The winter told by the command: one file, no network, no place, and never over one that is there.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use std::process::Command;

fn snowhum(folder: &std::path::Path, arguments: &[&str]) -> (Option<i32>, String, String) {
    let output = Command::new(env!("CARGO_BIN_EXE_snowhum"))
        .current_dir(folder)
        .env("HOME", folder)
        .env("XDG_DATA_HOME", folder)
        .args(arguments)
        .output()
        .unwrap();
    let text = |bytes: Vec<u8>| String::from_utf8(bytes).unwrap();
    (output.status.code(), text(output.stdout), text(output.stderr))
}

#[test]
fn a_hives_winter_is_one_small_file_that_asks_nothing_of_a_network() {
    let folder = std::env::temp_dir().join(format!("snowhum-tell-{}", std::process::id()));
    std::fs::create_dir_all(&folder).unwrap();
    let arguments = ["tell", "Alder", "--members", "16", "--as-of", "2026-02-07", "--out", "w.html"];
    let (code, said, wrong) = snowhum(&folder, &arguments);
    assert_eq!(code, Some(0), "{wrong}");
    assert!(said.contains("Wrote w.html"), "{said}");
    let page = std::fs::read_to_string(folder.join("w.html")).unwrap();
    assert!(page.len() < 400_000, "{} bytes", page.len());
    assert!(page.contains("The winter of Alder") && page.contains("default-src 'none'"));
    for strange in ["http://", "https://", "Rowan Bank", "Helsinki"] {
        assert!(!page.contains(strange), "the film holds {strange}");
    }
    let (code, _, wrong) = snowhum(&folder, &arguments);
    assert_eq!(code, Some(2), "{wrong}");
    assert!(wrong.contains("exists already"), "{wrong}");
    std::fs::remove_dir_all(folder).unwrap();
}
