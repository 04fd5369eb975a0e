//! Whether colonies are fit for winter, as it is answered.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_say::{Message, fit as say};
use snowhum_units::Range;
use snowhum_winter::Status;

use crate::ahead::shortage::WORTH_FEEDING;
use crate::queen_trouble::QueenTrouble;
use crate::site::dates::SiteDates;
use crate::statistics::rounded;

/// A yard before winter.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct FitAnswer {
    /// Last days at this site.
    pub dates: SiteDates,
    /// Every colony in the yard's order.
    pub colonies: Vec<ColonyFit>,
    /// What to buy and where it goes.
    pub shopping: Shopping,
    /// When each class of treatment can work here.
    pub windows: Vec<ClassWindow>,
    /// Treated before the first day, a colony's winter bees are reared free of mites; after the second none are.
    pub treat_before: [Date; 2],
    /// Where those days are from.
    pub winter_bees: Message,
    /// What holds for the whole yard.
    pub say: Vec<Message>,
}

/// One colony before winter.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ColonyFit {
    /// The keeper's name.
    pub name: String,
    /// Bees, brood, stores, queen, mites, hive.
    pub scales: Vec<Scale>,
    /// What to do with it.
    pub verdict: Verdict,
    /// How it would be put to another; none where that is not asked.
    pub unite: Option<Uniting>,
    /// What to know of it.
    pub say: Vec<Message>,
}

/// What is looked at.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum What {
    /// Grown bees.
    Bees,
    /// Sealed brood.
    Brood,
    /// Food.
    Stores,
    /// The queen's age.
    Queen,
    /// Mites per 100 bees.
    Mites,
    /// The lid over the bees.
    Hive,
}

impl What {
    /// Its name.
    #[must_use]
    pub fn words(self) -> Message {
        say::what(match self {
            Self::Bees => "bees",
            Self::Brood => "brood",
            Self::Stores => "stores",
            Self::Queen => "queen",
            Self::Mites => "mites",
            Self::Hive => "hive",
        })
    }
}

/// A figure on its scale.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Scale {
    /// What.
    pub what: What,
    /// The keeper's figure with its error; none where nobody looked.
    pub figure: Option<Range<f64>>,
    /// Unit of every figure here.
    pub unit: String,
    /// What is usual here; none where no authority says.
    pub usual: Option<Usual>,
    /// The end of the scale, which begins at nought.
    pub end: f64,
    /// Where the figure stands.
    pub stands: Stands,
    /// With the figure.
    pub says: Message,
    /// What others hold.
    pub other_school: Option<Message>,
    /// What to look at, where something is not known.
    pub look: Option<Message>,
}

/// A range that is usual somewhere.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Usual {
    /// From.
    pub low: f64,
    /// To.
    pub high: f64,
    /// Region it is for.
    pub region: Message,
    /// Hive it is for.
    pub hive: Message,
    /// In words.
    pub says: Message,
    /// Who says so.
    pub source: Message,
    /// How well it is founded.
    pub status: Status,
}

/// A figure against what is usual.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Stands {
    /// Nobody looked.
    NotKnown,
    /// Nothing is known that it could be held against.
    NoRange,
    /// Even with its error below.
    Under,
    /// Below, but the error reaches into the range.
    PerhapsUnder,
    /// In the range.
    Usual,
    /// Above, but the error reaches into the range.
    PerhapsOver,
    /// Even with its error above.
    Over,
}

impl Stands {
    pub(super) fn of(figure: Option<Range<f64>>, usual: Option<&Usual>) -> Self {
        let (Some(figure), Some(usual)) = (figure, usual) else {
            return if figure.is_none() { Self::NotKnown } else { Self::NoRange };
        };
        if figure.p90 < usual.low {
            Self::Under
        } else if figure.p50 < usual.low {
            Self::PerhapsUnder
        } else if figure.p50 <= usual.high {
            Self::Usual
        } else if figure.p10 <= usual.high {
            Self::PerhapsOver
        } else {
            Self::Over
        }
    }

    /// In words.
    #[must_use]
    pub fn words(self) -> Message {
        say::stands(self.name())
    }

    /// In few words.
    #[must_use]
    pub fn short(self) -> Message {
        say::stands_short(self.name())
    }

