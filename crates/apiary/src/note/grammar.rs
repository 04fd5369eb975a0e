//! Notes as keepers write them: `what=how`, several on a line with `;` between.

use super::Entry;
use super::act::Act;
use super::acts::{act, written_act};
use super::sign::{
    DeadCount, DeadPlace, DroppingsPlace, Flight, Listening, Poked, ProbePlace, Seen, Sign, UpperHoleSign,
};
use super::vocabulary::{name_of, percent, short, word};
use super::weighed::{weighing, written_weighing};
use crate::nearest::{nearest, nearest_names, quoted};
use crate::shipped::same_name;
use crate::wrong::Wrong;
use crate::{ColonyId, OpeningState, QueenState};
use snowhum_say::{Message, fault, note_fault as say};
use snowhum_units::{Bare, Kelvin, Measured, Metre, number};

/// What can be noted, each with an example.
const EXAMPLES: [(&str, &str); 51] = [
    ("dead", "dead=22 on snow"),
    ("hook", "hook=12"),
    ("entrance", "entrance=clear"),
    ("entrance", "entrance=drifted over"),
    ("upper", "upper=blocked"),
    ("hole", "hole=new rime"),
    ("hum", "hum=heard by ear"),
    ("poke", "poke=answered"),
    ("flight", "flight=well"),
    ("pollen", "pollen=yes"),
    ("droppings", "droppings=on snow"),
    ("melt", "melt=yes"),
    ("stripes", "stripes=5"),
    ("stores", "stores=8 kg ± 2 kg"),
    ("scale", "scale=46 kg"),
    ("lift", "lift=21 kg, 19 kg"),
    ("side", "side=17 kg"),
    ("heft", "heft=light"),
    ("inside", "inside=12 C under lid"),
    ("humidity", "humidity=75 %"),
    ("warm spot", "warm spot=yes"),
    ("lid", "lid=warm"),
    ("snow", "snow=45 cm"),
    ("bees", "bees=seen, 5 seams"),
    ("drones", "drones=yes"),
    ("queen", "queen=dead"),
    ("queen", "queen=laying workers"),
    ("larvae", "larvae=yes"),
    ("wings", "wings=yes"),
    ("robbers", "robbers=yes"),
    ("wasps", "wasps=yes"),
    ("bird", "bird=yes"),
    ("mouse", "mouse=yes"),
    ("damage", "damage=yes"),
    ("smell", "smell=yes"),
    ("colony", "colony=dead"),
    ("fed", "fed=5 kg fondant"),
    ("board", "board=3 kg candy with pollen, rim 50 mm, hole 40 mm"),
    ("board", "board=off"),
    ("board", "board=eaten up"),
    ("frames", "frames=3.6 kg from Alder"),
    ("changed", "changed=lid=50 mm foam"),
    ("treated", "treated=oxalic | product: as on its label | withdrawal: nil"),
    ("united", "united=Birch"),
    ("did", "did=brushed"),
    ("did", "did=swept"),
    ("carried", "carried=into Cellar"),
    ("carried", "carried=out"),
    ("examined", "examined=small-cluster yes, no-food no, likeliest mites 71"),
    ("counted", "counted=weak"),
    ("mites", "mites=14 of 300"),
];

const SEEN: [(&str, Seen); 4] = [("yes", Seen::Yes), ("no", Seen::No), ("seen", Seen::Yes), ("none", Seen::No)];
const PLACES: [(&str, DeadPlace); 5] = [
    ("snow", DeadPlace::Snow),
    ("ground", DeadPlace::Ground),
    ("board", DeadPlace::Board),
    ("tray", DeadPlace::Tray),
    ("guard", DeadPlace::Guard),
];
const HOLES: [(&str, UpperHoleSign); 5] = [
    ("new rime", UpperHoleSign::NewRime),
    ("rime", UpperHoleSign::Rime),
    ("damp", UpperHoleSign::Damp),
    ("dry", UpperHoleSign::Dry),
    ("no rime", UpperHoleSign::Dry),
];
const HEARD: [(&str, Seen); 2] = [("heard", Seen::Yes), ("silent", Seen::No)];
const FELT: [(&str, Seen); 2] = [("warm", Seen::Yes), ("cold", Seen::No)];
const LISTENING: [(&str, Listening); 3] =
    [("ear", Listening::Ear), ("tube", Listening::Tube), ("knock", Listening::Knock)];
