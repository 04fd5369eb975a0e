//! How a colony's queen stands, by the yard file and what was noted since.

use crate::{Act, Apiary, Colony, QueenState};
use jiff::civil::Date;

impl Apiary {
    /// How the queen was last found to stand up to a day; none where no more is known than that she was seen or not.
    #[must_use]
    pub fn queen_on(&self, colony: &Colony, until: Date) -> Option<QueenState> {
        let noted = self.acts_of(colony).filter(|(on, _)| *on <= until).filter_map(|(on, act)| match act {
            Act::QueenFound(state) => Some((on, *state)),
            Act::Requeened => Some((on, QueenState::Introduced)),
            _ => None,
        });
        noted.max_by_key(|(on, _)| *on).map(|(_, state)| state).or(colony.autumn.queen)
    }
}

#[cfg(test)]
mod tests {
    use crate::{QueenState, demo_text, read};
    use jiff::civil::date;

    #[test]
    fn the_last_word_on_a_queen_is_that_of_file_and_notes_together() {
        let visit =
            |day: &str, seen: &str| format!("[[visit]]\nat = {day}T12:00:00\n[visit.seen]\nLarch = \"{seen}\"\n");
        let visits = visit("2025-10-20", "queen=drone layer") + &visit("2025-11-03", "did=requeened");
        let (yard, _) = read(&format!("{}\n{visits}", demo_text()), "demo").unwrap();
        let larch = yard.colonies.iter().find(|colony| colony.name == "Larch").unwrap();
        let on = |month, day| yard.queen_on(larch, date(2025, month, day));
        assert_eq!(on(10, 19), None);
        assert_eq!(on(10, 20), Some(QueenState::DroneLayer));
        assert_eq!(on(11, 3), Some(QueenState::Introduced));
    }
}
