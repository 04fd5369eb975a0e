//! A real winter: the plan on Northway, Alaska, by a typical-year file and by real hours (both public domain; see
//! `crates/weather/tests/data/README.md`).

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use std::path::{Path, PathBuf};
use std::process::Command;

use serde_json::Value;

/// A folder of this test's own, since tests run side by side.
fn folder() -> PathBuf {
    let thread = std::thread::current();
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(thread.name().unwrap_or("main"));
    std::fs::create_dir_all(&folder).unwrap();
    folder
}

fn unpacked(name: &str) -> PathBuf {
    let packed = Path::new(env!("CARGO_MANIFEST_DIR")).join("../weather/tests/data").join(format!("{name}.z"));
    let bytes = miniz_oxide::inflate::decompress_to_vec_zlib(&std::fs::read(packed).unwrap()).unwrap();
    let path = folder().join(name);
    std::fs::write(&path, bytes).unwrap();
    path
}

fn plan(arguments: &[&str]) -> Value {
    let output = Command::new(env!("CARGO_BIN_EXE_snowhum")).args(["plan", "--json"]).args(arguments).output().unwrap();
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    serde_json::from_slice(&output.stdout).unwrap()
}

/// Middle of the food eaten in the broodless months from November to February, grams a day.
fn midwinter_food(plan: &Value, colony: &str) -> f64 {
    let colonies = plan["colonies"].as_array().unwrap();
    let colony = colonies.iter().find(|c| c["name"] == colony).unwrap();
    let months = colony["food_g_per_day"].as_array().unwrap();
    let wanted = ["2025-11", "2025-12", "2026-01", "2026-02"];
    let of = |month: &&Value| wanted.iter().any(|name| month["month"] == *name);
    let rates: Vec<f64> = months.iter().filter(of).map(|month| month["p50"].as_f64().unwrap()).collect();
    assert_eq!(rates.len(), 4);
    rates.iter().sum::<f64>() / 4.0
}

#[test]
fn the_plan_runs_on_northways_typical_year_and_alder_eats_more_there() {
    let file = unpacked("northway_tmy3_oct_may.epw");
    let northway = plan(&["--weather", file.to_str().unwrap()]);
    let home = plan(&[]);
    let (there, here) = (midwinter_food(&northway, "Alder"), midwinter_food(&home, "Alder"));
    assert!(there > here, "{there} g a day at Northway, {here} at Rowan Bank");
    assert!(northway["weather"]["source"].as_str().unwrap().contains("northway"));
}

#[test]
fn the_plan_runs_on_northways_real_hours_and_says_what_was_filled() {
    let file = unpacked("northway_isd_lite_2018_oct_2019_may");
    let northway = plan(&["--weather", file.to_str().unwrap(), "--members", "96"]);
    let notes = northway["weather"]["notes"].to_string();
    assert!(notes.contains("filled") && notes.contains("snow"), "{notes}");
    assert!(midwinter_food(&northway, "Alder") > 20.0);
}

/// The file with another text for the air temperature of its first hour.
fn with_temperature(epw: &str, text: &str) -> String {
    let header = epw.lines().position(|line| line.starts_with("DATA PERIODS")).unwrap() + 1;
    let changed = |(at, line): (usize, &str)| {
        let mut fields: Vec<&str> = line.split(',').collect();
        if at == header {
            fields[6] = text;
        }
        fields.join(",")
    };
    epw.lines().enumerate().map(changed).collect::<Vec<_>>().join("\n")
}