const POKED: [(&str, Poked); 5] = [
    ("answered", Poked::Answered),
    ("silent", Poked::Silent),
    ("not tried", Poked::NotTried),
    ("a bee answered", Poked::Answered),
    ("no answer", Poked::Silent),
];
const FLIGHTS: [(&str, Flight); 4] =
    [("well", Flight::Well), ("thin", Flight::Thin), ("traffic", Flight::Traffic), ("none", Flight::None)];
const DROPPINGS: [(&str, DroppingsPlace); 3] =
    [("on snow", DroppingsPlace::Snow), ("on hive", DroppingsPlace::Hive), ("none", DroppingsPlace::None)];
const PROBES: [(&str, ProbePlace); 3] =
    [("under lid", ProbePlace::UnderLid), ("combs", ProbePlace::Combs), ("floor", ProbePlace::Floor)];
/// Every word a note may begin with, with an example of each.
#[must_use]
pub fn sign_examples() -> &'static [(&'static str, &'static str)] {
    &EXAMPLES
}

/// Splits a line at its `;`; words take the rest of the line, whatever they hold.
pub fn split_entries(line: &str) -> impl Iterator<Item = &str> {
    let words = line.match_indices("words").map(|(at, _)| at).find(|&at| begins_words(line, at)).unwrap_or(line.len());
    let (signs, words) = line.split_at(words);
    signs.split(';').chain(std::iter::once(words)).map(str::trim).filter(|entry| !entry.is_empty())
}

/// Whether an entry of words begins at this byte: at the start or after a `;`, and with its `=`.
fn begins_words(line: &str, at: usize) -> bool {
    let (before, after) = line.split_at(at);
    let opens = before.trim_end().chars().next_back().is_none_or(|last| last == ';');
    opens && after["words".len()..].trim_start().starts_with('=')
}

impl Entry {
    /// Reads one `what=how`; `colony` finds a colony by its name.
    ///
    /// ```
    /// use snowhum_apiary::{DeadCount, DeadPlace, Entry, Sign};
    /// let entry = Entry::read("dead=22 on snow", &|_| None).unwrap();
    /// let count = DeadCount::Counted(22);
    /// assert_eq!(entry, Entry::Sign(Sign::DeadBees { count, place: DeadPlace::Snow }));
    /// let wrong = Entry::read("hole=frosty", &|_| None).unwrap_err();
    /// assert!(wrong.to_string().contains("new rime"));
    /// ```
    ///
    /// # Errors
    /// When the text is no note, with what would be right.
    pub fn read(text: &str, colony: &dyn Fn(&str) -> Option<ColonyId>) -> Result<Self, Wrong> {
        Self::read_in(text, colony, Bare::Refused)
    }

    /// As [`Self::read`], with numbers without a unit as the keeper means them.
    ///
    /// # Errors
    /// When the text is no note, with what would be right.
    pub fn read_in(text: &str, colony: &dyn Fn(&str) -> Option<ColonyId>, bare: Bare) -> Result<Self, Wrong> {
        // An examination names every sign that was looked for.
        let longest = if text.trim_start().starts_with("examined") { 2_000 } else { 800 };
        if text.chars().count() > longest {
            return Err(Wrong::new(say::too_long(), fault::letters(longest)));
        }
        let Some((what, how)) = text.split_once('=') else {
            return Err(Wrong::new(fault::no_equals(text), say::or_words(examples_near(text), text)));
        };
        let (what, how) = (what.trim().to_lowercase(), how.trim());
        match what.as_str() {
            "words" => Ok(Self::Words(how.to_owned())),
            "queen" => queen(how),
            "fed" | "board" | "frames" | "changed" | "treated" | "united" | "did" | "carried" | "examined"
            | "counted" | "mites" => act(&what, how, colony, bare).map(Self::Act),
            _ => sign(&what, how, bare).map(Self::Sign),
        }
    }

