//! Every kind of bad input gives faults that name line, field and remedy.

#![expect(clippy::unwrap_used, clippy::expect_used, reason = "a test fails by panicking")]

use crate::said;
use snowhum_apiary::{Fault, Faults, LONGEST_FILE, demo_text, read, read_bytes};
use snowhum_say::yard_fault::missing;
use std::fmt::Write as _;
use std::time::{Duration, Instant};

fn faults(text: &str) -> Faults {
    read(text, "yard.toml").expect_err("this file has faults")
}

/// The demo with one line changed, and the fault that must come of it on that line.
fn only_fault(from: &str, to: &str) -> Fault {
    assert!(demo_text().contains(from), "{from}");
    let text = demo_text().replacen(from, to, 1);
    let found = faults(&text);
    let line = 1 + demo_text()[..demo_text().find(from).unwrap()].matches('\n').count();
    assert_eq!(found.faults.len(), 1, "{from} -> {to}:\n{found}");
    let fault = found.faults[0].clone();
    assert!(!said(&fault.remedy).is_empty() && !said(&fault.problem).is_empty());
    assert!(
        fault.line >= line && fault.line <= line + to.matches('\n').count(),
        "{to}: line {} for {line}",
        fault.line
    );
    fault
}

#[test]
fn each_slip_names_its_line_its_field_and_what_would_be_right() {
    let slips = [
        ("latitude = 61.7", "latitude = 91", "site.latitude", "between -90 and 90"),
        ("queen_year = 2023", "queen = \"virgn\"", "colony \"Birch\".queen", "did you mean \"virgin\"?"),
        ("queen_year = 2023", "troubles = [\"wasp\"]", "colony \"Birch\".troubles[0]", "did you mean \"wasps\"?"),
        ("queen_year = 2023", "left_on = \"roof\"", "colony \"Birch\".left_on", "\"excluder\""),
        ("queen_year = 2023", "counted_at = \"80 C\"", "colony \"Birch\".counted_at", "-5 C"),
        ("latitude = 61.7", "latitude = nan", "site.latitude", "degrees"),
        ("latitude = 61.7", "latitude = inf", "site.latitude", "degrees"),
        ("latitude = 61.7", "latitude = \"up there\"", "site.latitude", "61.7 N"),
        ("longitude = 27.3", "longitude = -181", "site.longitude", "180"),
        ("elevation = \"105 m\"", "elevation = 105", "site.elevation", "105 m"),
        ("zone = \"Europe/Helsinki\"", "zone = \"Europe/Helsinky\"", "site.zone", "Europe/Helsinki"),
        ("zone = \"Europe/Helsinki\"", "zone = \"Winnipeg\"", "site.zone", "America/Winnipeg"),
        ("zone = \"Europe/Helsinki\"", "zone = \"\"", "site.zone", "Europe/Helsinki"),
        ("as_of = 2025-10-05", "as_of = \"5 October\"", "apiary.as_of", "2025-10-05"),
        ("as_of = 2025-10-05", "as_of = 12:30:00", "apiary.as_of", "2025-10-05"),
        ("invented = true", "invented = \"yes\"", "apiary.invented", "true or false"),
        ("shelter = \"windbreak\"", "shelter = \"hedge\"", "site.shelter", "windbreak"),
        ("colony = 180", "colony = -5", "money.colony", "from 0"),
        ("kind = \"Langstroth 10\"", "kind = \"Langstorth 10\"", "hive \"Alder\".kind", "Langstroth 10"),
        ("boxes = [\"deep\", \"deep\"]", "boxes = [\"deep\", \"brod\"]", "hive \"Alder\".boxes[1]", "deep"),
        ("boxes = [\"deep\", \"deep\"]", "boxes = []", "hive \"Alder\".boxes", "1 to 12"),
        ("boxes = [\"deep\", \"deep\"]", "boxes = \"deep\"", "hive \"Alder\".boxes", "brackets"),
        ("wall = \"pine 19 mm\"", "wall = \"pine\"", "hive \"Alder\".wall", "thickness"),
        ("wall = \"pine 19 mm\"", "wall = \"pine 19\"", "hive \"Alder\".wall", "50 mm"),
        ("wall = \"pine 19 mm\"", "wall = \"pine -19 mm\"", "hive \"Alder\".wall", "between"),
        ("wall = \"pine 19 mm\"", "wall = \"pine 19 km\"", "hive \"Alder\".wall", "between"),
        ("wall = \"pine 19 mm\"", "wall = \"pime 19 mm\"", "hive \"Alder\".wall", "pine"),
        ("floor = \"solid\"", "floor = \"moss\"", "hive \"Alder\".floor", "open mesh"),
        ("entrance = \"reduced\"", "entrance = \"wee\"", "hive \"Alder\".entrance", "mm"),
        ("guard = \"slot 8 mm\"", "guard = \"cat\"", "hive \"Alder\".guard", "slot 8 mm"),
        ("upper_hole = \"20 mm\"", "upper_hole = \"full\"", "hive \"Alder\".upper_hole", "25 mm"),
        ("facing = \"south\"", "facing = \"sooth\"", "hive \"Alder\".facing", "south"),
        ("facing = \"south\"", "facing = 180", "hive \"Alder\".facing", "deg"),
        ("stand = \"40 cm\"", "stand = \"-40 cm\"", "hive \"Alder\".stand", "between"),
        ("lid = [\"plywood 10 mm\", \"foam 50 mm\"]", "lid = []", "hive \"Alder\".lid", "at least one"),
        ("{ hive = \"Alder\", side", "{ hive = \"Oak\", side", "hive \"Aspen\".neighbour", "of this file"),
        ("{ hive = \"Alder\", side", "{ hive = \"Aspen\", side", "hive \"Aspen\".neighbour", "another hive"),
        ("bees = 20000", "bees = -1", "colony \"Alder\".bees", "from 1 to 120000"),
        ("bees = 20000", "bees = 1e300", "colony \"Alder\".bees", "from 1 to 120000"),
        ("bees = 20000", "bees = 99999999999999999999", "colony \"Alder\".bees", "from 1 to 120000"),
        ("bees = 20000", "bees = 20000\nbees_low = 30000", "colony \"Alder\".bees", "must rise"),
        ("frames_of_bees = 8", "frames_of_bees = 25", "colony \"Alder\".frames_of_bees", "combs"),
        ("brood = \"none\"", "brood = \"loads\"", "colony \"Alder\".brood", "frames"),
        ("stores = \"24 kg\"", "stores = 24", "colony \"Alder\".stores", "kg"),
        ("stores = \"24 kg\"", "stores = \"24\"", "colony \"Alder\".stores", "kg"),
        ("stores = \"24 kg\"", "stores = \"24 m\"", "colony \"Alder\".stores", "kg"),
        ("stores = \"24 kg\"", "stores = \"-4 kg\"", "colony \"Alder\".stores", "between 0 kg"),
        ("stores = \"24 kg\"", "stores = \"inf kg\"", "colony \"Alder\".stores", "12 kg"),
        ("stores = \"24 kg\"", "stores = \"heavy\"", "colony \"Alder\".stores", "food = \"heavy\""),
        ("stores = \"24 kg\"", "stores = [24]", "colony \"Alder\".stores", "quotes"),
        ("stores = \"24 kg\"", "stores = \"120 kg\"", "colony \"Alder\".stores", "food alone"),
        ("stores = \"24 kg\"", "stors = \"24 kg\"\nfood = \"fair\"", "colony \"Alder\".stors", "stores"),
        ("stores = \"24 kg\"", "stores = \"24 kg\"\nfood = \"fair\"", "colony \"Alder\".food", "one way"),
        ("known_by = \"scale\"", "known_by = \"guess\"", "colony \"Alder\".known_by", "two-sided lift"),
        (
            "food_sits = \"mostly above\"",
            "food_sits = { above = 0.7, far = 0.7 }",
            "colony \"Alder\".food_sits",
            "add up to 1",
        ),
        ("found = 2, bees = 300", "found = 400, bees = 300", "colony \"Alder\".mites", "sample"),
        ("found = 2, bees = 300", "found = 2.5, bees = 300", "colony \"Alder\".mites.found", "whole number"),
        (
            "mites = { found = 2, bees = 300, on = 2025-08-28 }",
            "mites = \"none\"",
            "colony \"Alder\".mites",
            "not counted",
        ),
        (
            "mites = { found = 2, bees = 300, on = 2025-08-28 }",
            "mites = \"3%\"",
            "colony \"Alder\".mites",
            "mites = { found = 2, bees = 300, on = 2025-08-28 }",
        ),
        ("bees = 300, on = 2025-08-28", "bees = 300, on = 2025-12-28", "colony \"Alder\".mites.on", "2025-10-05"),
        ("bees = 300, on = 2025-08-28", "bees = 300, on = 1999-08-28", "colony \"Alder\".mites.on", "year"),
        ("queen_year = 2024", "queen_year = 2031", "colony \"Alder\".queen_year", "2025"),
        (
            "treatments = [{ on = 2025-08-10, class = \"formic\" }]",
            "treatments = [{ on = 2025-08-10, class = \"formic\" }, { on = 2025-08-01, class = \"thymol\" }]",
            "colony \"Alder\".treatments",
            "earliest first",
        ),
        ("class = \"formic\"", "class = \"magic\"", "colony \"Alder\".treatments[0].class", "formic"),
        ("hive = \"Birch\"", "hive = \"Brich\"", "colony \"Birch\".hive", "Birch"),
        ("hive = \"Birch\"", "hive = \"Alder\"", "colony \"Birch\".hive", "of its own"),
        ("[money]", "[monny]\n[money]", "monny", "money"),
    ];
    for (from, to, field, remedy) in slips {
        let fault = only_fault(from, to);
        assert_eq!(fault.field, field, "{to}: {fault:?}");
        assert!(said(&fault.remedy).contains(remedy), "{to}: {fault:?}");
    }
}

