//! The one thing a keeper wants to know of a colony first: what it needs, and whether now.

use serde::{Deserialize, Serialize};
use snowhum_winter::Cause;

use crate::answer::ColonyPlan;
use crate::fit::VerdictKind;
use crate::queen::QueenTrouble;
use crate::shortage::WORTH_FEEDING;

/// Chance of being alive, fed and queenright in spring from which a colony is called sound (judgement): of colonies counted, fed
/// and treated real winters take 6 to 18 in 100, and nothing helps against that.
pub const SOUND: f64 = 0.8;

/// What a colony needs first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "need", content = "cause")]
pub enum Need {
    /// Foulbrood may be in it: nothing else is done before the inspector is told.
    Stop,
    /// To be shaken out: it comes to nothing, in a hive of its own or in another.
    ShakeOut,
    /// Something about its queen.
    Queen(QueenTrouble),
    /// Something about its queen, and not today.
    QueenLater(QueenTrouble),
    /// To be put to another colony, which is fed in its stead.
    Unite,
    /// Something against mites, then food.
    MitesThenFood,
    /// Something against mites.
    Mites,
    /// Food, without which it is not sound.
    Food,
    /// Food, though it is sound without.
    FoodInTime,
    /// Something else that helps against what most of its like end of.
    Help(Option<Cause>),
    /// It may end of this, and nothing that can be done now helps.
    Watch(Option<Cause>),
    /// Nothing.
    Nothing,
}

impl Need {
    /// Of a colony with this verdict. Foulbrood and mites come before food: what is fed to a sick colony is fed to its
    /// sickness. What does not winter in its own hive is not fed in it.
    #[must_use]
    pub fn of(colony: &ColonyPlan, verdict: Option<VerdictKind>, queen: Option<QueenTrouble>) -> Self {
        let hungry = colony.shortage_kg >= WORTH_FEEDING.get();
        let sound = colony.alive_fed_queenright >= SOUND;
        let cause = colony.ends.most_likely();
        if let Some(queen) = queen {
            let later = matches!(verdict, Some(VerdictKind::LookAgain | VerdictKind::Wait));
            return if later { Self::QueenLater(queen) } else { Self::Queen(queen) };
        }
        match verdict {
            Some(VerdictKind::Stop) => Self::Stop,
            Some(VerdictKind::ShakeOut) => Self::ShakeOut,
            Some(VerdictKind::Unite) => Self::Unite,
            Some(VerdictKind::Treat) if hungry => Self::MitesThenFood,
            Some(VerdictKind::Treat) => Self::Mites,
            _ if hungry && sound => Self::FoodInTime,
            _ if hungry => Self::Food,
            _ if sound => Self::Nothing,
            _ if colony.nothing_helps => Self::Watch(cause),
            _ => Self::Help(cause),
        }
    }

    /// Whether it needs the keeper now.
    #[must_use]
    pub fn is_urgent(self) -> bool {
        match self {
            Self::Stop
            | Self::ShakeOut
            | Self::Queen(_)
            | Self::Unite
            | Self::MitesThenFood
            | Self::Mites
            | Self::Food
            | Self::Help(_) => true,
            Self::QueenLater(_) | Self::FoodInTime | Self::Watch(_) | Self::Nothing => false,
        }
    }

    /// In a word or two: stop, act, watch or sound, and what it is about.
    #[must_use]
    pub fn words(self) -> String {
        let about = |word: &str, cause: Option<Cause>| {
            cause.map_or_else(|| word.to_owned(), |cause| format!("{word}: {}", cause.words()))
        };
        match self {
            Self::Stop => VerdictKind::Stop.words().to_owned(),
            Self::ShakeOut => "act: shake out".to_owned(),
            Self::Queen(queen) => format!("act: {}", queen.words()),
            Self::QueenLater(queen) => format!("watch: {}", queen.words()),
            Self::Unite => "act: unite".to_owned(),
            Self::MitesThenFood => "act: mites, then food".to_owned(),
            Self::Mites => "act: mites first".to_owned(),
            Self::Food => "act: food".to_owned(),
            Self::FoodInTime => "watch: food".to_owned(),
            Self::Help(cause) => about("act", cause),
            Self::Watch(cause) => about("watch", cause),
            Self::Nothing => "sound".to_owned(),
        }
    }
}
