use super::*;
use crate::{AskedRows, Doubt, Entry, demo_text, read};
use jiff::SignedDuration;
use snowhum_say::Tongue;
use snowhum_units::System;

fn yard() -> Apiary {
    read(demo_text(), "demo").unwrap().0
}

/// A table out of lines whose cells stand between `|`.
fn table(lines: &[&str]) -> Table {
    let row = |(at, line): (usize, &&str)| {
        let cells = line.split('|').map(|cell| cell.trim().to_owned()).collect();
        TableRow { number: at + 1, cells }
    };
    Table { file: "diary.csv".to_owned(), rows: lines.iter().enumerate().map(row).collect() }
}

fn read_as(lines: &[&str], columns: Option<&str>, bare: Bare) -> Result<SheetReading, SheetFaults> {
    let columns = columns.map(|columns| SheetColumns::read(columns).unwrap());
    yard().read_sheet(&table(lines), columns.as_ref(), bare)
}

fn metric(lines: &[&str]) -> SheetReading {
    read_as(lines, None, Bare::In(System::Metric)).unwrap_or_else(|faults| panic!("{faults}"))
}

fn refused(lines: &[&str], columns: Option<&str>) -> String {
    read_as(lines, columns, Bare::In(System::Metric)).unwrap_err().to_string()
}

/// What each note says.
fn says(reading: &SheetReading) -> Vec<String> {
    let yard = yard();
    let incoming = yard.incoming(reading.clone(), yard.notes.last().unwrap().at);
    incoming.rows.iter().map(|row| format!("{} {}: {}", row.colony, row.at, row.says)).collect()
}

#[test]
fn a_keepers_own_headings_are_understood() {
    let reading = metric(&[
        "My winter, 2025",
        "Inspection date | Hive name | Weight (kg) | Dead bees (on board) | Outside temp C | Pollen | Remarks",
        "25.1.2026 | Alder | 42,5 | 12 | -6 | no | quiet",
        "25/1/2026 | birch | 38 | over 100 | -6 | Y | hum=heard by ear; words=a faint hum",
    ]);
    assert_eq!(
        says(&reading),
        [
            "Alder 2026-01-25T12:00:00: scale=42.5 kg; dead=12 on board; pollen=no; words=quiet",
            "Birch 2026-01-25T12:00:00: scale=38 kg; dead=over 100 on snow; pollen=yes; hum=heard by ear; words=a faint hum",
        ]
    );
    assert!(reading.notes.iter().all(|(_, note)| (note.conditions.air_k.unwrap().celsius() + 6.0).abs() < 1e-9));
    assert_eq!(reading.notes[0].1.visit, reading.notes[1].1.visit, "one walk");
    let columns = "date=Inspection date, hive=Hive name, scale=Weight (kg):kg, dead=Dead bees (on board):on board, \
                   air=Outside temp C:C, pollen=Pollen, words=Remarks";
    assert_eq!(reading.columns, columns);
    let again = read_as(&["x | y", "25.1.2026 | Alder"], Some("date=x, hive=y"), Bare::Refused);
    assert!(again.is_err(), "a visit at which nothing was noted is none");
}

#[test]
fn columns_may_be_named_in_any_language_and_the_rest_is_kept_as_remarks() {
    let lines =
        ["Datum | Volk | Gewicht | Futter", "25.1.2026 | Alder | 42,5 | fast leer", "26.1.2026 | Larch | 40 lb | "];
    let named = Some("date=Datum; hive=Volk; weight=Gewicht:kg");
    let reading = read_as(&lines, named, Bare::In(System::Us)).unwrap();
    let said = says(&reading);
    assert_eq!(said[0], "Alder 2026-01-25T12:00:00: scale=42.5 kg; words=Futter: fast leer");
    assert!(said[1].contains("scale=18.144 kg"), "a cell's own unit counts: {}", said[1]);
    assert_eq!(Tongue::BRITISH.say_all(&reading.said), ["row 2: Futter is kept as a remark, which no sum reads"]);
    let mend = refused(&lines, None);
    assert!(mend.contains("--columns \"date=Datum, hive=Volk\""), "{mend}");
    assert!(refused(&lines, Some("date=Datum, hive=Hive")).contains("no column \"Hive\""));
}

