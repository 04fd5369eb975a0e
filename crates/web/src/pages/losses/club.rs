//! A club's winter: its members' counts pooled.

use maud::{Markup, html};
use snowhum_advice::sums::losses::{ClubLosses, Counted, LossesAnswer, LossesQuestion, Operation, losses};
use snowhum_say::{Message, Tongue, losses_page as text};

use crate::sent::shortened;
use crate::view::Asked;
use crate::words::marked;

/// Most members that are pooled on the page.
const MOST_MEMBERS: usize = 300;

pub(super) fn section(asked: &Asked, tongue: Tongue) -> Markup {
    let written = asked.get("club").unwrap_or_default();
    let answered = asked.get("club").map(answer);
    let say = |message: Message| tongue.say(&message);
    html! {
        details class="folded" id="club" open[answered.is_some()] {
            summary { (say(text::club())) }
            @match &answered {
                Some(Ok(answer)) => @if let Some(club) = &answer.club { (told(club, answer, tongue)) },
                Some(Err(wrong)) => p class="caution" { (tongue.say(wrong)) },
                None => {}
            }
            form class="no-print" method="get" action="/losses#club" {
                label for="members" { (say(text::members())) }
                textarea id="members" name="club" rows="5" maxlength="12000" placeholder=(say(text::example())) { (written) }
                button { (say(text::pool())) }
            }
        }
    }
}

fn answer(written: &str) -> Result<LossesAnswer, Message> {
    let members: Vec<Operation> =
        written.lines().map(str::trim).filter(|line| !line.is_empty()).map(member).collect::<Result<_, _>>()?;
    if members.len() > MOST_MEMBERS {
        return Err(text::too_many(MOST_MEMBERS));
    }
    let question = LossesQuestion {
        counted: Counted::Club(members),
        winters: Vec::new(),
        colony_price: None,
        season_worth: None,
        currency: String::new(),
    };
    losses(&question).map_err(|wrong| text::wrong(wrong.says()))
}

fn member(line: &str) -> Result<Operation, Message> {
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
    read().ok_or_else(|| text::wrong_member(shortened(line)))
}

fn told(club: &ClubLosses, answer: &LossesAnswer, tongue: Tongue) -> Markup {
    let say = |message: Message| tongue.say(&message);
    html! {
        div class="kept" role="status" {
            p { (marked(tongue, &pooled(club))) }
            @if let Some(dispersion) = club.dispersion { p { (say(text::club_spread(dispersion))) } }
            p { (say(text::club_ends(club.members_who_lost_all, club.members_without_loss))) }
            @for said in &answer.say { p { (tongue.say(said)) } }
        }
    }
}

/// All colonies of all members together, and the mean of the members.
fn pooled(club: &ClubLosses) -> Message {
    let of = club.overall_interval;
    let [low, high, mean, rate] = [of.low, of.high, club.average_rate, club.overall_rate].map(|share| 100.0 * share);
    let lost = text::club_lost(club.at_risk, high, club.lost, low, club.members, &club.method, rate);
    Message::sentences([lost, text::club_mean(mean)])
}