#[test]
fn two_of_one_name_are_told_apart_from_one() {
    let text =
        demo_text().replace("name = \"Birch\"", "name = \"alder\"").replace("hive = \"Birch\"", "hive = \"alder\"");
    let found = faults(&text);
    assert!(
        found.faults.iter().any(|fault| fault.field == "hive \"alder\".name" && said(&fault.problem).contains("hive")),
        "{found}"
    );
    assert!(found.faults.iter().any(|fault| fault.field == "colony \"alder\".name"), "{found}");
}

#[test]
fn a_fault_of_a_hive_is_not_repeated_by_its_colony() {
    let text = demo_text().replacen("wall = \"pine 19 mm\"", "wall = \"gold 19 mm\"", 1);
    assert_eq!(faults(&text).faults.len(), 1);
}

#[test]
fn all_faults_come_at_once_in_the_order_of_lines() {
    let text = demo_text()
        .replace("latitude = 61.7", "latitude = 610.7")
        .replace("stores = \"14 kg\"", "stores = 14")
        .replace("queen_year = 2023", "queen_year = 1823")
        .replace("floor = \"open mesh\"", "floor = \"air\"")
        .replace("colony = 180", "colny = 180");
    let found = faults(&text);
    let fields: Vec<&str> = found.faults.iter().map(|fault| fault.field.as_str()).collect();
    let expected = [
        "site.latitude",
        "money.colny",
        "hive \"Juniper\".floor",
        "colony \"Birch\".stores",
        "colony \"Birch\".queen_year",
    ];
    assert_eq!(fields, expected, "{found}");
    assert!(found.faults.is_sorted_by_key(|fault| fault.line));
}