    const fn name(self) -> &'static str {
        match self {
            Self::NotKnown => "not-known",
            Self::NoRange => "no-range",
            Self::Under => "under",
            Self::PerhapsUnder => "perhaps-under",
            Self::Usual => "usual",
            Self::PerhapsOver => "perhaps-over",
            Self::Over => "over",
        }
    }
}

/// What to do with a colony.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum VerdictKind {
    /// Foulbrood first.
    Stop,
    /// Shake its bees out.
    ShakeOut,
    /// Put it to another.
    Unite,
    /// Look at its queen again before anything else.
    LookAgain,
    /// Nothing before a mild day: its queen will not do, and it is not opened in the cold.
    Wait,
    /// Mites first.
    Treat,
    /// Give it sealed brood.
    Boost,
    /// Let it winter in a hive of its own, warmed by a strong one beside it.
    Company,
    /// Let it winter alone.
    Alone,
}

impl VerdictKind {
    /// Every kind, the commonest first.
    pub const ALL: [Self; 9] = [
        Self::Alone,
        Self::Company,
        Self::Boost,
        Self::Treat,
        Self::Unite,
        Self::LookAgain,
        Self::Wait,
        Self::ShakeOut,
        Self::Stop,
    ];

    /// In words.
    #[must_use]
    pub fn words(self) -> Message {
        say::verdict(self.written())
    }

    /// As it is written in an address and in JSON.
    #[must_use]
    pub fn written(self) -> &'static str {
        match self {
            Self::Stop => "stop",
            Self::ShakeOut => "shake-out",
            Self::Unite => "unite",
            Self::LookAgain => "look-again",
            Self::Wait => "wait",
            Self::Treat => "treat",
            Self::Boost => "boost",
            Self::Company => "company",
            Self::Alone => "alone",
        }
    }
}

/// A verdict.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Verdict {
    /// Which.
    pub kind: VerdictKind,
    /// What is wrong with its queen, where that decides.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub queen: Option<QueenTrouble>,
    /// The other colony that it is about, where there is one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub with: Option<String>,
    /// What to do, in a sentence.
    pub says: Message,
    /// Why, the weightiest first.
    pub reasons: Vec<Message>,
    /// Whether what decided stands so near its line that another seed may decide otherwise.
    #[serde(default)]
    pub near: bool,
}

impl Verdict {
    /// In words, its queen first where she decides.
    #[must_use]
    pub fn words(&self) -> Message {
        let kind = self.kind.words();
        match self.queen {
            Some(queen) => say::verdict_queen(queen.words(), kind),
            None => kind,
        }
    }
}

/// Two colonies put together, or why not.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Uniting {
    /// The colony it goes to; none where there is none fit for it.
    pub with: Option<String>,
    /// Whether it should be done.
    pub advised: bool,
    /// Why not, where not.
    pub against: Vec<Message>,
    /// Steps, in order.
    pub steps: Vec<Message>,
    /// What the model makes of it.
    pub carried: Option<Carried>,
}

/// What uniting does to two colonies, in the model, each given what it is short of: chances of being alive and queenright
/// in spring.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Carried {
    /// The weak one alone.
    pub weak_alone: f64,
    /// The strong one alone.
    pub strong_alone: f64,
    /// The two as one.
    pub together: f64,
    /// Two Monte Carlo standard errors of what the strong one gains.
    pub plus_minus: f64,
}

/// Days out of so many.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct OutOf {
    /// Days.
    pub days: f64,
    /// Of so many.
    pub of: f64,
}

/// When a class of treatment can work here. No doses: the label and the law say what, when and how.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ClassWindow {
    /// The class.
    pub class: Message,
    /// First day; none where any day before `until` does.
    pub from: Option<Range<Date>>,
    /// Last day to begin; none where the season has no such day.
    pub until: Option<Range<Date>>,
    /// Days of the window whose weather suits, of all its days.
    pub fit_days: Option<OutOf>,
    /// What it needs of the weather.
    pub weather: Message,
    /// What it does about brood.
    pub brood: Message,
    /// Supers.
    pub supers: Message,
    /// The same in a sentence, with the days.
    pub says: Message,
    /// Where it comes from.
    pub source: String,
    /// How well it is founded.
    pub status: Status,
}

