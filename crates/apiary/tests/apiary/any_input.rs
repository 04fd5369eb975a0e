//! No input makes the reader panic, and what it accepts is sound.

use crate::said;
use proptest::prelude::*;
use snowhum_apiary::{Apiary, SetupChange, demo_text, read, read_bytes, template_text};

fn sound(yard: &Apiary) {
    assert!(!yard.colonies.is_empty());
    for hive in &yard.hives {
        assert!(!hive.boxes.is_empty() && !hive.lid.is_empty());
        for opening in &hive.openings {
            assert!(opening.area.get().is_finite() && opening.area.get() >= 0.0 && opening.height.get().is_finite());
        }
    }
    for colony in &yard.colonies {
        assert!(yard.hive_of(colony).is_some());
        let (bees, food) = (colony.bees, colony.stores.total);
        assert!(0.0 < bees.p10 && bees.p10 <= bees.p50 && bees.p50 <= bees.p90 && bees.p90.is_finite());
        assert!(0.0 <= food.p10.get() && food.p10 <= food.p50 && food.p50 <= food.p90 && food.p90.get().is_finite());
        let place = colony.stores.place;
        assert!((place.touched + place.above + place.beside + place.far - 1.0).abs() < 1e-9);
        assert!(colony.frames_of_bees > 0.0 && colony.sealed_brood.is_none_or(|brood| brood.p10 <= brood.p90));
    }
}

fn try_bytes(bytes: &[u8]) {
    match read_bytes(bytes, "yard.toml") {
        Ok((yard, _)) => sound(&yard),
        Err(faults) => {
            assert!(!faults.faults.is_empty());
            let lines = 1 + bytes.iter().filter(|byte| **byte == b'\n').count();
            for fault in &faults.faults {
                assert!((1..=lines).contains(&fault.line), "{fault:?}");
                assert!(
                    !fault.field.is_empty() && !said(&fault.problem).is_empty() && !said(&fault.remedy).is_empty(),
                    "{fault:?}"
                );
            }
            assert!(!faults.to_string().is_empty());
        }
    }
}

/// Values a pen, a spreadsheet or a spiteful hand might put in place of another.
fn value() -> impl Strategy<Value = String> {
    prop_oneof![
        Just("nan".to_owned()),
        Just("-inf".to_owned()),
        Just("0".to_owned()),
        Just("-1".to_owned()),
        Just("1e308".to_owned()),
        Just("9223372036854775808".to_owned()),
        Just("true".to_owned()),
        Just("[]".to_owned()),
        Just("{}".to_owned()),
        Just("[[[]]]".to_owned()),
        Just("\"\"".to_owned()),
        Just("\"0 kg\"".to_owned()),
        Just("\"0 mm\"".to_owned()),
        Just("\"1 m\"".to_owned()),
        Just("\"own\"".to_owned()),
        Just("\"none\"".to_owned()),
        Just("2025-10-05".to_owned()),
        Just("0001-01-01".to_owned()),
        any::<f64>().prop_map(|number| format!("{number:?}")),
        any::<i64>().prop_map(|number| number.to_string()),
        "\"[^\"\\\\\\p{Cc}]{0,30}\"",
        "\"[0-9x. -]{0,8} ?(mm|kg|in|lb|deg|pine|ß|°)?\"",
    ]
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 300, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn arbitrary_bytes_never_panic(bytes in proptest::collection::vec(any::<u8>(), 0..400)) {
        try_bytes(&bytes);
    }

    #[test]
    fn bytes_struck_into_the_demo_never_panic(
        strikes in proptest::collection::vec((any::<prop::sample::Index>(), any::<u8>()), 1..6),
    ) {
        let mut bytes = demo_text().as_bytes().to_vec();
        for (at, byte) in strikes {
            let at = at.index(bytes.len());
            bytes[at] = byte;
        }
        try_bytes(&bytes);
    }

    #[test]
    fn any_value_in_any_place_never_panics(
        changes in proptest::collection::vec((any::<prop::sample::Index>(), value()), 1..4),
        template in any::<bool>(),
    ) {
        let text = if template { template_text() } else { demo_text() };
        let mut lines: Vec<String> = text.lines().map(str::to_owned).collect();
        for (at, value) in changes {
            let at = at.index(lines.len());
            if let Some((key, _)) = lines[at].clone().split_once('=').filter(|_| !lines[at].starts_with('#')) {
                lines[at] = format!("{key}= {value}");
            }
        }
        try_bytes(lines.join("\n").as_bytes());
    }

    #[test]
    fn lines_dropped_doubled_and_cut_never_panic(
        at in any::<prop::sample::Index>(), to in any::<prop::sample::Index>(), cut in any::<prop::sample::Index>(),
    ) {
        let mut lines: Vec<&str> = demo_text().lines().collect();
        let taken = lines.remove(at.index(lines.len()));
        lines.insert(to.index(lines.len()), taken);
        let text = lines.join("\n");
        try_bytes(text.as_bytes());
        try_bytes(&text.as_bytes()[..cut.index(text.len())]);
    }

    #[test]
    fn any_change_of_a_set_up_is_made_or_explained(
        what in "(lid|quilt|upper hole|wrap|floor|entrance|boxes|\\PC{0,8})", how in "(\\PC{0,20}|[0-9.x -]{0,6}(mm|in)? ?[a-zß]{0,8})",
    ) {
        let hives = read(demo_text(), "demo").unwrap().0.hives;
        match format!("{what}={how}").parse::<SetupChange>() {
            Ok(change) => {
                for hive in hives {
                    if let Ok(changed) = hive.with_change(&change) {
                        prop_assert!(!changed.boxes.is_empty() && !changed.lid.is_empty());
                    }
                }
            }
            Err(wrong) => prop_assert!(!said(&wrong.problem).is_empty() && !said(&wrong.remedy).is_empty()),
        }
    }
}
