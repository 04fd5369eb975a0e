//! Invented yards, to try what a night costs.

use serde_json::json;
use snowhum_club::{Handed, Yard};
use snowhum_say::club_terminal;

use super::{failure, model, with};
use crate::args::Common;
use crate::commands::records::say;
use crate::exit;

/// Yards of one invented member.
const EACH: u32 = 10;

pub(super) fn run(yards: u32, club: &str, common: &Common) -> anyhow::Result<()> {
    with(async |records| {
        for first in (0..yards).step_by(EACH as usize) {
            let numbers = first..yards.min(first + EACH);
            let member = records.member(club, &format!("Invented keeper {}", first / EACH + 1), None).await;
            let handed = Handed {
                export: "invented, to try what a night costs\n".to_owned(),
                yards: numbers.map(invented).collect::<anyhow::Result<_>>()?,
            };
            records.take_in(member.map_err(failure)?, &handed).await.map_err(failure)?;
        }
        Ok(())
    })?;
    say(common, club_terminal::invented(club, yards), &json!({ "club": club, "invented": yards }))
}

/// The demo under another name, at a place of its own in a field of some 700 by 700 km.
fn invented(number: u32) -> anyhow::Result<Yard> {
    let (north, east) = (f64::from(number * 7 % 61), f64::from(number * 11 % 97));
    let text = snowhum_apiary::demo_text()
        .replace("name = \"Rowan Bank\"", &format!("name = \"Invented {}\"", number + 1))
        .replace("latitude = 61.7", &format!("latitude = {:.1}", 59.0 + 0.1 * north))
        .replace("longitude = 27.3", &format!("longitude = {:.1}", 22.0 + 0.1 * east));
    let (yard, _) = snowhum_apiary::read(&text, "the invented yard").map_err(exit::input)?;
    model::untold(yard)
}