#[test]
fn faults_print_as_file_line_field_with_a_hint_and_serialise_as_promised() {
    let found = faults(&demo_text().replace("stores = \"14 kg\"", "stores = 14"));
    let printed = found.to_string();
    let line = found.faults[0].line;
    assert!(
        printed.starts_with(&format!(
            "yard.toml:{line}: colony \"Birch\".stores: \"14\" has no unit\n  hint: write \"14 kg\" or \"14 lb\""
        )),
        "{printed}"
    );
    let json = serde_json::to_value(&found).unwrap();
    let mut keys: Vec<&str> = json["faults"][0].as_object().unwrap().keys().map(String::as_str).collect();
    // In the order of the alphabet or of the file, as other crates of a build have it.
    keys.sort_unstable();
    assert_eq!(keys, ["field", "line", "problem", "remedy"]);
    assert_eq!(json.as_object().unwrap().len(), 1);
}

#[test]
fn what_is_missing_is_named_with_an_example() {
    let found = faults("[apiary]\n[site]\n[[hive]]\n[[colony]]\n");
    let named = |field: &str| {
        found.faults.iter().find(|fault| fault.field == field).unwrap_or_else(|| panic!("{field}\n{found}"))
    };
    for field in [
        "apiary.name",
        "apiary.as_of",
        "site.latitude",
        "site.zone",
        "hive[0].name",
        "hive[0].kind",
        "colony[0].hive",
        "colony[0].stores",
    ] {
        let fault = named(field);
        assert!(fault.problem == missing() && !said(&fault.remedy).is_empty());
    }
    assert_eq!(named("hive[0].kind").line, 3);
    assert_eq!(faults("x = 1\n").faults.iter().filter(|fault| fault.problem == missing()).count(), 3);
}

