//! What several answers hold: plain values with units in their names, the same for terminal, page, print and JSON.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_say::{Message, answer as say, words};
use snowhum_units::{KelvinDifference, Metre, Range, Usual};
use snowhum_weather::{Far, Provenance};
use snowhum_winter::Status;

use crate::looks_to::LooksTo;
use crate::statistics::rounded;

/// Weather a plan stands on.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct WeatherAnswer {
    /// One line.
    pub source: Message,
    /// Members of the ensemble for each colony.
    pub members: usize,
    /// Weather paths they walk.
    pub paths: usize,
    /// What to know about it.
    pub notes: Vec<Message>,
    /// Files whose place lies far from the yard.
    pub far: Vec<FarAnswer>,
}

/// Weather files of one place far from the yard.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct FarAnswer {
    /// Their names.
    pub files: String,
    /// From the yard.
    pub distance_km: f64,
    /// Above the yard; negative below.
    pub higher_m: f64,
    /// It, with what would be right.
    pub says: Message,
}

impl WeatherAnswer {
    /// From what a weather says of itself.
    #[must_use]
    pub fn new(provenance: &Provenance, members: usize, paths: usize) -> Self {
        let far = provenance.far.iter().map(FarAnswer::new).collect();
        Self { source: provenance.source.clone(), members, paths, notes: provenance.notes.clone(), far }
    }

    /// All that must be known of it, what lies far first.
    pub fn told(&self) -> impl Iterator<Item = &Message> {
        self.far.iter().map(|far| &far.says).chain(&self.notes)
    }
}

impl FarAnswer {
    /// From what was found of a file's place.
    #[must_use]
    pub fn new(far: &Far) -> Self {
        Self {
            files: far.files.clone(),
            distance_km: rounded(far.distance.get() / 1e3, 1),
            higher_m: rounded(far.higher.get(), 0),
            says: says(far),
        }
    }
}

fn says(far: &Far) -> Message {
    let warmer = far.warmer();
    let taken = match () {
        () if far.is_reckoned_for => say::far_reckoned(),
        () if far.is_off_in_height() => {
            let is_warmer = warmer > KelvinDifference::ZERO;
            say::far_warmer(KelvinDifference::new(warmer.get().abs()), is_warmer)
        }
        () => say::far_taken(),
    };
    let way = match () {
        () if !far.is_off_in_height() => "level",
        () if far.higher > Metre::ZERO => "higher",
        () => "lower",
    };
    let height = Metre::new(far.higher.get().abs());
    say::far(Far::AS_HIGH, far.distance, &far.files, height, Far::NEAR, taken, way)
}

/// How well a figure is founded, as it is told beside it.
#[must_use]
pub fn founded(status: Status) -> Message {
    match status {
        Status::Calibrated => words::calibrated(),
        Status::Published => words::published(),
        Status::CommonPractice => words::practice(),
        Status::FromMemory => words::from_memory(),
        Status::Judgement => words::judgement(),
    }
}

/// Quantiles of a date that may never come.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct OpenDates {
    /// One in ten before.
    pub p10: Option<Date>,
    /// Half before.
    pub p50: Option<Date>,
    /// Nine in ten before.
    pub p90: Option<Date>,
}

impl OpenDates {
    /// When food runs out; that it lasts is no comfort where most end with less than they should have.
    #[must_use]
    pub(crate) fn run_out(&self, to: LooksTo, ends_low: bool) -> Message {
        match (self.p10, self.p50) {
            (None, _) => say::lasts(ends_low, to.goal()),
            (Some(early), None) => say::most_last(ends_low, early, to.goal()),
            (Some(early), Some(middle)) => say::until(early, middle),
        }
    }
}

/// The hive as an enclosure, mean of the coldest month.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct HiveVerdict {
    /// Heat loss over the warm zone's excess over outdoors.
    pub heat_loss_w_per_k: f64,
    /// Air in and out.
    pub air_flow_l_per_s: f64,
    /// Water caught on each face.
    pub condensation_g_per_day: Condensation,
    /// Of it dripping on the cluster.
    pub drip_on_cluster_g_per_day: f64,
    /// Share of hours with frost at the upper hole; none without a hole.
    pub frost_at_hole: Option<f64>,
}

/// Water by face.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Condensation {
    /// Inside of the lid.
    pub lid: f64,
    /// Walls.
    pub walls: f64,
    /// Floor.
    pub floor: f64,
}

/// A month's figure.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct MonthRange {
    /// Year and month, `2025-11`.
    pub month: String,
    /// Its range over members.
    #[serde(flatten)]
    pub range: Range<f64>,
}

/// A month's usual count.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct MonthUsual {
    /// Year and month, `2025-11`.
    pub month: String,
    /// What is usual.
    #[serde(flatten)]
    pub usual: Usual,
}

/// A day's figure.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct DateRange {
    /// The day.
    pub date: Date,
    /// Its range over members.
    #[serde(flatten)]
    pub range: Range<f64>,
}