#[test]
fn bare_numbers_follow_the_keepers_units() {
    let lines = ["Date | Hive | Weight", "2026-01-25 | Alder | 90"];
    let kilograms = |bare| says(&read_as(&lines, None, bare).unwrap())[0].clone();
    assert!(kilograms(Bare::In(System::Metric)).ends_with("scale=90 kg"));
    assert!(kilograms(Bare::In(System::Us)).ends_with("scale=40.823 kg"));
    let refused = read_as(&lines, None, Bare::Refused).unwrap_err().to_string();
    assert!(refused.contains("\"90 kg\" or \"90 lb\""), "{refused}");
}

#[test]
fn every_fault_is_told_at_once_with_row_column_cell_and_the_columns_as_read() {
    let said = refused(
        &[
            "Date | Hive | Weight kg | Mites",
            "25.1.2026 | Brich | 42 | 14/300",
            "31.2.2026 | Alder | 1,500 | 3",
            " | Alder | 41 | ",
            "26.1.2026 | | #DIV/0! | ",
            "27.1.2026 | Oak | 40 |",
            "28.1.2026 | Oak | 40 |",
        ],
        None,
    );
    for part in [
        "diary.csv: row 2: Hive: \"Brich\" is no colony of",
        "did you mean \"Birch\"?",
        "row 3: Date: \"31.2.2026\"",
        "row 3: Weight kg: \"1,500 kg\" can be read two ways",
        "row 3: Mites: \"3\"",
        "row 4: Date: the day is not written",
        "row 5: Hive: the hive is not written",
        "row 5: Weight kg: \"#DIV/0!\": is no value",
        "rows 6, 7: Hive: \"Oak\"",
        "--columns \"date=Date, hive=Hive, scale=Weight kg:kg, mites=Mites\"",
    ] {
        assert!(said.contains(part), "{part}\n{said}");
    }
}

#[test]
fn faults_without_end_are_told_up_to_a_bound() {
    let rows: Vec<String> = (0..500).map(|at| format!("2026-01-25 | Nobody {at} | 40")).collect();
    let lines: Vec<&str> = ["Date | Hive | Weight"].into_iter().chain(rows.iter().map(String::as_str)).collect();
    let faults = read_as(&lines, None, Bare::In(System::Metric)).unwrap_err();
    assert_eq!((faults.faults.len(), faults.more), (20, 480));
    assert!(faults.to_string().contains("and 480 more"));
}

#[test]
fn days_between_strokes_follow_the_sheets_own_evidence_or_are_refused_with_both_readings() {
    let days = |cells: [&str; 2]| {
        let lines = cells.map(|cell| format!("{cell} | Alder | quiet"));
        read_as(&["Date | Hive | Note", &lines[0], &lines[1]], None, Bare::Refused)
    };
    let first = |cells| says(&days(cells).unwrap())[0].clone();
    assert!(first(["03/01/2026", "25/01/2026"]).contains("2026-01-03"));
    assert!(first(["03/01/2026", "01/25/2026"]).contains("2026-03-01"));
    let open = days(["03/01/2026", "04/01/2026"]).unwrap_err().to_string();
    assert!(open.contains("2026-01-03") && open.contains("2026-03-01") && open.contains("date=Date:dmy"), "{open}");
    let lines = ["Date | Hive | Note", "03/01/2026 | Alder | quiet"];
    let told = read_as(&lines, Some("date=Date:dmy"), Bare::Refused).unwrap();
    assert!(says(&told)[0].contains("2026-01-03"));
}

#[test]
fn what_is_no_sign_is_kept_as_a_remark_and_said() {
    let reading = metric(&[
        "Date | Hive | Weight | Queen | Notes",
        "2026-01-25 | Alder | forgot the scale | fine, I think | all = well",
        "2026-01-26 | Alder | - | laying | n/a",
    ]);
    assert_eq!(
        says(&reading),
        [
            "Alder 2026-01-25T12:00:00: words=Weight: forgot the scale; Queen: fine, I think; all = well",
            "Alder 2026-01-26T12:00:00: queen=laying",
        ]
    );
    assert_eq!(reading.said.len(), 3, "{:?}", reading.said);
    assert!(
        Tongue::BRITISH.say_all(&reading.said).iter().all(|said| said.starts_with("row 2: ")),
        "{:?}",
        reading.said
    );
}

