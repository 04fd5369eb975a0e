//! What the yearly loss surveys ask for, to be copied.
//!
//! Topics: COLOSS BEEBOOK survey methods (van der Zee et al. 2013) and the provincial surveys behind CAPA's statements.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_apiary::{Act, Colony, Examined, Floor, Found, Mites, TreatmentClass};
use snowhum_say::{Message, lessons as say};

use super::LessonsQuestion;
use super::outcome::{Fate, Outcome};
use super::season::{Diary, Season};

/// One line of the form.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct SurveyLine {
    /// What is asked.
    pub asks: Message,
    /// The answer; none where the records have none.
    pub answer: Option<Message>,
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

fn line(asks: Message, number: usize) -> SurveyLine {
    SurveyLine { asks, answer: Some(say::survey_number(number)) }
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
        let alive = (not_told == 0).then(|| say::survey_number(fate(Fate::Alive) + fate(Fate::Weak)));
        vec![
            line(say::survey_before(season.start), self.wintered.len()),
            line(say::survey_added(), self.question.added as usize),
            line(say::survey_removed(), left),
            SurveyLine { asks: say::survey_alive(season.end), answer: alive },
            line(say::survey_weak(), fate(Fate::Weak)),
            line(say::survey_queen_failed(), fate(Fate::QueenFailed)),
            line(say::survey_disaster(), fate(Fate::Disaster)),
            line(say::survey_dead(), fate(Fate::Dead)),
            line(say::survey_not_told(), not_told),
            line(say::survey_lost_by(season.fixed_end), dead_by(season.fixed_end)),
        ]
    }

    /// Dead colonies by what was found in them.
    fn ends(&self) -> Vec<SurveyLine> {
        let mut found = [0_usize; 4];
        for (_, outcome) in self.wintered.iter().filter(|(_, outcome)| outcome.fate == Fate::Dead) {
            found[outcome.examined.as_ref().map_or(3, |(_, examined)| kind(examined))] += 1;
        }
        let asks = [say::survey_empty(), say::survey_starved(), say::survey_with_food(), say::survey_not_known()];
        asks.into_iter().zip(found).map(|(asks, number)| line(asks, number)).collect()
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
            SurveyLine { asks: say::survey_queens(), answer: Some(say::survey_of(known, young)) },
            line(say::survey_counted(), counted),
            SurveyLine { asks: say::survey_months(), answer: self.months() },
            line(say::survey_mesh(), mesh),
            SurveyLine { asks: say::survey_forage(), answer: None },
        ]
    }

    /// Months in which colonies were treated, with the class of each.
    fn months(&self) -> Option<Message> {
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
        given.dedup_by_key(|(on, class)| (on.month(), *class));
        let months: Vec<Message> = given.iter().map(|(on, class)| say::survey_month(word(*class), *on)).collect();
        (!months.is_empty()).then(|| say::survey_treated(months))
    }
}

/// A class as keepers write it.
fn word(class: TreatmentClass) -> &'static str {
    TreatmentClass::WORDS.iter().find(|(_, one)| *one == class).map_or("other", |(word, _)| word)
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
