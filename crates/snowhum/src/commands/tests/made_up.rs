//! Twenty yards that nobody keeps: from 44 to 65 degrees north, of one to six colonies in every kind of trouble.

use jiff::civil::{Date, date};
use snowhum_apiary::Apiary;

/// Days of the demo's winter, from its count to its flowers.
pub(super) const DEMO_DATES: [Date; 9] = [
    date(2025, 10, 5),
    date(2025, 10, 25),
    date(2025, 11, 15),
    date(2025, 12, 20),
    date(2026, 1, 15),
    date(2026, 2, 7),
    date(2026, 3, 10),
    date(2026, 4, 5),
    date(2026, 5, 10),
];

/// A colony: its kind of hive, frames of bees, stores, and what else its file says.
struct Kind {
    name: &'static str,
    hive: &'static str,
    frames: f64,
    stores: &'static str,
    more: &'static str,
    /// A day and what was noted on it.
    noted: Option<(&'static str, &'static str)>,
}

const fn kind(
    name: &'static str,
    hive: &'static str,
    frames: f64,
    stores: &'static str,
    more: &'static str,
    noted: Option<(&'static str, &'static str)>,
) -> Kind {
    Kind { name, hive, frames, stores, more, noted }
}

const TEN: &str = "Langstroth 10";
const FEW_MITES: &str = "mites = { found = 2, bees = 300, on = 2025-08-02 }";

const KINDS: [Kind; 12] = [
    kind("Light", TEN, 8.0, "6 kg", FEW_MITES, None),
    kind("Unseen", TEN, 8.0, "16 kg", "", None),
    kind("Mites", TEN, 9.0, "18 kg", "mites = { found = 24, bees = 300, on = 2025-08-02 }", None),
    kind("NoQueen", TEN, 7.0, "15 kg", "queen = \"none\"", None),
    kind("Late", TEN, 3.0, "7 kg", "late_mated = true", None),
    kind("Nucleus", "Langstroth nucleus", 4.0, "5 kg", FEW_MITES, None),
    kind("Dead", TEN, 6.0, "14 kg", "", Some(("2025-12-05", "colony=dead"))),
    kind("Blocked", TEN, 8.0, "18 kg", FEW_MITES, Some(("2025-11-10", "entrance=blocked"))),
    kind("Shut", TEN, 8.0, "18 kg", FEW_MITES, Some(("2025-11-11", "changed=entrance=none"))),
    kind("Drones", TEN, 7.0, "17 kg", FEW_MITES, Some(("2025-09-05", "queen=drone layer"))),
    kind("Silent", TEN, 6.0, "11 kg", "", Some(("2026-01-20", "hum=silent by ear; dead=0 on snow"))),
    kind("Good", TEN, 9.0, "26 kg", FEW_MITES, Some(("2025-10-06", "mites=1/300"))),
];

/// Latitude, longitude and time zone.
const PLACES: [(f64, f64, &str); 5] = [
    (44.0, -93.0, "America/Chicago"),
    (49.9, -97.1, "America/Winnipeg"),
    (52.4, 13.1, "Europe/Berlin"),
    (60.2, 25.0, "Europe/Helsinki"),
    (65.0, 25.5, "Europe/Helsinki"),
];

pub(super) fn yards() -> impl Iterator<Item = Apiary> {
    (0..20).map(|number| snowhum_apiary::read(&text(number), "made up").unwrap().0)
}

fn text(number: usize) -> String {
    let (latitude, longitude, zone) = PLACES[number % PLACES.len()];
    let mut text = format!(
        "[apiary]\nname = \"Yard {number}\"\ninvented = true\nas_of = 2025-08-05\n[site]\nlatitude = {latitude}\n\
         longitude = {longitude}\nelevation = \"120 m\"\nzone = \"{zone}\"\n"
    );
    let colonies: Vec<&Kind> = (0..1 + number % 6).map(|at| &KINDS[(5 * number + 7 * at) % KINDS.len()]).collect();
    for kind in &colonies {
        text += &format!(
            "[[colony]]\nname = \"{}\"\nkind = \"{}\"\nframes_of_bees = {:.1}\nstores = \"{}\"\n{}\n",
            kind.name, kind.hive, kind.frames, kind.stores, kind.more
        );
    }
    for kind in &colonies {
        if let Some((day, what)) = kind.noted {
            text += &format!("[[visit]]\nat = {day}T12:00:00\n[visit.seen]\n{} = \"{what}\"\n", kind.name);
        }
    }
    text
}