    /// The note as it would be written; `name` gives a colony's name.
    #[must_use]
    pub fn written(&self, name: &dyn Fn(ColonyId) -> String) -> String {
        match self {
            Self::Words(words) => format!("words={words}"),
            Self::Act(act) => written_act(act, name),
            Self::Sign(sign) => written_sign(sign),
        }
    }
}

fn sign(what: &str, how: &str, bare: Bare) -> Result<Sign, Wrong> {
    let seen = || word(how, &SEEN);
    Ok(match what {
        "dead" => dead_bees(how)?,
        "hook" => Sign::DeadBees { count: dead_count(how)?, place: DeadPlace::Hook },
        "entrance" | "lower" | "lower entrance" => Sign::Entrance(word(how, &OpeningState::WORDS)?),
        "upper" | "upper entrance" => Sign::UpperEntrance(word(how, &OpeningState::WORDS)?),
        "hole" | "upper hole" => upper_hole(how)?,
        "hum" => hum(how)?,
        "poke" => Sign::Poke(word(how, &POKED)?),
        "flight" => Sign::Flight(word(how, &FLIGHTS)?),
        "pollen" => Sign::Pollen(seen()?),
        "droppings" => Sign::Droppings(word(how, &DROPPINGS)?),
        "melt" => Sign::MeltedSnow(seen()?),
        "stripes" => Sign::Stripes { seams: seams(how)? },
        "stores" | "scale" | "weight" | "lift" | "side" | "heft" => Sign::Weight(weighing(what, how, bare)?),
        "inside" => inside(how, bare)?,
        "humidity" => Sign::InsideHumidity { read: percent(how)? },
        "warm spot" => Sign::ThermalSpot(seen()?),
        "lid" | "under lid" => Sign::WarmUnderLid(word(how, &FELT)?),
        "snow" | "snow depth" => snow_at_box(how, bare)?,
        "bees" => bees_seen(how)?,
        "drones" => Sign::Drones(seen()?),
        "larvae" => Sign::LarvaeThrownOut(seen()?),
        "wings" => Sign::CrumpledWings(seen()?),
        "robbers" => Sign::Robbers(seen()?),
        "wasps" => Sign::Wasps(seen()?),
        "bird" => Sign::Bird(seen()?),
        "mouse" => Sign::Mouse(seen()?),
        "damage" => Sign::Damage(seen()?),
        "smell" => Sign::Smell(seen()?),
        "colony" => word(how, &[("dead", Sign::SeenDead)])?,
        _ => return Err(unknown(what)),
    })
}

/// What hangs at the upper hole; how it stands, too, for a keeper who writes of the hole what belongs to `upper`.
fn upper_hole(how: &str) -> Result<Sign, Wrong> {
    let stands = OpeningState::WORDS.iter().find(|(words, _)| same_name(words, how));
    stands.map_or_else(|| word(how, &HOLES).map(Sign::UpperHole), |(_, state)| Ok(Sign::UpperEntrance(*state)))
}

/// A dead queen on the board is a sign; how she was found to stand is told.
fn queen(how: &str) -> Result<Entry, Wrong> {
    let found = QueenState::WORDS.map(|(word, state)| (word, Entry::Act(Act::QueenFound(state))));
    let words: Vec<(&str, Entry)> = found.into_iter().chain([("dead", Entry::Sign(Sign::DeadQueen))]).collect();
    word(how, &words)
}

