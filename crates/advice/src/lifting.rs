//! The keeper's own boxes as loads: what each weighs now, and what the lifting equation says of it.

use serde::{Deserialize, Serialize};
use snowhum_apiary::{Hive, HiveBox, empty_box, floor_thickness, food_in};
use snowhum_say::{Message, lifting as say};
use snowhum_units::{Kilogram, Metre};
use snowhum_winter::Parameters;

use crate::statistics::rounded;
use crate::sums::SumFault;
use crate::sums::weigh::lifting::Lift;

/// A box of a hive as a load.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct BoxLift {
    /// The trade's name of its size.
    pub size: String,
    /// Its place from below, the lowest being 1.
    pub place: usize,
    /// What it weighs with frames, comb, food and bees, as reckoned.
    pub load_kg: f64,
    /// Height of the hands at the start, half way up the box.
    pub hands_m: f64,
    /// What most healthy people can lift from there, straight and close to the body.
    pub recommended_kg: f64,
    /// One over the other: over 1 the risk rises, over 3 many are hurt.
    pub index: f64,
}

/// What is in a hive.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Load {
    /// Food. It is reckoned from the top box down, where it hangs in winter (judgement).
    pub stores: Kilogram,
    /// Bees, counted with the lowest box, under the food (judgement).
    pub bees: Kilogram,
}

/// So many bees, as the winter model weighs them.
pub(crate) fn mass_of_bees(bees: f64) -> Result<Kilogram, SumFault> {
    let parameters = Parameters::shipped()
        .map_err(|error| SumFault::Table { table: "winter_parameters.toml", fault: error.to_string() })?;
    Ok(Kilogram::new(bees * parameters.bee_mass.value))
}

/// The boxes of a hive from above, as a keeper takes them off.
#[must_use]
pub fn boxes(hive: &Hive, load: Load) -> Vec<BoxLift> {
    stack(&hive.boxes, hive.stand, load)
}

/// The same for boxes on a stand of this height.
pub(crate) fn stack(boxes: &[HiveBox], stand: Metre, load: Load) -> Vec<BoxLift> {
    let mut left = load.stores.get().max(0.0);
    let mut under: f64 = boxes.iter().map(|one| one.depth.get()).sum();
    let mut lifts = Vec::new();
    for (at, one) in boxes.iter().enumerate().rev() {
        under -= one.depth.get();
        let room = food_in(f64::from(one.frames), one.comb_side).p50.get();
        let food = if at == 0 { left } else { left.min(room) };
        left -= food;
        let bees = if at == 0 { load.bees.get() } else { 0.0 };
        let mass = empty_box(one) + Kilogram::new(food + bees);
        let hands = Metre::new(stand.get() + floor_thickness().get() + under + 0.5 * one.depth.get());
        let lift = Lift { height: hands, ..Lift::at_waist(mass) };
        let judged = lift.judged(&one.size);
        lifts.push(BoxLift {
            size: one.size.clone(),
            place: at + 1,
            load_kg: judged.load_kg,
            hands_m: rounded(hands.get(), 2),
            recommended_kg: judged.recommended_kg,
            index: judged.index,
        });
    }
    lifts
}

impl Load {
    /// Food, and so many bees as the winter model weighs them.
    ///
    /// # Errors
    /// When the shipped table of the model cannot be read.
    pub fn of(stores: Kilogram, bees: f64) -> Result<Self, SumFault> {
        Ok(Self { stores, bees: mass_of_bees(bees)? })
    }
}

impl BoxLift {
    /// What to do about it.
    ///
    /// ```
    /// use snowhum_advice::lifting::BoxLift;
    /// let full = BoxLift { size: "deep".into(), place: 2, load_kg: 38.6, hands_m: 0.75, recommended_kg: 13.7, index: 2.8 };
    /// assert_eq!(full.says().id(), Some("lifting-two"));
    /// ```
    #[must_use]
    pub fn says(&self) -> Message {
        advice(self.index)
    }
}

/// What to do about a lifting index.
#[must_use]
pub fn advice(index: f64) -> Message {
    match index {
        index if index <= 1.0 => say::one(),
        index if !index.is_finite() => say::nobody(),
        index if index > 3.0 => say::never(index),
        index => say::two(index),
    }
}

#[cfg(test)]
mod tests {
    use super::{Load, advice, boxes, stack};
    use crate::sums::weigh::Lift;
    use snowhum_apiary::{Hive, demo_text, empty_box, food_in, read};
    use snowhum_units::{Kilogram, Metre};

    fn two_boxes() -> Hive {
        let (yard, _) = read(demo_text(), "demo").unwrap();
        yard.hives.into_iter().find(|hive| hive.boxes.len() == 2).unwrap()
    }

    #[test]
    fn the_boxes_together_weigh_what_is_in_the_hive_and_the_top_one_fills_first() {
        let hive = two_boxes();
        let room = food_in(f64::from(hive.boxes[1].frames), hive.boxes[1].comb_side).p50.get();
        for stores in [0.0, 0.5 * room, 1.5 * room] {
            let load = Load { stores: Kilogram::new(stores), bees: Kilogram::new(1.2) };
            let lifts = boxes(&hive, load);
            let empty: f64 = hive.boxes.iter().map(|one| empty_box(one).get()).sum();
            let all: f64 = lifts.iter().map(|lift| lift.load_kg).sum();
            assert!((all - empty - stores - 1.2).abs() < 0.11, "{stores}: {all}");
            let top = lifts[0].load_kg - empty_box(&hive.boxes[1]).get();
            assert!((top - stores.min(room)).abs() < 0.06, "{stores}: {top}");
            assert!(lifts[0].place == 2 && lifts[0].hands_m > lifts[1].hands_m);
        }
    }

    #[test]
    fn a_box_at_waist_height_is_the_manual_s_lift_and_a_lower_stand_is_worse() {
        let hive = two_boxes();
        let load = Load { stores: Kilogram::new(30.0), bees: Kilogram::new(1.2) };
        let on = |stand: f64| stack(&hive.boxes, Metre::new(stand), load);
        let to_waist = 0.75 - (on(0.0)[0].hands_m);
        let top = on(to_waist).swap_remove(0);
        let waist = Lift::at_waist(Kilogram::new(top.load_kg));
        assert!((top.recommended_kg - waist.recommended().get()).abs() < 0.15, "{top:?}");
        assert!(on(to_waist - 0.3)[0].index > top.index);
        let said = [0.9, 2.8, 4.5, f64::INFINITY].map(|index| advice(index).id());
        assert_eq!(said, ["lifting-one", "lifting-two", "lifting-never", "lifting-nobody"].map(Some));
    }
}