#[test]
fn broken_weather_ends_with_code_two_and_names_file_line_and_remedy() {
    let whole = std::fs::read_to_string(unpacked("northway_isd_lite_2018_oct_2019_may")).unwrap();
    let epw = String::from_utf8_lossy(&std::fs::read(unpacked("northway_tmy3_oct_may.epw")).unwrap()).into_owned();
    let lines: Vec<&str> = whole.lines().collect();
    let gap = [&lines[..1_000], &lines[1_030..]].concat().join("\n");
    let cases: [(&str, Vec<u8>); 7] = [
        ("empty.epw", Vec::new()),
        ("binary.isd", (0..9_000u32).map(|i| (i.wrapping_mul(2_654_435_761) >> 11) as u8).collect()),
        ("gap.isd", gap.into_bytes()),
        ("word.isd", whole.replacen("106", "abc", 1).into_bytes()),
        ("truncated.epw", epw.as_bytes()[..700].to_vec()),
        ("nan.epw", with_temperature(&epw, "nan").into_bytes()),
        ("words.epw", with_temperature(&epw, "cold").into_bytes()),
    ];
    for (name, bytes) in cases {
        let path = folder().join(name);
        std::fs::write(&path, bytes).unwrap();
        let output =
            Command::new(env!("CARGO_BIN_EXE_snowhum")).args(["weather", "import"]).arg(&path).output().unwrap();
        let message = String::from_utf8_lossy(&output.stderr).into_owned();
        assert_eq!(output.status.code(), Some(2), "{name}: {message}");
        assert!(message.contains(name) && !message.contains("panicked"), "{name}: {message}");
    }
}

/// Rows of written hours, the time apart from the figures.
fn rows(path: &Path) -> Vec<(String, Vec<f64>)> {
    let text = std::fs::read_to_string(path).unwrap();
    let row = |line: &str| {
        let (time, figures) = line.split_once(',').unwrap();
        (time.to_owned(), figures.split(',').map(|figure| figure.parse().unwrap()).collect())
    };
    text.lines().skip(1).map(row).collect()
}

#[test]
fn imported_hours_are_read_again_as_they_were_by_the_columns_that_are_named() {
    let file = unpacked("northway_isd_lite_2018_oct_2019_may");
    let import = |file: &Path, out: &str, columns: &[&str]| {
        let out = folder().join(out);
        drop(std::fs::remove_file(&out));
        let mut command = Command::new(env!("CARGO_BIN_EXE_snowhum"));
        command.args(["weather", "import"]).arg(file).arg("--out").arg(&out).args(columns);
        let output = command.output().unwrap();
        assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
        (out, String::from_utf8(output.stdout).unwrap())
    };
    let (written, said) = import(&file, "hours.csv", &[]);
    assert!(said.lines().all(|line| line.chars().count() <= 80 || line.contains(folder().to_str().unwrap())), "{said}");
    let columns = said.split_once("--columns \"").unwrap().1.split_once('"').unwrap().0;
    let (again, _) = import(&written, "again.csv", &["--columns", columns]);
    let (before, after) = (rows(&written), rows(&again));
    assert!(before.len() > 5_000 && before.len() == after.len());
    for ((time, figures), (same, read)) in before.iter().zip(&after) {
        assert_eq!(time, same);
        let differs = |(a, b): (&f64, &f64)| (a - b).abs() > 1e-9;
        assert!(figures.len() == 6 && !figures.iter().zip(read).any(differs), "{time}: {figures:?} {read:?}");
    }
    assert!(before.iter().any(|(_, figures)| figures[5] > 0.0), "snow lies");
}

/// What a command says to both ends.
fn said(arguments: &[&str]) -> (String, String) {
    let output = Command::new(env!("CARGO_BIN_EXE_snowhum")).args(arguments).output().unwrap();
    let text = |bytes: &[u8]| String::from_utf8_lossy(bytes).split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(output.status.success(), "{arguments:?}: {}", text(&output.stderr));
    (text(&output.stdout), text(&output.stderr))
}

#[test]
fn every_answer_that_stands_on_a_file_from_far_away_says_so_once() {
    let file = unpacked("northway_tmy3_oct_may.epw");
    let name = file.to_str().unwrap();
    let weather = ["--weather", name, "--members", "16"];
    for command in [&["plan"][..], &["now"], &["jobs"], &["spring"], &["weather", "show"]] {
        let (page, beside) = said(&[command, &weather].concat());
        assert_eq!(page.matches("km from the yard and 417 m higher").count(), 1, "{command:?}: {page}");
        assert!(page.contains("not for the yard. Give a file of a place within 50 km"), "{page}");
        assert!(!beside.contains("from the yard"), "{command:?}: {beside}");
    }
    let setup = ["setup", "Larch", "--try", "lid=50 mm foam"];
    let (_, beside) = said(&[&setup[..], &weather].concat());
    assert_eq!(beside.matches("417 m higher").count(), 1, "{beside}");
    let (page, _) = said(&["plan", "--weather", name, "--members", "16", "--units", "us"]);
    assert!(page.contains("mi from the yard and 1368 ft higher"), "{page}");
}

