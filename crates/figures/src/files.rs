//! The files of `data/` that figures stand in, as text.

macro_rules! files {
    ($($constant:ident $name:literal $title:literal)*) => {
        $(
            #[doc = concat!("`data/", $name, ".toml`: ", $title, ".")]
            pub const $constant: &str = include_str!(concat!("../../../data/", $name, ".toml"));
        )*
        /// Name, title and text of each.
        pub const ALL: &[(&str, &str, &str)] = &[$(($name, $title, $constant)),*];
    };
}

files! {
    WINTER_PARAMETERS "winter_parameters" "The winter model"
    WINTER_START "winter_start" "How a colony enters the winter model"
    WINTER_HOUR "winter_hour" "An hour and a day of the winter model"
    WATCH_PARAMETERS "watch_parameters" "What signs say"
    WATCH_LOOKS "watch_looks" "Looks and the days between them"
    NOW "now" "Words and lids"
    INDOORS "indoors" "Rooms that hives winter in"
    JOBS "jobs" "Jobs and dates"
    SPRING_STRENGTH "spring_strength" "Strength in spring"
    WEIGHING "weighing" "Weighing"
    EMPTY_HIVE "empty_hive" "The empty hive"
    MITES "mites" "Mites"
    EDGE_LOSSES "edge_losses" "Edges of the hive"
    OPENINGS "openings" "Openings"
    MATERIALS "materials" "Materials"
    FEEDS "feeds" "Feeds"
    FIT "fit" "Fit for winter"
    RULES_OF_THUMB "rules_of_thumb" "Rules of the trade"
    DEADOUT "deadout" "Dead colonies"
    LOSSES "losses" "Losses and lessons"
    WEATHER_GENERATOR "weather_generator" "How weather is made"
    WEATHER_LIMITS "weather_limits" "Weather read, made whole and judged"
    WIND "wind" "Wind at the hives"
    WEATHER_FILES "weather_files" "Places of weather files"
    LOOKING_AHEAD "looking_ahead" "How long answers look ahead and hold"
    CALIBRATION "calibration" "The model held against real winters"
    DRAWING "drawing" "Drawings"
    QUICK_START "quick_start" "The four quick facts"
}