/// The three examples whose words are nearest to one that is not known.
fn examples_near(what: &str) -> Message {
    const OFFERED: usize = 3;
    let mut words: Vec<&str> = EXAMPLES.iter().map(|(word, _)| *word).collect();
    words.dedup();
    let near = nearest_names(what, &words, OFFERED);
    let of = |word: &&str| EXAMPLES.iter().find(|(known, _)| known == word).map(|(_, example)| *example);
    say::examples(quoted(near.iter().filter_map(of)))
}

fn unknown(what: &str) -> Wrong {
    let near = nearest(what, EXAMPLES.iter().map(|(word, _)| *word));
    let example = near.and_then(|near| EXAMPLES.iter().find(|(word, _)| *word == near));
    let remedy = example.map_or_else(|| examples_near(what), |(_, example)| fault::did_you_mean(*example));
    Wrong::new(say::nothing(what), remedy)
}

fn dead_bees(how: &str) -> Result<Sign, Wrong> {
    let (count, place) = how.rsplit_once(" on ").or_else(|| how.rsplit_once(" behind ")).unwrap_or((how, "snow"));
    let count = dead_count(count.trim())?;
    Ok(Sign::DeadBees { count, place: word(place.trim(), &PLACES)? })
}

fn dead_count(text: &str) -> Result<DeadCount, Wrong> {
    const MOST: u32 = 50_000;
    let wrong = || Wrong::new(say::no_dead(text), say::dead_right());
    let number = |text: &str| text.trim().parse::<u32>().ok().filter(|n| *n <= MOST);
    if same_name(text, "none") {
        return Ok(DeadCount::Counted(0));
    }
    if let Some(over) = text.strip_prefix("over ") {
        return number(over).map(|n| DeadCount::Band(n + 1, None)).ok_or_else(wrong);
    }
    if let Some((least, most)) = text.split_once('-') {
        let (least, most) = number(least).zip(number(most)).ok_or_else(wrong)?;
        return if least <= most { Ok(DeadCount::Band(least, Some(most))) } else { Err(wrong()) };
    }
    number(text).map(DeadCount::Counted).ok_or_else(wrong)
}

fn hum(how: &str) -> Result<Sign, Wrong> {
    let (heard, by) = how.split_once(" by ").unwrap_or((how, "ear"));
    Ok(Sign::Hum { heard: word(heard.trim(), &HEARD)?, how: word(by.trim(), &LISTENING)? })
}

fn seams(how: &str) -> Result<f64, Wrong> {
    const MOST: f64 = 30.0;
    let written = how.trim_end_matches("seams").trim_end_matches("seam").trim();
    let seams = number(written).ok().filter(|seams| (0.0..=MOST).contains(seams));
    seams.ok_or_else(|| Wrong::new(say::no_seams(how), say::seams_right()))
}

fn inside(how: &str, bare: Bare) -> Result<Sign, Wrong> {
    let place = PROBES.iter().find(|(words, _)| how.to_lowercase().ends_with(words));
    let (read, place) = match place {
        Some((words, place)) => (&how[..how.len() - words.len()], *place),
        None => (how, ProbePlace::UnderLid),
    };
    let read_k = Kelvin::read(read.trim().trim_end_matches(" at"), bare)?;
    if !(-60.0..=60.0).contains(&read_k.celsius()) {
        return Err(Wrong::new(fault::cannot_be(how), say::inside_right()));
    }
    Ok(Sign::InsideTemperature { read_k, place })
}

/// Depth of the snow against the box, over the ground.
fn snow_at_box(how: &str, bare: Bare) -> Result<Sign, Wrong> {
    const MOST_M: f64 = 5.0;
    let depth_m = Metre::read(how.trim_end_matches(" at the box").trim(), bare)?;
    let fits = (0.0..=MOST_M).contains(&depth_m.get());
    let wrong = || Wrong::new(fault::cannot_be(how), say::snow_right());
    fits.then_some(Sign::SnowAtBox { depth_m }).ok_or_else(wrong)
}

