//! Queens that will not bring a colony through: what is done about each and when. Decided here for plan, fit and present.

use jiff::ToSpan;
use jiff::civil::Date;
use snowhum_winter::{Daily, Trajectory};

use crate::ahead::run::Run;
use crate::answer::ActionAnswer;
use crate::fit::answer::VerdictKind;
use crate::site::dates::SiteDates;
use crate::words::day;

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
    pub(crate) says: String,
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
        why: format!("{} ({})", advice.trouble.why(), advice.trouble.words()),
        sources: vec!["common practice".to_owned()],
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
    fn join(&self) -> String {
        match self.partner {
            Partner::NotSought => "put its bees to a healthy colony with a laying queen".to_owned(),
            Partner::Named(name) => format!("put its bees to {name}"),
            Partner::NoneFit => "no colony of this yard is fit to take its bees".to_owned(),
            Partner::Sick => "it is sick and goes to no other colony: close it to robbers once it is empty".to_owned(),
        }
    }

    fn requeen(&self) -> String {
        format!("give it a mated queen by about {}", day(self.dates.requeen_by.p50))
    }

    /// One or the other, as the season still allows.
    fn join_or_requeen(&self) -> String {
        match (self.season, self.partner) {
            (Season::Queens, Partner::NoneFit | Partner::Sick) => format!("{}; {}", self.requeen(), self.join()),
            (Season::Queens, _) => format!("{}, or {}", self.join(), self.requeen()),
            (Season::Spring, _) => format!("{}, or give it a mated queen as soon as there are any", self.join()),
            (Season::Uniting | Season::Winter, _) => self.join(),
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
        (VerdictKind::Wait, _) => in_winter(trouble, ground),
        (_, QueenTrouble::NoQueen) => ground.join_or_requeen(),
        (_, QueenTrouble::Virgin) => virgin(ground),
        (_, QueenTrouble::DroneLayer) => {
            format!("find her and take her out, and a day later {}", ground.join_or_requeen())
        }
        (_, QueenTrouble::LayingWorkers) => shake_out(ground),
    };
    let takes_queen = matches!(ground.season, Season::Queens | Season::Spring);
    QueenAdvice { trouble, kind, says, by, takes_queen }
}

fn virgin(ground: &Ground<'_>) -> String {
    if !ground.still_mates() {
        return format!("she hardly mates any more: take her out, and {}", ground.join_or_requeen());
    }
    format!(
        "look for eggs about {}, for in the model about {:.0} in 100 such queens still mate from today; without eggs take \
         her out, and {}",
        day(ground.look_again()),
        5.0 * (20.0 * ground.mates).round(),
        ground.join_or_requeen()
    )
}

fn shake_out(ground: &Ground<'_>) -> String {
    let name = ground.name;
    if matches!(ground.partner, Partner::Sick) {
        return format!(
            "let {name} go: close it to robbers once it is empty; its sick bees are not shaken before other hives"
        );
    }
    format!(
        "give it no queen and put it to no colony as it is: on a warm day carry {name} well away, shake its bees off on the \
         ground and take its stand from the row, and the fliers beg their way into the others; some join what is left to a \
         strong colony, never to a weak one"
    )
}

/// Nothing in the cold, and what on the first mild day.
fn in_winter(trouble: QueenTrouble, ground: &Ground<'_>) -> String {
    const FIRST: &str = "on the first day on which bees fly well";
    let join = ground.join();
    match trouble {
        QueenTrouble::NoQueen => {
            format!(
                "nothing now, for clustered bees take no queen and do not merge; {FIRST} look for eggs, and without any {join}"
            )
        }
        QueenTrouble::Virgin => {
            format!(
                "nothing now, and she mates no more; {FIRST} look what she lays, take her out if it is drones, and {join}"
            )
        }
        QueenTrouble::DroneLayer => {
            format!("nothing now, for she is not found in a cluster; {FIRST} take her out, and {join}")
        }
        QueenTrouble::LayingWorkers => {
            format!(
                "nothing now, for bees shaken out in the cold die where they fall; {FIRST} shake it out before strong hives, \
                 and give it no queen"
            )
        }
    }
}