/// A rule the trade goes by, with where it holds.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct RuleOfThumb {
    /// Region and hive it is for.
    pub region: Message,
    /// What it says.
    pub says: Message,
    /// Stores it asks for, where it gives a figure.
    pub stores_kg: Option<(f64, f64)>,
    /// Who says so.
    pub source: String,
}

/// What is done, of all that can be.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum ActionKind {
    /// Something about its queen.
    Queen,
    /// A blocked entrance is cleared.
    ClearOpenings,
    /// A treatment against mites.
    TreatMites,
    /// Stores from the far side are hung near.
    BringNear,
    /// Frames of stores from another colony.
    Frames,
    /// Syrup in autumn.
    Syrup,
    /// Thin syrup in spring.
    ThinSyrup,
    /// Fondant over the cluster.
    SolidFeed,
    /// A better lid.
    Lid,
    /// A wrap.
    Wrap,
    /// A tray under the mesh.
    Tray,
}

/// Something to do.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ActionAnswer {
    /// Which of all that can be done.
    pub kind: ActionKind,
    /// What.
    pub what: Message,
    /// First day.
    pub from: Date,
    /// Last day.
    pub by: Date,
    /// Worth after its cost.
    pub worth_money: f64,
    /// Hives in a hundred alive, fed and queenright more than without.
    pub worth_hives_in_100: f64,
    /// Two Monte Carlo standard errors of that.
    pub plus_minus: f64,
    /// Whether chance could turn it.
    pub too_close_to_call: bool,
    /// What it costs.
    pub cost_money: f64,
    /// The reason, with this hive's figures.
    pub why: Message,
    /// Caution at the act, where one is due.
    pub caution: Option<Message>,
    /// The rule of the trade beside it, where there is one.
    pub rule_of_thumb: Option<Message>,
    /// Where the reason comes from.
    pub sources: Vec<Message>,
    /// Whether it gives what an action before it in the list gives: one of them is enough.
    pub instead: bool,
    /// Whether custom asks for it whatever the sums say, so that its worth is not weighed.
    #[serde(default)]
    pub by_custom: bool,
}

impl ActionAnswer {
    /// One that custom asks for, still to be said.
    pub(crate) fn by_custom() -> Self {
        Self {
            kind: ActionKind::Queen,
            what: Message::NONE,
            from: Date::ZERO,
            by: Date::ZERO,
            worth_money: 0.0,
            worth_hives_in_100: 0.0,
            plus_minus: 0.0,
            too_close_to_call: false,
            cost_money: 0.0,
            why: Message::NONE,
            caution: None,
            rule_of_thumb: None,
            sources: Vec::new(),
            instead: false,
            by_custom: true,
        }
    }

    /// Whether it moves the chance by more than its own error, whatever it costs, or custom asks for it.
    #[must_use]
    pub fn helps(&self) -> bool {
        self.by_custom || self.worth_hives_in_100 > self.plus_minus
    }

    /// Whether it is worth more than it costs.
    #[must_use]
    pub fn pays(&self) -> bool {
        self.worth_money > 0.0
    }

    /// What it does and whether that pays; a capital and a stop are left to the page.
    #[must_use]
    pub fn worth(&self, currency: &str) -> Message {
        let worth = match () {
            () if self.by_custom => return say::by_custom(),
            () if !self.helps() => return say::too_close(),
            () if self.too_close_to_call => "even",
            () if self.pays() => "more",
            () => "less",
        };
        say::helps(self.cost_money, currency, self.worth_money, self.worth_hives_in_100, self.plus_minus, worth)
    }
}

#[cfg(test)]
mod tests {
    use super::FarAnswer;
    use snowhum_say::Tongue;
    use snowhum_units::{Degree, Metre, System};
    use snowhum_weather::{Far, Place};

    fn place(latitude: f64, elevation_m: f64) -> Place {
        Place { latitude: Degree::new(latitude), longitude: Degree::new(27.3), elevation: Metre::new(elevation_m) }
    }

    #[test]
    fn what_is_far_is_told_in_the_keepers_units_with_what_would_be_right() {
        let mut far = Far::from_yard("a.epw", place(61.9, 525.0), place(61.7, 105.0)).unwrap();
        let says = |far: &Far, system| Tongue::new(system).say(&FarAnswer::new(far).says);
        let metric = says(&far, System::Metric);
        for part in ["a.epw lies 22 km from", "and 420 m higher", "about 2.7 °C colder", "within 50 km", "150 m of"] {
            assert!(metric.contains(part), "{part}: {metric}");
        }
        let us = says(&far, System::Us);
        for part in ["14 mi from", "1378 ft higher", "about 4.9 °F colder", "within 31 mi", "492 ft of"] {
            assert!(us.contains(part), "{part}: {us}");
        }
        far.is_reckoned_for = true;
        assert!(says(&far, System::Metric).contains("not for the yard"));
    }
}