/// What a feeder holds unless the keeper says, litres (judgement: a small top feeder).
pub const FEEDER_L: f64 = 10.0;
/// The word for feed that is no syrup.
pub(super) const SOLID: &str = "solid";

/// What the yard needs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Shopping {
    /// Hives that are short, in the yard's order.
    pub hives: Vec<HiveFeed>,
    /// Colonies that are short and yet not fed, since they are to be put to others or shaken out.
    pub unfed: Vec<String>,
    /// Sugar for those that still have time for syrup.
    pub sugar_kg: f64,
    /// Syrup from it at 3:2.
    pub syrup_l: f64,
    /// Fondant or candy for those for which it is too late for syrup.
    pub solid_kg: f64,
    /// Fondant to keep at hand until the winter's weighing, for hives whose need is far over the rule.
    pub later_fondant_kg: f64,
    /// Stores that frames from heavy hives can give in its place.
    pub spared_kg: f64,
    /// What a feeder is taken to hold.
    pub feeder_l: f64,
    /// By when syrup must be finished to be safe: in time in nine years of ten.
    pub finish_by: Date,
    /// The day that is in time in half of all years.
    pub finish_by_half: Date,
    /// Days from the plan's first day to the safe one; negative once it is past.
    pub days_left: i64,
    /// Whether even the day of half of all years is past.
    pub too_late_for_syrup: bool,
}

impl Shopping {
    /// Who is short and yet not on the list; none where everybody is.
    #[must_use]
    pub fn unfed_say(&self) -> Option<Message> {
        (!self.unfed.is_empty()).then(|| say::unfed(self.unfed.iter().map(Message::from).collect()))
    }

    /// The same for a feeder that holds so many litres.
    #[must_use]
    pub fn with_feeder(&self, feeder_l: f64) -> Self {
        let mut list = self.clone();
        list.feeder_l = feeder_l;
        for hive in &mut list.hives {
            hive.feeder_fills = rounded(hive.syrup_l / feeder_l, 1);
        }
        list
    }
}

/// What one hive needs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct HiveFeed {
    /// The colony.
    pub name: String,
    /// Stores that are short.
    pub short_kg: f64,
    /// Stores to give now: all of it, or what brings it to a rule that the computed need is far over.
    pub now_kg: f64,
    /// Fondant to keep at hand for the rest, until the winter's weighing.
    pub later_fondant_kg: f64,
    /// What is fed: `3:2` or `solid`. No 1:1 in autumn.
    pub mix: String,
    /// Sugar for as much of it as bees still take as syrup; none where it is fed solid.
    pub sugar_kg: f64,
    /// Water for it.
    pub water_l: f64,
    /// Syrup.
    pub syrup_l: f64,
    /// Fillings of the feeder.
    pub feeder_fills: f64,
    /// The day by which it is finished: the safe one where that can still be; none where it is fed solid.
    pub finish_by: Option<Date>,
    /// Last day to begin with each kind of feeder that is still quick enough.
    pub begin_by: Vec<BeginBy>,
    /// Fondant for what is not fed as syrup: all of it where it is fed solid, else what it is too late for.
    pub fondant_kg: f64,
    /// Damp sugar, set hard, that feeds as much as that fondant, and how thick it lies on the box.
    pub candy_kg: f64,
    /// Thickness of that.
    pub candy_mm: f64,
    /// Frames of sealed stores that a heavy healthy hive of the yard can give; each is counted once.
    pub frames: Option<Spared>,
}

impl HiveFeed {
    /// Whether it is fed solid.
    #[must_use]
    pub fn is_solid(&self) -> bool {
        self.mix == SOLID
    }

    /// Whether it is fed now at all: what has as much as a rule far below its need waits for the winter's weighing.
    #[must_use]
    pub fn is_fed_now(&self) -> bool {
        self.now_kg >= WORTH_FEEDING.get()
    }
}

/// The last day to begin with a kind of feeder.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct BeginBy {
    /// The feeder.
    pub feeder: Message,
    /// The day.
    pub on: Date,
}

/// Frames from a heavy hive.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Spared {
    /// The giver.
    pub from: String,
    /// Frames.
    pub frames: usize,
    /// What they hold.
    pub kg: f64,
}
