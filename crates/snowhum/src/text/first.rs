//! The first screen: what to do, by when, for which hive; then a line a hive; at the foot what it stands on.

use jiff::civil::Date;
use snowhum_advice::LooksTo;
use snowhum_advice::answer::{FarAnswer, WeatherAnswer};
use snowhum_advice::verdict::{ColonyFirst, FirstAnswer, Later, Step, Task, Urgency};
use snowhum_say::{Message, Tongue, first_terminal as say, hives, shared_terminal as shared, words};
use snowhum_units::Kilogram;

use crate::text::voice::tongue;
use crate::text::{WIDTH, broken, entry, filled};

/// Columns of the days before what is to be done.
const DAYS: usize = 11;
/// Columns of a hive's name.
const NAME: usize = 12;
/// Lines of the screen for a yard of eight hives or fewer.
const LINES: usize = 25;
/// Lines that what is to be done takes at least as many of as it needs, whatever the yard.
const TO_DO: usize = 9;
/// Lines of what comes later, where there is room.
const LATER: usize = 2;
/// Columns before the reasons in the table.
const BEFORE_WHY: usize = NAME + 1 + 12 + 8 + 8 + 8;

/// A yard's answer with what its head and foot say.
pub(crate) struct Screen<'a> {
    pub(crate) command: &'a str,
    pub(crate) apiary: &'a str,
    pub(crate) invented: bool,
    pub(crate) first: &'a FirstAnswer,
    pub(crate) weather: &'a WeatherAnswer,
    /// The last that each hive said, where that is told.
    pub(crate) signs: Vec<String>,
    pub(crate) tongue: Tongue,
}

