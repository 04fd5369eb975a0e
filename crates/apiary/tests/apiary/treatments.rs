//! A treatment's record: what was written comes back, old records stay readable, what cannot be kept is refused.

use proptest::prelude::*;
use snowhum_apiary::{Act, Entry, TreatmentClass, TreatmentDetail, TreatmentNote, split_entries};
use std::collections::BTreeMap;

fn read(text: &str) -> Result<TreatmentNote, String> {
    match Entry::read(text, &|_| None) {
        Ok(Entry::Act(Act::Treated(note))) => Ok(note),
        Ok(other) => Err(format!("{other:?}")),
        Err(wrong) => Err(wrong.to_string()),
    }
}

fn class() -> impl Strategy<Value = TreatmentClass> {
    (0..TreatmentClass::WORDS.len()).prop_map(|at| TreatmentClass::WORDS[at].1)
}

fn details() -> impl Strategy<Value = BTreeMap<TreatmentDetail, String>> {
    let detail = (0..TreatmentDetail::WORDS.len()).prop_map(|at| TreatmentDetail::WORDS[at].1);
    let told =
        "[^|;\\p{Cc}\u{2028}]{1,80}".prop_map(|text| text.trim().to_owned()).prop_filter("empty", |t| !t.is_empty());
    proptest::collection::btree_map(detail, told, 0..7)
}

proptest! {
    #[test]
    fn what_is_written_reads_back_in_words_and_in_json(class in class(), details in details()) {
        let note = TreatmentNote { class, details };
        let entry = Entry::Act(Act::Treated(note.clone()));
        let written = entry.written(&|_| String::new());
        prop_assert_eq!(split_entries(&written).collect::<Vec<_>>(), vec![written.trim()]);
        prop_assert_eq!(read(&written), Ok(note));
        let json = serde_json::to_string(&entry).unwrap();
        prop_assert_eq!(serde_json::from_str::<Entry>(&json).unwrap(), entry);
    }

    #[test]
    fn no_text_makes_the_reader_panic(text in "\\PC{0,120}") {
        let _ = read(&format!("treated={text}"));
    }
}

#[test]
fn records_from_before_stay_as_they_were() {
    let old = r#"{"act":{"treated":"oxalic"}}"#;
    let entry: Entry = serde_json::from_str(old).unwrap();
    assert_eq!(entry, Entry::Act(Act::Treated(TreatmentClass::Oxalic.into())));
    assert_eq!(serde_json::to_string(&entry).unwrap(), old);
    assert_eq!(entry.written(&|_| String::new()), "treated=oxalic");
}

#[test]
fn what_cannot_be_kept_says_what_can() {
    for (text, expected) in [
        ("treated=magic", "oxalic"),
        ("treated=oxalic | Api", "\":\""),
        ("treated=oxalic | prodct: x", "product"),
        ("treated=oxalic | product:", "not noted"),
        ("treated=oxalic | product: a | product: b", "twice"),
    ] {
        let wrong = read(text).unwrap_err();
        assert!(wrong.contains(expected), "{text}: {wrong}");
    }
    assert!(read(&format!("treated=oxalic | proof: {}", "x".repeat(81))).unwrap_err().contains("at most 80"));
}