fn bees_seen(how: &str) -> Result<Sign, Wrong> {
    let (seen, count) = how.split_once(',').map_or((how, None), |(seen, count)| (seen, Some(count)));
    if word(seen.trim(), &SEEN)? == Seen::No {
        return Err(Wrong::new(say::no_bees(), say::no_bees_right()));
    }
    Ok(Sign::ClusterSeen { seams: count.map(seams).transpose()? })
}

fn written_sign(sign: &Sign) -> String {
    let seen = |what: &str, seen: &Seen| format!("{what}={}", name_of(seen, &SEEN));
    match sign {
        Sign::DeadBees { count, place } => {
            let count = match count.bounds() {
                (least, Some(most)) if least == most => least.to_string(),
                (least, Some(most)) => format!("{least}-{most}"),
                (least, None) => format!("over {}", least.saturating_sub(1)),
            };
            match place {
                DeadPlace::Hook => format!("hook={count}"),
                DeadPlace::Guard => format!("dead={count} behind guard"),
                lying => format!("dead={count} on {}", name_of(lying, &PLACES)),
            }
        }
        Sign::Entrance(state) => format!("entrance={}", state.written()),
        Sign::UpperEntrance(state) => format!("upper={}", state.written()),
        Sign::UpperHole(state) => format!("hole={}", name_of(state, &HOLES)),
        Sign::Hum { heard, how } => format!("hum={} by {}", name_of(heard, &HEARD), name_of(how, &LISTENING)),
        Sign::Poke(poked) => format!("poke={}", name_of(poked, &POKED)),
        Sign::Flight(flight) => format!("flight={}", name_of(flight, &FLIGHTS)),
        Sign::Pollen(yes) => seen("pollen", yes),
        Sign::Droppings(place) => format!("droppings={}", name_of(place, &DROPPINGS)),
        Sign::MeltedSnow(yes) => seen("melt", yes),
        Sign::Stripes { seams } => format!("stripes={}", short(*seams)),
        Sign::Weight(weighing) => written_weighing(weighing),
        Sign::InsideTemperature { read_k, place } => {
            format!("inside={} C {}", short(read_k.celsius()), name_of(place, &PROBES))
        }
        Sign::InsideHumidity { read } => format!("humidity={} %", short(100.0 * read.get())),
        Sign::ThermalSpot(yes) => seen("warm spot", yes),
        Sign::WarmUnderLid(warm) => format!("lid={}", name_of(warm, &FELT)),
        Sign::SnowAtBox { depth_m } => format!("snow={} cm", short(100.0 * depth_m.get())),
        Sign::ClusterSeen { seams: Some(seams) } => format!("bees=seen, {} seams", short(*seams)),
        Sign::ClusterSeen { seams: None } => "bees=seen".to_owned(),
        Sign::Drones(yes) => seen("drones", yes),
        Sign::DeadQueen => "queen=dead".to_owned(),
        Sign::LarvaeThrownOut(yes) => seen("larvae", yes),
        Sign::CrumpledWings(yes) => seen("wings", yes),
        Sign::Robbers(yes) => seen("robbers", yes),
        Sign::Wasps(yes) => seen("wasps", yes),
        Sign::Bird(yes) => seen("bird", yes),
        Sign::Mouse(yes) => seen("mouse", yes),
        Sign::Damage(yes) => seen("damage", yes),
        Sign::Smell(yes) => seen("smell", yes),
        Sign::SeenDead => "colony=dead".to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use snowhum_units::System;
    use uuid::Uuid;

    #[test]
    fn every_example_reads_and_is_written_as_it_reads() {
        let id = ColonyId(Uuid::from_u128(7));
        for (_, example) in EXAMPLES {
            let entry = Entry::read(example, &|_| Some(id)).unwrap_or_else(|wrong| panic!("{example}: {wrong}"));
            let written = entry.written(&|_| "Alder".to_owned());
            assert_eq!(Entry::read(&written, &|_| Some(id)), Ok(entry), "{example} -> {written}");
        }
    }

    #[test]
    fn words_take_the_rest_of_the_line() {
        let split = |line| split_entries(line).collect::<Vec<_>>();
        assert_eq!(split("hum=heard; dead=3 on snow;"), ["hum=heard", "dead=3 on snow"]);
        assert_eq!(split("hum=heard; words=one; two; words=three"), ["hum=heard", "words=one; two; words=three"]);
        assert_eq!(split("words = alone"), ["words = alone"]);
        assert!(split(" ; ").is_empty());
    }

    #[test]
    fn what_cannot_be_read_says_what_can() {
        for (text, expected) in [
            ("dead=many", "over 100"),
            ("hole=frosty", "new rime"),
            ("upper=shut", "the nearest known are"),
            ("poke=maybe", "not tried"),
            ("hook=some", "over 100"),
            ("hmu=heard", "hum=heard by ear"),
            ("fed=5 kg", "fondant"),
            ("stores=8", "\"8 kg\" or \"8 lb\""),
            ("lift=42,38", "42 kg, 38 kg"),
            ("fed=10 3:2 syrup", "\"10 kg\""),
            ("mites=3 % of 0", "14 of 300"),
            ("united=Nobody", "name of a colony"),
            ("lift=20 kg", "both"),
            ("stripes=99", "0 to 30"),
            ("inside=900 C", "-60 C"),
            ("carried=home", "carried=into Cellar"),
            ("all well", "words=all well"),
        ] {
            let wrong = Entry::read(text, &|_| None).unwrap_err();
            assert!(wrong.to_string().contains(expected), "{text}: {wrong}");
        }
    }

    #[test]
    fn a_bare_number_in_a_note_follows_the_keepers_units() {
        let read =
            |text: &str, system| Entry::read_in(text, &|_| None, Bare::In(system)).map_err(|wrong| wrong.to_string());
        for (bare, metric, us) in [
            ("stores=8 ± 1,5", "stores=8 kg ± 1.5 kg", "stores=8 lb ± 1.5 lb"),
            ("scale=46", "scale=46 kg", "scale=46 lb"),
            ("lift=42 38", "lift=42 kg, 38 kg", "lift=42 lb, 38 lb"),
            ("lift=42, 38", "lift=42 kg, 38 kg", "lift=42 lb, 38 lb"),
            ("lift=42,5, 38,25 inset 10", "lift=42.5 kg, 38.25 kg inset 10 %", "lift=42.5 lb, 38.25 lb inset 10 %"),
            ("side=17", "side=17 kg", "side=17 lb"),
            ("inside=12 under lid", "inside=12 C under lid", "inside=12 F under lid"),
            ("fed=5 fondant", "fed=5 kg fondant", "fed=5 lb fondant"),
        ] {
            assert_eq!(read(bare, System::Metric), read(metric, System::Metric), "{bare}");
            assert_eq!(read(bare, System::Us), read(us, System::Metric), "{bare}");
            assert!(Entry::read(bare, &|_| None).is_err(), "{bare}: nobody said whose units");
        }
    }

    #[test]
    fn mites_are_read_as_a_count_or_as_a_share() {
        for (text, found, bees) in [
            ("mites=14 of 300", 14, 300),
            ("mites=14/300", 14, 300),
            ("mites=3 %", 9, 300),
            ("mites=2,5%", 8, 300),
            ("mites=3 % of 200", 6, 200),
        ] {
            assert_eq!(
                Entry::read(text, &|_| None),
                Ok(Entry::Act(crate::Act::MitesCounted { found, bees })),
                "{text}"
            );
        }
    }

    #[test]
    fn notes_survive_json() {
        let id = ColonyId(Uuid::from_u128(7));
        for (_, example) in EXAMPLES {
            let entry = Entry::read(example, &|_| Some(id)).unwrap();
            let json = serde_json::to_string(&entry).unwrap();
            assert_eq!(serde_json::from_str::<Entry>(&json).unwrap(), entry, "{json}");
        }
    }
}
