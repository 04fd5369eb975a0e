//! The files of `data/` that figures stand in, as text.

macro_rules! files {
    ($($constant:ident $name:literal)*) => {
        $(
            #[doc = concat!("`data/", $name, ".toml`.")]
            pub const $constant: &str = include_str!(concat!("../../../data/", $name, ".toml"));
        )*
        /// Name and text of each.
        pub const ALL: &[(&str, &str)] = &[$(($name, $constant)),*];
    };
}

files! {
    WINTER_PARAMETERS "winter_parameters"
    WINTER_START "winter_start"
    WINTER_HOUR "winter_hour"
    WATCH_PARAMETERS "watch_parameters"
    WATCH_LOOKS "watch_looks"
    NOW "now"
    INDOORS "indoors"
    JOBS "jobs"
    SPRING_STRENGTH "spring_strength"
    WEIGHING "weighing"
    EMPTY_HIVE "empty_hive"
    MITES "mites"
    EDGE_LOSSES "edge_losses"
    OPENINGS "openings"
    MATERIALS "materials"
    FEEDS "feeds"
    FIT "fit"
    RULES_OF_THUMB "rules_of_thumb"
    DEADOUT "deadout"
    LOSSES "losses"
    WEATHER_GENERATOR "weather_generator"
    WEATHER_LIMITS "weather_limits"
    WIND "wind"
    WEATHER_FILES "weather_files"
    LOOKING_AHEAD "looking_ahead"
    CALIBRATION "calibration"
    DRAWING "drawing"
    QUICK_START "quick_start"
}