#[test]
fn a_hive_is_known_by_what_is_left_of_its_name_if_that_is_one_alone() {
    let mut yard = yard();
    yard.colonies[0].name = "Hive 3".to_owned();
    yard.colonies[1].name = "No. 12".to_owned();
    let meant = |written: &str| hive_meant::hive_meant(&yard, written).map(|colony| colony.name.as_str());
    for written in ["3", "hive 3", "Colony #3", "HIVE NO. 3"] {
        assert_eq!(meant(written), Some("Hive 3"), "{written}");
    }
    assert_eq!((meant("12"), meant("hive"), meant("1"), meant("")), (Some("No. 12"), None, None, None));
    yard.colonies[1].name = "Colony 3".to_owned();
    assert_eq!(hive_meant::hive_meant(&yard, "3"), None, "two may be meant");
}

#[test]
fn the_hive_is_the_column_whose_cells_name_colonies() {
    let reading = metric(&["Date | Hive no. | Name | Note", "2026-01-25 | 17 | Alder | quiet"]);
    assert_eq!(says(&reading), ["Alder 2026-01-25T12:00:00: words=Hive no.: 17; quiet"]);
    let same = metric(&["Name | When | Note", "Alder | 2026-01-25 10:30 | quiet"]);
    assert_eq!(says(&same), ["Alder 2026-01-25T10:30:00: words=quiet"]);
}

#[test]
fn a_share_under_one_is_no_per_cent_by_itself() {
    let lines = ["Date | Hive | Inside humidity", "2026-01-25 | Alder | 0.75"];
    assert!(refused(&lines, None).contains("\"0.75 %\", or \"75 %\""));
    let shown = ["Date | Hive | Inside humidity", "2026-01-25 | Alder | 75 %"];
    assert!(says(&metric(&shown))[0].ends_with("humidity=75 %"));
}

#[test]
fn rows_that_are_doubles_ahead_or_before_the_count_are_asked_about_before_any_is_kept() {
    let yard = yard();
    let last = yard.notes.iter().max_by_key(|note| note.at).unwrap().clone();
    let reading = metric(&[
        "Date | Hive | Note",
        "2026-01-25 | Alder | quiet",
        "2026-01-25 | Alder | quiet",
        "2024-12-25 | Alder | quiet",
        "2031-01-25 | Alder | quiet",
    ]);
    let now = last.at;
    let incoming = yard.incoming(reading.clone(), now);
    let doubts: Vec<bool> = incoming.rows.iter().map(|row| row.asks.is_some()).collect();
    assert_eq!(doubts, [false, true, true, true]);
    let refused = |asked| Tongue::BRITISH.say_all(&incoming.kept(asked).unwrap_err()).join("\n");
    assert!(refused(AskedRows::Open).contains("row 3: Alder, 2026-01-25 12:00: words=quiet: the same"));
    let ahead = refused(AskedRows::Kept);
    assert!(ahead.starts_with("row 5") && ahead.contains("still to come") && !ahead.contains("row 3"), "{ahead}");
    assert_eq!(incoming.kept(AskedRows::LeftOut).unwrap().len(), 1);

    // Once kept they are known, and nothing is asked again.
    let mut later = yard.clone();
    later.notes.extend(reading.notes.iter().take(3).map(|(_, note)| note.clone()));
    let again = later.incoming(reading, now);
    assert_eq!(again.rows.iter().map(|row| row.known).collect::<Vec<_>>(), [true, true, true, false]);

    // A note that was made by hand is told by its words and its minute.
    let by_hand =
        Note { id: crate::NoteId(uuid::Uuid::from_u128(1)), at: last.at + SignedDuration::from_secs(30), ..last };
    let one = SheetReading { columns: String::new(), said: Vec::new(), notes: vec![(2, by_hand)] };
    let asks = yard.incoming(one, now).asked().next().unwrap().asks.clone().unwrap();
    assert_eq!(asks.id(), Some("note-fault-twice"));
    assert!(Doubt::Ahead { at: jiff::civil::date(2031, 1, 25).at(12, 0, 0, 0) }.to_string().contains("still to come"));
}

#[test]
fn the_same_sheet_read_again_gives_the_same_notes() {
    let lines =
        ["Date | Hive | Weight", "2026-01-25 | Alder | 40", "2026-01-25 | Alder | 40", "2026-01-25 | Birch | 40"];
    let (once, again) = (metric(&lines), metric(&lines));
    assert_eq!(once, again);
    let ids: std::collections::BTreeSet<_> = once.notes.iter().map(|(_, note)| note.id).collect();
    assert_eq!(ids.len(), 3, "written down twice it is two");
    let is_sign = |note: &Note| matches!(note.entries[..], [Entry::Sign(_)]);
    assert!(once.notes.iter().all(|(_, note)| is_sign(note)));
}
