//! The questions: of foulbrood first and alone, then all others.

use maud::{Markup, html};
use snowhum_advice::deadout::{FromRecords, Question, Seen};
use snowhum_apiary::Colony;

use crate::view::{Asked, View};

/// Questions by what is looked at; a question in none of them stands at the end.
const PARTS: [(&str, &[&str]); 5] = [
    (
        "The bees",
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
    ("Food", &["no-food", "food-near", "ragged-cappings"]),
    ("Brood", &["spotty-brood", "white-crystals", "drone-cells", "queen-cells"]),
    ("The hive", &["droppings-inside", "wet-mould", "chewed-comb"]),
    (
        "What you know of it",
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
    html! {
        p class="lede" { "First the brood. Take out a comb that had brood and look into its cells in good light." }
        form method="get" action={ "/dead/" (colony.id.0) } {
            input type="hidden" name="step" value="2";
            @for question in questions.iter().filter(|question| question.stops) { (choice(view, question, asked, None)) }
            button class="main" { "Go on" }
        }
        p class="small" { "A yes or a fairly sure stops here. Such signs are sure when seen and often missed: a no does not clear the brood." }
    }
}

/// All signs, as told so far.
pub(super) fn signs(
    (view, colony): (&View, &Colony),
    questions: &[Question],
    asked: &Asked,
    records: &[FromRecords],
) -> Markup {
    let record = |question: &Question| records.iter().find(|record| record.sign == question.name);
    let is_in = |question: &&Question, names: &[&str]| names.contains(&question.name.as_str());
    let others = || questions.iter().filter(|question| !question.stops);
    let in_none = |question: &&Question| !PARTS.iter().any(|(_, names)| is_in(question, names));
    html! {
        form class="no-print" id="signs" method="get" action={ "/dead/" (colony.id.0) } {
            h2 { "What do you see?" }
            p class="small" { "Leave what you did not look at. The more is told, the narrower the ranges." }
            input type="hidden" name="step" value="2";
            @for (part, names) in PARTS {
                h3 { (part) }
                @for question in others().filter(|question| is_in(question, names)) { (choice(view, question, asked, record(question))) }
            }
            @for question in others().filter(in_none) { (choice(view, question, asked, record(question))) }
            h3 { "The brood once more" }
            @for question in questions.iter().filter(|question| question.stops) { (choice(view, question, asked, None)) }
            button class="main" { "Why did it die?" }
        }
    }
}

/// One question with its answers. What the records answer stands where the keeper has not looked.
fn choice(view: &View, question: &Question, asked: &Asked, record: Option<&FromRecords>) -> Markup {
    let told = asked.get(&question.name).and_then(Seen::read).unwrap_or(Seen::Unseen);
    let answers = [
        (Seen::Yes, "yes", "yes"),
        (Seen::FairlyYes, "fairly-sure", "fairly sure"),
        (Seen::No, "no", "no"),
        (Seen::Unseen, "", "did not look"),
    ];
    let chosen = |seen: Seen| seen == told || (seen == Seen::No && told == Seen::FairlyNo);
    html! {
        fieldset class="choices sign-asked" {
            legend { (question.ask) }
            @for (seen, value, words) in answers {
                label class=[(seen == Seen::Unseen).then_some("unasked")] {
                    input type="radio" name=(question.name) value=(value) checked[chosen(seen)];
                    span { (words) }
                }
            }
            @if let Some(record) = record {
                p class="small" { "From the records, unless you say otherwise: " (words(record.seen)) " (" (view.tongue().say(&record.because)) ")." }
            }
        }
    }
}

/// What was seen of a sign, in words.
pub(super) fn words(seen: Seen) -> &'static str {
    match seen {
        Seen::Yes => "yes",
        Seen::FairlyYes => "fairly sure",
        Seen::FairlyNo => "fairly sure not",
        Seen::No => "no",
        Seen::Unseen => "not looked at",
    }
}
