//! The rest of an autumn look in a yard file: read where it is written, not known where it is not.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use snowhum_apiary::{Apiary, Autumn, LeftOn, QueenState, Trouble, demo_text, read};

fn with(line: &str) -> Apiary {
    let text = demo_text().replacen("queen_year = 2023\n", &format!("queen_year = 2023\n{line}\n"), 1);
    read(&text, "yard.toml").unwrap().0
}

fn birch(yard: &Apiary) -> &Autumn {
    &yard.colonies.iter().find(|colony| colony.name == "Birch").unwrap().autumn
}

#[test]
fn what_is_written_is_read_and_none_is_not_the_same_as_not_looked_at() {
    let lines =
        "counted_at = \"46 F\"\nqueen = \"drone layer\"\ntroubles = [\"robbed\", \"wasps\"]\nleft_on = \"none\"";
    let yard = with(lines);
    let found = birch(&yard);
    assert!((found.counted_at.unwrap().celsius() - 7.8).abs() < 0.05);
    assert_eq!(found.queen, Some(QueenState::DroneLayer));
    assert_eq!(found.troubles, Some(vec![Trouble::Robbed, Trouble::Wasps]));
    assert_eq!(found.left_on, Some(Vec::new()));
    assert_eq!(birch(&with("left_on = \"feeder\"")).left_on, Some(vec![LeftOn::Feeder]));
}

#[test]
fn a_file_and_a_record_from_before_these_keys_can_still_be_read() {
    let demo = read(demo_text(), "demo").unwrap().0;
    assert!(demo.colonies.iter().all(|colony| colony.autumn == Autumn::default()));
    let mut kept = serde_json::to_value(&demo).unwrap();
    for colony in kept["colonies"].as_array_mut().unwrap() {
        colony.as_object_mut().unwrap().remove("autumn").unwrap();
    }
    assert_eq!(serde_json::from_value::<Apiary>(kept).unwrap(), demo);
}
