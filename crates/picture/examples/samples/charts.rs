//! Invented charts.

use snowhum_picture::*;
use snowhum_say::Tongue;
use snowhum_units::*;

/// Every chart with the name of its file.
pub(crate) fn all(tongue: Tongue) -> Vec<(&'static str, Plate)> {
    vec![
        ("food", FoodFan { tongue, ..food() }.plate()),
        ("dead-bees", DeadBeesFound { tongue, ..dead_bees() }.plate()),
        ("days", DayStrip { tongue, ..days() }.plate()),
        ("hundred", Hundred { tongue, ..hundred() }.plate()),
        ("windows", JobWindows { tongue, ..windows() }.plate()),
        ("scales", FigureScales { tongue, ..scales() }.plate()),
    ]
}

fn tick(day: i32, words: &str) -> Tick {
    Tick { day, words: words.into() }
}

fn months() -> Vec<Tick> {
    [(0, "Nov"), (30, "Dec"), (61, "Jan"), (92, "Feb"), (120, "Mar"), (151, "Apr")]
        .map(|(at, name)| tick(at, name))
        .into()
}

pub(crate) fn food() -> FoodFan {
    let day = |day: i32| {
        let t = f64::from(day - 24);
        let eaten = 0.021 * t + 0.000_42 * t * t;
        let spread = 0.5 + 0.006 * t;
        let left = [-1.28, -0.67, 0.0, 0.67, 1.28].map(|z: f64| Kilogram::new((13.0 - eaten + z * spread).max(0.0)));
        FoodDay { day, when: format!("day {day}"), left }
    };
    let weighing = |day, left, about| Weighing {
        day,
        when: format!("day {day}"),
        left: Kilogram::new(left),
        give_or_take: Kilogram::new(about),
    };
    FoodFan {
        title: "Food left in Juniper".into(),
        days: (24..=168).step_by(2).map(day).collect(),
        ticks: months(),
        horizon: Some(tick(159, "first flowers, most likely 9 April")),
        deadline: Some(tick(128, "feed by 9 March")),
        reserve: Some(Kilogram::new(4.0)),
        weighings: vec![weighing(0, 13.6, 0.8), weighing(24, 13.1, 0.8)],
        tongue: Tongue::BRITISH,
    }
}

pub(crate) fn dead_bees() -> DeadBeesFound {
    let count = |when: &str, found, [least, middle, most]: [u32; 3]| {
        let expected = Usual { least, middle, most };
        DeadBeesCount { when: when.into(), found, expected, verdict: expected.against(found, Some(found)) }
    };
    DeadBeesFound {
        title: "Dead bees found at Alder".into(),
        counts: vec![
            count("1 to 18 Nov", 210, [120, 260, 520]),
            count("19 Nov to 6 Dec", 95, [60, 150, 330]),
            count("7 to 20 Dec", 640, [50, 130, 300]),
            count("21 Dec to 4 Jan", 1_450, [50, 140, 320]),
            count("5 to 9 Jan", 2, [8, 30, 80]),
        ],
        tongue: Tongue::BRITISH,
    }
}

pub(crate) fn days() -> DayStrip {
    let day = |[day, date]: [&str; 2], [low, high, wind]: [f64; 3], flying, cold, windy| DayOutlook {
        day: day.into(),
        date: date.into(),
        when: format!("{day} {date} November"),
        low: Kelvin::from_celsius(low),
        high: Kelvin::from_celsius(high),
        wind: MetrePerSecond::new(wind),
        flying,
        cold,
        windy,
    };
    DayStrip {
        title: "The coming days".into(),
        days: vec![
            day(["Wed", "25"], [-6.0, 1.0, 3.0], Flying::No, Cold::Frost, Windy::Calm),
            day(["Thu", "26"], [-1.0, 8.0, 5.0], Flying::Perhaps, Cold::Frost, Windy::Breezy),
            day(["Fri", "27"], [3.0, 12.0, 2.0], Flying::Yes, Cold::Mild, Windy::Calm),
            day(["Sat", "28"], [2.0, 6.0, 17.0], Flying::No, Cold::Mild, Windy::Strong),
            day(["Sun", "29"], [-9.0, -3.0, 7.0], Flying::No, Cold::Frost, Windy::Breezy),
            day(["Mon", "30"], [-24.0, -15.0, 1.0], Flying::No, Cold::Hard, Windy::Calm),
            day(["Tue", "1"], [-27.0, -18.0, 1.0], Flying::No, Cold::Hard, Windy::Calm),
        ],
        tongue: Tongue::BRITISH,
    }
}

pub(crate) fn hundred() -> Hundred {
    let part = |fate, words: &str, share| HundredPart { fate, words: words.into(), share: Fraction::new(share) };
    Hundred {
        title: "Of 100 hives like Birch".into(),
        parts: vec![
            part(Fate::Lives, "are alive, fed and queenright", 0.778),
            part(Fate::Hungry, "live and are hungry", 0.081),
            part(Fate::Queenless, "live and have no queen", 0.04),
            part(Fate::Starved, "died of hunger", 0.051),
            part(Fate::Lost, "died otherwise", 0.05),
        ],
        tongue: Tongue::BRITISH,
    }
}

pub(crate) fn windows() -> JobWindows {
    let window = |name: &str, days, words: &str| Window { name: name.into(), days, words: words.into() };
    JobWindows {
        title: "Jobs and dates at this yard".into(),
        windows: vec![
            window("Mouse guards on", [-28, -14, 0], "4 October, usually 18 October, 1 November"),
            window("Last flight before the cold", [-6, 8, 24], "most likely 9 November; 1 in 10 before 26 October"),
            window("First cleansing flight", [98, 119, 138], "most likely 28 February; 1 in 10 before 7 February"),
            window("Look at food left", [110, 120, 130], "about 1 March"),
            window("First flowers", [140, 159, 172], "most likely 9 April; 1 in 10 before 21 March"),
        ],
        ticks: months(),
        today: Some(tick(24, "today, 25 November")),
        tongue: Tongue::BRITISH,
    }
}

pub(crate) fn scales() -> FigureScales {
    let scale = |name: &str, stands: &str, usual, figure, end| FigureScale {
        name: name.into(),
        stands: stands.into(),
        words: format!("{name}, invented"),
        usual,
        usual_words: "usual here, by an invented rule".into(),
        figure,
        end,
    };
    FigureScales {
        title: "Birch on its scales".into(),
        scales: vec![
            scale("Bees", "usual", Some([16.0, 24.0]), Some([14.0, 17.0, 21.0]), 30.0),
            scale("Mites", "perhaps over what is usual", Some([0.0, 2.0]), Some([0.7, 2.3, 5.5]), 6.0),
            scale("Queen", "not known", Some([0.0, 1.0]), None, 4.0),
            scale("Stores", "no usual range known here", None, Some([11.0, 14.0, 16.0]), 25.0),
        ],
        tongue: Tongue::BRITISH,
    }
}
