//! Hostile words in every field go in and come out as they are.

use crate::house::{Folder, demo, note_of, now, run};
use jiff::Timestamp;
use snowhum_apiary::{Entry, Sign};
use snowhum_store::{Alert, Recorded, Store, Wrong};
use snowhum_units::Kelvin;
use std::fs;

const HOSTILE: [&str; 9] = [
    "'); DROP TABLE note_versions; --",
    "$1 ?1 :a @b \"x\" `y` [z] %s %n",
    "=cmd|' /C calc'!A0",
    "line\r\nbreak,\ttab;\"quote\"\\",
    "\u{0}\u{1}\u{7f}\u{1b}[2J\u{9b}",
    "\u{202e}right to left\u{feff}\u{2028}\u{fffd}",
    "<script>alert(1)</script>&amp;",
    "🐝👩‍🌾 Åsa Ø Ł 蜂 e\u{301}",
    "",
];

#[test]
fn hostile_words_go_in_and_come_out_as_they_are() {
    let folder = Folder::new("hostile");
    run(async {
        for (number, words) in (0_u128..).zip(HOSTILE) {
            let words = &format!("{words}{}", "x".repeat(number as usize * 1000));
            let store = Store::open(&folder.path().join(format!("{number}.db"))).await.unwrap();
            let mut yard = demo();
            yard.name.clone_from(words);
            yard.site.zone.clone_from(words);
            yard.money.currency.clone_from(words);
            yard.hives.iter_mut().for_each(|hive| hive.name.clone_from(words));
            yard.hives.iter_mut().for_each(|hive| hive.standard.clone_from(words));
            yard.colonies.iter_mut().for_each(|colony| colony.name.clone_from(words));
            yard.notes = vec![note_of(yard.colonies[0].id, number, words)];
            store.import_yard(&yard, now()).await.unwrap();
            assert_eq!(store.yard(yard.id).await.unwrap().as_ref(), Some(&yard));
            assert_eq!(store.yards().await.unwrap()[0].name, *words);

            let mut bytes = Vec::new();
            let plain = words.replace('\0', "");
            store.set(&plain, &plain).await.unwrap();
            let alert = Alert { yard: yard.id, colony: None, word: plain.clone(), at: Timestamp::UNIX_EPOCH };
            store.put_alert(&alert).await.unwrap();
            let edited = note_of(yard.colonies[0].id, number, "edited");
            store.put_note(&edited, Recorded::by(now(), &plain)).await.unwrap();
            store.export_json(&mut bytes).await.unwrap();
            let again = Store::in_memory().await.unwrap();
            again.import_json(&bytes[..]).await.unwrap();
            assert_eq!(again.setting(&plain).await.unwrap().as_ref(), Some(&plain));
            assert_eq!(again.alert_last(yard.id).await.unwrap(), [alert]);
            assert_eq!(again.versions(edited.id).await.unwrap(), store.versions(edited.id).await.unwrap());

            let sheets = folder.path().join(number.to_string());
            store.export_csv(&sheets).await.unwrap();
            let sheet = fs::read(sheets.join("note_versions.csv")).unwrap();
            let other = Store::in_memory().await.unwrap();
            let notes = snowhum_store::notes_in_csv(&sheet[..]).unwrap().unwrap();
            let notes: Vec<_> = notes.into_iter().map(|(_, note)| note).collect();
            other.import_notes(&notes, now()).await.unwrap();
            assert_eq!(other.versions(edited.id).await.unwrap()[0].note, edited);
        }
    });
}

#[test]
fn what_could_not_be_read_back_is_refused() {
    run(async {
        let store = Store::in_memory().await.unwrap();
        let mut yard = demo();
        let mut note = yard.notes[0].clone();
        note.conditions.air_k = Some(Kelvin::new(f64::NAN));
        let fault = store.put_note(&note, now()).await.unwrap_err();
        assert!(matches!(fault.wrong, Wrong::Unfit { .. }), "{fault}");
        note.conditions.air_k = None;
        note.entries = vec![Entry::Sign(Sign::Stripes { seams: f64::INFINITY })];
        assert!(store.put_note(&note, now()).await.is_err());
        yard.money.hour = f64::NAN;
        assert!(store.import_yard(&yard, now()).await.is_err());
        let fault = store.set("a\0b", "c").await.unwrap_err();
        assert!(fault.to_string().contains("NUL"), "{fault}");
        assert!(store.versions(note.id).await.unwrap().is_empty());
        assert!(store.yards().await.unwrap().is_empty());
    });
}
