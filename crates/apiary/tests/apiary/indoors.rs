//! Rooms that hives winter in: in the yard file, and as notes move them.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use crate::said;
use jiff::civil::{Date, date};
use snowhum_apiary::{Act, Apiary, AutumnCount, ColonyId, Entry, Faults, Stay, demo_text, read, season_text};
use snowhum_units::{Bare, Fraction};

const CELLAR: &str = "[[indoors]]\nname = \"Cellar\"\ntemperature = \"2 to 6 C\"\nhumidity = \"60 %\"\nin = 2025-11-10\n\
    out = 2026-04-01\n\n";
const LATE: Date = date(2026, 5, 1);

/// The demo with a cellar for its first hive, Alder, and some visits.
fn text(at_alder: &str, visits: &[(&str, &str)]) -> String {
    let visit = |(at, seen): &(&str, &str)| format!("\n[[visit]]\nat = {at}\n[visit.seen]\nAlder = \"{seen}\"\n");
    let demo = demo_text().replacen("name = \"Alder\"\nkind", &format!("name = \"Alder\"\n{at_alder}kind"), 1);
    let before_hives = demo.find("# The normal hive.").unwrap();
    let (head, hives) = demo.split_at(before_hives);
    format!("{head}{CELLAR}{hives}{}", visits.iter().map(visit).collect::<String>())
}

fn yard(visits: &[(&str, &str)]) -> Apiary {
    read(&text("indoors = \"cellar\"\n", visits), "yard.toml").unwrap().0
}

fn alder(yard: &Apiary, until: Date) -> Vec<Stay> {
    yard.stays(yard.colonies.iter().find(|colony| colony.name == "Alder").unwrap(), until)
}

fn days(stays: &[Stay]) -> Vec<(Date, Option<Date>)> {
    stays.iter().map(|stay| (stay.from, stay.until)).collect()
}

#[test]
fn a_hive_stands_in_its_room_on_the_days_that_are_written() {
    let yard = yard(&[]);
    let room = yard.room("CELLAR").unwrap();
    assert!((room.coldest.celsius() - 2.0).abs() < 1e-9 && (room.warmest.celsius() - 6.0).abs() < 1e-9);
    assert_eq!((room.humidity, room.is_dark), (Some(Fraction::new(0.6)), true));
    let stays = alder(&yard, LATE);
    assert_eq!(days(&stays), [(date(2025, 11, 10), Some(date(2026, 4, 1)))]);
    assert!(!stays[0].is_noted && stays[0].room == "Cellar");
    let others = yard.colonies.iter().filter(|colony| colony.name != "Alder");
    assert!(others.into_iter().all(|colony| yard.stays(colony, LATE).is_empty()), "the others stand outdoors");
}

#[test]
fn the_whole_yard_goes_in_but_for_the_hive_that_says_none_and_one_has_its_own_days() {
    let text = text("indoors = \"none\"\n", &[])
        .replacen("invented = true", "invented = true\nindoors = \"Cellar\"", 1)
        .replacen("name = \"Birch\"\nkind", "name = \"Birch\"\nin = \"20 Nov 2025\"\nkind", 1);
    let yard = read(&text, "yard.toml").unwrap().0;
    let from: Vec<Option<Date>> =
        yard.colonies.iter().map(|colony| Some(yard.stays(colony, LATE).first()?.from)).collect();
    let tenth = Some(date(2025, 11, 10));
    assert_eq!(from, [None, Some(date(2025, 11, 20)), tenth, tenth, tenth]);
}

#[test]
fn a_day_noted_later_moves_the_plan() {
    let of = |visits: &[(&str, &str)], until| days(&alder(&yard(visits), until));
    let (tenth, april) = (date(2025, 11, 10), date(2026, 4, 1));
    let late = ("2025-11-20T16:00:00", "carried=into Cellar");
    let early = ("2025-11-05T16:00:00", "carried=into Cellar");
    let out = ("2026-03-20T18:00:00", "carried=out");
    assert_eq!(of(&[late], LATE), [(date(2025, 11, 20), Some(april))]);
    assert_eq!(of(&[early], LATE), [(date(2025, 11, 5), Some(april))]);
    assert_eq!(of(&[late], date(2025, 11, 19)), [(tenth, Some(april))], "nobody knew it before");
    assert_eq!(of(&[late, out], LATE), [(date(2025, 11, 20), Some(date(2026, 3, 20)))]);
    assert_eq!(of(&[out], LATE), [(tenth, Some(date(2026, 3, 20)))]);
    assert_eq!(of(&[("2026-04-10T18:00:00", "carried=out")], LATE), [(tenth, Some(date(2026, 4, 10)))]);
    let again = ("2026-03-25T18:00:00", "carried=into Cellar");
    let twice = [(date(2025, 11, 20), Some(date(2026, 3, 20))), (date(2026, 3, 25), Some(april))];
    assert_eq!(of(&[late, out, again], LATE), twice);
    assert_eq!(of(&[("2025-11-08T12:00:00", "carried=out")], LATE), [(tenth, Some(april))], "it was not in yet");
}