impl<'a> Screen<'a> {
    /// A yard's, with its name and whether it is invented, for the keeper at this terminal.
    pub(crate) fn of(
        command: &'a str,
        (apiary, invented): (&'a str, bool),
        first: &'a FirstAnswer,
        weather: &'a WeatherAnswer,
    ) -> Self {
        Self { command, apiary, invented, first, weather, signs: Vec::new(), tongue: tongue() }
    }

    /// All of it: at most 25 lines for eight hives.
    pub(crate) fn words(&self) -> String {
        let mut lines = self.top();
        lines.push(String::new());
        lines.extend(self.foot());
        lines.push(self.tongue.say(&say::more(self.command)));
        lines.join("\n") + "\n"
    }

    /// Title, what to do, and the table.
    pub(crate) fn top(&self) -> Vec<String> {
        let mut lines = vec![self.title()];
        lines.extend(self.to_do());
        lines.push(String::new());
        lines.extend(self.table());
        lines
    }

    fn title(&self) -> String {
        let name: String = self.apiary.chars().take(30).collect();
        let title = say::title(self.first.colonies.len(), self.invented, self.first.as_of, name);
        let mut title = self.tongue.say(&title);
        for state in self.tongue.say_all(&self.states()) {
            if title.chars().count() + 2 + state.chars().count() <= WIDTH {
                title += &format!(", {state}");
            }
        }
        title
    }

    /// The yard in a few words each, what is not known first.
    fn states(&self) -> Vec<Message> {
        let (first, all) = (self.first, self.first.colonies.len());
        let number = |is: &dyn Fn(&ColonyFirst) -> bool| first.colonies.iter().filter(|colony| is(colony)).count();
        let dead = number(&|colony| colony.if_not.is_none());
        let short = number(&|colony| colony.steps.iter().any(feeds));
        let parts = [
            (first.unsure.mites, say::mites(first.unsure.mites == all, first.unsure.mites)),
            (dead, say::lost(dead == all, dead)),
            (short, say::short(short == all, short)),
            (first.unsure.food, say::weigh(first.unsure.food == all, first.unsure.food)),
        ];
        let states: Vec<Message> =
            parts.into_iter().filter(|(number, _)| *number > 0).map(|(_, state)| state).collect();
        if states.is_empty() && number(&|colony| colony.verdict.is_urgent()) == 0 {
            return vec![say::nothing_presses()];
        }
        states
    }

    /// Weather of a place far from the yard, which is never left for later.
    fn far(&self) -> Vec<String> {
        let says = |far: &FarAnswer| broken(&far.says, WIDTH);
        self.weather.far.iter().flat_map(says).collect()
    }

    /// Where hives stand that winter indoors, those alike together.
    fn indoors(&self) -> Vec<String> {
        let mut alike: Vec<(&Message, Vec<&str>)> = Vec::new();
        for colony in &self.first.colonies {
            let Some(indoors) = &colony.indoors else { continue };
            match alike.iter_mut().find(|(says, _)| **says == indoors.says) {
                Some((_, names)) => names.push(&colony.name),
                None => alike.push((&indoors.says, vec![&colony.name])),
            }
        }
        let line = |(says, names): &(&Message, Vec<&str>)| {
            let all = names.len() == self.first.colonies.len() && names.len() > 1;
            let names = || names.iter().map(|name| Message::from(*name)).collect();
            broken(&if all { say::indoors_all(*says) } else { say::indoors(names(), *says) }, WIDTH)
        };
        alike.iter().flat_map(line).collect()
    }

    fn to_do(&self) -> Vec<String> {
        // Title, two blank lines, the table's head, and the line that tells of more.
        let others = 5 + self.first.colonies.len() + self.foot().len();
        let room = LINES.saturating_sub(others).max(TO_DO.saturating_sub(self.far().len()));
        let groups: Vec<Vec<String>> = self.groups().iter().map(|group| group.lines(self)).collect();
        let all: usize = groups.iter().map(Vec::len).sum();
        let later = self.later(if all + LATER <= room { LATER } else { 1 });
        let mut lines: Vec<String> = Vec::new();
        for (told, group) in groups.iter().enumerate() {
            // A line is kept for saying that there is more.
            let last = usize::from(told + 1 < groups.len());
            if told > 0 && lines.len() + group.len() + last + later.len() > room {
                let rest = groups.len() - told;
                lines.extend(self.row(say::then(), say::rest(self.command, rest)));
                break;
            }
            lines.extend_from_slice(group);
        }
        if groups.is_empty() {
            lines.extend(self.row(say::now(), say::nothing_in_any()));
        }
        lines.extend(later);
        lines
    }

    fn row(&self, label: Message, words: Message) -> Vec<String> {
        row(self.tongue, &label, &words)
    }

    /// What comes later, in at most so many lines.
    fn later(&self, most: usize) -> Vec<String> {
        let later: Vec<Message> = self.first.later.iter().map(Later::words).collect();
        let begun = (1..=later.len()).rev();
        let begun = begun.map(|number| self.row(say::later(), shared::parts(later[..number].to_vec())));
        begun.into_iter().find(|lines| lines.len() <= most).unwrap_or_default()
    }

    /// What is to be done, alike for some hives, in order.
    fn groups(&self) -> Vec<Group<'_>> {
        let mut groups: Vec<Group<'_>> = Vec::new();
        for colony in &self.first.colonies {
            for step in &colony.steps {
                let words = step.task.words();
                let measured = feeds(step);
                let alike = |group: &Group<'_>| group.task == words && (measured || group.by == step.by);
                match groups.iter_mut().find(|group| alike(group)) {
                    Some(group) => {
                        if step.by.is_some_and(|by| group.by.is_none_or(|before| by < before)) {
                            (group.by, group.word) = (step.by, step.word);
                        }
                        group.hives.push((colony, step));
                    }
                    None => groups.push(Group {
                        task: words,
                        rank: step.task.rank(),
                        listens: step.task == Task::Listen,
                        by: step.by,
                        word: step.word,
                        hives: vec![(colony, step)],
                    }),
                }
            }
        }
        for group in &mut groups {
            group.hives.sort_by_key(|(_, step)| (step.by.is_none(), step.by));
        }
        // Listening waits for the next walk, which comes before what is due in more than a week.
        let is_soon = |group: &Group<'_>| matches!(group.word, Urgency::Today | Urgency::ThisWeek);
        // Of what is due within a week mites that nobody counted come first; today comes before all.
        let count = Task::CountMites { again: false }.rank();
        let weight = |group: &Group<'_>| (group.word != Urgency::Today, is_soon(group) && group.rank != count);
        groups.sort_by_key(|group| {
            (!is_soon(group), weight(group), !group.listens, group.by.is_none(), group.by, group.rank)
        });
        groups
    }

    fn table(&self) -> Vec<String> {
        let heads =
            [say::head_hive(), say::head_word(), say::head_done(), say::head_not(), say::head_short(), say::head_why()];
        let [hive, word, done, not, short, why] = heads.map(|head| self.tongue.say(&head));
        let mut lines = vec![format!("{hive:<NAME$} {word:<12}{done:<8}{not:<8}{short:<8}{why}")];
        lines.extend(self.first.colonies.iter().enumerate().map(|(at, colony)| self.hive(at, colony)));
        lines
    }

    fn hive(&self, at: usize, colony: &ColonyFirst) -> String {
        let chance = |chance: Option<f64>| chance.map_or_else(|| "–".to_owned(), |chance| hives(chance).to_string());
        let short = if colony.steps.iter().any(feeds) {
            self.tongue.say(&words::portion(Kilogram::new(colony.short_kg)))
        } else {
            "–".to_owned()
        };
        let mut why: Vec<String> = colony.why.iter().map(|why| self.tongue.say(&why.words())).collect();
        why.extend(self.signs.get(at).filter(|sign| !sign.is_empty()).cloned());
        let line = format!(
            "{:<NAME$} {:<12}{:<8}{:<8}{short:<8}{}",
            short_name(&colony.name),
            self.tongue.say(&colony.verdict.words()),
            chance(colony.if_done),
            chance(colony.if_not),
            joined(&why, WIDTH - BEFORE_WHY)
        );
        line.trim_end().to_owned()
    }

