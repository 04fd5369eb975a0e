//! The questions: of foulbrood first and alone, then all others.

use maud::{Markup, html};
use snowhum_advice::deadout::{FromRecords, Question, Seen};
use snowhum_apiary::Colony;
use snowhum_say::{Message, Text, dead_page as text};

use crate::view::{Asked, View};

/// Questions by what is looked at; a question in none of them stands at the end.
const PARTS: [(Text, &[&str]); 5] = [
    (
        text::part_bees,
        &[
            "small-cluster",
            "hive-empty",
            "pile-of-dead",
            "heads-in-cells",
            "crumpled-wings",
            "tongues-out",
            "queen-found",
        ],
    ),
    (text::part_food, &["no-food", "food-near", "ragged-cappings"]),
    (text::part_brood, &["spotty-brood", "white-crystals", "drone-cells", "queen-cells"]),
    (text::part_hive, &["droppings-inside", "wet-mould", "chewed-comb"]),
    (
        text::part_known,
        &[
            "mites-over-line",
            "died-before-midwinter",
            "weak-in-autumn",
            "light-in-autumn",
            "queen-trouble",
            "long-cold",
        ],
    ),
];

/// Foulbrood alone.
pub(super) fn brood((view, colony): (&View, &Colony), questions: &[Question], asked: &Asked) -> Markup {
    let say = |message: Message| view.tongue().say(&message);
    html! {
        p class="lede" { (say(text::brood_lede())) }
        form method="get" action={ "/dead/" (colony.id.0) } {
            input type="hidden" name="step" value="2";
            @for question in questions.iter().filter(|question| question.stops) { (choice(view, question, asked, None)) }
            button class="main" { (say(text::go_on())) }
        }
        p class="small" { (say(text::brood_note())) }
    }
}

/// All signs, as told so far.
pub(super) fn signs(
    (view, colony): (&View, &Colony),
    questions: &[Question],
    asked: &Asked,
    records: &[FromRecords],
) -> Markup {
    let say = |message: Message| view.tongue().say(&message);
    let record = |question: &Question| records.iter().find(|record| record.sign == question.name);
    let is_in = |question: &&Question, names: &[&str]| names.contains(&question.name.as_str());
    let others = || questions.iter().filter(|question| !question.stops);
    let in_none = |question: &&Question| !PARTS.iter().any(|(_, names)| is_in(question, names));
    html! {
        form class="no-print" id="signs" method="get" action={ "/dead/" (colony.id.0) } {
            h2 { (say(text::what())) }
            p class="small" { (say(text::what_note())) }
            input type="hidden" name="step" value="2";
            @for (part, names) in PARTS {
                h3 { (say(part())) }
                @for question in others().filter(|question| is_in(question, names)) { (choice(view, question, asked, record(question))) }
            }
            @for question in others().filter(in_none) { (choice(view, question, asked, record(question))) }
            h3 { (say(text::brood_again())) }
            @for question in questions.iter().filter(|question| question.stops) { (choice(view, question, asked, None)) }
            button class="main" { (say(text::ask())) }
        }
    }
}

/// One question with its answers. What the records answer stands where the keeper has not looked.
fn choice(view: &View, question: &Question, asked: &Asked, record: Option<&FromRecords>) -> Markup {
    let say = |message: Message| view.tongue().say(&message);
    let told = asked.get(&question.name).and_then(Seen::read).unwrap_or(Seen::Unseen);
    let answers = [
        (Seen::Yes, "yes", text::yes()),
        (Seen::FairlyYes, "fairly-sure", text::fairly_sure()),
        (Seen::No, "no", text::no()),
        (Seen::Unseen, "", text::did_not_look()),
    ];
    let chosen = |seen: Seen| seen == told || (seen == Seen::No && told == Seen::FairlyNo);
    html! {
        fieldset class="choices sign-asked" {
            legend { (say(question.ask.clone())) }
            @for (seen, value, words) in answers {
                label class=[(seen == Seen::Unseen).then_some("unasked")] {
                    input type="radio" name=(question.name) value=(value) checked[chosen(seen)];
                    span { (say(words)) }
                }
            }
            @if let Some(record) = record {
                p class="small" { (say(text::from_records(&record.because, words(record.seen)))) }
            }
        }
    }
}

/// What was seen of a sign, in words.
pub(super) fn words(seen: Seen) -> Message {
    match seen {
        Seen::Yes => text::yes(),
        Seen::FairlyYes => text::fairly_sure(),
        Seen::FairlyNo => text::fairly_sure_not(),
        Seen::No => text::no(),
        Seen::Unseen => text::not_looked_at(),
    }
}
