//! `check`: every fault of a yard file at once.

use std::path::Path;

use crate::args::Common;
use snowhum_advice::indoors::minds;
use snowhum_say::{check_terminal as say, yard_taken};

use crate::room_record::with_records;
use crate::text::voice::{in_words, tongue};
use crate::{exit, sources, text};

pub(super) fn run(file: &Path, common: &Common) -> anyhow::Result<()> {
    let bytes = sources::read(file)?;
    let name = file.display().to_string();
    match snowhum_apiary::read_bytes(&bytes, &name) {
        Ok((apiary, advisories)) => {
            let apiary = with_records(file, apiary)?;
            if common.json {
                text::say("{\n  \"faults\": []\n}")?;
            } else {
                let (hives, colonies) = (apiary.hives.len(), apiary.colonies.len());
                text::say(&in_words(&say::well(colonies, name, hives)))?;
                for advisory in advisories {
                    let note = yard_taken::line(advisory.field, advisory.line, advisory.text);
                    text::say(&text::wrapped(format!("- {}", in_words(&note)), 2))?;
                }
                for mind in apiary.rooms.iter().flat_map(|room| minds(room, apiary.as_of)) {
                    text::say(&text::wrapped(format!("- {}", in_words(&mind)), 2))?;
                }
            }
            Ok(())
        }
        Err(faults) if common.json => {
            let faults = sources::told(faults)?;
            text::say(&serde_json::to_string_pretty(&faults)?)?;
            Err(exit::refused(say::faults(faults.faults.len(), name)))
        }
        Err(faults) => Err(exit::input(sources::told(faults)?.said(tongue()))),
    }
}