    /// What the numbers are, and what they stand on.
    pub(crate) fn foot(&self) -> Vec<String> {
        let first = self.first;
        let chances = match first.looks_to {
            LooksTo::Spring => say::chances_on(first.spring),
            LooksTo::WithoutFlow(_) => say::chances_to(first.looks_to.goal()),
        };
        let mut lines = vec![self.tongue.say(&chances)];
        if first.unsure.nectar {
            lines.push(self.tongue.say(&say::no_nectar()));
        }
        lines.extend(self.indoors());
        lines.extend(self.far());
        let weather = &self.weather;
        let stands = say::numbers(weather.members, first.seed.to_string(), &weather.source);
        lines.extend(broken(&stands, WIDTH).into_iter().next());
        lines
    }
}

/// Something to do, alike for some hives.
struct Group<'a> {
    task: Message,
    rank: usize,
    listens: bool,
    by: Option<Date>,
    word: Urgency,
    hives: Vec<(&'a ColonyFirst, &'a Step)>,
}

impl Group<'_> {
    fn lines(&self, screen: &Screen<'_>) -> Vec<String> {
        let words = self.words(screen);
        beside(&screen.tongue.say(&label(self.by, self.word, self.listens)), words.iter().map(String::as_str))
    }

    /// The hives with their amounts, each in one piece, then what is done word by word.
    fn words(&self, screen: &Screen<'_>) -> Vec<String> {
        let living = screen.first.colonies.iter().filter(|colony| colony.if_not.is_some()).count();
        let measured = self.hives.iter().any(|(_, step)| feeds(step));
        let task = super::words(&screen.tongue.say(&self.task)).map(str::to_owned).collect::<Vec<_>>();
        if self.hives.len() == living
            && living > 1
            && !measured
            && self.hives.iter().all(|(_, step)| step.by == self.by)
        {
            return [vec![screen.tongue.say(&say::all_hives())], task].concat();
        }
        let hive = |(colony, step): &(&ColonyFirst, &Step)| {
            let mut hive = short_name(&colony.name);
            if let Some(amount) = step.task.amount() {
                hive += &format!(" {}", screen.tongue.say(&amount));
            }
            if let Some(by) = step.by.filter(|_| step.by != self.by) {
                hive = screen.tongue.say(&say::hive_by(by, hive));
            }
            hive
        };
        let mut hives: Vec<String> = self.hives.iter().map(|one| hive(one) + ",").collect();
        if let Some(last) = hives.last_mut() {
            last.pop();
            last.push(':');
        }
        [hives, task].concat()
    }
}

/// Where a colony's hive winters, if indoors.
pub(crate) fn place(first: &FirstAnswer, name: &str) -> Option<String> {
    let colony = first.colonies.iter().find(|colony| colony.name == name)?;
    Some(entry(say::stands(), shared::stop(&colony.indoors.as_ref()?.says)))
}

/// The lines of one colony's steps, each with its days.
pub(crate) fn steps(first: &FirstAnswer, colony: &ColonyFirst, tongue: Tongue) -> Vec<String> {
    if colony.steps.is_empty() {
        return row(tongue, &say::now(), &say::nothing());
    }
    let step = |step: &Step| {
        let task = step.task.measured();
        let says = if step.from > first.as_of { say::step_from(step.from, task) } else { say::step(task) };
        row(tongue, &label(step.by, step.word, step.task == Task::Listen), &says)
    };
    colony.steps.iter().flat_map(step).collect()
}

/// Whether a step gives food.
fn feeds(step: &Step) -> bool {
    step.task.amount().is_some()
}

fn label(by: Option<Date>, word: Urgency, listens: bool) -> Message {
    match by {
        Some(_) if word == Urgency::Today => say::today(),
        Some(by) => say::by(by),
        None if listens => say::next_walk(),
        None => say::mild_day(),
    }
}

/// A label and the words beside it, in the keeper's words.
fn row(tongue: Tongue, label: &Message, words: &Message) -> Vec<String> {
    beside(&tongue.say(label), super::words(&tongue.say(words)))
}

/// A label and beside it words that are not broken.
fn beside<'w>(label: &str, words: impl Iterator<Item = &'w str>) -> Vec<String> {
    let column = DAYS.max(label.chars().count() + 1);
    let lines = filled(words, WIDTH - column);
    let line = |(at, line): (usize, String)| format!("{:<column$}{line}", if at == 0 { label } else { "" });
    lines.into_iter().enumerate().map(line).collect()
}

fn short_name(name: &str) -> String {
    name.chars().take(NAME).collect()
}

