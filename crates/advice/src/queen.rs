//! Queens that will not bring a colony through: what is done about each and when. Decided here for plan, fit and present.

use jiff::ToSpan;
use jiff::civil::Date;
use snowhum_say::{Message, actions, queen as say};
use snowhum_winter::{Daily, Trajectory};

use crate::ahead::run::Run;
use crate::answer::ActionAnswer;
use crate::fit::answer::VerdictKind;
use crate::site::dates::SiteDates;

pub use crate::queen_trouble::QueenTrouble;

/// The time of year, as far as a queen is concerned.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Season {
    /// Bees fly, and a queen given still does well.
    Queens,
    /// Too late for that; colonies still merge.
    Uniting,
    /// Bees cluster: nothing is opened.
    Winter,
    /// Flowers give again.
    Spring,
}

impl Season {
    fn of(today: Date, dates: &SiteDates, spring: Date) -> Self {
        match today {
            today if today <= dates.requeen_by.p50 => Self::Queens,
            today if today <= dates.unite_by.p90 => Self::Uniting,
            today if today < spring => Self::Winter,
            _ => Self::Spring,
        }
    }
}

/// The colony that its bees could go to.
#[derive(Debug, Clone, Copy)]
pub(crate) enum Partner<'a> {
    /// Nobody looked for one.
    NotSought,
    /// This one.
    Named(&'a str),
    /// None of the yard is fit for it.
    NoneFit,
    /// None: it is sick itself.
    Sick,
}

/// A colony's queen on a day.
pub(crate) struct Ground<'a> {
    name: &'a str,
    today: Date,
    dates: &'a SiteDates,
    season: Season,
    partner: Partner<'a>,
    /// Chance that a virgin still mates, as the model has it.
    mates: f64,
}

/// What is done about a queen.
#[derive(Debug, Clone)]
pub(crate) struct QueenAdvice {
    pub(crate) trouble: QueenTrouble,
    pub(crate) kind: VerdictKind,
    /// What to do; no capital, no stop.
    pub(crate) says: Message,
    /// By when.
    pub(crate) by: Date,
    /// Whether a mated queen given now would still do well.
    pub(crate) takes_queen: bool,
}

/// Chance of mating below which a virgin is not waited for (judgement).
const HARDLY_MATES: f64 = 0.05;
/// Days after which eggs of a queen that mates are to be seen (common practice).
const EGGS_WITHIN: i64 = 14;
/// Days a colony without a queen is left before its bees go to another: they age, and robbers find it (common practice).
const LEFT_ALONE: i64 = 14;
/// Days within which what is due now is done.
const WITHIN: i64 = 7;

/// The queen of the colony at a place, and what is done about her; none where nothing is known against her.
pub(crate) fn advice(run: &Run<'_>, at: usize) -> Option<QueenAdvice> {
    let trouble = QueenTrouble::of(&run.housed[at].colony)?;
    Some(advise(trouble, &Ground::of(run, at, &SiteDates::of(run)?, Partner::NotSought)))
}

/// The same as the first action of a list: custom, whatever the sums say.
pub(crate) fn action(run: &Run<'_>, at: usize) -> Option<ActionAnswer> {
    let advice = advice(run, at)?;
    let from = run.question.as_of;
    Some(ActionAnswer {
        what: advice.says,
        from,
        by: advice.by.max(from),
        why: say::reason(advice.trouble.words(), advice.trouble.why()),
        sources: vec![actions::by_practice()],
        ..ActionAnswer::by_custom()
    })
}

impl<'a> Ground<'a> {
    pub(crate) fn of(run: &'a Run<'_>, at: usize, dates: &'a SiteDates, partner: Partner<'a>) -> Self {
        let question = run.question;
        Self {
            name: &run.housed[at].colony.name,
            today: question.as_of,
            season: Season::of(question.as_of, dates, question.spring),
            mates: run.trajectories.get(at).map_or(0.0, queenright),
            dates,
            partner,
        }
    }

    /// Where its bees go.
    fn join(&self) -> Message {
        match self.partner {
            Partner::NotSought => say::join_healthy(),
            Partner::Named(name) => say::join(name),
            Partner::NoneFit => say::join_none(),
            Partner::Sick => say::join_sick(),
        }
    }

    /// One or the other, as the season still allows.
    fn join_or_requeen(&self) -> Message {
        let (join, by) = (self.join(), self.dates.requeen_by.p50);
        match (self.season, self.partner) {
            (Season::Queens, Partner::NoneFit | Partner::Sick) => say::requeen(by, join),
            (Season::Queens, _) => say::join_or_requeen(by, join),
            (Season::Spring, _) => say::join_or_soon(join),
            (Season::Uniting | Season::Winter, _) => join,
        }
    }

    fn still_mates(&self) -> bool {
        self.season == Season::Queens && self.mates >= HARDLY_MATES
    }

    /// The day to look for a virgin's eggs.
    fn look_again(&self) -> Date {
        self.today.saturating_add(EGGS_WITHIN.days()).min(self.dates.requeen_by.p50)
    }

    fn by(&self) -> Date {
        match self.season {
            Season::Queens => self.dates.requeen_by.p50,
            Season::Uniting => {
                self.dates.unite_by.p50.min(self.today.saturating_add(LEFT_ALONE.days())).max(self.today)
            }
            Season::Winter => self.dates.cluster.p90.max(self.today),
            Season::Spring => self.today.saturating_add(WITHIN.days()),
        }
    }
}

/// Chance that the living have a queen at the end of a run's first day.
fn queenright(run: &Trajectory) -> f64 {
    let mean = |what| {
        let members = run.day(what, 0);
        let count = members.len().max(1) as f64;
        members.map(f64::from).sum::<f64>() / count
    };
    let alive = 1.0 - mean(Daily::Lost);
    if alive > 0.0 { (1.0 - mean(Daily::Queenless) / alive).clamp(0.0, 1.0) } else { 0.0 }
}

/// What is done about a queen on a day.
pub(crate) fn advise(trouble: QueenTrouble, ground: &Ground<'_>) -> QueenAdvice {
    let kind = match (ground.season, trouble) {
        (Season::Winter, _) => VerdictKind::Wait,
        (_, QueenTrouble::LayingWorkers) => VerdictKind::ShakeOut,
        (_, QueenTrouble::Virgin) if ground.still_mates() => VerdictKind::LookAgain,
        _ => VerdictKind::Unite,
    };
    let by = if kind == VerdictKind::LookAgain { ground.look_again() } else { ground.by() };
    let says = match (kind, trouble) {
        (VerdictKind::Wait, _) => say::in_winter(ground.join(), trouble.name()),
        (_, QueenTrouble::NoQueen) => ground.join_or_requeen(),
        (_, QueenTrouble::Virgin) => virgin(ground),
        (_, QueenTrouble::DroneLayer) => say::take_out(ground.join_or_requeen()),
        (_, QueenTrouble::LayingWorkers) => shake_out(ground),
    };
    let takes_queen = matches!(ground.season, Season::Queens | Season::Spring);
    QueenAdvice { trouble, kind, says, by, takes_queen }
}

fn virgin(ground: &Ground<'_>) -> Message {
    if !ground.still_mates() {
        return say::hardly_mates(ground.join_or_requeen());
    }
    let mate = 5.0 * (20.0 * ground.mates).round();
    say::may_mate(ground.join_or_requeen(), mate, ground.look_again())
}

fn shake_out(ground: &Ground<'_>) -> Message {
    match ground.partner {
        Partner::Sick => say::let_go(ground.name),
        _ => say::shake_out(ground.name),
    }
}