#[test]
fn a_file_near_by_but_higher_says_what_that_makes_and_one_without_a_place_says_nothing() {
    let epw = String::from_utf8_lossy(&std::fs::read(unpacked("northway_tmy3_oct_may.epw")).unwrap()).into_owned();
    let far = |place: &str| {
        let rest = epw.split_once('\n').unwrap().1;
        let path = folder().join("hill.epw");
        std::fs::write(&path, format!("LOCATION,Hill,-,FIN,invented,0,{place}\n{rest}")).unwrap();
        plan(&["--weather", path.to_str().unwrap(), "--members", "16"])["weather"]["far"].clone()
    };
    let hill = far("61.7,27.3,2.0,605");
    let says = hill[0]["says"].as_str().unwrap();
    assert!(hill[0]["distance_km"].as_f64().unwrap() < 50.0 && hill[0]["higher_m"] == 500.0, "{hill}");
    assert!(says.contains("500 m higher") && says.contains("about 3.2 °C colder than the yard"), "{says}");
    assert_eq!(far("61.7,27.3,2.0,120"), serde_json::json!([]));
    let nameless = unpacked("northway_isd_lite_2018_oct_2019_may");
    let nameless = plan(&["--weather", nameless.to_str().unwrap(), "--members", "16"]);
    assert_eq!(nameless["weather"]["far"], serde_json::json!([]));
}

#[test]
fn written_hours_keep_the_place_they_are_from() {
    let file = unpacked("northway_tmy3_oct_may.epw");
    let written = folder().join("placed.csv");
    drop(std::fs::remove_file(&written));
    let (page, _) = said(&["weather", "import", file.to_str().unwrap(), "--out", written.to_str().unwrap()]);
    let columns = page.split_once("--columns \"").unwrap().1.split_once('"').unwrap().0;
    let far = |arguments: &[&str]| {
        let (page, _) = said(&[&["weather", "show", "--json"], arguments].concat());
        let far = serde_json::from_str::<Value>(&page).unwrap()["far"][0].clone();
        (far["distance_km"].as_f64().unwrap(), far["higher_m"].as_f64().unwrap())
    };
    let before = far(&["--weather", file.to_str().unwrap()]);
    assert_eq!(before, far(&["--weather", written.to_str().unwrap(), "--columns", columns]));
}

#[test]
fn a_file_of_no_known_format_is_answered_with_the_four_formats_and_the_line_that_reads_it() {
    let rows: String =
        (0..48).map(|hour| format!("2025,1,{},{},{}.5,80\n", 30 + hour / 24, hour % 24, -9 - hour % 5)).collect();
    let path = folder().join("station.txt");
    std::fs::write(&path, format!("Year,Month,Day,Hour,Air Temp (°C),RH %\n{rows}")).unwrap();
    let name = path.to_str().unwrap();
    let refused = |command: &[&str]| {
        let output = Command::new(env!("CARGO_BIN_EXE_snowhum")).args(command).output().unwrap();
        assert_eq!(output.status.code(), Some(2));
        String::from_utf8_lossy(&output.stderr).split_whitespace().collect::<Vec<_>>().join(" ")
    };
    let message = refused(&["plan", "--weather", name]);
    for part in ["station.txt: line 1:", "EPW", "ISD-lite", "GHCN-Daily", "a station's CSV"] {
        assert!(message.contains(part), "{part}: {message}");
    }
    let columns = message.split_once("--columns \"").unwrap().1.split_once('"').unwrap().0;
    assert!(message.contains(&format!("snowhum weather import \"{name}\" --columns")), "{message}");
    let (page, _) = said(&["weather", "import", name, "--columns", columns]);
    assert!(
        page.contains("48 hours from 2025-01-29T22:00:00Z, coldest −13.5") || page.contains("coldest -13.5"),
        "{page}"
    );
    std::fs::write(&path, "a,b\n1,2\n").unwrap();
    let message = refused(&["weather", "import", name]);
    assert!(message.contains("year=Year, month=Month, day=Day, hour=Hour"), "{message}");
}