/// As many of some words as fit, the first first; the last of them cut where much of it fits.
fn joined(words: &[String], room: usize) -> String {
    const MUCH: usize = 12;
    let mut line = String::new();
    for word in words {
        let apart = if line.is_empty() { "" } else { ", " };
        let left = room.saturating_sub(line.chars().count() + apart.len());
        if word.chars().count() <= left {
            line += apart;
            line += word;
        } else if left >= MUCH {
            let begun: String = word.chars().take(left - 1).collect();
            return line + apart + begun.trim_end() + "…";
        }
    }
    line
}

#[cfg(test)]
mod tests {
    use super::Screen;
    use crate::text::WIDTH;
    use jiff::civil::{Date, date};
    use snowhum_advice::LooksTo;
    use snowhum_advice::answer::WeatherAnswer;
    use snowhum_advice::verdict::{
        ColonyFirst, ColonyVerdict, FirstAnswer, Later, LaterKind, Step, Task, Unsure, Urgency, Why,
    };
    use snowhum_say::Tongue;
    use snowhum_units::System;

    const TODAY: Date = date(2025, 9, 10);

    /// A yard in which every hive is called by a long name and needs all of some things.
    fn crowded(hives: usize, tasks: &[Task]) -> FirstAnswer {
        let step = |(at, task): (usize, &Task)| Step {
            task: task.clone(),
            word: Urgency::By,
            from: TODAY,
            by: Some(TODAY.saturating_add(jiff::Span::new().days(7 * at as i64))),
        };
        let steps: Vec<Step> = tasks.iter().enumerate().map(step).collect();
        let colony = |at: usize| ColonyFirst {
            name: format!("Hive-by-the-old-apple-tree {at}"),
            verdict: ColonyVerdict { word: Urgency::By, by: Some(date(2025, 9, 29)), first: tasks.first().cloned() },
            steps: steps.clone(),
            if_done: Some(0.7),
            if_not: Some(0.1),
            short_kg: 12.4,
            why: vec![Why::Hungry { from: date(2026, 2, 12) }, Why::MitesNotCounted, Why::FoodNotWeighed],
            near: Vec::new(),
            indoors: None,
        };
        let kinds =
            [LaterKind::CountMites, LaterKind::Guards, LaterKind::Broodless, LaterKind::Weigh, LaterKind::LookThrough];
        FirstAnswer {
            as_of: TODAY,
            spring: date(2026, 4, 20),
            looks_to: LooksTo::Spring,
            seed: 1,
            colonies: (0..hives).map(colony).collect(),
            later: kinds.map(|what| Later { what, on: date(2025, 11, 20) }).to_vec(),
            unsure: Unsure { mites: hives, food: hives, nectar: true },
        }
    }

    fn told(first: &FirstAnswer, system: System) -> String {
        let weather = WeatherAnswer {
            source: "weather drawn from a climatology with a very long name and its licence, 1991 to 2020".into(),
            members: 192,
            paths: 64,
            notes: Vec::new(),
            far: Vec::new(),
        };
        let signs = vec!["5 Sep hum=heard by ear; dead=30 on snow".to_owned(); first.colonies.len()];
        let apiary = "The yard behind the old schoolhouse";
        Screen { command: "plan", apiary, invented: true, first, weather: &weather, signs, tongue: Tongue::new(system) }
            .words()
    }

    #[test]
    fn eight_hives_that_need_everything_fit_a_screen() {
        let tasks = [
            Task::LetOut,
            Task::CountMites { again: false },
            Task::Unite { with: "Hive-by-the-old-apple-tree".to_owned() },
            Task::FeedSyrup { sugar_kg: 10.0, syrup_l: 12.8 },
            Task::FeedSolid { fondant_kg: 7.5 },
            Task::SetBeside { with: "Hive-by-the-old-apple-tree".to_owned() },
            Task::Wrap,
        ];
        for system in [System::Metric, System::Us] {
            for hives in [0, 1, 5, 8] {
                let page = told(&crowded(hives, &tasks), system);
                assert!(page.lines().count() <= 25, "{hives}: {}\n{page}", page.lines().count());
                assert!(page.lines().all(|line| line.chars().count() <= WIDTH), "{page}");
            }
        }
    }

    #[test]
    fn what_is_first_stands_first_with_its_day_and_hive() {
        let page = told(&crowded(2, &[Task::FeedSyrup { sugar_kg: 10.0, syrup_l: 12.8 }]), System::Metric);
        let second = page.lines().nth(1).unwrap();
        assert!(second.starts_with("By 10 Sep") && second.contains("Hive-by-the- 13 L"), "{page}");
        let nothing = told(&crowded(2, &[]), System::Metric);
        assert!(nothing.lines().nth(1).unwrap().contains("nothing is due"), "{nothing}");
    }
}