#[test]
fn without_a_written_day_a_hive_goes_in_when_it_is_noted() {
    let text = text("indoors = \"Cellar\"\n", &[("2025-12-01T12:00:00", "carried=into cellar")]).replacen(
        "in = 2025-11-10\nout = 2026-04-01\n",
        "",
        1,
    );
    let (yard, advisories) = read(&text, "yard.toml").unwrap();
    assert_eq!(days(&alder(&yard, date(2025, 11, 30))), []);
    assert_eq!(days(&alder(&yard, LATE)), [(date(2025, 12, 1), None)]);
    assert!(advisories.iter().any(|one| one.field == "hive \"Alder\"" && said(&one.text).contains("no day in")));
}

#[test]
fn what_was_snowed_up_or_iced_is_clear_once_it_is_carried_in() {
    let seen =
        [("2025-11-08T12:00:00", "entrance=iced; upper=blocked"), ("2025-11-09T12:00:00", "carried=into Cellar")];
    let yard = yard(&seen);
    let colony = yard.colonies[0].id;
    let noted = yard.openings_noted(colony, yard.notes.last().unwrap().at.max(yard.notes[0].at));
    assert_eq!(noted.entrance.unwrap().state, snowhum_apiary::OpeningState::Clear);
}

#[test]
fn every_fault_of_a_room_names_file_line_field_and_what_would_be_right() {
    let indoors = "indoors = \"Cellar\"\n";
    for (from, to, field, right) in [
        ("temperature = \"2 to 6 C\"", "temperature = 4", "indoors \"Cellar\".temperature", "\"4 C\" or \"4 F\""),
        ("temperature = \"2 to 6 C\"", "temperature = \"4\"", "indoors \"Cellar\".temperature", "\"4 C\" or \"4 F\""),
        ("temperature = \"2 to 6 C\"", "temperature = \"60 C\"", "indoors \"Cellar\".temperature", "between -20 C"),
        ("temperature = \"2 to 6 C\"", "temperature = \"6 to 2 C\"", "indoors \"Cellar\".temperature", "coldest first"),
        ("temperature = \"2 to 6 C\"\n", "", "indoors \"Cellar\".temperature", "temperature = \"4 C\""),
        ("humidity = \"60 %\"", "humidity = \"600 %\"", "indoors \"Cellar\".humidity", "per cent"),
        ("humidity = \"60 %\"", "dark = \"yes\"", "indoors \"Cellar\".dark", "true or false"),
        ("humidity = \"60 %\"", "humdity = \"60 %\"", "indoors \"Cellar\".humdity", "did you mean \"humidity\"?"),
        ("humidity = \"60 %\"", "record_columns = \"x\"", "indoors \"Cellar\".record_columns", "record = "),
        ("out = 2026-04-01", "out = 2025-11-10", "indoors \"Cellar\".out", "after 2025-11-10"),
        ("out = 2026-04-01", "out = \"April\"", "indoors \"Cellar\".out", "2025-10-05"),
        (
            "in = 2025-11-10\nout = 2026-04-01",
            "in = 2024-11-10\nout = 2025-04-01",
            "indoors \"Cellar\".out",
            "mend the year",
        ),
        (
            "in = 2025-11-10\nout = 2026-04-01",
            "in = 2026-11-10\nout = 2027-04-01",
            "indoors \"Cellar\".in",
            "mend the year",
        ),
        (indoors, "indoors = \"Celar\"\n", "hive \"Alder\".indoors", "did you mean \"Cellar\"?"),
        (indoors, "in = 2025-11-10\n", "hive \"Alder\".in", "indoors = \"Cellar\""),
        (indoors, "indoors = \"Cellar\"\nout = 2025-11-01\n", "hive \"Alder\".out", "after 2025-11-10"),
        (
            "hive = \"Alder\"\nbees",
            "hive = \"Alder\"\nindoors = \"Cellar\"\nbees",
            "colony \"Alder\".indoors",
            "[[hive]]",
        ),
        ("carried=into Cellar", "carried=into Barn", "visit[28].seen.Alder \"carried=into Barn\"", "Cellar"),
        ("carried=into Cellar", "carried=home", "visit[28].seen.Alder \"carried=home\"", "carried=out"),
    ] {
        let whole = text(indoors, &[("2025-11-20T12:00:00", "carried=into Cellar")]);
        assert!(whole.contains(from), "{from}");
        let wrong = whole.replacen(from, to, 1);
        let found: Faults = read(&wrong, "yard.toml").expect_err(to);
        let fault = &found.faults[0];
        let is_visit = |field: &str| field.starts_with("visit[") && fault.field.starts_with("visit[");
        assert!(fault.field == field || is_visit(field), "{to}: {found}");
        assert!([&fault.problem, &fault.remedy].iter().any(|part| said(part).contains(right)), "{to}: {found}");
        let key = field.rsplit(['.', '[']).next().unwrap().split(' ').next().unwrap();
        let line = wrong.lines().nth(fault.line - 1).unwrap();
        let is_there = line.contains(key.trim_matches('"')) || line.starts_with("[[") || line.contains("carried");
        assert!(is_there, "{to}: line {} is {line}", fault.line);
        assert!(found.to_string().starts_with(&format!("yard.toml:{}: ", fault.line)), "{found}");
    }
}

