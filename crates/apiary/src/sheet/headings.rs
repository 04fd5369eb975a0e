//! What a heading means, in plain English and by its unit.

use super::role::Role;

/// A role by the words of its headings, in small letters and the singular; the unit is told apart.
const HEADINGS: [(&str, &[&str]); 28] = [
    (
        "date",
        &[
            "date",
            "day",
            "when",
            "visit date",
            "date of visit",
            "visit",
            "visited",
            "inspection date",
            "date of inspection",
            "date and time",
            "date time",
            "datetime",
            "timestamp",
        ],
    ),
    ("time", &["time", "hour", "clock", "time of day", "at"]),
    (
        "hive",
        &[
            "hive",
            "colony",
            "name",
            "no",
            "nr",
            "number",
            "hive name",
            "colony name",
            "hive no",
            "hive nr",
            "hive number",
            "colony no",
            "colony nr",
            "colony number",
            "hive id",
            "colony id",
            "id",
            "which hive",
        ],
    ),
    (
        "air",
        &[
            "temperature",
            "temp",
            "air",
            "air temperature",
            "air temp",
            "outside temperature",
            "outside temp",
            "outdoor temperature",
            "outdoor temp",
            "outside",
            "outdoor",
            "ambient",
            "ambient temperature",
        ],
    ),
    ("wind", &["wind", "wind speed"]),
    ("snow", &["snow", "snow cover", "snow on ground", "snow on the ground"]),
    (
        "words",
        &[
            "note",
            "remark",
            "comment",
            "observation",
            "memo",
            "text",
            "description",
            "detail",
            "other",
            "diary",
            "free word",
            "word",
            "what was seen",
            "what i saw",
        ],
    ),
    (
        "dead",
        &[
            "dead",
            "dead bee",
            "dead bee count",
            "number of dead bee",
            "no of dead bee",
            "bee dead",
            "dead fall",
            "dead bee found",
            "dead found",
            "count of dead bee",
        ],
    ),
    ("hook", &["hook", "hooked out", "dead hooked out", "dead bee hooked out"]),
    (
        "scale",
        &["weight", "hive weight", "gross weight", "total weight", "scale", "scale weight", "weight of hive", "gross"],
    ),
    ("stores", &["store", "food", "food store", "store left", "food left", "honey store", "reserve", "winter store"]),
    ("side", &["side", "one side", "side weight"]),
    ("heft", &["heft", "hefted", "hefting"]),
    ("hum", &["hum", "humming", "sound", "buzz"]),
    ("poke", &["poke", "poked", "tap", "knock"]),
    ("flight", &["flight", "flying", "cleansing flight"]),
    ("pollen", &["pollen", "pollen carried", "pollen carried in"]),
    ("droppings", &["dropping"]),
    ("melt", &["melt", "melted snow", "snow melted"]),
    ("stripes", &["stripe"]),
    ("inside", &["inside temperature", "inside temp", "hive temperature", "hive temp", "temperature inside"]),
    ("humidity", &["inside humidity", "hive humidity", "humidity inside"]),
    ("mites", &["mite", "mite count", "varroa", "varroa count", "varroa mite", "mite wash", "mite found"]),
    ("fed", &["fed", "feed", "feeding", "feed given"]),
    ("treated", &["treated", "treatment", "treatment given"]),
    ("queen", &["queen", "queen state"]),
    ("entrance", &["entrance", "lower entrance"]),
    ("upper", &["upper", "upper entrance", "upper hole", "top entrance"]),
];

const MASS: &[(&str, &str)] =
    &[("kg", "kg"), ("kilo", "kg"), ("kilogram", "kg"), ("lb", "lb"), ("lbs", "lb"), ("pound", "lb"), ("g", "g")];
const WARMTH: &[(&str, &str)] = &[
    ("c", "C"),
    ("degc", "C"),
    ("deg c", "C"),
    ("celsius", "C"),
    ("f", "F"),
    ("degf", "F"),
    ("deg f", "F"),
    ("fahrenheit", "F"),
];
const SPEED: &[(&str, &str)] = &[
    ("m s", "m/s"),
    ("ms", "m/s"),
    ("mps", "m/s"),
    ("km h", "km/h"),
    ("kmh", "km/h"),
    ("kph", "km/h"),
    ("mph", "mph"),
    ("kn", "kn"),
    ("knot", "kn"),
];
const SHARE: &[(&str, &str)] =
    &[("%", "%"), ("percent", "%"), ("per cent", "%"), ("per 100 bee", "%"), ("per 100", "%")];
