//! The corpus that is kept, on a plain compiler: each file on its way in, and what small changes make of it.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use snowhum_fuzzed::TARGETS;
use snowhum_testkit::workbooks::{rows, workbook};
use std::path::{Path, PathBuf};

/// Changes of each file: some bytes dropped, doubled, flipped.
const CHANGES: usize = 12;

/// A request for every page that takes something in.
const FORMS: [(&str, &str); 14] = [
    (
        "begin",
        "POST /begin\nhives=1&name=My+yard&as_of=2025-10-05&town=39&0.name=One&0.kind=Langstroth%2C+10+frames&0.strength=middling&0.food=fair&do=keep",
    ),
    (
        "begin-file",
        "POST /begin\nhives=1&name=My+yard&as_of=2025-10-05&town=39&0.name=One&0.kind=Langstroth%2C+10+frames&0.frames=7,5&0.weight=12&do=file",
    ),
    (
        "note",
        "POST /hive/larch/note\nvisit=019a0000-0000-7000-8000-000000000001&line=hum%3Dheard+by+ear&words=quiet&on=2026-02-01",
    ),
    ("undo", "POST /hive/alder/undo\n"),
    (
        "round",
        "POST /round\nvisit=019a0000-0000-7000-8000-000000000001&air=-5&snow=none&0.dead=dead%3D6-20&0.hum=hum%3Dheard+by+ear&1.count=17&2.words=a+tit&0.poke=poke%3Danswered&0.upper=upper%3Dblocked",
    ),
    ("flight", "POST /flight\ncolony=aspen&seen=flight%3Dnone"),
    (
        "dead",
        "POST /dead/larch\nvisit=019a0000-0000-7000-8000-000000000001&ropy-larvae=no&small-cluster=yes&food-near=fairly-sure",
    ),
    ("losses", "POST /losses\nvisit=019a0000-0000-7000-8000-000000000001&on=2026-02-07&dead=1"),
    (
        "treatments",
        "POST /treatments\nvisit=019a0000-0000-7000-8000-000000000001&colony=all&on=2026-02-01&class=oxalic&product=Example&withdrawal=nil",
    ),
    ("settings", "POST /settings\nunits=us&words=trade&currency=EUR&colony=200"),
    ("day", "POST /day\nday=2026-01-18"),
    ("sum", "GET /losses?club=10,2%0A20,3&season=2025"),
    ("ask", "GET /feed?feeder=top&hive=alder"),
    (
        "program",
        "PUT /api/notes/019a0000-0000-7000-8000-00000000000a\n{\"visit\":\"019a0000-0000-7000-8000-000000000001\",\"colony\":\"00000000-0000-0000-0000-000000000000\",\"at\":\"2026-02-01T12:00:00Z\",\"seen\":[\"hum=heard by ear\"],\"air\":\"-5 C\"}",
    ),
];

fn corpus(name: &str) -> Vec<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../fuzz/corpus").join(name);
    let mut files: Vec<PathBuf> = std::fs::read_dir(folder).unwrap().map(|file| file.unwrap().path()).collect();
    files.sort();
    files
}

fn changed(bytes: &[u8], number: usize) -> Vec<u8> {
    let at = (number * 7919 + 13) % bytes.len().max(1);
    let mut bytes = bytes.to_vec();
    match number % 4 {
        0 => bytes.truncate(at),
        1 => bytes.iter_mut().skip(at).take(1).for_each(|byte| *byte ^= 1 << (number % 8)),
        2 => bytes.extend_from_within(at..),
        _ => drop(bytes.drain(at..(at + 3).min(bytes.len()))),
    }
    bytes
}

#[test]
fn nothing_of_the_corpus_nor_near_it_makes_a_way_in_panic_or_hang() {
    for (name, way_in) in TARGETS {
        let files = corpus(name);
        assert!(!files.is_empty(), "{name}");
        for file in files {
            let bytes = std::fs::read(&file).unwrap();
            way_in(&bytes);
            (0..CHANGES).for_each(|number| way_in(&changed(&bytes, number)));
        }
    }
}

