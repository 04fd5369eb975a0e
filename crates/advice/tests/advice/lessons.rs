//! Losses and lessons out of the records: what counts as lost, what is not guessed, how forecasts are scored. Yard and
//! notes are invented.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use jiff::civil::{Date, date};
use snowhum_advice::lessons::{ColonyLesson, Fate, Forecast, LessonsAnswer, LessonsQuestion, lessons};
use snowhum_apiary::{Apiary, Conditions, Entry, Mites, Note, NoteId, VisitId};
use snowhum_say::{Message, Tongue};
use uuid::Uuid;

const SPRING: Date = date(2026, 5, 21);
const AFTER: Date = date(2026, 6, 1);
const EXAMINED: &str = "colony=dead; examined=ropy-larvae no, small-cluster yes, food-near yes, likeliest mites 81";

fn demo() -> Apiary {
    snowhum_apiary::read(snowhum_apiary::demo_text(), "demo").unwrap().0
}

/// Adds a note of a colony at noon of a day.
fn note(apiary: &mut Apiary, name: &str, on: Date, line: &str) {
    let id = |wanted: &str| apiary.colonies.iter().find(|colony| colony.name == wanted).map(|colony| colony.id);
    let entries: Vec<Entry> =
        snowhum_apiary::split_entries(line).map(|entry| Entry::read(entry, &id).unwrap()).collect();
    let number = apiary.notes.len() as u128 + 1_000;
    let at = on.at(12, 0, 0, 0).in_tz("Europe/Helsinki").unwrap().timestamp();
    let colony = id(name).unwrap();
    let (id, visit) = (NoteId(Uuid::from_u128(number)), VisitId(Uuid::from_u128(number)));
    apiary.notes.push(Note { id, visit, colony, at, conditions: Conditions::default(), entries });
}

/// The demo's winter closed: Larch examined, all others as given.
fn closed(others: [(&str, &str); 4]) -> Apiary {
    let mut apiary = demo();
    note(&mut apiary, "Larch", date(2026, 3, 20), EXAMINED);
    for (name, line) in others {
        note(&mut apiary, name, date(2026, 5, 22), line);
    }
    apiary
}

const ALL_WELL: [(&str, &str); 4] = [
    ("Alder", "bees=seen; counted=alive"),
    ("Birch", "bees=seen; counted=alive"),
    ("Juniper", "bees=seen; counted=alive"),
    ("Aspen", "bees=seen; counted=alive"),
];

fn asked(apiary: &Apiary, as_of: Date, season: Option<i16>, forecasts: &[Forecast]) -> LessonsAnswer {
    let spring = SPRING;
    lessons(&LessonsQuestion { apiary, as_of, season, spring, added: 0, removed: 0, forecasts }).unwrap()
}

fn of<'a>(answer: &'a LessonsAnswer, name: &str) -> &'a ColonyLesson {
    answer.colonies.iter().find(|colony| colony.colony == name).unwrap()
}

fn said(message: &Message) -> String {
    Tongue::BRITISH.say(message)
}

#[test]
fn what_is_not_told_is_not_guessed() {
    let answer = asked(&demo(), date(2026, 4, 10), None, &[]);
    assert!(!answer.over && answer.losses.is_none() && answer.forecast.is_none());
    assert_eq!((answer.so_far.at_risk, answer.so_far.lost, answer.so_far.not_told), (5, 1, 4));
    let open = said(&answer.say[0]);
    assert!(open.contains("between 1 and 5 of 5"), "{open}");
    assert_eq!(of(&answer, "Birch").fate, Fate::NotTold);
    assert!(said(&of(&answer, "Birch").line).contains("last seen living on 29 March"));
    let early = asked(&demo(), date(2026, 2, 1), None, &[]);
    assert_eq!(early.so_far.lost, 0, "what is noted later is not known yet");
}