const PLACES: &[(&str, &str)] = &[
    ("on snow", "on snow"),
    ("snow", "on snow"),
    ("on ground", "on ground"),
    ("on the ground", "on ground"),
    ("ground", "on ground"),
    ("on board", "on board"),
    ("board", "on board"),
    ("on floor", "on board"),
    ("floor", "on board"),
    ("on tray", "on tray"),
    ("tray", "on tray"),
];
const ORDERS: &[(&str, &str)] = &[
    ("dd mm yyyy", "dmy"),
    ("dd mm yy", "dmy"),
    ("d m y", "dmy"),
    ("dmy", "dmy"),
    ("mm dd yyyy", "mdy"),
    ("mm dd yy", "mdy"),
    ("m d y", "mdy"),
    ("mdy", "mdy"),
    ("yyyy mm dd", ""),
];

/// What stands behind a role's words in a heading, and how a mapping has it.
fn tails(role: Role) -> &'static [(&'static str, &'static str)] {
    match role {
        Role::Date => ORDERS,
        Role::Air | Role::Noted("inside") => WARMTH,
        Role::Wind => SPEED,
        Role::Noted("scale" | "stores" | "side") => MASS,
        Role::Noted("mites" | "humidity") => SHARE,
        Role::Noted("dead") => PLACES,
        _ => &[],
    }
}

/// What a heading means, and what stands behind each bare number under it.
pub(super) fn meant(heading: &str) -> Option<(Role, Option<String>)> {
    let words = words(heading);
    (1..=words.len()).rev().find_map(|length| {
        let (named, tail) = (words[..length].join(" "), words[length..].join(" "));
        let (word, _) = HEADINGS.iter().find(|(_, headings)| headings.contains(&named.as_str()))?;
        let role = Role::of(word)?;
        if tail.is_empty() {
            return Some((role, None));
        }
        let known = tails(role).iter().find(|(written, _)| *written == tail).map(|(_, after)| (*after).to_owned());
        let after = known.or_else(|| of_sample(role, &tail))?;
        Some((role, Some(after).filter(|after| !after.is_empty())))
    })
}

/// Mites of a sample whose size stands in the heading: `per 300 bees`.
fn of_sample(role: Role, tail: &str) -> Option<String> {
    let plain = tail.trim_end_matches(" bee").trim_start_matches("per ").trim_start_matches("of ").trim();
    let bees: u32 = plain.parse().ok()?;
    (role == Role::Noted("mites")).then(|| format!("of {bees}"))
}

/// A heading's words in small letters and the singular, apart by signs and where a capital follows a small letter.
fn words(heading: &str) -> Vec<String> {
    let mut apart = String::new();
    let mut after_small = false;
    for letter in heading.chars() {
        let is_word = letter.is_alphanumeric();
        if after_small && letter.is_uppercase() || !is_word || letter == '%' {
            apart.push(' ');
        }
        if is_word || letter == '%' {
            apart.extend(letter.to_lowercase());
        }
        after_small = letter.is_lowercase();
    }
    apart.split_whitespace().map(singular).collect()
}

fn singular(word: &str) -> String {
    let is_plural = word.len() > 3 && !word.ends_with("ss") && !word.ends_with("us");
    word.strip_suffix('s').filter(|_| is_plural).unwrap_or(word).to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn headings_of_many_hands_are_told_by_word_and_unit() {
        for (heading, role, after) in [
            ("DATE", "date", ""),
            ("Inspection date:", "date", ""),
            ("Date (dd/mm/yyyy)", "date", "dmy"),
            ("Hive No.", "hive", ""),
            ("colony_name", "hive", ""),
            ("HiveWeight [kg]", "scale", "kg"),
            ("Weight, lbs", "scale", "lb"),
            ("Dead bees", "dead", ""),
            ("Dead bees (on board)", "dead", "on board"),
            ("Remarks", "words", ""),
            ("Temp °C", "air", "C"),
            ("Outside temperature (F)", "air", "F"),
            ("Hive temp C", "inside", "C"),
            ("wind km/h", "wind", "km/h"),
            ("Varroa %", "mites", "%"),
            ("Mites per 300 bees", "mites", "of 300"),
            ("Droppings", "droppings", ""),
            ("Food stores / kg", "stores", "kg"),
        ] {
            let (found, unit) = meant(heading).unwrap_or_else(|| panic!("{heading}"));
            assert_eq!((found.word(), unit.as_deref().unwrap_or_default()), (role, after), "{heading}");
        }
    }

    #[test]
    fn a_heading_that_says_something_else_is_not_taken_for_one_of_these() {
        for heading in ["", "Queen weight", "Weight of feed", "Datum", "Weight (stone)", "Honey yield", "Humidity", "%"]
        {
            assert_eq!(meant(heading), None, "{heading}");
        }
    }

    #[test]
    fn every_role_of_a_heading_is_one_that_a_mapping_can_name() {
        for (word, headings) in HEADINGS {
            assert!(Role::of(word).is_some_and(|role| role.word() == word), "{word}");
            for heading in headings {
                assert_eq!(meant(heading).map(|(role, _)| role.word()), Some(word), "{heading}");
            }
        }
    }
}
