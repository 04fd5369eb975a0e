//! What is first for a colony, said to be done with one tap: a note of it, or the page on which it is told.

use jiff::Timestamp;
use maud::{Markup, html};
use snowhum_advice::verdict::Task;
use snowhum_apiary::Colony;
use snowhum_say::Tongue;

use crate::ids;
use crate::view::View;

/// How what was done is told.
enum Told {
    /// By a note that says nothing but what was asked for, and says it on the button.
    Noted {
        /// As a yard file writes it.
        entry: String,
        /// What was done.
        says: String,
    },
    /// On a page, since nobody knows before what was found or used.
    On(String, &'static str),
}

/// The button under a verdict; none where nothing is to be done, or by who may not write.
pub(super) fn button(view: &View, at: usize, colony: &Colony) -> Markup {
    let step = view.standing.as_ref().and_then(|standing| standing.present.now.first.colonies.get(at)?.steps.first());
    let Some(step) = step.filter(|_| view.visitor.may_write() && !view.is_behind) else { return html! {} };
    html! {
        @match told(&step.task, colony, view.tongue()) {
            Told::Noted { entry, says } => {
                form class="no-print" method="post" action={ "/hive/" (colony.id.0) "/note" } {
                    input type="hidden" name="visit" value=(ids::new_id(Timestamp::now()));
                    input type="hidden" name="entry" value=(entry);
                    button class="main" { "Done: " (says) }
                }
            }
            Told::On(page, says) => p class="no-print" { a class="go" href=(page) { "Done: " (says) } },
        }
    }
}

fn told(task: &Task, colony: &Colony, tongue: Tongue) -> Told {
    let hive = format!("/hive/{}", colony.id.0);
    let given = |feed: &str| {
        let amount = tongue.say(&task.amount().unwrap_or_default());
        Told::Noted { entry: format!("fed={amount} {feed}"), says: format!("{amount} of {feed} given") }
    };
    match task {
        Task::FeedSolid { .. } => given("fondant"),
        Task::FeedSyrup { .. } => given("3:2 syrup"),
        Task::FeedThinSyrup { .. } => given("1:1 syrup"),
        Task::Unite { with } => Told::Noted { entry: format!("united={with}"), says: format!("put to {with}") },
        Task::CountMites { .. } => Told::On(hive + "#mites", "write the count"),
        Task::TreatMites | Task::TreatBroodless { .. } => Told::On("/treatments".to_owned(), "write what was used"),
        Task::InsulateLid | Task::Wrap | Task::CloseMesh => Told::On(hive + "/change", "say how it is dressed"),
        Task::CloseDead | Task::TellInspector => Told::On(format!("/dead/{}", colony.id.0), "say what you saw"),
        Task::LetOut
        | Task::ClearOpenings
        | Task::LookForEggs
        | Task::Queen { .. }
        | Task::GiveBrood { .. }
        | Task::SetBeside { .. }
        | Task::BringNear
        | Task::Listen
        | Task::LookIn
        | Task::SeeWhatDecides { .. } => Told::On(hive + "#note", "note what you found"),
    }
}
