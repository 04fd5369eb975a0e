//! What the yearly loss surveys ask for, to be copied.
//!
//! Topics: COLOSS BEEBOOK survey methods (van der Zee et al. 2013) and the provincial surveys behind CAPA's statements.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_apiary::{Act, Colony, Examined, Floor, Found, Mites, TreatmentClass};

use super::LessonsQuestion;
use super::outcome::{Fate, Outcome};
use super::season::{Diary, Season};
use crate::words::{day, short_month};

/// One line of the form.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct SurveyLine {
    /// What is asked.
    pub asks: String,
    /// The answer; none where the records have none.
    pub answer: Option<String>,
}

/// What the form is filled from.
struct Filled<'a> {
    question: &'a LessonsQuestion<'a>,
    season: &'a Season,
    diary: &'a Diary<'a>,
    /// Each colony of the yard with its outcome.
    wintered: &'a [(&'a Colony, Outcome)],
}

/// Every line of the form.
pub(super) fn lines<'a>(
    question: &'a LessonsQuestion<'a>,
    (diary, season): (&'a Diary<'a>, &'a Season),
    wintered: &'a [(&'a Colony, Outcome)],
) -> Vec<SurveyLine> {
    let filled = Filled { question, season, diary, wintered };
    let mut lines = filled.counts();
    lines.extend(filled.ends());
    lines.extend(filled.keeping());
    lines
}

fn line(asks: &str, answer: impl ToString) -> SurveyLine {
    SurveyLine { asks: asks.to_owned(), answer: Some(answer.to_string()) }
}

impl Filled<'_> {
    fn number(&self, is_it: impl Fn(&Outcome) -> bool) -> usize {
        self.wintered.iter().filter(|(_, outcome)| is_it(outcome)).count()
    }

    fn counts(&self) -> Vec<SurveyLine> {
        let season = self.season;
        let fate = |wanted: Fate| self.number(|outcome| outcome.fate == wanted);
        let left = fate(Fate::Sold) + fate(Fate::United) + self.question.removed as usize;
        let dead_by =
            |on: Date| self.number(|outcome| outcome.fate.is_lost() && outcome.on.is_some_and(|day| day <= on));
        let not_told = fate(Fate::NotTold);
        let alive = |asks: String| SurveyLine {
            asks,
            answer: (not_told == 0).then(|| (fate(Fate::Alive) + fate(Fate::Weak)).to_string()),
        };
        vec![
            line(
                &format!("Colonies before winter, {} {}", day(season.start), season.start.year()),
                self.wintered.len(),
            ),
            line("Bought or split in since", self.question.added),
            line("Sold or united since: fewer at risk, not lost", left),
            alive(format!("Alive when winter was over here, {} {}", day(season.end), season.end.year())),
            line("Of them weak but alive", fate(Fate::Weak)),
            line("Lost: queen problem that cannot be mended", fate(Fate::QueenFailed)),
            line("Lost: disaster (fire, flood, fall, bear, theft)", fate(Fate::Disaster)),
            line("Lost: dead or empty", fate(Fate::Dead)),
            line("Not told yet", not_told),
            line(
                &format!("Known lost by {}, as surveys with fixed days ask", day(season.fixed_end)),
                dead_by(season.fixed_end),
            ),
        ]
    }

    /// Dead colonies by what was found in them.
    fn ends(&self) -> Vec<SurveyLine> {
        let mut found = [0_usize; 4];
        for (_, outcome) in self.wintered.iter().filter(|(_, outcome)| outcome.fate == Fate::Dead) {
            found[outcome.examined.as_ref().map_or(3, |(_, examined)| kind(examined))] += 1;
        }
        let asks = [
            "Of the dead: hive empty",
            "Of the dead: bees dead in cells and no food",
            "Of the dead: dead with food in the hive",
            "Of the dead: not known",
        ];
        asks.iter().zip(found).map(|(asks, number)| line(asks, number)).collect()
    }

    fn keeping(&self) -> Vec<SurveyLine> {
        let colonies = || self.wintered.iter().map(|(colony, _)| *colony);
        if !self.season.is_counted(self.question.apiary) {
            return Vec::new();
        }
        let young = colonies().filter(|colony| colony.queen.year == Some(self.season.year)).count();
        let known = colonies().filter(|colony| colony.queen.year.is_some()).count();
        let counted = colonies().filter(|colony| matches!(colony.mites, Mites::Counted { .. })).count();
        let mesh = colonies()
            .filter_map(|colony| self.question.apiary.hive_of(colony))
            .filter(|hive| !matches!(hive.floor, Floor::Solid(_)))
            .count();
        vec![
            line("Queens of this year, of those whose year is known", format!("{young} of {known}")),
            line("Colonies in which mites were counted", counted),
            SurveyLine { asks: "Months of treatment against mites".to_owned(), answer: self.months() },
            line("Hives with a mesh floor", mesh),
            SurveyLine { asks: "Forage, moves to other places, combs renewed".to_owned(), answer: None },
        ]
    }

    /// Months in which colonies were treated, with the class of each.
    fn months(&self) -> Option<String> {
        let season = self.season;
        let of_file = self.wintered.iter().flat_map(|(colony, _)| &colony.treatments).map(|one| (one.on, one.class));
        let of_notes = self.diary.of_season(season).flat_map(|(on, note)| {
            note.acts().filter_map(move |act| match act {
                Act::Treated(given) => Some((on, given.class)),
                _ => None,
            })
        });
        let mut given: Vec<(Date, TreatmentClass)> = of_file.chain(of_notes).collect();
        given.retain(|(on, _)| (season.from..season.until).contains(on));
        given.sort_by_key(|(on, _)| *on);
        let word = |class: TreatmentClass| format!("{class:?}").to_lowercase();
        let mut words: Vec<String> =
            given.iter().map(|(on, class)| format!("{} ({})", short_month(on.month()), word(*class))).collect();
        words.dedup();
        (!words.is_empty()).then(|| words.join(", "))
    }
}

/// Empty, starved in the cells, dead with food, or not known, by what was found.
fn kind(examined: &Examined) -> usize {
    let is = |name: &str, yes: bool| {
        examined
            .signs
            .iter()
            .any(|sign| sign.name == name && matches!(sign.found, Found::Yes | Found::FairlyYes) == yes)
    };
    match () {
        () if is("hive-empty", true) => 0,
        () if is("heads-in-cells", true) && is("no-food", true) => 1,
        () if is("no-food", false) || is("food-near", true) => 2,
        () => 3,
    }
}