#[test]
fn a_dead_colony_examined_and_recorded_appears_in_the_losses_with_its_lesson() {
    let answer = asked(&closed(ALL_WELL), AFTER, Some(2025), &[]);
    assert!(answer.over);
    let yard = answer.losses.as_ref().unwrap().yard.as_ref().unwrap();
    assert_eq!((yard.lost, yard.at_risk, yard.dead), (1, 5, 1));
    // 1 of 5: Wilson 4 to 62, as worked out outside.
    assert!((yard.luck_wilson.low - 0.036).abs() < 0.001 && (yard.luck_wilson.high - 0.624).abs() < 0.001);
    assert_eq!(answer.costs.colonies_money, 180.0);
    // The log's 5 kg of fondant at 3.5 a kilogram.
    assert_eq!(answer.costs.feed_money, 17.5);
    let larch = of(&answer, "Larch");
    assert_eq!((larch.fate, larch.examined.as_ref().unwrap().of_100), (Fate::Dead, Some(81)));
    assert_eq!(larch.on, Some(date(2026, 2, 8)), "found dead in February, examined in March");
    let first = larch.first.as_ref().unwrap();
    assert_eq!((first.on, said(&first.what).as_str()), (date(2025, 9, 8), "24 mites in 300 bees"));
    assert!(said(larch.next.as_ref().unwrap()).starts_with("mites first"));
    assert!(of(&answer, "Alder").first.is_none(), "of one that lived well nothing is told");
    let winter = &answer.winters[0];
    assert_eq!((winter.worst_mites.as_ref().unwrap().colony.as_str(), winter.treated), ("Larch", 5));
    assert_eq!(winter.coldest.unwrap().air_c, -24.0);
    let line = |asks: &str| {
        answer.survey.iter().find(|line| said(&line.asks).starts_with(asks)).unwrap().answer.as_ref().map(said)
    };
    assert_eq!(line("Of the dead: dead with food"), Some("1".to_owned()));
    assert_eq!(line("Known lost by 1 April"), Some("1".to_owned()));
    assert_eq!(line("Queens of this year"), Some("2 of 5".to_owned()));
}

#[test]
fn only_what_the_surveys_call_lost_is_lost() {
    let apiary = closed([
        ("Alder", "bees=seen; counted=weak"),
        ("Birch", "bees=seen; counted=queen failed"),
        ("Juniper", "counted=sold"),
        ("Aspen", "united=Alder"),
    ]);
    let answer = asked(&apiary, AFTER, None, &[]);
    let yard = answer.losses.as_ref().unwrap().yard.as_ref().unwrap();
    assert_eq!((yard.at_risk, yard.lost, yard.queen_failed, yard.weak), (3, 2, 1, 1));
    assert!(said(of(&answer, "Birch").next.as_ref().unwrap()).contains("requeen"));
    let weak = closed([ALL_WELL[0], ALL_WELL[1], ALL_WELL[2], ("Aspen", "bees=seen; counted=weak")]);
    let answer = asked(&weak, AFTER, None, &[]);
    assert_eq!(said(&of(&answer, "Aspen").first.as_ref().unwrap().what), "6000 bees in autumn");
    let taken = closed([("Alder", "counted=disaster"), ALL_WELL[1], ALL_WELL[2], ALL_WELL[3]]);
    assert_eq!(asked(&taken, AFTER, None, &[]).losses.unwrap().yard.unwrap().disaster, 1);
}

#[test]
fn living_bees_seen_take_a_verdict_back_and_flights_count_once_winter_is_over() {
    let mut apiary = demo();
    note(&mut apiary, "Larch", date(2026, 3, 1), "bees=seen");
    assert_eq!(of(&asked(&apiary, AFTER, None, &[]), "Larch").fate, Fate::NotTold);
    note(&mut apiary, "Larch", date(2026, 5, 25), "flight=well");
    assert_eq!(of(&asked(&apiary, AFTER, None, &[]), "Larch").fate, Fate::Alive);
    note(&mut apiary, "Larch", date(2026, 5, 26), "counted=weak");
    note(&mut apiary, "Larch", date(2026, 5, 27), "flight=well");
    assert_eq!(of(&asked(&apiary, AFTER, None, &[]), "Larch").fate, Fate::Weak, "a flight does not undo a count");
}

#[test]
fn living_is_no_proof_of_few_mites() {
    let mut apiary = closed(ALL_WELL);
    apiary.colonies[0].mites = Mites::NotCounted;
    apiary.colonies[1].mites = Mites::Counted { found: 12, bees: 300, on: date(2025, 8, 28) };
    let answer = asked(&apiary, AFTER, None, &[]);
    assert!(said(of(&answer, "Alder").next.as_ref().unwrap()).contains("never counted"));
    assert!(said(of(&answer, "Birch").next.as_ref().unwrap()).contains("12 mites in 300 bees"));
    assert!(of(&answer, "Juniper").next.is_none());
    assert!(answer.say.iter().any(|say| said(say).contains("no proof of few mites")));
}

