//! Hives that winter indoors: carried in and out on their own days, and left out of what is done outdoors alone.

use jiff::civil::Date;
use snowhum_apiary::{Colony, Stay};
use snowhum_say::{Message, jobs as say};
use snowhum_winter::Status;

use super::answer::{JobWindow, Kind, Trigger};
use super::ground::Ground;
use crate::cautions::Hazard;
use crate::indoors;

/// What is done at hives that stand outdoors in winter, and at no others.
const OUTDOORS_ALONE: [&str; 4] = ["winter-yard", "wrap", "melt-check", "unwrap"];

/// Which way a hive is carried.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Way {
    In,
    Out,
}

/// Hives carried the same way on the same day; on the weather's own where none is written.
struct Carried {
    room: String,
    on: Option<Date>,
    colonies: Vec<String>,
}

/// The windows of carrying hives one way: the weather's own where no hive is said to winter indoors; else one for each room and
/// day, but for what was noted as done.
pub(super) fn carried(ground: &Ground<'_>, way: Way, by_weather: JobWindow) -> Vec<JobWindow> {
    let apiary = ground.question.apiary;
    if apiary.colonies.iter().all(|colony| !winters_indoors(ground, colony)) {
        return vec![by_weather];
    }
    let mut all: Vec<Carried> = Vec::new();
    for (colony, (room, on)) in apiary.colonies.iter().filter_map(|colony| Some((colony, ahead(ground, way, colony)?)))
    {
        match all.iter_mut().find(|one| one.room == room && one.on == on) {
            Some(one) => one.colonies.push(colony.name.clone()),
            None => all.push(Carried { room, on, colonies: vec![colony.name.clone()] }),
        }
    }
    all.sort_by_key(|one| (one.on.is_none(), one.on));
    all.into_iter().enumerate().map(|(at, one)| window(ground, way, &by_weather, (at, one))).collect()
}

/// The room and the day on which a colony's hive is still to be carried; none where it was noted as done or is not to be.
fn ahead(ground: &Ground<'_>, way: Way, colony: &Colony) -> Option<(String, Option<Date>)> {
    let apiary = ground.question.apiary;
    let last = apiary.stays(colony, ground.question.as_of).pop();
    let of_stay = |stay: Stay| match way {
        Way::In => (!stay.is_noted).then_some((stay.room, Some(stay.from))),
        Way::Out => (!stay.is_out_noted).then_some((stay.room, stay.until)),
    };
    let planned = || {
        let plan = apiary.hive_of(colony)?.indoors.clone()?;
        Some((plan.room, if way == Way::In { plan.enters } else { plan.leaves }))
    };
    last.map_or_else(planned, of_stay)
}

fn window(ground: &Ground<'_>, way: Way, by_weather: &JobWindow, (at, carried): (usize, Carried)) -> JobWindow {
    let question = ground.question;
    let (what, id, dark) = match way {
        Way::In => (say::cellar_in_room(&carried.room), "cellar-in", say::cellar_in_dark()),
        Way::Out => (say::cellar_out_room(&carried.room), "cellar-out", say::cellar_out_dark()),
    };
    let id = if at == 0 { id.to_owned() } else { format!("{id}-{}", at + 1) };
    let room = question.apiary.room(&carried.room);
    let minds = room.map(|room| indoors::minds(room, question.as_of)).unwrap_or_default();
    let why =
        Message::sentences([by_weather.why.clone(), dark].into_iter().chain(minds.into_iter().map(say::sentence)));
    let window = JobWindow { id, what, why, colonies: carried.colonies, ..by_weather.clone() };
    let window = window.caution(&[Hazard::Carrying, Hazard::ClosedRoom]);
    let Some(on) = carried.on else { return window };
    let trigger = Trigger {
        words: say::own_day(),
        value: 0.0,
        figure: None,
        source: say::source_own_day(),
        status: Status::Judgement,
    };
    let weather = say::by_weather(by_weather.clone().told(question.as_of).when);
    JobWindow {
        kind: Kind::About,
        earliest: Some(on),
        usual: Some(on),
        latest: Some(on),
        share: None,
        trigger,
        other_school: Some(weather),
        ..window
    }
}

/// Leaves hives that winter indoors out of what is done outdoors alone.
pub(super) fn left_out(ground: &Ground<'_>, windows: &mut Vec<JobWindow>) {
    let colonies = &ground.question.apiary.colonies;
    let outdoors: Vec<&Colony> = colonies.iter().filter(|colony| !winters_indoors(ground, colony)).collect();
    if outdoors.len() == colonies.len() {
        return;
    }
    let is_of_them = |window: &JobWindow| OUTDOORS_ALONE.contains(&window.id.as_str());
    windows.retain(|window| !outdoors.is_empty() || !is_of_them(window));
    for window in windows.iter_mut().filter(|window| is_of_them(window)) {
        window.colonies = outdoors.iter().map(|colony| colony.name.clone()).collect();
    }
}

/// What is to be minded of the yard's rooms, in sentences.
pub(super) fn minds(ground: &Ground<'_>) -> Vec<Message> {
    let question = ground.question;
    let rooms = question.apiary.rooms.iter();
    rooms.flat_map(|room| indoors::minds(room, question.as_of)).map(say::sentence).collect()
}

/// Whether a colony's hive is to winter indoors, or was noted to.
fn winters_indoors(ground: &Ground<'_>, colony: &Colony) -> bool {
    let apiary = ground.question.apiary;
    let is_planned = apiary.hive_of(colony).is_some_and(|hive| hive.indoors.is_some());
    is_planned || !apiary.stays(colony, ground.question.as_of).is_empty()
}
