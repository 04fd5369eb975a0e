//! A dead hive whose records answer, and its examination as it is kept. The yard is invented.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use jiff::civil::{Date, date};
use snowhum_advice::deadout::{
    DeadoutAnswer, FromRecords, Seen, SeenSign, deadout, from_records, is_stopped, kept_signs, last_life, to_keep,
};
use snowhum_apiary::{Apiary, Colony};
use snowhum_say::Tongue;

fn demo() -> Apiary {
    snowhum_apiary::read(snowhum_apiary::demo_text(), "demo").unwrap().0
}

fn colony<'a>(apiary: &'a Apiary, name: &str) -> &'a Colony {
    apiary.colonies.iter().find(|colony| colony.name == name).unwrap()
}

fn records(name: &str, until: Date) -> Vec<FromRecords> {
    let apiary = demo();
    from_records(&apiary, colony(&apiary, name), until).unwrap()
}

fn seen(records: &[FromRecords], sign: &str) -> Option<Seen> {
    records.iter().find(|record| record.sign == sign).map(|record| record.seen)
}

fn sign(name: &str, seen: Seen) -> SeenSign {
    SeenSign { name: name.to_owned(), seen }
}

fn chance(answer: &DeadoutAnswer, cause: &str) -> f64 {
    answer.causes.iter().find(|one| one.cause == cause).unwrap().p
}

#[test]
fn records_answer_what_they_hold_and_nothing_else() {
    let larch = records("Larch", date(2026, 3, 1));
    assert_eq!(seen(&larch, "mites-over-line"), Some(Seen::Yes));
    assert_eq!(seen(&larch, "crumpled-wings"), Some(Seen::FairlyYes));
    assert_eq!(seen(&larch, "small-cluster"), None, "nobody looked");
    assert_eq!(seen(&larch, "died-before-midwinter"), None, "between the last life and the find lies the turn");
    let alder = records("Alder", date(2026, 3, 30));
    assert_eq!(seen(&alder, "mites-over-line"), Some(Seen::No), "2 in 300 lies below the line with its whole range");
    assert_eq!(seen(&alder, "died-before-midwinter"), Some(Seen::No), "it flew in March");
    assert_eq!(seen(&records("Juniper", date(2026, 1, 1)), "mites-over-line"), Some(Seen::No));
    assert_eq!(seen(&records("Aspen", date(2026, 1, 1)), "weak-in-autumn"), Some(Seen::FairlyYes));
    assert_eq!(seen(&records("Aspen", date(2026, 1, 1)), "queen-trouble"), Some(Seen::FairlyYes));
    assert_eq!(seen(&records("Birch", date(2026, 1, 1)), "queen-trouble"), Some(Seen::FairlyYes));
}

#[test]
fn what_is_noted_after_the_day_is_not_known_on_it() {
    assert_eq!(seen(&records("Larch", date(2025, 10, 6)), "crumpled-wings"), None);
    let apiary = demo();
    let alder = colony(&apiary, "Alder");
    assert_eq!(last_life(&apiary, alder, date(2026, 3, 1)), None);
    assert_eq!(last_life(&apiary, alder, date(2026, 3, 30)), Some(date(2026, 3, 22)));
}

#[test]
fn what_the_keeper_looked_at_stands_before_the_records() {
    let records = records("Larch", date(2026, 3, 1));
    let with = deadout(&[sign("small-cluster", Seen::Yes)], &records, 1).unwrap();
    let without = deadout(&[sign("small-cluster", Seen::Yes)], &[], 1).unwrap();
    assert!(chance(&with, "mites") > chance(&without, "mites"));
    assert_eq!(with.from_records.len(), records.len());
    let told = deadout(&[sign("mites-over-line", Seen::No)], &records, 1).unwrap();
    assert!(told.from_records.iter().all(|record| record.sign != "mites-over-line"));
    let unseen = deadout(&[sign("mites-over-line", Seen::Unseen)], &records, 1).unwrap();
    assert_eq!(unseen.signs.iter().filter(|sign| sign.sign == "mites-over-line").count(), 1);
    assert!(unseen.from_records.iter().any(|record| record.sign == "mites-over-line"));
}

#[test]
fn foulbrood_stops_whatever_the_records_say() {
    let answer = deadout(&[sign("ropy-larvae", Seen::FairlyYes)], &records("Larch", date(2026, 3, 1)), 1).unwrap();
    assert!(answer.stop.is_some() && answer.causes.is_empty());
    assert!(answer.from_records.is_empty() && answer.after.is_empty() && answer.say.is_empty());
    let kept = to_keep(&answer).unwrap();
    assert!(is_stopped(&kept).unwrap() && kept.likeliest.is_none());
    assert_eq!(kept.to_string(), "ropy-larvae fairly yes");
}

#[test]
fn an_examination_is_kept_with_all_it_stood_on() {
    let signs = [sign("ropy-larvae", Seen::No), sign("small-cluster", Seen::Yes), sign("no-food", Seen::Unseen)];
    let answer = deadout(&signs, &records("Larch", date(2026, 3, 1)), 1).unwrap();
    let kept = to_keep(&answer).unwrap();
    let read: snowhum_apiary::Examined = kept.to_string().parse().unwrap();
    assert_eq!(read, kept);
    let again = deadout(&kept_signs(&read).unwrap(), &[], 1).unwrap();
    assert_eq!(again.causes, answer.causes, "the record alone gives the same answer");
    assert_eq!(kept.likeliest.unwrap().cause, "mites");
    assert!(to_keep(&deadout(&[], &[], 1).unwrap()).is_none(), "nothing told is nothing kept");
    let later: snowhum_apiary::Examined = "small-cluster yes, sign-of-a-later-time no".parse().unwrap();
    assert_eq!(kept_signs(&later).unwrap().len(), 1);
}

#[test]
fn what_is_often_misread_is_answered_where_it_is_seen() {
    for (name, words) in [
        ("wet-mould", "grows on bees that are dead"),
        ("hive-empty", "dwindled"),
        ("droppings-inside", "do not prove nosema"),
        ("heads-in-cells", "do not prove hunger"),
    ] {
        let said = |seen| Tongue::BRITISH.say_all(&deadout(&[sign(name, seen)], &[], 1).unwrap().say).join(" ");
        assert!(said(Seen::Yes).contains(words), "{name}");
        assert!(!said(Seen::No).contains(words), "{name}");
    }
}