#[test]
fn foulbrood_leaves_no_other_lesson() {
    let mut apiary = demo();
    note(&mut apiary, "Larch", date(2026, 3, 20), "examined=ropy-larvae yes");
    let answer = asked(&apiary, AFTER, None, &[]);
    let larch = of(&answer, "Larch");
    assert_eq!((larch.fate, larch.examined.as_ref().unwrap().stopped), (Fate::Dead, true));
    let line = said(&larch.line);
    assert!(line.contains("authority") && !line.contains("mites"), "{line}");
}

#[test]
fn the_next_autumn_remembers() {
    let mut apiary = closed(ALL_WELL);
    apiary.as_of = date(2026, 10, 4);
    note(&mut apiary, "Larch", date(2026, 11, 1), "hum=heard by ear");
    let answer = asked(&apiary, date(2026, 11, 2), None, &[]);
    assert_eq!(answer.season.name, "2026–27");
    let remember = said(&answer.remember[0]);
    assert!(remember.contains("Larch, winter 2025–26") && remember.contains("mites first"), "{remember}");
    assert_eq!(answer.winters.len(), 2);
    assert_eq!((answer.winters[1].lost, answer.winters[1].counted), (1, false));
    let before = asked(&apiary, date(2026, 11, 2), Some(2025), &[]);
    assert_eq!(before.losses.unwrap().yard.unwrap().lost, 1);
}

#[test]
fn a_winter_in_the_south_lies_within_its_year() {
    let mut apiary = demo();
    apiary.site.latitude = snowhum_units::Degree::new(-42.0);
    apiary.as_of = date(2026, 4, 4);
    apiary.notes.clear();
    let question = LessonsQuestion {
        apiary: &apiary,
        as_of: date(2026, 8, 1),
        season: None,
        spring: date(2026, 9, 20),
        added: 0,
        removed: 0,
        forecasts: &[],
    };
    let answer = lessons(&question).unwrap();
    assert_eq!((answer.season.name.as_str(), answer.season.end), ("2026", date(2026, 9, 20)));
    assert_eq!(answer.season.fixed_end, date(2026, 10, 1));
    assert!(!answer.over);
}

/// Chances and outcomes, scored outside by a script that counts out all 32 winters.
const FORETOLD: [(&str, f64); 5] = [("Alder", 0.9), ("Birch", 0.8), ("Larch", 0.3), ("Juniper", 0.95), ("Aspen", 0.6)];

fn foretold() -> Vec<Forecast> {
    FORETOLD.map(|(colony, alive)| Forecast { colony: colony.to_owned(), alive }).to_vec()
}

#[test]
fn forecasts_are_scored_against_the_base_rate() {
    let apiary = closed([ALL_WELL[0], ALL_WELL[1], ALL_WELL[2], ("Aspen", "colony=dead")]);
    let answer = asked(&apiary, AFTER, None, &foretold());
    let score = answer.forecast.unwrap();
    for (got, want) in [
        (score.log_score, 0.331),
        (score.base_log_score, 0.778),
        (score.brier, 0.101),
        (score.base_brier, 0.28),
        (score.log_score_if_right[0], 0.249),
        (score.log_score_if_right[1], 0.939),
    ] {
        assert!((got - want).abs() < 0.0011, "{got} is not {want}");
    }
    assert_eq!(score.hives_needed, Some(30));
    let helped: Vec<&str> = score.colonies.iter().filter(|one| one.helped).map(|one| one.colony.as_str()).collect();
    assert_eq!(helped, ["Juniper"], "fed in February, after the forecast");
    assert!(score.say.iter().any(|say| said(say).starts_with("Fed or dressed since that day: Juniper.")));
    assert!(score.say.iter().any(|say| said(say).starts_with("Five hives cannot tell a good forecast from luck")));
}

#[test]
fn a_forecast_that_failed_is_said_to_have_failed() {
    let sure: Vec<Forecast> =
        FORETOLD.iter().map(|(colony, _)| Forecast { colony: (*colony).to_owned(), alive: 0.99 }).collect();
    let dead = ["Alder", "Birch", "Juniper", "Aspen"].map(|name| (name, "colony=dead"));
    let score = asked(&closed(dead), AFTER, None, &sure).forecast.unwrap();
    assert!(score.log_score > score.base_log_score && score.log_score > score.log_score_if_right[1]);
    assert!(said(&score.say[0]).starts_with("The base rate was less surprised"));
    assert!(said(&score.say[1]).contains("with reserve"));
}

