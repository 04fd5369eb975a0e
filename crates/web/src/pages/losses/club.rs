//! A club's winter: its members' counts pooled.

use maud::{Markup, html};
use snowhum_advice::sums::losses::{ClubLosses, Counted, LossesAnswer, LossesQuestion, Operation, losses};
use snowhum_say::Tongue;

use crate::sent::shortened;
use crate::view::Asked;

/// Most members that are pooled on the page.
const MOST_MEMBERS: usize = 300;

pub(super) fn section(asked: &Asked, tongue: Tongue) -> Markup {
    let written = asked.get("club").unwrap_or_default();
    let answered = asked.get("club").map(|written| answer(written, tongue));
    html! {
        details class="folded" id="club" open[answered.is_some()] {
            summary { "A club's winter" }
            @match &answered {
                Some(Ok(answer)) => @if let Some(club) = &answer.club { (told(club, answer, tongue)) },
                Some(Err(wrong)) => p class="caution" { (wrong) },
                None => {}
            }
            form class="no-print" method="get" action="/losses#club" {
                label for="members" { "One member a line: name, lost / colonies" }
                textarea id="members" name="club" rows="5" maxlength="12000" placeholder="Ann 1/5" { (written) }
                button { "Pool them" }
            }
        }
    }
}

fn answer(written: &str, tongue: Tongue) -> Result<LossesAnswer, String> {
    let members: Vec<Operation> =
        written.lines().map(str::trim).filter(|line| !line.is_empty()).map(member).collect::<Result<_, _>>()?;
    if members.len() > MOST_MEMBERS {
        return Err(format!(
            "More than {MOST_MEMBERS} members; in a terminal snowhum losses --club FILE reads a list of any length."
        ));
    }
    let question = LossesQuestion {
        counted: Counted::Club(members),
        winters: Vec::new(),
        colony_price: None,
        season_worth: None,
        currency: String::new(),
    };
    losses(&question).map_err(|wrong| tongue.capital(&wrong.says()))
}

fn member(line: &str) -> Result<Operation, String> {
    let read = || {
        let (name, counts) = line.rsplit_once([' ', ',', ';', '=', '\t']).filter(|(_, counts)| counts.contains('/'))?;
        let (lost, colonies) = counts.split_once('/')?;
        let name = name.trim().trim_end_matches([',', ';', '=']).trim();
        let operation = Operation {
            name: name.to_owned(),
            colonies: colonies.trim().parse().ok()?,
            lost: lost.trim().parse().ok()?,
        };
        (!name.is_empty()).then_some(operation)
    };
    read().ok_or_else(|| format!("{}: write name, lost / colonies, such as Ann 1/5.", shortened(line)))
}

fn told(club: &ClubLosses, answer: &LossesAnswer, tongue: Tongue) -> Markup {
    let percent = |share: f64| format!("{:.1} %", 100.0 * share);
    html! {
        div class="kept" role="status" {
            p {
                (club.lost) " of " (club.at_risk) " colonies of " (club.members) " members lost: "
                strong { (percent(club.overall_rate)) } " overall (" (percent(club.overall_interval.low)) " to " (percent(club.overall_interval.high)) "; " (tongue.say(&club.method)) "). "
                "The mean of the members' own rates is " (percent(club.average_rate)) "."
            }
            @if let Some(dispersion) = club.dispersion {
                p { "Between members it spreads " (format!("{dispersion:.1}")) " times as much as luck alone." }
            }
            p { (club.members_without_loss) " without a loss, " (club.members_who_lost_all) " lost all." }
            @for say in &answer.say { p { (tongue.say(say)) } }
        }
    }
}
