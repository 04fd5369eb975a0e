//! What lies on a hive as food, by the yard file and what was noted since.

use crate::food_body::FoodBody;
use crate::{Act, Apiary, ColonyId, Note};
use jiff::Timestamp;

/// A body of food that is on a hive.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct NotedFoodBody {
    /// As it was put on.
    pub body: FoodBody,
    /// When; none where the yard file has it.
    pub since: Option<Timestamp>,
}

impl NotedFoodBody {
    /// What is on a hive after something was done.
    pub fn after(on: Option<Self>, act: &Act, at: Timestamp) -> Option<Self> {
        match act {
            Act::FoodPutOn(body) => Some(Self { body: *body, since: Some(at) }),
            Act::FoodTakenOff | Act::FoodEatenUp => None,
            _ => on,
        }
    }
}

impl Apiary {
    /// The body of food on a colony's hive at a moment: of the yard file, or as notes up to then say.
    #[must_use]
    pub fn food_body(&self, colony: ColonyId, until: Timestamp) -> Option<NotedFoodBody> {
        let housed = self.colonies.iter().find(|one| one.id == colony).and_then(|one| self.hive_of(one));
        let built = housed.and_then(|hive| hive.food_body).map(|body| NotedFoodBody { body, since: None });
        let mut own: Vec<&Note> = self.notes.iter().filter(|note| note.colony == colony && note.at <= until).collect();
        own.sort_by_key(|note| (note.at, note.id));
        let acts = own.into_iter().flat_map(|note| note.acts().map(|act| (act, note.at)));
        acts.fold(built, |on, (act, at)| NotedFoodBody::after(on, act, at))
    }
}
