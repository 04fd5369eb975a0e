//! The pages in a real browser, as a keeper walks them: the tests, and the list of the guide's pictures.

/// A picture of the guide in `docs/user-guide`.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Picture {
    /// Its file, without the ending.
    pub name: &'static str,
    /// The page it shows; `{Alder}` stands for the id of the colony of that name.
    pub page: &'static str,
    /// How it is looked at.
    pub look: Look,
}

/// Size and scheme of a picture.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Look {
    /// A desk by day.
    Desk,
    /// A phone by day.
    Phone,
    /// A phone by night.
    PhoneAtNight,
}

/// Every picture.
pub const PICTURES: &[Picture] = &[
    of("yard", "/", Look::Desk),
    of("yard-phone", "/", Look::PhoneAtNight),
    of("begin-phone", "/begin", Look::Phone),
    of("hive", "/hive/{Larch}", Look::Desk),
    of("hive-phone", "/hive/{Larch}", Look::Phone),
    of("round-phone", "/round", Look::Phone),
    of("pencil-sheet", "/round/sheet", Look::Desk),
    of("flight-day", "/flight", Look::Desk),
    of("jobs", "/jobs", Look::Desk),
    of("winter-set-up", "/setup?hive={Larch}&part=lid%3D50+mm+foam&part=wrap%3Dfelt+paper", Look::Desk),
    of("fit-for-winter", "/fit", Look::Desk),
    of("feeding", "/feed", Look::Desk),
    of("mites", "/mites", Look::Desk),
    of("weigh-it-phone", "/hive/{Larch}/weigh", Look::Phone),
    of("is-this-normal", "/normal?found=30&days=14&bees=12000&month=2&ground=snow", Look::Desk),
    of("spring", "/spring", Look::Desk),
    of("inside-the-cluster", "/inside?hive={Juniper}", Look::Desk),
    of("winter-told", "/hive/{Alder}/tell", Look::Desk),
    of("winter-told-yard-phone", "/tell", Look::Phone),
    of("hives-phone", "/hives", Look::Phone),
    of("change-phone", "/hive/{Alder}/change", Look::Phone),
    of("dead-colonies-phone", "/dead", Look::Phone),
    of("dead-colony", "/dead/{Larch}", Look::Desk),
    of("losses", "/losses", Look::Desk),
    of("treatments", "/treatments", Look::Desk),
    of("paper", "/paper", Look::Desk),
    of("paper-yard", "/paper/yard", Look::Desk),
    of("paper-cards", "/paper/cards", Look::Desk),
    of("paper-season", "/paper/season", Look::Desk),
    of("words", "/words", Look::Desk),
    of("source", "/source?find=wall", Look::Desk),
    of("import", "/import", Look::Desk),
    of("settings", "/settings", Look::Desk),
];

const fn of(name: &'static str, page: &'static str, look: Look) -> Picture {
    Picture { name, page, look }
}