#[test]
fn nothing_is_scored_until_every_colony_is_told() {
    let mut apiary = closed(ALL_WELL);
    apiary.notes.pop();
    let answer = asked(&apiary, AFTER, None, &foretold());
    assert!(answer.forecast.is_none() && !answer.can_be_scored());
    assert!(asked(&closed(ALL_WELL), date(2026, 5, 1), None, &foretold()).forecast.is_none());
    let left = closed([("Alder", "counted=sold"), ALL_WELL[1], ALL_WELL[2], ("Aspen", "counted=disaster")]);
    let score = asked(&left, AFTER, None, &foretold()).forecast.unwrap();
    assert_eq!(score.colonies.len(), 3, "those that left, and disasters, are not scored");
}

#[test]
fn numbers_beyond_any_yard_are_counted_or_refused_and_never_wrap() {
    let apiary = closed(ALL_WELL);
    for (added, removed) in [(u32::MAX, 0), (0, u32::MAX), (u32::MAX, u32::MAX)] {
        let (as_of, spring) = (AFTER, SPRING);
        let asked = LessonsQuestion { apiary: &apiary, as_of, season: None, spring, added, removed, forecasts: &[] };
        if let Ok(answer) = lessons(&asked) {
            assert!(answer.losses.is_none(), "{added} {removed}: {:?}", answer.so_far);
        }
    }
}

/// The latest winter as the yard's background is learnt from it: at risk, lost, of them without a cause.
fn unnamed(apiary: &Apiary, as_of: Date) -> Option<(u32, u32, u32)> {
    let winter = asked(apiary, as_of, None, &[]).winters[0].unnamed?;
    Some((winter.at_risk, winter.lost, winter.cause_not_told))
}

#[test]
fn the_background_is_learnt_from_deaths_that_nothing_named_explains() {
    let mut apiary = closed(ALL_WELL);
    assert_eq!(unnamed(&apiary, AFTER), Some((4, 0, 0)), "Larch died of mites");
    assert_eq!(unnamed(&apiary, date(2026, 5, 1)), None, "the winter is not over");
    let like = "colony=dead; examined=small-cluster yes, food-near yes, likeliest";
    for (likeliest, want) in [("small 60", (5, 1, 0)), ("isolation 60", (4, 0, 0)), ("queen 60", (4, 0, 0))] {
        note(&mut apiary, "Larch", date(2026, 5, 23), &format!("{like} {likeliest}"));
        assert_eq!(unnamed(&apiary, AFTER), Some(want), "{likeliest}");
    }
    note(&mut apiary, "Larch", date(2026, 5, 24), "examined=ropy-larvae yes");
    assert_eq!(unnamed(&apiary, AFTER), Some((4, 0, 0)), "foulbrood is named");
    let gone =
        [("Alder", "counted=disaster"), ("Birch", "counted=queen failed"), ("Juniper", "colony=dead"), ALL_WELL[3]];
    assert_eq!(unnamed(&closed(gone), AFTER), Some((2, 1, 1)), "a dead one without a cause counts");
    let mut open = closed(ALL_WELL);
    open.notes.pop();
    assert_eq!(unnamed(&open, AFTER), None, "one is not told");
}

#[test]
fn every_winter_told_teaches_the_background_and_an_open_one_does_not() {
    let mut apiary = closed([("Alder", "colony=dead"), ALL_WELL[1], ALL_WELL[2], ALL_WELL[3]]);
    apiary.as_of = date(2026, 10, 4);
    note(&mut apiary, "Larch", date(2026, 11, 1), "hum=heard by ear");
    let told = asked(&apiary, date(2026, 11, 2), None, &[]).background;
    assert_eq!((told.winters, told.together.at_risk, told.together.lost), (1, 4, 1));
    assert!(told.own_yard.p50 > told.any_yard.p50 && told.yard_effect.mean > 0.0);
    let said = snowhum_say::Tongue::BRITISH.say_all(&told.say);
    assert!(said[0].contains("1 of 4 lost so") && said[2].contains("no cause for 1 of the 1"), "{said:?}");
    let winters = snowhum_advice::lessons::own_winters(&apiary, date(2026, 11, 2), SPRING);
    assert_eq!(snowhum_advice::sums::losses::background(&winters).unwrap(), told);
}
