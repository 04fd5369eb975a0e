//! The guide has every picture, light enough to load on a phone, and says where it is.

use snowhum_browser::PICTURES;
use std::path::Path;

const HEAVIEST: u64 = 120_000;

#[test]
fn every_picture_of_the_list_is_there_and_the_guide_shows_it() {
    let guide = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../docs/user-guide");
    let text = std::fs::read_to_string(guide.join("README.md")).unwrap();
    for picture in PICTURES {
        let file = format!("{}.webp", picture.name);
        let size = std::fs::metadata(guide.join(&file)).map(|file| file.len()).unwrap_or_default();
        assert!((1_000..=HEAVIEST).contains(&size), "{file} has {size} bytes; `cargo xtask guide` makes it");
        assert!(text.contains(&format!("({file})")), "docs/user-guide/README.md does not show {file}");
    }
}

#[test]
fn no_picture_lies_about_that_no_list_names() {
    let guide = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../docs/user-guide");
    for file in std::fs::read_dir(guide).unwrap() {
        let name = file.unwrap().file_name().into_string().unwrap();
        let picture = name.strip_suffix(".webp");
        assert!(picture.is_none_or(|name| PICTURES.iter().any(|known| known.name == name)), "{name} is in no list");
    }
}
