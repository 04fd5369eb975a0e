//! Notes as keepers write them: `what=how`, several on a line with `;` between.

use super::Entry;
use super::act::{Act, ActKind};
use super::acts::written_act;
use super::sign::{
    DeadCount, DeadPlace, HEARD, HOLES, LISTENING, PLACES, PROBES, ProbePlace, SEEN, Seen, Sign, SignKind,
};
use super::vocabulary::word;
use crate::kinds::{Told, word_of};
use crate::nearest::{nearest, nearest_names, quoted};
use crate::shipped::same_name;
use crate::wrong::Wrong;
use crate::{ColonyId, OpeningState, QueenState};
use snowhum_say::{Message, fault, note_fault as say};
use snowhum_units::{Bare, Kelvin, Measured, Metre, number};
use std::sync::LazyLock;

/// Every word a note may begin with, with an example of each.
#[must_use]
pub fn sign_examples() -> &'static [(&'static str, &'static str)] {
    static EXAMPLES: LazyLock<Vec<(&str, &str)>> = LazyLock::new(|| {
        let signs = SignKind::ALL.iter().flat_map(|kind| kind.examples());
        let all = signs.chain(ActKind::ALL.iter().flat_map(|kind| kind.examples()));
        all.map(|example| (word_of(example), *example)).collect()
    });
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
            _ => Self::read_as(&Told { what: usual_word(&what), how, colony, bare }),
        }
    }

    fn read_as(told: &Told<'_>) -> Result<Self, Wrong> {
        match SignKind::of_word(told.what) {
            Some(kind) => kind.read(told).map(Self::Sign),
            None => ActKind::of_word(told.what).ok_or_else(|| unknown(told.what))?.read(told).map(Self::Act),
        }
    }

    /// The note as it would be written; `name` gives a colony's name.
    #[must_use]
    pub fn written(&self, name: &dyn Fn(ColonyId) -> String) -> String {
        match self {
            Self::Words(words) => format!("words={words}"),
            Self::Act(act) => written_act(act, name),
            Self::Sign(sign) => sign.written(),
        }
    }
}

/// The word under which a note is known, for one that keepers use as well.
fn usual_word(what: &str) -> &str {
    match what {
        "lower" | "lower entrance" => "entrance",
        "upper entrance" => "upper",
        "upper hole" => "hole",
        "weight" => "scale",
        "under lid" => "lid",
        "snow depth" => "snow",
        usual => usual,
    }
}

/// What hangs at the upper hole; how it stands, too, for a keeper who writes of the hole what belongs to `upper`.
pub(super) fn upper_hole(how: &str) -> Result<Sign, Wrong> {
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
    let mut words: Vec<&str> = sign_examples().iter().map(|(word, _)| *word).collect();
    words.dedup();
    let near = nearest_names(what, &words, OFFERED);
    let example = |word: &&str| sign_examples().iter().find(|(known, _)| known == word);
    let of = |word: &&str| example(word).map(|(_, example)| *example);
    say::examples(quoted(near.iter().filter_map(of)))
}

fn unknown(what: &str) -> Wrong {
    let near = nearest(what, sign_examples().iter().map(|(word, _)| *word));
    let example = near.and_then(|near| sign_examples().iter().find(|(word, _)| *word == near));
    let remedy = example.map_or_else(|| examples_near(what), |(_, example)| fault::did_you_mean(*example));
    Wrong::new(say::nothing(what), remedy)
}

pub(super) fn dead_bees(what: &str, how: &str) -> Result<Sign, Wrong> {
    if what == "hook" {
        return Ok(Sign::DeadBees { count: dead_count(how)?, place: DeadPlace::Hook });
    }
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

pub(super) fn hum(how: &str) -> Result<Sign, Wrong> {
    let (heard, by) = how.split_once(" by ").unwrap_or((how, "ear"));
    Ok(Sign::Hum { heard: word(heard.trim(), &HEARD)?, how: word(by.trim(), &LISTENING)? })
}

pub(super) fn seams(how: &str) -> Result<f64, Wrong> {
    const MOST: f64 = 30.0;
    let written = how.trim_end_matches("seams").trim_end_matches("seam").trim();
    let seams = number(written).ok().filter(|seams| (0.0..=MOST).contains(seams));
    seams.ok_or_else(|| Wrong::new(say::no_seams(how), say::seams_right()))
}

pub(super) fn inside(how: &str, bare: Bare) -> Result<Sign, Wrong> {
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
pub(super) fn snow_at_box(how: &str, bare: Bare) -> Result<Sign, Wrong> {
    const MOST_M: f64 = 5.0;
    let depth_m = Metre::read(how.trim_end_matches(" at the box").trim(), bare)?;
    let fits = (0.0..=MOST_M).contains(&depth_m.get());
    let wrong = || Wrong::new(fault::cannot_be(how), say::snow_right());
    fits.then_some(Sign::SnowAtBox { depth_m }).ok_or_else(wrong)
}

pub(super) fn bees_seen(how: &str) -> Result<Sign, Wrong> {
    let (seen, count) = how.split_once(',').map_or((how, None), |(seen, count)| (seen, Some(count)));
    if word(seen.trim(), &SEEN)? == Seen::No {
        return Err(Wrong::new(say::no_bees(), say::no_bees_right()));
    }
    Ok(Sign::ClusterSeen { seams: count.map(seams).transpose()? })
}

#[cfg(test)]
mod tests {
    use super::*;
    use snowhum_units::System;
    use uuid::Uuid;

    #[test]
    fn every_example_reads_as_its_kind_is_written_as_it_reads_and_survives_json() {
        let read = |text: &str| Entry::read(text, &|_| Some(ColonyId(Uuid::from_u128(7))));
        for (_, example) in sign_examples() {
            let entry = read(example).unwrap_or_else(|wrong| panic!("{example}: {wrong}"));
            let of_its_kind = match &entry {
                Entry::Sign(sign) => sign.kind().examples(),
                Entry::Act(act) => act.kind().examples(),
                Entry::Words(_) => &[],
            };
            assert!(of_its_kind.contains(example), "{example} is read as {entry:?}");
            let written = entry.written(&|_| "Alder".to_owned());
            assert_eq!(read(&written).as_ref(), Ok(&entry), "{example} -> {written}");
            let json = serde_json::to_string(&entry).unwrap();
            assert_eq!(serde_json::from_str::<Entry>(&json).unwrap(), entry, "{json}");
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
}