#[test]
fn no_file_at_all_points_to_the_template() {
    for text in ["", " \n\n\t", "\u{feff}"] {
        let found = faults(text);
        assert!(!found.faults.is_empty());
    }
    assert!(faults("").to_string().contains("snowhum new"));
    assert!(faults("# only a remark\n").faults.iter().any(|fault| fault.field == "site"));
}

#[test]
fn bytes_that_are_no_text_are_told_with_their_line() {
    let found = read_bytes(b"[apiary]\nname = \"\xff\xfe\"\n", "yard.toml").unwrap_err();
    assert_eq!((found.faults[0].line, found.faults.len()), (2, 1));
    assert!(found.to_string().contains("UTF-8"));
    assert!(read_bytes(&[0, 159, 146, 150, 0, 255], "yard.toml").is_err());
    assert!(read_bytes(&[0; 4096], "yard.toml").is_err());
    assert!(read_bytes(demo_text().as_bytes(), "yard.toml").is_ok());
}

#[test]
fn a_truncated_file_gives_faults_and_no_false_cry_of_what_is_missing() {
    let cut = demo_text().find("known_by = \"scale\"").unwrap() + "known_by = \"sc".len();
    let found = faults(&demo_text()[..cut]);
    assert!(found.faults.iter().any(|fault| said(&fault.problem).contains("TOML")), "{found}");
    assert!(found.faults.iter().all(|fault| fault.problem != missing()), "{found}");
}

#[test]
fn several_breaks_of_the_format_are_reported_together() {
    let text =
        demo_text().replace("latitude = 61.7", "latitude = = 61.7").replace("queen_year = 2023", "queen_year 2023");
    let found = faults(&text);
    assert!(found.faults.iter().filter(|fault| said(&fault.problem).contains("TOML")).count() >= 2, "{found}");
}

/// Reads and requires faults, within the five seconds promised.
fn soon(what: &str, text: &str) {
    let start = Instant::now();
    let found = faults(text);
    assert!(!found.faults.is_empty() && found.faults.len() <= 501, "{what}: {}", found.faults.len());
    assert!(start.elapsed() < Duration::from_secs(5), "{what}: {:?}", start.elapsed());
}

#[test]
fn vast_files_are_refused_soon() {
    soon("200,000 hives", &"[[hive]]\nkind='x'\n".repeat(200_000));
    soon("100,000 hives", &"[[hive]]\nkind='x'\n".repeat(100_000));
    let mut tables = String::new();
    for n in 0..200_000 {
        writeln!(tables, "[t{n}]").unwrap();
    }
    soon("200,000 tables", &tables);
    soon("one section 200,000 times", &"[apiary]\n".repeat(200_000));
    soon("one key 200,000 times", &"a=1\n".repeat(200_000));
    soon("beyond the longest", &"#".repeat(LONGEST_FILE + 1));
    soon("one endless line", &"a".repeat(3_000_000));
    soon("open brackets", &format!("a = {}", "[".repeat(1_900)));
    soon("open brackets on lines", &format!("a = {}", "[\n".repeat(100_000)));
    soon(
        "nested inline tables on lines",
        &format!(
            "a = {}",
            "{\n a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a = ".repeat(50_000)
        ),
    );
    let deepest = format!("{{\n {} = ", ["a"; 41].join("."));
    soon("tables within tables", &format!("a = {}1{}", deepest.repeat(79), "}".repeat(79)));
    soon("stops", &format!("{}a = 1", "a.".repeat(500_000)));
    soon("deep headers", &format!("[{}]\n{} = 1\n", ["a"; 40].join("."), ["b"; 40].join(".")).repeat(20_000));
    soon("an endless text", &format!("[apiary]\nname = '''{}'''", "x\n".repeat(200_000)));
    soon("quotes", &"'\n".repeat(200_000));
}

#[test]
fn the_largest_yard_is_read_soon() {
    let mut text = demo_text().split("[[hive]]").next().unwrap().to_owned();
    for n in 0..2_000 {
        writeln!(text, "[[hive]]\nname = \"{n}\"\nkind = \"Langstroth 10\"").unwrap();
        writeln!(text, "[[colony]]\nname = \"{n}\"\nhive = \"{n}\"\nstrength = \"strong\"\nfood = \"heavy\"").unwrap();
    }
    let start = Instant::now();
    let (yard, _) = read(&text, "yard.toml").unwrap_or_else(|faults| panic!("{faults}"));
    assert_eq!(yard.colonies.len(), 2_000);
    assert!(start.elapsed() < Duration::from_secs(5), "{:?}", start.elapsed());
}