/// Writes the corpus's first files anew, as after a new form of the store.
#[test]
#[ignore = "a chore: cargo test -p snowhum-fuzzed -- --ignored seeds"]
fn seeds_are_written() {
    use snowhum_store::Store;
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../fuzz/corpus");
    let write = |name: &str, bytes: &[u8]| {
        let file = folder.join(name);
        std::fs::create_dir_all(file.parent().unwrap()).unwrap();
        std::fs::write(file, bytes).unwrap();
    };
    write("yard/demo.toml", snowhum_apiary::demo_text().as_bytes());
    let examples: Vec<&str> = snowhum_apiary::sign_examples().iter().map(|(_, example)| *example).collect();
    write("note/examples", examples.join("; ").as_bytes());
    write("isd_lite/two-hours", b"2018 10 01 00   -39   -61 10132   270    31     8     0     0\n2018 10 01 01   -44   -67 10130   260    26 -9999 -9999 -9999\n");
    write("ghcn_daily/two-days", b"XX000000001,20180101,TMAX,-39,,,S,\nXX000000001,20180101,TMIN,-144,,,S,\nXX000000001,20180102,PRCP,12,,,S,\nXX000000001,20180102,SNWD,120,,,S,\n");
    write("station_csv/half-hours", b"temperature=Temp Out:F,humidity=Hum:%,time=Time\nTime,Temp Out,Hum\n2025-01-31 12:00,14,80\n2025-01-31 12:30,16,82\n");
    for (name, request) in FORMS {
        write(&format!("forms/{name}"), request.as_bytes());
    }
    let diary = rows(&[
        "Date | Hive | Weight (kg) | Dead bees | Remarks",
        "@46047 | Alder | 42.5 | 12 | quiet",
        "@46048.4 | Birch | | | hum=heard",
    ]);
    write("notes_sheet/diary.xlsx", &workbook(&[("2026", &diary)]));
    let far = "<row r=\"1048576\"><c r=\"XFD1048576\" s=\"1\"><f>A1</f><v>46047</v></c></row>";
    write("notes_sheet/far.xlsx", &workbook(&[("empty", ""), ("far", far)]));
    let other =
        "Datum;Hive;Gewicht;Note\r\n25.1.2026;Alder;42,5;\"a; b\"\r\n03/04/2026 10:00;Birch;1,500;dead=3 on snow\r\n";
    write("notes_sheet/other-hand.csv", other.as_bytes());
    write("notes_sheet/read.csv", b"Date,Hive,Dead bees (on board),Pollen,Temp F,Super\n2026-01-25,Alder,12,x,20,1\n");
    let location = "LOCATION,Nowhere,-,XXX,made up,000000,62.0,25.0,2.0,100.0\n";
    let data = "DATA PERIODS,1,1,Data,Sunday,1/1,1/1\n";
    let row = "2018,1,1,1,60,?9,-5.0,-7.0,86,101300,0,0,270,0,0,0,0,0,0,0,270,3.1,8,8,9.9,77777,9,999999999,9,0.1,12,88,0.0,0.0,0.0\n";
    write("epw/one-hour", [location, data, row].concat().as_bytes());
    tokio::runtime::Builder::new_current_thread().enable_time().build().unwrap().block_on(async {
        let scratch = std::env::temp_dir().join(format!("snowhum-seeds-{}", std::process::id()));
        let store = Store::open(&scratch.join("from.db")).await.unwrap();
        let (mut yard, _) = snowhum_apiary::read(snowhum_apiary::demo_text(), "demo").unwrap();
        yard.notes.truncate(3);
        let now = "2026-01-10T12:00:00Z".parse::<jiff::Timestamp>().unwrap();
        store.import_yard(&yard, now).await.unwrap();
        store.set("web.units", "us").await.unwrap();
        let mut export = Vec::new();
        store.export_json(&mut export).await.unwrap();
        write("export/small.json", &export);
        store.export_csv(&scratch.join("sheets")).await.unwrap();
        write("notes_sheet/small.csv", &std::fs::read(scratch.join("sheets/note_versions.csv")).unwrap());
        store.backup(&scratch.join("small.db")).await.unwrap();
        write("database/small.db", &std::fs::read(scratch.join("small.db")).unwrap());
        std::fs::remove_dir_all(scratch).unwrap();
    });
}