#[test]
fn a_room_that_nothing_goes_into_is_spoken_of() {
    let (_, advisories) = read(&text("", &[]), "yard.toml").unwrap();
    assert!(
        advisories.iter().any(|one| one.field == "indoors \"Cellar\"" && said(&one.text).contains("no hive")),
        "{advisories:?}"
    );
}

#[test]
fn a_note_of_a_room_that_is_not_there_is_refused_with_what_there_is() {
    let note = |text: &str| Entry::read(text, &|_| None).unwrap();
    let with_cellar = yard(&[]);
    let id: ColonyId = with_cellar.colonies[0].id;
    assert!(with_cellar.check_entry(id, &note("carried=into cellar")).is_ok());
    assert_eq!(note("carried=out"), Entry::Act(Act::CarriedOut));
    let wrong = with_cellar.check_entry(id, &note("carried=into Celar")).unwrap_err();
    assert!(wrong.to_string().contains("\"Cellar\""), "{wrong}");
    let bare = read(demo_text(), "demo").unwrap().0;
    let wrong = bare.check_entry(id, &note("carried=into Cellar")).unwrap_err();
    assert!(wrong.to_string().contains("[[indoors]]"), "{wrong}");
}

#[test]
fn the_next_autumn_keeps_the_room_and_asks_for_new_days() {
    let yard = yard(&[("2025-11-20T12:00:00", "carried=into Cellar"), ("2026-03-20T12:00:00", "carried=out")]);
    let count =
        AutumnCount { name: "Alder".into(), bees: "8 frames".into(), food: "14 kg".into(), ..Default::default() };
    let next = yard.next_autumn(date(2026, 9, 10), std::slice::from_ref(&count), Bare::Refused).unwrap();
    assert_eq!(days(&alder(&next, date(2027, 5, 1))), []);
    let written =
        season_text(&text("indoors = \"Cellar\"\nin = 2025-11-12\n", &[]), "last.toml", &next, &[count]).unwrap();
    let again = read(&written, "next.toml").unwrap().0;
    assert_eq!(again.hives[0].indoors, next.hives[0].indoors);
    assert!(!written.contains("2025-11-1") && written.contains("indoors = \"Cellar\""), "{written}");
}

#[test]
fn a_yard_with_rooms_survives_json_and_one_without_is_written_as_before() {
    let yard = yard(&[("2025-11-20T12:00:00", "carried=into Cellar")]);
    let json = serde_json::to_string(&yard).unwrap();
    assert_eq!(serde_json::from_str::<Apiary>(&json).unwrap(), yard);
    let bare = serde_json::to_string(&read(demo_text(), "demo").unwrap().0).unwrap();
    assert!(!bare.contains("rooms") && !bare.contains("indoors"));
}
