//! What is first for a colony, said to be done with one tap: a note of it, or the page on which it is told.

use jiff::Timestamp;
use maud::{Markup, html};
use snowhum_advice::verdict::Task;
use snowhum_apiary::Colony;
use snowhum_say::{Message, Tongue, done_page as text};

use crate::ids;
use crate::view::View;

/// How what was done is told.
enum Told {
    /// By a note that says nothing but what was asked for, and says it on the button.
    Noted {
        /// As a yard file writes it.
        entry: String,
        /// What was done.
        says: Message,
    },
    /// On a page, since nobody knows before what was found or used.
    On(String, Message),
}

/// The button under a verdict; none where nothing is to be done, or by who may not write.
pub(super) fn button(view: &View, at: usize, colony: &Colony) -> Markup {
    let step = view.standing.as_ref().and_then(|standing| standing.present.now.first.colonies.get(at)?.steps.first());
    let Some(step) = step.filter(|_| view.visitor.may_write() && !view.is_behind) else { return html! {} };
    let done = |what: Message| view.tongue().say(&text::done(what));
    html! {
        @match told(&step.task, colony, view.tongue()) {
            Told::Noted { entry, says } => {
                form class="no-print" method="post" action={ "/hive/" (colony.id.0) "/note" } {
                    input type="hidden" name="visit" value=(ids::new_id(Timestamp::now()));
                    input type="hidden" name="entry" value=(entry);
                    button class="main" { (done(says)) }
                }
            }
            Told::On(page, says) => p class="no-print" { a class="go" href=(page) { (done(says)) } },
        }
    }
}

fn told(task: &Task, colony: &Colony, tongue: Tongue) -> Told {
    let hive = format!("/hive/{}", colony.id.0);
    // An entry is read in no language but the keeper's units.
    let given = |feed: &str, says: fn(Message) -> Message| {
        let amount = task.amount().unwrap_or_default();
        let entry = format!("fed={} {feed}", Tongue::new(tongue.system()).say(&amount));
        Told::Noted { entry, says: says(amount) }
    };
    match task {
        Task::FeedSolid { .. } => given("fondant", text::fondant),
        Task::FeedSyrup { .. } => given("3:2 syrup", text::syrup),
        Task::FeedThinSyrup { .. } => given("1:1 syrup", text::thin_syrup),
        Task::Unite { with } => Told::Noted { entry: format!("united={with}"), says: text::put_to(with) },
        Task::CountMites { .. } => Told::On(hive + "#mites", text::count()),
        Task::TreatMites | Task::TreatBroodless { .. } => Told::On("/treatments".to_owned(), text::used()),
        Task::InsulateLid | Task::Wrap | Task::CloseMesh => Told::On(hive + "/change", text::dressed()),
        Task::CloseDead | Task::TellInspector => Told::On(format!("/dead/{}", colony.id.0), text::saw()),
        Task::LetOut
        | Task::ClearOpenings
        | Task::LookForEggs
        | Task::Queen { .. }
        | Task::GiveBrood { .. }
        | Task::SetBeside { .. }
        | Task::BringNear
        | Task::Listen
        | Task::LookIn
        | Task::SeeWhatDecides { .. } => Told::On(hive + "#note", text::found()),
    }
}
