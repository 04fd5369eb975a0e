//! A club's nights through the binary: what its workers answer is what `plan --json` prints.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use snowhum_testkit::postgres::Database;
use std::io::{BufRead, BufReader};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};

const YARD: &str = include_str!("../../../../data/demo/rowan-bank.toml");
/// Fewer members than shipped: what is compared is the same all the same.
const MEMBERS: [&str; 2] = ["--members", "16"];

fn folder(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    let _ = std::fs::remove_dir_all(&folder);
    std::fs::create_dir_all(&folder).unwrap();
    folder
}

fn snowhum(address: &str, arguments: &[&str]) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_snowhum"));
    command.args(arguments).env("DATABASE_URL", address);
    command
}

fn says(address: &str, arguments: &[&str]) -> String {
    let output = snowhum(address, arguments).output().unwrap();
    assert!(output.status.success(), "{arguments:?}: {}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8(output.stdout).unwrap()
}

/// A keeper's records of a yard of their own, and the export of them.
struct Keeper {
    records: String,
    export: String,
}

fn keeper(folder: &Path, name: &str, change: impl FnOnce(String) -> String) -> Keeper {
    let place = |ending: &str| folder.join(format!("{name}{ending}")).to_str().unwrap().to_owned();
    let own = YARD.replace("name = \"Rowan Bank\"", &format!("name = \"{name}'s\"")).replace("invented = true", "");
    std::fs::write(place(".toml"), change(own)).unwrap();
    let keeper = Keeper { records: place(".db"), export: place(".json") };
    says("", &["--store", &keeper.records, "import", &place(".toml")]);
    says("", &["--store", &keeper.records, "export", &keeper.export]);
    keeper
}

#[test]
fn a_club_answers_to_the_byte_as_plan_does_and_a_winter_that_cannot_be_planned_fails_alone() {
    let (database, folder) = (Database::shared(), folder("a_night"));
    let club = |arguments: &[&str]| says(&database.address, &[&["club"], arguments].concat());
    let north = |yard: String| yard.replace("latitude = 61.7", "latitude = 63.2");
    let late = |yard: String| yard.replace("as_of = 2025-10-05", "as_of = 2026-05-20");
    let well = [keeper(&folder, "Anna", |yard| yard), keeper(&folder, "Bo", north)];
    for (keeper, name) in well.iter().zip(["Anna", "Bo"]) {
        club(&["import", &keeper.export, "--member", name]);
    }
    club(&["import", &keeper(&folder, "Cato", late).export, "--member", "Cato"]);
    let night = |day: &str| club(&[&["plan-night", "--day", day], &MEMBERS[..]].concat());
    assert!(night("2026-01-10").contains("3 yards asked about, 3 of them to be computed"));
    let work =
        || snowhum(&database.address, &["club", "work", "--until-done"]).stderr(Stdio::inherit()).spawn().unwrap();
    for mut worker in [work(), work()] {
        assert!(worker.wait().unwrap().success());
    }
    let status = club(&["status"]);
    assert!(status.contains("2 of 3 yards; 1 failed") && status.contains("Cato's: as-of 2026-05-20"), "{status}");
    assert!(club(&["status", "--metrics"]).contains("snowhum_night_complete{night=\"1\",day=\"2026-01-10\"} 1\n"));

    let answers = folder.join("answers");
    club(&["answers", answers.to_str().unwrap()]);
    let mut answers: Vec<String> = std::fs::read_dir(answers)
        .unwrap()
        .map(|file| std::fs::read_to_string(file.unwrap().path()).unwrap())
        .collect();
    let plan = |keeper: &Keeper| says("", &[&["--store", &keeper.records, "plan", "--json"], &MEMBERS[..]].concat());
    let mut plans: Vec<String> = well.iter().map(plan).collect();
    answers.sort();
    plans.sort();
    assert!(answers == plans && plans[0] != plans[1], "to the byte");
    assert!(night("2026-01-11").contains("3 yards asked about, 1 of them to be computed"), "that which failed");
}

#[test]
fn a_club_and_each_member_get_back_what_was_handed_in() {
    let (database, folder) = (Database::shared(), folder("exports"));
    let other = database.beside();
    let club = |arguments: &[&str]| says(&database.address, &[&["club"], arguments].concat());
    let anna = keeper(&folder, "Anna", |yard| yard);
    club(&["import", &anna.export, "--member", "Anna"]);
    club(&["import", &keeper(&folder, "Mo", |yard| yard).export, "--member", "Mo", "--role", "mentor"]);
    club(&["share", "Anna's", "--member", "Anna", "--with", "Mo"]);
    let file = |name: &str| folder.join(name).to_str().unwrap().to_owned();
    let read = |name: &str| std::fs::read(file(name)).unwrap();
    club(&["export", &file("back.json"), "--member", "Anna"]);
    assert!(read("back.json") == std::fs::read(&anna.export).unwrap(), "to the byte");
    club(&["export", &file("club.jsonl")]);
    says(&other.address, &["club", "import", &file("club.jsonl")]);
    says(&other.address, &["club", "export", &file("again.jsonl")]);
    assert!(read("club.jsonl") == read("again.jsonl"), "to the byte");
}

#[test]
fn what_is_wrong_is_said_with_what_would_be_right() {
    let database = Database::shared();
    let refused = |address: Option<&str>, arguments: &[&str]| {
        let mut command = snowhum(address.unwrap_or_default(), arguments);
        if address.is_none() {
            command.env_remove("DATABASE_URL");
        }
        let output = command.output().unwrap();
        (output.status.code(), String::from_utf8(output.stderr).unwrap())
    };
    let (code, words) = refused(None, &["club", "status"]);
    assert!(code == Some(2) && words.contains("postgres://"), "{words}");
    let (code, words) = refused(Some("postgres://nobody@127.0.0.1:1/none"), &["club", "status"]);
    assert!(code == Some(3) && words.contains("cannot be reached"), "{words}");
    let (code, words) = refused(Some(&database.address), &["club", "share", "X", "--member", "Anna", "--with", "Mo"]);
    assert!(code == Some(2) && words.contains("no member \"Anna\""), "{words}");
    let (code, words) = refused(Some(&database.address), &["club", "answers", "nowhere"]);
    assert!(code == Some(2) && words.contains("no night is complete yet"), "{words}");
}

fn served(address: &str) -> (Child, String) {
    let mut server = snowhum(address, &["club", "serve", "--port", "0"]).stderr(Stdio::piped()).spawn().unwrap();
    let first = BufReader::new(server.stderr.take().unwrap()).lines().next().unwrap().unwrap();
    let base = first.split_whitespace().find(|word| word.starts_with("http://")).unwrap().to_owned();
    (server, base)
}

#[test]
fn what_is_handed_in_over_the_network_is_taken_in_as_its_import_is() {
    let (database, folder) = (Database::shared(), folder("handed_in"));
    let club = |arguments: &[&str]| says(&database.address, &[&["club"], arguments].concat());
    let anna = keeper(&folder, "Anna", |yard| yard);
    let key = club(&["member", "Anna"]);
    let key = format!("Bearer {}", key.trim().rsplit(' ').next().unwrap());
    let (mut server, base) = served(&database.address);
    let agent: ureq::Agent = ureq::Agent::config_builder().http_status_as_error(false).build().into();
    let sent = |body: &[u8]| {
        let request = agent.post(format!("{base}hand-in")).header("authorization", &key);
        let mut answer = request.send(body).unwrap();
        (answer.status().as_u16(), answer.body_mut().read_to_string().unwrap())
    };
    let export = std::fs::read(&anna.export).unwrap();
    let (torn, taken) = (sent(&export[..export.len() / 2]), sent(&export));
    server.kill().unwrap();
    server.wait().unwrap();
    assert!(torn.0 == 422 && torn.1.contains("the export"), "{torn:?}");
    assert_eq!(taken, (200, r#"{"changed":1,"left":0,"unchanged":0}"#.to_owned()));
    let again = club(&["import", &anna.export, "--member", "Anna"]);
    assert!(again.contains("0 yards new or changed, 1 as they were, 0 left"), "{again}");
    let back = folder.join("back.json");
    club(&["export", back.to_str().unwrap(), "--member", "Anna"]);
    assert!(std::fs::read(back).unwrap() == export, "to the byte");
}

#[test]
fn the_pages_tell_a_member_in_the_weeks_words_what_the_night_answered() {
    let (database, folder) = (Database::shared(), folder("pages"));
    let club = |arguments: &[&str]| says(&database.address, &[&["club"], arguments].concat());
    club(&["import", &keeper(&folder, "Anna", |yard| yard).export, "--member", "Anna"]);
    club(&["invent", "--yards", "3", "--club", "club"]);
    club(&[&["plan-night", "--day", "2026-01-10", "--as-of", "2026-01-10"], &MEMBERS[..]].concat());
    club(&["work", "--until-done"]);
    let key = club(&["member", "Anna"]);
    let key = key.trim().rsplit(' ').next().unwrap();
    let (mut server, base) = served(&database.address);
    let agent: ureq::Agent = ureq::Agent::config_builder().max_redirects(0).http_status_as_error(false).build().into();
    let signed = agent.post(format!("{base}sign-in")).send_form([("key", key)]).unwrap();
    let cookie = signed.headers()["set-cookie"].to_str().unwrap().split(';').next().unwrap().to_owned();
    let read = |path: &str| {
        let mut answer = agent.get(format!("{base}{path}")).header("cookie", &cookie).call().unwrap();
        answer.body_mut().read_to_string().unwrap()
    };
    let (page, metrics) = (read(""), read("metrics"));
    server.kill().unwrap();
    server.wait().unwrap();
    assert!(metrics.contains("snowhum_night_yards_done{night=\"1\",day=\"2026-01-10\"} 4\n"), "{metrics}");
    assert!(page.contains("Anna&#39;s") || page.contains("Anna's"), "{page}");
    assert!(page.contains("the night of 10 January 2026") && !page.contains("Not known for this week"), "{page}");
    assert!(page.contains("Birch") && !page.contains("Invented 1"), "hers, and no other: {page}");
}
